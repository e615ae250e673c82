namespace Hydrocolloid.Formulation.Text;

/// <summary>The bytes of a CSV file.</summary>
public enum CsvEncoding
{
    /// <summary>UTF-8 without a byte order mark.</summary>
    Utf8,

    /// <summary>UTF-8 with a byte order mark, by which spreadsheets know it.</summary>
    Utf8WithMark,

    /// <summary>UTF-16, little endian, with a byte order mark.</summary>
    Utf16WithMark,

    /// <summary>ISO 8859-1; a text with other signs is refused.</summary>
    Latin1,
}
