using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A range of numbers, closed or open at either end. Its unit is stated by the property that holds it. The default value is open at both ends.</summary>
public readonly record struct NumberRange
{
    /// <summary>Makes a range.</summary>
    /// <param name="min">Lower limit, inclusive; null if open.</param>
    /// <param name="max">Upper limit, inclusive; null if open.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is not a finite number, or the lower one is above the upper one.</exception>
    public NumberRange(double? min, double? max)
    {
        Min = min is { } low ? Guard.InRange(low, -double.MaxValue, double.MaxValue, "", nameof(min)) : null;
        Max = max is { } high ? Guard.InRange(high, min ?? -double.MaxValue, double.MaxValue, "", nameof(max)) : null;
    }

    /// <summary>Lower limit, inclusive; null if open.</summary>
    public double? Min { get; }

    /// <summary>Upper limit, inclusive; null if open.</summary>
    public double? Max { get; }

    /// <summary>True if both limits are the same number.</summary>
    public bool IsSingle => Min is not null && Min == Max;

    /// <summary>A range that is one number.</summary>
    /// <param name="value">The number.</param>
    /// <returns>The range.</returns>
    public static NumberRange Single(double value) => new(value, value);

    /// <summary>True if the number lies in the range, limits included; never for NaN.</summary>
    /// <param name="value">The number, in the unit of the range.</param>
    /// <returns>Whether it lies inside.</returns>
    public bool Contains(double value) => value >= (Min ?? double.NegativeInfinity) && value <= (Max ?? double.PositiveInfinity);

    /// <summary>The range as text, without a unit: <c>2–5</c>, <c>80 or more</c>, <c>35 or less</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToString("");

    internal string ToString(string unit) => this switch
    {
        { IsSingle: true } => Numbers.Significant(Min!.Value, 6) + unit,
        { Min: { } min, Max: { } max } => Numbers.Significant(min, 6) + "–" + Numbers.Significant(max, 6) + unit,
        { Min: { } min } => Numbers.Significant(min, 6) + unit + " or more",
        { Max: { } max } => Numbers.Significant(max, 6) + unit + " or less",
        _ => "any",
    };
}
