using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Text;

public static partial class QuantityText
{
    private static readonly KitchenUnit[] s_pressureUnits = Units(QuantityKind.Pressure, "Pa", "kPa");

    /// <summary>Writes a pressure in Pa or kPa, with three significant digits and whole digits kept, such as "101 kPa".</summary>
    /// <param name="pressure">The quantity; 0 to 1e9 Pa.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pressure"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="pressure"/> carries a unit that does not exist.</exception>
    public static string Format(Pressure pressure) => Format(pressure, CultureInfo.InvariantCulture);

    /// <summary>Writes a pressure in Pa or kPa, with three significant digits and whole digits kept, such as "101 kPa", with the decimal sign of a culture.</summary>
    /// <param name="pressure">The quantity; 0 to 1e9 Pa.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pressure"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="pressure"/> carries a unit that does not exist.</exception>
    public static string Format(Pressure pressure, IFormatProvider provider)
        => QuantityWriter.Auto(Guard.Pascals(pressure), Guard.NotNull(provider), s_pressureUnits);

    /// <summary>Writes a pressure in a given unit.</summary>
    /// <param name="pressure">The quantity; 0 to 1e9 Pa.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "bar".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pressure"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="pressure"/> carries a unit that does not exist.</exception>
    public static string Format(Pressure pressure, string unit, int digits) => Format(pressure, unit, digits, CultureInfo.InvariantCulture);

    /// <summary>Writes a pressure in a given unit, with the decimal sign of a culture.</summary>
    /// <param name="pressure">The quantity; 0 to 1e9 Pa.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "bar".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pressure"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="pressure"/> carries a unit that does not exist.</exception>
    public static string Format(Pressure pressure, string unit, int digits, IFormatProvider provider)
        => QuantityWriter.In(QuantityKind.Pressure, Guard.Pascals(pressure), unit, digits, Guard.NotNull(provider));

    /// <summary>Reads a pressure, with "." as the decimal sign.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="pressure">The quantity, 0 to 1e9 Pa; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParsePressure(string? text, out Pressure pressure, out string error)
        => TryParsePressure(text, CultureInfo.InvariantCulture, out pressure, out error);

    /// <summary>Reads a pressure, with the decimal sign of a culture.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="pressure">The quantity, 0 to 1e9 Pa; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParsePressure(string? text, IFormatProvider provider, out Pressure pressure, out string error)
    {
        bool read = QuantityReader.TryRead(QuantityKind.Pressure, text, Guard.NotNull(provider), out double value, out error);
        pressure = read ? Pressure.FromPascals(value) : default;
        return read;
    }

    /// <summary>Reads a pressure, with "." as the decimal sign.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The quantity, 0 to 1e9 Pa.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Pressure ParsePressure(string text) => ParsePressure(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a pressure, with the decimal sign of a culture.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The quantity, 0 to 1e9 Pa.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Pressure ParsePressure(string text, IFormatProvider provider)
        => TryParsePressure(Guard.NotNull(text), provider, out Pressure pressure, out string error) ? pressure : throw new FormatException(error);
}
