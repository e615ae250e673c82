using Hydrocolloid.Formulation.Compatibility.Rules;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Tests.Compatibility.Cases;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Safety and the law of the market: published test values, and what gives no finding.</summary>
public sealed class SafetyRuleTests
{
    [Theory]
    [InlineData('B', 3.4, 0.98, false)] // fruit jelly, not packaged
    [InlineData('B', 4.19, 0.99, false)]
    [InlineData('B', 4.2, 0.99, true)]
    [InlineData('B', 4.6, 0.92, false)]
    [InlineData('B', 4.6, 0.921, true)]
    [InlineData('B', 4.61, 0.92, true)]
    [InlineData('B', 5.0, 0.9, false)]
    [InlineData('B', 5.01, 0.9, true)]
    [InlineData('B', 5.01, 0.879, false)]
    [InlineData('B', 6.6, 0.99, true)] // milk or cream gel, cooked, not packaged
    [InlineData('B', 6.0, 0.85, false)] // sugar-rich paste
    [InlineData('A', 4.6, 0.99, false)] // acid gel, hot filled and sealed
    [InlineData('A', 4.61, 0.99, true)]
    [InlineData('A', 5.6, 0.95, false)]
    [InlineData('A', 5.61, 0.95, true)]
    [InlineData('A', 5.61, 0.92, false)]
    [InlineData('A', 6.5, 0.99, true)] // milk gel, cooked and sealed
    [InlineData('A', 5.0, 0.93, false)]
    public void Food_code_1_201_10_tables_A_and_B(char table, double ph, double waterActivity, bool needsAssessment)
        => FoodCodeTables.NeedsAssessment(table == 'A', ph, waterActivity).Should().Be(needsAssessment);

    [Theory]
    [InlineData("agar", "soft-candy", 1.3, 1.2)] // 21 CFR 184.1115
    [InlineData("agar", "fruit-dessert-gels", 0.9, 0.25)] // all other food categories
    [InlineData("sodium-alginate", "gelatins-and-puddings", 4.1, 4.0)] // 21 CFR 184.1724
    [InlineData("gum-karaya", "all-other-food-categories", 0.01, 0.002)] // 21 CFR 184.1349
    public void Above_the_ceiling_of_21_CFR_is_a_caution(string agent, string category, double percent, double ceiling)
        => Ceilings(agent, category, percent).Should().ContainSingle().Which.Evidence[0].Limit.Max.Should().Be(ceiling);

    [Theory]
    [InlineData("agar", "confections-and-frostings", 1.9)] // within 2.0 %
    [InlineData("guar-gum", "soups-and-soup-mixes", 0.7)] // within 0.8 %
    [InlineData("pectin-high-methoxyl", "jams-and-jellies", 1)] // no ceiling in numbers
    [InlineData("xanthan-gum", "sauces", 0.5)]
    public void Within_the_ceiling_of_21_CFR_nothing_is_said(string agent, string category, double percent)
        => Ceilings(agent, category, percent).Should().BeEmpty();

    [Theory]
    [InlineData("locust-bean-gum", "gelatins-and-puddings", "gelatins-puddings-and-fillings")]
    [InlineData("guar-gum", "jams-and-jellies", "jams-and-jellies-commercial")]
    [InlineData("guar-gum", "cheeses", "cheese")]
    [InlineData("gum-arabic", "candy", "hard-candy-and-cough-drops")]
    [InlineData("gum-arabic", "snack-foods", "snack-foods")]
    [InlineData("guar-gum", "fruit-desserts", "all-other-food-categories")]
    public void The_most_specific_category_counts_and_of_two_alike_the_lower(string additive, string asked, string chosen)
        => UsCeilingRule.CeilingFor(Additives.All.Single(a => a.Id == additive), asked)!.Category.Should().Be(chosen);

    [Fact]
    public void Every_ceiling_stands_in_the_text_of_its_rule()
    {
        foreach (Additive additive in Additives.All)
        {
            foreach (UsCeiling ceiling in additive.UsCeilings.Where(c => c.Percent.Citation.Source.Id != "us-21-cfr-172-780"))
            {
                additive.UsRule!.Value.Should().Contain(" " + Numbers.Significant(ceiling.Percent.Value, 4), $"{additive.Name} states {ceiling.Category}");
            }
        }

        Additives.All.Where(a => !a.UsCeilings.IsEmpty).Should().HaveCount(16, "so many sections of 21 CFR state a table");
    }

    [Theory]
    [InlineData("agar", "eu-95-2")]
    [InlineData("sodium-alginate", "eu-95-2")]
    [InlineData("carrageenan-kappa", "eu-95-2")]
    [InlineData("locust-bean-gum", "eu-95-2")]
    [InlineData("guar-gum", "eu-95-2")]
    [InlineData("gum-tragacanth", "eu-95-2")]
    [InlineData("gum-arabic", "eu-95-2")]
    [InlineData("xanthan-gum", "eu-95-2")]
    [InlineData("tara-gum", "eu-95-2")]
    [InlineData("gellan-low-acyl", "eu-95-2")]
    [InlineData("pectin-amidated-low-methoxyl", "eu-95-2")]
    [InlineData("konjac-glucomannan", "eu-1333-2008")]
    [InlineData("propylene-glycol-alginate", "jelly-ban-press-2004")] // E 405: in the suspension of 2004, not in the later list; the text is named
    public void The_EU_bars_it_from_mini_cups(string agent, string source)
        => MiniCup(agent).Should().ContainSingle().Which.Citations.Single().Source.Id.Should().Be(source);

