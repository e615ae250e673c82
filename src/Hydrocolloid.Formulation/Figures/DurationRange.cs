using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>A range of durations, closed or open at either end. The default value is open at both ends.</summary>
public readonly record struct DurationRange
{
    /// <summary>Makes a range.</summary>
    /// <param name="min">Lower limit, inclusive; null if open.</param>
    /// <param name="max">Upper limit, inclusive; null if open.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is negative, or the lower one is above the upper one.</exception>
    public DurationRange(Duration? min, Duration? max)
        : this(new NumberRange(min is { } low ? Guard.Seconds(low, nameof(min)) : null, max is { } high ? Guard.Seconds(high, nameof(max)) : null))
    {
    }

    internal DurationRange(NumberRange seconds) => Seconds = seconds;

    /// <summary>Lower limit, inclusive; null if open.</summary>
    public Duration? Min => Seconds.Min is { } min ? Duration.FromSeconds(min) : null;

    /// <summary>Upper limit, inclusive; null if open.</summary>
    public Duration? Max => Seconds.Max is { } max ? Duration.FromSeconds(max) : null;

    /// <summary>The range in seconds.</summary>
    public NumberRange Seconds { get; }

    /// <summary>True if the duration lies in the range, limits included.</summary>
    /// <param name="duration">The duration.</param>
    /// <returns>Whether it lies inside.</returns>
    public bool Contains(Duration duration) => Seconds.Contains(Guard.Seconds(duration));

    /// <summary>The range as text, in hours from two hours on, else in minutes from one minute on, else in seconds.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        (double size, string unit) = (Seconds.Max ?? Seconds.Min ?? 0) switch
        {
            >= 7200 => (3600.0, "h"),
            >= 60 => (60.0, "min"),
            _ => (1.0, "s"),
        };
        return new NumberRange(Seconds.Min / size, Seconds.Max / size).ToString(" " + unit);
    }
}
