using System.Globalization;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Tests.Formulas;
using Hydrocolloid.Formulation.Text;
using UnitsNet;
using static Hydrocolloid.Formulation.Tests.Costing.Kitchen;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>Costing against rules of published standards and cases from public threads; the trait holds a case's id. Money is compared exactly.</summary>
public class PublishedCostingTests
{
    /// <summary>
    /// Line amount = quantity × net price / base quantity, rounded to the currency's decimals; a stated amount may be 0.02 off. Rule and tolerance:
    /// Peppol BIS Billing 3.0 (2025), read; amounts worked out by the rule. It names no rule for halves; half away from zero is recalled practice.
    /// </summary>
    [Theory]
    [InlineData("0.005", "kg", "38.40", "1", "EUR", "0.19")]
    [InlineData("5", "g", "38.40", "1000", "EUR", "0.19")]
    [InlineData("1.5", "L", "0.95", "1", "EUR", "1.43")]
    [InlineData("8", "{leaf}", "4.90", "25", "EUR", "1.57")]
    [InlineData("0.3", "kg", "210", "1", "JPY", "63")]
    public void Line_amount_by_the_rule_of_electronic_invoices(string quantity, string unit, string price, string baseQuantity, string currency, string expected)
    {
        decimal number = Number(quantity);
        var amount = new Money(Number(price), currency);
        double grams = (double)number * (unit is "kg" or "L" ? 1000 : unit == "{leaf}" ? 2 : 1); // 1 kg/L and leaves of 2 g, so that masses stand for quantities
        Price listed = unit switch
        {
            "kg" => Price.PerMass("item", amount, Mass.FromGrams(1000 * double.Parse(baseQuantity, CultureInfo.InvariantCulture))),
            "g" => Price.PerMass("item", amount, Mass.FromGrams(double.Parse(baseQuantity, CultureInfo.InvariantCulture))),
            "L" => Price.PerVolume("item", amount, Volume.FromMilliliters(1000), Density.FromKilogramsPerCubicMeter(1000)),
            _ => Price.PerCount("item", amount, 25, Mass.FromGrams(2)),
        };

        Money line = Mix(("item", 100)).OfBase(grams).Cost(new PriceList(Currency.Of(currency), [listed]), Today).Lines[0].Cost!.Rounded();

        line.Amount.Should().Be(Number(expected));
    }

    /// <summary>Trim loss: 18 % of what is bought at 4.10 a kg is peel, so 500 g in the pot are 609.8 g bought, and a kilogram in the pot costs 5.00. Arithmetic, common practice.</summary>
    [Fact]
    public void Yield_of_an_ingredient_is_divided_out()
    {
        CostSheet sheet = Mix(("pear", 100)).OfBase(500).Cost(Prices(PerKilo("pear", 4.10m).WithYield(82)), Today);
        sheet.PerKilogram.Should().Be(Eur(5.00m));
        sheet.Lines[0].BoughtMass!.Value.Grams.Should().BeApproximately(609.8, 0.05);
    }

    /// <summary>Pastry worker's blog, 2008 (portion, loss and dose assumed by the case): 100 × 100 g with 5 % loss are 10 526.3 g, gelatin 84.21 g, both within the case's tolerance.</summary>
    [Fact, Trait("Case", "PC-020")]
    public void Loss_is_divided_out_in_mass_and_cost()
    {
        Formula cream = Formula.Named("cream").Base(b => b.Share(Of("cream"), 100)).Then("gel", p => p.Add(Of("gelatin-x"), Dose.Percent(0.8).OfTotal)).Build();
        Batch batch = cream.ScaleTo(Yield.Portions(100, Mass.FromGrams(100)), new Losses { Transfer = Loss.Percent(5) });
        batch.AssembledMass.Grams.Should().BeApproximately(10526.3, 10526.3 * 0.0005);
        batch.MassOf("gelatin-x").Grams.Should().BeApproximately(84.21, 84.21 * 0.001);

        // At 1 a kilogram throughout, the batch costs 10.526 and not 10.50.
        batch.Cost(Prices(PerKilo("cream", 1), PerKilo("gelatin-x", 1)), Today).Total!.Rounded().Should().Be(Eur(10.53m));
    }

