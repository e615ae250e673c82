using System.Text;

namespace Hydrocolloid.Formulation.Text;

/// <summary>
/// Text cells that a spreadsheet would run as a formula get an apostrophe in front, and so does what already begins as a guarded cell
/// would, so that the guard can be taken off again. The triggers and the ways round a guard are those of the OWASP page on CSV
/// injection: = + - @ tab and carriage return, also after blanks and after a line break inside the cell. Full-width forms count too.
/// </summary>
internal static class CsvGuard
{
    private const char Apostrophe = '\'';

    public static string On(string text)
    {
        StringBuilder? guarded = null;
        int copied = 0;
        for (int i = 0; i < text.Length; i++)
        {
            if (IsStart(text, i) && NeedsGuard(text, i))
            {
                (guarded ??= new StringBuilder(text.Length + 4)).Append(text, copied, i - copied).Append(Apostrophe);
                copied = i;
            }
        }

        return guarded is null ? text : guarded.Append(text, copied, text.Length - copied).ToString();
    }

    public static string Off(string text)
    {
        StringBuilder? plain = null;
        int copied = 0;
        for (int i = 0; i < text.Length; i++)
        {
            // Only what would have been guarded was guarded: a hand-written 'tis stays as it is.
            if (text[i] == Apostrophe && IsStart(text, i) && i + 1 < text.Length && NeedsGuard(text, i + 1, isFirst: i == 0))
            {
                (plain ??= new StringBuilder(text.Length)).Append(text, copied, i - copied);
                copied = i + 1;
                i++; // what follows is the text itself, an apostrophe of its own included
            }
        }

        return plain is null ? text : plain.Append(text, copied, text.Length - copied).ToString();
    }

    private static bool IsStart(string text, int i) => i == 0 || text[i - 1] is '\r' or '\n';

    private static bool NeedsGuard(string text, int i) => NeedsGuard(text, i, i == 0);

    private static bool NeedsGuard(string text, int i, bool isFirst)
    {
        if (text[i] is Apostrophe or '\t' || (isFirst && text[i] is '\r' or '\n'))
        {
            return true;
        }

        while (i < text.Length && text[i] is not ('\r' or '\n') && (char.IsWhiteSpace(text[i]) || text[i] is '\u200B' or '\u2060' or '\uFEFF'))
        {
            i++;
        }

        return i < text.Length && text[i] is '=' or '+' or '-' or '@' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20' or '\u2212' or '|' or '%';
    }
}
