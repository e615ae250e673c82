using System.Globalization;
using System.Text.Json;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads figures and facts with their sources (docs/catalogue-format.md).</summary>
internal sealed class FigureReader(SourceList sources)
{
    /// <summary>Collects what every figure may say, whatever its value is, and refuses members that nothing takes.</summary>
    public sealed class Parts
    {
        public double? Min;
        public double? Max;
        public double? Value;
        public string? Text;
        public string? Note;
        public string? SourceId;
        public string? At;
        public string? Seen;
        public JsonElement DerivedFrom;
        public JsonElement Others;

        public bool Take(JsonProperty member)
        {
            switch (member.Name)
            {
                case "min": Min = member.Value.GetDouble(); break;
                case "max": Max = member.Value.GetDouble(); break;
                case "value" when member.Value.ValueKind == JsonValueKind.Number: Value = member.Value.GetDouble(); break;
                case "text": Text = member.Value.GetString(); break;
                case "note": Note = member.Value.GetString(); break;
                case "source": SourceId = member.Value.GetString(); break;
                case "at": At = member.Value.GetString(); break;
                case "seen": Seen = member.Value.GetString(); break;
                case "derivedFrom": DerivedFrom = member.Value; break;
                case "others": Others = member.Value; break;
                default: return false;
            }

            return true;
        }
    }

    public Cited<NumberRange> Range(JsonElement json, string pointer) => Range(PartsOf(json, pointer), pointer);

    public Cited<NumberRange> Range(Parts parts, string pointer)
        => new(NotNegative(RangeOf(parts, pointer), pointer), CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, Range));

    public Cited<TemperatureRange> Celsius(JsonElement json, string pointer)
    {
        Parts parts = PartsOf(json, pointer);
        var range = new TemperatureRange(RangeOf(parts, pointer));
        if (range.Celsius.Min < Guard.AbsoluteZeroCelsius || range.Celsius.Max < Guard.AbsoluteZeroCelsius)
        {
            throw Broken(pointer, "is under absolute zero");
        }

        return new(range, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, Celsius));
    }

    public Cited<DurationRange> Minutes(JsonElement json, string pointer)
    {
        Parts parts = PartsOf(json, pointer);
        return new(InSeconds(parts, 60, pointer), CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, Minutes));
    }

    public Cited<DurationRange> Hours(JsonElement json, string pointer)
    {
        Parts parts = PartsOf(json, pointer);
        return new(InSeconds(parts, 3600, pointer), CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, Hours));
    }

    public Cited<double> Number(JsonElement json, string pointer)
    {
        Parts parts = PartsOf(json, pointer);
        double value = parts.Value ?? throw Broken(pointer, "needs a value");
        return new(value, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, Number));
    }

    public Cited<string> Fact(JsonElement json, string pointer) => Fact(PartsOf(json, pointer), pointer);

    public Cited<string> Fact(Parts parts, string pointer)
    {
        string text = parts.Text ?? throw Broken(pointer, "needs a text");
        return new(text, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, Fact));
    }

    /// <summary>A value that is neither figure nor text, with what its members say of its source.</summary>
    public Cited<T> Cite<T>(T value, Parts parts, string pointer)
        where T : notnull
        => new(value, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer));

    public ValueList<Cited<string>> Facts(JsonElement json, string pointer) => List(json, pointer, Fact);

    public Citation CitationOf(Parts parts, string pointer)
    {
        Source source = sources.Get(parts.SourceId ?? throw Broken(pointer, "has no source"), pointer);
        CitationBasis basis = parts.Seen switch
        {
            "read" or "practice" => CitationBasis.Read,
            "recalled" => CitationBasis.Recalled,
            "estimated" => CitationBasis.Estimated,
            _ => throw Broken(pointer, $"seen is '{parts.Seen}', not read, recalled, estimated or practice"),
        };
        return new Citation(source, parts.At, basis);
    }

    public static ValueList<T> List<T>(JsonElement json, string pointer, Func<JsonElement, string, T> read)
    {
        var items = new T[json.GetArrayLength()];
        int i = 0;
        foreach (JsonElement item in json.EnumerateArray())
        {
            items[i] = read(item, pointer + "/" + i.ToString(CultureInfo.InvariantCulture));
            i++;
        }

        return ValueList<T>.Own(items);
    }

    public static CatalogueDocumentException Broken(string pointer, string message) => new(pointer, message);

    public static CatalogueDocumentException Unknown(string pointer, JsonProperty member) => Broken(pointer, $"'{member.Name}' is not a member of the format");

    private static NumberRange NotNegative(NumberRange range, string pointer)
        => range.Min < 0 || range.Max < 0 ? throw Broken(pointer, "must not be negative") : range;

    private static NumberRange RangeOf(Parts parts, string pointer)
        => parts is { Min: null, Max: null, Value: null } ? throw Broken(pointer, "needs min, max or value")
            : parts is { Min: null, Max: null } ? NumberRange.Single(parts.Value!.Value) : new NumberRange(parts.Min, parts.Max);

    private static DurationRange InSeconds(Parts parts, double secondsPerUnit, string pointer)
    {
        NumberRange range = RangeOf(parts, pointer);
        return new DurationRange(new NumberRange(range.Min * secondsPerUnit, range.Max * secondsPerUnit));
    }

    private static Parts PartsOf(JsonElement json, string pointer)
    {
        var parts = new Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            if (!parts.Take(member))
            {
                throw Unknown(pointer, member);
            }
        }

        return parts;
    }

    private ValueList<Source> RestsOn(Parts parts, string pointer)
        => parts.DerivedFrom.ValueKind == JsonValueKind.Undefined ? default
            : List(parts.DerivedFrom, pointer + "/derivedFrom", (id, at) => sources.Get(id.GetString()!, at));

    private static ValueList<TFigure> OthersOf<TFigure>(Parts parts, string pointer, Func<JsonElement, string, TFigure> read)
        where TFigure : class
        => parts.Others.ValueKind == JsonValueKind.Undefined ? default : List(parts.Others, pointer + "/others", read);
}
