using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>One limit of a rule against a curve. Immutable, equal by content.</summary>
public sealed record CoolingCheck
{
    internal CoolingCheck(CoolingLimit limit, double? takenSeconds, CoolingRuleOutcome outcome)
    {
        Limit = limit;
        TakenSeconds = takenSeconds;
        Outcome = outcome;
    }

    /// <summary>The limit.</summary>
    public CoolingLimit Limit { get; }

    /// <summary>The time it took; null if the curve does not come down so far.</summary>
    public Duration? Taken => TakenSeconds is { } s ? Duration.FromSeconds(s) : null;

    /// <summary>Whether the limit is met.</summary>
    public CoolingRuleOutcome Outcome { get; }

    internal double? TakenSeconds { get; }

    /// <summary>The limit, the time taken and the outcome.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string taken = TakenSeconds is { } s ? $"took {Numbers.Fixed(s / 3600, 2)} h" : "not reached";
        string outcome = Outcome switch { CoolingRuleOutcome.Met => "met", CoolingRuleOutcome.NotMet => "not met", _ => "not shown" };
        return $"{Limit}: {taken}, {outcome}";
    }
}
