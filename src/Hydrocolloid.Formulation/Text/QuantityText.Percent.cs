using System.Globalization;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Text;

public static partial class QuantityText
{
    /// <summary>Writes a percentage, such as "0.9 %".</summary>
    /// <param name="percent">Parts per hundred (0.9 is 0.9 %); 0 to 1e6.</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static string FormatPercent(double percent, int digits) => FormatPercent(percent, digits, CultureInfo.InvariantCulture);

    /// <summary>Writes a percentage, such as "0.9 %", with the decimal sign of a culture.</summary>
    /// <param name="percent">Parts per hundred (0.9 is 0.9 %); 0 to 1e6.</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static string FormatPercent(double percent, int digits, IFormatProvider provider)
        => QuantityWriter.In(QuantityKind.Percent, Guard.InRange(percent, 0, 1e6, "%"), "%", digits, Guard.NotNull(provider));

    /// <summary>Reads a percentage, sign included, with "." as the decimal sign.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="percent">Parts per hundred ("0.9 %" is 0.9), 0 to 1e6; 0 on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParsePercent(string? text, out double percent, out string error)
        => TryParsePercent(text, CultureInfo.InvariantCulture, out percent, out error);

    /// <summary>Reads a percentage, sign included, with the decimal sign of a culture.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="percent">Parts per hundred ("0.9 %" is 0.9), 0 to 1e6; 0 on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParsePercent(string? text, IFormatProvider provider, out double percent, out string error)
        => QuantityReader.TryRead(QuantityKind.Percent, text, Guard.NotNull(provider), out percent, out error);

    /// <summary>Reads a percentage, sign included, with "." as the decimal sign.</summary>
    /// <param name="text">The text.</param>
    /// <returns>Parts per hundred ("0.9 %" is 0.9), 0 to 1e6.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static double ParsePercent(string text) => ParsePercent(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a percentage, sign included, with the decimal sign of a culture.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>Parts per hundred ("0.9 %" is 0.9), 0 to 1e6.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static double ParsePercent(string text, IFormatProvider provider)
        => TryParsePercent(Guard.NotNull(text), provider, out double percent, out string error) ? percent : throw new FormatException(error);
}
