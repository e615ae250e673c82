namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Names of the phases that remedies make.</summary>
internal static class RemedyPhases
{
    public const string BeforeHeat = "before heating";

    public const string AfterHeat = "after heating";
}
