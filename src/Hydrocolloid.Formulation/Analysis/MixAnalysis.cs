using Hydrocolloid.Formulation.Analysis;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>What is in the pot: the assembled mix, the continuous mix, or any part of the formula. Immutable, safe to share between threads.</summary>
public sealed class MixAnalysis
{
    private readonly Formula _formula;

    internal MixAnalysis(Formula formula)
    {
        _formula = formula;
        Assembled = new MixContents(formula, formula.Lines);
        Continuous = formula.Lines.All(l => l.IsContinuous) ? Assembled : new MixContents(formula, formula.Lines.Where(l => l.IsContinuous));
        Hydrocolloids = ValueList<AgentConcentration>.From(formula.Lines.Where(l => l.IsContinuous && l.Ingredient.Profile is not null).Select(l => new AgentConcentration(
            l, formula.Proportions.PercentOfTotal(l), formula.Proportions.PercentOfContinuousMix(l), formula.Proportions.PercentOfContinuousWater(l))));
    }

    /// <summary>All lines together.</summary>
    public MixContents Assembled { get; }

    /// <summary>All that takes part in the gel.</summary>
    public MixContents Continuous { get; }

    /// <summary>The hydrocolloids and their concentrations.</summary>
    public ValueList<AgentConcentration> Hydrocolloids { get; }

    /// <summary>Some lines of the formula together, such as the liquids that carry the agents.</summary>
    /// <param name="labels">The labels of the lines.</param>
    /// <returns>What they contain.</returns>
    /// <exception cref="ArgumentException">No label is given, one is not a line, or the lines weigh nothing.</exception>
    public MixContents Of(params string[] labels)
    {
        if (Guard.NotNull(labels).Length == 0)
        {
            throw new ArgumentException("Name at least one line.", nameof(labels));
        }

        return new MixContents(_formula, labels.Distinct(StringComparer.Ordinal).Select(_formula.Line));
    }
}
