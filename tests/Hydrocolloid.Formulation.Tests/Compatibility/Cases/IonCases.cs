namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules of this family.</summary>
internal static class IonCases
{
    public static IEnumerable<RuleCase> All => [];
}
