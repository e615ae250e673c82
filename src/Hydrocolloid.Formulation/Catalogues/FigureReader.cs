using System.Globalization;
using System.Text.Json;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads figures and facts with their sources (docs/catalogue-format.md).</summary>
internal sealed class FigureReader
{
    // Kept, because a catalogue holds thousands of lists and a delegate made for each would be a sixth of all it allocates.
    private readonly Func<JsonElement, string, Cited<NumberRange>> _range;
    private readonly Func<JsonElement, string, Cited<TemperatureRange>> _celsius;
    private readonly Func<JsonElement, string, Cited<DurationRange>> _minutes;
    private readonly Func<JsonElement, string, Cited<DurationRange>> _hours;
    private readonly Func<JsonElement, string, Cited<double>> _number;
    private readonly Func<JsonElement, string, Cited<string>> _fact;
    private readonly Func<JsonElement, string, Source> _source;
    private readonly SourceList _sources;

    public FigureReader(SourceList sources)
    {
        _sources = sources;
        _range = Range;
        _celsius = Celsius;
        _minutes = Minutes;
        _hours = Hours;
        _number = Number;
        _fact = Fact;
        _source = (id, at) => _sources.Get(WordMemo.Value(id), at);
    }

    /// <summary>Collects what every figure may say, whatever its value is, and refuses members that nothing takes.</summary>
    public struct Parts
    {
        public double? Min;
        public double? Max;
        public double? Value;
        public string? Text;
        public string? Note;
        public string? SourceId;
        public CitationBasis Basis;
        public bool CitedTwice;
        public string? At;
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
                case "read" or "practice": CiteAs(CitationBasis.Read, value); break;
                case "recalled": CiteAs(CitationBasis.Recalled, value); break;
                case "estimated": CiteAs(CitationBasis.Estimated, value); break;
                case "at": At = WordMemo.Value(value); break;
                case "derivedFrom": DerivedFrom = value; break;
                case "others": Others = value; break;
                default: return false;
            }

            return true;
        }

        private void CiteAs(CitationBasis basis, JsonElement source)
        {
            CitedTwice = SourceId is not null;
            SourceId = WordMemo.Value(source);
            Basis = basis;
        }
    }

    public Cited<NumberRange> Range(JsonElement json, string pointer) => Range(PartsOf(json, pointer), pointer);

    public Cited<NumberRange> Range(in Parts parts, string pointer)
        => new(NotNegative(RangeOf(parts, pointer), pointer), CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, _range));

    public Cited<TemperatureRange> Celsius(JsonElement json, string pointer)
    {
        Parts parts = PartsOf(json, pointer);
        var range = new TemperatureRange(RangeOf(parts, pointer));
        if (range.Celsius.Min < Guard.AbsoluteZeroCelsius || range.Celsius.Max < Guard.AbsoluteZeroCelsius)
        {
            throw Broken(pointer, "is under absolute zero");
        }

        return new(range, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, _celsius));
    }

    public Cited<DurationRange> Minutes(JsonElement json, string pointer)
    {
        Parts parts = PartsOf(json, pointer);
        return new(InSeconds(parts, 60, pointer), CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, _minutes));
    }

    public Cited<DurationRange> Hours(JsonElement json, string pointer)
    {
        Parts parts = PartsOf(json, pointer);
        return new(InSeconds(parts, 3600, pointer), CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, _hours));
    }

    public Cited<double> Number(JsonElement json, string pointer)
    {
        Parts parts = PartsOf(json, pointer);
        double value = parts.Value ?? throw Broken(pointer, "needs a value");
        return new(value, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, _number));
    }

    public Cited<string> Fact(JsonElement json, string pointer) => Fact(PartsOf(json, pointer), pointer);

    public Cited<string> Fact(in Parts parts, string pointer)
    {
        string text = parts.Text ?? throw Broken(pointer, "needs a text");
        return new(text, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), OthersOf(parts, pointer, _fact));
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
                topic = WordMemo.Value(member.Value);
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

    public ValueList<Cited<string>> Facts(JsonElement json, string pointer) => List(json, pointer, _fact);

    public Citation CitationOf(in Parts parts, string pointer)
    {
        string source = parts.SourceId ?? throw Broken(pointer, "has no source");
        if (parts.CitedTwice)
        {
            throw Broken(pointer, "has two sources");
        }

        return _sources.Cite(source, parts.At, parts.Basis, pointer);
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
            : List(parts.DerivedFrom, Under(pointer, "derivedFrom"), _source);

    private static ValueList<TFigure> OthersOf<TFigure>(in Parts parts, string pointer, Func<JsonElement, string, TFigure> read)
        where TFigure : class
        => parts.Others.ValueKind == JsonValueKind.Undefined ? default : List(parts.Others, Under(pointer, "others"), read);
}
