using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Formulas;

public class DoseByReferenceTests
{
    [Theory]
    [InlineData(0.2, 2.000)]
    [InlineData(0.5, 5.000)]
    public void Thousand_grams_of_liquid_take_the_grams_of_common_practice(double percent, double grams)
        => Mixes.Simple(percent).OfBase(1000).MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(grams, 1e-12);

    [Fact]
    public void Doses_of_the_preceding_mix_count_the_seasoning()
    {
        Batch batch = Mixes.TwoStage().OfBase(1000);

        batch.MassOf(Pantry.Sucrose).Grams.Should().BeApproximately(100, 1e-12);
        batch.MassOf(Pantry.CitricAcid).Grams.Should().BeApproximately(10, 1e-12);
        batch.MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(3.33, 1e-12);
        batch.MassOf(Hydrocolloids.LocustBeanGum).Grams.Should().BeApproximately(1.11, 1e-12);
        batch.AssembledMass.Grams.Should().BeApproximately(1114.44, 1e-10);
    }

    [Fact]
    public void Same_percentages_of_the_base_give_another_answer()
    {
        Batch batch = Mixes.TwoStage(p => p.OfBase).OfBase(1000);

        batch.MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(3.00, 1e-12);
        batch.MassOf(Hydrocolloids.LocustBeanGum).Grams.Should().BeApproximately(1.00, 1e-12);
    }

    [Fact]
    public void Same_percentages_of_the_total_give_a_third_answer()
    {
        Batch batch = Mixes.TwoStage(p => p.OfTotal).OfBase(1000);

        // T = 1110/(1 - 0.004)
        batch.AssembledMass.Grams.Should().BeApproximately(1114.457831325301, 1e-9);
        batch.MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(3.343373493975904, 1e-12);
        batch.MassOf(Hydrocolloids.LocustBeanGum).Grams.Should().BeApproximately(1.114457831325301, 1e-12);
    }

    [Fact]
    public void Lines_of_one_phase_do_not_count_each_other()
    {
        Formula formula = Formula.Named("one phase")
            .Base(b => b.Share(Pantry.Water, 100))
            .Then("all", p => p.Add(Pantry.Sucrose, Dose.Percent(10).OfPreceding).Add(Hydrocolloids.Agar, Dose.Percent(1).OfPreceding))
            .Build();

        formula.OfBase(1000).MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(10, 1e-12);
    }

