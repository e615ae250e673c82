using System.Globalization;
using Hydrocolloid.Formulation.Declarations;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Declarations;

public class NutritionTests
{
    private static readonly Composition s_salty = Composition.Per100Grams(
        water: 97, sugars: 1, otherCarbohydrate: 0, fibre: 0, protein: 0, fat: 0, ash: 2, ethanol: 0, organicAcids: 0, calcium: 0, potassium: 0, sodium: 400, magnesium: 0);

    private static Batch Of(Ingredient ingredient, Losses? losses = null)
        => Formula.Named("f").Base(b => b.Share(ingredient, 100)).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(100)), losses ?? Losses.None);

    private static DeclaredNutrient Row(Declaration label, Nutrient kind) => label.Nutrition.Single(n => n.Kind == kind);

    private static Ingredient Own(Composition composition) => Ingredient.Own("own", "Own").WithAllergens().WithComposition(composition);

    [Fact]
    public void Salt_is_sodium_times_two_and_a_half()
    {
        DeclaredNutrient salt = Row(Of(Own(s_salty)).Declare(), Nutrient.Salt);

        salt.Per100Grams.Should().BeApproximately(1.0, 1e-12, "Regulation (EU) No 1169/2011, Annex I: 0.4 g × 2.5");
        salt.Per100GramsText.Should().Be("1.0 g");
        Row(Of(Own(s_salty)).Declare(new LabelPlan { Market = LabelMarket.UnitedStates }), Nutrient.Sodium).Per100GramsText.Should().Be("400 mg");
    }

    [Fact]
    public void Evaporation_concentrates_and_topping_up_does_not()
    {
        Row(Of(Own(s_salty), new Losses { Evaporation = Loss.Percent(20) }).Declare(), Nutrient.Salt).Per100Grams.Should().BeApproximately(1.25, 1e-12);
        Row(Of(Own(s_salty), new Losses { Evaporation = Loss.Percent(20), ToppedUp = true, Straining = Loss.Percent(10) }).Declare(), Nutrient.Salt).Per100Grams.Should().BeApproximately(1, 1e-12);
    }

    [Fact]
    public void A_portion_is_its_part_of_a_hundred_grams()
    {
        Declaration label = Of(Own(s_salty)).Declare(new LabelPlan { Portion = Mass.FromGrams(35) });

        Row(label, Nutrient.Salt).PerPortion.Should().BeApproximately(0.35, 1e-12);
        Row(label, Nutrient.Salt).PerPortionText.Should().Be("0.35 g");
        Of(Own(s_salty)).Declare().Portion.Should().BeNull();
        Formula.Named("f").Base(b => b.Share(Own(s_salty), 100)).Build().ScaleTo(Yield.Portions(4, Mass.FromGrams(30))).Declare().Portion!.Value.Grams.Should().Be(30);
    }

    [Fact]
    public void What_is_unknown_is_listed_never_zero()
    {
        Declaration label = Formula.Named("f").Base(b => b.Share(Own(s_salty), 100)).Then("gel", p => p.Add(Ingredient.Own("pearls", "Pearls"), Dose.Percent(5).OfBase)).Build()
            .ScaleTo(Yield.OfBase(Mass.FromGrams(100))).Declare();

        label.Nutrition.Should().OnlyContain(n => n.Without.Contains("pearls") && !n.IsComplete);
        Row(label, Nutrient.Salt).Per100GramsText.Should().Be("at least 0.95 g");
        Row(label, Nutrient.Fat).Per100GramsText.Should().Be("not known");
        label.Gaps.Count(g => g.Id == "nutrient-unknown").Should().Be(label.Nutrition.Count);
    }

    [Fact]
    public void Powder_of_a_gum_is_counted_as_fibre_of_gelatin_as_protein_of_starch_as_carbohydrate_and_said_to_be_an_estimate()
    {
        Declaration With(Ingredient agent) => Formula.Named("f").Base(b => b.Share(Own(s_salty), 100)).Then("gel", p => p.Add(agent, Dose.Percent(2).OfTotal)).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(98))).Declare();

        DeclaredNutrient fibre = Row(With(Hydrocolloids.Agar), Nutrient.Fibre);
        fibre.Per100Grams.Should().BeApproximately(2, 1e-9);
        fibre.Estimated.Should().BeTrue();
        Row(With(Hydrocolloids.Agar), Nutrient.Salt).Without.Should().Equal("agar");
        Row(With(Hydrocolloids.GelatinFish), Nutrient.Protein).Per100Grams.Should().BeApproximately(2, 1e-9);
        Row(With(Catalogue.BuiltIn.Get("starch-maize")), Nutrient.Carbohydrate).Per100Grams.Should().BeApproximately(2 + 0.98, 1e-9);
    }

    [Fact]
    public void Polyols_of_the_catalogue_take_their_factors()
    {
        // EU 10 kJ/g (Annex XIV, read); US sorbitol 2.6 kcal/g (21 CFR 101.9(c)(1)(i)(F), recalled).
        Row(Of(Pantry.Sorbitol).Declare(), Nutrient.Kilojoules).Per100Grams.Should().BeApproximately(1000, 1e-9);
        Row(Of(Pantry.Sorbitol).Declare(), Nutrient.Polyols).Per100Grams.Should().BeApproximately(100, 1e-9);
        Row(Of(Pantry.Sorbitol).Declare(new LabelPlan { Market = LabelMarket.UnitedStates }), Nutrient.Kilocalories).Per100Grams.Should().BeApproximately(260, 1e-9);
        Of(Pantry.Sorbitol).Declare().Notes.Should().Contain(n => n.Value.Contains("laxative", StringComparison.Ordinal));
        Of(Pantry.PearJuice).Declare().Nutrition.Should().NotContain(n => n.Kind == Nutrient.Polyols);
    }

    [Fact]
    public void Acid_that_titration_finds_is_not_carbohydrate()
    {
        Composition c = Pantry.LemonJuice.Composition!.Value;
        double acid = Pantry.LemonJuice.TitratableAcidity!.Value.Percent;
        double moved = Math.Min(acid, c.OtherCarbohydratePercent!.Value);
        moved.Should().BeGreaterThan(1);

        Row(Of(Pantry.LemonJuice).Declare(), Nutrient.Carbohydrate).Per100Grams.Should().BeApproximately(c.SugarsPercent!.Value + c.OtherCarbohydratePercent.Value - moved, 1e-9);
    }

    [Fact]
    public void Saturates_need_a_statement_unless_there_is_no_fat()
    {
        Batch cream = Of(Pantry.Cream35);

        Row(Of(Own(s_salty)).Declare(), Nutrient.Saturates).IsComplete.Should().BeTrue();
        Row(cream.Declare(), Nutrient.Saturates).Without.Should().Equal("cream-35");
        Row(cream.Declare(new LabelPlan { Lines = ValueList<LineLabel>.From([new LineLabel("cream-35") { SaturatesPercent = 23 }]) }), Nutrient.Saturates).Per100GramsText.Should().Be("23 g");
    }

    [Fact]
    public void Alcohol_is_stated_and_its_rule_named()
    {
        Declaration label = Of(Pantry.WhiteWine).Declare();

        label.AlcoholByVolume.Value.Should().BeInRange(9, 15);
        label.AlcoholText().Should().StartWith("Alcohol: ").And.EndWith(" % vol.");
        label.Notes.Should().Contain(n => n.Value.Contains("1.2 % vol", StringComparison.Ordinal) && n.Citation.IsRecalled);
        Of(Own(s_salty)).Declare().AlcoholText().Should().BeEmpty();
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("sv-SE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_text_is_the_same_in_every_culture(string culture)
    {
        string Text() => Of(Pantry.WhiteWine, new Losses { Evaporation = Loss.Percent(12.5) }).Declare(new LabelPlan { Portion = Mass.FromGrams(32.5) }).ToString();
        string expected = Text();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Text().Should().Be(expected);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
