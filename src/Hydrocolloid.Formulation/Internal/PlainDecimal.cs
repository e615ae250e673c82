using System.Text;

namespace Hydrocolloid.Formulation.Internal;

/// <summary>A number as plain decimal digits, never with an exponent, that read back as the same double.</summary>
internal static class PlainDecimal
{
    public static string Of(double value) => Expand(Numbers.Exact(value));

    /// <summary>The same number without an exponent.</summary>
    public static string Expand(string number)
    {
        int e = number.IndexOfAny(['E', 'e']);
        if (e < 0)
        {
            return number;
        }

        int exponent = Exactly.TryParse(number.Substring(e + 1), out decimal power) ? (int)power : throw new ArgumentException("Not a number.", nameof(number));
        bool negative = number[0] == '-';
        string mantissa = number.Substring(negative ? 1 : 0, e - (negative ? 1 : 0));
        int point = mantissa.IndexOf('.') is >= 0 and int at ? at : mantissa.Length;
        string digits = mantissa.Replace(".", "");
        int place = point + exponent; // where the point comes to stand among the digits
        var text = new StringBuilder(negative ? "-" : "");
        if (place <= 0)
        {
            return text.Append("0.").Append('0', -place).Append(digits.TrimEnd('0')).ToString();
        }

        return place >= digits.Length ? text.Append(digits).Append('0', place - digits.Length).ToString()
            : text.Append(digits, 0, place).Append('.').Append(digits, place, digits.Length - place).ToString();
    }
}
