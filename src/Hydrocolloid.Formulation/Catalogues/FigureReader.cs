using System.Text.Json;

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
        public JsonElement? DerivedFrom;
        public JsonElement? Others;

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

    public Cited<NumberRange> Range(Parts parts, string pointer) => Figure(parts, RangeOf, pointer);

    public Cited<TemperatureRange> Celsius(JsonElement json, string pointer)
        => Figure(PartsOf(json, pointer), (p, at) => new TemperatureRange(RangeOf(p, at)), pointer);

    public Cited<DurationRange> Durations(JsonElement json, string pointer, double secondsPerUnit)
        => Figure(PartsOf(json, pointer), (p, at) =>
        {
            NumberRange range = RangeOf(p, at);
            return new DurationRange(new NumberRange(range.Min * secondsPerUnit, range.Max * secondsPerUnit));
        }, pointer);

    public Cited<double> Number(JsonElement json, string pointer)
        => Figure(PartsOf(json, pointer), (p, at) => p.Value ?? throw Broken(at, "needs a value"), pointer);

    public Cited<string> Fact(JsonElement json, string pointer) => Fact(PartsOf(json, pointer), pointer);

    public Cited<string> Fact(Parts parts, string pointer) => Figure(parts, (p, at) => p.Text ?? throw Broken(at, "needs a text"), pointer);

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
            items[i] = read(item, pointer + "/" + Internal.Numbers.Exact(i));
            i++;
        }

        return ValueList<T>.Own(items);
    }

    public static CatalogueDocumentException Broken(string pointer, string message) => new(pointer, message);

    public static CatalogueDocumentException Unknown(string pointer, JsonProperty member) => Broken(pointer, $"'{member.Name}' is not a member of the format");

    private static NumberRange RangeOf(Parts parts, string pointer)
        => parts is { Min: null, Max: null, Value: null } ? throw Broken(pointer, "needs min, max or value")
            : parts is { Min: null, Max: null } ? NumberRange.Single(parts.Value!.Value) : new NumberRange(parts.Min, parts.Max);

    private static Parts PartsOf(JsonElement json, string pointer)
    {
        var parts = default(Parts);
        foreach (JsonProperty member in json.EnumerateObject())
        {
            if (!parts.Take(member))
            {
                throw Unknown(pointer, member);
            }
        }

        return parts;
    }

    private Cited<T> Figure<T>(Parts parts, Func<Parts, string, T> value, string pointer)
        where T : notnull
        => new(
            value(parts, pointer),
            CitationOf(parts, pointer),
            parts.Note,
            parts.DerivedFrom is { } from ? List(from, pointer, (id, at) => sources.Get(id.GetString()!, at)) : default,
            parts.Others is { } others ? List(others, pointer + "/others", (other, at) => Figure(PartsOf(other, at), value, at)) : default);
}
