using System.Text;

namespace Hydrocolloid.Formulation.Text;

/// <summary>
/// Reads records by RFC 4180. Beyond it, a line may end in CRLF, LF or CR, and empty lines and a byte order mark are passed over. A
/// record that breaks the rules carries the reason and reading goes on at the next line.
/// </summary>
internal static class CsvReader
{
    public static List<CsvRecord> Read(string text, char separator)
    {
        var records = new List<CsvRecord>();
        int position = text.Length > 0 && text[0] == '\uFEFF' ? 1 : 0, line = 1;
        while (position < text.Length)
        {
            int firstLine = line;
            var fields = new List<string>();
            string? error = null;
            bool more = true;
            while (more && error is null)
            {
                (string field, error) = Field(text, separator, ref position, ref line);
                fields.Add(field);
                more = position < text.Length && text[position] == separator;
                position += more ? 1 : 0;
            }

            if (error is not null)
            {
                while (position < text.Length && text[position] is not ('\r' or '\n'))
                {
                    position++;
                }
            }

            LineBreak(text, ref position, ref line);
            if (error is not null || fields.Count > 1 || fields[0].Length > 0)
            {
                records.Add(new CsvRecord(fields, firstLine, error));
            }
        }

        return records;
    }

    private static (string Field, string? Error) Field(string text, char separator, ref int position, ref int line)
    {
        int start = position;
        if (position >= text.Length || text[position] != '"')
        {
            while (position < text.Length && text[position] != separator && text[position] is not ('\r' or '\n'))
            {
                if (text[position] == '"')
                {
                    return ("", "A quotation mark stands inside a field that is not quoted.");
                }

                position++;
            }

            return (text.Substring(start, position - start), null);
        }

        var field = new StringBuilder();
        position++;
        while (position < text.Length)
        {
            if (text[position] == '"')
            {
                position++;
                if (position >= text.Length || text[position] != '"')
                {
                    return position >= text.Length || text[position] == separator || text[position] is '\r' or '\n' ? (field.ToString(), null)
                        : ("", "Something stands between the closing quotation mark and the end of the field.");
                }
            }
            else if (text[position] == '\n' || (text[position] == '\r' && !(position + 1 < text.Length && text[position + 1] == '\n')))
            {
                line++;
            }

            field.Append(text[position++]);
        }

        return ("", "A quoted field is not closed before the end of the file.");
    }

    private static void LineBreak(string text, ref int position, ref int line)
    {
        if (position < text.Length && text[position] is '\r' or '\n')
        {
            position += text[position] == '\r' && position + 1 < text.Length && text[position + 1] == '\n' ? 2 : 1;
            line++;
        }
    }
}
