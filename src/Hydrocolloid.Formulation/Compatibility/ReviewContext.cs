using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>
/// A formula under review: what the rules look at, worked out once for all of them. Made for one review and used by one thread.
/// </summary>
public sealed class ReviewContext
{
    private readonly Dictionary<int, MixContents> _media = [];
    private readonly List<Finding>? _missing;
    private List<AgentInMix>? _agents;

    internal ReviewContext(Formula formula, List<Finding>? missing = null)
    {
        Formula = formula;
        Analysis = formula.Analyse();
        _missing = missing;
    }

    /// <summary>The formula.</summary>
    public Formula Formula { get; }

    /// <summary>What it contains.</summary>
    public MixAnalysis Analysis { get; }

    /// <summary>What gels.</summary>
    public MixContents Mix => Analysis.Continuous;

    /// <summary>How it is to be served.</summary>
    public ServicePlan Service => Formula.Service;

    /// <summary>The hydrocolloids that take part in the gel, in the order of the formula.</summary>
    internal List<AgentInMix> Agents => _agents ??= [.. AgentInMix.All(this)];

    /// <summary>Whether lines with casein make up half of the mix or more: what is known of gels in milk then counts.</summary>
    internal bool IsMostlyMilk => Mix.Casein.Sum(Formula.Proportions.PercentOfContinuousMix) >= 50;

    /// <summary>
    /// What a hydrocolloid is hydrated in: the carriers (or the whole base), and what has been added up to and with its own phase.
    /// What comes in a later phase comes after the heat.
    /// </summary>
    /// <param name="agent">The line of the hydrocolloid.</param>
    /// <returns>What the lines contain together.</returns>
    public MixContents HydrationMedium(FormulaLine agent)
    {
        int phase = Guard.NotNull(agent).PhaseIndex;
        if (!_media.TryGetValue(phase, out MixContents? medium))
        {
            FormulaLine[] lines = [.. HydrationLines(agent)];
            medium = lines.Length == Formula.Lines.Count(l => l.IsContinuous) ? Mix : new MixContents(Formula, lines);
            _media.Add(phase, medium);
        }

        return medium;
    }

    /// <summary>The lines of <see cref="HydrationMedium"/>.</summary>
    /// <param name="agent">The line of the hydrocolloid.</param>
    /// <returns>The lines, in the order of the formula.</returns>
    public IEnumerable<FormulaLine> HydrationLines(FormulaLine agent)
    {
        Guard.NotNull(agent);
        ValueList<string> carriers = Formula.Process.Carriers;
        return Formula.Lines.Where(l => l.IsContinuous
            && (l.IsBase ? carriers.IsEmpty || carriers.Contains(l.Label) : l.PhaseIndex <= agent.PhaseIndex));
    }

    /// <summary>Says what a rule would need in order to judge; it is reported only if the rules are set to report it.</summary>
    /// <param name="ruleId">The id of the rule.</param>
    /// <param name="need">What is needed: a noun with its owner, such as <c>the pH of the pear juice</c>.</param>
    /// <param name="lines">The labels of the lines it is about.</param>
    public void Needs(string ruleId, string need, params string[] lines)
        => _missing?.Add(new Finding(ruleId, Severity.Information, $"Not checked: this needs {need}.", ValueList<string>.From(lines)) { IsUnchecked = true });
}
