using System.Globalization;
using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Text;

/// <summary>Reads "number unit". Of the culture only the decimal sign is used; digits are 0 to 9 and there are no digit groups.</summary>
internal static class QuantityReader
{
    public static bool TryRead(QuantityKind kind, string? text, IFormatProvider provider, out double baseValue, out string error)
    {
        KindFacts facts = KindFacts.Of(kind);
        string trimmed = Trim(text);
        baseValue = 0;
        int position = 0;
        KitchenUnit? previous = null;
        do
        {
            if (!TryNumber(trimmed, ref position, provider, out string number, out double value, out error)
                || !TryUnit(facts, trimmed, ref position, severalParts: kind == QuantityKind.Duration, out KitchenUnit? unit, out error))
            {
                baseValue = 0;
                return false;
            }

            if (previous is not null && (unit!.Factor >= previous.Factor || value < 0 || baseValue < 0))
            {
                baseValue = 0;
                error = $"{UnitTable.Quote(trimmed)} is refused: in a duration of several parts each unit is smaller than the one before, as in 1 h 30 min, and no part is negative.";
                return false;
            }

            baseValue += unit!.ToBase(number, value);
            previous = unit;
        }
        while (position < trimmed.Length);

        if (!(baseValue >= facts.Min && baseValue <= facts.Max))
        {
            baseValue = 0;
            error = $"{UnitTable.Quote(trimmed)} is out of range: a {facts.Noun} is between {Numbers.Exact(facts.Min)} {facts.BaseSymbol} and {Numbers.Exact(facts.Max)} {facts.BaseSymbol}.";
            return false;
        }

        return true;
    }

    /// <summary>Reads a number with nothing after it.</summary>
    public static bool TryReadNumber(string? text, IFormatProvider provider, out double value, out string error)
    {
        string trimmed = Trim(text);
        int position = 0;
        if (TryNumber(trimmed, ref position, provider, out _, out value, out error) && position < trimmed.Length)
        {
            value = 0;
            error = $"{UnitTable.Quote(trimmed)} is not a bare number.";
        }

        return error.Length == 0;
    }

    private static bool TryNumber(string text, ref int position, IFormatProvider provider, out string number, out double value, out string error)
    {
        string decimalSign = NumberFormatInfo.GetInstance(provider).NumberDecimalSeparator;
        var invariant = new StringBuilder();
        int i = position;
        if (i < text.Length && text[i] is '+' or '-' or '\u2212')
        {
            invariant.Append(text[i++] == '+' ? "" : "-");
        }

        int digits = Digits(text, ref i, invariant);
        if (StartsWith(text, i, decimalSign))
        {
            i += decimalSign.Length;
            invariant.Append('.');
            digits += Digits(text, ref i, invariant);
        }

        number = "";
        value = 0;
        if (digits == 0 && !(i < text.Length && IsForeignDigit(text, i)))
        {
            error = text.Length == 0 ? "There is nothing to read." : $"{UnitTable.Quote(text)} does not have a number where one is expected.";
            return false;
        }

        Exponent(text, ref i, invariant);
        error = WhyNumberGoesOn(text, i, decimalSign);
        if (error.Length > 0)
        {
            return false;
        }

        number = invariant.ToString();
        position = i;
        if (!Numbers.TryParse(number, CultureInfo.InvariantCulture, out value))
        {
            value = 0;
            error = $"{UnitTable.Quote(text)} holds a number too large to be a quantity.";
            return false;
        }

        return true;
    }

    private static void Exponent(string text, ref int i, StringBuilder invariant)
    {
        if (i >= text.Length || text[i] is not ('e' or 'E'))
        {
            return;
        }

        int j = i + 1;
        var exponent = new StringBuilder("E");
        if (j < text.Length && text[j] is '+' or '-' or '\u2212')
        {
            exponent.Append(text[j++] == '+' ? '+' : '-');
        }

        if (Digits(text, ref j, exponent) > 0)
        {
            invariant.Append(exponent);
            i = j;
        }
    }

    /// <summary>Says what is wrong where the number seems to go on after its last readable sign; otherwise empty.</summary>
    private static string WhyNumberGoesOn(string text, int i, string decimalSign)
    {
        if (i >= text.Length)
        {
            return "";
        }

        if (IsForeignDigit(text, i))
        {
            return $"{UnitTable.Quote(text)} is refused: only the digits 0 to 9 are read.";
        }

        int j = i;
        while (j < text.Length && (IsSpace(text[j]) || text[j] is '.' or ',' or '\'' or '\u2019' or '\u066B' or '\u066C' or '_'))
        {
            j++;
        }

        return j > i && j < text.Length && (text[j] is >= '0' and <= '9' || IsForeignDigit(text, j))
               || text[i] is '.' or ',' or '\u066B' or '\u066C'
            ? $"{UnitTable.Quote(text)} is ambiguous and refused: the decimal sign read here is \"{decimalSign}\", once, and digits are never grouped."
            : "";
    }

    private static bool TryUnit(KindFacts kind, string text, ref int position, bool severalParts, out KitchenUnit? unit, out string error)
    {
        while (position < text.Length && IsSpace(text[position]))
        {
            position++;
        }

        int end = text.Length;
        if (severalParts)
        {
            end = position;
            while (end < text.Length && text[end] is not (>= '0' and <= '9'))
            {
                end++;
            }
        }

        string name = Trim(text.Substring(position, end - position));
        position = end;
        return UnitTable.TryFind(kind, name, out unit, out error);
    }

    private static int Digits(string text, ref int i, StringBuilder invariant)
    {
        int start = i;
        while (i < text.Length && text[i] is >= '0' and <= '9')
        {
            invariant.Append(text[i++]);
        }

        return i - start;
    }

    private static bool StartsWith(string text, int i, string sign)
        => sign.Length > 0 && string.CompareOrdinal(text, i, sign, 0, sign.Length) == 0;

    private static bool IsForeignDigit(string text, int i) => text[i] is not (>= '0' and <= '9') && char.IsNumber(text, i);

    private static bool IsSpace(char c) => c is ' ' or '\u00A0' or '\u202F';

    private static string Trim(string? text) => text?.Trim(' ', '\u00A0', '\u202F') ?? "";
}
