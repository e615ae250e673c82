using Hydrocolloid.Formulation.Tests.Compatibility.Cases;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Weeping and clarity: what must be said, and what must not.</summary>
public sealed class WeepingRuleTests
{
    private static readonly ServicePlan s_cubes = new() { StoredFor = Duration.FromHours(24), Shape = PortionShape.Cube };

    [Fact]
    public void Weeping_agar_gets_a_tenth_of_a_percent_of_locust_bean_gum()
    {
        // Common practice; the gum works with agar of Gelidium and Pterocladia (a review of agar), and the effect says so.
        Formula formula = DoseCases.In(Pantry.Water, Hydrocolloids.Agar, 0.5).WithService(s_cubes);

        Remedy remedy = formula.Review().Single(f => f.Id == "weeping").Remedies.Single(r => r.Id == "add-locust-bean-gum");
        Formula changed = remedy.Apply(formula);

        changed.Proportions.PercentOfContinuousMix(changed.Line("locust-bean-gum")).Should().BeApproximately(0.1, 0.001);
        remedy.Effect.Should().Contain("Gracilaria");
    }

    [Fact]
    public void Weeping_kappa_carrageenan_gets_three_parts_of_locust_bean_gum_to_seven()
    {
        // R16: 7:3 to 6:4, a study of eating jellies.
        Formula formula = DoseCases.In(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.7).WithService(s_cubes);

        Formula changed = formula.Review().Single(f => f.Id == "weeping").Remedies.Single(r => r.Id == "add-locust-bean-gum").Apply(formula);

        double ratio = changed.Proportions.PercentOfContinuousMix(changed.Line("locust-bean-gum")) / changed.Proportions.PercentOfContinuousMix(changed.Line("carrageenan-kappa"));
        ratio.Should().BeApproximately(3.0 / 7, 3.0 / 7 * 0.005);
    }

    [Fact]
    public void Weeping_gelatin_gets_xanthan_gum_and_never_locust_bean_gum()
    {
        // PC-018: xanthan gum 0.1–0.2 % is a usual start; locust bean gum is not established with gelatin.
        Formula formula = DoseCases.In(Pantry.Water, Hydrocolloids.GelatinTypeB, 3).WithService(s_cubes);

        Finding finding = formula.Review().Single(f => f.Id == "weeping");

        finding.Severity.Should().Be(Severity.Information);
        finding.Remedies.Select(r => r.Id).Should().Equal("add-xanthan-gum");
        finding.Evidence.Should().ContainSingle().Which.Limit.Min.Should().Be(0.1);
    }

    [Fact]
    public void Xanthan_gum_is_not_offered_where_it_would_cloud_with_the_gelatin()
        => DoseCases.In(Pantry.AppleJuice, Hydrocolloids.GelatinTypeA, 3).WithService(s_cubes).Review()
            .Should().NotContain(f => f.Id == "weeping", "at pH 3.5 gelatin type A and xanthan gum have opposite charges");

    [Theory]
    [InlineData("carrageenan-iota")]
    [InlineData("gellan-high-acyl")]
    [InlineData("methylcellulose")]
    public void Gels_that_hardly_weep_are_not_reported(string agent)
        => DoseCases.In(Pantry.Water, Catalogue.BuiltIn.Get(agent), 0.5).WithService(s_cubes).Review().Should().NotContain(f => f.Id == "weeping");

    [Fact]
    public void Nothing_is_said_of_weeping_where_nothing_is_stored_or_cut()
        => DoseCases.In(Pantry.Water, Hydrocolloids.Agar, 0.5).Review().Should().NotContain(f => f.Id == "weeping");

    [Fact]
    public void Gelatin_in_agar_keeps_it_from_weeping()
        => PairCases.Blend(Pantry.Water, Hydrocolloids.Agar, 0.5, Hydrocolloids.GelatinTypeB, 2).WithService(s_cubes).Review()
            .Should().NotContain(f => f.Id == "weeping" && f.Lines.Contains("agar"), "syneresis falls as gelatin rises at each level of agar (Niiya 1975)");

    [Fact]
    public void Vegans_are_not_offered_gelatin_for_a_clear_gel()
        => DoseCases.In(Pantry.AppleJuice, Hydrocolloids.Agar, 0.5).WithService(new ServicePlan { Clear = true, Diets = ValueList<Diet>.From([Diet.Vegan]) }).Review()
            .Single(f => f.Id == "gel-not-clear").Remedies.Should().BeEmpty();

    [Theory]
    [InlineData("gelatin-type-a")]
    [InlineData("gellan-low-acyl")]
    [InlineData("pectin-low-methoxyl")]
    public void Clear_gels_of_clear_juice_are_in_order(string agent)
        => DoseCases.In(Pantry.AppleJuice, Catalogue.BuiltIn.Get(agent), 1).WithService(new ServicePlan { Clear = true }).Review()
            .Should().NotContain(f => f.Id == "gel-not-clear" || f.Id == "liquid-not-clear");
}
