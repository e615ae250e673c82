namespace Hydrocolloid.Formulation;

/// <summary>How far a reading of a balance is taken to be off, and so how little may be weighed on it.</summary>
public enum MinimumWeightRule
{
    /// <summary>Half a division: the rounding of the display alone.</summary>
    HalfDivision,

    /// <summary>
    /// Twice the standard deviation of repeated weighings, which is taken as at least 0.41 divisions: the rule of USP chapter 41, stated there for
    /// 0.10 %, carried over to other tolerances.
    /// </summary>
    Repeatability,
}
