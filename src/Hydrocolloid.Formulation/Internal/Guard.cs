using System.Runtime.CompilerServices;
using UnitsNet;

namespace Hydrocolloid.Formulation.Internal;

/// <summary>
/// The one door through which numbers and UnitsNet quantities come in: each is read once, in the library's own unit, and checked.
/// UnitsNet lets through negative masses and temperatures under absolute zero, and converting a quantity whose unit is not a
/// defined one overflows the stack, so the unit is looked at before the value.
/// </summary>
internal static class Guard
{
    internal const double MaxMassGrams = 1e9;
    internal const double AbsoluteZeroCelsius = -273.15;

    // The defined values of UnitsNet's unit enums, bit n-1 for value n; a test compares them with the enums.
    internal const ulong MassUnits = 0x411FFFFFFUL;
    internal const ulong VolumeUnits = 0x11FFFFFFFFFFFFFUL;
    internal const ulong TemperatureUnits = 0x3FFUL;
    internal const ulong TemperatureDeltaUnits = 0x1FFUL;
    internal const ulong DurationUnits = 0x47FFUL;
    internal const ulong LengthUnits = 0x9D2FFFFFFFFFUL;
    internal const ulong DensityUnits = 0x9687FFFFFFFFFFFFUL;
    internal const ulong RatioUnits = 0x3FUL;
    internal const ulong PressureUnits = 0x100FFFFFFFFFFFFUL;
    internal const ulong ForceUnits = 0x7FFFUL;
    internal const ulong HeatTransferCoefficientUnits = 0x497UL;
    internal const ulong ThermalConductivityUnits = 0x3UL;
    internal const ulong SpecificEntropyUnits = 0x1FFUL;
    internal const ulong EnergyUnits = 0x541FFFFFFFFFUL;
    internal const ulong PowerUnits = 0x13FFFFFFUL;
    internal const ulong MassFlowUnits = 0x1FFFFFFFFUL;
    internal const ulong AreaUnits = 0x3FFFUL;

    public static double InRange(double value, double min, double max, string unit, [CallerArgumentExpression(nameof(value))] string name = "")
        => value >= min && value <= max
            ? value + 0.0 // turns -0 into 0
            : throw OutOfRange(value, min, max, unit, name);

