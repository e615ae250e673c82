using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the built-in documents, once, when something of them is first asked for.</summary>
internal static class BuiltInCatalogue
{
    private static readonly string[] Documents = ["seaweed.json", "animal.json", "plant.json", "microbial.json", "pantry.json"];

    private static readonly Lazy<Catalogue> Loaded = new(Load);

    public static Catalogue Value => Loaded.Value;

    public static Ingredient Get(string id) => Value.Get(id);

    private static Catalogue Load()
    {
        Source[] sources = Read("sources.json", "sources", ReadSource);
        var reader = new IngredientReader(new FigureReader(sources.ToDictionary(s => s.Id, StringComparer.Ordinal)));
        return new Catalogue([.. Documents.SelectMany(d => Read(d, "ingredients", reader.Read))], ValueList<Source>.Own(sources));
    }

    private static T[] Read<T>(string document, string list, Func<JsonElement, string, T> read)
    {
        using var json = JsonDocument.Parse(Bytes(document));
        var items = new T[json.RootElement.GetProperty(list).GetArrayLength()];
        int i = 0;
        foreach (JsonProperty member in json.RootElement.EnumerateObject())
        {
            switch (member.Name)
            {
                case "format" when member.Value.GetString() == "hydrocolloid-catalogue":
                case "version" when member.Value.GetInt32() == 1:
                    break;
                default:
                    if (member.Name != list)
                    {
                        throw FigureReader.Unknown(document, member);
                    }

                    foreach (JsonElement item in member.Value.EnumerateArray())
                    {
                        items[i] = read(item, $"{document}/{list}/{Internal.Numbers.Exact(i)}");
                        i++;
                    }

                    break;
            }
        }

        return items;
    }

    private static byte[] Bytes(string document)
    {
        using Stream stream = typeof(BuiltInCatalogue).Assembly.GetManifestResourceStream(document)!;
        var bytes = new byte[stream.Length];
        int read = 0;
        while (read < bytes.Length)
        {
            read += stream.Read(bytes, read, bytes.Length - read);
        }

        return bytes;
    }

    private static Source ReadSource(JsonElement json, string pointer)
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
