namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about alcohol and dissolved solids.</summary>
internal static class SolventRules
{
    public static IDescribedRule[] All => [];
}
