using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>How much of one line's ingredient is there. Immutable, equal by content.</summary>
public sealed record Stock
{
    /// <summary>States a stock.</summary>
    /// <param name="label">The label of the line: the ingredient's id unless the line has a label of its own.</param>
    /// <param name="available">What is there; above 0 g.</param>
    /// <exception cref="ArgumentException">The label is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 g.</exception>
    public Stock(string label, Mass available)
    {
        Label = Guard.NotBlank(label);
        Grams = Guard.PositiveGrams(available);
    }

    /// <summary>States a stock of an ingredient.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="available">What is there; above 0 g.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 g.</exception>
    public Stock(Ingredient ingredient, Mass available)
        : this(Guard.NotNull(ingredient).Id, available)
    {
    }

    /// <summary>The label of the line.</summary>
    public string Label { get; }

    /// <summary>What is there.</summary>
    public Mass Available => Mass.FromGrams(Grams);

    internal double Grams { get; }

    /// <summary>The stock as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Numbers.Significant(Grams, 6)} g of {Label}";
}
