using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>
/// Books of formulas as JSON, format <c>hydrocolloid-book</c>, version 1 (docs/books.md): formula documents side by side, each with the id
/// by which the others are made with it. Strict, except that a formula that cannot be read becomes a broken entry, and the rest is read.
/// </summary>
public static class BookJson
{
    private const string Format = "hydrocolloid-book";
    private const int Version = 1;

    private static readonly DocumentShape s_quantity = DocumentShape.Object(("value", DocumentShape.Number, true), ("unit", DocumentShape.Text, true));

    private static readonly DocumentShape s_shape = DocumentShape.Object(
        ("format", DocumentShape.Text, true), ("version", DocumentShape.Number, true),
        ("formulas", DocumentShape.List(DocumentShape.Object(
            ("id", DocumentShape.Text, true),
            ("makes", DocumentShape.Object(("value", DocumentShape.Number, true), ("unit", DocumentShape.Text, true), ("count", DocumentShape.Number, false), ("of", DocumentShape.Text, false)), false),
            ("measured", DocumentShape.Object(("ph", DocumentShape.Number, false), ("brix", DocumentShape.Number, false), ("density", s_quantity, false)), false),
            ("formula", DocumentShape.Any, true))), true));

    private static readonly (string Word, YieldBasis Basis)[] s_bases = [("finished", YieldBasis.Finished), ("assembled", YieldBasis.Assembled), ("base", YieldBasis.Base)];

