using System.Globalization;

namespace Hydrocolloid.Formulation.Internal;

/// <summary>Numbers as text: no group separators, never the current culture. The <c>…In</c> forms take a culture, the others are invariant.</summary>
internal static class Numbers
{
    /// <summary>The shortest text that reads back as the same double.</summary>
    public static string Exact(double value) => ExactIn(value, CultureInfo.InvariantCulture);

    /// <inheritdoc cref="Exact"/>
    public static string ExactIn(double value, IFormatProvider provider) => (value + 0.0).ToString("R", provider);

    /// <summary>At most <paramref name="digits"/> significant digits, no exponent for everyday sizes, no trailing zeros.</summary>
    public static string Significant(double value, int digits) => SignificantIn(value, digits, CultureInfo.InvariantCulture);

    /// <inheritdoc cref="Significant"/>
    public static string SignificantIn(double value, int digits, IFormatProvider provider)
    {
        if (value == 0 || double.IsNaN(value) || double.IsInfinity(value))
        {
            return ExactIn(value, provider);
        }

        int decimals = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return decimals > 15 ? ExactIn(value, provider) : FixedIn(value, Math.Max(decimals, 0), trim: true, provider);
    }

    /// <summary>A fixed count of decimals, half away from zero.</summary>
    public static string Fixed(double value, int decimals) => FixedIn(value, decimals, trim: false, CultureInfo.InvariantCulture);

    /// <inheritdoc cref="Fixed"/>
    public static string FixedIn(double value, int decimals, bool trim, IFormatProvider provider)
        => (RoundHalfAway(value, decimals) + 0.0)
            .ToString(decimals == 0 ? "0" : "0." + new string(trim ? '#' : '0', decimals), provider);

    /// <summary>Rounds half away from zero on the decimal reading of the number, so 2.675 at two decimals is 2.68.</summary>
    public static double RoundHalfAway(double value, int decimals)
        => Math.Abs(value) < 1e12 && decimals is >= 0 and <= 15
            ? (double)Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero)
            : value;

    /// <summary>Reads a decimal number: optional sign, ASCII digits, one decimal sign of the culture, optional exponent. No group separators.</summary>
    public static bool TryParse(string text, IFormatProvider provider, out double value)
        => double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, provider, out value)
           && !double.IsNaN(value) && !double.IsInfinity(value);
}
