namespace Hydrocolloid.Formulation;

/// <summary>How serious a finding is.</summary>
public enum Severity
{
    /// <summary>Good to know.</summary>
    Information,

    /// <summary>Likely to cost quality: look at it before starting.</summary>
    Caution,

    /// <summary>The gel will fail, or someone may come to harm.</summary>
    Conflict,
}
