namespace Hydrocolloid.Formulation.Thermal;

/// <summary>A cooling rule against a curve. Immutable, equal by content.</summary>
public sealed record CoolingVerdict
{
    internal CoolingVerdict(CoolingRule rule, ValueList<CoolingCheck> checks)
    {
        Rule = rule;
        Checks = checks;
        Outcome = checks.Max(c => c.Outcome);
    }

    /// <summary>The rule.</summary>
    public CoolingRule Rule { get; }

    /// <summary>Its limits against the curve.</summary>
    public ValueList<CoolingCheck> Checks { get; }

    /// <summary>Met if every limit is met, not met if one is not.</summary>
    public CoolingRuleOutcome Outcome { get; }

    /// <summary>What to bear in mind.</summary>
    public string Caution { get; } = "Rules differ from place to place and are revised: the local food code decides. A computed curve is an estimate; measure the warmest part.";

    /// <summary>Rule and checks, one a line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Rule.Name + "\n" + string.Concat(Checks.Select(c => "- " + c + "\n"));
}
