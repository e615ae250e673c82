using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Choosing;

public class SyneresisTests
{
    private static Formula Jelly(Ingredient agent, double percent, ServicePlan? service = null, Ingredient? with = null, double withPercent = 0) => Formula.Named("jelly")
        .Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p =>
        {
            p.Add(agent, Dose.Percent(percent).OfBase);
            if (with is not null)
            {
                p.Add(with, Dose.Percent(withPercent).OfBase);
            }
        })
        .Build().WithService(service ?? ServicePlan.None with { StoredFor = Duration.FromHours(24), Shape = PortionShape.Slice });

    private static SyneresisRisk RiskOf(Formula formula) => formula.SyneresisRisks().Single();

    /// <summary>The catalogue's own classification, by its documents.</summary>
    [Theory]
    [InlineData("agar", 0.6, SyneresisClass.High)]
    [InlineData("carrageenan-kappa", 0.7, SyneresisClass.High)]
    [InlineData("gellan-low-acyl", 0.3, SyneresisClass.Moderate)]
    [InlineData("sodium-alginate", 1, SyneresisClass.Moderate)]
    [InlineData("gelatin-type-a", 2, SyneresisClass.Low)]
    [InlineData("carrageenan-iota", 0.8, SyneresisClass.Low)]
    [InlineData("gellan-high-acyl", 0.4, SyneresisClass.Low)]
    public void Class_is_that_of_the_agent(string id, double percent, SyneresisClass expected)
    {
        SyneresisRisk risk = RiskOf(Jelly(Catalogue.BuiltIn.Get(id), percent));
        risk.Class.Should().Be(expected);
        risk.Reasons.Should().NotBeEmpty();
        risk.Reasons[0].Value.Should().StartWith("Tendency to weep: ");
    }

    [Fact]
    public void Every_tendency_of_the_catalogue_is_a_class()
        => Catalogue.BuiltIn.Hydrocolloids.SelectMany(a => a.Profile!.Facts.Where(f => f.Text.Value.StartsWith("Tendency to weep", StringComparison.Ordinal)).Select(_ => FormulaSyneresis.TendencyOf(a.Profile!).Class))
            .Should().HaveCountGreaterThan(20).And.NotContain(SyneresisClass.Unknown);

    [Fact]
    public void Locust_bean_gum_at_its_amount_keeps_agar_from_weeping_and_less_does_not()
    {
        // 0.1 % of the mix, common practice
        SyneresisRisk enough = RiskOf(Jelly(Hydrocolloids.Agar, 0.6, with: Hydrocolloids.LocustBeanGum, withPercent: 0.12));
        enough.Class.Should().Be(SyneresisClass.Low);
        enough.Evidence.Should().ContainSingle(e => e.Quantity.StartsWith("locust bean gum", StringComparison.Ordinal)).Which.IsWithin.Should().BeTrue();

        SyneresisRisk some = RiskOf(Jelly(Hydrocolloids.Agar, 0.6, with: Hydrocolloids.LocustBeanGum, withPercent: 0.05));
        some.Class.Should().Be(SyneresisClass.Moderate, "the gum makes the gel more elastic");
        some.Evidence.Should().Contain(e => !e.IsWithin);
        RiskOf(Jelly(Hydrocolloids.Agar, 0.6)).Remedies.Should().Contain(r => r.Id == "add-locust-bean-gum");
    }

    [Fact]
    public void Sixty_per_cent_of_sugar_stops_agar_weeping()
        // cookery-science study: none at 60 % sugar or more
        => RiskOf(Jelly(Hydrocolloids.Agar, 1, with: Pantry.Sucrose, withPercent: 170)).Class.Should().Be(SyneresisClass.Low);

    [Fact]
    public void Too_little_of_the_agent_weeps_more()
    {
        ServicePlan firm = ServicePlan.None with { StoredFor = Duration.FromHours(24), Texture = Texture.Firm };
        RiskOf(Jelly(Hydrocolloids.GelatinTypeA, 1.5, firm)).Class.Should().Be(SyneresisClass.Low);
        SyneresisRisk thin = RiskOf(Jelly(Hydrocolloids.GelatinTypeA, 0.8, firm));
        thin.Class.Should().Be(SyneresisClass.Moderate);
        thin.Evidence.Should().ContainSingle().Which.IsWithin.Should().BeFalse();
    }

    [Fact]
    public void Freezing_makes_it_high_and_eating_it_at_once_lowers_it()
    {
        SyneresisRisk frozen = RiskOf(Jelly(Hydrocolloids.GelatinTypeA, 2, ServicePlan.None with { StoredFor = Duration.FromHours(24), Frozen = true }));
        frozen.Class.Should().Be(SyneresisClass.High);
        frozen.Remedies.Should().Contain(r => r.Id == "chill-not-freeze");

        RiskOf(Jelly(Hydrocolloids.Agar, 0.6, ServicePlan.None with { StoredFor = Duration.Zero })).Class.Should().Be(SyneresisClass.Moderate);
        RiskOf(Jelly(Hydrocolloids.Agar, 0.6, ServicePlan.None)).Reasons.Should().Contain(r => r.Value.Contains("not stated"));
    }

    [Fact]
    public void Milk_and_what_is_not_known_have_no_class_and_a_thickener_no_risk()
    {
        Formula milk = Formula.Named("flan").Base(b => b.Share(Pantry.WholeMilk, 100)).Then("gel", p => p.Add(Hydrocolloids.CarrageenanKappa, Dose.Percent(0.2).OfBase)).Build();
        RiskOf(milk).Class.Should().Be(SyneresisClass.Unknown);
        Mixes.Simple(0.3, Hydrocolloids.XanthanGum).SyneresisRisks().Should().BeEmpty();
    }
}
