using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>The sources of a catalogue, each made when it is first cited.</summary>
internal sealed class SourceList
{
    private readonly Dictionary<string, JsonElement> _documents = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Source> _made = new(StringComparer.Ordinal);

    public SourceList(JsonElement sources)
    {
        foreach (JsonElement source in sources.EnumerateArray())
        {
            _documents.Add(source.GetProperty("id"u8).GetString()!, source);
        }
    }

    public Source Get(string id, string pointer)
    {
        lock (_made)
        {
            if (!_made.TryGetValue(id, out Source? source))
            {
                source = Read(_documents.TryGetValue(id, out JsonElement json) ? json
                    : throw FigureReader.Broken(pointer, $"'{id}' is not a source of the catalogue"), id);
                _made.Add(id, source);
            }

            return source;
        }
    }

    public ValueList<Source> All() => ValueList<Source>.From(_documents.Keys.Select(id => Get(id, id)));

    private static Source Read(JsonElement json, string pointer)
    {
        string? id = null, title = null, authors = null, year = null, place = null, locator = null;
        SourceKind? kind = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            switch (member.Name)
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
}
