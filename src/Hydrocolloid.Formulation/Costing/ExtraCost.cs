using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>A cost of a batch that is not an ingredient. It does not grow with the batch. Immutable, equal by content.</summary>
public sealed record ExtraCost
{
    private ExtraCost(string name, ExtraCostKind kind, Money cost)
    {
        Name = Guard.NotBlank(name);
        Kind = kind;
        Amounts.InRange(Guard.NotNull(cost).Amount, 0, decimal.MaxValue, "", name: nameof(cost));
        Cost = cost;
    }

    /// <summary>What it is for, in words.</summary>
    public string Name { get; }

    /// <summary>What it is for.</summary>
    public ExtraCostKind Kind { get; }

    /// <summary>The cost for the whole batch; not rounded.</summary>
    public Money Cost { get; }

    /// <summary>Working time.</summary>
    /// <param name="name">What is done; not blank.</param>
    /// <param name="time">The time, all hands together; 0 to 1e9 s.</param>
    /// <param name="perHour">The cost of an hour; not negative.</param>
    /// <returns>The cost.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time or the cost is outside its range.</exception>
    public static ExtraCost Labour(string name, Duration time, Money perHour)
        => new(name, ExtraCostKind.Labour, Guard.NotNull(perHour) * Amounts.Of(Guard.Seconds(time)) / 3600);

    /// <summary>Heat and cold.</summary>
    /// <param name="name">What it is used for; not blank.</param>
    /// <param name="used">The energy; 0 to 1e15 J.</param>
    /// <param name="perKilowattHour">The cost of 1 kWh; not negative.</param>
    /// <returns>The cost.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The energy or the cost is outside its range.</exception>
    public static ExtraCost Energy(string name, Energy used, Money perKilowattHour)
        => new(name, ExtraCostKind.Energy, Guard.NotNull(perKilowattHour) * (Amounts.Of(Guard.Joules(used)) / 3_600_000));

    /// <summary>Anything else, such as packaging.</summary>
    /// <param name="name">What it is; not blank.</param>
    /// <param name="cost">The cost for the whole batch; not negative.</param>
    /// <returns>The cost.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The cost is negative.</exception>
    public static ExtraCost Other(string name, Money cost) => new(name, ExtraCostKind.Other, cost);

    /// <summary>The name and the cost.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {Cost}";
}
