using Hydrocolloid.Formulation.Costing;
using UnitsNet;
using static Hydrocolloid.Formulation.Tests.Costing.Kitchen;

namespace Hydrocolloid.Formulation.Tests.Costing;

public class PriceListTests
{
    private static readonly Price s_agar = PerKilo("agar", 38.40m);

    [Fact]
    public void The_price_of_the_day_is_found()
    {
        PriceList list = Prices(
            s_agar.ValidBetween(null, new(2026, 2, 28)),
            PerKilo("agar", 40).ValidBetween(new(2026, 3, 1), new(2026, 3, 31)),
            PerKilo("agar", 41).ValidBetween(new(2026, 5, 1), null));

        On(list, new(2026, 2, 28)).Should().Be(38.40m);
        On(list, new(2026, 3, 1)).Should().Be(40);
        On(list, new(2026, 4, 1)).Should().BeNull();
        On(list, new(2030, 1, 1)).Should().Be(41);
        list.TryFind("pectin", Today, out _).Should().BeFalse();
        FluentActions.Invoking(() => list.TryFind("agar", Today.AddHours(1), out _)).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Two_prices_valid_at_once_are_refused()
    {
        FluentActions.Invoking(() => Prices(s_agar, PerKilo("agar", 1))).Should().Throw<CostingException>().Which.Problems.Should().ContainSingle(p => p.Id == "prices-overlap" && p.Subject == "agar");
        FluentActions.Invoking(() => Prices(s_agar.ValidBetween(null, Today), PerKilo("agar", 1).ValidBetween(Today, null))).Should().Throw<CostingException>();
        FluentActions.Invoking(() => Prices(
            s_agar.ValidBetween(Today, null),
            PerKilo("agar", 1).ValidBetween(Today.AddDays(5), Today.AddDays(6)),
            PerKilo("agar", 2).ValidBetween(Today.AddDays(8), null))).Should().Throw<CostingException>().Which.Problems.Count.Should().Be(2);
    }

    [Fact]
    public void Prices_of_another_currency_are_refused_until_they_are_converted()
    {
        var pounds = Price.PerMass("agar", new Money(30, "GBP"), Mass.FromGrams(1000));
        FluentActions.Invoking(() => Prices(pounds)).Should().Throw<CostingException>().Which.Problems[0].Id.Should().Be("currency-mixed");
        On(Prices(pounds.ConvertAt(new ExchangeRate(Currency.Of("GBP"), Euro, 1.15m, Today))), Today).Should().Be(34.5m);
    }

    [Fact]
    public void Impossible_prices_are_refused()
    {
        Refused(() => PerKilo("agar", 0));
        Refused(() => PerKilo("agar", -1));
        Refused(() => Price.PerMass("agar", Eur(1), Mass.Zero));
        Refused(() => Price.PerVolume("milk", Eur(1), Volume.Zero));
        Refused(() => Price.PerVolume("milk", Eur(1), Volume.FromMilliliters(1000), Density.FromKilogramsPerCubicMeter(0)));
        Refused(() => Price.PerCount("leaf", Eur(1), 0, Mass.FromGrams(2)));
        Refused(() => Price.PerCount("leaf", Eur(1), 10, Mass.Zero));
        Refused(() => s_agar.WithYield(0));
        Refused(() => s_agar.WithYield(101));
        Refused(() => s_agar.Changed(-100));
        FluentActions.Invoking(() => PerKilo("Agar!", 1)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => s_agar.FromSupplier(" ")).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => s_agar.ValidBetween(Today, Today.AddDays(-1))).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void A_price_can_change()
    {
        PriceList list = Prices(s_agar, PerKilo("sugar", 1));
        On(list.WithChange("agar", 10), Today).Should().Be(42.24m);
        On(list.With(PerKilo("agar", 35)), Today).Should().Be(35);
        FluentActions.Invoking(() => list.WithChange("pectin", 10)).Should().Throw<ArgumentException>();
    }

    private static decimal? On(PriceList list, DateTime day) => list.TryFind("agar", day, out Price? price) ? price.Amount.Amount : null;

    private static void Refused(Func<Price> make) => make.Should().Throw<ArgumentOutOfRangeException>();
}
