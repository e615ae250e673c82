using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Text;
using static Hydrocolloid.Formulation.Tests.Costing.Kitchen;

namespace Hydrocolloid.Formulation.Tests.Costing;

public class PriceListCsvTests
{
    private const string Header = "ingredient,price,currency,per,unit,pack,pieceMassGrams,densityKgPerM3,yieldPercent,supplier,from,to\r\n";

    public static TheoryData<string, string, int> Refused => new()
    {
        { "", "header-missing", 0 },
        { "\r\n\r\n", "header-missing", 0 },
        { "ingredient,price,currency,per\r\n", "header-invalid", 1 },
        { "ingredient,price,currency,per,unit,unit\r\n", "header-invalid", 1 },
        { "ingredient,price,currency,per,unit,vat\r\n", "header-invalid", 1 },
        { "ingredient;price;currency;per;unit\r\n", "header-invalid", 1 },
        { Header + "agar,38.40,EUR,1,kg", "row-invalid", 2 },
        { Header + "agar,38.40,EUR,1,kg,,,,,,,,", "row-invalid", 2 },
        { Header + "agar,38.40,EUR,1,kg,,,,,a\"b,,", "row-invalid", 2 },
        { Header + "agar,38.40,EUR,1,kg,,,,,\"a\"b,,", "row-invalid", 2 },
        { Header + "agar,38.40,EUR,1,kg,,,,,\"a,,", "row-invalid", 2 },
        { Header + ",38.40,EUR,1,kg,,,,,,,", "id-invalid", 2 },
        { Header + "=1+1,38.40,EUR,1,kg,,,,,,,", "id-invalid", 2 },
        { Header + "agar,,EUR,1,kg,,,,,,,", "number-invalid", 2 },
        { Header + "agar,0,EUR,1,kg,,,,,,,", "number-range", 2 },
        { Header + "agar,-3,EUR,1,kg,,,,,,,", "number-range", 2 },
        { Header + "agar,\"38,40\",EUR,1,kg,,,,,,,", "number-invalid", 2 },
        { Header + "agar,\"1,038.40\",EUR,1,kg,,,,,,,", "number-invalid", 2 },
        { Header + "agar,3e1,EUR,1,kg,,,,,,,", "number-invalid", 2 },
        { Header + "agar, 38,EUR,1,kg,,,,,,,", "number-invalid", 2 },
        { Header + "agar,38.40,EURO,1,kg,,,,,,,", "currency-unknown", 2 },
        { Header + "agar,38.40,,1,kg,,,,,,,", "currency-unknown", 2 },
        { Header + "agar,38.40,USD,1,kg,,,,,,,", "currency-mixed", 2 },
        { Header + "agar,38.40,EUR,0,kg,,,,,,,", "number-range", 2 },
        { Header + "agar,38.40,EUR,1,kilo,,,,,,,", "unit-unknown", 2 },
        { Header + "agar,38.40,EUR,1,kg,yes,,,,,,", "flag-invalid", 2 },
        { Header + "agar,38.40,EUR,0,{leaf},true,2,,,,,", "number-range", 2 },
        { Header + "agar,38.40,EUR,25,{leaf},true,,,,,,", "piece-mass-missing", 2 },
        { Header + "agar,38.40,EUR,1,kg,,2,,,,,", "member-misplaced", 2 },
        { Header + "agar,38.40,EUR,1,kg,,,,0,,,", "number-range", 2 },
        { Header + "agar,38.40,EUR,1,kg,,,,,,01.03.2026,", "day-invalid", 2 },
        { Header + "agar,38.40,EUR,1,kg,,,,,,2026-03-02,2026-03-01", "validity-reversed", 2 },
        { Header + "agar,38.40,EUR,1,kg,,,,,,,\r\nagar,39,EUR,1,kg,,,,,,,", "prices-overlap", 3 },
        { Header + "sugar,1,EUR,1,kg,,,,,\"two\r\nlines\",,\r\nagar,0,EUR,1,kg,,,,,,,", "number-range", 4 },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Row_that_is_no_price_is_reported_with_its_line(string csv, string id, int line)
    {
        FluentActions.Invoking(() => PriceListCsv.Read(csv, Euro, CsvDialect.Comma)).Should().Throw<CostingException>()
            .Which.Problems.Should().Contain(p => p.Id == id && p.LineNumber == line);
        PriceListCsv.TryRead(csv, Euro, CsvDialect.Comma, out PriceList list, out _).Should().BeFalse();
        list.Prices.Should().NotContain(p => p.Ingredient == "agar");
    }

    [Fact]
    public void Every_column_is_read_and_columns_may_stand_in_any_order()
    {
        PriceList list = PriceListCsv.Read(
            "\uFEFFcurrency;ingredient;supplier;price;per;unit;densityKgPerM3;pieceMassGrams;pack;yieldPercent;from;to\n"
            + "EUR;pear-juice;\"Orchard \"\"Old Lane\"\"; Ltd\";2,10;1;L;1050;;;;;\n"
            + "\n"
            + "EUR;gelatin-leaf;;4,90;25;{leaf};;2;true;;2026-01-01;2026-12-31\n"
            + "EUR;pear;;4,10;1;kg;;;false;82;;", Euro, CsvDialect.Semicolon);

        list.Prices.Should().Equal(
            Price.PerVolume("pear-juice", Eur(2.10m), UnitsNet.Volume.FromMilliliters(1000), UnitsNet.Density.FromKilogramsPerCubicMeter(1050)).FromSupplier("Orchard \"Old Lane\"; Ltd"),
            Price.PerCount("gelatin-leaf", Eur(4.90m), 25, UnitsNet.Mass.FromGrams(2)).AsPack().ValidBetween(new(2026, 1, 1), new(2026, 12, 31)),
            PerKilo("pear", 4.10m).WithYield(82));
    }

    [Fact]
    public void The_rows_that_can_be_read_are_there_beside_the_problems()
    {
        string csv = Header + "agar,38.40,EUR,1,kg,,,,,,,\r\nsugar,x,EUR,1,kg,,,,,,,\r\nsalt,0.6,EUR,1,kg,,,,,,,\r\nsalt,0.7,EUR,1,kg,,,,,,,\r\n";
        PriceListCsv.TryRead(csv, Euro, CsvDialect.Comma, out PriceList list, out ValueList<CostingProblem> problems).Should().BeFalse();
        list.Prices.Select(p => p.Ingredient).Should().Equal("agar");
        problems.Select(p => (p.LineNumber, p.Subject)).Should().Equal((3, "sugar"), (5, "salt"));
    }

    [Fact]
    public void Dialect_must_be_clear()
    {
        FluentActions.Invoking(() => new CsvDialect(',', ',')).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new CsvDialect(' ', '.')).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new CsvDialect(';', '\'')).Should().Throw<ArgumentException>();
    }
}
