using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>The sources of a catalogue, each made when it is first cited.</summary>
internal sealed class SourceList
{
    private readonly Dictionary<string, Entry> _entries;
    private readonly SourceList? _beside;
    private Source[]? _all;

    /// <summary>Lists the sources of a document.</summary>
    /// <param name="sources">The document's list.</param>
    /// <param name="beside">The sources of the catalogue that the document adds to; null if none.</param>
    public SourceList(JsonElement sources, SourceList? beside = null)
    {
        _beside = beside;
        _entries = new Dictionary<string, Entry>(sources.GetArrayLength(), StringComparer.Ordinal);
        foreach (JsonElement source in sources.EnumerateArray())
        {
            string id = source.GetProperty("id"u8).GetString()!;
            _entries.Add(id, new Entry(id, source));
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
        _ => throw FigureReader.Broken(pointer, kind is null ? "needs a kind" : $"'{kind}' is not a kind of source"),
    };

    private sealed class Entry(string id, JsonElement json) : ISourceText
    {
        public CitedPlace? First;
        private Source? _source;

        // Two threads may make it at once; the first to finish decides for both.
        public Source Source => Volatile.Read(ref _source) ?? Interlocked.CompareExchange(ref _source, Make(), null) ?? _source;

        public SourceText Read()
        {
            string? title = null, authors = null, year = null, place = null, locator = null;
            foreach (JsonProperty member in json.EnumerateObject())
            {
                switch (member.Name)
                {
                    case "id" or "kind": break;
                    case "title": title = member.Value.GetString(); break;
                    case "authors": authors = member.Value.GetString(); break;
                    case "year": year = member.Value.GetString(); break;
                    case "place": place = member.Value.GetString(); break;
                    case "locator": locator = member.Value.GetString(); break;
                    default: throw FigureReader.Unknown(id, member);
                }
            }

            return new SourceText(string.IsNullOrWhiteSpace(title) ? throw FigureReader.Broken(id, "needs a title") : title!, authors, year, place, locator);
        }

        private Source Make() => new(id, KindOf(json.TryGetProperty("kind"u8, out JsonElement kind) ? WordMemo.Value(kind) : null, id), this);
    }

    private sealed record CitedPlace(CitationBasis Basis, Citation Citation, CitedPlace? Next);
}
