using System.Globalization;
using System.Text;
using System.Text.Json;
using CsCheck;
using CsvHelper.Configuration;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Tests.Serialization;
using Hydrocolloid.Formulation.Text;
using Json.Schema;
using UnitsNet;
using static Hydrocolloid.Formulation.Tests.Costing.Kitchen;

namespace Hydrocolloid.Formulation.Tests.Costing;

public class PriceListRoundTripTests
{
    private static readonly CsvDialect[] s_dialects = [CsvDialect.Comma, CsvDialect.Semicolon, new('\t', ',', CsvEncoding.Utf16WithMark), new('|', '.')];

    private static readonly Gen<string> s_supplier = Gen.OneOf<string>("'", "=", "+1", "@", "\t", "\r\n", " ", "\"", ",", ";", "|", "Orchard", "é", "＝", "😀")
        .Array[0, 6].Select(parts => string.Concat(parts));

    // 15 digits are what a quantity is known to; an amount of money has all the digits of a decimal.
    private static readonly Gen<double> s_size = Gen.OneOf(Gen.Double[0.001, 10], Gen.Double[10, 1e9], Gen.OneOf<double>(0.001, 1, 25, 1000, 1e9));

    private static readonly Gen<decimal> s_amount = Gen.OneOf(
        Gen.Int[1, 1_000_000].Select(i => i / 100m), Gen.Int[1, 1_000_000].Select(i => i / 7m), Gen.OneOf<decimal>(0.0000000000000000000000000001m, 1_000_000_000m));

    private static readonly Gen<Price> s_price =
        from id in Gen.Int[1, 1_000_000]
        from amount in s_amount
        from size in s_size
        from extra in Gen.OneOf(Gen.Double[100, 30_000], Gen.Const(0d))
        from kind in Gen.Int[0, 2]
        from count in Gen.Int[1, 1_000_000]
        from isPack in Gen.Bool
        from yield in Gen.OneOf(Gen.Int[1, 1000].Select(i => i / 10m), Gen.Const(100m))
        from supplier in s_supplier
        from days in Gen.Int[0, 3000]
        from limits in Gen.Int[0, 3]
        select Make($"item-{id}", amount, size, extra, kind, count, isPack, yield, supplier, days, limits);

    private static readonly Gen<PriceList> s_list = s_price.Array[0, 8].Select(prices => Prices([.. prices.GroupBy(p => p.Ingredient, StringComparer.Ordinal).Select(g => g.First())]));

    private static Price Make(string id, decimal amount, double size, double extra, int kind, int count, bool isPack, decimal yield, string supplier, int days, int limits)
    {
        Price price = kind switch
        {
            0 => Price.PerMass(id, Eur(amount), Mass.FromGrams(size)),
            1 => Price.PerVolume(id, Eur(amount), Volume.FromMilliliters(size), extra > 0 ? Density.FromKilogramsPerCubicMeter(extra) : null),
            _ => Price.PerCount(id, Eur(amount), count, Mass.FromGrams(size)),
        };
        DateTime from = new(2020, 1, 1);
        price = price.WithYield(yield).ValidBetween(limits is 1 or 3 ? from : null, limits is 2 or 3 ? from.AddDays(days) : null);
        price = string.IsNullOrWhiteSpace(supplier) ? price : price.FromSupplier(supplier);
        return isPack ? price.AsPack() : price;
    }

    [Fact]
    public void A_list_written_as_csv_reads_back_equal_in_every_dialect()
        => Gen.Select(s_list, Gen.Int[0, s_dialects.Length - 1]).Sample((list, d) =>
            PriceListCsv.Read(PriceListCsv.Write(list, s_dialects[d]), Euro, s_dialects[d]).Prices.Should().Equal(list.Prices), iter: 1000);

