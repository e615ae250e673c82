namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Whether a body can be given a temperature that brings the mix to its target.</summary>
public enum NeededOutcome
{
    /// <summary>It can.</summary>
    Possible,

    /// <summary>No: it would have to be hotter than it boils.</summary>
    NeedsAboveBoiling,

    /// <summary>No: it would have to be colder than 0 °C; at any temperature the mix stays above the target.</summary>
    NeedsBelowFreezing,
}
