using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>What one step of the work loses: a percentage of what comes into the step, or a fixed mass. Immutable, equal by content.</summary>
public sealed record Loss
{
    private Loss(double percent, double grams)
    {
        PercentOfStep = percent;
        Grams = grams;
    }

    /// <summary>Nothing lost.</summary>
    public static Loss None { get; } = new(0, 0);

    /// <summary>The percentage by weight of what comes into the step; 0 for a fixed mass.</summary>
    public double PercentOfStep { get; }

    /// <summary>The fixed mass, whatever the size of the batch; 0 for a percentage.</summary>
    public Mass FixedMass => Mass.FromGrams(Grams);

    internal double Grams { get; }

    internal bool IsNone => PercentOfStep == 0 && Grams == 0;

    /// <summary>A percentage by weight of what comes into the step.</summary>
    /// <param name="percent">The percentage by weight, 0 up to, not including, 100.</param>
    /// <returns>The loss.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is negative, or 100 and more.</exception>
    public static Loss Percent(double percent)
        => percent is >= 0 and < 100 ? new Loss(percent + 0.0, 0)
            : throw new ArgumentOutOfRangeException(nameof(percent), percent, $"A loss must be at least 0 % and below 100 %, but is {Numbers.Exact(percent)} %.");

    /// <summary>A fixed mass, whatever the size of the batch: what stays on the pan and in the strainer.</summary>
    /// <param name="mass">The mass; not negative.</param>
    /// <returns>The loss.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative or not finite.</exception>
    public static Loss Of(Mass mass) => new(0, Guard.Grams(mass));

    /// <summary>The loss as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Grams > 0 ? Numbers.Significant(Grams, 6) + " g" : Numbers.Significant(PercentOfStep, 6) + " %";

    internal double LostFrom(double grams) => grams * PercentOfStep / 100 + Grams;

    internal double Before(double gramsAfter) => (gramsAfter + Grams) / (1 - PercentOfStep / 100);
}
