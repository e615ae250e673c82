using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>What a batch weighed before and after a step, without the vessel. Immutable, equal by content.</summary>
public sealed record StepWeighing
{
    /// <summary>Records a weighing.</summary>
    /// <param name="step">The step.</param>
    /// <param name="before">What went in; above 0 g.</param>
    /// <param name="after">What came out; above 0 g and not more than went in.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass is missing (0 g), or the mass grew.</exception>
    public StepWeighing(LossStep step, Mass before, Mass after)
    {
        Step = (LossStep)Guard.Defined((int)step, (int)LossStep.Trimming, nameof(step));
        BeforeGrams = Guard.PositiveGrams(before);
        AfterGrams = Guard.PositiveGrams(after);
        if (AfterGrams > BeforeGrams)
        {
            throw new ArgumentOutOfRangeException(nameof(after), AfterGrams,
                $"No step makes mass: {Numbers.Significant(AfterGrams, 6)} g came out of {Numbers.Significant(BeforeGrams, 6)} g at {step.ToString().ToLowerInvariant()}. Was the vessel tared?");
        }
    }

    /// <summary>The step.</summary>
    public LossStep Step { get; }

    /// <summary>What went in.</summary>
    public Mass Before => Mass.FromGrams(BeforeGrams);

    /// <summary>What came out.</summary>
    public Mass After => Mass.FromGrams(AfterGrams);

    /// <summary>The loss, % of what went in.</summary>
    public double LossPercent => (BeforeGrams - AfterGrams) / BeforeGrams * 100;

    internal double BeforeGrams { get; }

    internal double AfterGrams { get; }

    /// <summary>The step and the masses.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => $"{Step.ToString().ToLowerInvariant()}: {Numbers.Significant(BeforeGrams, 6)} g to {Numbers.Significant(AfterGrams, 6)} g";
}