    public static T NotNull<T>(T? value, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : class
        => value ?? throw new ArgumentNullException(name);

    /// <summary>One of the defined values of an enum, which run from 0 without a gap.</summary>
    public static int Defined(int value, int last, [CallerArgumentExpression(nameof(value))] string name = "")
        => value >= 0 && value <= last ? value : throw new ArgumentOutOfRangeException(name, value, "Is not one of the defined values.");

    public static string NotBlank(string? value, [CallerArgumentExpression(nameof(value))] string name = "")
        => string.IsNullOrWhiteSpace(NotNull(value, name)) ? throw new ArgumentException("Must not be empty or blank.", name) : value!;

    /// <summary>Grams, 0 to 1e9 g.</summary>
    public static double Grams(Mass mass, [CallerArgumentExpression(nameof(mass))] string name = "")
    {
        Defined((int)mass.Unit, MassUnits, name);
        return InRange(mass.Grams, 0, MaxMassGrams, "g", name);
    }

    /// <summary>Grams, above 0 and up to 1e9 g.</summary>
    public static double PositiveGrams(Mass mass, [CallerArgumentExpression(nameof(mass))] string name = "")
    {
        double grams = Grams(mass, name);
        return grams > 0 ? grams : throw new ArgumentOutOfRangeException(name, grams, "Must be more than 0 g.");
    }

    /// <summary>Millilitres, 0 to 1e9 mL.</summary>
    public static double Millilitres(Volume volume, [CallerArgumentExpression(nameof(volume))] string name = "")
    {
        Defined((int)volume.Unit, VolumeUnits, name);
        return InRange(volume.Milliliters, 0, 1e9, "mL", name);
    }

    /// <summary>°C, absolute zero to 1000 °C.</summary>
    public static double Celsius(Temperature temperature, [CallerArgumentExpression(nameof(temperature))] string name = "")
    {
        Defined((int)temperature.Unit, TemperatureUnits, name);
        return InRange(temperature.DegreesCelsius, AbsoluteZeroCelsius, 1000, "°C", name);
    }

    /// <summary>Kelvins of difference, -1000 to 1000 K.</summary>
    public static double Kelvins(TemperatureDelta difference, [CallerArgumentExpression(nameof(difference))] string name = "")
    {
        Defined((int)difference.Unit, TemperatureDeltaUnits, name);
        return InRange(difference.Kelvins, -1000, 1000, "K", name);
    }

    /// <summary>Seconds, 0 to 1e9 s.</summary>
    public static double Seconds(Duration duration, [CallerArgumentExpression(nameof(duration))] string name = "")
    {
        Defined((int)duration.Unit, DurationUnits, name);
        return InRange(duration.Seconds, 0, 1e9, "s", name);
    }

    /// <summary>Metres, -1e6 to 1e6 m.</summary>
    public static double Metres(Length length, [CallerArgumentExpression(nameof(length))] string name = "")
    {
        Defined((int)length.Unit, LengthUnits, name);
        return InRange(length.Meters, -1e6, 1e6, "m", name);
    }

    /// <summary>kg/m³, 0 to 30 000.</summary>
    public static double KilogramsPerCubicMetre(Density density, [CallerArgumentExpression(nameof(density))] string name = "")
    {
        Defined((int)density.Unit, DensityUnits, name);
        return InRange(density.KilogramsPerCubicMeter, 0, 30_000, "kg/m³", name);
    }

    /// <summary>Pascals, 0 to 1e9 Pa.</summary>
    public static double Pascals(Pressure pressure, [CallerArgumentExpression(nameof(pressure))] string name = "")
    {
        Defined((int)pressure.Unit, PressureUnits, name);
        return InRange(pressure.Pascals, 0, 1e9, "Pa", name);
    }

    /// <summary>Newtons, 0 to 1e6 N.</summary>
    public static double Newtons(Force force, [CallerArgumentExpression(nameof(force))] string name = "")
    {
        Defined((int)force.Unit, ForceUnits, name);
        return InRange(force.Newtons, 0, 1e6, "N", name);
    }

    /// <summary>J/(kg·K), 1 to 1e5.</summary>
    public static double JoulesPerKilogramKelvin(SpecificEntropy heat, [CallerArgumentExpression(nameof(heat))] string name = "")
    {
        Defined((int)heat.Unit, SpecificEntropyUnits, name);
        return InRange(heat.JoulesPerKilogramKelvin, 1, 1e5, "J/(kg·K)", name);
    }

    /// <summary>Joules, 0 to 1e15 J.</summary>
    public static double Joules(Energy energy, [CallerArgumentExpression(nameof(energy))] string name = "")
    {
        Defined((int)energy.Unit, EnergyUnits, name);
        return InRange(energy.Joules, 0, 1e15, "J", name);
    }

    /// <summary>Watts, 0 to 1e9 W.</summary>
    public static double Watts(Power power, [CallerArgumentExpression(nameof(power))] string name = "")
    {
        Defined((int)power.Unit, PowerUnits, name);
        // Power counts in decimals, which overflow when a huge number of a huge unit is converted.
        return Math.Abs(power.Value) <= 1_000_000_000_000m ? InRange((double)power.Watts, 0, 1e9, "W", name) : throw OutOfRange((double)power.Value, 0, 1e9, "W", name);
    }

    /// <summary>kg/s, 0 to 1e6.</summary>
    public static double KilogramsPerSecond(MassFlow flow, [CallerArgumentExpression(nameof(flow))] string name = "")
    {
        Defined((int)flow.Unit, MassFlowUnits, name);
        return InRange(flow.KilogramsPerSecond, 0, 1e6, "kg/s", name);
    }

    /// <summary>m², 0 to 1e6.</summary>
    public static double SquareMetres(Area area, [CallerArgumentExpression(nameof(area))] string name = "")
    {
        Defined((int)area.Unit, AreaUnits, name);
        return InRange(area.SquareMeters, 0, 1e6, "m²", name);
    }

    /// <summary>Seconds, above 0 and up to 1e9 s.</summary>
    public static double PositiveSeconds(Duration duration, [CallerArgumentExpression(nameof(duration))] string name = "")
    {
        double seconds = Seconds(duration, name);
        return seconds > 0 ? seconds : throw new ArgumentOutOfRangeException(name, seconds, "Must be more than 0 s.");
    }

    /// <summary>W/(m²·K), 0.01 to 1e6.</summary>
    public static double WattsPerSquareMetreKelvin(HeatTransferCoefficient film, [CallerArgumentExpression(nameof(film))] string name = "")
    {
        Defined((int)film.Unit, HeatTransferCoefficientUnits, name);
        return InRange(film.WattsPerSquareMeterKelvin, 0.01, 1e6, "W/(m²·K)", name);
    }

    /// <summary>W/(m·K), 0.001 to 1000.</summary>
    public static double WattsPerMetreKelvin(ThermalConductivity conductivity, [CallerArgumentExpression(nameof(conductivity))] string name = "")
    {
        Defined((int)conductivity.Unit, ThermalConductivityUnits, name);
        return InRange(conductivity.WattsPerMeterKelvin, 0.001, 1000, "W/(m·K)", name);
    }

    /// <summary>% of a ratio, any finite number.</summary>
    public static double Percent(Ratio ratio, [CallerArgumentExpression(nameof(ratio))] string name = "")
    {
        Defined((int)ratio.Unit, RatioUnits, name);
        return ratio.Percent;
    }

    // Apart from the checks, so that these stay small enough to be inlined. The least number above 0 stands for "above 0".
    private static ArgumentOutOfRangeException OutOfRange(double value, double min, double max, string unit, string name)
        => new(name, value, min == double.Epsilon
            ? $"Must be above {WithUnit(0, unit)} and at most {WithUnit(max, unit)}, but is {WithUnit(value, unit)}."
            : $"Must be between {WithUnit(min, unit)} and {WithUnit(max, unit)} inclusive, but is {WithUnit(value, unit)}.");

    private static string WithUnit(double value, string unit) => unit.Length == 0 ? Numbers.Exact(value) : Numbers.Exact(value) + " " + unit;

    private static void Defined(int unit, ulong definedUnits, string name)
    {
        if (unit is < 1 or > 64 || (definedUnits >> (unit - 1) & 1) == 0)
        {
            throw new ArgumentException("The quantity carries a unit that does not exist.", name);
        }
    }
}
