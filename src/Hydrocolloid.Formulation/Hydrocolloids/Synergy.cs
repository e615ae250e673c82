using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>What is known of two ingredients together. Immutable, equal by content.</summary>
/// <param name="Id">Kebab-case id, such as <c>agar-and-locust-bean-gum</c>.</param>
/// <param name="First">Ids of the catalogue entries that stand for the first of the pair.</param>
/// <param name="Second">Ids of the catalogue entries that stand for the second of the pair; empty if the catalogue has none.</param>
/// <param name="Partner">The second of the pair in words, where it is a kind of ingredient rather than an entry, such as <c>milk casein</c>; null otherwise.</param>
/// <param name="Effects">What they do to each other.</param>
/// <param name="Ratios">Published best ratios, each with what it is best for; by weight in the order of the pair unless it says otherwise.</param>
/// <param name="Percent">Published doses, % by weight of the continuous mix: of both together unless the note says otherwise.</param>
/// <param name="Conditions">What it takes: temperatures, pH, ions, order of work.</param>
/// <param name="Magnitude">How large the effect is.</param>
/// <param name="Recommended">What this catalogue recommends, and why; null if nothing.</param>
/// <param name="FirstPercent">The best share of the first, % by weight of the two together; null if not stated.</param>
/// <param name="AgainstWeepingPercent">How much of the second keeps the first from weeping, % by weight of the continuous mix; null if not stated.</param>
/// <param name="Doses">Working doses of both together, by texture, where the two are a blend to gel with; empty otherwise.</param>
/// <param name="Melts">Where the gel of both melts, if neither gels alone; null otherwise, or if not known.</param>
/// <param name="Provenance">The record it was made from (our reference id); null if none.</param>
public sealed record Synergy(
    string Id,
    ValueList<string> First,
    ValueList<string> Second,
    string? Partner,
    Cited<ValueList<SynergyEffect>> Effects,
    ValueList<Cited<string>> Ratios,
    ValueList<Cited<NumberRange>> Percent,
    ValueList<Cited<string>> Conditions,
    ValueList<Cited<string>> Magnitude,
    Cited<string>? Recommended,
    Cited<NumberRange>? FirstPercent = null,
    Cited<NumberRange>? AgainstWeepingPercent = null,
    ValueList<BlendDose> Doses = default,
    Cited<TemperatureRange>? Melts = null,
    string? Provenance = null)
{
    /// <summary>Whether it is about these two ingredients, in either order. An own ingredient counts as the entry it was made from.</summary>
    /// <param name="one">One ingredient.</param>
    /// <param name="other">The other.</param>
    /// <returns>Whether it is.</returns>
    /// <exception cref="ArgumentNullException">An ingredient is null.</exception>
    public bool IsOf(Ingredient one, Ingredient other)
    {
        Guard.NotNull(one);
        Guard.NotNull(other);
        return (IsFirst(one) && Stands(Second, other)) || (IsFirst(other) && Stands(Second, one));
    }

    /// <summary>Whether an ingredient stands for the first of the pair.</summary>
    /// <summary>The working dose of both together for a texture.</summary>
    /// <param name="texture">The texture.</param>
    /// <returns>The dose; null if none is known.</returns>
    public BlendDose? DoseFor(Texture texture) => Doses.FirstOrDefault(d => d.Texture == texture);

    internal bool IsFirst(Ingredient ingredient) => Stands(First, ingredient);

    private static bool Stands(ValueList<string> ids, Ingredient ingredient)
    {
        foreach (string id in ids.Span)
        {
            if (id == ingredient.Id)
            {
                return true;
            }
        }

        return ingredient.BasedOn is { } entry && Stands(ids, entry);
    }
}
