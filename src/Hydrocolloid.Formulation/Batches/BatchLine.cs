using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>One line of a batch: what to weigh. Immutable, equal by content.</summary>
public sealed record BatchLine
{
    internal BatchLine(FormulaLine line, double grams)
    {
        Line = line;
        Grams = grams;
    }

    /// <summary>The line of the formula.</summary>
    public FormulaLine Line { get; }

    /// <summary>The mass, unrounded.</summary>
    public Mass Mass => Mass.FromGrams(Grams);

    internal double Grams { get; }

    /// <summary>The ingredient and its mass.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Line.Ingredient}: {Numbers.Significant(Grams, 6)} g";
}
