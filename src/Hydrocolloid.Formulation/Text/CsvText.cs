using System.Globalization;
using System.Text;

namespace Hydrocolloid.Formulation.Text;

/// <summary>CSV by RFC 4180: records on lines ended by CRLF or LF, fields with a separator, a quote or a line break in double quotes, a quote in them doubled.</summary>
internal static class CsvText
{
    /// <summary>The records in order, empty lines left out. A fault is one of its record; reading goes on with the next line.</summary>
    public static IEnumerable<CsvRow> Rows(string text, char separator)
    {
        int at = text.Length > 0 && text[0] == '\uFEFF' ? 1 : 0, line = 1;
        var field = new StringBuilder();
        while (at < text.Length)
        {
            int start = line;
            string? fault = null;
            var fields = new List<string>();
            bool isOpen = true;
            while (isOpen)
            {
                fault = Field(text, separator, field, ref at, ref line) ?? fault;
                fields.Add(field.ToString());
                isOpen = at < text.Length && text[at] == separator;
                at += isOpen ? 1 : 0;
            }

            if (at < text.Length) // at the line break
            {
                at += text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1;
                line++;
            }

            if (fault is not null || fields.Count > 1 || fields[0].Length > 0)
            {
                yield return new CsvRow(start, [.. fields], fault);
            }
        }
    }

    /// <summary>Reads a number in the dialect's decimal sign, without group separators or exponent.</summary>
    public static bool TryParse(string text, CsvDialect dialect, out decimal value)
        => decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
            new NumberFormatInfo { NumberDecimalSeparator = dialect.DecimalSign.ToString() }, out value);

    private static string? Field(string text, char separator, StringBuilder field, ref int at, ref int line)
    {
        field.Clear();
        if (at < text.Length && text[at] == '"')
        {
            return Quoted(text, separator, field, ref at, ref line);
        }

        string? fault = null;
        for (; at < text.Length && text[at] != separator && text[at] is not ('\r' or '\n'); at++)
        {
            fault = text[at] == '"' ? "A double quote stands inside a field that is not in quotes." : fault;
            field.Append(text[at]);
        }

        return fault;
    }

    private static string? Quoted(string text, char separator, StringBuilder field, ref int at, ref int line)
    {
        for (at++; at < text.Length; at++)
        {
            char c = text[at];
            if (c == '"')
            {
                at++;
                if (at == text.Length || text[at] == separator || text[at] is '\r' or '\n')
                {
                    return null;
                }

                if (text[at] != '"')
                {
                    while (at < text.Length && text[at] != separator && text[at] is not ('\r' or '\n'))
                    {
                        at++;
                    }

                    return "Text follows the closing quote of a field.";
                }
            }

            line += c == '\n' ? 1 : 0;
            field.Append(c);
        }

        return "A quote is opened and never closed.";
    }
}
