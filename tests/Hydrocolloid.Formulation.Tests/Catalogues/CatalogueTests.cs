namespace Hydrocolloid.Formulation.Tests.Catalogues;

public class CatalogueTests
{
    [Theory]
    [InlineData("E 406", "agar")]
    [InlineData("e406", "agar")]
    [InlineData("406", "agar")]
    [InlineData("ins 415", "xanthan-gum")]
    [InlineData("INS 415", "xanthan-gum")]
    [InlineData("Agar-Agar", "agar")]
    [InlineData("AGAR", "agar")]
    [InlineData("kappa", "carrageenan-kappa")]
    [InlineData("pear juice", "pear-juice")]
    public void Word_finds_the_ingredient_whatever_its_case_and_spacing(string word, string id)
        => Catalogue.BuiltIn.Find(word).Select(i => i.Id).Should().Equal(id);

    [Fact]
    public void Number_of_a_family_finds_the_whole_family()
        => Catalogue.BuiltIn.Find("E 407").Select(i => i.Id).Should().BeEquivalentTo("carrageenan-kappa", "carrageenan-iota", "carrageenan-lambda");

    [Theory]
    [InlineData("")]
    [InlineData(" - ")]
    [InlineData("E 9999")]
    [InlineData("nothing of the kind")]
    public void Word_that_nothing_answers_to_finds_nothing(string word)
        => Catalogue.BuiltIn.Find(word).Should().BeEmpty();

    [Theory]
    [InlineData("agar-agar", "No ingredient has the id 'agar-agar'. Did you mean 'agar'?")]
    [InlineData("Agar", "No ingredient has the id 'Agar'. Did you mean 'agar'?")]
    [InlineData("xanthan", "No ingredient has the id 'xanthan'. *'xanthan-gum'*")]
    [InlineData("carrageenan", "No ingredient has the id 'carrageenan'. *'carrageenan-iota'*'carrageenan-kappa'*")]
    [InlineData("zzz", "No ingredient has the id 'zzz'.")]
    public void Unknown_id_is_refused_with_a_suggestion(string id, string message)
        => Catalogue.BuiltIn.Invoking(c => c.Get(id)).Should().Throw<KeyNotFoundException>().WithMessage(message);

    [Fact]
    public void Try_get_does_not_throw()
    {
        Catalogue.BuiltIn.TryGet("zzz", out Ingredient? none).Should().BeFalse();
        none.Should().BeNull();
        Catalogue.BuiltIn.TryGet("agar", out Ingredient? agar).Should().BeTrue();
        agar.Should().Be(Hydrocolloids.Agar);
    }

    [Fact]
    public void Own_ingredients_stand_behind_the_built_in_ones()
    {
        Ingredient house = Hydrocolloids.Agar.As("house-agar", "House agar");
        Catalogue own = Catalogue.BuiltIn.With(house);

        own.All.Should().HaveCount(Catalogue.BuiltIn.All.Count + 1);
        own.All[^1].Should().Be(house);
        own.Get("house-agar").Should().Be(house);
        own.Find("House Agar").Should().Equal(house);
        own.Sources.Should().Equal(Catalogue.BuiltIn.Sources);
        Catalogue.BuiltIn.TryGet("house-agar", out _).Should().BeFalse();
    }

    [Fact]
    public void Own_ingredient_with_a_built_in_id_takes_its_place()
    {
        Ingredient strong = Hydrocolloids.Agar.WithGrade(new Grade(GradeScale.GelStrength, 1200));
        Catalogue own = Catalogue.BuiltIn.With(strong);

        own.All.Select(i => i.Id).Should().Equal(Catalogue.BuiltIn.All.Select(i => i.Id));
        own.Get("agar").Should().Be(strong);
        Hydrocolloids.Agar.Grade.Should().BeNull();
    }

    [Fact]
    public void Two_own_ingredients_of_one_id_are_refused()
        => Catalogue.BuiltIn.Invoking(c => c.With(Ingredient.Own("a", "A"), Ingredient.Own("a", "B"))).Should().Throw<ArgumentException>();

    [Fact]
    public void Null_is_refused()
        => Catalogue.BuiltIn.Invoking(c => c.With([null!])).Should().Throw<ArgumentNullException>();
}
