using System.Globalization;
using System.Text;
using CsCheck;
using CsvHelper.Configuration;
using Hydrocolloid.Formulation.Exchange;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Tests.Serialization;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Exchange;

public class CsvTests
{
    private static readonly CsvDialect[] s_dialects = [CsvDialect.Comma, CsvDialect.Semicolon, new('\t', ',', CsvEncoding.Utf16WithMark), new('|', '.', CsvEncoding.Utf8)];

    private static readonly Gen<string> s_nasty = Gen.OneOf<string>("'", "''", "=", "+", "-", "@", "\t", "\r", "\n", "\r\n", " ", "\u00A0", "\"", ",", ";", "|", "%", "a", "é", "＝", "😀")
        .Array[0, 8].Select(parts => string.Concat(parts));

    private static string[][] WithCsvHelper(byte[] bytes, CsvDialect dialect)
    {
        using var reader = new StreamReader(new MemoryStream(bytes), new UTF8Encoding(false), detectEncodingFromByteOrderMarks: true);
        using var parser = new CsvHelper.CsvParser(reader, new CsvConfiguration(CultureInfo.InvariantCulture) { Delimiter = dialect.Separator.ToString(), Mode = CsvHelper.CsvMode.RFC4180, IgnoreBlankLines = false });
        var records = new List<string[]>();
        while (parser.Read())
        {
            records.Add([.. parser.Record!]);
        }

        return [.. records];
    }

    [Fact]
    public void Any_text_comes_back_and_begins_no_formula()
        => Gen.Select(s_nasty, s_nasty).Sample(pair =>
        {
            var csv = new CsvWriter(CsvDialect.Comma);
            csv.Text(pair.Item1).Text(pair.Item2).EndRecord();
            string written = Encoding.UTF8.GetString(csv.ToBytes());
            CsvRecord record = CsvReader.Read(written, ',').Single();
            return record.Error is null && record.Fields.Select(CsvGuard.Off).SequenceEqual([pair.Item1, pair.Item2])
                && record.Fields.SelectMany(f => f.Split('\r', '\n')).All(l => l.TrimStart() is "" || !"=+-@|%＝".Contains(l.TrimStart()[0], StringComparison.Ordinal))
                && record.Fields.All(f => f.Length == 0 || f[0] is not ('\t' or '\r' or '\n'));
        }, iter: 5000);

    [Fact]
    public void A_reference_reader_finds_the_same_fields()
        => Gen.Select(s_nasty.Array[2, 4], Gen.Int[0, 3]).Sample((fields, d) =>
        {
            CsvDialect dialect = s_dialects[d];
            var csv = new CsvWriter(dialect);
            foreach (string field in fields)
            {
                csv.Text(field);
            }

            csv.EndRecord();
            string[][] read = WithCsvHelper(csv.ToBytes(), dialect);
            return read.Length == 1 && read[0].SequenceEqual(fields.Select(CsvGuard.On));
        }, iter: 2000);

    [Fact]
    public void Export_and_import_are_the_identity()
        => Gen.Select(RandomFormulas.Any, Gen.Int[0, 3], Gen.Double[1e-3, 1e5]).Sample((formula, d, grams) =>
        {
            if (formula.Phases.Any(p => string.IsNullOrWhiteSpace(p.Name)))
            {
                return;
            }

            Batch batch = formula.ScaleTo(Yield.OfBase(Mass.FromGrams(grams)), Losses.None);
            byte[] file = BatchCsv.Write(batch, s_dialects[d]);
            Catalogue catalogue = Catalogue.BuiltIn.With([.. formula.Lines.Select(l => l.Ingredient).GroupBy(i => i.Id, StringComparer.Ordinal).Select(g => g.First())]);

            WeightsReading reading = WeightsCsv.Read(file, s_dialects[d], catalogue);

            reading.Problems.Should().BeEmpty();
            reading.Rows.Select(r => (r.Ingredient.Id, r.Mass.Grams, r.Phase, r.Label ?? r.Ingredient.Id, r.Form)).Should().Equal(
                batch.Lines.Select(l => (l.Line.Ingredient.Id, l.Mass.Grams, (string?)(l.Line.IsBase ? "" : l.Line.Phase), l.Line.Label, l.Line.Details.Form)));
        }, iter: 300, threads: 1);

