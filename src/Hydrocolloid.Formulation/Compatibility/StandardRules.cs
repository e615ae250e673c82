using Hydrocolloid.Formulation.Compatibility.Rules;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>The rules of <see cref="RuleSet.Standard"/>, family by family.</summary>
internal static class StandardRules
{
    public static IDescribedRule[] All =>
    [
        .. DoseRules.All, .. AcidRules.All, .. IonRules.All, .. SolventRules.All, .. SensitivityRules.All, .. PairRules.All,
        .. WeepingRules.All, .. StorageRules.All, .. TemperatureRules.All, .. SafetyRules.All, .. DietRules.All,
    ];
}
