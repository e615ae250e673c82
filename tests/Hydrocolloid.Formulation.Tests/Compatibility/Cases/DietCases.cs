namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about diets and allergens.</summary>
internal static class DietCases
{
    private static readonly Ingredient Unknown = Ingredient.Own("house-gum", "House gum");

    public static IEnumerable<RuleCase> All =>
    [
        new("gelatin in a vegan dish", "diet-not-met", Severity.Conflict, () => Of(Hydrocolloids.GelatinTypeA, 1.5, Suits(Diet.Vegan)), () => Of(Hydrocolloids.Agar, 0.5, Suits(Diet.Vegan)), () => Of(Unknown, 1, Suits(Diet.Vegan))),
        new("gelatin in a vegetarian dish", "diet-not-met", Severity.Conflict, () => Of(Hydrocolloids.GelatinTypeB, 1.5, Suits(Diet.Vegetarian)), () => Of(Hydrocolloids.Agar, 0.5, Suits(Diet.Vegetarian), Pantry.WholeMilk)),
        new("milk in a vegan dish", "diet-not-met", Severity.Conflict, () => Of(Hydrocolloids.Agar, 0.5, Suits(Diet.Vegan), Pantry.WholeMilk), () => Of(Hydrocolloids.Agar, 0.5, Suits(Diet.Vegan), Pantry.OatDrink)),
        new("gelatin in a halal dish", "ask-the-certifier", Severity.Caution, () => Of(Hydrocolloids.GelatinTypeA, 1.5, Suits(Diet.Halal)), () => Of(Hydrocolloids.Agar, 0.5, Suits(Diet.Halal))),
        new("gelatin in a kosher dish", "ask-the-certifier", Severity.Caution, () => Of(Hydrocolloids.GelatinTypeB, 1.5, Suits(Diet.Kosher)), () => Of(Hydrocolloids.Agar, 0.5, Suits(Diet.Kosher))),
        new("fish gelatin in a dish free from fish", "allergen-present", Severity.Conflict,
            () => Of(Hydrocolloids.GelatinFish, 2.5, new() { FreeFrom = ValueList<Allergen>.From([Allergen.Fish]) }), () => Of(Hydrocolloids.GelatinTypeA, 1.5, new() { FreeFrom = ValueList<Allergen>.From([Allergen.Fish]) }), () => Of(Unknown, 1, new() { FreeFrom = ValueList<Allergen>.From([Allergen.Fish]) })),
        new("fish gelatin", "unexpected-allergen", Severity.Information, () => Of(Hydrocolloids.GelatinFish, 2.5, new()), () => Of(Hydrocolloids.GelatinTypeA, 1.5, new())),
    ];

    private static ServicePlan Suits(Diet diet) => new() { Diets = ValueList<Diet>.From([diet]) };

    private static Formula Of(Ingredient agent, double percent, ServicePlan service, Ingredient? liquid = null) => SafetyCases.Of(agent, percent, service, liquid);
}
