using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>A balance: the smallest step it shows and, where known, what it can carry and how exact it is. Immutable, equal by content.</summary>
public sealed record Balance
{
    private readonly double? _capacityGrams;

    private Balance(double divisionGrams) => DivisionGrams = divisionGrams;

    /// <summary>The smallest step it shows, d.</summary>
    public Mass Division => Mass.FromGrams(DivisionGrams);

    /// <summary>The smallest load that it may be used for, whatever its division; zero if not known.</summary>
    public Mass MinimumLoad
    {
        get => Mass.FromGrams(MinimumLoadGrams);
        init => MinimumLoadGrams = Guard.Grams(value, nameof(MinimumLoad));
    }

    /// <summary>What it can carry, the vessel included; null if not known, which is taken as enough.</summary>
    public Mass? Capacity
    {
        get => _capacityGrams is { } grams ? Mass.FromGrams(grams) : null;
        init => _capacityGrams = value is { } mass
            ? Guard.InRange(Guard.Grams(mass, nameof(Capacity)), DivisionGrams, Guard.MaxMassGrams, "g", nameof(Capacity)) : null;
    }

    /// <summary>The standard deviation of at least ten weighings of one small mass; null if not measured, which is taken as 0.41 divisions.</summary>
    public Mass? Repeatability
    {
        get => RepeatabilityGrams is { } grams ? Mass.FromGrams(grams) : null;
        init => RepeatabilityGrams = value is { } mass ? Guard.Grams(mass, nameof(Repeatability)) : null;
    }

    /// <summary>Its class by OIML R 76; null if not known.</summary>
    public BalanceClass? Class { get; private init; }

    /// <summary>The step e by which it is verified; that of the display unless stated.</summary>
    public Mass VerificationInterval => Mass.FromGrams(VerificationGrams);

    /// <summary>The source of the classes, their least loads and their permissible errors.</summary>
    public static Citation ClassCitation => WeighingSources.Classes;

    /// <summary>The source of twice those errors in service.</summary>
    public static Citation InServiceCitation => WeighingSources.InService;

    internal double DivisionGrams { get; }

    internal double MinimumLoadGrams { get; private init; }

    internal double CapacityGrams => _capacityGrams ?? double.PositiveInfinity;

    private double? RepeatabilityGrams { get; init; }

    private double VerificationGrams => StatedVerificationGrams ?? DivisionGrams;

    private double? StatedVerificationGrams { get; init; }

    /// <summary>A balance with a division.</summary>
    /// <param name="division">The smallest step it shows, such as 0.1 g; 0.000001 g to 1000 g.</param>
    /// <returns>The balance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Balance WithDivision(Mass division) => new(Guard.InRange(Guard.Grams(division), 1e-6, 1000, "g", nameof(division)));

    /// <summary>A verified balance: its class sets its minimum load and its permissible errors (OIML R 76-1:2006, tables 3 and 6).</summary>
    /// <param name="class">Its class, as on its plate.</param>
    /// <param name="division">The smallest step it shows, d; 0.000001 g to 1000 g.</param>
    /// <param name="capacity">What it can carry, Max.</param>
    /// <param name="verificationInterval">The step e by which it is verified, not below d; null where e is d, as on most kitchen scales.</param>
    /// <returns>The balance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A mass is outside its range, or the class has no such balance.</exception>
    public static Balance OfClass(BalanceClass @class, Mass division, Mass capacity, Mass? verificationInterval = null)
    {
        Guard.Defined((int)@class, (int)BalanceClass.Ordinary);
        Balance balance = WithDivision(division) with { Capacity = capacity, Class = @class };
        double e = verificationInterval is { } interval
            ? Guard.InRange(Guard.Grams(interval, nameof(verificationInterval)), balance.DivisionGrams, 1000, "g", nameof(verificationInterval)) : balance.DivisionGrams;
        return balance with { StatedVerificationGrams = e, MinimumLoadGrams = BalanceClasses.LeastLoad(@class, e, balance.CapacityGrams) };
    }

    /// <summary>A mass as the balance can show it: the nearest multiple of the division, halves upwards.</summary>
    /// <param name="mass">The mass.</param>
    /// <returns>The mass shown.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative or not finite.</exception>
    public Mass Round(Mass mass) => Mass.FromGrams(RoundGrams(Guard.Grams(mass)));

    /// <summary>
    /// The smallest mass whose reading is within a tolerance: half a division over the tolerance, or twice the repeatability over it (82 divisions for 1 %,
    /// 16.4 for 5 %). Never less than <see cref="MinimumLoad"/>.
    /// </summary>
    /// <param name="tolerancePercent">The tolerance, % of the mass; above 0, up to 100.</param>
    /// <param name="rule">How far a reading is taken to be off.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is outside its range.</exception>
    public Mass SmallestWithin(double tolerancePercent, MinimumWeightRule rule = MinimumWeightRule.HalfDivision)
    {
        Guard.Defined((int)rule, (int)MinimumWeightRule.Repeatability);
        return Mass.FromGrams(SmallestGrams(Guard.InRange(tolerancePercent, double.Epsilon, 100, "%") / 100, rule));
    }

