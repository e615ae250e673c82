using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>What the catalogue knows of food additives.</summary>
public static class Additives
{
    /// <summary>All of them. They are read when they are first asked for.</summary>
    public static ValueList<Additive> All => BuiltInCatalogue.Additives;

    /// <summary>The additives that an ingredient is. An own ingredient counts as the entry it was made from.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <returns>The additives, in catalogue order; empty if it is none, or none that is known.</returns>
    /// <exception cref="ArgumentNullException">The ingredient is null.</exception>
    public static IReadOnlyList<Additive> Of(Ingredient ingredient) => [.. BuiltInCatalogue.AdditiveIndex.Of(Guard.NotNull(ingredient))];
}
