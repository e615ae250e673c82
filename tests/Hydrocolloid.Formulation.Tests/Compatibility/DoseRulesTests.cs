using Hydrocolloid.Formulation.Compatibility;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Dose rules. The limits are those of the catalogue; the practitioner case is PC-003 (a copied formula, figures from a school question site).</summary>
public sealed class DoseRulesTests
{
    private static readonly RuleSet s_dose = RuleSet.Standard.Only("unknown-ingredient", "decimal-slip", "dose-under-gelling-minimum", "dose-outside-window");

    private static Formula With(Ingredient agent, double percentOfPreceding, Texture? texture = null) => Formula.Named("test")
        .Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(agent, Dose.Percent(percentOfPreceding).OfPreceding))
        .Serve(new ServicePlan { Texture = texture })
        .Build();

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.12)]
    public void Agar_below_its_gelling_minimum_is_a_conflict(double percent)
    {
        // Gelling minimum 0.15 %: a producers' comparison table ("viscous at or below 0.1 %, gels from 0.15 %").
        Finding finding = With(Hydrocolloids.Agar, percent).Review(s_dose).Should().ContainSingle().Subject;

        finding.Id.Should().Be("dose-under-gelling-minimum");
        finding.Severity.Should().Be(Severity.Conflict);
        finding.Lines.Should().Equal("agar");
        finding.Evidence.Should().ContainSingle();
        finding.Evidence[0].Value.Should().BeApproximately(percent / (100 + percent) * 100, 1e-12);
        finding.Evidence[0].Limit.Min.Should().Be(0.15);
        finding.Evidence[0].IsWithin.Should().BeFalse();
        finding.Citations.Should().NotBeEmpty();
    }

    [Fact]
    public void Agar_at_its_gelling_minimum_is_no_conflict()
        => With(Hydrocolloids.Agar, 0.15).Review(s_dose).Should().NotContain(f => f.Severity == Severity.Conflict);

    [Fact]
    public void A_second_agent_under_its_minimum_is_only_information_when_the_first_one_gels()
    {
        Formula formula = Formula.Named("blend").Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p
            .Add(Hydrocolloids.GellanLowAcyl, Dose.Percent(0.3).OfPreceding)
            .Add(Hydrocolloids.GellanHighAcyl, Dose.Percent(0.1).OfPreceding)).Build();

        Finding finding = formula.Review(s_dose).Should().ContainSingle(f => f.Id == "dose-under-gelling-minimum").Subject;

        finding.Severity.Should().Be(Severity.Information);
        finding.Lines.Should().Equal("gellan-high-acyl");
    }

    [Fact]
    public void A_slip_of_an_agent_beside_one_that_gels_is_a_caution()
    {
        Formula formula = Formula.Named("two").Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p
            .Add(Hydrocolloids.GellanLowAcyl, Dose.Percent(0.35).OfPreceding)
            .Add(Hydrocolloids.Agar, Dose.Percent(0.05).OfPreceding)).Serve(new ServicePlan { Texture = Texture.Firm }).Build();

        formula.Review(s_dose).Should().ContainSingle(f => f.Id == "decimal-slip").Which.Severity.Should().Be(Severity.Caution);
        formula.Without("gellan-low-acyl").Review(s_dose).Should().ContainSingle(f => f.Id == "decimal-slip").Which.Severity.Should().Be(Severity.Conflict);
    }

    /// <summary>Published ratios and totals: gellans 1:3 at 0.3 % (handbook), kappa and locust bean gum 65:35 within 0.4–1 % (handbook, recalled), xanthan and locust bean gum 1:1 within 0.2–1 % (handbook, recalled).</summary>
    [Theory]
    [InlineData("gellan-low-acyl", 0.075, "gellan-high-acyl", 0.225, Texture.Soft)]
    [InlineData("carrageenan-kappa", 0.42, "locust-bean-gum", 0.23, Texture.Firm)]
    [InlineData("xanthan-gum", 0.2, "locust-bean-gum", 0.2, Texture.Soft)]
    public void A_blend_at_its_working_dose_is_neither_a_slip_nor_outside_its_window(string first, double percent, string second, double other, Texture texture)
    {
        Formula Blend(double times) => Formula.Named("blend").Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p
            .Add(Catalogue.BuiltIn.Get(first), Dose.Percent(percent).OfPreceding)
            .Add(Catalogue.BuiltIn.Get(second), Dose.Percent(other * times).OfPreceding)).Serve(new ServicePlan { Texture = texture }).Build();

        Blend(1).Review(s_dose).Should().NotContain(f => f.Severity >= Severity.Caution);
        Blend(0.02).Review(s_dose).Should().Contain(f => f.Severity >= Severity.Caution, "that is no blend any more");
    }

    [Theory]
    [InlineData(0.45)]
    [InlineData(0.4)]
    [InlineData(0.7)]
    public void A_dose_in_the_window_of_the_texture_aimed_at_gives_no_finding(double percent)
        => With(Hydrocolloids.Agar, percent, Texture.Firm).Review(s_dose).Should().BeEmpty("the working window for firm agar gels is 0.4–0.7 %");

    [Theory]
    [InlineData(0.2, "softer")]
    [InlineData(1.0, "firmer")]
    public void A_dose_outside_the_window_of_the_texture_aimed_at_is_a_caution(double percent, string outcome)
    {
        Finding finding = With(Hydrocolloids.Agar, percent, Texture.Firm).Review(s_dose).Should().ContainSingle().Subject;

        finding.Id.Should().Be("dose-outside-window");
        finding.Severity.Should().Be(Severity.Caution);
        finding.Explanation.Should().Contain(outcome).And.Contain("0.4–0.7 %");
    }

    [Fact]
    public void Without_a_texture_a_dose_in_any_window_gives_no_finding()
        => With(Hydrocolloids.Agar, 1.0).Review(s_dose).Should().BeEmpty();

    [Fact]
    public void A_texture_without_a_known_dose_is_said_and_not_judged()
    {
        Finding finding = With(Hydrocolloids.GelatinTypeA, 1.5, Texture.FluidGel).Review(s_dose).Should().ContainSingle().Subject;

        finding.Severity.Should().Be(Severity.Information);
        finding.Explanation.Should().Contain("fluid-gel").And.Contain("not checked");
    }

    [Theory]
    [InlineData(0.05, 0.5)]
    [InlineData(0.0055, 0.55)]
    public void A_dose_ten_or_a_hundred_times_too_small_is_a_likely_slip_with_both_readings(double percent, double meant)
    {
        Finding finding = With(Hydrocolloids.Agar, percent, Texture.Firm).Review(s_dose).Should().ContainSingle("the slip stands for the low dose too").Subject;

        finding.Id.Should().Be("decimal-slip");
        finding.Severity.Should().Be(Severity.Conflict, "it will not gel");
        finding.Evidence.Should().HaveCount(2);
        finding.Evidence[0].Value.Should().BeApproximately(percent, percent * 0.001);
        finding.Evidence[1].Value.Should().BeApproximately(meant, meant * 0.01);
        finding.Explanation.Should().Contain(FormattableString.Invariant($"{meant} % of everything so far"));
    }

    [Fact]
    public void A_dose_ten_times_too_large_is_a_likely_slip_and_a_caution()
    {
        Finding finding = With(Hydrocolloids.Agar, 5, Texture.Firm).Review(s_dose).Should().ContainSingle().Subject;

        finding.Id.Should().Be("decimal-slip");
        finding.Severity.Should().Be(Severity.Caution);
    }

    [Fact]
    public void PC_003_sixty_nine_grams_in_fifty_is_read_as_0_69_grams()
    {
        Formula formula = Formula.Named("copied").Base(b => b.Weigh(Pantry.Water, UnitsNet.Mass.FromGrams(50)))
            .Then("gel", p => p.Weigh(Hydrocolloids.Agar, UnitsNet.Mass.FromGrams(69), DoseReference.Total)).Build();

        // PC-003: 57.98 % w/w, tolerance 0.5 %; likely 0.69 g.
        formula.Line("agar").Dose.PercentByMass.Should().BeApproximately(57.98, 57.98 * 0.005);
        Finding finding = formula.Review(s_dose).Should().ContainSingle().Subject;
        finding.Id.Should().Be("decimal-slip");
        finding.Severity.Should().Be(Severity.Conflict);
    }

    [Fact]
    public void Fillers_of_the_mix_do_not_push_a_dose_out_of_a_printed_figure()
    {
        // 0.1 % of everything so far is 0.0995 % of the mix once 0.45 % agar is in it too.
        Formula formula = Formula.Named("test").Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p
            .Add(Hydrocolloids.Agar, Dose.Percent(0.45).OfPreceding)
            .Add(Hydrocolloids.LocustBeanGum, Dose.Percent(0.1).OfPreceding)).Serve(new ServicePlan { Texture = Texture.Firm }).Build();

        formula.Review(s_dose).Should().BeEmpty();
    }

    [Fact]
    public void The_trades_tenth_of_a_percent_of_locust_bean_gum_is_not_called_a_slip()
        => With(Hydrocolloids.LocustBeanGum, 0.1).Review(s_dose).Should().BeEmpty("0.1 % of the rest is 0.0999 % of the mix, which the figure 0.1 % means");

    [Fact]
    public void Doses_are_judged_on_what_gels_not_on_the_pieces_folded_in()
    {
        // 0.25 % of everything is 0.5 % of the mix when half of it is fruit.
        Formula formula = Formula.Named("half fruit")
            .Base(b => b.Share(Pantry.PearJuice, 50).Share(Pantry.Pear, 50, l => l.Pieces()))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.25).OfPreceding))
            .Serve(new ServicePlan { Texture = Texture.Firm }).Build();

        formula.Review(s_dose).Should().BeEmpty();
    }

    [Fact]
    public void An_unknown_ingredient_is_reported()
    {
        Formula formula = With(Ingredient.Unknown("agarr"), 0.5);

        Finding finding = formula.Review(s_dose).Should().ContainSingle().Subject;

        finding.Id.Should().Be("unknown-ingredient");
        finding.Lines.Should().Equal("agarr");
    }

    [Fact]
    public void A_rule_that_throws_is_reported_and_the_others_are_not_lost()
    {
        ValueList<Finding> findings = With(Hydrocolloids.Agar, 0.1).Review(RuleSet.Standard.With(new Throwing()));

        findings.Should().Contain(f => f.Id == FormulaReview.RuleFailedId && f.Explanation.Contains("bad-rule"));
        findings[0].Severity.Should().Be(Severity.Conflict, "the most serious finding comes first");
    }

    [Fact]
    public void Findings_are_sorted_by_severity_and_then_by_line()
    {
        Formula formula = Formula.Named("two").Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p
            .Add(Hydrocolloids.XanthanGum, Dose.Percent(0.9).OfPreceding)
            .Add(Hydrocolloids.Agar, Dose.Percent(0.1).OfPreceding)).Build();

        formula.Review(s_dose).Select(f => f.Severity).Should().BeInDescendingOrder();
    }

    private sealed class Throwing : ICompatibilityRule
    {
        public string Id => "bad-rule";

        public IEnumerable<Finding> Check(ReviewContext context) => throw new InvalidOperationException("boom");
    }
}
