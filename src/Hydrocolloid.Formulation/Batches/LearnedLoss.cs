using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.Statistics;

namespace Hydrocolloid.Formulation;

/// <summary>What a step has lost so far: the mean of its weighings, in which every batch counts the same. Immutable, equal by content.</summary>
public sealed record LearnedLoss
{
    internal LearnedLoss(LossStep step, ValueList<StepWeighing> weighings)
    {
        double[] percents = [.. weighings.Select(w => w.LossPercent)];
        Step = step;
        Weighings = weighings;
        MeanPercent = percents.Mean();
        SpreadPercent = percents.Length > 1 ? percents.StandardDeviation() : null;
    }

    /// <summary>The step.</summary>
    public LossStep Step { get; }

    /// <summary>The weighings it was learned from; at least one.</summary>
    public ValueList<StepWeighing> Weighings { get; }

    /// <summary>The mean loss, % of what goes into the step.</summary>
    public double MeanPercent { get; }

    /// <summary>The mean yield, % of what goes into the step.</summary>
    public double YieldPercent => 100 - MeanPercent;

    /// <summary>The standard deviation of the losses (n − 1), in % of what goes into the step; null for a single weighing.</summary>
    public double? SpreadPercent { get; }

    /// <summary>The mean, the spread and the number of weighings.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Step.ToString().ToLowerInvariant()} {Numbers.Significant(MeanPercent, 4)} %"
        + (SpreadPercent is { } spread ? $" ± {Numbers.Significant(spread, 2)} % ({Numbers.Exact(Weighings.Count)} weighings)" : " (1 weighing)");

    /// <summary>How the mean was worked out, weighing by weighing.</summary>
    /// <returns>The derivation.</returns>
    public Derivation Explain()
    {
        Derivation[] losses = [.. Weighings.Select((w, i) =>
        {
            string before = Derivation.Text(w.BeforeGrams, "g");
            return new Derivation($"loss {Numbers.Exact(i + 1)}", $"({before} - {Derivation.Text(w.AfterGrams, "g")}) / {before} × 100 %", w.LossPercent, "%");
        })];
        return new Derivation(Step.ToString().ToLowerInvariant(), $"mean of {string.Join(", ", losses.Select(l => l.ValueText))}", MeanPercent, "%", losses);
    }
}
