using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>A thermometer reading in the warmest part of the food. Immutable, equal by content.</summary>
public readonly record struct CoolingReading
{
    /// <summary>Takes a reading down.</summary>
    /// <param name="time">Time since any start.</param>
    /// <param name="temperature">Temperature.</param>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public CoolingReading(Duration time, Temperature temperature)
    {
        Seconds = Guard.Seconds(time);
        Celsius = Guard.Celsius(temperature);
    }

    /// <summary>Time since any start.</summary>
    public Duration Time => Duration.FromSeconds(Seconds);

    /// <summary>Temperature.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(Celsius);

    internal double Seconds { get; }

    internal double Celsius { get; }

    /// <summary>The reading as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Numbers.Significant(Seconds / 60, 4)} min: {Numbers.Fixed(Celsius, 1)} °C";
}
