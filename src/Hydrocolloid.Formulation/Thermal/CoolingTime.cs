using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>The time until a temperature is reached, or that it is not. Immutable, equal by content.</summary>
public readonly record struct CoolingTime
{
    private readonly double _seconds;

    private CoolingTime(CoolingTimeOutcome outcome, double seconds)
    {
        Outcome = outcome;
        _seconds = seconds;
    }

    /// <summary>Whether the temperature is reached.</summary>
    public CoolingTimeOutcome Outcome { get; }

    /// <summary>The time; null if it is not reached.</summary>
    public Duration? Time => Seconds is { } s ? Duration.FromSeconds(s) : null;

    internal double? Seconds => Outcome == CoolingTimeOutcome.Reached ? _seconds : null;

    /// <summary>The time as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Outcome switch
    {
        CoolingTimeOutcome.Reached => Numbers.Significant(_seconds / 60, 4) + " min",
        CoolingTimeOutcome.Never => "never: the surroundings are not colder",
        _ => "not before the steps end",
    };

    internal static CoolingTime After(double seconds) => new(CoolingTimeOutcome.Reached, seconds);

    internal static CoolingTime Not(CoolingTimeOutcome outcome) => new(outcome, 0);
}
