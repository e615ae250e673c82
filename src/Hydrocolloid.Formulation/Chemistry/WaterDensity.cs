using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// Density of air-free water by Kell (1975): ρ = (999.83952 + 16.945176 t - 7.9870401e-3 t² - 46.170461e-6 t³ + 105.56302e-9 t⁴ - 280.54253e-12 t⁵)/(1 + 16.879850e-3 t) kg/m³,
/// 0–150 °C. Read in a second transcription; a copy of the paper of Jones and Harris (1992) prints the last constant with two digits swapped (16.897850e-3), which gives 997.94 at 20 °C.
/// </summary>
public static class WaterDensity
{
    /// <summary>Density of water.</summary>
    /// <param name="temperature">Temperature; the equation holds from 0 to 150 °C.</param>
    /// <returns>The density; outside 0–150 °C the value at the nearer limit, marked as out of range.</returns>
    public static Computed<Density> At(Temperature temperature)
    {
        double celsius = Guard.Celsius(temperature);
        double t = Math.Min(Math.Max(celsius, 0), 150);
        double rho = (999.83952 + (t * (16.945176 + (t * (-7.9870401e-3 + (t * (-46.170461e-6 + (t * (105.56302e-9 + (t * -280.54253e-12)))))))))) / (1 + (16.879850e-3 * t));
        return new(Density.FromKilogramsPerCubicMeter(rho), OutsideRange.Check("temperature", celsius, "°C", 0, 150));
    }
}
