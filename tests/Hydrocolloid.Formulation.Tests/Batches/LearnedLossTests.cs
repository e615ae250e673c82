using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Batches;

public class LearnedLossTests
{
    private static Mass G(double grams) => Mass.FromGrams(grams);

    private static StepWeighing Weighed(LossStep step, double before, double after) => new(step, G(before), G(after));

    private static LearnedLosses Learn(params StepWeighing[] weighings) => LearnedLosses.From(weighings);

    [Fact]
    public void Mean_counts_every_batch_the_same_and_spread_is_that_of_a_sample()
    {
        // 4 %, 5 % and 9 %: mean 6 %, deviations -2, -1, 3, variance 14/2 = 7
        LearnedLoss loss = Learn(Weighed(LossStep.Transfer, 100, 96), Weighed(LossStep.Transfer, 1000, 950), Weighed(LossStep.Transfer, 200, 182)).Of(LossStep.Transfer)!;

        loss.MeanPercent.Should().BeApproximately(6, 1e-12);
        loss.YieldPercent.Should().BeApproximately(94, 1e-12);
        loss.SpreadPercent.Should().BeApproximately(Math.Sqrt(7), 1e-12);
        loss.ToString().Should().Be("transfer 6 % ± 2.6 % (3 weighings)");
        loss.Explain().ToText().Should().Be("""
            1. loss 1 = (100 g - 96 g) / 100 g × 100 % = 4 %
            2. loss 2 = (1000 g - 950 g) / 1000 g × 100 % = 5 %
            3. loss 3 = (200 g - 182 g) / 200 g × 100 % = 9 %
            4. transfer = mean of 4 %, 5 %, 9 % = 6 %

            """.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void One_weighing_has_no_spread()
    {
        LearnedLoss loss = Learn(Weighed(LossStep.Straining, 500, 490)).Steps.Should().ContainSingle().Subject;

        (loss.MeanPercent, loss.SpreadPercent, loss.Weighings.Count).Should().Be((2, null, 1));
    }

    [Fact]
    public void Steps_are_learned_apart_and_carried_into_scaling_in_the_order_of_the_kitchen()
    {
        LearnedLosses learned = Learn(
            Weighed(LossStep.Trimming, 800, 720), Weighed(LossStep.Evaporation, 1000, 900), Weighed(LossStep.Transfer, 880, 836), Weighed(LossStep.Straining, 900, 882));

        learned.Steps.Select(s => s.Step).Should().Equal(LossStep.Evaporation, LossStep.Straining, LossStep.Transfer, LossStep.Trimming);
        learned.ToLosses().ToString().Should().Be("evaporation 10 %, straining 2 %, transfer 5 %, trimming 10 %");
        learned.ToLosses(toppedUp: true).ToppedUp.Should().BeTrue();

        // 1000 × 0.9 × 0.98 × 0.95 × 0.9
        Mixes.Simple().ScaleTo(Yield.Assembled(G(1000)), learned.ToLosses()).FinishedMass.Grams.Should().BeApproximately(754.11, 1e-9);
    }

    [Fact]
    public void Step_that_was_not_weighed_loses_nothing()
    {
        LearnedLosses learned = Learn(Weighed(LossStep.Transfer, 100, 100));

        learned.Of(LossStep.Trimming).Should().BeNull();
        learned.ToLosses().ToString().Should().Be("none");
    }

    [Theory]
    [InlineData(100, 100.1, "No step makes mass: 100.1 g came out of 100 g at transfer. Was the vessel tared?*")]
    [InlineData(0, 0, "Must be more than 0 g.*")]
    [InlineData(100, 0, "Must be more than 0 g.*")]
    [InlineData(-1, -2, "*")]
    public void Mass_that_grows_or_is_missing_is_refused(double before, double after, string message)
        => FluentActions.Invoking(() => Weighed(LossStep.Transfer, before, after)).Should().Throw<ArgumentOutOfRangeException>().WithMessage(message);

    [Fact]
    public void No_weighing_and_no_such_step_are_refused()
    {
        FluentActions.Invoking(() => Learn()).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Learn(null!)).Should().Throw<ArgumentNullException>();
        FluentActions.Invoking(() => LearnedLosses.From([null!])).Should().Throw<ArgumentNullException>();
        FluentActions.Invoking(() => Weighed((LossStep)4, 2, 1)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
