using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>How far a batch goes in a mould. Immutable, equal by content.</summary>
public sealed record MouldFilling
{
    // A billionth of a cavity is rounding, neither a shortage nor a rest.
    private const double RoundingOfACavity = 1e-9;

    internal MouldFilling(MouldPlan mould, double castGrams, double celsius, Reckoned density)
    {
        Mould = mould;
        CastGrams = castGrams;
        CastCelsius = celsius;
        Density = density;
        GramsEach = mould.FillVolume!.Value.Milliliters * density.Value / 1000;
        Filled = (int)Math.Min(int.MaxValue, Math.Floor(castGrams / GramsEach + RoundingOfACavity));
    }

    /// <summary>The mould.</summary>
    public MouldPlan Mould { get; }

    /// <summary>What is cast: the batch before the set gel is trimmed.</summary>
    public Mass Cast => Mass.FromGrams(CastGrams);

    /// <summary>The temperature at which it is cast.</summary>
    public Temperature CastAt => Temperature.FromDegreesCelsius(CastCelsius);

    /// <summary>Density of everything in the mix, pieces too, at that temperature; kg/m³.</summary>
    public Reckoned Density { get; }

    /// <summary>What one cavity takes.</summary>
    public Mass Each => Mass.FromGrams(GramsEach);

    /// <summary>How many cavities are filled to the fill line.</summary>
    public int Filled { get; }

    /// <summary>How many moulds that takes, the last one perhaps in part.</summary>
    public int MouldsNeeded => (Filled + Mould.Cavities - 1) / Mould.Cavities;

    /// <summary>What is left over.</summary>
    public Mass Left => Mass.FromGrams(CastGrams - Filled * GramsEach is var grams && grams > RoundingOfACavity * GramsEach ? grams : 0);

    internal double CastGrams { get; }

    internal double CastCelsius { get; }

    internal double GramsEach { get; }

    /// <summary>The filling in one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => $"{Numbers.Exact(Filled)} × {Numbers.Significant(GramsEach, 4)} g in {Mould}, {Numbers.Significant(Left.Grams, 4)} g left";
}
