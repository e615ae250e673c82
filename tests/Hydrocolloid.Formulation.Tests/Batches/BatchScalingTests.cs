using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Batches;

public class BatchScalingTests
{
    private static Mass G(double grams) => Mass.FromGrams(grams);

    [Fact]
    public void Base_mass_decides_when_it_is_asked_for()
    {
        Batch batch = Mixes.TwoStage().ScaleTo(Yield.OfBase(G(500)));

        batch.BaseMass.Grams.Should().Be(500);
        batch.AssembledMass.Grams.Should().BeApproximately(557.22, 1e-10);
        batch.FinishedMass.Should().Be(batch.AssembledMass);
        batch.LimitedBy.Should().BeNull();
    }

    [Fact]
    public void Assembled_mass_is_the_sum_of_the_lines()
    {
        Batch batch = Mixes.TwoStage().ScaleTo(Yield.Assembled(G(2000)));

        batch.AssembledMass.Grams.Should().BeApproximately(2000, 1e-9);
        batch.Lines.Sum(l => l.Mass.Grams).Should().BeApproximately(2000, 1e-9);
    }

    [Fact]
    public void Portions_are_taken_from_the_mass_named()
    {
        var losses = new Losses { Trimming = Loss.Percent(20) };
        Formula formula = Mixes.Simple();

        formula.ScaleTo(Yield.Portions(8, G(100)), losses).FinishedMass.Grams.Should().BeApproximately(800, 1e-9);
        formula.ScaleTo(Yield.Portions(8, G(100), YieldBasis.Assembled), losses).AssembledMass.Grams.Should().BeApproximately(800, 1e-9);
        formula.ScaleTo(Yield.Portions(8, G(100), YieldBasis.Base), losses).BaseMass.Grams.Should().Be(800);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1_000_001)]
    public void Portions_outside_their_range_are_refused_at_once(int count)
        => FluentActions.Invoking(() => Yield.Portions(count, G(100))).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void Yields_of_nothing_are_refused_at_once()
    {
        Func<Mass, Yield>[] yields = [Yield.OfBase, Yield.Assembled, Yield.Finished, m => Yield.Portions(1, m)];
        foreach (Func<Mass, Yield> yield in yields)
        {
            yield.Invoking(y => y(Mass.Zero)).Should().Throw<ArgumentOutOfRangeException>();
            yield.Invoking(y => y(G(-1))).Should().Throw<ArgumentOutOfRangeException>();
            yield.Invoking(y => y(G(1.1e9))).Should().Throw<ArgumentOutOfRangeException>();
        }

        FluentActions.Invoking(() => Yield.Portions(1000, Mass.FromTonnes(2))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Yield.Portions(1, G(1), (YieldBasis)3)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Batch_beyond_the_bound_is_refused_with_both_masses()
    {
        Formula formula = Mixes.Simple(100);
        formula.TryScaleTo(Yield.OfBase(G(6e8)), Losses.None, out Batch? batch, out ValueList<FormulaProblem> problems).Should().BeFalse();

        batch.Should().BeNull();
        FormulaProblem problem = problems.Should().ContainSingle().Subject;
        (problem.Id, problem.Pointer, problem.Line, problem.Value, problem.Limit).Should().Be(("batch-too-large", "", null, 1.2e9, 1e9));
        problem.Message.Should().Be("The batch would be 1200000000 g; at most 1000000000 g are possible.");
        formula.Invoking(f => f.ScaleTo(Yield.OfBase(G(6e8)))).Should().Throw<FormulaException>()
            .WithMessage("The batch of 'simple' cannot be:\n/: The batch would be 1200000000 g; at most 1000000000 g are possible.");
    }

    [Fact]
    public void Losses_of_the_process_plan_are_used_unless_others_are_given()
    {
        Formula formula = Mixes.Simple().WithProcess(new ProcessPlan { Losses = new Losses { Transfer = Loss.Percent(50) } });

        formula.ScaleTo(Yield.Assembled(G(100))).FinishedMass.Grams.Should().BeApproximately(50, 1e-12);
        formula.ScaleTo(Yield.Assembled(G(100)), Losses.None).FinishedMass.Grams.Should().BeApproximately(100, 1e-12);
    }

    [Fact]
    public void Batch_as_text_shows_the_yield_and_every_line()
        => Mixes.TwoStage().OfBase(1000).ToString().Should().Be(
            "two stages, 1000 g of base\n"
            + "  Pear juice: 1000 g\n"
            + "  Sucrose: 100 g\n"
            + "  Citric acid, anhydrous: 10 g\n"
            + "  Agar: 3.33 g\n"
            + "  Locust bean gum: 1.11 g");

    [Fact]
    public void Yield_as_text_says_which_mass_it_is()
    {
        Yield.OfBase(G(250)).ToString().Should().Be("250 g of base");
        Yield.Assembled(G(0.5)).ToString().Should().Be("0.5 g assembled");
        Yield.Finished(Mass.FromKilograms(1)).ToString().Should().Be("1000 g finished");
        Yield.Portions(12, G(80.5)).ToString().Should().Be("12 × 80.5 g finished");
        Yield.FromStocks(new Stock("agar", G(3)), new Stock("water", G(900))).ToString().Should().Be("as much as the stocks allow: 3 g of agar, 900 g of water");
    }
}
