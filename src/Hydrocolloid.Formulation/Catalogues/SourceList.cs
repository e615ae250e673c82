namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>The sources of a catalogue, each made when it is first cited.</summary>
internal sealed class SourceList
{
    // Bytes of a source in a document, from which their number is guessed.
    private const int UsualLength = 256;

    private readonly Dictionary<string, Entry> _entries;
    private readonly SourceList? _beside;
    private Source[]? _all;

    /// <summary>Lists the sources of a document.</summary>
    /// <param name="sources">The text of the document's list; it is kept.</param>
    /// <param name="pointer">Where the list stands.</param>
    /// <param name="beside">The sources of the catalogue that the document adds to; null if none.</param>
    public SourceList(ReadOnlyMemory<byte> sources, string pointer, SourceList? beside = null)
    {
        _beside = beside;
        _entries = new Dictionary<string, Entry>(sources.Length / UsualLength, StringComparer.Ordinal);
        var json = new JsonCursor(sources.Span);
        json.OpenList(pointer);
        while (json.NextItem())
        {
            string at = FigureReader.Under(pointer, _entries.Count);
            Entry entry = Open(ref json, sources, at);
            if (_entries.ContainsKey(entry.Id))
            {
                throw FigureReader.Broken(at, $"'{entry.Id}' is listed twice");
            }

            _entries.Add(entry.Id, entry);
        }
    }

    public ValueList<Source> All => ValueList<Source>.Own(_all ??= [.. _beside?.All ?? default, .. _entries.Keys.Select(id => Get(id, id))]);

    public Source Get(string id, string pointer) => Find(id, pointer).Source;

    /// <summary>A citation, the same one for every figure that cites this place of the source.</summary>
    public Citation Cite(string id, string? place, CitationBasis basis, string pointer)
    {
        Entry entry = Find(id, pointer);
        CitedPlace? first = Volatile.Read(ref entry.First);
        for (CitedPlace? cited = first; cited is not null; cited = cited.Next)
        {
            if (cited.Basis == basis && string.Equals(cited.Citation.Place, place, StringComparison.Ordinal))
            {
                return cited.Citation;
            }
        }

        // Of two threads that add at once one place is lost, and made again when it is next cited.
        var added = new CitedPlace(basis, new Citation(entry.Source, place, basis), first);
        Volatile.Write(ref entry.First, added);
        return added.Citation;
    }

    private Entry Find(string id, string pointer)
        => _entries.TryGetValue(id, out Entry? entry) ? entry
            : _beside?.Find(id, pointer) ?? throw FigureReader.Broken(pointer, $"'{id}' is not a source of the catalogue");

    // Most of a list is never cited, so only what tells a source from the others is read at once.
    private static Entry Open(ref JsonCursor json, ReadOnlyMemory<byte> sources, string pointer)
    {
        int start = json.Start;
        string? id = null, kind = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            switch (word)
            {
                case "id": id = json.Text(pointer); break;
                case "kind": kind = json.Word(pointer); break;
                default: json.Skip(); break;
            }
        }

        return new Entry(id ?? throw FigureReader.Broken(pointer, "needs an id"), kind, sources.Slice(start, json.End - start));
    }

    private static SourceKind KindOf(string? kind, string pointer) => kind switch
    {
        "standard" => SourceKind.Standard,
        "handbook" => SourceKind.Handbook,
        "paper" => SourceKind.Paper,
        "dataset" => SourceKind.Dataset,
        "regulation" => SourceKind.Regulation,
        "bulletin" => SourceKind.Bulletin,
        "teaching" => SourceKind.Teaching,
        "judgement" => SourceKind.Judgement,
        "trade" => SourceKind.Trade,
        "measurement" => SourceKind.Measurement,
        _ => throw FigureReader.Broken(pointer, kind is null ? "needs a kind" : $"'{kind}' is not a kind of source"),
    };

    private sealed class Entry(string id, string? kind, ReadOnlyMemory<byte> text) : ISourceText
    {
        public CitedPlace? First;
        private Source? _source;

        public string Id => id;

        // Two threads may make it at once; the first to finish decides for both.
        public Source Source => Volatile.Read(ref _source) ?? Interlocked.CompareExchange(ref _source, new Source(id, KindOf(kind, id), this), null) ?? _source;

        public SourceText Read()
        {
            string? title = null, authors = null, year = null, place = null, locator = null;
            var json = new JsonCursor(text.Span);
            json.OpenObject(id);
            while (json.NextMember(out string word))
            {
                string at = FigureReader.Under(id, word);
                switch (word)
                {
                    case "id" or "kind": break;
                    case "title": title = json.Text(at); break;
                    case "authors": authors = json.Text(at); break;
                    case "year": year = json.Text(at); break;
                    case "place": place = json.Text(at); break;
                    case "locator": locator = json.Text(at); break;
                    default: throw FigureReader.Unknown(id, word);
                }
            }

            return new SourceText(string.IsNullOrWhiteSpace(title) ? throw FigureReader.Broken(id, "needs a title") : title!, authors, year, place, locator);
        }
    }

    private sealed record CitedPlace(CitationBasis Basis, Citation Citation, CitedPlace? Next);
}
