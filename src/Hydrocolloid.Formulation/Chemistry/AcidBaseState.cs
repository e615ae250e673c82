using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>The equilibrium of an <see cref="AcidBaseSystem"/> at 25 °C. Amounts are <b>per kg of water</b>. Immutable.</summary>
public sealed class AcidBaseState
{
    private static readonly double s_kw = Math.Pow(10, ActivityModel.LogKw);
    private readonly double[] _activity;
    private readonly double[] _gamma;

    internal AcidBaseState(double pH, double ionicStrength, double calcium, double magnesium, double closing, double[] activity, double[] gamma)
    {
        PH = pH;
        IonicStrengthMolPerKgWater = ionicStrength;
        FreeCalciumMmolPerKgWater = calcium * 1000;
        FreeMagnesiumMmolPerKgWater = magnesium * 1000;
        ClosingChargeMolPerKgWater = closing;
        _activity = activity;
        _gamma = gamma;
        Outside = OutsideRange.Check("ionic strength", ionicStrength, "mol/kg of water", 0, ActivityModel.MaxIonicStrength)
            ?? OutsideRange.Check("pH", pH, "", 0, 14);
    }

    /// <summary>pH: minus log10 of the hydrogen-ion activity, 25 °C.</summary>
    public double PH { get; }

    /// <summary>Ionic strength; the unit is mol per kg of water.</summary>
    public double IonicStrengthMolPerKgWater { get; }

    /// <summary>Calcium that no acid holds; the unit is mmol per kg of water.</summary>
    public double FreeCalciumMmolPerKgWater { get; }

    /// <summary>Magnesium that no acid holds; the unit is mmol per kg of water.</summary>
    public double FreeMagnesiumMmolPerKgWater { get; }

    /// <summary>Charge of the ion that closes the balance at a held pH, above 0 for an alkali; 0 if the pH was solved. The unit is mol of charge per kg of water.</summary>
    public double ClosingChargeMolPerKgWater { get; }

    /// <summary>What lies outside the range of the model (ionic strength to 0.5 mol/kg of water, pH 0–14); null if nothing does.</summary>
    public OutsideRange? Outside { get; }

    /// <summary>True if the model holds here; false if the values are an extrapolation.</summary>
    public bool InRange => Outside is null;

    /// <summary>Activity coefficient of an ion; it has no unit.</summary>
    /// <param name="charge">Its charge, -4 to 4.</param>
    /// <returns>The coefficient; no unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The charge is not from -4 to 4.</exception>
    public double ActivityCoefficient(int charge) => _gamma[Math.Abs((int)Guard.InRange(charge, -4, 4, "", nameof(charge)))];

    /// <summary>A form of an acid that holds no metal; the unit is mmol per kg of water.</summary>
    /// <param name="acid">The acid.</param>
    /// <param name="protons">How many of its protons the form has: 0 is the form without any.</param>
    /// <returns>The amount in mmol per kg of water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The acid has no form with so many protons.</exception>
    public double FormMmolPerKgWater(Acid acid, int protons)
    {
        int n = (int)Guard.InRange(protons, 0, Guard.NotNull(acid).PKa.Count, "", nameof(protons));
        return 1000 * _activity[acid.Index] * acid.Formation[n] * Math.Pow(10, -PH * n) / _gamma[Math.Abs(acid.Charge + n)];
    }

    /// <summary>A complex of calcium with an acid; the unit is mmol per kg of water.</summary>
    /// <param name="acid">The acid.</param>
    /// <param name="protons">How many of its protons the complex keeps.</param>
    /// <returns>The amount in mmol per kg of water; 0 if no constant is known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The acid has no form with so many protons.</exception>
    public double CalciumComplexMmolPerKgWater(Acid acid, int protons)
    {
        int n = (int)Guard.InRange(protons, 0, Guard.NotNull(acid).PKa.Count, "", nameof(protons));
        double sum = 0;
        foreach (Complex complex in acid.Complexes)
        {
            if (!complex.Magnesium && complex.Protons == n)
            {
                sum += _activity[acid.Index] * complex.Beta * FreeCalciumMmolPerKgWater * _gamma[2] * Math.Pow(10, -PH * n) / _gamma[Math.Abs(acid.Charge + n + 2)];
            }
        }

        return sum;
    }

    /// <summary>
    /// How far the liquid is from being saturated with a solid: log10 of the ion activity product over the solubility product. Below 0 the
    /// solid dissolves, above 0 it can settle out, in time. It has no unit. Negative infinity if an ion is absent.
    /// </summary>
    /// <param name="solid">The solid.</param>
    /// <returns>The saturation index; no unit.</returns>
    public double SaturationIndex(CalciumSolid solid)
    {
        Guard.NotNull(solid);
        return (solid.CalciumIons * Math.Log10(FreeCalciumMmolPerKgWater / 1000 * _gamma[2]))
            + (solid.Anions * Math.Log10(_activity[solid.Anion.Index])) - (solid.Protons * PH) - solid.LogSolubilityProduct.Value;
    }

    internal double HydroxideMolPerKgWater => s_kw * Math.Pow(10, PH) / _gamma[1];

    internal double HydrogenMolPerKgWater => Math.Pow(10, -PH) / _gamma[1];
}
