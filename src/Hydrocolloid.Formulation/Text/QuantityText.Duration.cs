using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Text;

public static partial class QuantityText
{
    /// <summary>Writes a duration in s below a minute, from there to the second in min, h and, from 48 h, d, such as "4 min", "1 h 30 min".</summary>
    /// <param name="duration">The quantity; 0 to 1e9 s.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="duration"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="duration"/> carries a unit that does not exist.</exception>
    public static string Format(Duration duration) => Format(duration, CultureInfo.InvariantCulture);

    /// <summary>Writes a duration in s below a minute, from there to the second in min, h and, from 48 h, d, such as "4 min", "1 h 30 min", with the decimal sign of a culture.</summary>
    /// <param name="duration">The quantity; 0 to 1e9 s.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="duration"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="duration"/> carries a unit that does not exist.</exception>
    public static string Format(Duration duration, IFormatProvider provider)
        => QuantityWriter.AutoDuration(Guard.Seconds(duration), Guard.NotNull(provider));

    /// <summary>Writes a duration in a given unit.</summary>
    /// <param name="duration">The quantity; 0 to 1e9 s.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "min".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="duration"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="duration"/> carries a unit that does not exist.</exception>
    public static string Format(Duration duration, string unit, int digits) => Format(duration, unit, digits, CultureInfo.InvariantCulture);

    /// <summary>Writes a duration in a given unit, with the decimal sign of a culture.</summary>
    /// <param name="duration">The quantity; 0 to 1e9 s.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "min".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="duration"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="duration"/> carries a unit that does not exist.</exception>
    public static string Format(Duration duration, string unit, int digits, IFormatProvider provider)
        => QuantityWriter.In(QuantityKind.Duration, Guard.Seconds(duration), unit, digits, Guard.NotNull(provider));

    /// <summary>Reads a duration, with "." as the decimal sign. Several parts from the larger to the smaller unit are read too, such as "1 h 30 min".</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="duration">The quantity, 0 to 1e9 s; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParseDuration(string? text, out Duration duration, out string error)
        => TryParseDuration(text, CultureInfo.InvariantCulture, out duration, out error);

    /// <summary>Reads a duration, with the decimal sign of a culture. Several parts from the larger to the smaller unit are read too, such as "1 h 30 min".</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="duration">The quantity, 0 to 1e9 s; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParseDuration(string? text, IFormatProvider provider, out Duration duration, out string error)
    {
        bool read = QuantityReader.TryRead(QuantityKind.Duration, text, Guard.NotNull(provider), out double value, out error);
        duration = read ? Duration.FromSeconds(value) : default;
        return read;
    }

    /// <summary>Reads a duration, with "." as the decimal sign. Several parts from the larger to the smaller unit are read too, such as "1 h 30 min".</summary>
    /// <param name="text">The text.</param>
    /// <returns>The quantity, 0 to 1e9 s.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Duration ParseDuration(string text) => ParseDuration(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a duration, with the decimal sign of a culture. Several parts from the larger to the smaller unit are read too, such as "1 h 30 min".</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The quantity, 0 to 1e9 s.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Duration ParseDuration(string text, IFormatProvider provider)
        => TryParseDuration(Guard.NotNull(text), provider, out Duration duration, out string error) ? duration : throw new FormatException(error);
}
