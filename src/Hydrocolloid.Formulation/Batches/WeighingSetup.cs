using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>The balances at hand and how exact the weighing shall be. Immutable, equal by content.</summary>
public sealed record WeighingSetup
{
    private readonly double _tolerancePercent = WeighSheet.DefaultTolerancePercent;
    private readonly MinimumWeightRule _rule = MinimumWeightRule.Repeatability;
    private readonly int _batches = 1;

    /// <summary>States the balances.</summary>
    /// <param name="balances">One balance or several.</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    public WeighingSetup(params Balance[] balances)
    {
        Balances = ValueList<Balance>.From(Guard.NotNull(balances).Select(b => Guard.NotNull(b, nameof(balances))));
        if (Balances.IsEmpty)
        {
            throw new ArgumentException("Name at least one balance.", nameof(balances));
        }
    }

    /// <summary>The balances.</summary>
    public ValueList<Balance> Balances { get; }

    /// <summary>How far each mass may be off, % of the mass; above 0, up to 100; 5 unless stated.</summary>
    public double TolerancePercent
    {
        get => _tolerancePercent;
        init => _tolerancePercent = Guard.InRange(value, 1e-6, 100, "%", nameof(TolerancePercent));
    }

    /// <summary>How far a reading is taken to be off; by the repeatability unless stated.</summary>
    public MinimumWeightRule Rule
    {
        get => _rule;
        init => _rule = (MinimumWeightRule)Guard.Defined((int)value, (int)MinimumWeightRule.Repeatability, nameof(Rule));
    }

    /// <summary>How many batches of this size are made from one stock or premix; 1 to 10 000.</summary>
    public int Batches
    {
        get => _batches;
        init => _batches = (int)Guard.InRange(value, 1, 10_000, "batches", nameof(Batches));
    }

    internal double Tolerance => TolerancePercent / 100;

    /// <summary>The balances, the tolerance and the number of batches.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => $"{Balances} within {Numbers.Significant(TolerancePercent, 4)} %{(Batches > 1 ? $", {Numbers.Exact(Batches)} batches" : "")}";

    /// <summary>The reading of a mass on the balance that shows it best: fewest goes first, then least error. Null if none is within the tolerance.</summary>
    internal BalanceReading? Read(double grams, double tolerance)
    {
        BalanceReading? best = null;
        if (!(grams <= Guard.MaxMassGrams))
        {
            return null;
        }

        foreach (Balance balance in Balances)
        {
            double goes = Math.Max(1, Math.Ceiling(grams / balance.CapacityGrams - 1e-9));
            if (goes <= BalanceReading.MostGoes && grams / goes >= balance.SmallestGrams(tolerance, Rule) * (1 - 1e-9))
            {
                var reading = new BalanceReading(balance, balance.RoundGrams(grams), (int)goes, goes * balance.UncertaintyGrams(Rule));
                best = best is null || (reading.Goes, reading.UncertaintyGrams).CompareTo((best.Goes, best.UncertaintyGrams)) < 0 ? reading : best;
            }
        }

        return best;
    }

    /// <summary>The least mass that any of the balances weighs within a tolerance.</summary>
    internal double SmallestGrams(double tolerance) => Balances.Min(b => b.SmallestGrams(tolerance, Rule));
}
