using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Text;

public static partial class QuantityText
{
    private static readonly KitchenUnit[] s_lengthUnits = Units(QuantityKind.Length, "mm", "m");

    /// <summary>Writes a length in mm or m, with three significant digits and whole digits kept, such as "35 mm", "2240 m".</summary>
    /// <param name="length">The quantity; -1e6 to 1e6 m.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="length"/> carries a unit that does not exist.</exception>
    public static string Format(Length length) => Format(length, CultureInfo.InvariantCulture);

    /// <summary>Writes a length in mm or m, with three significant digits and whole digits kept, such as "35 mm", "2240 m", with the decimal sign of a culture.</summary>
    /// <param name="length">The quantity; -1e6 to 1e6 m.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="length"/> carries a unit that does not exist.</exception>
    public static string Format(Length length, IFormatProvider provider)
        => QuantityWriter.Auto(Guard.Metres(length), Guard.NotNull(provider), s_lengthUnits);

    /// <summary>Writes a length in a given unit.</summary>
    /// <param name="length">The quantity; -1e6 to 1e6 m.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "cm".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="length"/> carries a unit that does not exist.</exception>
    public static string Format(Length length, string unit, int digits) => Format(length, unit, digits, CultureInfo.InvariantCulture);

    /// <summary>Writes a length in a given unit, with the decimal sign of a culture.</summary>
    /// <param name="length">The quantity; -1e6 to 1e6 m.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "cm".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="length"/> carries a unit that does not exist.</exception>
    public static string Format(Length length, string unit, int digits, IFormatProvider provider)
        => QuantityWriter.In(QuantityKind.Length, Guard.Metres(length), unit, digits, Guard.NotNull(provider));

    /// <summary>Reads a length, with "." as the decimal sign.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="length">The quantity, -1e6 to 1e6 m; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParseLength(string? text, out Length length, out string error)
        => TryParseLength(text, CultureInfo.InvariantCulture, out length, out error);

    /// <summary>Reads a length, with the decimal sign of a culture.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="length">The quantity, -1e6 to 1e6 m; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParseLength(string? text, IFormatProvider provider, out Length length, out string error)
    {
        bool read = QuantityReader.TryRead(QuantityKind.Length, text, Guard.NotNull(provider), out double value, out error);
        length = read ? Length.FromMeters(value) : default;
        return read;
    }

    /// <summary>Reads a length, with "." as the decimal sign.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The quantity, -1e6 to 1e6 m.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Length ParseLength(string text) => ParseLength(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a length, with the decimal sign of a culture.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The quantity, -1e6 to 1e6 m.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Length ParseLength(string text, IFormatProvider provider)
        => TryParseLength(Guard.NotNull(text), provider, out Length length, out string error) ? length : throw new FormatException(error);
}
