namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about hydrocolloids together: incompatible ones, their order, and synergies.</summary>
internal static class PairRules
{
    public static IDescribedRule[] All => [];
}
