namespace Hydrocolloid.Formulation.Declarations;

/// <summary>An allergen that the label must name. Immutable, equal by content.</summary>
/// <param name="Allergen">The group.</param>
/// <param name="Name">Its name for the market, with the kinds that are known, such as <c>cereals containing gluten (barley)</c>.</param>
/// <param name="Lines">The labels of the lines that hold it.</param>
/// <param name="Citation">The list it stands in.</param>
public sealed record DeclaredAllergen(Allergen Allergen, string Name, ValueList<string> Lines, Citation Citation)
{
    /// <summary>The name.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Name;
}
