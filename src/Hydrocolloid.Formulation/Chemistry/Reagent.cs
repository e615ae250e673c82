using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// An acid or salt that is weighed in: molar mass and what it brings. Molar masses from the standard atomic weights of IUPAC 2021 [recalled]. Immutable; the named
/// ones of <see cref="Reagents"/> are all there are.
/// </summary>
public sealed class Reagent
{
    private const double WaterMolarMass = 18.015;

    internal Reagent(string name, string formula, double molarMass, Acid? acid = null, double acids = 1, StrongIons ions = default, double water = 0,
        Acid? second = null, CalciumSolid? solid = null, Cited<double>? solubility = null)
    {
        Name = name;
        MolecularFormula = formula;
        MolarMassGramsPerMol = molarMass;
        double perKg = 1000 / molarMass;
        Acid = acid;
        AcidMolPerKg = acid is null ? 0 : acids * perKg;
        SecondAcid = second;
        SecondAcidMolPerKg = second is null ? 0 : perKg;
        IonsPerKg = default(StrongIons).Plus(ions, perKg);
        CalciumPercent = 100 * ions.CalciumMolPerKg * CalciumNeed.CalciumGramsPerMol / molarMass;
        WaterShare = water * WaterMolarMass / molarMass;
        Solid = solid;
        SolubilityGramsPer100GWater = solubility;
    }

    /// <summary>Name with its hydrate, such as <c>calcium chloride dihydrate</c>.</summary>
    public string Name { get; }

    /// <summary>Formula with its water.</summary>
    public string MolecularFormula { get; }

    /// <summary>Molar mass with its water. Unit: g/mol.</summary>
    public double MolarMassGramsPerMol { get; }

    /// <summary>Calcium in % of the salt's mass.</summary>
    public double CalciumPercent { get; }

    /// <summary>The solid that limits how much of it dissolves; null if there is none.</summary>
    public CalciumSolid? Solid { get; }

    /// <summary>Solubility in water at 25 °C, in g of this salt per 100 g of water; null if not known as such.</summary>
    public Cited<double>? SolubilityGramsPer100GWater { get; }

    internal Acid? Acid { get; }

    internal double AcidMolPerKg { get; }

    internal Acid? SecondAcid { get; }

    internal double SecondAcidMolPerKg { get; }

    internal StrongIons IonsPerKg { get; }

    internal double WaterShare { get; }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    /// <summary>How far an amount is beyond its solubility: above 0 if not all of it dissolves, -1 if it has no limit.</summary>
    internal double Excess(double gramsPerKgWater, AcidBaseState state)
    {
        double ofSalt = SolubilityGramsPer100GWater is { } solubility ? (gramsPerKgWater / (solubility.Value * 10)) - 1 : -1;
        double ofSolid = Solid is { } solid && state.FreeCalciumMmolPerKgWater > 0 ? state.SaturationIndex(solid) : -1;
        return Math.Max(ofSalt, ofSolid);
    }

    /// <summary>How much dissolves, for an amount that does not.</summary>
    internal string SolubilityText(double mostGramsPerKg)
        => SolubilityGramsPer100GWater is { } solubility ? $"only {Numbers.Significant(solubility.Value, 3)} g per 100 g of water dissolves at 25 °C"
            : mostGramsPerKg > 0 ? $"beyond {Numbers.Significant(mostGramsPerKg, 3)} g/kg {Solid!.Name} is beyond its solubility"
            : $"{Solid!.Name} is beyond its solubility in it already";
}
