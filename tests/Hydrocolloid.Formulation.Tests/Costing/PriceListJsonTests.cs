using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Serialization;
using static Hydrocolloid.Formulation.Tests.Costing.Kitchen;

namespace Hydrocolloid.Formulation.Tests.Costing;

public class PriceListJsonTests
{
    private const string Agar = """{"ingredient":"agar","price":38.40,"per":{"value":1,"unit":"kg"}}""";

    public static TheoryData<string, string, string> Refused => new()
    {
        { "", "syntax", "" },
        { "[]", "value-type", "" },
        { "{}", "format-unknown", "/format" },
        { """{"format":"hydrocolloid-formula","version":1}""", "format-unknown", "/format" },
        { """{"format":"hydrocolloid-prices","version":2}""", "version-newer", "/version" },
        { """{"format":"hydrocolloid-prices","version":1,"prices":[]}""", "member-missing", "/currency" },
        { List(Agar, currency: "XAU"), "currency-unknown", "/currency" },
        { List(Agar, currency: "eur"), "currency-unknown", "/currency" },
        { List(Agar + "," + Agar), "prices-overlap", "/prices/1" },
        { List("{}"), "member-missing", "/prices/0/ingredient" },
        { With(Agar, "\"vat\":7"), "member-unknown", "/prices/0/vat" },
        { With(Agar, "\"price\":7"), "member-repeated", "/prices/0/price" },
        { With(Agar, "\"supplier\":null"), "value-type", "/prices/0/supplier" },
        { With(Agar, "\"supplier\":\" \""), "text-blank", "/prices/0/supplier" },
        { With(Agar, "\"from\":\"2026-02-30\""), "day-invalid", "/prices/0/from" },
        { With(Agar, "\"from\":\"2026-03-02\",\"to\":\"2026-03-01\""), "validity-reversed", "/prices/0/to" },
        { With(Agar, "\"yieldPercent\":0"), "number-range", "/prices/0/yieldPercent" },
        { With(Agar, "\"yieldPercent\":100.1"), "number-range", "/prices/0/yieldPercent" },
        { With(Agar, "\"density\":{\"value\":1,\"unit\":\"g/mL\"}"), "member-misplaced", "/prices/0/density" },
        { With(Agar, "\"pieceMass\":{\"value\":1,\"unit\":\"g\"}"), "member-misplaced", "/prices/0/pieceMass" },
        { With(Agar.Replace("\"kg\"", "\"L\"", StringComparison.Ordinal), "\"density\":{\"value\":0,\"unit\":\"g/mL\"}"), "number-range", "/prices/0/density/value" },
        { With(Agar.Replace("\"kg\"", "\"L\"", StringComparison.Ordinal), "\"density\":{\"value\":1,\"unit\":\"kg\"}"), "unit-unknown", "/prices/0/density/unit" },
        { List(Agar.Replace("\"kg\"", "\"KG\"", StringComparison.Ordinal)), "unit-unknown", "/prices/0/per/unit" },
        { List(Agar.Replace("\"kg\"", "\"{leaf}\"", StringComparison.Ordinal)), "piece-mass-missing", "/prices/0/pieceMass" },
        { List(Agar.Replace("\"value\":1,\"unit\":\"kg\"", "\"value\":1.5,\"unit\":\"{leaf}\"", StringComparison.Ordinal).Replace("}}", "},\"pieceMass\":{\"value\":2,\"unit\":\"g\"}}", StringComparison.Ordinal)), "number-range", "/prices/0/per/value" },
        { List(Agar.Replace(":1,", ":0,", StringComparison.Ordinal)), "number-range", "/prices/0/per/value" },
        { List(Agar.Replace(":1,", ":-1,", StringComparison.Ordinal)), "number-range", "/prices/0/per/value" },
        { List(Agar.Replace("38.40", "0", StringComparison.Ordinal)), "number-range", "/prices/0/price" },
        { List(Agar.Replace("38.40", "-3", StringComparison.Ordinal)), "number-range", "/prices/0/price" },
        { List(Agar.Replace("38.40", "1e40", StringComparison.Ordinal)), "number-range", "/prices/0/price" },
        { List(Agar.Replace("38.40", "\"38.40\"", StringComparison.Ordinal)), "value-type", "/prices/0/price" },
        { List(Agar.Replace("\"agar\"", "\"Agar\"", StringComparison.Ordinal)), "id-invalid", "/prices/0/ingredient" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Document_that_is_no_price_list_is_refused_with_its_place(string json, string id, string pointer)
        => FluentActions.Invoking(() => PriceListJson.Read(json)).Should().Throw<FormulaJsonException>()
            .Which.Problems.Should().Contain(p => p.Id == id && p.Pointer == pointer && p.LineNumber > 0);

    [Fact]
    public void Every_problem_is_listed()
    {
        string two = List(Agar.Replace("38.40", "0", StringComparison.Ordinal) + "," + Agar.Replace("kg", "stone", StringComparison.Ordinal));
        FluentActions.Invoking(() => PriceListJson.Read(two)).Should().Throw<FormulaJsonException>().Which.Problems.Select(p => p.Pointer).Should().Equal("/prices/0/price", "/prices/1/per/unit");
    }

    [Fact]
    public void Every_member_is_read()
    {
        PriceList list = PriceListJson.Read(List(Agar + """
            ,
            {"ingredient":"pear-juice","price":2.10,"per":{"value":1,"unit":"L"},"density":{"value":1.05,"unit":"g/mL"}},
            {"ingredient":"gelatin-leaf","price":4.90,"per":{"value":25,"unit":"{leaf}"},"pieceMass":{"value":2,"unit":"g"},"pack":true},
            {"ingredient":"pear","price":4.10,"per":{"value":1,"unit":"kg"},"yieldPercent":82,"supplier":"Market stall","from":"2026-01-01","to":"2026-12-31"},
            {"ingredient":"sugar","price":0.92,"per":{"value":1,"unit":"[lb_av]"}}
            """));

        list.Currency.Should().Be(Euro);
        list.Prices.Select(p => p.Amount.Amount).Should().Equal(38.40m, 2.10m, 4.90m, 4.10m, 0.92m);
        list.Prices.Select(p => p.Quantity).Should().Equal(1000, 1000, 25, 1000, 453.59237m);
        list.Prices.Select(p => p.GramsPerUnit).Should().Equal(1, 1.05m, 2, 1, 1);
        list.Prices.Select(p => p.IsPack).Should().Equal(false, false, true, false, false);
        Price pear = list.Prices[3];
        (pear.YieldPercent, pear.Supplier, pear.ValidFrom, pear.ValidTo).Should().Be((82, "Market stall", new DateTime(2026, 1, 1), new DateTime(2026, 12, 31)));
    }

    private static string List(string prices, string currency = "EUR")
        => "{\"format\":\"hydrocolloid-prices\",\"version\":1,\"currency\":\"" + currency + "\",\"prices\":[" + prices + "]}";

    private static string With(string price, string member) => List(price[..^1] + "," + member + "}");
}
