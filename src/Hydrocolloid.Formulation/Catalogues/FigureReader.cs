using System.Globalization;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads figures and facts with their sources (docs/catalogue-format.md).</summary>
internal sealed class FigureReader
{
    public const double MaxCelsius = 1000;

    private const double MaxSeconds = 1e9;

    private static readonly ItemReader<string> s_text = TextOf;
    private static readonly ItemReader<string> s_word = WordOf;

    private readonly SourceList _sources;
    private readonly Shape _celsius;
    private readonly Shape _minutes;
    private readonly Shape _hours;

    // Kept, because a catalogue holds thousands of lists and a delegate made for each would be a sixth of all it allocates.
    private readonly ItemReader<Cited<string>> _fact;

    public FigureReader(SourceList sources)
    {
        _sources = sources;
        _fact = Fact;
        _celsius = Figures<Cited<TemperatureRange>>(Celsius);
        _minutes = Figures<Cited<DurationRange>>(Minutes);
        _hours = Figures<Cited<DurationRange>>(Hours);
        OfNumber = Figures<Cited<double>>(Number);
        OfRange = Figures<Cited<NumberRange>>(Range);
    }

    /// <summary>The members of a fact in words.</summary>
    public static Shape OfText { get; } = new() { HasText = true };

    /// <summary>The members of a number.</summary>
    public Shape OfNumber { get; }

    /// <summary>The members of a range of numbers.</summary>
    public Shape OfRange { get; }

    /// <summary>The members that a kind of figure may have beside its source and note.</summary>
    public sealed class Shape
    {
        public bool HasNumbers { get; init; }

        public bool HasText { get; init; }

        /// <summary>Reads the competing values; null if there can be none.</summary>
        public ItemReader<Array>? Others { get; init; }
    }

    /// <summary>Collects what every figure may say, whatever its value is.</summary>
    /// <param name="shape">What it may say beside its source and note; null if nothing.</param>
    public struct Parts(Shape? shape)
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
        public string[]? DerivedFrom;
        public Array? Others;

        /// <summary>Takes a member, or refuses it.</summary>
        public void Take(string word, ref JsonCursor json, string pointer)
        {
            string at = Under(pointer, word);
            switch (word)
            {
                case "min" when shape is { HasNumbers: true }: Min = json.Number(at); break;
                case "max" when shape is { HasNumbers: true }: Max = json.Number(at); break;
                case "value" when shape is { HasNumbers: true }: Value = json.Number(at); break;
                case "text" when shape is { HasText: true }: Text = json.Text(at); break;
                case "note": Note = json.Text(at); break;
                case "read" or "practice": CiteAs(CitationBasis.Read, ref json, at); break;
                case "recalled": CiteAs(CitationBasis.Recalled, ref json, at); break;
                case "estimated": CiteAs(CitationBasis.Estimated, ref json, at); break;
                case "at": At = json.Word(at); break;
                case "derivedFrom": DerivedFrom = Items(ref json, at, s_word); break;
                case "others" when shape is { Others: not null }: Others = shape.Others(ref json, at); break;
                default: throw Unknown(pointer, word);
            }
        }

