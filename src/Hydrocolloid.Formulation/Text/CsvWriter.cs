using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Text;

/// <summary>Writes records by RFC 4180: every record ends in CRLF, a field is quoted where it must be.</summary>
internal sealed class CsvWriter(CsvDialect dialect)
{
    private readonly StringBuilder _text = new();
    private bool _inRecord;

    /// <summary>A cell of text: what a spreadsheet would run is made safe.</summary>
    public CsvWriter Text(string text) => Field(CsvGuard.On(text));

    /// <summary>A cell with a number in plain digits and the dialect's decimal sign; never guarded, so a minus stays a minus.</summary>
    public CsvWriter Number(double value) => Field(PlainDecimal.Of(value).Replace('.', dialect.DecimalSign));

    /// <summary>A cell with an exact number, all its digits.</summary>
    public CsvWriter Exact(decimal value) => Field(Exactly.ToText(value).Replace('.', dialect.DecimalSign));

    public void EndRecord()
    {
        _text.Append("\r\n");
        _inRecord = false;
    }

    public byte[] ToBytes() => dialect.ToBytes(_text.ToString());

    private CsvWriter Field(string field)
    {
        if (_inRecord)
        {
            _text.Append(dialect.Separator);
        }

        _inRecord = true;
        if (field.IndexOfAny([dialect.Separator, '"', '\r', '\n']) < 0)
        {
            _text.Append(field);
        }
        else
        {
            _text.Append('"').Append(field.Replace("\"", "\"\"")).Append('"');
        }

        return this;
    }
}
