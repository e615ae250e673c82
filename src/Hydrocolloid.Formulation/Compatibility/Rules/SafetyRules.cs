namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about who eats it, how it is shaped, and what the law of the market says.</summary>
internal static class SafetyRules
{
    public static IDescribedRule[] All => [];
}
