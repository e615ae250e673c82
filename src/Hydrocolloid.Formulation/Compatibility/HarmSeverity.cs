namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>How serious a harm is for a review.</summary>
internal static class HarmSeverity
{
    public static Severity ToSeverity(this Harm harm) => harm switch
    {
        Harm.Fails => Severity.Conflict,
        Harm.Weakens => Severity.Caution,
        _ => Severity.Information,
    };
}
