using System.Buffers;
using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>
/// The built-in documents, one an ingredient. The names of the documents are the index; a document is read when a fact of
/// its ingredient is first asked for. The code up to the first ingredient is written to
/// need few methods and no generic instantiations of its own, because a program pays for their compilation when it starts.
/// </summary>
internal static class BuiltInCatalogue
{
    private const int UsualBuffer = 1 << 15;

    private const string SourcesDocument = "sources.json";

    private const string SynergiesDocument = "synergies.json";

    private const string AdditivesDocument = "additives.json";

    private const string FailuresDocument = "failures.json";

    private const string TechniquesDocument = "techniques.json";

    private const string LabellingDocument = "labelling.json";

    public static Catalogue Value => Index.Catalogue;

    public static ValueList<Synergy> Synergies => Pairs.All;

    public static ValueList<Technique> Techniques => Ways.All;

    public static ValueList<Additive> Additives => Identities.All;

    public static ValueList<KnownFailure> Failures => KnownFailures.All;

    public static LabellingFacts Labelling => Labels.Facts;

    /// <summary>The pairs by the ingredients they name.</summary>
    public static EntryIndex<Synergy> SynergyIndex => Pairs.ByEntry;

    /// <summary>The additives by their entries in the catalogue.</summary>
    public static EntryIndex<Additive> AdditiveIndex => Identities.ByEntry;

    public static Ingredient Get(string id) => Index.Catalogue.Get(id);

    public static Ingredient Open(string id, string document) => new(id, new Lazy<IngredientFacts>(() => Read(id, document)));

    /// <summary>A citation of a work in the list of sources, for limits that belong to no ingredient.</summary>
    public static Citation Cite(string sourceId, string? place = null, CitationBasis basis = CitationBasis.Read) => Reading.Sources.Cite(sourceId, place, basis, sourceId);

    private static IngredientFacts Read(string id, string document)
    {
        // One size of buffer for all documents: a stream would be read into a buffer of a size of its own, and the pool would come to hold every size.
        using Stream stream = Open(document);
        byte[] buffer = ArrayPool<byte>.Shared.Rent(Math.Max((int)stream.Length, UsualBuffer));
        try
        {
            int read = stream.Read(buffer, 0, (int)stream.Length); // a resource is in memory and is read whole
            using var json = JsonDocument.Parse(buffer.AsMemory(0, read));
            return Read(id, document, json);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    private static IngredientFacts Read(string id, string document, JsonDocument json)
    {
        JsonElement ingredient = ListOf(json, document, "ingredients")[0];
        try
        {
            // The text of every place would cost a third of the reading, so places are kept only once something is wrong.
            return Reading.Ingredients.Read(ingredient, id, "");
        }
        catch (CatalogueDocumentException)
        {
            return Reading.Ingredients.Read(ingredient, id, document);
        }
    }

    private static JsonDocument Parse(string document)
    {
        using Stream stream = Open(document);
        return JsonDocument.Parse(stream);
    }

    private static Stream Open(string document) => typeof(BuiltInCatalogue).Assembly.GetManifestResourceStream(document)!;

    private static JsonElement ListOf(string document, string list) => ListOf(Parse(document), document, list);

    // Members are not checked for repetition here: the tests do it for the built-in documents.
    private static JsonElement ListOf(JsonDocument json, string document, string list)
    {
        JsonElement items = default;
        foreach (JsonProperty member in json.RootElement.EnumerateObject())
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

        return items.ValueKind == JsonValueKind.Array ? items : throw FigureReader.Broken(document, $"needs {list}");
    }

    private static IngredientFacts FactsOf(string id) => Get(id).Facts;

    private static SourceList SourcesOf() => Reading.Sources;

    private static class Index
    {
        public static readonly Catalogue Catalogue = Read();

        private static Catalogue Read()
        {
            // "hydrocolloids/seaweed/agar.json": the hydrocolloids come first, then the pantry, each in order of its folders and ids.
            string[] documents = typeof(BuiltInCatalogue).Assembly.GetManifestResourceNames();
            Array.Sort(documents, StringComparer.Ordinal);
            var entries = new List<CatalogueEntry>(documents.Length);
            foreach (string document in documents)
            {
                if (document is not (SourcesDocument or SynergiesDocument or AdditivesDocument or FailuresDocument or TechniquesDocument or LabellingDocument))
                {
                    int start = document.LastIndexOf('/') + 1;
                    entries.Add(new CatalogueEntry(document.Substring(start, document.Length - start - ".json".Length), document));
                }
            }

            return new Catalogue(entries, new Lazy<SourceList>(SourcesOf));
        }
    }

    private static class Reading
    {
        public static readonly SourceList Sources = new(ListOf(SourcesDocument, "sources"));

        public static readonly FigureReader Figures = new(Sources);

        public static readonly IngredientReader Ingredients = new(Figures, FactsOf);
    }

    private static class Identities
    {
        public static readonly ValueList<Additive> All = FigureReader.List(
            ListOf(AdditivesDocument, "additives"), AdditivesDocument, new AdditiveReader(Reading.Figures).Read);

        public static readonly EntryIndex<Additive> ByEntry = new(All, a => a.Entries);
    }

    private static class KnownFailures
    {
        public static readonly ValueList<KnownFailure> All = FigureReader.List(
            ListOf(FailuresDocument, "failures"), FailuresDocument, new FailureReader(Reading.Figures).Read);
    }

    private static class Labels
    {
        public static readonly LabellingFacts Facts = new LabellingReader(Reading.Figures).Read(Parse(LabellingDocument).RootElement, LabellingDocument);
    }

    private static class Pairs
    {
        public static readonly ValueList<Synergy> All = FigureReader.List(
            ListOf(SynergiesDocument, "synergies"), SynergiesDocument, new SynergyReader(Reading.Figures).Read);

        public static readonly EntryIndex<Synergy> ByEntry = new(All, s => s.First.Concat(s.Second));
    }

    private static class Ways
    {
        public static readonly ValueList<Technique> All = FigureReader.List(
            ListOf(TechniquesDocument, "techniques"), TechniquesDocument, new TechniqueReader(Reading.Figures).Read);
    }
}
