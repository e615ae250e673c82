using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Ingredients;

public class IngredientTests
{
    [Fact]
    public void Own_ingredient_knows_nothing_until_it_is_stated()
    {
        Ingredient own = Ingredient.Own("house-stock", "House stock");

        (own.Id, own.Name, own.IsKnown, own.BasedOn).Should().Be(("house-stock", "House stock", true, null));
        new object?[] { own.Composition, own.Ph, own.PhRange, own.Brix, own.DensityAt20C, own.DensityCitation, own.Allergens, own.Diet, own.Grade, own.Profile, own.Additive, own.Extensions }
            .Should().OnlyContain(v => v == null);
    }

    [Fact]
    public void Stated_facts_are_measured()
    {
        Ingredient own = Ingredient.Own("house-stock", "House stock")
            .WithComposition(Composition.Per100Grams(water: 96))
            .WithPh(5.2).WithBrix(3).WithDensity(Density.FromGramsPerMilliliter(1.01))
            .WithAllergens(Allergen.Milk, Allergen.Celery, Allergen.Milk).WithDiet(vegan: false, vegetarian: false);

        own.Composition!.Value.WaterPercent.Should().Be(96);
        own.Ph!.Value.Should().Be(5.2);
        own.Brix!.Value.Should().Be(3);
        own.DensityAt20C!.Value.KilogramsPerCubicMeter.Should().BeApproximately(1010, 1e-9);
        own.Allergens!.Value.Should().Equal(Allergen.Milk, Allergen.Celery);
        new[] { own.Composition.Citation, own.Ph.Citation, own.Brix.Citation, own.DensityCitation, own.Allergens.Citation, own.DietCitation }
            .Should().OnlyContain(c => c == Citation.Measured);
    }

    [Fact]
    public void No_allergens_is_not_the_same_as_not_known()
        => Ingredient.Own("a", "A").WithAllergens().Allergens!.Value.Should().BeEmpty();

    [Fact]
    public void Own_grade_of_a_built_in_agent_keeps_its_facts()
    {
        Ingredient house = Hydrocolloids.Agar.As("house-agar", "House agar").WithGrade(new Grade(GradeScale.GelStrength, 900));

        (house.Id, house.Name, house.BasedOn).Should().Be(("house-agar", "House agar", Hydrocolloids.Agar));
        house.Grade!.ToString().Should().Be("900 g/cm²");
        house.Profile.Should().BeSameAs(Hydrocolloids.Agar.Profile);
        house.As("other-agar", "Other").BasedOn.Should().Be(Hydrocolloids.Agar);
        Hydrocolloids.Agar.Grade.Should().BeNull();
    }

