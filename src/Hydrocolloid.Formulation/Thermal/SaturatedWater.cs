using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// Water at its boiling point: pressure against temperature by region 4 of IAPWS-IF97 (IAPWS R7-97, 2012), 0–373.946 °C, 0.6112 kPa–22.064 MPa; and the heat that evaporates it.
/// </summary>
public static class SaturatedWater
{
    internal const double MinCelsius = 0, MaxCelsius = 373.946;
    private const double MinPascals = 611.213, MaxPascals = 22.064e6;
    private const double N1 = 1167.0521452767, N2 = -724213.16703206, N3 = -17.073846940092, N4 = 12020.82470247, N5 = -3232555.0322333;
    private const double N6 = 14.91510861353, N7 = -4823.2657361591, N8 = 405113.40542057, N9 = -0.23855557567849, N10 = 650.17534844798;

    /// <summary>The pressure at which water boils at a temperature: its vapour pressure.</summary>
    /// <param name="temperature">The temperature; the equation holds from 0 to 373.946 °C.</param>
    /// <returns>The absolute pressure; outside that range the value at the nearer limit, marked as out of range.</returns>
    public static Computed<Pressure> PressureAt(Temperature temperature)
    {
        double celsius = Guard.Celsius(temperature);
        return new(Pressure.FromPascals(Pascals(Math.Min(Math.Max(celsius, MinCelsius), MaxCelsius))), OutsideRange.Check("temperature", celsius, "°C", MinCelsius, MaxCelsius));
    }

    /// <summary>The temperature at which water boils under a pressure.</summary>
    /// <param name="absolute">The absolute pressure; the equation holds from 0.6112 kPa to 22.064 MPa.</param>
    /// <returns>The temperature; outside that range the value at the nearer limit, marked as out of range.</returns>
    public static Computed<Temperature> TemperatureAt(Pressure absolute)
    {
        double pascals = Guard.Pascals(absolute);
        return new(Temperature.FromKelvins(Celsius(pascals) - Guard.AbsoluteZeroCelsius), OutsideRange.Check("pressure", pascals, "Pa", MinPascals, MaxPascals));
    }

    /// <summary>
    /// The heat that turns a kilogram of water into vapour: 2500.76 - 2.27640 t - 0.00168534 t² kJ/kg, t in °C, fitted to the steam table in Geankoplis, Transport Processes and
    /// Unit Operations (1993), example 8.5-1, within 1.1 kJ/kg from 5 to 120 °C.
    /// </summary>
    /// <param name="temperature">The temperature; the fit holds from 5 to 120 °C.</param>
    /// <returns>The heat; outside 5–120 °C the value at the nearer limit, marked as out of range.</returns>
    public static Computed<SpecificEnergy> HeatOfVaporization(Temperature temperature)
    {
        double celsius = Guard.Celsius(temperature);
        double t = Math.Min(Math.Max(celsius, 5), 120);
        return new(SpecificEnergy.FromKilojoulesPerKilogram(2500.76 - (2.27640 * t) - (0.00168534 * t * t)), OutsideRange.Check("temperature", celsius, "°C", 5, 120));
    }

    // IAPWS-IF97, equation 30: the vapour pressure.
    internal static double Pascals(double celsius)
    {
        double kelvins = celsius - Guard.AbsoluteZeroCelsius;
        double theta = kelvins + (N9 / (kelvins - N10));
        double a = (theta * theta) + (N1 * theta) + N2;
        double b = (N3 * theta * theta) + (N4 * theta) + N5;
        double c = (N6 * theta * theta) + (N7 * theta) + N8;
        double root = 2 * c / (-b + Math.Sqrt((b * b) - (4 * a * c)));
        return 1e6 * root * root * root * root;
    }

    // IAPWS-IF97, equation 31: the same the other way round.
    internal static double Celsius(double pascals)
    {
        double beta = Math.Sqrt(Math.Sqrt(Math.Min(Math.Max(pascals, MinPascals), MaxPascals) / 1e6));
        double e = (beta * beta) + (N3 * beta) + N6;
        double f = (N1 * beta * beta) + (N4 * beta) + N7;
        double g = (N2 * beta * beta) + (N5 * beta) + N8;
        double d = 2 * g / (-f - Math.Sqrt((f * f) - (4 * e * g)));
        double sum = N10 + d;
        return ((sum - Math.Sqrt((sum * sum) - (4 * (N9 + (N10 * d))))) / 2) + Guard.AbsoluteZeroCelsius;
    }
}
