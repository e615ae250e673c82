namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Whether a temperature is reached.</summary>
public enum CoolingTimeOutcome
{
    /// <summary>It is reached, at the time given.</summary>
    Reached,

    /// <summary>The steps end before it is reached.</summary>
    StepsEndBefore,

    /// <summary>It is never reached: the last surroundings are not colder.</summary>
    Never,
}
