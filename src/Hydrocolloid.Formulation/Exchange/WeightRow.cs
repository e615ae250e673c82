using UnitsNet;

namespace Hydrocolloid.Formulation.Exchange;

/// <summary>One weight that was read. Immutable, equal by content.</summary>
public sealed record WeightRow
{
    internal WeightRow(int line, Ingredient ingredient, double grams)
    {
        Line = line;
        Ingredient = ingredient;
        Grams = grams;
    }

    /// <summary>The line of the file in which the record begins, from 1.</summary>
    public int Line { get; }

    /// <summary>The ingredient.</summary>
    public Ingredient Ingredient { get; }

    /// <summary>Its weight.</summary>
    public Mass Mass => Mass.FromGrams(Grams);

    /// <summary>The phase; empty for the base, null if the file has no column <c>phase</c>.</summary>
    public string? Phase { get; internal init; }

    /// <summary>The label of the line; null for the id of the ingredient.</summary>
    public string? Label { get; internal init; }

    /// <summary>Whether it takes part in the gel.</summary>
    public LineForm Form { get; internal init; }

    internal double Grams { get; }

    /// <summary>The ingredient and its weight.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Ingredient}: {Internal.Numbers.Significant(Grams, 6)} g";
}
