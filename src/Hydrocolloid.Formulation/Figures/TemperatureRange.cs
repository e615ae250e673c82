using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>A range of temperatures, closed or open at either end. The default value is open at both ends.</summary>
public readonly record struct TemperatureRange
{
    /// <summary>Makes a range.</summary>
    /// <param name="min">Lower limit, inclusive; null if open.</param>
    /// <param name="max">Upper limit, inclusive; null if open.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is under absolute zero or over 1000 °C, or the lower one is above the upper one.</exception>
    public TemperatureRange(Temperature? min, Temperature? max)
        : this(new NumberRange(min is { } low ? Guard.Celsius(low, nameof(min)) : null, max is { } high ? Guard.Celsius(high, nameof(max)) : null))
    {
    }

    internal TemperatureRange(NumberRange celsius) => Celsius = celsius;

    /// <summary>Lower limit, inclusive; null if open.</summary>
    public Temperature? Min => Celsius.Min is { } min ? Temperature.FromDegreesCelsius(min) : null;

    /// <summary>Upper limit, inclusive; null if open.</summary>
    public Temperature? Max => Celsius.Max is { } max ? Temperature.FromDegreesCelsius(max) : null;

    /// <summary>The range in °C.</summary>
    public NumberRange Celsius { get; }

    /// <summary>True if the temperature lies in the range, limits included.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>Whether it lies inside.</returns>
    public bool Contains(Temperature temperature) => Celsius.Contains(Guard.Celsius(temperature));

    /// <summary>The range in °C as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Celsius.ToString(" °C");
}
