namespace Hydrocolloid.Formulation;

/// <summary>
/// A line as the builder holds it, before anything is checked: a dose, or a weight that becomes a dose on
/// <see cref="Reference"/> once the whole formula is solved.
/// </summary>
internal sealed record DraftLine(Ingredient Ingredient, double Percent, double? Grams, DoseReference Reference, LineDetails Details)
{
    public string Label => Details.Label ?? Ingredient.Id;
}
