namespace Hydrocolloid.Formulation;

/// <summary>How a value of an analysis was come by.</summary>
public enum ReckonedHow
{
    /// <summary>Measured on the very lots used.</summary>
    Measured,

    /// <summary>Worked out from known figures by a stated relation.</summary>
    Computed,

    /// <summary>Worked out with assumptions, or from figures that are themselves estimates.</summary>
    Estimated,
}
