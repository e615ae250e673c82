using System.Globalization;

namespace Hydrocolloid.Formulation.Internal;

/// <summary>Decimal arithmetic between two doubles: text in, text out, so that no factor adds a rounding of its own.</summary>
internal static class Exactly
{
    /// <summary>Whether decimal keeps at least as many digits of the value as double does.</summary>
    public static bool Fits(double value) => value == 0 || Math.Abs(value) is >= 1e-9 and < 1e16;

    public static bool TryParse(string number, out decimal exact)
        => decimal.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out exact);

    /// <summary>The nearest double. The cast can be one step off, reading the digits is not.</summary>
    public static double ToDouble(decimal value)
        => double.Parse(value.ToString(CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture) + 0.0;

    /// <summary>All digits, no exponent, no trailing zeros.</summary>
    public static string ToText(decimal value) => value.ToString("0.############################", CultureInfo.InvariantCulture);
}
