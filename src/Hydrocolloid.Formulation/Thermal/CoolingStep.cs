using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>One step of cooling: surroundings at one temperature, with one film coefficient, for a time. Immutable, equal by content.</summary>
public sealed record CoolingStep
{
    /// <summary>A step with a stated film coefficient.</summary>
    /// <param name="medium">Temperature of the surroundings, which the body does not change.</param>
    /// <param name="film">Film coefficient on every exposed face; 0.01–1 000 000 W/(m²·K).</param>
    /// <param name="duration">How long; null, for the last step only, if without end.</param>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range; the duration must be more than 0 s.</exception>
    public CoolingStep(Temperature medium, HeatTransferCoefficient film, Duration? duration = null)
        : this(Guard.Celsius(medium), Guard.WattsPerSquareMetreKelvin(film), duration is { } d ? Guard.PositiveSeconds(d, nameof(duration)) : null)
    {
    }

    private CoolingStep(double celsius, double wattsPerSquareMetreKelvin, double? seconds)
    {
        Celsius = celsius;
        WattsPerSquareMetreKelvin = wattsPerSquareMetreKelvin;
        Seconds = seconds;
    }

    /// <summary>Temperature of the surroundings.</summary>
    public Temperature Medium => Temperature.FromDegreesCelsius(Celsius);

    /// <summary>Film coefficient, with the walls it passes through.</summary>
    public HeatTransferCoefficient Film => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(WattsPerSquareMetreKelvin);

    /// <summary>How long; null if without end.</summary>
    public Duration? Duration => Seconds is { } s ? UnitsNet.Duration.FromSeconds(s) : null;

    internal double Celsius { get; }

    internal double WattsPerSquareMetreKelvin { get; }

    internal double? Seconds { get; }

    /// <summary>A step in a named medium, at its usual film coefficient.</summary>
    /// <param name="medium">What carries the heat away.</param>
    /// <param name="temperature">Temperature of the surroundings, which the body does not change.</param>
    /// <param name="duration">How long; null, for the last step only, if without end.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range; the duration must be more than 0 s.</exception>
    public static CoolingStep In(CoolingMedium medium, Temperature temperature, Duration? duration = null) => new(temperature, Guard.NotNull(medium).Typical, duration);

    /// <summary>The same step through the wall of a mould, 1/U = 1/h + δ/k (recalled). The wall stores no heat and touches the gel.</summary>
    /// <param name="thickness">Thickness δ of the wall; 0–1 m.</param>
    /// <param name="conductivity">Conductivity k of the wall: about 15 W/(m·K) for stainless steel (Çengel 2006), 0.2 for silicone rubber (recalled).</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public CoolingStep Through(Length thickness, ThermalConductivity conductivity)
    {
        double wall = Guard.InRange(Guard.Metres(thickness), 0, 1, "m", nameof(thickness)) / Guard.WattsPerMetreKelvin(conductivity);
        return new(Celsius, Math.Max(0.01, 1 / ((1 / WattsPerSquareMetreKelvin) + wall)), Seconds);
    }

    /// <summary>The step as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => $"{Numbers.Significant(Celsius, 4)} °C, {Numbers.Significant(WattsPerSquareMetreKelvin, 4)} W/(m²·K)" + (Seconds is { } s ? $", {new DurationRange(NumberRange.Single(s))}" : "");
}
