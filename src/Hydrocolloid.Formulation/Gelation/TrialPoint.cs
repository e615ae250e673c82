using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>One measured gel. Equal by content.</summary>
public readonly record struct TrialPoint
{
    /// <summary>States a measurement.</summary>
    /// <param name="dose">The dose, 0 to 1e6, in the unit of the trial, usually % of the mix.</param>
    /// <param name="strength">The strength, 0 to 1e12, in the unit of the trial, such as g/cm² or kPa.</param>
    /// <param name="standardDeviation">The standard deviation of the strength in its unit, above 0; null if not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public TrialPoint(double dose, double strength, double? standardDeviation = null)
    {
        Dose = Guard.InRange(dose, 0, 1e6, "");
        Strength = Guard.InRange(strength, 0, 1e12, "");
        StandardDeviation = standardDeviation is { } deviation ? Guard.InRange(deviation, 1e-12, 1e12, "", nameof(standardDeviation)) : null;
    }

    /// <summary>The dose in the unit of the trial.</summary>
    public double Dose { get; }

    /// <summary>The strength in the unit of the trial.</summary>
    public double Strength { get; }

    /// <summary>The standard deviation of the strength in its unit; null if not known.</summary>
    public double? StandardDeviation { get; }

    /// <summary>Dose and strength.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Numbers.Significant(Dose, 6)}: {Numbers.Significant(Strength, 6)}";
}