    /// <summary>Writes a book; ingredients that the catalogue does not have are described in the document.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="catalogue">The catalogue that whoever reads the document has too; null for the built-in one.</param>
    /// <returns>The document in UTF-8, without a byte order mark.</returns>
    /// <exception cref="FormulaJsonException">An entry is broken, its yield is one of moulds or stocks, or no document can hold its formula.</exception>
    public static byte[] Write(IEnumerable<BookEntry> entries, Catalogue? catalogue = null)
    {
        using var bytes = new ByteBuffer(4096);
        using (var json = new Utf8JsonWriter(bytes, FormulaJson.Layout))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            json.WriteStartArray("formulas");
            int index = 0;
            foreach (BookEntry entry in Guard.NotNull(entries))
            {
                WriteEntry(json, entry, "/formulas/" + Numbers.Exact(index), catalogue ?? Catalogue.BuiltIn);
                index++;
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }

    /// <summary>Reads a book whose ingredients are in the documents or in the built-in catalogue.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The entries; one whose formula cannot be read is broken and says why.</returns>
    /// <exception cref="FormulaJsonException">The document is not a book; the exception holds every problem with its place.</exception>
    public static ValueList<BookEntry> Read(string json) => Read(json, Catalogue.BuiltIn);

    /// <summary>Reads a book whose ingredients are in the documents or in a catalogue.</summary>
    /// <param name="json">The document.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <returns>The entries; one whose formula cannot be read is broken and says why.</returns>
    /// <exception cref="FormulaJsonException">The document is not a book; the exception holds every problem with its place.</exception>
    public static ValueList<BookEntry> Read(string json, Catalogue catalogue) => Read(Encoding.UTF8.GetBytes(Guard.NotNull(json)).AsSpan(), catalogue);

    /// <summary>Reads a book whose ingredients are in the documents or in the built-in catalogue.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <returns>The entries; one whose formula cannot be read is broken and says why.</returns>
    /// <exception cref="FormulaJsonException">The document is not a book; the exception holds every problem with its place.</exception>
    public static ValueList<BookEntry> Read(ReadOnlySpan<byte> utf8) => Read(utf8, Catalogue.BuiltIn);

    /// <summary>Reads a book whose ingredients are in the documents or in a catalogue.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <returns>The entries; one whose formula cannot be read is broken and says why.</returns>
    /// <exception cref="FormulaJsonException">The document is not a book; the exception holds every problem with its place.</exception>
    public static ValueList<BookEntry> Read(ReadOnlySpan<byte> utf8, Catalogue catalogue)
    {
        Guard.NotNull(catalogue);
        List<BookEntry>? entries = DocumentParser.Parse(
            utf8, Format, Version, "A book", s_shape, (root, problems) => ReadEntries(root, catalogue, problems), out ValueList<FormulaJsonProblem> found);
        return entries is null ? throw FormulaJsonException.NoBook(found) : ValueList<BookEntry>.From(entries);
    }

    private static void WriteEntry(Utf8JsonWriter json, BookEntry entry, string pointer, Catalogue catalogue)
    {
        if (entry.Formula is not { } formula)
        {
            throw FormulaJsonException.Unwritable("formula-broken", pointer, entry.Fault!);
        }

        json.WriteStartObject();
        json.WriteString("id", entry.Id);
        if (entry.Yield is { } yield)
        {
            if (yield.Mould is not null || !yield.Stocks.IsEmpty)
            {
                throw FormulaJsonException.Unwritable("yield-unwritable", pointer + "/makes", $"'{yield}' is not a mass or portions.");
            }

            json.WriteStartObject("makes");
            json.WriteNumber("value", yield.Grams);
            json.WriteString("unit", "g");
            if (yield.Count is { } count)
            {
                json.WriteNumber("count", count);
            }

            json.WriteString("of", s_bases.First(b => b.Basis == yield.Basis).Word);
            json.WriteEndObject();
        }

        if (entry.Measured is { IsEmpty: false } measured)
        {
            json.WriteStartObject("measured");
            Number(json, "ph", measured.Ph);
            Number(json, "brix", measured.Brix);
            if (measured.DensityKgPerM3 is { } density)
            {
                json.WriteStartObject("density");
                json.WriteNumber("value", density);
                json.WriteString("unit", "kg/m3");
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        json.WritePropertyName("formula");
        FormulaJson.Write(json, formula, catalogue);
        json.WriteEndObject();
    }

    private static void Number(Utf8JsonWriter json, string member, double? value)
    {
        if (value is { } v)
        {
            json.WriteNumber(member, v);
        }
    }

    private static List<BookEntry> ReadEntries(JsonElement root, Catalogue catalogue, List<FormulaJsonProblem> problems)
    {
        var checks = new DocumentChecks();
        var entries = new List<BookEntry>();
        int index = 0;
        foreach (JsonElement json in root.GetProperty("formulas"u8).EnumerateArray())
        {
            DocumentPlace at = DocumentPlace.Item("/formulas", index);
            index++;
            string id = json.GetProperty("id"u8).GetString()!;
            Yield? yield = json.TryGetProperty("makes"u8, out JsonElement makes) ? ReadYield(makes, at, checks) : null;
            Measurements? measured = json.TryGetProperty("measured"u8, out JsonElement m) ? ReadMeasured(m, at, checks) : null;
            if (!Ids.IsValid(id))
            {
                checks.Report("id-invalid", at, "/id", $"Must be kebab-case, such as \"pear-syrup\", but is {UnitTable.Quote(id)}.");
                continue;
            }

            Formula? formula = DocumentParser.Parse(Encoding.UTF8.GetBytes(json.GetProperty("formula"u8).GetRawText()), catalogue, out ValueList<FormulaJsonProblem> faults);
            entries.Add(formula is not null ? new BookEntry(id, formula, yield) { Measured = measured }
                : BookEntry.Broken(id, string.Join(" ", faults.Select(f => new FormulaJsonProblem(f.Id, at.Pointer("/formula") + f.Pointer, f.Message)))));
        }

        problems.AddRange(checks.Problems);
        return entries;
    }

    private static Yield? ReadYield(JsonElement json, DocumentPlace at, DocumentChecks checks)
    {
        int before = checks.Problems.Count;
        double? grams = checks.Quantity(json.GetProperty("value"u8).GetDouble(), json.GetProperty("unit"u8).GetString()!, QuantityKind.Mass, double.Epsilon, Guard.MaxMassGrams, at, "/makes");
        double? count = json.TryGetProperty("count"u8, out JsonElement c) ? checks.Number(c.GetDouble(), 1, Yield.MaxPortions, "portions", at, "/makes/count") : null;
        YieldBasis basis = YieldBasis.Finished;
        if (json.TryGetProperty("of"u8, out JsonElement of))
        {
            (string Word, YieldBasis Basis) found = Array.Find(s_bases, b => b.Word == of.GetString());
            basis = found.Basis;
            if (found.Word is null)
            {
                checks.Unknown(of.GetString()!, string.Join(", ", s_bases.Select(b => b.Word)), at, "/makes/of");
            }
        }

        if (count is { } n && n % 1 != 0)
        {
            checks.Report("number-range", at, "/makes/count", "Must be a whole number of portions.");
        }
        else if (grams * count > Guard.MaxMassGrams)
        {
            checks.Report("number-range", at, "/makes", $"All portions together are {Numbers.Significant((grams * count)!.Value, 6)} g; at most {Numbers.Exact(Guard.MaxMassGrams)} g are possible.");
        }

        if (checks.Problems.Count > before || grams is not { } g)
        {
            return null;
        }

        return count is { } portions ? Yield.Portions((int)portions, Mass.FromGrams(g), basis) : basis switch
        {
            YieldBasis.Base => Yield.OfBase(Mass.FromGrams(g)),
            YieldBasis.Assembled => Yield.Assembled(Mass.FromGrams(g)),
            _ => Yield.Finished(Mass.FromGrams(g)),
        };
    }

    private static Measurements ReadMeasured(JsonElement json, DocumentPlace at, DocumentChecks checks)
    {
        double? Of(string member, double max, string unit) => json.TryGetProperty(member, out JsonElement value) ? checks.Number(value.GetDouble(), 0, max, unit, at, "/measured/" + member) : null;
        return new Measurements
        {
            Ph = Of("ph", 14, "pH"),
            Brix = Of("brix", 100, "°Brix"),
            Density = json.TryGetProperty("density"u8, out JsonElement d)
                && checks.Quantity(d.GetProperty("value"u8).GetDouble(), d.GetProperty("unit"u8).GetString()!, QuantityKind.Density, 100, 30_000, at, "/measured/density") is { } density
                ? Density.FromKilogramsPerCubicMeter(density) : null,
        };
    }
}
