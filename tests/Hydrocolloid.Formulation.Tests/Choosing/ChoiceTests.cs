using System.Globalization;
using Hydrocolloid.Formulation.Choosing;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Choosing;

public class ChoiceTests
{
    public static TheoryData<string, Texture> Grid
    {
        get
        {
            var grid = new TheoryData<string, Texture>();
            foreach (string liquid in new[] { "pear-juice", "whole-milk", "water", "white-wine", "tomato-water", "pineapple-juice-raw", "lemon-juice" })
            {
                foreach (Texture texture in new[] { Texture.FluidGel, Texture.Soft, Texture.Firm, Texture.VeryFirm })
                {
                    grid.Add(liquid, texture);
                }
            }

            return grid;
        }
    }

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static ServicePlan Firm(double? servedAt = null, params Diet[] diets)
        => new() { Texture = Texture.Firm, ServedAt = servedAt is { } c ? C(c) : null, Diets = ValueList<Diet>.From(diets) };

    private static Exclusion Excluded(Choice choice, string id) => choice.Exclusions.Should().ContainSingle(e => e.System.Id == id).Which;

    [Theory, MemberData(nameof(Grid))]
    public void Every_proposal_passes_its_review_and_has_a_method(string liquid, Texture texture)
    {
        foreach (double celsius in new double[] { 6, 65 })
        {
            foreach (Diet[] diets in new Diet[][] { [], [Diet.Vegan] })
            {
                var brief = new Brief(Catalogue.BuiltIn.Get(liquid), new ServicePlan { Texture = texture, ServedAt = C(celsius), Diets = ValueList<Diet>.From(diets) });

                Choice choice = brief.Choose();

                foreach (Proposal proposal in choice.Proposals)
                {
                    string about = $"{proposal} for {brief} at {celsius} °C";
                    proposal.Formula.Review().Should().NotContain(f => f.Severity == Severity.Conflict, about);
                    proposal.Formula.PlanMethod(brief.Kitchen).Conflicts.Should().BeEmpty(about);
                    proposal.Formula.Service.Should().Be(brief.Service);
                    proposal.Score.Should().BeInRange(0, 100);
                    proposal.Criteria.Should().OnlyContain(c => c.Score >= 0 && c.Score <= 1 && c.Why.Length > 0);
                    if (diets.Length > 0)
                    {
                        proposal.System.Agents.Should().OnlyContain(a => a.Diet!.Vegan == true);
                    }
                }

                choice.Exclusions.Should().NotContain(e => e.Reasons.IsEmpty || e.Reasons.Any(r => r.Text.Length == 0));
                if (choice.LiquidConflicts.IsEmpty)
                {
                    (choice.Proposals.Count + choice.Exclusions.Count).Should().Be(Catalogue.BuiltIn.OfRole(HydrocolloidRole.GellingAgent).Count() + GelSystem.KnownBlends.Count, "nothing is lost");
                }
            }
        }
    }

    [Fact]
    public void The_order_is_the_same_each_time_and_in_every_culture()
    {
        var brief = new Brief(Pantry.PearJuice, Firm(8));
        string first = brief.Choose().ToText();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            brief.Choose().ToText().Should().Be(first);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Proposal[] proposals = [.. brief.Choose().Proposals];
        proposals.Should().Equal(proposals.OrderByDescending(p => Math.Round(p.Score, 6)).ThenBy(p => p.System.Id, StringComparer.Ordinal));
    }

    [Fact]
    public void What_is_left_out_has_its_reason_and_source()
    {
        Choice hot = new Brief(Pantry.Water, Firm(65, Diet.Vegan)).Choose();
        Excluded(hot, "gelatin-type-a").Reasons.Select(r => r.Id).Should().Contain(["diet-not-met", "method-melts"]);
        Excluded(hot, "gelatin-type-a").Reasons.Should().OnlyContain(r => !r.Citations.IsEmpty);
        Excluded(hot, "xanthan-gum-and-locust-bean-gum").Reasons.Select(r => r.Id).Should().Equal("melts-at-service");
        Excluded(hot, "konjac-glucomannan").Reasons.Select(r => r.Id).Should().Contain("ph-of-the-gel");
        hot.Proposals.Select(p => p.System.Id).Should().Contain(["agar", "gellan-low-acyl", "methylcellulose"]);

        Choice cold = new Brief(Pantry.PineappleJuiceRaw, Firm(8)).Choose();
        Excluded(cold, "gelatin-type-a").Reasons.Select(r => r.Id).Should().Contain("protease-with-protein-gel");
        Excluded(cold, "methylcellulose").Reasons.Select(r => r.Id).Should().Contain("liquid-when-cold");
        Excluded(cold, "sodium-alginate").Reasons.Select(r => r.Id).Should().Contain("sets-in-a-bath");
    }