        private void CiteAs(CitationBasis basis, ref JsonCursor json, string pointer)
        {
            CitedTwice = SourceId is not null;
            SourceId = json.Word(pointer);
            Basis = basis;
        }
    }

    public Cited<NumberRange> Range(ref JsonCursor json, string pointer) => Range(PartsOf(OfRange, ref json, pointer), pointer);

    public Cited<NumberRange> Range(in Parts parts, string pointer)
    {
        NumberRange range = RangeOf(parts, pointer);
        return range.Min < 0 || range.Max < 0 ? throw Broken(pointer, "must not be negative") : Cite(range, parts, pointer);
    }

    /// <summary>A range that lies within limits.</summary>
    public Cited<NumberRange> RangeWithin(Parts parts, double min, double max, string unit, string pointer)
    {
        Cited<NumberRange> range = Range(parts, pointer);
        Within(range.Value, min, max, unit, pointer);
        for (int i = 0; i < range.Alternatives.Count; i++)
        {
            Within(range.Alternatives[i].Value, min, max, unit, Other(pointer, i));
        }

        return range;
    }

    /// <summary>A range of % by weight.</summary>
    public Cited<NumberRange> Percent(ref JsonCursor json, string pointer) => RangeWithin(PartsOf(OfRange, ref json, pointer), 0, 100, "%", pointer);

    public Cited<TemperatureRange> Celsius(ref JsonCursor json, string pointer)
    {
        Parts parts = PartsOf(_celsius, ref json, pointer);
        var range = new TemperatureRange(RangeOf(parts, pointer));
        if (range.Celsius.Min < Guard.AbsoluteZeroCelsius || range.Celsius.Max < Guard.AbsoluteZeroCelsius)
        {
            throw Broken(pointer, "is under absolute zero");
        }

        return range.Celsius.Min > MaxCelsius || range.Celsius.Max > MaxCelsius ? throw Broken(pointer, "is over 1000 °C, which no kitchen reaches") : Cite(range, parts, pointer);
    }

    public Cited<DurationRange> Minutes(ref JsonCursor json, string pointer) => InSeconds(PartsOf(_minutes, ref json, pointer), 60, pointer);

    public Cited<DurationRange> Hours(ref JsonCursor json, string pointer) => InSeconds(PartsOf(_hours, ref json, pointer), 3600, pointer);

    public Cited<double> Number(ref JsonCursor json, string pointer)
    {
        Parts parts = PartsOf(OfNumber, ref json, pointer);
        return Cite(ValueOf(parts, pointer), parts, pointer);
    }

    /// <summary>A number that lies within limits.</summary>
    public Cited<double> NumberWithin(ref JsonCursor json, double min, double max, string unit, string pointer)
    {
        Cited<double> number = Number(ref json, pointer);
        Within(number.Value, min, max, unit, pointer);
        for (int i = 0; i < number.Alternatives.Count; i++)
        {
            Within(number.Alternatives[i].Value, min, max, unit, Other(pointer, i));
        }

        return number;
    }

    public Cited<string> Fact(ref JsonCursor json, string pointer) => Fact(PartsOf(OfText, ref json, pointer), pointer);

    public Cited<string> Fact(in Parts parts, string pointer) => Cite(parts.Text ?? throw Broken(pointer, "needs a text"), parts, pointer);

    /// <summary>A fact that says what it is about.</summary>
    public AgentFact FactOfTopic(ref JsonCursor json, string pointer)
    {
        var parts = new Parts(OfText);
        string? topic = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "topic")
            {
                topic = json.Word(pointer);
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return new AgentFact(topic ?? throw Broken(pointer, "needs a topic"), Fact(parts, pointer));
    }

    /// <summary>A value with what its members say of its source.</summary>
    public Cited<T> Cite<T>(T value, in Parts parts, string pointer)
        where T : notnull
        => new(value, CitationOf(parts, pointer), parts.Note, RestsOn(parts, pointer), parts.Others is Cited<T>[] others ? ValueList<Cited<T>>.Own(others) : default);

    /// <summary>The one number of a figure that is no range.</summary>
    public static double ValueOf(in Parts parts, string pointer)
        => parts is { Min: null, Max: null, Value: { } value } ? value : throw Broken(pointer, "needs one value");

    public static double Within(double value, double min, double max, string unit, string pointer)
        => value >= min && value <= max ? value
            : throw Broken(pointer, $"must be between {Numbers.Exact(min)} and {Numbers.Exact(max)} {unit}, but is {Numbers.Exact(value)} {unit}");

    private static void Within(in NumberRange range, double min, double max, string unit, string pointer)
    {
        Within(range.Min ?? min, min, max, unit, pointer);
        Within(range.Max ?? max, min, max, unit, pointer);
    }

    private static string Other(string pointer, int item) => Under(Under(pointer, "others"), item);

    public ValueList<Cited<string>> Facts(ref JsonCursor json, string pointer) => List(ref json, pointer, _fact);

    public Citation CitationOf(in Parts parts, string pointer)
    {
        string source = parts.SourceId ?? throw Broken(pointer, "has no source");
        if (parts.CitedTwice)
        {
            throw Broken(pointer, "has two sources");
        }

        return _sources.Cite(source, parts.At, parts.Basis, pointer);
    }

    /// <summary>A source that something is recalled from.</summary>
    public Citation Recalled(ref JsonCursor json, string pointer) => _sources.Cite(json.Word(pointer), null, CitationBasis.Recalled, pointer);

    /// <summary>The members of a figure that has none of its own.</summary>
    public static Parts PartsOf(Shape? shape, ref JsonCursor json, string pointer)
    {
        var parts = new Parts(shape);
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            parts.Take(word, ref json, pointer);
        }

        return parts;
    }

    /// <summary>The members of a figure whose competing values are read as it is.</summary>
    public static Shape Figures<T>(ItemReader<T> read) => new() { HasNumbers = true, Others = (ref json, pointer) => Items(ref json, pointer, read) };

    public static ValueList<T> List<T>(ref JsonCursor json, string pointer, ItemReader<T> read) => ValueList<T>.Own(Items(ref json, pointer, read));

    public static ValueList<string> Strings(ref JsonCursor json, string pointer) => List(ref json, pointer, s_text);

    /// <summary>The pointer of a member; nothing if places are not kept (see <see cref="BuiltInCatalogue"/>).</summary>
    public static string Under(string pointer, string member) => pointer.Length == 0 ? "" : pointer + "/" + member;

    /// <summary>The pointer of an item; nothing if places are not kept.</summary>
    public static string Under(string pointer, int item) => pointer.Length == 0 ? "" : pointer + "/" + item.ToString(CultureInfo.InvariantCulture);

    public static CatalogueDocumentException Broken(string pointer, string message) => new(pointer, message);

    public static CatalogueDocumentException Unknown(string pointer, string member) => Broken(pointer, $"'{member}' is not a member of the format");

    // Grown by hand: most lists hold one item, and a list of every type would have its methods compiled when the program starts.
    private static T[] Items<T>(ref JsonCursor json, string pointer, ItemReader<T> read)
    {
        json.OpenList(pointer);
        T[] items = [];
        int count = 0;
        while (json.NextItem())
        {
            T item = read(ref json, Under(pointer, count));
            if (count == items.Length)
            {
                Array.Resize(ref items, Math.Max(1, count * 2));
            }

            items[count] = item;
            count++;
        }

        if (count < items.Length)
        {
            Array.Resize(ref items, count);
        }

        return items;
    }

    private static string TextOf(ref JsonCursor json, string pointer) => json.Text(pointer);

    private static string WordOf(ref JsonCursor json, string pointer) => json.Word(pointer);

    private static NumberRange RangeOf(in Parts parts, string pointer) => parts switch
    {
        { Min: null, Max: null, Value: null } => throw Broken(pointer, "needs min, max or value"),
        { Min: null, Max: null } => NumberRange.Single(parts.Value!.Value),
        { Value: null } when parts.Min > parts.Max => throw Broken(pointer, "has a min above its max"),
        { Value: null } => new NumberRange(parts.Min, parts.Max),
        _ => throw Broken(pointer, "has a value and a range"),
    };

    private Cited<DurationRange> InSeconds(in Parts parts, double secondsPerUnit, string pointer)
    {
        NumberRange range = RangeOf(parts, pointer);
        var seconds = new NumberRange(range.Min * secondsPerUnit, range.Max * secondsPerUnit);
        Within(seconds, 0, MaxSeconds, "s", pointer);
        return Cite(new DurationRange(seconds), parts, pointer);
    }

    private ValueList<Source> RestsOn(in Parts parts, string pointer)
    {
        if (parts.DerivedFrom is not { } ids)
        {
            return default;
        }

        var sources = new Source[ids.Length];
        for (int i = 0; i < ids.Length; i++)
        {
            sources[i] = _sources.Get(ids[i], Under(Under(pointer, "derivedFrom"), i));
        }

        return ValueList<Source>.Own(sources);
    }
}
