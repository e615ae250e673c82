using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>A balance by the smallest step it shows. Immutable, equal by content.</summary>
public sealed record Balance
{
    private Balance(double divisionGrams) => DivisionGrams = divisionGrams;

    /// <summary>The smallest step it shows.</summary>
    public Mass Division => Mass.FromGrams(DivisionGrams);

    internal double DivisionGrams { get; }

    /// <summary>A balance with a division.</summary>
    /// <param name="division">The smallest step it shows, such as 0.1 g; 0.000001 g to 1000 g.</param>
    /// <returns>The balance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Balance WithDivision(Mass division) => new(Guard.InRange(Guard.Grams(division), 1e-6, 1000, "g", nameof(division)));

    /// <summary>A mass as the balance can show it: the nearest multiple of the division, halves upwards.</summary>
    /// <param name="mass">The mass.</param>
    /// <returns>The mass shown.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative or not finite.</exception>
    public Mass Round(Mass mass) => Mass.FromGrams(RoundGrams(Guard.Grams(mass)));

    /// <summary>The smallest mass that rounding to the division keeps within a tolerance: half a division over the tolerance.</summary>
    /// <param name="tolerancePercent">The tolerance, % of the mass; above 0, up to 100.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is outside its range.</exception>
    public Mass SmallestWithin(double tolerancePercent)
        => Mass.FromGrams(DivisionGrams / 2 / (Guard.InRange(tolerancePercent, double.Epsilon, 100, "%") / 100));

    /// <summary>The smallest batch of a formula in which rounding keeps every line within a tolerance.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="tolerancePercent">The tolerance, % of each mass; above 0, up to 100.</param>
    /// <returns>The base mass of that batch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is outside its range.</exception>
    public Mass SmallestBatch(Formula formula, double tolerancePercent = WeighSheet.DefaultTolerancePercent)
    {
        double least = double.PositiveInfinity;
        foreach (double mass in Guard.NotNull(formula).Proportions.Masses)
        {
            least = mass > 0 ? Math.Min(least, mass) : least;
        }

        return Mass.FromGrams(SmallestWithin(tolerancePercent).Grams / least);
    }

    /// <summary>The division as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Numbers.Significant(DivisionGrams, 6) + " g division";

    // Decimal arithmetic, so that 0.15 g on a 0.1 g balance is the half it looks like.
    internal double RoundGrams(double grams)
        => (double)(Math.Round((decimal)grams / (decimal)DivisionGrams, 0, MidpointRounding.AwayFromZero) * (decimal)DivisionGrams);
}
