namespace Hydrocolloid.Formulation;

/// <summary>The most of an additive that the law of the USA allows in a category of food. Immutable, equal by content.</summary>
/// <param name="Category">The category in kebab-case words, such as <c>gelatins-and-puddings</c>; <see cref="AllOther"/> for what no other names.</param>
/// <param name="Percent">The ceiling, % by weight of the food as served, with its source.</param>
public sealed record UsCeiling(string Category, Cited<double> Percent)
{
    /// <summary>The category of all foods that no other category names.</summary>
    public const string AllOther = "all-other-food-categories";
}