    [Theory]
    [InlineData("gelatin-type-a")] // melts in the mouth; not on the list, though a whole piece can still choke
    [InlineData("gum-karaya")]
    [InlineData("methylcellulose")]
    [InlineData("cassia-gum")]
    [InlineData("starch-maize")]
    public void The_EU_does_not_bar_it_from_mini_cups(string agent) => MiniCup(agent).Should().BeEmpty();

    [Fact]
    public void Firm_cubes_for_anyone_are_no_trouble()
        => SafetyCases.Of(Hydrocolloids.Agar, 0.6, new ServicePlan { Audience = Audience.General, Shape = PortionShape.Cube, Texture = Texture.Firm })
            .Review().Should().NotContain(f => f.Id == "choking-shape", "agar breaks up when it is chewed; the caution is for young children and for mini-cups");

    [Theory]
    [InlineData(0.1, false)]
    [InlineData(0.4, true)] // with carrageenan, 0.3–0.6 % makes the elastic jelly that the bans are about
    public void A_little_konjac_that_only_thickens_is_no_choking_trouble(double percent, bool warned)
    {
        Formula formula = Formula.Named("test").Base(b => b.Share(Pantry.PearJuice, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase).Add(Hydrocolloids.KonjacGlucomannanThickener, Dose.Percent(percent).OfBase))
            .Serve(new ServicePlan { Shape = PortionShape.Sphere, Audience = Audience.General }).Build();

        formula.Review().Any(f => f.Id == "choking-shape").Should().Be(warned);
    }

    [Theory]
    [InlineData("strawberry-juice", "under pH 4.2 table B asks for nothing")]
    [InlineData("lemon-juice", "under pH 4.2 table B asks for nothing")]
    public void A_fruit_jelly_is_not_called_perishable(string juice, string because)
        => SafetyCases.Of(Hydrocolloids.Agar, 0.5, new ServicePlan { StoredFor = Duration.FromHours(48) }, Catalogue.BuiltIn.Get(juice))
            .Review().Should().NotContain(f => f.Id == "perishable", because);

    [Fact]
    public void Nothing_is_said_of_keeping_if_it_is_not_kept()
        => SafetyCases.Of(Hydrocolloids.GelatinTypeA, 1, ServicePlan.None, Pantry.WholeMilk).Review().Should().NotContain(f => f.Id == "perishable");

    [Theory]
    [InlineData(10, 49)] // ethanol-water-flash-points, read
    [InlineData(20, 36)]
    [InlineData(40, 26)]
    [InlineData(15, 42.5)] // half way between two points
    public void Flash_point_of_a_spirit(double abv, double celsius) => FlammableVapourRule.FlashPoint(abv).Should().BeApproximately(celsius, 1e-9);

    [Fact]
    public void Under_the_first_point_of_the_list_no_flash_point_is_invented() => FlammableVapourRule.FlashPoint(9.9).Should().BeNull();

    [Fact]
    public void Infants_and_dysphagia_get_no_remedy_only_a_clinician()
    {
        foreach (Audience audience in new[] { Audience.Infants, Audience.Dysphagia })
        {
            Finding finding = SafetyCases.Of(Hydrocolloids.XanthanGum, 0.3, new ServicePlan { Audience = audience }).Review().Single(f => f.Id == "clinical-audience");

            finding.Severity.Should().Be(Severity.Conflict);
            finding.Explanation.Should().Contain("clinician");
            finding.Remedies.Should().BeEmpty();
        }
    }

    [Fact]
    public void Every_finding_on_safety_defers_to_the_local_code()
    {
        string[] ids = ["choking-shape", "eu-jelly-mini-cup", "konjac-in-jelly-sweets", "eu-konjac-maximum", "eu-not-listed", "us-maximum-use", "flammable-vapour", "perishable", "warm-holding", "allergen-present"];
        foreach (RuleCase rule in RuleCases.All.Where(c => ids.Contains(c.RuleId)))
        {
            rule.Triggers().Review().Where(f => f.Id == rule.RuleId).Should().OnlyContain(f => f.Explanation.Contains("the law where you work"), rule.Name);
        }
    }

    private static IEnumerable<Finding> Ceilings(string agent, string category, double percentOfFood) => Formula.Named("test")
        .Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p.Add(Catalogue.BuiltIn.Get(agent), Dose.Percent(percentOfFood).OfTotal))
        .Serve(SafetyCases.Sold(Market.UnitedStates, category)).Build().Review().Where(f => f.Id == "us-maximum-use");

    private static IEnumerable<Finding> MiniCup(string agent) => SafetyCases
        .Of(Catalogue.BuiltIn.Get(agent), 0.5, SafetyCases.Sold(Market.EuropeanUnion, null, PortionShape.MiniCup)).Review().Where(f => f.Id == "eu-jelly-mini-cup");
}
