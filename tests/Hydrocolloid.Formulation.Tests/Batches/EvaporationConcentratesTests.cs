using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Batches;

public sealed class EvaporationConcentratesTests
{
    private static Batch Boiled(bool toppedUp) => Formula.Named("test").Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase)).Build()
        .ScaleTo(Yield.OfBase(Mass.FromGrams(1000)), new Losses { Evaporation = Loss.Of(Mass.FromGrams(105)), ToppedUp = toppedUp });

    [Fact]
    public void Water_that_boils_off_concentrates_the_agent()
        => Boiled(toppedUp: false).PercentOfContinuousMixAsSet("agar").Should().BeApproximately(5.0 / 900 * 100, 1e-12, "5 g in 1005 g - 105 g");

    [Fact]
    public void Water_put_back_leaves_the_concentration_as_it_was()
        => Boiled(toppedUp: true).PercentOfContinuousMixAsSet("agar").Should().BeApproximately(5.0 / 1005 * 100, 1e-12);
}
