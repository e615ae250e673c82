namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about tannins, enzymes, proteins, fat and starch.</summary>
internal static class SensitivityRules
{
    public static IDescribedRule[] All => [];
}
