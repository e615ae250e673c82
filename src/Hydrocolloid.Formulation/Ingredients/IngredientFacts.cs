namespace Hydrocolloid.Formulation;

/// <summary>All that is known of an ingredient beyond its id; a name given to the ingredient itself goes before this one. A catalogue entry's facts are read when one is first asked for.</summary>
internal sealed record IngredientFacts(
    string? Name = null,
    ValueList<string> Synonyms = default,
    string? Category = null,
    string? Provenance = null,
    AdditiveNumbers? Additive = null,
    Origin? Origin = null,
    DietaryFacts? Diet = null,
    Citation? DietCitation = null,
    Cited<ValueList<Allergen>>? Allergens = null,
    Cited<Composition>? Composition = null,
    Cited<double>? Ph = null,
    Cited<NumberRange>? PhRange = null,
    Cited<double>? Brix = null,
    Cited<double>? DensityKgPerM3 = null,
    ValueList<Cited<string>> Cautions = default,
    HydrocolloidProfile? Profile = null,
    Cited<TanninLevel>? Tannin = null,
    Cited<Protease>? Protease = null,
    Cited<MilkProtein>? MilkProtein = null,
    Cited<TitratableAcidity>? TitratableAcidity = null)
{
    public static readonly IngredientFacts None = new();
}
