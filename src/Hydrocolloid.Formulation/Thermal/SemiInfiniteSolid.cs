using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>The outer layer of a deep body in the first moments of cooling, before the cold has come to the far side: Fo = α t/L² below about 0.05 (recalled).</summary>
public static class SemiInfiniteSolid
{
    /// <summary>
    /// Temperature at a depth: (T - T₀)/(Tₘ - T₀) = erfc(e) - exp(hx/k + h²αt/k²) erfc(e + h √(αt)/k), e = x/(2√(αt)). Source: Geankoplis, Transport Processes and Unit Operations, 3rd ed. (1993), example 5.3-1.
    /// </summary>
    /// <param name="depth">Depth below the surface; 0–10 m.</param>
    /// <param name="time">Time since the surroundings changed.</param>
    /// <param name="properties">Thermal properties.</param>
    /// <param name="start">Temperature of the whole body at the start.</param>
    /// <param name="step">The surroundings; its duration does not count.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public static Temperature TemperatureAt(Length depth, Duration time, ThermalProperties properties, Temperature start, CoolingStep step)
    {
        double x = Guard.InRange(Guard.Metres(depth), 0, 10, "m", nameof(depth));
        double way = Math.Sqrt(Guard.NotNull(properties).DiffusivitySquareMetresPerSecond * Guard.Seconds(time));
        double from = Guard.Celsius(start);
        if (way == 0)
        {
            return Temperature.FromDegreesCelsius(from);
        }

        double e = x / (2 * way);
        double film = Guard.NotNull(step).WattsPerSquareMetreKelvin / properties.WattsPerMetreKelvin * way;
        return Temperature.FromDegreesCelsius(from + ((step.Celsius - from) * (SpecialFunctions.Erfc(e) - Film(e, film))));
    }

    // exp(2eb + b²) erfc(e + b) = exp(-e²) erfcx(e + b); for a large argument the exponential overflows before erfc has fallen, and erfcx(y) is 1/(y√π) (1 - 1/(2y²)).
    private static double Film(double e, double b)
    {
        double y = e + b;
        return y < 20
            ? Math.Exp((2 * e * b) + (b * b)) * SpecialFunctions.Erfc(y)
            : Math.Exp(-e * e) / (y * Math.Sqrt(Math.PI)) * (1 - (0.5 / (y * y)));
    }
}
