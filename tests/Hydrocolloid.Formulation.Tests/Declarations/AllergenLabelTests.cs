using Hydrocolloid.Formulation.Declarations;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Declarations;

/// <summary>
/// Lists of allergens: EU Annex II and the US list (read), Codex 2024 (recalled). Which ingredient carries which allergen is what the
/// lists say of it; where a case is derived from two lists, the test says so.
/// </summary>
public class AllergenLabelTests
{
    private static Batch Of(params (Ingredient Ingredient, double Percent)[] parts)
        => Formula.Named("f").Base(b =>
        {
            foreach ((Ingredient ingredient, double percent) in parts)
            {
                b.Share(ingredient, percent);
            }
        }).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(100)));

    private static Declaration Label(Batch batch, LabelMarket market, params LineLabel[] lines) => batch.Declare(new LabelPlan { Market = market, Lines = ValueList<LineLabel>.From(lines) });

    private static Ingredient Own(string id, string name, params Allergen[] allergens) => Ingredient.Own(id, name).WithAllergens(allergens);

    [Fact]
    public void Every_group_is_declared_where_its_market_lists_it()
    {
        Batch all = Of([.. Enum.GetValues<Allergen>().Select(a => (Own("own-" + (int)a, "Own " + (int)a, a), a == Allergen.Gluten ? 100 - 13 * 7.0 : 7.0))]);

        Label(all, LabelMarket.EuropeanUnion).Allergens.Select(a => a.Allergen).Should().Equal(Enum.GetValues<Allergen>());
        Label(all, LabelMarket.UnitedStates).Allergens.Select(a => a.Allergen).Should().Equal(
            Allergen.Gluten, Allergen.Crustaceans, Allergen.Eggs, Allergen.Fish, Allergen.Peanuts, Allergen.Soybeans, Allergen.Milk, Allergen.TreeNuts, Allergen.Sesame);
        Label(all, LabelMarket.Codex).Allergens.Select(a => a.Allergen).Should().Equal(
            Allergen.Gluten, Allergen.Crustaceans, Allergen.Eggs, Allergen.Fish, Allergen.Peanuts, Allergen.Milk, Allergen.TreeNuts, Allergen.Sesame, Allergen.Sulphites);
        Label(all, LabelMarket.Codex).Notes.Count(n => n.Value.Contains("countries and regions", StringComparison.Ordinal)).Should().Be(4, "soybeans, celery, mustard and lupin");
    }

    [Fact]
    public void A_word_that_names_the_allergen_stands_out_and_a_name_without_it_is_completed()
    {
        Declaration label = Label(Of((Pantry.WholeMilk, 60), (Pantry.Cream35, 40)), LabelMarket.EuropeanUnion);

        label.IngredientText().Should().Contain("MILK").And.Contain("(MILK)");
        label.Ingredients[0].ToText(w => $"<b>{w}</b>").Should().Contain("<b>milk</b>");
        label.Ingredients[1].Text.Should().EndWith(" (milk)");
    }

    [Fact]
    public void Coconut_milk_is_not_milk() => Label(Of((Pantry.CoconutMilk, 100)), LabelMarket.EuropeanUnion).IngredientText().Should().NotContain("MILK");

    [Fact]
    public void The_cereal_must_be_named()
    {
        Batch beer = Of((Pantry.BeerLager, 100));
        LineLabel barley = new("beer-lager") { AllergenNames = ValueList<AllergenName>.From([new AllergenName(Allergen.Gluten, "barley")]) };

        Label(beer, LabelMarket.EuropeanUnion).Gaps.Should().Contain(g => g.Id == "allergen-unnamed");
        Declaration named = Label(beer, LabelMarket.EuropeanUnion, barley);
        named.Gaps.Should().NotContain(g => g.Id == "allergen-unnamed");
        named.IngredientText().Should().Contain("(BARLEY)");
        // Derived from the two lists: the US law lists wheat, so barley is not on it; a cereal that nobody named may be wheat.
        Label(beer, LabelMarket.UnitedStates, barley).Allergens.Should().BeEmpty();
        Label(beer, LabelMarket.UnitedStates).ContainsText().Should().Be("Contains: wheat.");
    }

    [Fact]
    public void Fish_gelatin_that_gels_is_fish_and_its_species_is_asked_for_in_the_United_States()
    {
        Batch batch = Formula.Named("f").Base(b => b.Share(Pantry.PearJuice, 100)).Then("gel", p => p.Add(Hydrocolloids.GelatinFish, Dose.Percent(2).OfBase)).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(100)));

        Label(batch, LabelMarket.EuropeanUnion).IngredientText().Should().Contain("FISH");
        Label(batch, LabelMarket.EuropeanUnion).Gaps.Should().NotContain(g => g.Id == "allergen-unnamed");
        Label(batch, LabelMarket.UnitedStates).Gaps.Should().Contain(g => g.Id == "allergen-unnamed" && g.Line == "gelatin-fish");
        Label(batch, LabelMarket.UnitedStates, new LineLabel("gelatin-fish") { AllergenNames = ValueList<AllergenName>.From([new AllergenName(Allergen.Fish, "tilapia")]) })
            .ContainsText().Should().Be("Contains: fish (tilapia).");
    }

    [Fact]
    public void A_bought_compound_stands_with_what_its_pack_says()
    {
        LineLabel pack = new("soy-sauce") { MadeOf = ValueList<string>.From(["water", "soybeans", "wheat", "salt"]) };

        Label(Of((Pantry.SoySauce, 100)), LabelMarket.EuropeanUnion, pack).Ingredients[0].ToString().Should().EndWith("(water, SOYBEANS, WHEAT, salt)");
        Label(Of((Pantry.SoySauce, 100)), LabelMarket.UnitedStates, pack).ContainsText().Should().Be("Contains: wheat, soybeans.");
    }

    [Theory]
    [InlineData(150, 30, 45, true)]
    [InlineData(50, 1, 0.5, false)]
    [InlineData(100, 10, 10, false)] // EU: above 10 mg/kg
    public void Sulphites_count_in_the_finished_food(double milligramsPerKilogram, double percent, double content, bool declared)
    {
        Batch batch = Of((Own("wine", "Wine", Allergen.Sulphites), percent), (Pantry.PearJuice, 100 - percent));

        Declaration label = Label(batch, LabelMarket.EuropeanUnion, new LineLabel("wine") { SulphurDioxide = MassFraction.FromMilligramsPerKilogram(milligramsPerKilogram) });

        label.SulphurDioxideMgPerKg.Should().BeApproximately(content, 1e-9);
        label.Allergens.Any(a => a.Allergen == Allergen.Sulphites).Should().Be(declared);
        Label(batch, LabelMarket.EuropeanUnion).Allergens.Should().ContainSingle(a => a.Allergen == Allergen.Sulphites, "what is not measured is declared");
        Label(batch, LabelMarket.EuropeanUnion).Gaps.Should().Contain(g => g.Id == "sulphites-unmeasured");
    }

    [Fact]
    public void Codex_counts_sulphites_from_ten_milligrams()
        => Label(Of((Own("wine", "Wine", Allergen.Sulphites), 10), (Pantry.PearJuice, 90)), LabelMarket.Codex, new LineLabel("wine") { SulphurDioxide = MassFraction.FromMilligramsPerKilogram(100) })
            .Allergens.Should().ContainSingle(a => a.Allergen == Allergen.Sulphites);

    [Fact]
    public void Evaporation_concentrates_sulphites()
    {
        Batch batch = Formula.Named("f").Base(b => b.Share(Own("wine", "Wine", Allergen.Sulphites), 10).Share(Pantry.PearJuice, 90)).Build()
            .ScaleTo(Yield.OfBase(Mass.FromGrams(100)), new Losses { Evaporation = Loss.Percent(20) });

        Label(batch, LabelMarket.EuropeanUnion, new LineLabel("wine") { SulphurDioxide = MassFraction.FromMilligramsPerKilogram(100) }).SulphurDioxideMgPerKg.Should().BeApproximately(12.5, 1e-9);
    }

    [Fact]
    public void Unknown_allergens_are_listed_never_taken_as_none()
    {
        Declaration label = Label(Of((Ingredient.Own("pearls", "Pearls"), 100)), LabelMarket.EuropeanUnion);

        label.Allergens.Should().BeEmpty();
        label.Gaps.Should().ContainSingle(g => g.Id == "allergens-unknown" && g.Line == "pearls");
    }

    [Fact]
    public void A_starch_of_an_unstated_plant_is_not_declared_free_of_gluten()
        => Label(Of((Pantry.PearJuice, 96), (Hydrocolloids.StarchPregelatinised, 4)), LabelMarket.EuropeanUnion).Gaps.Should().ContainSingle(g => g.Id == "allergens-unknown" && g.Line == "starch-pregelatinised");
}
