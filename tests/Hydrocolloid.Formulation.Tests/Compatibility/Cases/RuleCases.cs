namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>The cases of all families.</summary>
internal static class RuleCases
{
    public static IReadOnlyList<RuleCase> All { get; } =
    [
        .. DoseCases.All,
        .. AcidCases.All,
        .. IonCases.All,
        .. SolventCases.All,
        .. SensitivityCases.All,
        .. PairCases.All,
        .. WeepingCases.All,
        .. StorageCases.All,
        .. TemperatureCases.All,
        .. SafetyCases.All,
        .. DietCases.All,
    ];
}
