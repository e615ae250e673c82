using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>The sources of a catalogue, each made when it is first cited.</summary>
internal sealed class SourceList
{
    private readonly Dictionary<string, Entry> _entries = new(StringComparer.Ordinal);
    private readonly SourceList? _beside;
    private Source[]? _all;

    /// <summary>Lists the sources of a document.</summary>
    /// <param name="sources">The document's list.</param>
    /// <param name="beside">The sources of the catalogue that the document adds to; null if none.</param>
    public SourceList(JsonElement sources, SourceList? beside = null)
    {
        _beside = beside;
        foreach (JsonElement source in sources.EnumerateArray())
        {
            string id = source.GetProperty("id"u8).GetString()!;
            _entries.Add(id, new Entry(id, source));
        }
    }

    public ValueList<Source> All => ValueList<Source>.Own(_all ??= [.. _beside?.All ?? default, .. _entries.Keys.Select(id => Get(id, id))]);

    public Source Get(string id, string pointer) => Find(id, pointer).Source;

    /// <summary>A citation; figures that are read one after another often share theirs.</summary>
    public Citation Cite(string id, string? place, CitationBasis basis, string pointer)
    {
        Entry entry = Find(id, pointer);
        CitedPlace? last = Volatile.Read(ref entry.Last);
        if (last is null || last.Place != place || last.Basis != basis)
        {
            last = new CitedPlace(place, basis, new Citation(entry.Source, place, basis));
            Volatile.Write(ref entry.Last, last);
        }

        return last.Citation;
    }

    private Entry Find(string id, string pointer)
        => _entries.TryGetValue(id, out Entry? entry) ? entry
            : _beside?.Find(id, pointer) ?? throw FigureReader.Broken(pointer, $"'{id}' is not a source of the catalogue");

    private static Source Read(JsonElement json, string pointer)
    {
        string? id = null, title = null, authors = null, year = null, place = null, locator = null;
        SourceKind? kind = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            switch (WordMemo.Name(member))
            {
                case "id": id = member.Value.GetString(); break;
                case "title": title = member.Value.GetString(); break;
                case "authors": authors = member.Value.GetString(); break;
                case "year": year = member.Value.GetString(); break;
                case "place": place = member.Value.GetString(); break;
                case "locator": locator = member.Value.GetString(); break;
                case "kind": kind = KindOf(member.Value.GetString(), pointer); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new Source(id!, title!, kind ?? throw FigureReader.Broken(pointer, "needs a kind"), authors, year, place, locator);
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
        _ => throw FigureReader.Broken(pointer, $"'{kind}' is not a kind of source"),
    };

    private sealed class Entry(string id, JsonElement json)
    {
        public CitedPlace? Last;
        private Source? _source;

        public Source Source
        {
            get
            {
                lock (this)
                {
                    return _source ??= Read(json, id);
                }
            }
        }
    }

    private sealed record CitedPlace(string? Place, CitationBasis Basis, Citation Citation);
}
