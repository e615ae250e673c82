using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>
/// What 100 g of an ingredient hold: percentages by weight of the ingredient as it is used. A part that is null is unknown, not zero.
/// Immutable, equal by content.
/// </summary>
public sealed record Composition
{
    /// <summary>Analyses of one food close to 100 g within about 2 g; more than this is an error.</summary>
    internal const double MaxSumPercent = 102;

    private Composition(
        double? water, double? sugars, double? otherCarbohydrate, double? fibre, double? protein, double? fat, double? ash, double? ethanol,
        double? organicAcids, double? calcium, double? potassium, double? sodium, double? magnesium)
    {
        WaterPercent = Grams(water, nameof(water));
        SugarsPercent = Grams(sugars, nameof(sugars));
        OtherCarbohydratePercent = Grams(otherCarbohydrate, nameof(otherCarbohydrate));
        FibrePercent = Grams(fibre, nameof(fibre));
        ProteinPercent = Grams(protein, nameof(protein));
        FatPercent = Grams(fat, nameof(fat));
        AshPercent = Grams(ash, nameof(ash));
        EthanolPercent = Grams(ethanol, nameof(ethanol));
        OrganicAcidsPercent = Grams(organicAcids, nameof(organicAcids));
        CalciumMg = Milligrams(calcium, nameof(calcium));
        PotassiumMg = Milligrams(potassium, nameof(potassium));
        SodiumMg = Milligrams(sodium, nameof(sodium));
        MagnesiumMg = Milligrams(magnesium, nameof(magnesium));
        if (SumFault(water, sugars, otherCarbohydrate, fibre, protein, fat, ash, ethanol, organicAcids, calcium, potassium, sodium, magnesium) is { } fault)
        {
            throw new ArgumentException(fault, nameof(water));
        }
    }

    internal double KnownSumPercent => (WaterPercent ?? 0) + (SugarsPercent ?? 0) + (OtherCarbohydratePercent ?? 0) + (FibrePercent ?? 0)
        + (ProteinPercent ?? 0) + (FatPercent ?? 0) + (AshPercent ?? 0) + (EthanolPercent ?? 0) + (OrganicAcidsPercent ?? 0);

    /// <summary>Water, % by weight of the ingredient; null if unknown.</summary>
    public double? WaterPercent { get; }

    /// <summary>Sugars (mono- and disaccharides), % by weight of the ingredient; null if unknown.</summary>
    public double? SugarsPercent { get; }

    /// <summary>Other carbohydrate without fibre, % by weight of the ingredient; null if unknown. Where it was found by difference it holds the organic acids too.</summary>
    public double? OtherCarbohydratePercent { get; }

    /// <summary>Fibre, % by weight of the ingredient; null if unknown.</summary>
    public double? FibrePercent { get; }

    /// <summary>Protein, % by weight of the ingredient; null if unknown.</summary>
    public double? ProteinPercent { get; }

    /// <summary>Fat, % by weight of the ingredient; null if unknown.</summary>
    public double? FatPercent { get; }

    /// <summary>Ash, % by weight of the ingredient; null if unknown. It holds the minerals.</summary>
    public double? AshPercent { get; }

    /// <summary>Ethanol, % by weight of the ingredient; null if unknown.</summary>
    public double? EthanolPercent { get; }

    /// <summary>Organic acids, % by weight of the ingredient; null if unknown or counted under other carbohydrate.</summary>
    public double? OrganicAcidsPercent { get; }

    /// <summary>Calcium by weight of the ingredient; null if unknown.</summary>
    public MassFraction? Calcium => FromMilligrams(CalciumMg);

    /// <summary>Potassium by weight of the ingredient; null if unknown.</summary>
    public MassFraction? Potassium => FromMilligrams(PotassiumMg);

    /// <summary>Sodium by weight of the ingredient; null if unknown.</summary>
    public MassFraction? Sodium => FromMilligrams(SodiumMg);

