using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Storage: what is said to be harmed by it and is not, and the practitioner's case.</summary>
public sealed class StorageRuleTests
{
    public static TheoryData<string> FrostProof =>
    [
        "carrageenan-iota", // the one common carrageenan that stands it (FAO seaweed guide, recalled)
        "gellan-high-acyl", // good freeze-thaw stability (Imeson, recalled)
        "sodium-alginate", // calcium gels survive (Handbook of Hydrocolloids, recalled)
        "methylcellulose", // good (Handbook of Hydrocolloids, recalled)
        "curdlan", // strength and structure survive, some water separates (chapter abstract, read)
        "xanthan-gum", // −18 °C for 24 h did not change its rheology (xanthan-freezing, read)
    ];

    [Theory]
    [MemberData(nameof(FrostProof))]
    public void What_stands_freezing_is_not_warned_of(string agent)
        => Gel(Catalogue.BuiltIn.Get(agent), 0.5, new ServicePlan { Frozen = true }).Review().Should().NotContain(f => f.Id == "freezing-and-thawing");

    [Fact]
    public void Locust_bean_gum_does_not_save_frozen_agar()
    {
        // kaken-10780077: the breaking stress collapsed also with 0.5 % guar, locust bean gum or iota-carrageenan.
        Formula formula = Formula.Named("test").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase).Add(Hydrocolloids.LocustBeanGum, Dose.Percent(0.5).OfBase))
            .Serve(new ServicePlan { Frozen = true }).Build();

        Finding finding = formula.Review().Should().ContainSingle(f => f.Id == "freezing-and-thawing").Subject;

        finding.Severity.Should().Be(Severity.Conflict);
        finding.Remedies.Should().NotContain(r => r.Id == "gum-against-thaw-water");
    }

    [Fact]
    public void PC_020_frozen_panna_cotta_is_warned_of_and_not_blocked()
    {
        Formula formula = Formula.Named("PC-020").Base(b => b.Share(Pantry.Cream35, 70).Share(Pantry.WholeMilk, 30))
            .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(0.8).OfTotal)).Serve(new ServicePlan { Frozen = true }).Build();

        formula.Review().Should().ContainSingle(f => f.Id == "freezing-and-thawing").Which.Severity.Should().Be(Severity.Caution);
    }

    [Fact]
    public void The_gum_against_thaw_water_comes_in_its_published_ratio()
    {
        Formula formula = Gel(Hydrocolloids.CarrageenanKappa, 0.7, new ServicePlan { Frozen = true });
        Remedy remedy = formula.Review().Single(f => f.Id == "freezing-and-thawing").Remedies.Single(r => r.Id == "gum-against-thaw-water");

        Formula better = remedy.Apply(formula);

        // 7 parts of kappa to 3 of locust bean gum (jhej-kappa-lbg-1990). The gum dilutes the mix by 0.3 %.
        double ratio = better.Proportions.MassOf(better.Line("locust-bean-gum")) / better.Proportions.MassOf(better.Line("carrageenan-kappa"));
        ratio.Should().BeApproximately(3.0 / 7, 3.0 / 7 * 0.005);
        better.Review().Single(f => f.Id == "freezing-and-thawing").Severity.Should().Be(Severity.Information);
    }

    [Fact]
    public void A_gel_that_is_not_stored_does_not_dry()
        => Gel(Hydrocolloids.Agar, 0.5, new ServicePlan { Covered = false }).Review().Should().NotContain(f => f.Id == "drying-uncovered");

    private static Formula Gel(Ingredient agent, double percent, ServicePlan service) => Formula.Named("test")
        .Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase)).Serve(service).Build();
}
