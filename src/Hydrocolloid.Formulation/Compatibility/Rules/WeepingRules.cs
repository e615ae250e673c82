namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about weeping, clarity and air.</summary>
internal static class WeepingRules
{
    public static IDescribedRule[] All => [];
}
