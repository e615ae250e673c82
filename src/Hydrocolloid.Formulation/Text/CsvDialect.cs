namespace Hydrocolloid.Formulation.Text;

/// <summary>How a CSV file separates fields and writes decimals: a property of the file, never taken from the machine. Immutable, equal by content.</summary>
public sealed record CsvDialect
{
    /// <summary>States a dialect.</summary>
    /// <param name="separator">What stands between fields: comma, semicolon, tab or bar.</param>
    /// <param name="decimalSign">The decimal sign: point or comma, and not the separator.</param>
    /// <exception cref="ArgumentException">Another character, or both are the same.</exception>
    public CsvDialect(char separator, char decimalSign)
    {
        Separator = separator is ',' or ';' or '\t' or '|' ? separator : throw new ArgumentException("Must be a comma, a semicolon, a tab or a bar.", nameof(separator));
        DecimalSign = decimalSign is '.' or ',' && decimalSign != separator ? decimalSign
            : throw new ArgumentException("Must be a point or a comma, and not the separator.", nameof(decimalSign));
    }

    /// <summary>Commas between fields, decimal point: RFC 4180.</summary>
    public static CsvDialect CommaAndPoint { get; } = new(',', '.');

    /// <summary>Semicolons between fields, decimal comma: what spreadsheets write where the comma is the decimal sign.</summary>
    public static CsvDialect SemicolonAndComma { get; } = new(';', ',');

    /// <summary>What stands between fields.</summary>
    public char Separator { get; }

    /// <summary>The decimal sign.</summary>
    public char DecimalSign { get; }
}