    [Fact]
    public void The_market_counts()
    {
        Choice choice = new Brief(Pantry.AppleJuice, Firm(8) with { Market = Market.EuropeanUnion, Shape = PortionShape.MiniCup }).Choose();

        // Regulation (EU) No 231/2012 and 1129/2011: E 400 to 407, 410, 412–415, 417, 418, 425 and 440 are barred from jelly mini-cups.
        choice.Proposals.Select(p => p.System.Id).Should().NotContain(["agar", "carrageenan-kappa", "gellan-low-acyl", "pectin-low-methoxyl"]);
        Excluded(choice, "curdlan").Reasons.Should().Contain(r => r.Text.Contains("Curdlan is not on the EU list"));
    }

    [Fact]
    public void A_kitchen_that_boils_too_low_has_no_agar()
    {
        var brief = new Brief(Pantry.AppleJuice, Firm(8)) { Kitchen = new Kitchen { Altitude = Length.FromMeters(4000) } };

        Excluded(brief.Choose(), "agar").Reasons.Select(r => r.Id).Should().Contain("method-not-hot-enough");
        (brief with { Kitchen = brief.Kitchen with { Equipment = Equipment.PressureCooker | Equipment.HandBlender } }).Choose().Proposals.Select(p => p.System.Id).Should().Contain("agar");
    }

    [Fact]
    public void Only_what_is_at_hand_is_proposed()
    {
        var brief = new Brief(Pantry.AppleJuice, Firm(8)) { StoreRoom = ValueList<Ingredient>.From([Hydrocolloids.Agar, Hydrocolloids.LocustBeanGum]) };

        Choice choice = brief.Choose();

        choice.Proposals.Select(p => p.System.Id).Should().BeEquivalentTo("agar", "agar-and-locust-bean-gum");
        choice.Exclusions.Should().OnlyContain(e => e.Reasons.Single().Id == "not-at-hand");

        Ingredient house = Hydrocolloids.Agar.As("house-agar", "House agar");
        (brief with { StoreRoom = ValueList<Ingredient>.From([house, Hydrocolloids.LocustBeanGum]) }).Choose().Proposals
            .Select(p => p.System.Agents[0]).Should().Equal([house, house], "alone and in the blend");
    }

    /// <summary>Mass times the square root of the Bloom is constant: 160 g Bloom takes √(225/160) = 1.186 times as much as 225. Doses are rounded to two digits.</summary>
    [Fact]
    public void The_grade_at_hand_counts()
    {
        double Dose(double bloom) => (new Brief(Pantry.AppleJuice, Firm(8)) { StoreRoom = ValueList<Ingredient>.From([Hydrocolloids.GelatinTypeA.WithGrade(new Grade(GradeScale.Bloom, bloom))]) })
            .Choose().Proposals.Single().Doses.Single().PercentOfMix;

        (Dose(160) / Dose(225)).Should().BeApproximately(1.186, 0.06);
    }

