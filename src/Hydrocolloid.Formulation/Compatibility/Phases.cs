namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Names of the phases that remedies make.</summary>
internal static class Phases
{
    public const string BeforeHeat = "before heating";

    public const string AfterHeat = "after heating";
}
