namespace Hydrocolloid.Formulation.Exchange;

/// <summary>The words that keep "no allergen" apart from "nobody has said".</summary>
internal static class AllergenStatus
{
    public static string Of(Ingredient ingredient) => ingredient.Allergens is not { } allergens ? "unknown" : allergens.Value.IsEmpty ? "none-known" : "declared";
}
