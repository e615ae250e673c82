using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>What the catalogue knows of pairs of ingredients.</summary>
public static class Synergies
{
    /// <summary>All pairs. They are read when they are first asked for.</summary>
    public static ValueList<Synergy> All => BuiltInCatalogue.Synergies;

    /// <summary>What is known of two ingredients together.</summary>
    /// <param name="one">One ingredient.</param>
    /// <param name="other">The other.</param>
    /// <returns>The pairs, in catalogue order; empty if nothing is known.</returns>
    /// <exception cref="ArgumentNullException">An ingredient is null.</exception>
    public static IReadOnlyList<Synergy> Between(Ingredient one, Ingredient other)
    {
        Guard.NotNull(other);
        List<Synergy>? found = null;
        foreach (Synergy synergy in BuiltInCatalogue.SynergyIndex.Of(Guard.NotNull(one)))
        {
            if (synergy.IsOf(one, other))
            {
                (found ??= []).Add(synergy);
            }
        }

        return found ?? (IReadOnlyList<Synergy>)[];
    }
}
