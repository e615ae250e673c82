namespace Hydrocolloid.Formulation.Gelation;

/// <summary>How far a result can be relied on.</summary>
public enum Reliance
{
    /// <summary>The sources call the relation predictive: a number to work with, within its stated uncertainty.</summary>
    Predictive,

    /// <summary>Good for a first dose, a ranking or a warning that a trial then confirms.</summary>
    Screening,

    /// <summary>Only the direction is known: no number is given.</summary>
    QualitativeOnly,
}
