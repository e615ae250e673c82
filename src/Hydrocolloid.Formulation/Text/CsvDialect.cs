using System.Globalization;
using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Text;

/// <summary>
/// How a CSV file is written and read: RFC 4180 with a separator, a decimal sign and an encoding that belong to the file, never to the machine.
/// Immutable, equal by content.
/// </summary>
public sealed record CsvDialect
{
    /// <summary>States a dialect.</summary>
    /// <param name="separator">Between fields: a comma, a semicolon, a tab or a vertical bar.</param>
    /// <param name="decimalSign">In numbers: a point or a comma, not that of the separator.</param>
    /// <param name="encoding">The bytes.</param>
    /// <exception cref="ArgumentException">A sign is not one of those, or both are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The encoding is not defined.</exception>
    public CsvDialect(char separator, char decimalSign, CsvEncoding encoding = CsvEncoding.Utf8)
    {
        Separator = separator is ',' or ';' or '\t' or '|' ? separator
            : throw new ArgumentException("The separator must be a comma, a semicolon, a tab or a vertical bar.", nameof(separator));
        DecimalSign = decimalSign is '.' or ',' ? decimalSign : throw new ArgumentException("The decimal sign must be a point or a comma.", nameof(decimalSign));
        Encoding = (CsvEncoding)Guard.Defined((int)encoding, (int)CsvEncoding.Latin1, nameof(encoding));
        if (separator == decimalSign)
        {
            throw new ArgumentException("One sign cannot be both the separator and the decimal sign.", nameof(decimalSign));
        }
    }

    /// <summary>Comma, decimal point, UTF-8: for programs.</summary>
    public static CsvDialect Comma { get; } = new(',', '.', CsvEncoding.Utf8);

    /// <summary>Semicolon, decimal comma, UTF-8 with a byte order mark: for spreadsheets where the comma is the decimal sign.</summary>
    public static CsvDialect Semicolon { get; } = new(';', ',', CsvEncoding.Utf8WithMark);

    /// <summary>The sign between fields.</summary>
    public char Separator { get; }

    /// <summary>The decimal sign of numbers.</summary>
    public char DecimalSign { get; }

    /// <summary>The bytes.</summary>
    public CsvEncoding Encoding { get; }

    /// <summary>The signs and the encoding.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"separator '{(Separator == '\t' ? "tab" : Separator.ToString())}', decimal sign '{DecimalSign}', {Encoding}";

    internal IFormatProvider Numbers => new NumberFormatInfo { NumberDecimalSeparator = DecimalSign.ToString() };

    /// <summary>Reads a number in the decimal sign, without group separators or exponent.</summary>
    internal bool TryParse(string text, out decimal value)
        => decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, Numbers, out value);

    /// <summary>The bytes of a text.</summary>
    /// <exception cref="ArgumentException">The encoding has no bytes for a sign of the text.</exception>
    internal byte[] ToBytes(string text)
    {
        Encoding encoding = Coder();
        try
        {
            return [.. encoding.GetPreamble(), .. encoding.GetBytes(text)];
        }
        catch (EncoderFallbackException e)
        {
            throw new ArgumentException($"{Encoding} has no bytes for U+{(int)e.CharUnknown:X4}: choose another encoding.", nameof(text), e);
        }
    }

    /// <summary>The text of bytes, with or without the mark; null and the reason if they are not of the encoding.</summary>
    internal (string? Text, string Error) ToText(byte[] bytes)
    {
        Encoding encoding = Coder();
        byte[] mark = Encoding == CsvEncoding.Utf16WithMark ? [0xFF, 0xFE] : Encoding == CsvEncoding.Latin1 ? [] : [0xEF, 0xBB, 0xBF];
        int start = mark.Length > 0 && bytes.AsSpan().StartsWith(mark) ? mark.Length : 0;
        try
        {
            return (encoding.GetString(bytes, start, bytes.Length - start), "");
        }
        catch (DecoderFallbackException e)
        {
            return (null, $"Byte {Internal.Numbers.Exact(start + Math.Max(0, e.Index))} is not {Encoding}: the file is in another encoding.");
        }
    }

    private Encoding Coder() => Encoding switch
    {
        CsvEncoding.Utf8 => new UTF8Encoding(false, true),
        CsvEncoding.Utf8WithMark => new UTF8Encoding(true, true),
        CsvEncoding.Utf16WithMark => new UnicodeEncoding(false, true, true),
        _ => System.Text.Encoding.GetEncoding("iso-8859-1", EncoderFallback.ExceptionFallback, DecoderFallback.ExceptionFallback),
    };
}