    [Fact]
    public void The_formula_that_is_read_weighs_the_same()
    {
        Formula formula = Tests.Formulas.Mixes.TwoStage();
        Batch batch = formula.ScaleTo(Yield.OfBase(Mass.FromGrams(1234.5)));
        Catalogue catalogue = Catalogue.BuiltIn.With([.. formula.Lines.Select(l => l.Ingredient)]);

        Formula read = WeightsCsv.Read(BatchCsv.Write(batch, CsvDialect.Semicolon), CsvDialect.Semicolon, catalogue).ToFormula(formula.Name).Build();

        read.Lines.Select(l => (l.Label, l.Phase)).Should().Equal(formula.Lines.Select(l => (l.Label, l.Phase)));
        Batch again = read.ScaleTo(Yield.OfBase(Mass.FromGrams(1234.5)));
        foreach (BatchLine line in batch.Lines)
        {
            again.MassOf(line.Line.Label).Grams.Should().BeApproximately(line.Mass.Grams, line.Mass.Grams * 1e-12);
        }
    }

    [Theory]
    [InlineData("en-US")]
    [InlineData("de-DE")]
    [InlineData("sv-SE")]
    [InlineData("fr-FR")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_bytes_are_the_same_in_every_culture(string culture)
    {
        Batch batch = Tests.Formulas.Mixes.TwoStage().ScaleTo(Yield.Portions(3, Mass.FromGrams(33.3)));
        byte[] All() => [.. BatchCsv.Write(batch, CsvDialect.Comma), .. BatchCsv.Write(batch, CsvDialect.Semicolon),
            .. CostingLines.Write(batch, new CostingExport("two-stage") { ExportedAt = new DateTimeOffset(2026, 1, 2, 3, 4, 5, TimeSpan.FromHours(1)) }), .. RecipeJsonLd.Write(batch)];
        byte[] expected = All();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            All().Should().Equal(expected);
            WeightsCsv.ReadText("agar;4,5;g", CsvDialect.Semicolon, hasHeader: false).Rows.Single().Mass.Grams.Should().Be(4.5);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>A spreadsheet saved in Sweden, read with commas: public issue thread, 2018.</summary>
    [Fact, Trait("Case", "PC-045")]
    public void Semicolons_are_read_with_their_dialect_and_refused_with_another()
    {
        WeightRow row = WeightsCsv.ReadText("agar;4,5;g", CsvDialect.Semicolon, hasHeader: false).Rows.Single();
        (row.Ingredient.Id, row.Mass.Grams).Should().Be(("agar", 4.5));

        WeightsReading wrong = WeightsCsv.ReadText("agar;4,5;g", CsvDialect.Comma, hasHeader: false);
        wrong.Rows.Should().BeEmpty();
        wrong.Problems.Should().ContainSingle(p => p.Id == "field-count" && p.Line == 1);
        WeightsCsv.ReadText("name;amount;unit\r\nagar;4,5;g", CsvDialect.Comma).Problems.Should().ContainSingle(p => p.Id == "dialect-mismatch");
    }

    [Fact]
    public void Every_unreadable_row_is_reported_and_the_rest_is_read()
    {
        const string file = "name,amount,unit\n"
            + "water,1000,g\n"
            + "unobtainium,1,g\n"        // 3
            + "E 418,5,g\n"              // 4: two gellans
            + "agar,\"1,5\",g\n"         // 5
            + "agar,,g\n"                // 6
            + "agar,-1,g\n"              // 7
            + "agar,1,tsp\n"             // 8
            + "agar,1,KG\n"              // 9
            + "agar,1\n"                 // 10
            + "ag\"ar,1,g\n"             // 11
            + "\n"
            + "agar,2,GRM\n"
            + "sucrose,1e12,g\n"         // 14
            + "agar,\"3";                // 15

        WeightsReading reading = WeightsCsv.ReadText(file, CsvDialect.Comma);

        reading.Rows.Select(r => (r.Ingredient.Id, r.Mass.Grams)).Should().Equal(("water", 1000), ("agar", 2));
        reading.Problems.Select(p => (p.Line, p.Id)).Should().Equal(
            (3, "name-unknown"), (4, "name-ambiguous"), (5, "amount-unreadable"), (6, "amount-unreadable"), (7, "amount-out-of-range"), (8, "unit-unknown"), (9, "unit-unknown"),
            (10, "field-count"), (11, "quoting"), (14, "amount-out-of-range"), (15, "quoting"));
        reading.ToFormula("read").Build().Line("agar").Dose.Should().Be(Dose.Percent(0.2).OfBase);
    }

    [Fact]
    public void A_volume_is_weighed_by_the_density_of_its_ingredient()
    {
        double density = Pantry.PearJuice.DensityAt20C!.Value.KilogramsPerCubicMeter;
        Ingredient unknown = Ingredient.Own("house-juice", "House juice");

        WeightsReading reading = WeightsCsv.ReadText("pear juice;1,5;L\nhouse-juice;1;L", CsvDialect.Semicolon, Catalogue.BuiltIn.With(unknown), hasHeader: false);

        reading.Rows.Single().Mass.Grams.Should().BeApproximately(1.5 * density, 1e-9);
        reading.Problems.Should().ContainSingle(p => p.Id == "density-unknown" && p.Line == 2);
    }

    [Fact]
    public void An_ingredient_in_two_rows_makes_two_lines()
        => WeightsCsv.ReadText("water,500,g\nsucrose,10,g\nsucrose,5,g", CsvDialect.Comma, hasHeader: false).ToFormula("f").Build().Lines.Select(l => l.Label)
            .Should().Equal("water", "sucrose", "sucrose-2");

    [Fact]
    public void Without_a_liquid_the_heaviest_weight_is_the_base()
        => WeightsCsv.ReadText("agar,1,g\nsucrose,9,g", CsvDialect.Comma, hasHeader: false).ToFormula("f").Build().Base.Parts.Single().Ingredient.Id.Should().Be("sucrose");

    [Fact]
    public void Bytes_of_another_encoding_are_refused()
    {
        byte[] latin = [.. "crème,1,g"u8.ToArray()[..2], 0xE8, 0x6D];

        WeightsCsv.Read(latin, CsvDialect.Comma, hasHeader: false).Problems.Single().Id.Should().Be("encoding");
        var csv = new CsvWriter(new CsvDialect(',', '.', CsvEncoding.Latin1));
        csv.Text("№ 2").EndRecord();
        FluentActions.Invoking(csv.ToBytes).Should().Throw<ArgumentException>().WithMessage("*U+2116*");
    }

    [Fact]
    public void A_dialect_must_tell_separator_and_decimal_sign_apart()
    {
        FluentActions.Invoking(() => new CsvDialect(',', ',', CsvEncoding.Utf8)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new CsvDialect('x', '.', CsvEncoding.Utf8)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new CsvDialect(';', '\'', CsvEncoding.Utf8)).Should().Throw<ArgumentException>();
    }

    [Theory]
    [InlineData("")]
    [InlineData("\uFEFF")]
    [InlineData("\"")]
    [InlineData("name,amount,unit\n\"")]
    [InlineData("name,name,amount,unit\n")]
    public void Broken_files_are_problems_never_exceptions(string file)
        => WeightsCsv.ReadText(file, CsvDialect.Comma).Rows.Should().BeEmpty();

    [Fact]
    public void Any_text_is_read_without_an_exception()
        => s_nasty.Array[0, 6].Sample(parts => WeightsCsv.ReadText("name,amount,unit\n" + string.Join("\n", parts), CsvDialect.Comma).Rows.Count >= 0, iter: 2000);

    [Theory]
    [InlineData(1e-7, "0.0000001")]
    [InlineData(1.25e-5, "0.0000125")]
    [InlineData(-2.5, "-2.5")]
    [InlineData(1e21, "1000000000000000000000")]
    [InlineData(0, "0")]
    public void Numbers_have_no_exponent(double value, string expected) => PlainDecimal.Of(value).Should().Be(expected);

    [Fact]
    public void Plain_digits_read_back_as_the_same_number()
        => Gen.Double.Where(double.IsFinite).Sample(v => double.Parse(PlainDecimal.Of(v), NumberStyles.Float, CultureInfo.InvariantCulture).Equals(v + 0.0));
}
