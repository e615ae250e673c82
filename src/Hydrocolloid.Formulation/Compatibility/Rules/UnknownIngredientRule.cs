namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>An ingredient that no catalogue knows: it is weighed, but nothing can be said of it.</summary>
internal sealed class UnknownIngredientRule : ICompatibilityRule
{
    public string Id => "unknown-ingredient";

    public IEnumerable<Finding> Check(Formula formula) => formula.Lines.Where(l => !l.Ingredient.IsKnown).Select(l => new Finding(
        Id, Severity.Caution,
        $"'{l.Ingredient.Id}' is in no catalogue: it is weighed, but its water, allergens and behaviour are unknown. Check the spelling, or state it as an own ingredient.",
        ValueList<string>.Own([l.Label])));
}
