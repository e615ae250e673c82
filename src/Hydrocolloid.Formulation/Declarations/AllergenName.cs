namespace Hydrocolloid.Formulation.Declarations;

/// <summary>The kind that stands behind a group of allergens, such as barley behind the cereals containing gluten. Immutable, equal by content.</summary>
/// <param name="Allergen">The group.</param>
/// <param name="Name">The kind or species as the label names it, such as <c>barley</c> or <c>cod</c>.</param>
public sealed record AllergenName(Allergen Allergen, string Name);
