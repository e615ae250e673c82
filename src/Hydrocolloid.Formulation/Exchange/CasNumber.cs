namespace Hydrocolloid.Formulation.Exchange;

/// <summary>The check digit of CAS registry numbers. A valid digit does not prove that the number is that of the right substance.</summary>
public static class CasNumber
{
    /// <summary>Whether a text is a CAS registry number with its check digit: 2 to 7 digits, 2 digits and the check digit, joined by hyphens.</summary>
    /// <param name="text">The text, such as <c>9002-18-0</c>.</param>
    /// <returns>Whether it is.</returns>
    public static bool IsValid(string? text)
    {
        string[] parts = (text ?? "").Split('-');
        if (parts.Length != 3 || parts[0].Length is < 2 or > 7 || parts[1].Length != 2 || parts[2].Length != 1 || parts.Any(p => p.Any(c => c is < '0' or > '9')))
        {
            return false;
        }

        // CAS: from the right, the digits before the last hyphen times 1, 2, 3, …; the sum modulo 10 is the check digit.
        string body = parts[0] + parts[1];
        int sum = 0;
        for (int i = 0; i < body.Length; i++)
        {
            sum += (body[body.Length - 1 - i] - '0') * (i + 1);
        }

        return sum % 10 == parts[2][0] - '0';
    }
}
