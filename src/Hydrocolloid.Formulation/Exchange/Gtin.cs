using System.Diagnostics.CodeAnalysis;

namespace Hydrocolloid.Formulation.Exchange;

/// <summary>A Global Trade Item Number with a valid check digit (GS1 General Specifications): GTIN-8, -12, -13 or -14. Immutable, equal by its 14 digits.</summary>
public sealed record Gtin
{
    private const int Length = 14;

    private Gtin(string digits) => Digits = digits;

    /// <summary>The number as 14 digits, padded with zeros on the left.</summary>
    public string Digits { get; }

    /// <summary>True for numbers that a shop gives out itself (prefixes 02 and 20 to 29 of the 13 digits): they are not unique in the world.</summary>
    public bool IsInStore => Digits[0] == '0' && (Digits[1] == '2' || (Digits[1] == '0' && Digits[2] == '2'));

    /// <summary>Reads a number.</summary>
    /// <param name="text">8, 12, 13 or 14 digits, the check digit last; nothing else.</param>
    /// <param name="gtin">The number; null if the text is refused.</param>
    /// <param name="error">Why the text was refused; empty if it was not.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParse(string? text, [NotNullWhen(true)] out Gtin? gtin, out string error)
    {
        gtin = null;
        if (text is null || text.Length is not (8 or 12 or 13 or 14) || text.Any(c => c is < '0' or > '9'))
        {
            error = "A GTIN is 8, 12, 13 or 14 digits.";
            return false;
        }

        string body = text.Substring(0, text.Length - 1);
        char expected = CheckDigit(body);
        if (text[text.Length - 1] != expected)
        {
            error = $"The check digit of {text} must be {expected}: a digit is wrong or two stand in the wrong order.";
            return false;
        }

        error = "";
        gtin = new Gtin(text.PadLeft(Length, '0'));
        return true;
    }

    /// <summary>The 14 digits.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Digits;

    // GS1: from the right, the digits weigh 3, 1, 3, 1, …; the check digit fills up to the next ten.
    internal static char CheckDigit(string body)
    {
        int sum = 0;
        for (int i = 0; i < body.Length; i++)
        {
            sum += (body[body.Length - 1 - i] - '0') * (i % 2 == 0 ? 3 : 1);
        }

        return (char)('0' + (10 - sum % 10) % 10);
    }
}
