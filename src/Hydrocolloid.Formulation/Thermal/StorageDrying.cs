using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// What an uncovered gel loses in storage: dm/dt = hₘ A (a ρ(T) - φ ρ(T)), hₘ = h/(ρ c Le^⅔) of air, Le = 0.88. Source: Çengel, Heat and Mass Transfer (2006), examples 14-12 and 14-13, for open
/// water. Assumptions: the gel is at the air's temperature (evaporation cools it, so it loses less), its surface stays as wet as at the start, normal air pressure.
/// </summary>
public static class StorageDrying
{
    private const double GasConstantOfVapour = 461.5, GasConstantOfAir = 287.05, AirHeat = 1007, Lewis = 0.88, NormalPascals = 101_325, Uncertainty = 0.4;

    private static readonly Citation s_estimate = CoolingSources.Judgement("storage-drying-estimate", "Film evaporation of open water, applied to a gel in still or moving air");

    /// <summary>Water lost after a time.</summary>
    /// <param name="surface">Uncovered surface; 0–1 000 000 m².</param>
    /// <param name="temperature">Temperature of gel and air, 0–30 °C.</param>
    /// <param name="relativeHumidityPercent">Relative humidity of the air, % of saturation, 0–100.</param>
    /// <param name="film">Film coefficient of convection alone: in still air about half of <see cref="CoolingMedium.StillAir"/>, which counts radiation in (estimate).</param>
    /// <param name="time">The time.</param>
    /// <param name="waterActivity">Water activity of the gel's surface, per unit, 0–1.</param>
    /// <returns>An estimate as a range in g, ±40 % (our judgement); 0 if the air is as moist as the gel or moister.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Cited<NumberRange> LossGrams(Area surface, Temperature temperature, double relativeHumidityPercent, HeatTransferCoefficient film, Duration time, double waterActivity = 1)
    {
        double celsius = Guard.InRange(Guard.Celsius(temperature), 0, 30, "°C", nameof(temperature));
        double difference = Guard.InRange(waterActivity, 0, 1, "") - (Guard.InRange(relativeHumidityPercent, 0, 100, "%") / 100);
        double kelvins = celsius - Guard.AbsoluteZeroCelsius;
        double transferMetresPerSecond = Guard.WattsPerSquareMetreKelvin(film) / (NormalPascals / (GasConstantOfAir * kelvins) * AirHeat * Math.Pow(Lewis, 2.0 / 3));
        double kilogramsPerSquareMetreSecond = transferMetresPerSecond * Math.Max(0, difference) * SaturatedWater.Pascals(celsius) / (GasConstantOfVapour * kelvins);
        double grams = 1000 * kilogramsPerSquareMetreSecond * Guard.SquareMetres(surface) * Guard.Seconds(time);
        return new(new(grams * (1 - Uncertainty), grams * (1 + Uncertainty)), s_estimate, "isothermal, no crust: more likely too much than too little", ValueList<Source>.From([CoolingSources.OpenSurface]));
    }
}
