using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>First-order loss and its Arrhenius law: k = A · exp(-E/(R T)), what remains = exp(-k t).</summary>
public static class Kinetics
{
    /// <summary>Molar gas constant, CODATA 2018 [recalled]. Unit: J/(mol K).</summary>
    public const double GasConstant = 8.314462618;

    /// <summary>How much faster a reaction is at one temperature than at another: exp(E/R · (1/T₁ - 1/T₂)), without unit.</summary>
    /// <param name="activationEnergy">Activation energy E, 0 to 1000. Unit: kJ/mol.</param>
    /// <param name="from">The temperature compared with, above -200 °C.</param>
    /// <param name="to">The temperature, above -200 °C.</param>
    /// <returns>The ratio of the rates, at most 1e300.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double RateRatio(double activationEnergy, Temperature from, Temperature to)
        => Math.Exp(Math.Min(Guard.InRange(activationEnergy, 0, 1000, "kJ/mol") * 1000 / GasConstant * ((1 / Kelvins(from)) - (1 / Kelvins(to))), 690));

    /// <summary>The activation energy behind a ratio of rates at two temperatures: E = R · ln ratio · T₁ T₂/(T₂ - T₁), in kJ/mol.</summary>
    /// <param name="ratio">Rate at the second temperature over that at the first, 1e-12 to 1e12; it has no unit.</param>
    /// <param name="from">The first temperature, above -200 °C.</param>
    /// <param name="to">The second temperature; not the first.</param>
    /// <returns>The activation energy in kJ/mol.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">Both temperatures are the same.</exception>
    public static double ActivationEnergy(double ratio, Temperature from, Temperature to)
    {
        double first = Kelvins(from), second = Kelvins(to);
        return Math.Abs(second - first) < 1e-6 ? throw new ArgumentException("Must differ from the first temperature.", nameof(to))
            : GasConstant * Math.Log(Guard.InRange(ratio, 1e-12, 1e12, "")) * first * second / (second - first) / 1000;
    }

    /// <summary>What remains after a time of first-order loss, %.</summary>
    /// <param name="ratePerHour">The rate, 0 to 1e12. Unit: 1/h.</param>
    /// <param name="time">The time.</param>
    /// <returns>The rest in % of the start.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rate is outside its range.</exception>
    public static double RemainingPercent(double ratePerHour, Duration time)
        => 100 * Math.Exp(-Guard.InRange(ratePerHour, 0, 1e12, "1/h") * Guard.Seconds(time) / 3600);

    internal static double Kelvins(Temperature temperature)
        => Guard.InRange(Guard.Celsius(temperature), -200, 1000, "°C", nameof(temperature)) - Guard.AbsoluteZeroCelsius;
}
