namespace Hydrocolloid.Formulation.Gelation;

/// <summary>What to know before relying on a fit.</summary>
public enum TrialIssue
{
    /// <summary>Two points: a curve, but no interval. Measure a third.</summary>
    NoInterval,

    /// <summary>Three or four points: Student's t is 12.7 or 4.3 and the intervals are wide. Measure more.</summary>
    FewPoints,

    /// <summary>Strength does not rise with the dose: no dose can be found for a strength.</summary>
    NotRising,

    /// <summary>The 95 % interval of the slope includes zero: the trial does not show that strength depends on the dose.</summary>
    SlopeUncertain,

    /// <summary>A point lies further off than chance explains (see <see cref="TrialFit.Outliers"/>): measure it again; do not drop it for that alone.</summary>
    Outlier,
}
