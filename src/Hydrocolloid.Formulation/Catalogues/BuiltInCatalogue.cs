using System.Text.Json;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>
/// The built-in documents, one an ingredient. The names of the documents are the index; a document is parsed when its ingredient
/// is first asked for, and its facts are read when one of them is first asked for.
/// </summary>
internal static class BuiltInCatalogue
{
    private const string SourcesDocument = "sources.json";

    private static readonly Lazy<Catalogue> Loaded = new(Index);

    private static readonly Lazy<SourceList> Sources = new(() => new SourceList(ListOf(SourcesDocument, "sources")));

    private static readonly Lazy<IngredientReader> Reader = new(() => new IngredientReader(new FigureReader(Sources.Value)));

    public static Catalogue Value => Loaded.Value;

    public static Ingredient Get(string id) => Loaded.Value.Get(id);

    private static Catalogue Index()
    {
        // "hydrocolloids/seaweed/agar.json": the hydrocolloids come first, then the pantry, each in order of id.
        string[] documents = typeof(BuiltInCatalogue).Assembly.GetManifestResourceNames();
        Array.Sort(documents, StringComparer.Ordinal);
        var entries = new List<CatalogueEntry>(documents.Length);
        foreach (string document in documents)
        {
            if (document != SourcesDocument)
            {
                int start = document.LastIndexOf('/') + 1;
                entries.Add(new CatalogueEntry(document.Substring(start, document.Length - start - ".json".Length), () => Open(document)));
            }
        }

        return new Catalogue(entries, new Lazy<ValueList<Source>>(() => Sources.Value.All()));
    }

    private static Ingredient Open(string document)
    {
        JsonElement json = ListOf(document, "ingredients")[0];
        string? id = json.GetProperty("id"u8).GetString();
        string? name = json.GetProperty("name"u8).GetString();
        return Ids.IsValid(id) && document.EndsWith("/" + id + ".json", StringComparison.Ordinal) && !string.IsNullOrWhiteSpace(name)
            ? new Ingredient(id!, name!, new Lazy<IngredientFacts>(() => Reader.Value.Read(json, document)))
            : throw FigureReader.Broken(document, "needs the id that its file is named for, and a name");
    }

    private static JsonElement ListOf(string document, string list)
    {
        JsonElement root = JsonDocument.Parse(Bytes(document), ExtensionData.Strict).RootElement;
        JsonElement? items = null;
        foreach (JsonProperty member in root.EnumerateObject())
        {
            if (member.NameEquals(list))
            {
                items = member.Value;
            }
            else if (!(member.NameEquals("format"u8) && member.Value.ValueEquals("hydrocolloid-catalogue"u8))
                && !(member.NameEquals("version"u8) && member.Value.GetInt32() == 1))
            {
                throw FigureReader.Unknown(document, member);
            }
        }

        return items ?? throw FigureReader.Broken(document, $"needs {list}");
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
}
