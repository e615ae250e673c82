namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>Whether a dose reaches what was asked.</summary>
public enum DoseOutcome
{
    /// <summary>It does.</summary>
    Reached,

    /// <summary>No amount up to the limit does.</summary>
    NotReached,

    /// <summary>The amount that would does not dissolve.</summary>
    BeyondSolubility,
}
