using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Heat that leaves while bodies are joined. The default value is none. Immutable, equal by content.</summary>
public readonly record struct HeatLoss
{
    private const double StefanBoltzmann = 5.670374419e-8;

    private HeatLoss(double joules, double wattsPerKelvin, double seconds, double surroundingsCelsius, bool isEstimate)
    {
        Joules = joules;
        WattsPerKelvin = wattsPerKelvin;
        Seconds = seconds;
        SurroundingsCelsius = surroundingsCelsius;
        IsEstimate = isEstimate;
    }

    /// <summary>True if the loss is a guess rather than measured.</summary>
    public bool IsEstimate { get; }

    /// <summary>Heat-loss rate UA of the joined mix, in W/K; 0 if the loss is an energy.</summary>
    public double WattsPerKelvin { get; }

    internal double Joules { get; }

    internal double Seconds { get; }

    internal double SurroundingsCelsius { get; }

    /// <summary>A loss of so much heat.</summary>
    /// <param name="energy">The heat.</param>
    /// <param name="isEstimate">Whether it is a guess rather than measured.</param>
    /// <returns>The loss.</returns>
    public static HeatLoss Of(Energy energy, bool isEstimate = true) => new(Guard.Joules(energy), 0, 0, 0, isEstimate);

    /// <summary>A loss through the surface of the joined mix for a time, by Newton's law: UA·(t - t surroundings).</summary>
    /// <param name="wattsPerKelvin">The rate UA in W/K, 0 to 1e6: area times heat-transfer coefficient. In still air the coefficient is about 5–12 W/(m²·K), an estimate; steam from an open surface takes more.</param>
    /// <param name="surroundings">Temperature of the surroundings, -50 to 150 °C.</param>
    /// <param name="time">How long joining takes.</param>
    /// <param name="isEstimate">Whether the rate is a guess rather than measured.</param>
    /// <returns>The loss.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static HeatLoss AtRate(double wattsPerKelvin, Temperature surroundings, Duration time, bool isEstimate = true)
        => new(0, Guard.InRange(wattsPerKelvin, 0, 1e6, "W/K"), Guard.Seconds(time), Surroundings(surroundings), isEstimate);

    /// <summary>Heat radiated by a surface to the room: P = ε·A·σ·(T⁴ - T room⁴).</summary>
    /// <param name="surface">Area of the surface.</param>
    /// <param name="emissivity">Emissivity, 0 to 1, no unit; water about 0.95, polished steel about 0.1 (both recalled from heat-transfer handbooks).</param>
    /// <param name="from">Temperature of the surface.</param>
    /// <param name="to">Temperature of the room.</param>
    /// <returns>The power; 0 if the room is warmer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Power Radiated(Area surface, double emissivity, Temperature from, Temperature to)
    {
        double hot = Guard.Celsius(from) - Guard.AbsoluteZeroCelsius, cold = Guard.Celsius(to) - Guard.AbsoluteZeroCelsius;
        return Power.FromWatts(Math.Max(0, Guard.InRange(emissivity, 0, 1, "") * Guard.SquareMetres(surface) * StefanBoltzmann * (Math.Pow(hot, 4) - Math.Pow(cold, 4))));
    }

    internal static double Surroundings(Temperature temperature) => Guard.InRange(Guard.Celsius(temperature), -50, 150, "°C", nameof(temperature));
}