    [Fact]
    public void A_list_written_as_json_reads_back_equal()
        => s_list.Sample(list =>
        {
            PriceList read = PriceListJson.Read(PriceListJson.Write(list));
            read.Currency.Should().Be(list.Currency);
            read.Prices.Should().Equal(list.Prices);
        }, iter: 1000);

    [Fact]
    public void A_reference_reader_finds_the_same_rows()
        => Gen.Select(s_list, Gen.Int[0, s_dialects.Length - 1]).Sample((list, d) =>
        {
            CsvDialect dialect = s_dialects[d];
            using var reader = new StreamReader(new MemoryStream(PriceListCsv.Write(list, dialect)), new UTF8Encoding(false), detectEncodingFromByteOrderMarks: true);
            using var csv = new CsvHelper.CsvReader(reader, new CsvConfiguration(CultureInfo.InvariantCulture) { Delimiter = dialect.Separator.ToString(), Mode = CsvHelper.CsvMode.RFC4180 });
            csv.Read();
            csv.ReadHeader();
            foreach (Price price in list.Prices)
            {
                csv.Read().Should().BeTrue();
                csv.GetField("ingredient").Should().Be(price.Ingredient);
                decimal.Parse(csv.GetField("price")!.Replace(dialect.DecimalSign, '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture).Should().Be(price.Amount.Amount);
                csv.GetField("supplier").Should().Be(CsvGuard.On(price.Supplier ?? ""));
            }

            csv.Read().Should().BeFalse();
        }, iter: 300);

    [Fact]
    public void Every_list_that_is_written_fits_the_schema()
    {
        var schema = JsonSchema.FromText(Documents.File("prices.schema.json"));
        s_list.Sample(list => schema.Evaluate(JsonDocument.Parse(PriceListJson.Write(list)).RootElement).IsValid, iter: 200, threads: 1);
        schema.Evaluate(JsonDocument.Parse("""{ "format": "hydrocolloid-prices", "version": 1, "currency": "EUR", "prices": [ { "ingredient": "agar", "price": 0, "per": { "value": 1, "unit": "kg" } } ] }""").RootElement).IsValid.Should().BeFalse();
    }

    [Fact]
    public void Json_states_only_what_is_not_the_default()
        => Encoding.UTF8.GetString(PriceListJson.Write(Prices(PerKilo("agar", 38.40m)))).Should().Be("""
            {
              "format": "hydrocolloid-prices",
              "version": 1,
              "currency": "EUR",
              "prices": [
                {
                  "ingredient": "agar",
                  "price": 38.40,
                  "per": {
                    "value": 1000,
                    "unit": "g"
                  }
                }
              ]
            }
            """.ReplaceLineEndings("\n"));

    [Fact]
    public void Supplier_that_a_spreadsheet_would_run_is_made_safe_and_comes_back()
    {
        PriceList list = Prices(PerKilo("agar", 38.40m).FromSupplier("=cmd|' /C calc'!A0"));
        byte[] csv = PriceListCsv.Write(list, CsvDialect.Comma);
        Encoding.UTF8.GetString(csv).Should().Contain(",'=cmd|' /C calc'!A0,");
        PriceListCsv.Read(csv, Euro, CsvDialect.Comma).Prices.Should().Equal(list.Prices);
    }

    [Fact]
    public void Bytes_of_another_encoding_are_a_problem_not_letters()
    {
        byte[] latin = PriceListCsv.Write(Prices(PerKilo("agar", 38.40m).FromSupplier("Épicerie")), new CsvDialect(',', '.', CsvEncoding.Latin1));
        PriceListCsv.TryRead(latin, Euro, CsvDialect.Comma, out PriceList list, out ValueList<CostingProblem> problems).Should().BeFalse();
        list.Prices.Should().BeEmpty();
        problems.Should().ContainSingle(p => p.Id == "encoding");
        PriceListCsv.Read(latin, Euro, new CsvDialect(',', '.', CsvEncoding.Latin1)).Prices.Single().Supplier.Should().Be("Épicerie");
    }
}