    [Fact]
    public void Lines_of_a_later_phase_count_the_earlier_phase()
    {
        Formula formula = Formula.Named("two phases")
            .Base(b => b.Share(Pantry.Water, 100))
            .Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(10).OfPreceding))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfPreceding))
            .Build();

        formula.OfBase(1000).MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(11, 1e-12);
    }

    [Fact]
    public void Dose_of_the_water_counts_only_the_water_before_the_phase()
    {
        Ingredient syrup = Mixes.Dry("syrup").WithComposition(Composition.Per100Grams(water: 20, sugars: 80));
        Ingredient juice = Mixes.Dry("juice").WithComposition(Composition.Per100Grams(water: 90));
        Formula formula = Formula.Named("water")
            .Base(b => b.Share(juice, 100))
            .Then("sweeten", p => p.Add(syrup, Dose.Percent(50).OfBase))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfWater))
            .Build();

        // 900 g from the juice, 100 g from the syrup
        formula.OfBase(1000).MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(10, 1e-12);
    }

    [Fact]
    public void Dose_of_a_line_follows_that_line()
    {
        Formula formula = Formula.Named("blend")
            .Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p
                .Add(Hydrocolloids.Agar, Dose.Percent(0.9).OfBase)
                .Add(Hydrocolloids.LocustBeanGum, Dose.Percent(10).Of(Hydrocolloids.Agar)))
            .Build();

        formula.OfBase(1000).MassOf(Hydrocolloids.LocustBeanGum).Grams.Should().BeApproximately(0.9, 1e-12);
        formula.WithDose("agar", Dose.Percent(0.5).OfBase).OfBase(1000).MassOf(Hydrocolloids.LocustBeanGum).Grams.Should().BeApproximately(0.5, 1e-12);
    }

    [Fact]
    public void Line_of_the_total_can_be_dosed_on_in_turn()
    {
        Formula formula = Formula.Named("mixed")
            .Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p
                .Add(Hydrocolloids.Agar, Dose.Percent(1).OfTotal)
                .Add(Pantry.Sucrose, Dose.Percent(500).Of(Hydrocolloids.Agar)))
            .Then("last", p => p.Add(Pantry.Salt, Dose.Percent(1).OfPreceding))
            .Build();
        Batch batch = formula.OfBase(1000);

        double agar = batch.MassOf(Hydrocolloids.Agar).Grams;
        agar.Should().BeApproximately(batch.AssembledMass.Grams / 100, 1e-12);
        batch.MassOf(Pantry.Sucrose).Grams.Should().BeApproximately(5 * agar, 1e-12);
        batch.MassOf(Pantry.Salt).Grams.Should().BeApproximately((1000 + 6 * agar) / 100, 1e-12);
        batch.Lines.Sum(l => l.Mass.Grams).Should().BeApproximately(batch.AssembledMass.Grams, 1e-10);
    }

    [Fact]
    public void Reference_chosen_at_run_time_is_the_one_named()
    {
        Dose.Percent(1).Of(DoseReference.Water).Should().Be(Dose.Percent(1).OfWater);
        Dose.Percent(1).Of(Hydrocolloids.Agar).Should().Be(Dose.Percent(1).OfLine("agar"));
        Dose.Share(Ratio.FromDecimalFractions(0.25)).OfBase.Should().Be(Dose.Percent(25).OfBase);
    }

    [Fact]
    public void Weights_become_percentages_of_the_chosen_reference()
    {
        Formula formula = Formula.Named("weighed")
            .Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(750)).Weigh(Pantry.AppleJuice, Mass.FromGrams(250)))
            .Then("sweeten", p => p.Weigh(Pantry.Sucrose, Mass.FromGrams(250), DoseReference.Base))
            .Then("gel", p => p.Weigh(Hydrocolloids.Agar, Mass.FromGrams(10), DoseReference.Preceding))
            .Build();

        formula.Base.Parts.Select(p => p.PercentOfBase).Should().Equal(75, 25);
        formula.Line("sucrose").Dose.Should().Be(Dose.Percent(25).OfBase);
        formula.Line("agar").Dose.PercentByMass.Should().BeApproximately(0.8, 1e-14);
        formula.Line("agar").Dose.Reference.Should().Be(DoseReference.Preceding);
        formula.OfBase(1000).MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(10, 1e-12);
    }

    [Fact]
    public void Dosed_line_may_stand_beside_weighed_ones()
    {
        Formula formula = Formula.Named("both")
            .Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(500)))
            .Then("gel", p => p.Weigh(Hydrocolloids.Agar, Mass.FromGrams(5), DoseReference.Total).Add(Pantry.Salt, Dose.Percent(1).OfTotal))
            .Build();

        Batch batch = formula.OfBase(500);
        batch.MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(5, 1e-12);
        batch.MassOf(Pantry.Salt).Grams.Should().BeApproximately(505.0 / 99, 1e-12);
    }

    [Fact]
    public void Pieces_count_in_the_total_but_not_in_the_mix_that_gels()
    {
        Formula formula = Formula.Named("pieces")
            .Base(b => b.Share(Pantry.Water, 50).Share(Pantry.Pear, 50, l => l.Pieces()))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase))
            .Build();
        FormulaLine agar = formula.Line(Hydrocolloids.Agar);

        formula.Proportions.Total.Should().BeApproximately(1.005, 1e-15);
        formula.Proportions.ContinuousMix.Should().BeApproximately(0.505, 1e-15);
        formula.Proportions.PercentOfTotal(agar).Should().BeApproximately(0.5 / 1.005, 1e-14);
        formula.Proportions.PercentOfContinuousMix(agar).Should().BeApproximately(0.5 / 0.505, 1e-14);
    }

    [Fact]
    public void Labels_keep_two_lines_of_one_ingredient_apart()
    {
        Formula formula = Formula.Named("twice")
            .Base(b => b.Share(Pantry.Water, 100))
            .Then("first", p => p.Add(Pantry.Sucrose, Dose.Percent(5).OfBase))
            .Then("second", p => p.Add(Pantry.Sucrose, Dose.Percent(7).OfBase, l => l.Labelled("dusting")))
            .Build();

        Batch batch = formula.OfBase(100);
        batch.MassOf("sucrose").Grams.Should().BeApproximately(5, 1e-12);
        batch.MassOf("dusting").Grams.Should().BeApproximately(7, 1e-12);
        batch.MassOf(Pantry.Sucrose).Grams.Should().BeApproximately(5, 1e-12);
    }

    [Fact]
    public void Masses_are_filled_into_a_span_in_the_order_of_the_lines()
    {
        Formula formula = Mixes.TwoStage();
        Span<double> grams = stackalloc double[6];
        formula.MassesInto(Mass.FromKilograms(1), grams);

        grams[..5].ToArray().Should().Equal(formula.OfBase(1000).Lines.Select(l => l.Mass.Grams));
        grams[5].Should().Be(0);
    }

    [Fact]
    public void Span_too_short_is_refused_with_both_counts()
        => FluentActions.Invoking(() => Mixes.TwoStage().MassesInto(Mass.FromGrams(1), new double[4]))
            .Should().Throw<ArgumentException>().WithMessage("Needs room for 5 masses, but has 4.*");

    [Fact]
    public void Unknown_line_is_refused_with_the_lines_there_are()
        => FluentActions.Invoking(() => Mixes.Simple().Line("xanthan"))
            .Should().Throw<ArgumentException>().WithMessage("The formula has no line 'xanthan'. Its lines: water, agar.*");

    [Fact]
    public void Line_of_a_longer_formula_has_no_mass_here()
        => FluentActions.Invoking(() => Mixes.Simple().Proportions.MassOf(Mixes.TwoStage().Line("agar")))
            .Should().Throw<ArgumentException>().WithMessage("agar is not a line of this formula.*");

    [Fact]
    public void Preceding_mass_and_water_are_given_for_each_phase_and_for_everything()
    {
        Proportions proportions = Mixes.TwoStage().Proportions;

        proportions.PrecedingMass(0).Should().Be(1);
        proportions.PrecedingMass(1).Should().BeApproximately(1.11, 1e-15);
        proportions.PrecedingMass(2).Should().Be(proportions.Total);
        proportions.PrecedingWater(0).Should().BeApproximately(Pantry.PearJuice.Composition!.Value.WaterPercent!.Value / 100, 1e-15);
        FluentActions.Invoking(() => proportions.PrecedingMass(3)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => proportions.PrecedingWater(-1)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