    /// <summary>
    /// The smallest batch of a formula in which every mass can be weighed within a tolerance and rounding keeps every dose within it. Where the masses
    /// alone would allow a smaller batch but their rounding together puts a dose off, it is the size from which on no rounding can.
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <param name="tolerancePercent">The tolerance, % of each mass and dose; above 0, up to 100.</param>
    /// <returns>The base mass of that batch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is outside its range.</exception>
    public Mass SmallestBatch(Formula formula, double tolerancePercent = WeighSheet.DefaultTolerancePercent)
    {
        double least = double.PositiveInfinity;
        foreach (double mass in Guard.NotNull(formula).Proportions.Masses)
        {
            least = mass > 0 ? Math.Min(least, mass) : least;
        }

        double grams = SmallestWithin(tolerancePercent).Grams / least;
        return Mass.FromGrams(formula.TryScaleTo(Yield.OfBase(Mass.FromGrams(grams)), Losses.None, out Batch? batch, out _) && !batch.WeighOn(this, tolerancePercent).Warnings.Any()
            ? grams : Math.Max(grams, SafeBaseGrams(formula, tolerancePercent / 100)));
    }

    /// <summary>The largest error that its class permits at a load: 0.5, 1 or 1.5 e, and twice that in service.</summary>
    /// <param name="load">The load, up to the capacity.</param>
    /// <param name="inService">Whether the balance is in use, rather than newly verified.</param>
    /// <returns>The error, either way; null if its class is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is negative or above the capacity.</exception>
    public Mass? PermissibleError(Mass load, bool inService = false)
    {
        double grams = Guard.InRange(Guard.Grams(load), 0, CapacityGrams, "g", nameof(load));
        return Class is { } known ? Mass.FromGrams(BalanceClasses.PermissibleIntervals(known, grams / VerificationGrams) * VerificationGrams * (inService ? 2 : 1)) : null;
    }

    /// <summary>The division and the capacity as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => Numbers.Significant(DivisionGrams, 6) + " g division" + (_capacityGrams is { } capacity ? $", up to {Numbers.Significant(capacity, 6)} g" : "");

    // Decimal arithmetic, so that 0.15 g on a 0.1 g balance is the half it looks like.
    internal double RoundGrams(double grams)
        => (double)(Math.Round((decimal)grams / (decimal)DivisionGrams, 0, MidpointRounding.AwayFromZero) * (decimal)DivisionGrams);

    /// <summary>The next multiple of the division that is not less, but for the noise of a double.</summary>
    internal double RoundUpGrams(double grams)
        => (double)(Math.Ceiling(Math.Round((decimal)grams / (decimal)DivisionGrams, 9)) * (decimal)DivisionGrams);

    /// <summary>How far one reading is taken to be off, either way.</summary>
    internal double UncertaintyGrams(MinimumWeightRule rule)
        => rule == MinimumWeightRule.HalfDivision ? DivisionGrams / 2 : 2 * Math.Max(RepeatabilityGrams ?? 0, 0.41 * DivisionGrams);

    internal double SmallestGrams(double tolerance, MinimumWeightRule rule) => Math.Max(UncertaintyGrams(rule) / tolerance, MinimumLoadGrams);

    /// <summary>
    /// The base B from which on no rounding puts a dose off by more than t. A dose is m over its reference r, which is rounded in n lines; with h half a
    /// division the worst is (m B + h)/(r B − n h), and that is (1 + t) m/r at B = h/t (1/m + (1 + t) n/r).
    /// </summary>
    private double SafeBaseGrams(Formula formula, double tolerance)
    {
        Proportions proportions = formula.Proportions;
        double most = 0;
        foreach (FormulaLine line in formula.Lines.Where(l => proportions.MassOf(l) > 0))
        {
            double reference = proportions.ReferenceMass(formula, line.Dose.Reference, line.PhaseIndex);
            double rounded = line.Dose.Reference.Kind switch
            {
                DoseReferenceKind.Base => formula.Lines.Count(l => l.IsBase),
                DoseReferenceKind.Preceding => formula.Lines.Count(l => l.PhaseIndex < line.PhaseIndex),
                DoseReferenceKind.Total => formula.Lines.Count,
                DoseReferenceKind.Water => formula.Lines.Where(l => l.PhaseIndex < line.PhaseIndex).Sum(l => l.Ingredient.WaterPercent!.Value / 100),
                _ => 1,
            };
            most = Math.Max(most, 1 / proportions.MassOf(line) + (1 + tolerance) * rounded / reference);
        }

        return DivisionGrams / 2 / tolerance * most;
    }
}
