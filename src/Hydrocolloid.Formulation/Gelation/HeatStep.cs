using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>A time at a temperature and pH. Equal by content.</summary>
public readonly record struct HeatStep
{
    private readonly double _celsius;
    private readonly double _seconds;

    /// <summary>States a step.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="ph">The pH, 0–14.</param>
    /// <param name="time">How long.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public HeatStep(Temperature temperature, double ph, Duration time)
    {
        _celsius = Guard.Celsius(temperature);
        Ph = Guard.InRange(ph, 0, 14, "pH");
        _seconds = Guard.Seconds(time);
    }

    /// <summary>The temperature.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(_celsius);

    /// <summary>The pH.</summary>
    public double Ph { get; }

    /// <summary>How long.</summary>
    public Duration Time => Duration.FromSeconds(_seconds);
}
