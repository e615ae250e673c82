using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>
/// A percentage by weight of a stated reference: <c>Dose.Percent(0.25).OfPreceding</c>. Immutable, equal by content.
/// Any number can be stated; whether it can be is checked with the whole formula, so that all problems are reported together.
/// </summary>
public sealed record Dose
{
    internal Dose(double percent, DoseReference reference)
    {
        PercentByMass = percent + 0.0;
        Reference = reference;
    }

    /// <summary>The percentage by weight of <see cref="Reference"/>.</summary>
    public double PercentByMass { get; }

    /// <summary>What the 100 % is.</summary>
    public DoseReference Reference { get; }

    /// <summary>Starts a dose; what it is a percentage of comes next.</summary>
    /// <param name="percent">The percentage by weight; 0.2 for 0.2 %.</param>
    /// <returns>The percentage, still without a reference.</returns>
    public static DosePercent Percent(double percent) => new(percent);

    /// <summary>Starts a dose from a ratio; what it is a share of comes next.</summary>
    /// <param name="ratio">The share by weight.</param>
    /// <returns>The percentage, still without a reference.</returns>
    /// <exception cref="ArgumentException">The ratio carries a unit that does not exist.</exception>
    public static DosePercent Share(Ratio ratio) => new(Guard.Percent(ratio));

    /// <summary>The dose in words, such as <c>0.25 % of everything so far</c>.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => Numbers.Significant(PercentByMass, 6) + " % of " + Reference;
}
