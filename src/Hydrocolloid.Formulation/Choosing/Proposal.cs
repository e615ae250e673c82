using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>A formula that answers a brief: reviewed and planned without a conflict. Immutable.</summary>
public sealed class Proposal
{
    internal Proposal(GelSystem system, Placing.Placed placed, ValueList<CriterionScore> criteria)
    {
        System = system;
        Formula = placed.Formula;
        Doses = placed.Doses;
        Helpers = placed.Remedies;
        Findings = placed.Findings;
        Method = placed.Method;
        Criteria = criteria;
        double weights = criteria.Sum(c => c.Weight);
        Score = weights > 0 ? 100 * criteria.Sum(c => c.Score * c.Weight) / weights : 0;
    }

    /// <summary>The agent or blend.</summary>
    public GelSystem System { get; }

    /// <summary>The formula, with the service plan of the brief.</summary>
    public Formula Formula { get; }

    /// <summary>The doses, and where they come from.</summary>
    public ValueList<ChosenDose> Doses { get; }

    /// <summary>What was put in or ordered so that it sets: remedies of the rules, already in the formula.</summary>
    public ValueList<Remedy> Helpers { get; }

    /// <summary>What the review finds; nothing in it is a conflict.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>How it is worked in the kitchen of the brief; without a conflict.</summary>
    public Method Method { get; }

    /// <summary>How it does on each criterion that counts here.</summary>
    public ValueList<CriterionScore> Criteria { get; }

    /// <summary>The mean of the criteria by their weights, 0 to 100, no unit. A help to choose, not a measurement.</summary>
    public double Score { get; }

    /// <summary>The score, the name and the doses.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Numbers.Fixed(Score, 0)}  {System.Name}: {string.Join("; ", Doses.Select(d => $"{Phrases.InSentence(d.Agent.Name)} {d.Dose}"))}";
}
