using CsCheck;
using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Batches;

public class LossesTests
{
    private static readonly Losses s_all = new()
    {
        Evaporation = Loss.Percent(10),
        Straining = Loss.Of(G(20)),
        Transfer = Loss.Percent(5),
        Trimming = Loss.Of(G(15)),
    };

    private static Mass G(double grams) => Mass.FromGrams(grams);

    private static Batch Assembled(double grams, Losses losses) => Mixes.Simple().ScaleTo(Yield.Assembled(G(grams)), losses);

    [Fact]
    public void Losses_follow_one_another_in_the_order_of_the_kitchen()
    {
        Batch batch = Assembled(1000, s_all);

        // 1000 - 100 = 900; - 20 = 880; × 0.95 = 836; - 15 = 821
        batch.EvaporatedWater.Grams.Should().BeApproximately(100, 1e-10);
        batch.FinishedMass.Grams.Should().BeApproximately(821, 1e-10);
        batch.TopUpWater.Grams.Should().Be(0);
    }

    [Fact]
    public void Water_put_back_cancels_the_evaporation()
    {
        Batch batch = Assembled(1000, s_all with { ToppedUp = true });

        // 1000 - 20 = 980; × 0.95 = 931; - 15 = 916
        batch.FinishedMass.Grams.Should().BeApproximately(916, 1e-10);
        batch.TopUpWater.Should().Be(batch.EvaporatedWater);
        batch.TopUpWater.Grams.Should().BeApproximately(100, 1e-10);
    }

    [Theory]
    [InlineData(false, 821)]
    [InlineData(true, 916)]
    public void Finished_mass_leads_back_to_the_assembled_mass(bool toppedUp, double finished)
        => Mixes.Simple().ScaleTo(Yield.Finished(G(finished)), s_all with { ToppedUp = toppedUp }).AssembledMass.Grams.Should().BeApproximately(1000, 1e-9);

    [Fact]
    public void Loss_is_divided_out_and_not_added()
        => Mixes.Simple().ScaleTo(Yield.Finished(G(950)), new Losses { Transfer = Loss.Percent(5) }).AssembledMass.Grams.Should().BeApproximately(1000, 1e-9);

    [Fact]
    public void Fixed_loss_does_not_grow_with_the_batch()
    {
        var losses = new Losses { Straining = Loss.Of(G(30)) };

        Assembled(100, losses).FinishedMass.Grams.Should().BeApproximately(70, 1e-12);
        Assembled(1000, losses).FinishedMass.Grams.Should().BeApproximately(970, 1e-10);
    }

    [Fact]
    public void Forward_and_back_is_the_identity()
    {
        Gen<Loss> loss = Gen.OneOf(Gen.Double[0, 90].Select(Loss.Percent), Gen.Double[0, 500].Select(g => Loss.Of(G(g))));
        Formula formula = Mixes.Simple();
        Gen.Select(Gen.Double[1, 5000], loss, loss, loss, loss, Gen.Bool).Sample((finished, evaporation, straining, transfer, trimming, toppedUp) =>
        {
            var losses = new Losses { Evaporation = evaporation, Straining = straining, Transfer = transfer, Trimming = trimming, ToppedUp = toppedUp };

            // A batch that would have to boil off more water than it holds has no forward way to compare.
            // The inverse divides by at least 0.1 four times, which spreads the rounding of a double (1e-16) over four orders of magnitude.
            return !formula.TryScaleTo(Yield.Finished(G(finished)), losses, out Batch? batch, out _)
                || Math.Abs(batch.FinishedMass.Grams - finished) <= 1e-11 * batch.AssembledMass.Grams;
        });
    }

    [Fact]
    public void Losses_that_leave_nothing_are_refused_with_what_they_would_leave()
    {
        FormulaProblem problem = Refused(Mixes.Simple(), 100, new Losses { Straining = Loss.Of(G(60)), Trimming = Loss.Of(G(50)) });

        (problem.Id, problem.Pointer, problem.Limit).Should().Be(("nothing-left", "/process/losses", 0));
        problem.Value.Should().BeApproximately(-10, 1e-10);
        problem.Message.Should().Be("The losses (straining 60 g, trimming 50 g) leave -10 g of 100 g.");
    }

