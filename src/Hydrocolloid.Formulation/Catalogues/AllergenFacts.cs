namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>How labels treat a group of allergens.</summary>
/// <param name="Allergen">The group.</param>
/// <param name="Name">Its name on a label of the European Union.</param>
/// <param name="Words">The words that name it or one of its kinds.</param>
/// <param name="Specify">The markets (<c>eu</c>, <c>us</c>, <c>codex</c>) where the kind or species must be named.</param>
/// <param name="UsName">Its name among the major allergens of the United States; null if it is not one.</param>
/// <param name="UsWords">The kinds that the US list means, where it does not mean the whole group.</param>
/// <param name="Codex"><c>always</c>, <c>regional</c> or <c>none</c>.</param>
/// <param name="Gs1Code">The allergen type code of GS1.</param>
/// <param name="Exempt">What is made of it and need not be declared in the European Union.</param>
internal sealed record AllergenFacts(
    Allergen Allergen,
    Cited<string> Name,
    ValueList<string> Words,
    ValueList<string> Specify,
    Cited<string>? UsName,
    ValueList<string> UsWords,
    Cited<string> Codex,
    Cited<string> Gs1Code,
    ValueList<Cited<string>> Exempt);
