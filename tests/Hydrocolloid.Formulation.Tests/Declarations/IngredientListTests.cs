using Hydrocolloid.Formulation.Declarations;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Declarations;

/// <summary>Regulation (EU) No 1169/2011, Articles 18 to 22 and Annexes VII and VIII (recalled), unless a test names another source.</summary>
public class IngredientListTests
{
    private static LineLabel Line(string line) => new(line);

    private static Batch Jelly(Losses? losses = null) => Formula.Named("Strawberry jelly")
        .Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(70)).Weigh(Pantry.Sucrose, Mass.FromGrams(25)))
        .Then("gel", p => p
            .Weigh(Hydrocolloids.Agar, Mass.FromGrams(1), DoseReference.Base)
            .Weigh(Pantry.CitricAcid, Mass.FromGrams(0.5), DoseReference.Base)
            .Weigh(Pantry.Strawberry, Mass.FromGrams(3.5), DoseReference.Base))
        .Build().ScaleTo(Yield.OfBase(Mass.FromGrams(95)), losses ?? Losses.None);

    private static LabelPlan Plan(params LineLabel[] lines) => new() { Lines = ValueList<LineLabel>.From(lines) };

    private static readonly LabelPlan s_named = Plan(Line("sucrose") with { Name = "sugar" }, Line("strawberry") with { Name = "strawberry", Quantify = true });

    [Fact]
    public void Ingredients_descend_by_weight_with_classes_and_quantity()
        => Jelly().Declare(s_named).IngredientText()
            .Should().Be("Ingredients: Water, sugar, strawberry 3.5 %, gelling agent (agar), acidity regulator (citric acid).");

    [Fact]
    public void Numbers_stand_in_place_of_names_if_asked()
    {
        string eu = Jelly().Declare(s_named with { Additives = AdditiveNaming.Number }).IngredientText();
        string codex = Jelly().Declare(s_named with { Additives = AdditiveNaming.Number, Market = LabelMarket.Codex }).IngredientText();

        eu.Should().Contain("gelling agent (E 406), acidity regulator (E 330)");
        codex.Should().Contain("gelling agent (INS 406), acidity regulator (INS 330)");
    }

    [Fact]
    public void An_american_list_has_common_names_and_no_classes()
        => Jelly().Declare(s_named with { Market = LabelMarket.UnitedStates }).IngredientText().Should().NotContain("gelling agent").And.NotContain("E 4").And.Contain("Agar");

    [Fact]
    public void Water_counts_by_what_is_left_of_it()
    {
        Declaration label = Jelly(new Losses { Evaporation = Loss.Percent(50) }).Declare(s_named);

        // 70 g of water lose 50 g and leave 20 g in 50 g of food, less than the 25 g of sugar.
        label.Ingredients.Select(i => i.Lines[0]).Take(2).Should().Equal("sucrose", "water");
        label.Ingredients[0].PercentOfFood.Should().BeApproximately(50, 1e-9);
        label.Ingredients[1].PercentOfFood.Should().BeApproximately(40, 1e-9);
        label.Ingredients[2].Text.Should().Be("strawberry 7 %");
    }

    [Fact]
    public void Water_that_is_put_back_counts_in_full()
        => Jelly(new Losses { Evaporation = Loss.Percent(50), ToppedUp = true }).Declare(s_named).Ingredients[0].PercentOfFood.Should().BeApproximately(70, 1e-9);

    [Fact]
    public void More_than_a_hundred_percent_is_a_weight_per_hundred_grams()
    {
        Batch paste = Formula.Named("Paste").Base(b => b.Share(Pantry.TomatoJuice, 100)).Build()
            .ScaleTo(Yield.OfBase(Mass.FromGrams(100)), new Losses { Evaporation = Loss.Percent(50) });

        paste.Declare(Plan(Line("tomato-juice") with { Quantify = true })).Ingredients[0].Text.Should().EndWith(" 200 g per 100 g");
    }

    [Theory]
    [InlineData(5, false)]
    [InlineData(5.01, true)]
    public void Added_water_up_to_five_percent_may_be_left_out(double water, bool stands)
    {
        Batch batch = Formula.Named("f").Base(b => b.Share(Pantry.PearJuice, 100 - water).Share(Pantry.Water, water)).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(100)));

        batch.Declare(new LabelPlan { OmitLittleWater = true }).Ingredients.Any(i => i.Text == "Water").Should().Be(stands);
        batch.Declare().Ingredients.Should().Contain(i => i.Text == "Water");
    }

    [Fact]
    public void Two_lines_of_one_ingredient_are_one_entry()
    {
        Batch batch = Formula.Named("f").Base(b => b.Share(Pantry.PearJuice, 50).Share(Pantry.Sucrose, 50))
            .Then("later", p => p.Add(Pantry.Sucrose, Dose.Percent(10).OfBase, l => l.Labelled("sugar-2"))).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(100)));

        batch.Declare().Ingredients[0].Lines.Should().Equal("sucrose", "sugar-2");
    }

    [Fact]
    public void An_assumed_class_is_said_to_be_one()
    {
        Jelly().Declare(s_named).Gaps.Where(g => g.Id == "class-assumed").Select(g => g.Line).Should().Equal("agar", "citric-acid");
        LabelPlan stated = Plan(Line("agar") with { FunctionalClass = "gelling agent" }, Line("citric-acid") with { FunctionalClass = "acid" });
        Declaration label = Jelly().Declare(stated);

        label.Gaps.Should().NotContain(g => g.Id == "class-assumed");
        label.IngredientText().Should().Contain("acid (citric acid)");
    }

    [Fact]
    public void Gelatin_is_an_ingredient_by_name()
        => Formula.Named("f").Base(b => b.Share(Pantry.PearJuice, 100)).Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(2).OfBase)).Build()
            .ScaleTo(Yield.OfBase(Mass.FromGrams(100))).Declare().Ingredients[1].Text.Should().Be(Hydrocolloids.GelatinTypeA.Name);

    [Fact]
    public void A_class_outside_the_law_and_a_line_outside_the_formula_are_refused()
    {
        FluentActions.Invoking(() => Line("agar") with { FunctionalClass = "jellifier" }).Should().Throw<ArgumentException>().WithMessage("*gelling agent*");
        FluentActions.Invoking(() => Jelly().Declare(Plan(Line("gelatin")))).Should().Throw<ArgumentException>().WithMessage("*gelatin*agar*");
        FluentActions.Invoking(() => Plan(Line("agar"), Line("agar"))).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void The_caution_travels_with_the_text()
        => Jelly().Declare().ToString().Should().EndWith(Declaration.Caution + "\n").And.Contain("does not replace, a labelling professional's check");
}
