using System.Globalization;
using System.Text.Json;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads figures and facts with their sources (docs/catalogue-format.md).</summary>
internal sealed class FigureReader(SourceList sources)
{
    /// <summary>Collects what every figure may say, whatever its value is, and refuses members that nothing takes.</summary>
    public struct Parts
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

        public bool Take(string word, JsonElement value)
        {
            switch (word)
            {
                case "min": Min = value.GetDouble(); break;
                case "max": Max = value.GetDouble(); break;
                case "value" when value.ValueKind == JsonValueKind.Number: Value = value.GetDouble(); break;
                case "text": Text = value.GetString(); break;
                case "note": Note = value.GetString(); break;
                case "source": SourceId = WordMemo.Text(value); break;
                case "at": At = WordMemo.Text(value); break;
                case "seen": Seen = WordMemo.Text(value); break;
                case "derivedFrom": DerivedFrom = value; break;
                case "others": Others = value; break;
                default: return false;
            }

            return true;
        }
    }

    public Cited<NumberRange> Range(JsonElement json, string pointer) => Range(PartsOf(json, pointer), pointer);

    public Cited<NumberRange> Range(in Parts parts, string pointer)
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

    public Cited<string> Fact(in Parts parts, string pointer)
    {
        string text = parts.Text ?? throw Broken(pointer, "needs a text");
        return new(text, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, Fact));
    }

    /// <summary>A fact that says what it is about.</summary>
    public AgentFact FactOfTopic(JsonElement json, string pointer)
    {
        var parts = new Parts();
        string? topic = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "topic")
            {
                topic = member.Value.GetString();
            }
            else if (!parts.Take(word, member.Value))
            {
                throw Unknown(pointer, member);
            }
        }

        return new AgentFact(topic ?? throw Broken(pointer, "needs a topic"), Fact(parts, pointer));
    }

    /// <summary>A value that is neither figure nor text, with what its members say of its source.</summary>
    public Cited<T> Cite<T>(T value, in Parts parts, string pointer)
        where T : notnull
        => new(value, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer));

    public ValueList<Cited<string>> Facts(JsonElement json, string pointer) => List(json, pointer, Fact);

    public Citation CitationOf(in Parts parts, string pointer)
    {
        string source = parts.SourceId ?? throw Broken(pointer, "has no source");
        CitationBasis basis = parts.Seen switch
        {
            "read" or "practice" => CitationBasis.Read,
            "recalled" => CitationBasis.Recalled,
            "estimated" => CitationBasis.Estimated,
            _ => throw Broken(pointer, $"seen is '{parts.Seen}', not read, recalled, estimated or practice"),
        };
        return sources.Cite(source, parts.At, basis, pointer);
    }

    public static ValueList<T> List<T>(JsonElement json, string pointer, Func<JsonElement, string, T> read)
    {
        var items = new T[json.GetArrayLength()];
        int i = 0;
        foreach (JsonElement item in json.EnumerateArray())
        {
            items[i] = read(item, pointer.Length == 0 ? "" : pointer + "/" + i.ToString(CultureInfo.InvariantCulture));
            i++;
        }

        return ValueList<T>.Own(items);
    }

    /// <summary>The pointer of a member; nothing if places are not kept (see <see cref="BuiltInCatalogue"/>).</summary>
    public static string Under(string pointer, string member) => pointer.Length == 0 ? "" : pointer + "/" + member;

    public static CatalogueDocumentException Broken(string pointer, string message) => new(pointer, message);

    public static CatalogueDocumentException Unknown(string pointer, JsonProperty member) => Broken(pointer, $"'{member.Name}' is not a member of the format");

    private static NumberRange NotNegative(NumberRange range, string pointer)
        => range.Min < 0 || range.Max < 0 ? throw Broken(pointer, "must not be negative") : range;

    private static NumberRange RangeOf(in Parts parts, string pointer)
        => parts is { Min: null, Max: null, Value: null } ? throw Broken(pointer, "needs min, max or value")
            : parts is { Min: null, Max: null } ? NumberRange.Single(parts.Value!.Value) : new NumberRange(parts.Min, parts.Max);

    private static DurationRange InSeconds(in Parts parts, double secondsPerUnit, string pointer)
    {
        NumberRange range = RangeOf(parts, pointer);
        return new DurationRange(new NumberRange(range.Min * secondsPerUnit, range.Max * secondsPerUnit));
    }

    private static Parts PartsOf(JsonElement json, string pointer)
    {
        var parts = new Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (!parts.Take(word, member.Value))
            {
                throw Unknown(pointer, member);
            }
        }

        return parts;
    }

    private ValueList<Source> RestsOn(in Parts parts, string pointer)
        => parts.DerivedFrom.ValueKind == JsonValueKind.Undefined ? default
            : List(parts.DerivedFrom, Under(pointer, "derivedFrom"), (id, at) => sources.Get(id.GetString()!, at));

    private static ValueList<TFigure> OthersOf<TFigure>(in Parts parts, string pointer, Func<JsonElement, string, TFigure> read)
        where TFigure : class
        => parts.Others.ValueKind == JsonValueKind.Undefined ? default : List(parts.Others, Under(pointer, "others"), read);
}