    [Fact]
    public void More_water_than_there_is_cannot_boil_off()
    {
        Ingredient juice = Mixes.Dry("juice").WithComposition(Composition.Per100Grams(water: 80));
        Formula formula = Formula.Named("f").Base(b => b.Share(juice, 100)).Build();
        FormulaProblem problem = Refused(formula, 100, new Losses { Evaporation = Loss.Percent(81), ToppedUp = true });

        (problem.Id, problem.Pointer, problem.Value, problem.Limit).Should().Be(("evaporation-too-large", "/process/losses/evaporation", 81, 80));
        problem.Message.Should().Be("81 g shall boil off, but the mix holds at most 80 g of water.");
        formula.ScaleTo(Yield.Assembled(G(100)), new Losses { Evaporation = Loss.Percent(80) }).FinishedMass.Grams.Should().BeApproximately(20, 1e-12);
    }

    [Fact]
    public void Line_of_unknown_water_counts_as_all_water_and_the_others_as_they_are()
    {
        Ingredient juice = Mixes.Dry("juice").WithComposition(Composition.Per100Grams(water: 80));
        Formula formula = Mixes.Simple(1).WithIngredient("water", juice).WithIngredient("agar", Mixes.Dry("powder"));
        FormulaProblem problem = Refused(formula, 101, new Losses { Evaporation = Loss.Of(G(82)) });

        problem.Id.Should().Be("evaporation-too-large");
        problem.Limit.Should().BeApproximately(81, 1e-12);
    }

    [Fact]
    public void Water_that_is_not_known_limits_evaporation_only_by_the_whole_mix()
    {
        Formula formula = Formula.Named("f").Base(b => b.Share(Mixes.Dry("mystery"), 100)).Build();

        formula.ScaleTo(Yield.OfBase(G(100)), new Losses { Evaporation = Loss.Percent(99) }).FinishedMass.Grams.Should().BeApproximately(1, 1e-10);
        formula.TryScaleTo(Yield.OfBase(G(100)), new Losses { Evaporation = Loss.Of(G(101)), ToppedUp = true }, out _, out ValueList<FormulaProblem> problems)
            .Should().BeFalse();
        problems.Single().Id.Should().Be("evaporation-too-large");
    }

    [Fact]
    public void Too_much_evaporation_and_nothing_left_are_reported_together()
    {
        Mixes.Simple().TryScaleTo(Yield.Assembled(G(100)), new Losses { Evaporation = Loss.Of(G(150)) }, out _, out ValueList<FormulaProblem> problems).Should().BeFalse();
        problems.Select(p => p.Id).Should().Equal("evaporation-too-large", "nothing-left");
    }

    [Fact]
    public void Loss_that_needs_a_batch_beyond_the_bound_is_refused()
    {
        Mixes.Simple().TryScaleTo(Yield.Finished(G(1e6)), new Losses { Transfer = Loss.Percent(99.99999999999999) }, out _, out ValueList<FormulaProblem> problems)
            .Should().BeFalse();
        problems.Single().Id.Should().Be("batch-too-large");
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(100)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Percentage_that_cannot_be_lost_is_refused(double percent)
        => FluentActions.Invoking(() => Loss.Percent(percent)).Should().Throw<ArgumentOutOfRangeException>()
            .WithMessage("A loss must be at least 0 % and below 100 %, but is *");

    [Fact]
    public void Negative_mass_cannot_be_lost()
        => FluentActions.Invoking(() => Loss.Of(G(-1))).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void Losses_as_text_name_the_steps_in_order()
    {
        Losses.None.ToString().Should().Be("none");
        (s_all with { ToppedUp = true }).ToString().Should().Be("evaporation 10 % (topped up), straining 20 g, transfer 5 %, trimming 15 g");
    }

    private static FormulaProblem Refused(Formula formula, double assembled, Losses losses)
    {
        formula.TryScaleTo(Yield.Assembled(G(assembled)), losses, out _, out ValueList<FormulaProblem> problems).Should().BeFalse();
        return problems.Should().ContainSingle().Subject;
    }
}
