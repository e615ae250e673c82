using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>One ingredient of the base phase and its share of it. Immutable, equal by content.</summary>
public sealed record BasePart
{
    internal BasePart(Ingredient ingredient, double percent, LineDetails details)
    {
        Ingredient = ingredient;
        PercentOfBase = percent + 0.0;
        Details = details;
    }

    /// <summary>The ingredient.</summary>
    public Ingredient Ingredient { get; }

    /// <summary>Its share, % by weight of the base.</summary>
    public double PercentOfBase { get; }

    /// <summary>What else the line says.</summary>
    public LineDetails Details { get; }

    /// <summary>The label of the line: its own, or the ingredient's id.</summary>
    public string Label => Details.Label ?? Ingredient.Id;

    /// <summary>The share in words.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => $"{Ingredient}: {Numbers.Significant(PercentOfBase, 6)} % of the base";
}
