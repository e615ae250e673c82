using UnitsNet;

namespace Hydrocolloid.Formulation.Books;

/// <summary>How much of an ingredient a making plan takes in all. Immutable, equal by content.</summary>
public sealed record PlannedMass
{
    internal PlannedMass(Ingredient ingredient, double grams)
    {
        Ingredient = ingredient;
        Grams = grams;
    }

    /// <summary>The ingredient; no entry of the book.</summary>
    public Ingredient Ingredient { get; }

    /// <summary>How much of it, as it is weighed in.</summary>
    public Mass Mass => Mass.FromGrams(Grams);

    internal double Grams { get; }

    /// <summary>The ingredient and the mass.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Ingredient.Name}: {Internal.Numbers.Significant(Grams, 6)} g";
}
