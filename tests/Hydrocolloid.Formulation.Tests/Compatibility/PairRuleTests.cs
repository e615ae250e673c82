using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Tests.Compatibility.Cases;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Pairs of hydrocolloids: what must be said, and what must not.</summary>
public sealed class PairRuleTests
{
    private static readonly RuleSet s_pairs = RuleSet.Standard.Only(
        "agents-weaken-each-other", "gelatin-clouds-with-gum", "agents-hydrated-together", "thickeners-gel-together", "gum-does-not-help", "blend-ratio");

    [Fact]
    public void Gelatin_type_b_takes_the_place_of_type_a_where_its_isoelectric_point_is_lower()
    {
        // Isoelectric points by a producer: type A 8–9, type B 4.8–5.4.
        Formula formula = PairCases.Blend(Pantry.AppleJuice.As("house-juice", "House juice").WithPh(6), Hydrocolloids.GelatinTypeA, 1.5, Hydrocolloids.XanthanGum, 0.1);

        Finding finding = formula.Review(s_pairs).Single();

        finding.Lines.Should().Equal("xanthan-gum", "gelatin-type-a");
        finding.Evidence[0].Limit.Min.Should().Be(8);
        finding.Remedies.Select(r => r.Id).Should().Equal("gelatin-type-b", "gum-left-out");
        finding.Remedies[0].Apply(formula).Review(s_pairs).Should().BeEmpty();
    }

    [Theory]
    [InlineData("locust-bean-gum")]
    [InlineData("guar-gum")]
    [InlineData("konjac-glucomannan-thickener")]
    public void Gelatin_does_not_cloud_with_a_gum_without_charge(string gum)
        => PairCases.Blend(Pantry.AppleJuice, Hydrocolloids.GelatinTypeA, 1.5, Catalogue.BuiltIn.Get(gum), 0.2).Review(s_pairs).Should().BeEmpty("only opposite charges meet");

    [Fact]
    public void Kappa_carrageenan_beside_gelatin_is_not_called_antagonistic()
        => PairCases.Blend(Pantry.WholeMilk, Hydrocolloids.GelatinTypeB, 1, Hydrocolloids.CarrageenanKappa, 0.1).Review(s_pairs)
            .Should().BeEmpty("two papers disagree, and over the isoelectric point they mix");

    [Fact]
    public void Xanthan_gum_with_guar_gum_thickens_and_does_not_gel()
        => PairCases.Blend(Pantry.Water, Hydrocolloids.XanthanGum, 0.1, Hydrocolloids.GuarGum, 0.2, Texture.Thickened).Review(s_pairs).Should().BeEmpty();

    [Fact]
    public void Xanthan_gum_with_locust_bean_gum_is_in_order_where_a_gel_is_wanted()
        => PairCases.Blend(Pantry.Water, Hydrocolloids.XanthanGum, 0.25, Hydrocolloids.LocustBeanGum, 0.25, Texture.Soft).Review(s_pairs).Should().BeEmpty();

    [Theory]
    [InlineData(0.9, 0.1)] // PC-017: 0.9 and 0.1 % of the liquid; the locust bean gum is a tenth of the two
    [InlineData(0.8, 0.2)]
    public void Agar_with_locust_bean_gum_at_handbook_ratios_is_in_order(double agar, double gum)
        => PairCases.Blend(Pantry.Water, Hydrocolloids.Agar, agar, Hydrocolloids.LocustBeanGum, gum).Review(s_pairs).Should().BeEmpty();

    [Fact]
    public void The_ratio_remedy_is_an_amount_of_the_second()
    {
        // Eating jellies of kappa-carrageenan and locust bean gum, 7:3 to 6:4: 0.63 % of kappa takes 0.27 % of the gum.
        Formula formula = PairCases.Blend(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.63, Hydrocolloids.LocustBeanGum, 0.07);

        Formula changed = formula.Review(s_pairs).Single(f => f.Id == "blend-ratio").Remedies.Single().Apply(formula);

        double kappa = changed.Proportions.PercentOfContinuousMix(changed.Line("carrageenan-kappa"));
        double gum = changed.Proportions.PercentOfContinuousMix(changed.Line("locust-bean-gum"));
        (gum / kappa).Should().BeApproximately(3.0 / 7, 3.0 / 7 * 0.005);
    }

    [Fact]
    public void A_pair_is_found_through_an_own_ingredient()
        => PairCases.Blend(Pantry.Water, Hydrocolloids.Agar.As("house-agar", "House agar"), 0.4, Hydrocolloids.CarrageenanKappa, 0.3).Review(s_pairs)
            .Should().Contain(f => f.Id == "agents-weaken-each-other");
}
