using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Text;

public static partial class QuantityText
{
    private static readonly KitchenUnit[] s_temperatureDifferenceUnits = Units(QuantityKind.TemperatureDifference, "K");

    /// <summary>Writes a temperature difference in K, with three significant digits and whole digits kept, such as "0.833 K".</summary>
    /// <param name="difference">The quantity; -1000 to 1000 K.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="difference"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="difference"/> carries a unit that does not exist.</exception>
    public static string Format(TemperatureDelta difference) => Format(difference, CultureInfo.InvariantCulture);

    /// <summary>Writes a temperature difference in K, with three significant digits and whole digits kept, such as "0.833 K", with the decimal sign of a culture.</summary>
    /// <param name="difference">The quantity; -1000 to 1000 K.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="difference"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="difference"/> carries a unit that does not exist.</exception>
    public static string Format(TemperatureDelta difference, IFormatProvider provider)
        => QuantityWriter.Auto(Guard.Kelvins(difference), Guard.NotNull(provider), s_temperatureDifferenceUnits);

    /// <summary>Writes a temperature difference in a given unit.</summary>
    /// <param name="difference">The quantity; -1000 to 1000 K.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "°F".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="difference"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="difference"/> carries a unit that does not exist.</exception>
    public static string Format(TemperatureDelta difference, string unit, int digits) => Format(difference, unit, digits, CultureInfo.InvariantCulture);

    /// <summary>Writes a temperature difference in a given unit, with the decimal sign of a culture.</summary>
    /// <param name="difference">The quantity; -1000 to 1000 K.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "°F".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="difference"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="difference"/> carries a unit that does not exist.</exception>
    public static string Format(TemperatureDelta difference, string unit, int digits, IFormatProvider provider)
        => QuantityWriter.In(QuantityKind.TemperatureDifference, Guard.Kelvins(difference), unit, digits, Guard.NotNull(provider));

    /// <summary>Reads a temperature difference, with "." as the decimal sign. The units K, °C and °F here count steps: 1.5 °F of difference is 0.8333 K.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="difference">The quantity, -1000 to 1000 K; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParseTemperatureDifference(string? text, out TemperatureDelta difference, out string error)
        => TryParseTemperatureDifference(text, CultureInfo.InvariantCulture, out difference, out error);

    /// <summary>Reads a temperature difference, with the decimal sign of a culture. The units K, °C and °F here count steps: 1.5 °F of difference is 0.8333 K.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="difference">The quantity, -1000 to 1000 K; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParseTemperatureDifference(string? text, IFormatProvider provider, out TemperatureDelta difference, out string error)
    {
        bool read = QuantityReader.TryRead(QuantityKind.TemperatureDifference, text, Guard.NotNull(provider), out double value, out error);
        difference = read ? TemperatureDelta.FromKelvins(value) : default;
        return read;
    }

    /// <summary>Reads a temperature difference, with "." as the decimal sign. The units K, °C and °F here count steps: 1.5 °F of difference is 0.8333 K.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The quantity, -1000 to 1000 K.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static TemperatureDelta ParseTemperatureDifference(string text) => ParseTemperatureDifference(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a temperature difference, with the decimal sign of a culture. The units K, °C and °F here count steps: 1.5 °F of difference is 0.8333 K.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The quantity, -1000 to 1000 K.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static TemperatureDelta ParseTemperatureDifference(string text, IFormatProvider provider)
        => TryParseTemperatureDifference(Guard.NotNull(text), provider, out TemperatureDelta difference, out string error) ? difference : throw new FormatException(error);
}
