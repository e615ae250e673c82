namespace Hydrocolloid.Formulation;

/// <summary>How much tannin and other polyphenol an ingredient holds: a class of this catalogue by total phenols.</summary>
public enum TanninLevel
{
    /// <summary>Less than 50 mg/L.</summary>
    None,

    /// <summary>50 to 500 mg/L.</summary>
    Low,

    /// <summary>500 to 1500 mg/L.</summary>
    Moderate,

    /// <summary>More than 1500 mg/L.</summary>
    High,
}
