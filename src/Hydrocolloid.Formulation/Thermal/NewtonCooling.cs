using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// Newton's law: a body without gradients inside goes to the temperature of its surroundings as (T - Tₘ) = (T₀ - Tₘ) exp(-t/τ), τ = ρ c V/(h A). It holds for a well-stirred liquid of any size,
/// and within about 5 % for a solid while h (V/A)/k is below 0.1 (recalled from the textbooks). Heating is the same law.
/// </summary>
public static class NewtonCooling
{
    /// <summary>The time constant of a body from its film coefficient: the time in which 63.2 % of the difference is gone.</summary>
    /// <param name="film">Film coefficient; 0.01–1 000 000 W/(m²·K).</param>
    /// <param name="volumePerSurface">Volume over the surface that passes heat, as <see cref="GelBody.VolumePerSurface"/>; 1 µm to 10 m.</param>
    /// <param name="density">Density; 1–30 000 kg/m³.</param>
    /// <param name="specificHeat">Specific heat per kg and K; 1–100 000 J/(kg·K).</param>
    /// <param name="conductivity">Conductivity of a solid; null for a stirred liquid, which needs none.</param>
    /// <returns>The time constant; for a solid marked as out of range if its Biot number h (V/A)/k is above 0.1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public static Computed<Duration> TimeConstant(HeatTransferCoefficient film, Length volumePerSurface, Density density, SpecificEntropy specificHeat, ThermalConductivity? conductivity = null)
    {
        double h = Guard.WattsPerSquareMetreKelvin(film);
        double metres = Guard.InRange(Guard.Metres(volumePerSurface), 1e-6, 10, "m", nameof(volumePerSurface));
        double rho = Guard.InRange(Guard.KilogramsPerCubicMetre(density), 1, 30_000, "kg/m³", nameof(density));
        double seconds = rho * Guard.JoulesPerKilogramKelvin(specificHeat) * metres / h;
        return new(Duration.FromSeconds(seconds), conductivity is { } k ? OutsideRange.Check("Biot number", h * metres / Guard.WattsPerMetreKelvin(k, nameof(conductivity)), "", 0, 0.1) : null);
    }

    /// <summary>The time constant from two readings.</summary>
    /// <param name="from">The first reading.</param>
    /// <param name="to">The second reading, nearer to the surroundings.</param>
    /// <param name="taken">The time between them, more than 0 s.</param>
    /// <param name="medium">The surroundings.</param>
    /// <returns>The time constant.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The second reading does not lie between the first and the surroundings, or a quantity is outside its range.</exception>
    public static Duration TimeConstant(Temperature from, Temperature to, Duration taken, Temperature medium)
    {
        double first = Guard.Celsius(from) - Guard.Celsius(medium), second = Guard.Celsius(to) - Guard.Celsius(medium);
        double seconds = Guard.PositiveSeconds(taken);
        return first * second > 0 && Math.Abs(second) < Math.Abs(first)
            ? Duration.FromSeconds(seconds / Math.Log(first / second))
            : throw new ArgumentOutOfRangeException(nameof(to), Guard.Celsius(to), "The second reading must lie between the first and the surroundings, and be neither.");
    }

    /// <summary>The temperature after a time.</summary>
    /// <param name="from">The temperature at the start.</param>
    /// <param name="medium">The surroundings.</param>
    /// <param name="timeConstant">The time constant, more than 0 s.</param>
    /// <param name="time">The time.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public static Temperature TemperatureAfter(Temperature from, Temperature medium, Duration timeConstant, Duration time)
    {
        double surroundings = Guard.Celsius(medium);
        return Temperature.FromDegreesCelsius(surroundings + ((Guard.Celsius(from) - surroundings) * Math.Exp(-Guard.Seconds(time) / Guard.PositiveSeconds(timeConstant))));
    }

    /// <summary>The time until a temperature.</summary>
    /// <param name="from">The temperature at the start.</param>
    /// <param name="to">The temperature to reach.</param>
    /// <param name="medium">The surroundings.</param>
    /// <param name="timeConstant">The time constant, more than 0 s.</param>
    /// <returns>The time, or that it is never reached because it does not lie between the start and the surroundings.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public static CoolingTime TimeUntil(Temperature from, Temperature to, Temperature medium, Duration timeConstant)
    {
        double first = Guard.Celsius(from) - Guard.Celsius(medium), second = Guard.Celsius(to) - Guard.Celsius(medium);
        double seconds = Guard.PositiveSeconds(timeConstant);
        return first == second ? CoolingTime.After(0)
            : first * second > 0 && Math.Abs(second) < Math.Abs(first) ? CoolingTime.After(seconds * Math.Log(first / second))
            : CoolingTime.Not(CoolingTimeOutcome.Never);
    }
}