    /// <summary>Magnesium by weight of the ingredient; null if unknown.</summary>
    public MassFraction? Magnesium => FromMilligrams(MagnesiumMg);

    internal double? CalciumMg { get; }

    internal double? PotassiumMg { get; }

    internal double? SodiumMg { get; }

    internal double? MagnesiumMg { get; }

    /// <summary>States a composition per 100 g of the ingredient. A part left out is unknown, not zero.</summary>
    /// <param name="water">Water, g per 100 g; 0 to 100.</param>
    /// <param name="sugars">Sugars, g per 100 g; 0 to 100.</param>
    /// <param name="otherCarbohydrate">Other carbohydrate without fibre, g per 100 g; 0 to 100.</param>
    /// <param name="fibre">Fibre, g per 100 g; 0 to 100.</param>
    /// <param name="protein">Protein, g per 100 g; 0 to 100.</param>
    /// <param name="fat">Fat, g per 100 g; 0 to 100.</param>
    /// <param name="ash">Ash, g per 100 g; 0 to 100.</param>
    /// <param name="ethanol">Ethanol, g per 100 g; 0 to 100.</param>
    /// <param name="organicAcids">Organic acids, g per 100 g; 0 to 100.</param>
    /// <param name="calcium">Calcium, mg per 100 g; 0 to 100 000.</param>
    /// <param name="potassium">Potassium, mg per 100 g; 0 to 100 000.</param>
    /// <param name="sodium">Sodium, mg per 100 g; 0 to 100 000.</param>
    /// <param name="magnesium">Magnesium, mg per 100 g; 0 to 100 000.</param>
    /// <returns>The composition.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A part is outside its range.</exception>
    /// <exception cref="ArgumentException">The parts, with the minerals where they weigh more than the ash, add up to more than 102 g per 100 g.</exception>
    public static Composition Per100Grams(
        double? water = null,
        double? sugars = null,
        double? otherCarbohydrate = null,
        double? fibre = null,
        double? protein = null,
        double? fat = null,
        double? ash = null,
        double? ethanol = null,
        double? organicAcids = null,
        double? calcium = null,
        double? potassium = null,
        double? sodium = null,
        double? magnesium = null)
        => new(water, sugars, otherCarbohydrate, fibre, protein, fat, ash, ethanol, organicAcids, calcium, potassium, sodium, magnesium);

    /// <summary>The known main parts as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => WaterPercent is { } water ? $"{Numbers.Significant(water, 4)} % water" : "water unknown";

    /// <summary>What is wrong with the sum of the parts; null if nothing. Ash holds the minerals: of the two the larger counts.</summary>
    internal static string? SumFault(
        double? water, double? sugars, double? otherCarbohydrate, double? fibre, double? protein, double? fat, double? ash, double? ethanol,
        double? organicAcids, double? calcium, double? potassium, double? sodium, double? magnesium)
    {
        double minerals = ((calcium ?? 0) + (potassium ?? 0) + (sodium ?? 0) + (magnesium ?? 0)) / 1000;
        double sum = (water ?? 0) + (sugars ?? 0) + (otherCarbohydrate ?? 0) + (fibre ?? 0) + (protein ?? 0) + (fat ?? 0) + Math.Max(ash ?? 0, minerals) + (ethanol ?? 0) + (organicAcids ?? 0);
        return sum <= MaxSumPercent ? null
            : $"The parts add up to {Numbers.Significant(sum, 6)} g per 100 g; at most {Numbers.Exact(MaxSumPercent)} g are possible within the spread of analyses.";
    }

    private static double? Grams(double? value, string name) => value is { } v ? Guard.InRange(v, 0, 100, "g per 100 g", name) : null;

    private static double? Milligrams(double? value, string name) => value is { } v ? Guard.InRange(v, 0, 100_000, "mg per 100 g", name) : null;

    private static MassFraction? FromMilligrams(double? mg) => mg is { } v ? MassFraction.FromMilligramsPerKilogram(v * 10) : null;
}