    /// <summary>Local food blog: 25 jars of jam; stated 4.66 a jar, and 4.14 next year, where rounding once at the end gives 4.15.</summary>
    [Fact, Trait("Case", "PC-023")]
    public void Cost_of_a_jar_is_rounded_once_at_the_end()
    {
        Money Usd(decimal amount) => new(amount, "USD");
        (Usd(3.50m) * 24 * 0.9m).Should().Be(Usd(75.60m));

        // A kilogram each: the case gives costs, not masses.
        Formula jam = Formula.Named("jam").Base(b => b.Share(Of("fruit"), 100))
            .Then("cook", p => p.Add(Of("sugar"), Dose.Percent(100).OfBase).Add(Of("pectin-x"), Dose.Percent(100).OfBase)).Build();
        var prices = new PriceList(Currency.Of("USD"), new[] { ("fruit", 75.60m), ("sugar", 10.36m), ("pectin-x", 13.77m) }.Select(p => Price.PerMass(p.Item1, Usd(p.Item2), Mass.FromGrams(1000))));
        Batch batch = jam.ScaleTo(Yield.Portions(25, Mass.FromGrams(120)));

        CostSheet now = batch.Cost(prices, Today, PackCharge.UsedPart, ExtraCost.Other("jars", Usd(16.89m)));
        now.Total.Should().Be(Usd(116.62m));
        now.PerPortion.Should().Be(Usd(4.6648m));
        now.PerPortion!.Rounded().Should().Be(Usd(4.66m));

        CostSheet next = batch.Cost(prices, Today, PackCharge.UsedPart, ExtraCost.Other("lids", Usd(0.16m) * 25));
        next.PerPortion.Should().Be(Usd(4.1492m));
        next.PerPortion!.Rounded().Should().Be(Usd(4.15m));
    }

    /// <summary>Public issue thread, 2022: an amount of 19053,79 was read as 1905379. A comma is a decimal sign only where the caller says so, and never skipped.</summary>
    [Theory, Trait("Case", "PC-035")]
    [InlineData("\"0,9\"", ',', '.', null)]
    [InlineData("0,9", ';', ',', "0.9")]
    [InlineData("0.9", ';', ',', null)]
    [InlineData("19053,79", ';', ',', "19053.79")]
    [InlineData("19.053,79", ';', ',', null)]
    public void Decimal_comma_is_read_only_where_it_is_declared(string field, char separator, char decimalSign, string? expected)
    {
        string csv = $"ingredient,price,currency,per,unit\r\nagar,{field},EUR,1,kg".Replace(',', separator);
        csv = field.Contains(',', StringComparison.Ordinal) ? csv.Replace(field.Replace(',', separator), field, StringComparison.Ordinal) : csv;
        bool isRead = PriceListCsv.TryRead(csv, Euro, new CsvDialect(separator, decimalSign), out PriceList list, out ValueList<CostingProblem> problems);
        isRead.Should().Be(expected is not null);
        if (expected is null)
        {
            problems.Should().ContainSingle(p => p.Id == "number-invalid" && p.Subject == "agar" && p.LineNumber == 2);
        }
        else
        {
            list.Prices.Single().Amount.Amount.Should().Be(Number(expected));
        }
    }

    /// <summary>Public pull request of a money library, 2018: shares by size of the fraction, ties by order.</summary>
    [Theory, Trait("Case", "PC-044")]
    [InlineData("99.99", new[] { 75, 25 }, new[] { "74.99", "25.00" })]
    [InlineData("0.01", new[] { 33, 66 }, new[] { "0.00", "0.01" })]
    [InlineData("1.00", new[] { 1, 1, 1 }, new[] { "0.34", "0.33", "0.33" })]
    public void The_last_cent_goes_to_the_largest_fraction(string amount, int[] weights, string[] expected)
        => Eur(Number(amount)).Allocate(ValueList<decimal>.From(weights.Select(w => (decimal)w))).Select(s => s.Amount).Should().Equal(expected.Select(Number));

    /// <summary>Public issue thread, 2018: rows written where the comma is the decimal sign. The dialect belongs to the file.</summary>
    [Fact, Trait("Case", "PC-045")]
    public void Semicolons_are_read_as_said_and_refused_otherwise()
    {
        const string Csv = "ingredient;price;currency;per;unit\r\nagar;4,5;EUR;1;g\r\n";
        PriceListCsv.Read(Csv, Euro, CsvDialect.Semicolon).Prices.Single().Should().Be(Price.PerMass("agar", Eur(4.5m), Mass.FromGrams(1)));
        PriceListCsv.TryRead(Csv, Euro, CsvDialect.Comma, out _, out ValueList<CostingProblem> problems).Should().BeFalse();
        problems.Should().Contain(p => p.Id == "header-invalid");
        PriceListCsv.TryRead("ingredient,price,currency,per,unit\r\nagar;4,5;EUR;1;g", Euro, CsvDialect.Comma, out _, out problems).Should().BeFalse();
        problems.Should().ContainSingle(p => p.Id == "row-invalid" && p.Message.Contains("2 fields", StringComparison.Ordinal));
    }

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
