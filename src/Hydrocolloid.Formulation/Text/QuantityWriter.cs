using System.Globalization;
using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Text;

/// <summary>Writes "number unit". Of the culture only the decimal sign is used, so the minus sign and the digits are the same everywhere.</summary>
internal static class QuantityWriter
{
    private const int AutoDigits = 3;

    private static readonly KitchenUnit s_second = UnitTable.Get(QuantityKind.Duration, "s");

    /// <summary>In the first of the units, given in rising order, whose rounded number stays below 1000; otherwise in the last.</summary>
    public static string Auto(double baseValue, IFormatProvider provider, KitchenUnit[] units)
    {
        int last = units.Length - 1;
        for (int i = 0; i < last && baseValue != 0; i++)
        {
            string number = Numbers.Significant(units[i].FromBase(baseValue), AutoDigits);
            if (Numbers.TryParse(number, CultureInfo.InvariantCulture, out double rounded) && Math.Abs(rounded) < 1000)
            {
                return Join(number, units[i], provider);
            }
        }

        KitchenUnit unit = baseValue == 0 ? Array.Find(units, u => u.Factor.Equals(1.0)) ?? units[last] : units[last];
        return Join(Numbers.Significant(unit.FromBase(baseValue), AutoDigits), unit, provider);
    }

    /// <summary>Seconds below a minute; from there whole seconds split into d, h, min and s, with days from 48 h.</summary>
    public static string AutoDuration(double seconds, IFormatProvider provider)
    {
        string number = Numbers.Significant(seconds, AutoDigits);
        if (seconds < 60 && number is not "60")
        {
            return Join(number, s_second, provider);
        }

        long rest = (long)Numbers.RoundHalfAway(seconds, 0);
        var text = new StringBuilder();
        if (rest >= 2 * 86_400)
        {
            Part(text, ref rest, 86_400, "d");
        }

        Part(text, ref rest, 3600, "h");
        Part(text, ref rest, 60, "min");
        Part(text, ref rest, 1, "s");
        return text.ToString();
    }

    public static string In(QuantityKind kind, double baseValue, string unit, int digits, IFormatProvider provider)
    {
        if (digits is < 1 or > 15 and not QuantityText.AllDigits)
        {
            throw new ArgumentOutOfRangeException(nameof(digits), digits, "Must be 1 to 15, or QuantityText.AllDigits.");
        }

        if (!UnitTable.TryFind(KindFacts.Of(kind), Guard.NotNull(unit), out KitchenUnit? found, out string error))
        {
            throw new ArgumentException(error, nameof(unit));
        }

        string number = digits == QuantityText.AllDigits
            ? found!.FromBaseInFull(baseValue)
            : Numbers.Significant(found!.FromBase(baseValue), digits);
        return Join(number, found!, provider);
    }

    private static string Join(string invariantNumber, KitchenUnit unit, IFormatProvider provider)
    {
        string decimalSign = NumberFormatInfo.GetInstance(provider).NumberDecimalSeparator;
        return (decimalSign is "." ? invariantNumber : invariantNumber.Replace(".", decimalSign)) + " " + unit.Symbol;
    }

    private static void Part(StringBuilder text, ref long rest, int size, string symbol)
    {
        if (rest >= size)
        {
            text.Append(text.Length == 0 ? "" : " ").Append((rest / size).ToString(CultureInfo.InvariantCulture)).Append(' ').Append(symbol);
            rest %= size;
        }
    }
}
