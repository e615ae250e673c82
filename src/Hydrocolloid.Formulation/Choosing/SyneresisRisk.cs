using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>How likely the gel of one agent in a formula is to weep: a class with its reasons. How much comes off is not published for kitchen gels; a trial tells (<see cref="Gelation.GelModifiers.Syneresis"/>). Immutable, equal by content.</summary>
public sealed record SyneresisRisk
{
    internal SyneresisRisk(FormulaLine line, SyneresisClass risk, ValueList<Cited<string>> reasons, ValueList<Evidence> evidence, ValueList<Remedy> remedies)
    {
        Label = line.Label;
        Agent = line.Ingredient;
        Class = risk;
        Reasons = reasons;
        Evidence = evidence;
        Remedies = remedies;
    }

    /// <summary>The label of the agent's line.</summary>
    public string Label { get; }

    /// <summary>The agent.</summary>
    public Ingredient Agent { get; }

    /// <summary>The class.</summary>
    public SyneresisClass Class { get; }

    /// <summary>What led to the class, in the order in which it was weighed, each with its source.</summary>
    public ValueList<Cited<string>> Reasons { get; }

    /// <summary>The amounts that were looked at, against what they should be.</summary>
    public ValueList<Evidence> Evidence { get; }

    /// <summary>What helps, as the rules have it; empty if nothing that could be applied.</summary>
    public ValueList<Remedy> Remedies { get; }

    /// <summary>The agent, the class and the reasons.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Agent.Name}: {Words.Of(Class)}. {string.Join(" ", Reasons.Select(r => r.Value))}";
}
