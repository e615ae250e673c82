using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// Density, specific heat and conductivity of a gel, taken as constant while it cools. Between 5 and 60 °C the diffusivity of a gel of 85–99 % water changes by about 10 %; take them at the middle
/// temperature. The heat of gelling is left out: it is about 1–10 J per gram of gelling agent (estimate). Immutable, equal by content.
/// </summary>
public sealed record ThermalProperties
{
    /// <summary>States the properties.</summary>
    /// <param name="density">Density; 1–30 000 kg/m³.</param>
    /// <param name="specificHeat">Specific heat per kg and K; 1–100 000 J/(kg·K).</param>
    /// <param name="conductivity">Thermal conductivity; 0.001–1000 W/(m·K).</param>
    /// <exception cref="ArgumentOutOfRangeException">A property is outside its range.</exception>
    public ThermalProperties(Density density, SpecificEntropy specificHeat, ThermalConductivity conductivity)
    {
        KilogramsPerCubicMetre = Guard.InRange(Guard.KilogramsPerCubicMetre(density), 1, 30_000, "kg/m³", nameof(density));
        JoulesPerKilogramKelvin = Guard.JoulesPerKilogramKelvin(specificHeat);
        WattsPerMetreKelvin = Guard.WattsPerMetreKelvin(conductivity);
    }

    /// <summary>Density.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(KilogramsPerCubicMetre);

    /// <summary>Specific heat per kg and K.</summary>
    public SpecificEntropy SpecificHeat => SpecificEntropy.FromJoulesPerKilogramKelvin(JoulesPerKilogramKelvin);

    /// <summary>Thermal conductivity.</summary>
    public ThermalConductivity Conductivity => ThermalConductivity.FromWattsPerMeterKelvin(WattsPerMetreKelvin);

    /// <summary>Thermal diffusivity α = k/(ρ c), m²/s.</summary>
    public double DiffusivitySquareMetresPerSecond => WattsPerMetreKelvin / (KilogramsPerCubicMetre * JoulesPerKilogramKelvin);

    internal double KilogramsPerCubicMetre { get; }

    internal double JoulesPerKilogramKelvin { get; }

    internal double WattsPerMetreKelvin { get; }

    /// <summary>The properties of a food by its composition (see <see cref="FoodProperties"/>).</summary>
    /// <param name="food">What the food is made of.</param>
    /// <param name="temperature">The middle of the temperatures it passes through.</param>
    /// <returns>The properties, and whether the temperature is in the range of the component equations.</returns>
    public static Computed<ThermalProperties> Of(FoodShares food, Temperature temperature)
    {
        Computed<Density> density = FoodProperties.DensityOf(food, temperature);
        return new(new(density.Value, FoodProperties.SpecificHeatOf(food, temperature).Value, FoodProperties.ConductivityOf(food, temperature).Value), density.Outside);
    }

    /// <summary>The properties as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => $"{Numbers.Significant(KilogramsPerCubicMetre, 4)} kg/m³, {Numbers.Significant(JoulesPerKilogramKelvin, 4)} J/(kg·K), {Numbers.Significant(WattsPerMetreKelvin, 3)} W/(m·K)";
}
