using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Tests.Compatibility.Cases;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Diets and allergens: nothing is guessed, nothing religious is decided.</summary>
public sealed class DietRuleTests
{
    private static readonly RuleSet s_diet = RuleSet.Standard.Only("diet-not-met", "ask-the-certifier", "allergen-present", "unexpected-allergen");

    [Fact]
    public void What_is_not_known_of_a_wine_is_asked_for_and_not_guessed()
    {
        // Wine may be fined with gelatin, isinglass or egg white, so the catalogue does not say whether it is vegan.
        Formula formula = SafetyCases.Of(Hydrocolloids.Agar, 0.5, Suits(Diet.Vegan), Pantry.RedWine);

        formula.Review(s_diet).Should().BeEmpty();
        formula.Review(s_diet.ReportingUnchecked()).Should().ContainSingle(f => f.IsUnchecked).Which.Lines.Should().Equal("red-wine");
    }

    [Fact]
    public void Halal_and_kosher_are_questions_and_never_conflicts()
    {
        foreach (Diet diet in new[] { Diet.Halal, Diet.Kosher })
        {
            foreach (Ingredient agent in new[] { Hydrocolloids.GelatinTypeA, Hydrocolloids.GelatinTypeB, Hydrocolloids.GelatinFish })
            {
                Finding finding = SafetyCases.Of(agent, 2, Suits(diet)).Review(s_diet).Single(f => f.Id == "ask-the-certifier");

                finding.Severity.Should().Be(Severity.Caution);
                finding.Explanation.Should().Contain("Ask the certifier").And.Contain("not decided here");
            }
        }
    }

    [Theory]
    [InlineData(Diet.Halal, true)]
    [InlineData(Diet.Kosher, false)]
    public void Alcohol_is_asked_about_for_halal_only(Diet diet, bool asked)
        => SafetyCases.Of(Hydrocolloids.Agar, 0.5, Suits(diet), Pantry.RedWine).Review(s_diet).Any(f => f.Id == "ask-the-certifier").Should().Be(asked);

    [Fact]
    public void Milk_suits_a_vegetarian() => SafetyCases.Of(Hydrocolloids.Agar, 0.5, Suits(Diet.Vegetarian), Pantry.WholeMilk).Review(s_diet).Should().BeEmpty();

    [Fact]
    public void Gelatin_is_swapped_for_agar_in_the_window_of_the_same_texture()
    {
        Formula formula = SafetyCases.Of(Hydrocolloids.GelatinTypeA, 1.5, new ServicePlan { Diets = ValueList<Diet>.From([Diet.Vegan]), Texture = Texture.Firm })
            .WithProcess(new ProcessPlan { HydrateAt = Temperature.FromDegreesCelsius(60) });

        Formula swapped = formula.Review().Single(f => f.Id == "diet-not-met").Remedies.Single().Apply(formula);

        // The firm window of agar is 0.4–0.7 % (Kato 1960).
        swapped.Proportions.PercentOfContinuousMix(swapped.Line("agar")).Should().BeInRange(0.4, 0.7);
        swapped.Process.HydrateAt!.Value.DegreesCelsius.Should().BeGreaterThanOrEqualTo(90, "agar does not dissolve at the 60 °C of the gelatin");
        swapped.Review().Should().NotContain(f => f.Severity == Severity.Conflict);
    }

    [Fact]
    public void A_frozen_vegan_gel_is_not_sent_to_agar()
    {
        var service = new ServicePlan { Diets = ValueList<Diet>.From([Diet.Vegan]), Frozen = true };
        Formula formula = SafetyCases.Of(Hydrocolloids.GelatinTypeA, 1.5, service);

        formula.Review().Single(f => f.Id == "diet-not-met").Remedies.Single().Apply(formula).Lines.Select(l => l.Ingredient).Should().Contain(Hydrocolloids.GellanHighAcyl);
    }

    [Fact]
    public void Pieces_count_for_allergens_and_diets()
    {
        Ingredient praline = Ingredient.Own("praline", "Praline").WithAllergens(Allergen.TreeNuts).WithDiet(vegan: false, vegetarian: true);
        Formula formula = Formula.Named("test").Base(b => b.Share(Pantry.Water, 80).Share(praline, 20, l => l.Pieces()))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase))
            .Serve(new ServicePlan { FreeFrom = ValueList<Allergen>.From([Allergen.TreeNuts]), Diets = ValueList<Diet>.From([Diet.Vegan]) }).Build();

        formula.Review(s_diet).Select(f => f.Id).Should().BeEquivalentTo("allergen-present", "diet-not-met");
    }

    private static ServicePlan Suits(Diet diet) => new() { Diets = ValueList<Diet>.From([diet]) };
}
