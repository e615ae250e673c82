using CsCheck;
using Hydrocolloid.Formulation.Costing;
using static Hydrocolloid.Formulation.Tests.Costing.Kitchen;

namespace Hydrocolloid.Formulation.Tests.Costing;

public class MoneyTests
{
    // Every amount that fits: whole units of the last decimal, either sign.
    private static readonly Gen<Money> s_amount = Gen.Select(Gen.Long[-1_000_000_000_000, 1_000_000_000_000], Gen.Int[0, Currency.All.Count - 1])
        .Select((units, c) => new Money(units / Power(Currency.All[c].Decimals), Currency.All[c]));

    private static readonly Gen<decimal[]> s_weights = Gen.Decimal[0, 1_000_000].Array[1, 40].Where(w => w.Any(x => x > 0));

    private static decimal Power(int decimals) => (decimal)Math.Pow(10, decimals);

    /// <summary>ISO 4217, active codes on 2026-02-01: 165 with a minor unit; a few of each kind.</summary>
    [Theory]
    [InlineData("EUR", 2)]
    [InlineData("JPY", 0)]
    [InlineData("KWD", 3)]
    [InlineData("CLF", 4)]
    [InlineData("ISK", 0)]
    [InlineData("ZWG", 2)]
    public void Currency_has_the_decimals_of_the_standard(string code, int decimals) => Currency.Of(code).Decimals.Should().Be(decimals);

    [Fact]
    public void Every_currency_of_the_standard_with_a_minor_unit_is_there()
    {
        Currency.All.Count.Should().Be(17 + 139 + 7 + 2);
        Currency.All.Select(c => c.Code).Should().OnlyHaveUniqueItems().And.BeInAscendingOrder(StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("eur")]
    [InlineData("EURO")]
    [InlineData("")]
    [InlineData("XAU")] // gold
    [InlineData("XXX")] // no currency
    [InlineData("XTS")] // testing
    public void Code_that_is_no_currency_of_a_price_is_refused(string code)
    {
        FluentActions.Invoking(() => Currency.Of(code)).Should().Throw<ArgumentException>().WithParameterName(nameof(code));
        FluentActions.Invoking(() => new Money(1, code)).Should().Throw<ArgumentException>();
    }

    /// <summary>Half away from zero on decimals; each would come out otherwise in binary floating point or half to even.</summary>
    [Theory]
    [InlineData("1.005", "EUR", "1.01")]
    [InlineData("1234.5", "JPY", "1235")]
    [InlineData("0.12345", "KWD", "0.123")]
    [InlineData("2.675", "USD", "2.68")]
    [InlineData("-0.125", "USD", "-0.13")]
    public void Halves_go_away_from_zero(string amount, string code, string expected)
        => new Money(Number(amount), code).Rounded().Amount.Should().Be(Number(expected));

    [Fact]
    public void Halves_go_to_even_where_that_is_asked_for()
    {
        Eur(4.125m).Rounded(MidpointRounding.ToEven).Should().Be(Eur(4.12m));
        Eur(4.125m).Rounded().Should().Be(Eur(4.13m));
        FluentActions.Invoking(() => Eur(1).Rounded((MidpointRounding)7)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Currencies_never_mix()
    {
        var yen = new Money(5, "JPY");
        FluentActions.Invoking(() => Eur(1) + yen).Should().Throw<ArgumentException>().WithMessage("*5 JPY*1.00 EUR*");
        FluentActions.Invoking(() => Eur(1) - yen).Should().Throw<ArgumentException>();
        var rate = new ExchangeRate(Currency.Of("JPY"), Euro, 0.0061m, Today);
        (Eur(1) + yen.ConvertAt(rate)).Should().Be(Eur(1.0305m));
        FluentActions.Invoking(() => Eur(1).ConvertAt(rate)).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Rate_of_nothing_or_to_itself_is_refused()
    {
        FluentActions.Invoking(() => new ExchangeRate(Euro, Currency.Of("JPY"), 0, Today)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new ExchangeRate(Euro, Euro, 1, Today)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new ExchangeRate(Euro, Currency.Of("JPY"), 1, Today.AddHours(1))).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Impossible_sums_are_refused()
    {
        FluentActions.Invoking(() => Eur(1.1e18m)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Eur(1) / 0).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Eur(1) * 1e10m).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Eur(1).Allocate(default)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Eur(1).Allocate(Weights(0, 0))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Eur(1).Allocate(Weights(1, -1))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Eur(1.001m).Split(2)).Should().Throw<InvalidOperationException>();
        FluentActions.Invoking(() => Eur(1).Split(0)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Shares_always_add_up_to_the_amount()
        => Gen.Select(s_amount, s_weights, Gen.Bool).Sample((amount, weights, first) =>
        {
            ValueList<Money> shares = amount.Allocate(ValueList<decimal>.From(weights), first ? MoneyRemainder.First : MoneyRemainder.Largest);
            return shares.Count == weights.Length && shares.Aggregate((a, b) => a + b) == amount;
        });

    [Fact]
    public void No_share_is_a_whole_unit_away_from_its_due_and_nobody_due_nothing_gets_any()
        => Gen.Select(s_amount, s_weights).Sample((amount, weights) =>
        {
            decimal unit = 1 / Power(amount.Currency.Decimals), sum = weights.Sum();
            return amount.Allocate(ValueList<decimal>.From(weights)).Select((share, i) => (share, i))
                .All(s => Math.Abs(s.share.Amount - amount.Amount * (weights[s.i] / sum)) < unit * 1.000001m && (weights[s.i] > 0 || s.share.Amount == 0));
        });

    [Fact]
    public void A_mirrored_amount_has_mirrored_shares()
        => Gen.Select(s_amount, s_weights).Sample((amount, weights) =>
            amount.Allocate(ValueList<decimal>.From(weights)).Select(s => (s * -1).Amount).SequenceEqual((amount * -1).Allocate(ValueList<decimal>.From(weights)).Select(s => s.Amount)));

    [Fact]
    public void Leftovers_can_go_to_the_first()
        => Eur(99.99m).Allocate(Weights(75, 25), MoneyRemainder.First).Should().Equal(Eur(75.00m), Eur(24.99m));

    [Fact]
    public void Text_has_the_currencys_decimals_and_any_further_ones()
    {
        Eur(4.5m).ToString().Should().Be("4.50 EUR");
        Eur(4.6648m).ToString().Should().Be("4.6648 EUR");
        new Money(1234, "JPY").ToString().Should().Be("1234 JPY");
    }

    private static ValueList<decimal> Weights(params decimal[] weights) => ValueList<decimal>.From(weights);

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
