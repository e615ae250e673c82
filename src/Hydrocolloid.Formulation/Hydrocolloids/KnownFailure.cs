namespace Hydrocolloid.Formulation;

/// <summary>A way in which a hydrocolloid is known to fail in kitchens. Immutable, equal by content.</summary>
/// <param name="Id">Kebab-case id, such as <c>agar-boiled-in-acid</c>.</param>
/// <param name="Agents">Ids of the catalogue entries it happens to; a variant fails like the entry that its id begins with.</param>
/// <param name="Symptoms">What it looks like.</param>
/// <param name="Rules">Ids of the compatibility rules that see it coming where the data are known; empty if none can.</param>
/// <param name="Cause">What happens: a sentence, with its source.</param>
/// <param name="ToBeSure">What to measure or to ask; null if nothing was put down.</param>
/// <param name="NextTime">What to do next time: a sentence.</param>
public sealed record KnownFailure(
    string Id, ValueList<string> Agents, ValueList<Symptom> Symptoms, ValueList<string> Rules, Cited<string> Cause, string? ToBeSure, string NextTime)
{
    /// <summary>All that the catalogue knows. They are read when they are first asked for.</summary>
    public static ValueList<KnownFailure> All => Catalogues.BuiltInCatalogue.Failures;

    /// <summary>Whether it happens to an ingredient; an own ingredient counts as the entry it was made from, a variant as its family.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <returns>Whether it does.</returns>
    public bool Concerns(Ingredient ingredient)
    {
        string id = (Internal.Guard.NotNull(ingredient).BasedOn ?? ingredient).Id;
        return Agents.Any(a => id == a || id.StartsWith(a + "-", StringComparison.Ordinal));
    }
}
