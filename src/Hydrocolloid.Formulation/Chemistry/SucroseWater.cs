using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// Sucrose and water. Degrees Brix are % of sucrose by mass. Density at 20 °C: ρ = 998.1662 + 387.3885 w + 118.0391 w² + 83.4502 w³ - 35.8387 w⁴ kg/m³, w the mass
/// fraction, fitted to the concentrative properties of the CRC Handbook (0–84 %, within 0.18 kg/m³). For fruit juice, whose Brix is not all sucrose, it is a fair estimate.
/// </summary>
public static class SucroseWater
{
    private const double MaxBrix = 84;

    // Mohos, Confectionery and Chocolate Engineering, 2010, table A2: g per 100 g of water, 0 to 100 °C by 5 K. At 30 °C a second transcription prints 219.5, which fits its table A2.3.
    private static readonly double[] s_solubility =
        [179.2, 184.7, 190.5, 197.0, 203.9, 211.4, 219.5, 228.4, 238.1, 248.7, 260.4, 273.1, 287.3, 302.9, 320.5, 339.9, 362.1, 386.8, 415.7, 448.6, 487.2];

    /// <summary>Density at 20 °C.</summary>
    /// <param name="brixPercent">Sucrose in % of the mass, 0–100; the fit holds to 84.</param>
    /// <returns>The density at 20 °C; above 84 % marked as out of range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is not from 0 to 100.</exception>
    public static Computed<Density> DensityOf(double brixPercent)
    {
        double brix = Guard.InRange(brixPercent, 0, 100, "%");
        return new(Density.FromKilogramsPerCubicMeter(At(brix / 100)), OutsideRange.Check("sucrose", brix, "% by mass", 0, MaxBrix));
    }

    /// <summary>Brix from a density at 20 °C.</summary>
    /// <param name="density">Density at 20 °C.</param>
    /// <returns>Sucrose in % of the mass; a density outside that of 0–84 % gives the nearer limit, marked as out of range.</returns>
    public static Computed<double> BrixPercent(Density density)
    {
        double rho = Guard.KilogramsPerCubicMetre(density);
        double low = At(0), high = At(MaxBrix / 100);
        return new(rho <= low ? 0 : rho >= high ? MaxBrix : 100 * Brent.FindRoot(w => At(w) - rho, 0, MaxBrix / 100, 1e-14, 200),
            OutsideRange.Check("density", rho, "kg/m³", low, high));
    }

    /// <summary>Sucrose per litre of solution at 20 °C.</summary>
    /// <param name="brixPercent">Sucrose in % of the mass, 0–100; the fit holds to 84.</param>
    /// <returns>Sucrose in g/L; above 84 % marked as out of range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is not from 0 to 100.</exception>
    public static Computed<double> GramsPerLitre(double brixPercent)
    {
        Computed<Density> density = DensityOf(brixPercent);
        return new(brixPercent / 100 * density.Value.KilogramsPerCubicMeter, density.Outside);
    }

    /// <summary>The most sucrose that dissolves (Mohos 2010, linear between its rows 5 K apart).</summary>
    /// <param name="temperature">Temperature; the table runs from 0 to 100 °C.</param>
    /// <returns>Sucrose in % of the saturated solution's mass; outside 0–100 °C the nearer row, marked as out of range.</returns>
    public static Computed<double> SolubilityPercent(Temperature temperature)
    {
        double celsius = Guard.Celsius(temperature);
        double place = Math.Min(Math.Max(celsius, 0), 100) / 5;
        int row = Math.Min((int)place, s_solubility.Length - 2);
        double grams = s_solubility[row] + ((place - row) * (s_solubility[row + 1] - s_solubility[row]));
        return new(100 * grams / (100 + grams), OutsideRange.Check("temperature", celsius, "°C", 0, 100));
    }

    /// <summary>What brings a liquid to a Brix: sugar (100), syrup, or water (0). Exact by mass: x = m (b - target)/(target - added).</summary>
    /// <param name="liquid">Mass of the liquid.</param>
    /// <param name="brixPercent">Its soluble solids in % of the mass, 0–100.</param>
    /// <param name="addedBrixPercent">Soluble solids of what is added, in % of its mass, 0–100.</param>
    /// <param name="targetBrixPercent">Soluble solids to reach, in % of the mass, between the two.</param>
    /// <returns>The mass to add.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the target does not lie between the two.</exception>
    public static Mass ToBrix(Mass liquid, double brixPercent, double addedBrixPercent, double targetBrixPercent)
    {
        double m = Guard.PositiveGrams(liquid);
        Guard.InRange(brixPercent, 0, 100, "%");
        Guard.InRange(addedBrixPercent, 0, 100, "%");
        Guard.InRange(targetBrixPercent, 0, 100, "%");
        Shares.RequireBetween(targetBrixPercent, brixPercent, addedBrixPercent, "% by mass");
        return Mass.FromGrams(Shares.Added(m, brixPercent, addedBrixPercent, targetBrixPercent));
    }

    /// <summary>The Pearson square: the parts by mass of two liquids that make a percentage. The same balance as <see cref="ToBrix"/>, as parts of 100.</summary>
    /// <param name="firstPercent">The first liquid's percentage by mass, 0–100.</param>
    /// <param name="secondPercent">The second liquid's percentage by mass, 0–100.</param>
    /// <param name="targetPercent">The percentage by mass to reach, between the two.</param>
    /// <returns>The first liquid in % of the mix's mass; the rest is the second.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the target does not lie between the two.</exception>
    public static double PearsonSquareFirstPercent(double firstPercent, double secondPercent, double targetPercent)
    {
        Guard.InRange(firstPercent, 0, 100, "%");
        Guard.InRange(secondPercent, 0, 100, "%");
        Guard.InRange(targetPercent, 0, 100, "%");
        if (targetPercent == secondPercent && firstPercent != secondPercent)
        {
            return 0;
        }

        Shares.RequireBetween(targetPercent, firstPercent, secondPercent, "% by mass");
        return firstPercent == secondPercent ? 100 : 100 * (targetPercent - secondPercent) / (firstPercent - secondPercent);
    }

    private static double At(double w) => 998.1662 + (w * (387.3885 + (w * (118.0391 + (w * (83.4502 + (w * -35.8387)))))));
}
