using System.Text;
using System.Text.Json;
using CsCheck;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Serialization;
using Json.Schema;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Serialization;

public class BookJsonTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(Documents.File("book.schema.json"));

    private const string Tea = """{ "format": "hydrocolloid-formula", "version": 1, "name": "Tea", "base": [ { "ingredient": "water", "percent": 100 } ] }""";

    private static readonly Gen<Yield?> s_yield = Gen.Select(Gen.Int[0, 4], Gen.Double[0.001, 1e5], Gen.Int[1, 1000]).Select((kind, grams, count) => kind switch
    {
        0 => null,
        1 => Yield.OfBase(Mass.FromGrams(grams)),
        2 => Yield.Assembled(Mass.FromGrams(grams)),
        3 => Yield.Finished(Mass.FromGrams(grams)),
        _ => Yield.Portions(count, Mass.FromGrams(grams), (YieldBasis)(count % 3)),
    });

    private static readonly Gen<Measurements?> s_measured = Gen.Select(Gen.Int[0, 7], Gen.Double[0, 14], Gen.Double[0, 100], Gen.Double[100, 30_000]).Select((which, ph, brix, density) =>
        which == 0 ? null : new Measurements { Ph = (which & 1) > 0 ? ph : null, Brix = (which & 2) > 0 ? brix : null, Density = (which & 4) > 0 ? Density.FromKilogramsPerCubicMeter(density) : null });

    public static TheoryData<string, string, string> Refused => new()
    {
        { """{ "id": "Tea", "formula": {} }""", "id-invalid", "/formulas/0/id" },
        { """{ "formula": {} }""", "member-missing", "/formulas/0/id" },
        { """{ "id": "tea" }""", "member-missing", "/formulas/0/formula" },
        { """{ "id": "tea", "formula": {}, "size": 1 }""", "member-unknown", "/formulas/0/size" },
        { """{ "id": "tea", "formula": null }""", "value-type", "/formulas/0/formula" },
        { """{ "id": "tea", "formula": {}, "makes": { "value": 0, "unit": "g" } }""", "number-range", "/formulas/0/makes/value" },
        { """{ "id": "tea", "formula": {}, "makes": { "value": 1, "unit": "cup" } }""", "unit-unknown", "/formulas/0/makes/unit" },
        { """{ "id": "tea", "formula": {}, "makes": { "value": 1, "unit": "g", "count": 2.5 } }""", "number-range", "/formulas/0/makes/count" },
        { """{ "id": "tea", "formula": {}, "makes": { "value": 1000, "unit": "kg", "count": 1000000 } }""", "number-range", "/formulas/0/makes" },
        { """{ "id": "tea", "formula": {}, "makes": { "value": 1, "unit": "g", "of": "sold" } }""", "word-unknown", "/formulas/0/makes/of" },
        { """{ "id": "tea", "formula": {}, "measured": { "ph": 15 } }""", "number-range", "/formulas/0/measured/ph" },
    };

    private static string Book(string entry) => $$"""{ "format": "hydrocolloid-book", "version": 1, "formulas": [ {{entry}} ] }""";

    [Fact]
    public void A_book_written_reads_back_equal()
        => Gen.Select(RandomFormulas.Any, s_yield, s_measured).Array[0, 4].Sample(entries =>
        {
            BookEntry[] book = [.. entries.Select((e, i) => new BookEntry("entry-" + i, e.Item1, e.Item2) { Measured = e.Item3 })];
            byte[] written;
            try
            {
                written = BookJson.Write(book);
            }
            catch (FormulaJsonException) // a formula that no document holds
            {
                book.Should().Contain(e => Throws(() => FormulaJson.Write(e.Formula!)));
                return;
            }

            s_schema.Evaluate(JsonDocument.Parse(written).RootElement).IsValid.Should().BeTrue();
            ValueList<BookEntry> read = BookJson.Read(written);
            read.Select(e => (e.Id, e.Formula, e.Yield, e.Measured)).Should().Equal(book.Select(e => (e.Id, e.Formula, e.Yield, e.Measured)));
            BookJson.Write(read).Should().Equal(written);
        }, iter: 200, threads: 1);

    [Fact]
    public void Formula_that_cannot_be_read_becomes_a_broken_entry_and_the_rest_is_read()
    {
        ValueList<BookEntry> read = BookJson.Read(Book("""{ "id": "syrup", "formula": { "format": "hydrocolloid-formula", "version": 1, "name": "Syrup", "base": [ { "ingredient": "water", "percent": 90 } ] } }, { "id": "tea", "formula": """ + Tea + " }"));
        read[0].Formula.Should().BeNull();
        read[0].Fault.Should().Contain("/formulas/0/formula/base").And.Contain("90");
        read[1].Formula!.Name.Should().Be("Tea");
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void Entry_that_is_none_is_refused_with_its_place(string entry, string id, string pointer)
        => FluentActions.Invoking(() => BookJson.Read(Book(entry))).Should().Throw<FormulaJsonException>()
            .Which.Problems.Should().Contain(p => p.Id == id && p.Pointer == pointer);

    [Fact]
    public void What_the_schema_refuses_is_refused_by_the_reader_too()
    {
        foreach (string entry in new[] { """{ "formula": {} }""", """{ "id": "Tea", "formula": {} }""", """{ "id": "tea", "formula": {}, "size": 1 }""" })
        {
            s_schema.Evaluate(JsonDocument.Parse(Book(entry)).RootElement).IsValid.Should().BeFalse();
            FluentActions.Invoking(() => BookJson.Read(Book(entry))).Should().Throw<FormulaJsonException>();
        }
    }

    [Fact]
    public void The_book_of_the_example_is_whole()
    {
        string text = Repository.Read("examples/CostingExport/data/cafe-book.json");
        s_schema.Evaluate(JsonDocument.Parse(text).RootElement).IsValid.Should().BeTrue();
        NestedFormulas.From(BookJson.Read(text)).Problems.Should().BeEmpty();
    }

    [Fact]
    public void Another_format_or_version_is_refused()
    {
        FluentActions.Invoking(() => BookJson.Read(Tea)).Should().Throw<FormulaJsonException>().Which.Problems.Should().ContainSingle(p => p.Id == "format-unknown");
        FluentActions.Invoking(() => BookJson.Read(Book("").Replace("1", "2"))).Should().Throw<FormulaJsonException>().Which.Problems.Should().ContainSingle(p => p.Id == "version-newer");
        BookJson.Read(Book("")).Should().BeEmpty();
    }

    [Fact]
    public void Broken_entry_and_yield_in_moulds_cannot_be_written()
    {
        Formula tea = FormulaJson.Read(Tea);
        FluentActions.Invoking(() => BookJson.Write([BookEntry.Broken("tea", "gone")])).Should().Throw<FormulaJsonException>().WithMessage("*gone*");
        Yield moulds = Yield.Moulds(6, new MouldPlan("ring", Volume.FromMilliliters(80)));
        FluentActions.Invoking(() => BookJson.Write([new BookEntry("tea", tea, moulds)])).Should().Throw<FormulaJsonException>().WithMessage("*/formulas/0/makes*");
        Encoding.UTF8.GetString(BookJson.Write([new BookEntry("tea", tea)])).Should().Contain("\"id\": \"tea\"");
    }

    private static bool Throws(Action action)
    {
        try
        {
            action();
            return false;
        }
        catch (FormulaJsonException)
        {
            return true;
        }
    }
}