    [Fact]
    public void Weights_are_the_callers()
    {
        var brief = new Brief(Pantry.Water, Firm(8) with { Clear = true });
        Proposal clear = brief.Choose().Proposals.First(p => p.System.Id == "gellan-low-acyl");
        clear.Criteria.Single(c => c.Criterion == Criterion.Clarity).Weight.Should().Be(CriterionWeights.Default[Criterion.Clarity]);
        clear.Score.Should().BeApproximately(100 * clear.Criteria.Sum(c => c.Score * c.Weight) / clear.Criteria.Sum(c => c.Weight), 1e-9);

        Choice without = (brief with { Weights = CriterionWeights.Default.With(Criterion.Clarity, 0) }).Choose();
        without.Proposals[0].Criteria.Should().NotContain(c => c.Criterion == Criterion.Clarity);

        Choice only = (brief with { Weights = CriterionWeights.Default.With(Criterion.Clarity, 1000) }).Choose();
        only.Proposals[0].Criteria.Single(c => c.Criterion == Criterion.Clarity).Score.Should().Be(1, "nothing else counts beside it");
    }

    [Fact]
    public void Melting_in_the_mouth_can_be_asked_for()
    {
        var brief = new Brief(Pantry.AppleJuice, Firm(6)) { MeltsInMouth = true };

        brief.Choose().Proposals[0].System.Id.Should().StartWith("gelatin");
        (brief with { MeltsInMouth = false }).Choose().Proposals[0].System.Id.Should().NotStartWith("gelatin");
    }

    [Fact]
    public void A_liquid_that_itself_is_against_the_brief_ends_it()
    {
        Choice choice = new Brief(Pantry.WholeMilk, Firm(8, Diet.Vegan)).Choose();

        choice.LiquidConflicts.Should().ContainSingle().Which.Id.Should().Be("diet-not-met");
        choice.Proposals.Should().BeEmpty();
        choice.ToText().Should().StartWith("The liquid itself");
    }

    [Fact]
    public void A_brief_that_cannot_be_says_all_that_is_wrong()
    {
        Formula gelled = Formula.Named("Jelly").Base(b => b.Share(Pantry.AppleJuice, 100)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase)).Build();

        FluentActions.Invoking(() => new Brief(gelled, new ServicePlan { Texture = Texture.Thickened })).Should().Throw<ArgumentException>().WithMessage("*Thickened*gelled already, with agar*");
        FluentActions.Invoking(() => new Brief(Pantry.AppleJuice, ServicePlan.None)).Should().Throw<ArgumentException>().WithMessage("*has none*");
        FluentActions.Invoking(() => new Brief(Pantry.AppleJuice, Firm()) { StoreRoom = ValueList<Ingredient>.From([Pantry.Salt, Hydrocolloids.Agar, Hydrocolloids.Agar]) })
            .Should().Throw<ArgumentException>().WithMessage("*'salt' is not a hydrocolloid*'agar' stands twice*");
        FluentActions.Invoking(() => CriterionWeights.Default.With(Criterion.Clarity, -1)).Should().Throw<ArgumentOutOfRangeException>();
    }

    /// <summary>Producer's note, read: low-acyl gellan can go straight into milk and hydrates in normal heat treatment; review and method agree.</summary>
    [Fact]
    public void Low_acyl_gellan_in_milk_is_in_order_for_review_and_method()
    {
        Formula milk = Formula.Named("Milk").Base(b => b.Share(Pantry.WholeMilk, 100)).Then("gel", p => p.Add(Hydrocolloids.GellanLowAcyl, Dose.Percent(0.2).OfBase)).Build();

        milk.Review().Should().NotContain(f => f.Severity == Severity.Conflict);
        milk.PlanMethod().Conflicts.Should().BeEmpty();
    }

    /// <summary>Handbook, recalled: low-acyl gellan is to hydrate at pH 4 or above; under it a part does not gel, which weakens it: a caution and a note, not a conflict.</summary>
    [Fact]
    public void Low_acyl_gellan_at_pH_3_9_is_a_caution_and_a_note()
    {
        Formula pear = Formula.Named("Pear").Base(b => b.Share(Pantry.PearJuice, 100)).Then("gel", p => p.Add(Hydrocolloids.GellanLowAcyl, Dose.Percent(0.35).OfBase)).Build();

        pear.Review().Should().Contain(f => f.Id == "ph-while-hydrating" && f.Severity == Severity.Caution);
        pear.PlanMethod().Conflicts.Should().BeEmpty();
        pear.PlanMethod().Steps.SelectMany(s => s.Notes).Should().Contain(n => n.Value.Contains("should be 4 or more"));
    }
}
