using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Batches;

public class WeighSheetTests
{
    private static Mass G(double grams) => Mass.FromGrams(grams);

    private static Balance Step(double grams) => Balance.WithDivision(G(grams));

    private static WeighLine Agar(double percent, double baseGrams, double division)
        => Mixes.Simple(percent).OfBase(baseGrams).WeighOn(Step(division)).Lines[1];

    [Theory]
    [InlineData(0.15, 0.1, 0.2)]
    [InlineData(0.25, 0.1, 0.3)]
    [InlineData(0.35, 0.1, 0.4)]
    [InlineData(1.005, 0.01, 1.01)]
    [InlineData(2.5, 1, 3)]
    [InlineData(0.049, 0.1, 0)]
    [InlineData(7.5, 5, 10)]
    [InlineData(999999.95, 0.1, 1000000)]
    public void Halves_round_away_from_zero(double grams, double division, double shown)
        => Step(division).Round(G(grams)).Grams.Should().Be(shown);

    [Fact]
    public void Balance_refuses_what_cannot_be_weighed()
    {
        FluentActions.Invoking(() => Step(0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Step(-0.1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Step(1001)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Step(0.1).Round(G(-1))).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Division_in_another_unit_is_the_same_balance()
        => Balance.WithDivision(Mass.FromMilligrams(100)).Should().Be(Step(0.1));

    [Fact]
    public void Error_of_the_dose_counts_every_rounded_line()
    {
        // 33.3 g and 0.333 g; on a 1 g balance 33 g and 0 g, on a 0.1 g balance 33.3 g and 0.3 g
        Batch batch = Mixes.Simple(1).OfBase(33.3);
        WeighLine fine = batch.WeighOn(Step(0.1)).Lines[1];
        fine.Exact.Grams.Should().BeApproximately(0.333, 1e-15);
        fine.Rounded.Grams.Should().Be(0.3);
        fine.RoundedDose!.PercentByMass.Should().BeApproximately(0.3 / 33.3 * 100, 1e-14);
        fine.ErrorPercent.Should().BeApproximately((0.3 / 33.3 * 100 - 1) * 100, 1e-11);

        WeighLine coarse = batch.WeighOn(Step(1)).Lines[1];
        coarse.Rounded.Grams.Should().Be(0);
        coarse.ErrorPercent.Should().Be(-100);
        coarse.ExceedsTolerance.Should().BeTrue();
    }

    [Fact]
    public void Rounding_of_the_reference_alone_moves_the_dose()
    {
        // 10.4 g base, 10 % = 1.04 g, on a 1 g balance 10 g and 1 g: the dose is 10 % again
        WeighLine line = Agar(10, 10.4, 1);
        line.ErrorPercent.Should().BeApproximately(0, 1e-12);

        // 10.6 g base, 10 % = 1.06 g: 11 g and 1 g
        Agar(10, 10.6, 1).ErrorPercent.Should().BeApproximately(-100.0 / 11, 1e-11);
    }

    [Theory]
    [InlineData(20 / 1.05, 5, false)]
    [InlineData(20 / 1.0501, 5.01, true)]
    [InlineData(20 / 0.95, -5, false)]
    [InlineData(20 / 0.9499, -5.01, true)]
    public void Exactly_five_percent_draws_no_warning_and_more_does(double wantedGrams, double error, bool warned)
    {
        // The base of 2100 g stays as it is on 20 g steps, the agar is shown as 20 g.
        WeighLine line = Agar(wantedGrams / 21, 2100, 20);

        (line.Rounded.Grams, line.ExceedsTolerance).Should().Be((20, warned));
        line.ErrorPercent.Should().BeApproximately(error, 1e-11);
    }

    [Theory]
    [InlineData(4.999999, true)]
    [InlineData(5, false)]
    [InlineData(5.000001, false)]
    public void Tolerance_is_the_callers(double tolerance, bool warned)
        => Mixes.Simple(100.0 / 95).OfBase(1000).WeighOn(Step(10), tolerance).Warnings.Any().Should().Be(warned);

    [Fact]
    public void Zero_dose_has_no_error()
    {
        WeighLine line = Agar(0, 100, 0.1);

        line.RoundedDose.Should().Be(Dose.Percent(0).OfBase);
        line.ErrorPercent.Should().BeNull();
        line.ExceedsTolerance.Should().BeFalse();
    }

    [Fact]
    public void Reference_that_rounds_to_nothing_loses_the_dose_and_says_so()
    {
        WeighSheet sheet = Mixes.Simple(50).OfBase(0.4).WeighOn(Step(1));

        sheet.Lines.Should().OnlyContain(l => l.RoundedDose == null && l.ErrorPercent == null && l.ExceedsTolerance);
    }

    [Fact]
    public void Dose_of_a_line_that_weighs_nothing_has_no_error_and_no_warning()
    {
        Formula formula = Formula.Named("f").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Pantry.Salt, Dose.Percent(0).OfBase).Add(Hydrocolloids.Agar, Dose.Percent(10).Of(Pantry.Salt))).Build();
        WeighLine line = formula.OfBase(100).WeighOn(Step(0.1)).Lines[2];

        (line.RoundedDose, line.ErrorPercent, line.ExceedsTolerance).Should().Be((null, null, false));
    }

    [Fact]
    public void Doses_of_total_water_preceding_and_line_are_worked_out_from_the_rounded_masses()
    {
        Ingredient juice = Mixes.Dry("juice").WithComposition(Composition.Per100Grams(water: 90));
        Formula formula = Formula.Named("f").Base(b => b.Share(juice, 100))
            .Then("1", p => p.Add(Mixes.Dry("a").WithComposition(Composition.Per100Grams(water: 0)), Dose.Percent(10).OfBase))
            .Then("2", p => p
                .Add(Mixes.Dry("b"), Dose.Percent(10).OfWater)
                .Add(Mixes.Dry("c"), Dose.Percent(10).OfPreceding)
                .Add(Mixes.Dry("d"), Dose.Percent(10).OfTotal)
                .Add(Mixes.Dry("e"), Dose.Percent(10).OfLine("a")))
            .Build();
        ValueList<WeighLine> lines = formula.OfBase(104).WeighOn(Step(1)).Lines;
        double[] shown = [.. lines.Select(l => l.Rounded.Grams)];

        shown[..4].Should().Equal(104, 10, 9, 11);
        lines[2].RoundedDose!.PercentByMass.Should().BeApproximately(9 / (104 * 0.9) * 100, 1e-12);
        lines[3].RoundedDose!.PercentByMass.Should().BeApproximately(11.0 / 114 * 100, 1e-12);
        lines[4].RoundedDose!.PercentByMass.Should().BeApproximately(shown[4] / shown.Sum() * 100, 1e-12);
        lines[5].RoundedDose!.PercentByMass.Should().BeApproximately(shown[5] / 10 * 100, 1e-12);
    }

    [Fact]
    public void Smallest_mass_within_a_tolerance_is_half_a_division_over_it()
    {
        Step(0.1).SmallestWithin(5).Grams.Should().BeApproximately(1, 1e-14);
        Step(1).SmallestWithin(5).Grams.Should().BeApproximately(10, 1e-13);
        FluentActions.Invoking(() => Step(1).SmallestWithin(0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Step(1).SmallestWithin(double.NaN)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Step(1).SmallestWithin(100.1)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Smallest_batch_is_decided_by_the_smallest_line()
    {
        Step(0.1).SmallestBatch(Mixes.TwoStage()).Grams.Should().BeApproximately(1 / 0.00111, 1e-9);
        Step(0.1).SmallestBatch(Mixes.Simple(0)).Grams.Should().BeApproximately(1, 1e-12);
    }

    [Fact]
    public void Sheet_as_text_shows_what_the_balance_shall_show()
        => Mixes.Simple(0.333).OfBase(1000).WeighOn(Step(0.1)).ToString().Should().Be("Water: 1000 g\nAgar: 3.3 g");
}
