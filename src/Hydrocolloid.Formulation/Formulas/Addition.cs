namespace Hydrocolloid.Formulation;

/// <summary>One ingredient added after the base, and its dose. Immutable, equal by content.</summary>
public sealed record Addition
{
    internal Addition(Ingredient ingredient, Dose dose, LineDetails details)
    {
        Ingredient = ingredient;
        Dose = dose;
        Details = details;
    }

    /// <summary>The ingredient.</summary>
    public Ingredient Ingredient { get; }

    /// <summary>Its dose, by weight of a stated reference.</summary>
    public Dose Dose { get; }

    /// <summary>What else the line says.</summary>
    public LineDetails Details { get; }

    /// <summary>The label of the line: its own, or the ingredient's id.</summary>
    public string Label => Details.Label ?? Ingredient.Id;

    /// <summary>The dose in words.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => $"{Ingredient}: {Dose}";
}
