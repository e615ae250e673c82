using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>One line of a weigh sheet: what the balance shall show and what the rounding does to the dose. Immutable, equal by content.</summary>
public sealed record WeighLine
{
    internal WeighLine(FormulaLine line, double exactGrams, double roundedGrams, Dose? roundedDose, double? errorPercent, bool exceeds)
    {
        Line = line;
        ExactGrams = exactGrams;
        RoundedGrams = roundedGrams;
        RoundedDose = roundedDose;
        ErrorPercent = errorPercent;
        ExceedsTolerance = exceeds;
    }

    /// <summary>The line of the formula.</summary>
    public FormulaLine Line { get; }

    /// <summary>The mass before rounding.</summary>
    public Mass Exact => Mass.FromGrams(ExactGrams);

    /// <summary>The mass the balance shall show.</summary>
    public Mass Rounded => Mass.FromGrams(RoundedGrams);

    /// <summary>The dose that results when every line is weighed as rounded; null if what it is a percentage of rounds to nothing.</summary>
    public Dose? RoundedDose { get; }

    /// <summary>The error of that dose, % of the dose: 5 if it is 5 % too much; null for a dose of 0 %, and where <see cref="RoundedDose"/> is null.</summary>
    public double? ErrorPercent { get; }

    /// <summary>True if the error is larger than the tolerance of the sheet, or if the dose is lost because its reference rounds to nothing.</summary>
    public bool ExceedsTolerance { get; }

    internal double ExactGrams { get; }

    internal double RoundedGrams { get; }

    /// <summary>The ingredient and the rounded mass.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Line.Ingredient}: {Numbers.Significant(RoundedGrams, 8)} g";
}
