using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// Water activity at 25 °C, 0 to 1. One solute by Norrish: aw = xw exp(-K xs²), mole fractions; salt by Pitzer: ln aw = -2 φ m 0.01801528. Mixtures by Ross
/// (aw = product over the solutes, each alone in all the water) or by Norrish's own rule (ln aw = ln xw - (Σ √K x)²), both recalled. Range: aw from 0.7, salt to 6.1 mol/kg.
/// </summary>
public static class WaterActivity
{
    private const double Lowest = 0.7, MaxSalt = 6.1, WaterMolPerKg = 1000 / 18.01528;

    /// <summary>Water activity of a mix by Ross: the product of that of each solute alone in all the water.</summary>
    /// <param name="solutes">The solutes; the same solute twice adds up.</param>
    /// <returns>Water activity, 0 to 1, no unit; below 0.7 or with salt above 6.1 mol/kg marked as out of range.</returns>
    /// <exception cref="ArgumentException">An amount names no solute.</exception>
    public static Computed<double> Ross(IEnumerable<SoluteAmount> solutes)
    {
        double product = 1, salt = 0;
        foreach ((Solute solute, double m) in Together(solutes))
        {
            if (solute.Norrish is { } k)
            {
                double x = m / (m + WaterMolPerKg);
                product *= (1 - x) * Math.Exp(-k.Value * x * x);
            }
            else
            {
                salt = m;
                product *= Math.Exp(-2 * OsmoticCoefficientOfSalt(m) * m / WaterMolPerKg);
            }
        }

        return Result(product, salt);
    }

    /// <summary>Water activity of a mix of sugars and polyols by Norrish's rule for several solutes.</summary>
    /// <param name="solutes">The solutes, without salt.</param>
    /// <returns>Water activity, 0 to 1, no unit; below 0.7 marked as out of range.</returns>
    /// <exception cref="ArgumentException">Salt is among the solutes: take <see cref="Ross"/>. Or an amount names no solute.</exception>
    public static Computed<double> Norrish(IEnumerable<SoluteAmount> solutes)
    {
        double moles = 0, roots = 0;
        foreach ((Solute solute, double m) in Together(solutes))
        {
            double k = solute.Norrish?.Value ?? throw new ArgumentException("Norrish's equation has no constant for salt: take Ross.", nameof(solutes));
            moles += m;
            roots += Math.Sqrt(k) * m;
        }

        double all = moles + WaterMolPerKg;
        return Result(WaterMolPerKg / all * Math.Exp(-(roots / all) * (roots / all)), 0);
    }

    // Pitzer and Mayorga 1973, 25 °C, constants recalled.
    internal static double OsmoticCoefficientOfSalt(double molPerKgWater)
    {
        double root = Math.Sqrt(molPerKgWater);
        return 1 - (0.3915 * root / (1 + (1.2 * root))) + (molPerKgWater * (0.0765 + (0.2664 * Math.Exp(-2 * root)))) + (molPerKgWater * molPerKgWater * 0.00127);
    }

    private static List<(Solute Solute, double MolPerKgWater)> Together(IEnumerable<SoluteAmount> solutes)
    {
        var together = new List<(Solute Solute, double MolPerKgWater)>();
        foreach (SoluteAmount amount in Guard.NotNull(solutes))
        {
            Solute solute = amount.Solute ?? throw new ArgumentException("An amount names no solute.", nameof(solutes));
            int known = together.FindIndex(t => ReferenceEquals(t.Solute, solute));
            if (known < 0)
            {
                together.Add((solute, amount.MolPerKgWater));
            }
            else
            {
                together[known] = (solute, together[known].MolPerKgWater + amount.MolPerKgWater);
            }
        }

        return together;
    }

    private static Computed<double> Result(double activity, double salt)
        => new(activity, OutsideRange.Check("water activity", activity, "", Lowest, 1) ?? OutsideRange.Check("sodium chloride", salt, "mol/kg of water", 0, MaxSalt));
}
