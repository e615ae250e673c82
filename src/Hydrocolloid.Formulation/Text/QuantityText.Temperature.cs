using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Text;

public static partial class QuantityText
{
    private static readonly KitchenUnit[] s_temperatureUnits = Units(QuantityKind.Temperature, "Cel");

    /// <summary>Writes a temperature reading in °C, with three significant digits and whole digits kept, such as "35 °C".</summary>
    /// <param name="temperature">The quantity; -273.15 to 1000 °C.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="temperature"/> carries a unit that does not exist.</exception>
    public static string Format(Temperature temperature) => Format(temperature, CultureInfo.InvariantCulture);

    /// <summary>Writes a temperature reading in °C, with three significant digits and whole digits kept, such as "35 °C", with the decimal sign of a culture.</summary>
    /// <param name="temperature">The quantity; -273.15 to 1000 °C.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="temperature"/> carries a unit that does not exist.</exception>
    public static string Format(Temperature temperature, IFormatProvider provider)
        => QuantityWriter.Auto(Guard.Celsius(temperature), Guard.NotNull(provider), s_temperatureUnits);

    /// <summary>Writes a temperature reading in a given unit.</summary>
    /// <param name="temperature">The quantity; -273.15 to 1000 °C.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "°F".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="temperature"/> carries a unit that does not exist.</exception>
    public static string Format(Temperature temperature, string unit, int digits) => Format(temperature, unit, digits, CultureInfo.InvariantCulture);

    /// <summary>Writes a temperature reading in a given unit, with the decimal sign of a culture.</summary>
    /// <param name="temperature">The quantity; -273.15 to 1000 °C.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "°F".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="temperature"/> carries a unit that does not exist.</exception>
    public static string Format(Temperature temperature, string unit, int digits, IFormatProvider provider)
        => QuantityWriter.In(QuantityKind.Temperature, Guard.Celsius(temperature), unit, digits, Guard.NotNull(provider));

    /// <summary>Reads a temperature reading, with "." as the decimal sign. A reading only: a difference is read by <see cref="TryParseTemperatureDifference(string, out TemperatureDelta, out string)"/>.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="temperature">The quantity, -273.15 to 1000 °C; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParseTemperature(string? text, out Temperature temperature, out string error)
        => TryParseTemperature(text, CultureInfo.InvariantCulture, out temperature, out error);

    /// <summary>Reads a temperature reading, with the decimal sign of a culture. A reading only: a difference is read by <see cref="TryParseTemperatureDifference(string, out TemperatureDelta, out string)"/>.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="temperature">The quantity, -273.15 to 1000 °C; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParseTemperature(string? text, IFormatProvider provider, out Temperature temperature, out string error)
    {
        bool read = QuantityReader.TryRead(QuantityKind.Temperature, text, Guard.NotNull(provider), out double value, out error);
        temperature = read ? Temperature.FromDegreesCelsius(value) : default;
        return read;
    }

    /// <summary>Reads a temperature reading, with "." as the decimal sign. A reading only: a difference is read by <see cref="TryParseTemperatureDifference(string, out TemperatureDelta, out string)"/>.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The quantity, -273.15 to 1000 °C.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Temperature ParseTemperature(string text) => ParseTemperature(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a temperature reading, with the decimal sign of a culture. A reading only: a difference is read by <see cref="TryParseTemperatureDifference(string, out TemperatureDelta, out string)"/>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The quantity, -273.15 to 1000 °C.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Temperature ParseTemperature(string text, IFormatProvider provider)
        => TryParseTemperature(Guard.NotNull(text), provider, out Temperature temperature, out string error) ? temperature : throw new FormatException(error);
}