    [Theory]
    [InlineData("")]
    [InlineData("Agar")]
    [InlineData("a--b")]
    [InlineData("-a")]
    [InlineData("a-")]
    [InlineData("a b")]
    [InlineData("poiré")]
    public void Id_that_is_not_kebab_case_is_refused(string id)
    {
        FluentActions.Invoking(() => Ingredient.Own(id, "Name")).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Pantry.Water.As(id, "Name")).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Facts_outside_their_range_are_refused()
    {
        Ingredient own = Ingredient.Own("a", "A");
        own.Invoking(i => i.WithPh(14.1)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("Must be between 0 pH and 14 pH inclusive, but is 14.1 pH.*");
        own.Invoking(i => i.WithPh(double.NaN)).Should().Throw<ArgumentOutOfRangeException>();
        own.Invoking(i => i.WithBrix(-1)).Should().Throw<ArgumentOutOfRangeException>();
        own.Invoking(i => i.WithDensity(Density.FromKilogramsPerCubicMeter(50))).Should().Throw<ArgumentOutOfRangeException>();
        own.Invoking(i => i.WithDiet(vegan: true, vegetarian: false)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new Grade(GradeScale.Bloom, 0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new Grade((GradeScale)9, 1)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Composition_over_102_grams_in_100_is_refused()
    {
        Composition.Per100Grams(water: 90, sugars: 12).KnownSumPercent.Should().Be(102);
        FluentActions.Invoking(() => Composition.Per100Grams(water: 90, sugars: 12.1)).Should().Throw<ArgumentException>()
            .WithMessage("The parts add up to 102.1 g per 100 g; at most 102 g are possible within the spread of analyses.*");
        FluentActions.Invoking(() => Composition.Per100Grams(water: 101)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Composition.Per100Grams(water: 90, calcium: 20_000)).Should().Throw<ArgumentException>().WithMessage("*add up to 110 g*", "minerals weigh too");
        Composition.Per100Grams(water: 90, ash: 11, calcium: 10_000).CalciumMg.Should().Be(10_000, "they are in the ash");
        FluentActions.Invoking(() => new Grade(GradeScale.Bloom, 0)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*above 0 g Bloom*");
        FluentActions.Invoking(() => Catalogue.BuiltIn.With(Pantry.Water, Pantry.Water)).Should().Throw<ArgumentException>().WithMessage("'water' is there twice*");
        FluentActions.Invoking(() => Composition.Per100Grams(calcium: -1)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Minerals_are_fractions_of_the_ingredient()
    {
        Composition milk = Composition.Per100Grams(calcium: 120);

        milk.Calcium!.Value.MilligramsPerKilogram.Should().BeApproximately(1200, 1e-9);
        milk.Sodium.Should().BeNull();
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{\"a\":1,\"a\":2}")]
    [InlineData("{\"a\":1,}")]
    public void Extension_data_must_be_one_strict_object(string json)
        => FluentActions.Invoking(() => ExtensionData.Parse(json)).Should().Throw<ArgumentException>();

    [Fact]
    public void Every_change_leaves_the_original_alone()
    {
        Ingredient before = Ingredient.Own("a", "A");
        before.WithPh(3).WithBrix(5).WithExtensions(ExtensionData.Parse("{}"));

        before.Should().Be(Ingredient.Own("a", "A"));
    }

    [Fact]
    public void Code_states_what_a_catalogue_document_states()
    {
        Ingredient whey = Ingredient.Own("sweet-whey", "Sweet whey").WithComposition(Composition.Per100Grams(water: 93.5, sugars: 5, protein: 0.8, fat: 0.2, ash: 0.5)).WithPh(6.2)
            .WithCategory("dairy").WithTitratableAcidity(0.12, "lactic").WithTannin(TanninLevel.None).WithMilkProtein(casein: false, whey: true).WithProtease("plasmin", isDisputed: true).WithSynonyms("Petit-lait", "Siero", "Siero");

        whey.Category.Should().Be("dairy");
        whey.TitratableAcidity!.Value.Should().Be(new TitratableAcidity(0.12, "lactic"));
        whey.TitratableAcidity.Citation.Quality.Should().Be(CitationQuality.Measured);
        whey.Tannin!.Value.Should().Be(TanninLevel.None);
        whey.MilkProtein!.Value.Should().Be(new MilkProtein(false, true));
        whey.Protease!.Value.Should().Be(new Protease("plasmin", true, IsDisputed: true));
        whey.Synonyms.Should().Equal("Petit-lait", "Siero");
        Catalogue.BuiltIn.With(whey).Find("petit-lait").Should().Contain(whey);
        whey.WithoutActiveProtease().Protease!.Value.IsActive.Should().BeFalse();
        Ingredient bare = Ingredient.Own("bare", "Bare whey").WithComposition(Composition.Per100Grams(water: 93.5)).WithPh(6.2);
        Analysis.Contents.Of((whey, 99.8), (Pantry.CitricAcid, 0.2)).Ph!.Value.Should().BeGreaterThan(Analysis.Contents.Of((bare, 99.8), (Pantry.CitricAcid, 0.2)).Ph!.Value + 0.3, "its acidity is its buffer");
    }

    [Fact]
    public void What_is_no_category_acid_or_level_is_refused_with_what_there_is()
    {
        Ingredient own = Ingredient.Own("x", "X");

        FluentActions.Invoking(() => own.WithCategory("juicy")).Should().Throw<ArgumentException>().WithMessage("'juicy' is not a category; there are water, juice,*");
        FluentActions.Invoking(() => own.WithTitratableAcidity(1, "quinic")).Should().Throw<ArgumentException>().WithMessage("'quinic'*citric, malic*");
        FluentActions.Invoking(() => own.WithTitratableAcidity(101, "malic")).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => own.WithTannin((TanninLevel)9)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => own.WithSynonyms("Y", " ")).Should().Throw<ArgumentException>().WithMessage("Must not be empty or blank.*");
        FluentActions.Invoking(() => own.WithProtease(" ")).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => own.WithCategory(null!)).Should().Throw<ArgumentNullException>();
    }

    [Fact]
    public void The_format_page_names_every_category()
        => Repository.Read("docs/catalogue-format.md").Should().ContainAll(Catalogue.BuiltIn.All.Select(i => $"`{i.Category}`").Distinct());
}
