namespace Hydrocolloid.Formulation;

/// <summary>All that is known of an ingredient beyond its id and name. A catalogue entry's facts are read when one is first asked for.</summary>
internal sealed record IngredientFacts
{
    public static readonly IngredientFacts None = new();

    public ValueList<string> Synonyms { get; init; }

    public string? Category { get; init; }

    public string? Provenance { get; init; }

    public AdditiveNumbers? Additive { get; init; }

    public Origin? Origin { get; init; }

    public DietaryFacts? Diet { get; init; }

    public Citation? DietCitation { get; init; }

    public Cited<ValueList<Allergen>>? Allergens { get; init; }

    public Cited<Composition>? Composition { get; init; }

    public Cited<double>? Ph { get; init; }

    public Cited<NumberRange>? PhRange { get; init; }

    public Cited<double>? Brix { get; init; }

    public Cited<double>? DensityKgPerM3 { get; init; }

    public ValueList<Cited<string>> Cautions { get; init; }

    public HydrocolloidProfile? Profile { get; init; }
}
