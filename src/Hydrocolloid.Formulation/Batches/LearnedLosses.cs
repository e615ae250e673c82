using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Losses learned from weighings of one batch or several, step by step. Immutable, equal by content.</summary>
public sealed record LearnedLosses
{
    private LearnedLosses(ValueList<LearnedLoss> steps) => Steps = steps;

    /// <summary>The steps that were weighed, in their order.</summary>
    public ValueList<LearnedLoss> Steps { get; }

    /// <summary>Learns from weighings.</summary>
    /// <param name="weighings">The weighings, in any order; at least one.</param>
    /// <returns>What was learned.</returns>
    /// <exception cref="ArgumentException">There is no weighing.</exception>
    public static LearnedLosses From(IEnumerable<StepWeighing> weighings)
    {
        LearnedLoss[] steps = [.. Guard.NotNull(weighings).GroupBy(w => Guard.NotNull(w, nameof(weighings)).Step).OrderBy(g => g.Key)
            .Select(g => new LearnedLoss(g.Key, ValueList<StepWeighing>.From(g)))];
        return steps.Length > 0 ? new LearnedLosses(ValueList<LearnedLoss>.Own(steps)) : throw new ArgumentException("Give at least one weighing.", nameof(weighings));
    }

    /// <summary>What was learned of a step; null if it was not weighed.</summary>
    /// <param name="step">The step.</param>
    /// <returns>The loss, or null.</returns>
    public LearnedLoss? Of(LossStep step) => Steps.FirstOrDefault(s => s.Step == step);

    /// <summary>The mean losses, to scale with. A step that was not weighed loses nothing.</summary>
    /// <param name="toppedUp">Whether the water that boils off is put back by weight.</param>
    /// <returns>The losses.</returns>
    public Losses ToLosses(bool toppedUp = false) => new()
    {
        Evaporation = Mean(LossStep.Evaporation),
        ToppedUp = toppedUp,
        Straining = Mean(LossStep.Straining),
        Transfer = Mean(LossStep.Transfer),
        Trimming = Mean(LossStep.Trimming),
    };

    /// <summary>The steps, in their order.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Steps.ToString();

    private Loss Mean(LossStep step) => Of(step) is { } learned ? Loss.Percent(learned.MeanPercent) : Loss.None;
}
