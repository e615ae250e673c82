namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about diets and allergens.</summary>
internal static class DietRules
{
    public static IDescribedRule[] All => [];
}
