using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// Density, specific heat and thermal conductivity of a food from its composition by the component equations of Choi and Okos (1986),
/// P(t) = a + b·t + c·t² with t in °C. Density adds volumes, 1/ρ = Σ x/ρᵢ; specific heat adds by mass, c = Σ x·cᵢ; conductivity adds by
/// volume (parallel model, the upper bound; above 85 % water all models agree within about 10 %). Range: 0–150 °C, unfrozen, no ethanol.
/// Source: Ibarz and Barbosa-Cánovas, Unit Operations in Food Engineering (2003), table of the component equations; Toledo (1991).
/// Density of sugar solutions comes out within 0.5 % to 70 % sugar and 1.1 % to 84 %, of water within 0.3 %, of dairy 1.1 % low; specific heat of foods within about 3 %.
/// </summary>
public static class FoodProperties
{
    internal const double MinCelsius = 0;
    internal const double MaxCelsius = 150;

    private static readonly Component Water = new(new(997.18, 0.0031439, -0.0037574), new(4.1762, -9.0864e-5, 5.4731e-6), new(0.57109, 0.0017625, -6.7036e-6));
    private static readonly Component Protein = new(new(1329.9, -0.5184, 0), new(2.0082, 0.0012089, -1.3129e-6), new(0.17881, 0.0011958, -2.7178e-6));
    private static readonly Component Fat = new(new(925.59, -0.41757, 0), new(1.9842, 0.0014733, -4.8008e-6), new(0.18071, -0.00027604, -1.7749e-7));
    private static readonly Component Carbohydrate = new(new(1599.1, -0.31046, 0), new(1.5488, 0.0019625, -5.9399e-6), new(0.20141, 0.0013874, -4.3312e-6));
    private static readonly Component Fibre = new(new(1311.5, -0.36589, 0), new(1.8459, 0.0018306, -4.6509e-6), new(0.18331, 0.0012497, -3.1683e-6));
    private static readonly Component Ash = new(new(2423.8, -0.28063, 0), new(1.0926, 0.0018896, -3.6817e-6), new(0.32962, 0.0014011, -2.9069e-6));

    /// <summary>Density.</summary>
    /// <param name="food">What the food is made of.</param>
    /// <param name="temperature">The temperature; the equations hold from 0 to 150 °C.</param>
    /// <returns>The density, and whether the temperature is in range.</returns>
    public static Computed<Density> DensityOf(FoodShares food, Temperature temperature)
    {
        double t = Guard.Celsius(temperature);
        return new(Density.FromKilogramsPerCubicMeter(1 / SpecificVolume(food, t)), InRange(t));
    }

    /// <summary>Specific heat at constant pressure.</summary>
    /// <param name="food">What the food is made of.</param>
    /// <param name="temperature">The temperature; the equations hold from 0 to 150 °C.</param>
    /// <returns>The specific heat per kg and K, and whether the temperature is in range.</returns>
    public static Computed<SpecificEntropy> SpecificHeatOf(FoodShares food, Temperature temperature)
    {
        double t = Guard.Celsius(temperature);
        return new(SpecificEntropy.FromKilojoulesPerKilogramKelvin(HeatKilojoulesPerKgK(food).At(t)), InRange(t));
    }

    /// <summary>Heat that a kilogram takes up between two temperatures: the specific heat integrated, Δh = a·Δt + b·Δt²/2 + c·Δt³/3. No freezing, melting or boiling in between.</summary>
    /// <param name="food">What the food is made of.</param>
    /// <param name="from">The temperature at the start; the equations hold from 0 to 150 °C.</param>
    /// <param name="to">The temperature at the end; the equations hold from 0 to 150 °C.</param>
    /// <returns>The heat per kg, below 0 where the food gives heat off, and whether both temperatures are in range.</returns>
    public static Computed<SpecificEnergy> HeatBetween(FoodShares food, Temperature from, Temperature to)
    {
        double start = Guard.Celsius(from), end = Guard.Celsius(to);
        Polynomial heat = HeatKilojoulesPerKgK(food);
        return new(SpecificEnergy.FromKilojoulesPerKilogram(heat.Integral(end) - heat.Integral(start)), InRange(start) ?? InRange(end));
    }

    /// <summary>Thermal conductivity by the parallel model.</summary>
    /// <param name="food">What the food is made of.</param>
    /// <param name="temperature">The temperature; the equations hold from 0 to 150 °C.</param>
    /// <returns>The conductivity, and whether the temperature is in range.</returns>
    public static Computed<ThermalConductivity> ConductivityOf(FoodShares food, Temperature temperature)
    {
        double t = Guard.Celsius(temperature);
        double volume = SpecificVolume(food, t);
        double conductivity = 0;
        foreach ((Component component, double share) in Parts(food))
        {
            conductivity += share / component.DensityKgPerM3.At(t) / volume * component.WattsPerMetreK.At(t);
        }

        return new(ThermalConductivity.FromWattsPerMeterKelvin(conductivity), InRange(t));
    }

    internal static Polynomial HeatKilojoulesPerKgK(FoodShares food)
    {
        Polynomial heat = default;
        foreach ((Component component, double share) in Parts(food))
        {
            heat = heat.Plus(component.HeatKilojoulesPerKgK.Times(share));
        }

        return heat;
    }

    internal static OutsideRange? InRange(double celsius) => OutsideRange.Check("temperature", celsius, "°C", MinCelsius, MaxCelsius);

    private static double SpecificVolume(FoodShares food, double t)
    {
        double volume = 0;
        foreach ((Component component, double share) in Parts(food))
        {
            volume += share / component.DensityKgPerM3.At(t);
        }

        return volume;
    }

    private static (Component Component, double Share)[] Parts(FoodShares food)
    {
        double sum = Guard.InRange(food.SumPercent, double.Epsilon, 600, "%", nameof(food));
        return
        [
            (Water, food.WaterPercent / sum), (Protein, food.ProteinPercent / sum), (Fat, food.FatPercent / sum),
            (Carbohydrate, food.CarbohydratePercent / sum), (Fibre, food.FibrePercent / sum), (Ash, food.AshPercent / sum),
        ];
    }

    private sealed record Component(Polynomial DensityKgPerM3, Polynomial HeatKilojoulesPerKgK, Polynomial WattsPerMetreK);
}
