using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>What was really weighed in. Immutable, equal by content.</summary>
public sealed record WeighedLine
{
    /// <summary>Records a weight.</summary>
    /// <param name="label">The label of the line.</param>
    /// <param name="mass">What was weighed.</param>
    /// <exception cref="ArgumentException">The label is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative.</exception>
    public WeighedLine(string label, Mass mass)
    {
        Label = Guard.NotBlank(label);
        Grams = Guard.Grams(mass);
    }

    /// <summary>The label of the line.</summary>
    public string Label { get; }

    /// <summary>What was weighed.</summary>
    public Mass Mass => Mass.FromGrams(Grams);

    internal double Grams { get; }

    /// <summary>The line and its mass.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Label}: {Numbers.Significant(Grams, 6)} g";
}
