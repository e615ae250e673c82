using System.Buffers;

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
        // One size of buffer for all documents: the pool would otherwise come to hold every size.
        using Stream stream = Open(document);
        int length = (int)stream.Length;
        byte[] buffer = ArrayPool<byte>.Shared.Rent(Math.Max(length, UsualBuffer));
        try
        {
            length = stream.Read(buffer, 0, length); // a resource is in memory and is read whole
            return Read(id, document, buffer.AsSpan(0, length));
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    private static IngredientFacts Read(string id, string document, ReadOnlySpan<byte> json)
    {
        JsonCursor ingredients = ListOf(json, document, "ingredients");
        ingredients.NextItem();
        JsonCursor again = ingredients;
        try
        {
            // The text of every place would cost a third of the reading, so places are kept only once something is wrong.
            return Reading.Ingredients.Read(ref ingredients, id, "");
        }
        catch (CatalogueDocumentException)
        {
            return Reading.Ingredients.Read(ref again, id, document);
        }
    }

    private static ValueList<T> Read<T>(string document, string list, ItemReader<T> read)
    {
        JsonCursor json = ListOf(Whole(document), document, list);
        return FigureReader.List(ref json, document, read);
    }

    private static byte[] Whole(string document)
    {
        using Stream stream = Open(document);
        byte[] json = new byte[stream.Length];
        _ = stream.Read(json, 0, json.Length);
        return json;
    }

    private static Stream Open(string document) => typeof(BuiltInCatalogue).Assembly.GetManifestResourceStream(document)!;

    // A built-in document is format, version and one list; members are not checked for repetition here: the tests do it.
    private static JsonCursor ListOf(ReadOnlySpan<byte> document, string name, string list)
    {
        var json = new JsonCursor(document);
        json.OpenObject(name);
        while (json.NextMember(out string word))
        {
            if (word == list)
            {
                return json;
            }

            if (!(word == "format" && json.Is("hydrocolloid-catalogue")) && !(word == "version" && json.Number(name) == 1))
            {
                throw FigureReader.Unknown(name, word);
            }
        }

        throw FigureReader.Broken(name, $"needs {list}");
    }

    private static SourceList ReadSources()
    {
        byte[] document = Whole(SourcesDocument);
        JsonCursor json = ListOf(document, SourcesDocument, "sources");
        return new SourceList(document.AsMemory(json.Start), "");
    }

    private static LabellingFacts ReadLabels()
    {
        var json = new JsonCursor(Whole(LabellingDocument));
        return new LabellingReader(Reading.Figures).Read(ref json, LabellingDocument);
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
            Array.Sort(documents, string.CompareOrdinal); // with a comparer it costs a millisecond more at first use
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
        public static readonly SourceList Sources = ReadSources();

        public static readonly FigureReader Figures = new(Sources);

        public static readonly IngredientReader Ingredients = new(Figures, FactsOf);
    }

    private static class Identities
    {
        public static readonly ValueList<Additive> All = Read(AdditivesDocument, "additives", new AdditiveReader(Reading.Figures).Read);

        public static readonly EntryIndex<Additive> ByEntry = new(All, a => a.Entries);
    }

    private static class KnownFailures
    {
        public static readonly ValueList<KnownFailure> All = Read(FailuresDocument, "failures", new FailureReader(Reading.Figures).Read);
    }

    private static class Labels
    {
        public static readonly LabellingFacts Facts = ReadLabels();
    }

    private static class Pairs
    {
        public static readonly ValueList<Synergy> All = Read(SynergiesDocument, "synergies", new SynergyReader(Reading.Figures).Read);

        public static readonly EntryIndex<Synergy> ByEntry = new(All, s => s.First.Concat(s.Second));
    }

    private static class Ways
    {
        public static readonly ValueList<Technique> All = Read(TechniquesDocument, "techniques", new TechniqueReader(Reading.Figures).Read);
    }
}
