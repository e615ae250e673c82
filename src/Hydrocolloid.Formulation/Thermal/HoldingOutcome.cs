namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Where a temperature lies against the limits for holding food.</summary>
public enum HoldingOutcome
{
    /// <summary>Cold enough.</summary>
    Cold,

    /// <summary>Between the limits: below the hot one and above the cold one.</summary>
    Between,

    /// <summary>Hot enough.</summary>
    Hot,
}
