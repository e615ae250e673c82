using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Batches;

public class StockTests
{
    private static Mass G(double grams) => Mass.FromGrams(grams);

    [Fact]
    public void One_stock_decides_the_batch()
    {
        Batch batch = Mixes.Simple(0.5).ScaleTo(Yield.FromStocks(new Stock(Hydrocolloids.Agar, G(3))));

        batch.BaseMass.Grams.Should().BeApproximately(600, 1e-10);
        batch.MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(3, 1e-14);
        batch.LimitedBy.Should().Be("agar");
    }

    [Theory]
    [InlineData(3, 500, "water", 500)]
    [InlineData(3, 700, "agar", 600)]
    public void Stock_in_shortest_supply_decides(double agar, double water, string limitedBy, double baseGrams)
    {
        Batch batch = Mixes.Simple(0.5).ScaleTo(Yield.FromStocks(new Stock(Hydrocolloids.Agar, G(agar)), new Stock(Pantry.Water, G(water))));

        batch.LimitedBy.Should().Be(limitedBy);
        batch.BaseMass.Grams.Should().BeApproximately(baseGrams, 1e-10);
        batch.Lines.Should().OnlyContain(l => l.Mass.Grams <= (l.Line.Label == "agar" ? agar : water) * (1 + 1e-15));
    }

    [Fact]
    public void First_of_two_stocks_that_run_out_together_is_named()
        => Mixes.Simple(0.5).ScaleTo(Yield.FromStocks(new Stock("water", G(600)), new Stock("agar", G(3)))).LimitedBy.Should().Be("water");

    [Fact]
    public void Stock_of_a_line_that_takes_nothing_does_not_limit()
    {
        Formula formula = Mixes.Simple(0);

        formula.ScaleTo(Yield.FromStocks(new Stock("agar", G(1)), new Stock("water", G(100)))).LimitedBy.Should().Be("water");
        Problem(formula, new Stock("agar", G(1)))
            .Should().Be(("stock-unlimited", null, null, null, "None of the stocks is used by the formula, so none limits it."));
    }

    [Fact]
    public void Stock_of_no_line_is_refused()
        => Problem(Mixes.Simple(), new Stock("milk", G(250)), new Stock("agar", G(1)))
            .Should().Be(("stock-unknown", "milk", 250, null, "'milk' is not a line of the formula."));

    [Fact]
    public void Every_unknown_stock_is_reported()
    {
        Mixes.Simple().TryScaleTo(Yield.FromStocks(new Stock("milk", G(1)), new Stock("cream", G(2))), Losses.None, out _, out ValueList<FormulaProblem> problems);
        problems.Select(p => p.Line).Should().Equal("milk", "cream");
    }

    [Fact]
    public void Stocks_must_be_named_once()
    {
        FluentActions.Invoking(() => Yield.FromStocks()).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Yield.FromStocks(new Stock("a", G(1)), new Stock("a", G(2)))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Yield.FromStocks([null!])).Should().Throw<ArgumentNullException>();
        FluentActions.Invoking(() => new Stock("a", Mass.Zero)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new Stock(" ", G(1))).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Stocks_that_the_fixed_losses_eat_up_are_refused()
    {
        Mixes.Simple().TryScaleTo(Yield.FromStocks(new Stock("water", G(100))), new Losses { Straining = Loss.Of(G(200)) }, out _, out ValueList<FormulaProblem> problems)
            .Should().BeFalse();
        problems.Single().Id.Should().Be("nothing-left");
    }

    [Fact]
    public void Water_that_tops_up_comes_out_of_the_stock_of_water()
    {
        // Of 1.005 g assembled per g of base 10 % boils off and is put back: 1000 g of water make 1000 / (1 + 0.1005) g.
        var losses = new Losses { Evaporation = Loss.Percent(10), ToppedUp = true };
        Batch batch = Mixes.Simple(0.5).ScaleTo(Yield.FromStocks(new Stock("water", G(1000)), new Stock("agar", G(5))), losses);

        batch.LimitedBy.Should().Be("water");
        batch.BaseMass.Grams.Should().BeApproximately(1000 / 1.1005, 1e-9);
        (batch.MassOf("water").Grams + batch.TopUpWater.Grams).Should().BeApproximately(1000, 1e-9);
        batch.Explain("water").ToText().Should().StartWith("1. base = 1000 g of water, in shortest supply, / 1.1005 per unit of base, topping up included = 908.678 g");
        Mixes.Simple(0.5).ScaleTo(Yield.FromStocks(new Stock("water", G(1000))), losses with { ToppedUp = false }).BaseMass.Grams.Should().Be(1000);
    }

    [Fact]
    public void Fixed_evaporation_comes_off_the_stock_of_water_first()
    {
        var losses = new Losses { Evaporation = Loss.Of(G(100)), ToppedUp = true };
        Batch batch = Mixes.Simple(0.5).ScaleTo(Yield.FromStocks(new Stock("water", G(1000))), losses);

        batch.BaseMass.Grams.Should().Be(900);
        batch.Explain("water").ToText().Should().StartWith("1. base = (1000 g - 100 g to top up) of water, in shortest supply, / 1 per unit of base = 900 g");
        Mixes.Simple().TryScaleTo(Yield.FromStocks(new Stock("water", G(100))), losses, out _, out ValueList<FormulaProblem> problems).Should().BeFalse();
        problems.Single().Message.Should().Be("The 100 g of water are gone with the 100 g that top up what boils off.");
    }

    [Fact]
    public void Other_stocks_do_not_top_up()
        => Mixes.TwoStage().ScaleTo(Yield.FromStocks(new Stock("pear-juice", G(1000))), new Losses { Evaporation = Loss.Percent(10), ToppedUp = true }).BaseMass.Grams.Should().Be(1000);

    private static (string Id, string? Line, double? Value, double? Limit, string Message) Problem(Formula formula, params Stock[] stocks)
    {
        formula.TryScaleTo(Yield.FromStocks(stocks), Losses.None, out _, out ValueList<FormulaProblem> problems).Should().BeFalse();
        FormulaProblem problem = problems.Should().ContainSingle().Subject;
        problem.Pointer.Should().BeEmpty();
        return (problem.Id, problem.Line, problem.Value, problem.Limit, problem.Message);
    }
}
