using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Serialization;

public class FormulaJsonWritingTests
{
    private static Formula With(Ingredient ingredient, Action<LineBuilder>? line = null, string name = "Mulled-berry wine jelly")
        => Formula.Named(name).Base(b => b.Share(Pantry.RedWine, 100)).Then("gel", p => p.Add(ingredient, Dose.Percent(1).OfBase, line)).Build();

    private static string RefusedFor(Formula formula, Catalogue? catalogue = null)
    {
        using var stream = new MemoryStream();
        string id = FluentActions.Invoking(() => FormulaJson.Write(stream, formula, catalogue ?? Catalogue.BuiltIn))
            .Should().Throw<FormulaJsonException>().Which.Problems.Single().Id;
        stream.Length.Should().Be(0);
        return id;
    }

    [Fact]
    public void A_profile_from_nowhere_is_refused()
    {
        Catalogue house = Catalogue.BuiltIn.With(Ingredient.Own("agar", "Something else"));

        RefusedFor(With(Hydrocolloids.Agar), house).Should().Be("ingredient-unstatable");
        RefusedFor(With(Hydrocolloids.Agar.As("agar", "Agar of the house")), house).Should().Be("ingredient-unstatable");
    }

    [Fact]
    public void What_is_known_only_by_its_id_cannot_hold_more()
        => RefusedFor(With(Ingredient.Unknown("dried-moss").WithPh(5))).Should().Be("ingredient-unstatable");

    [Fact]
    public void Two_ingredients_of_one_id_are_refused()
    {
        Formula formula = Formula.Named("Layers").Base(b => b.Share(Pantry.RedWine, 50).Share(Pantry.RedWine.WithPh(3.3), 50, l => l.Labelled("sour"))).Build();

        RefusedFor(formula).Should().Be("ingredient-repeated");
    }

    [Fact]
    public void Half_characters_are_refused_instead_of_replaced()
    {
        RefusedFor(With(Pantry.Sucrose, name: "a\ud800b")).Should().Be("text-invalid");
        RefusedFor(With(Ingredient.Own("x", "X").WithSynonyms("Y", "a\ud800b"))).Should().Be("text-invalid");
        RefusedFor(With(Ingredient.Own("x", "X").WithProtease("a\ud800b"))).Should().Be("text-invalid");
        RefusedFor(With(Pantry.Sucrose, l => l.Labelled("\udc00"))).Should().Be("text-invalid");
    }

    [Theory]
    [InlineData("{\"a\":\"\\ud800\"}")]
    [InlineData("{\"\\udc00\":1}")]
    [InlineData("[]")]
    [InlineData("{\"a\":1,\"a\":1}")]
    public void Extension_data_that_no_document_could_hold_is_not_made(string json)
    {
        FluentActions.Invoking(() => ExtensionData.Parse(json)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => ExtensionData.Parse("{\"a\":\"\ud800\"}")).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Extension_data_fits_sixteen_levels_with_the_document_around_it()
    {
        ExtensionData Levels(int count) => ExtensionData.Parse("{\"a\":" + new string('[', count - 1) + new string(']', count - 1) + "}");

        Formula fits = With(Pantry.Sucrose.As("own", "Own").WithExtensions(Levels(13)), l => l.WithExtensions(Levels(11))).WithExtensions(Levels(15));
        FormulaJson.Read(FormulaJson.Write(fits)).Should().Be(fits);
        RefusedFor(With(Pantry.Sucrose, l => l.WithExtensions(Levels(12)))).Should().Be("too-deep");
        RefusedFor(With(Pantry.Sucrose.As("own", "Own").WithExtensions(Levels(14)))).Should().Be("too-deep");
        RefusedFor(With(Pantry.Sucrose).WithExtensions(Levels(16))).Should().Be("too-deep");
    }

    [Fact]
    public void A_reference_to_a_labelled_line_is_by_its_label()
    {
        Formula formula = Formula.Named("Layers").Base(b => b.Share(Pantry.RedWine, 100))
            .Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(5).OfBase, l => l.Labelled("first")).Add(Pantry.Sucrose, Dose.Percent(5).OfBase))
            .Then("more", p => p.Add(Pantry.Salt, Dose.Percent(1).OfLine("first")).Add(Pantry.CitricAcid, Dose.Percent(1).Of(Pantry.Sucrose))).Build();

        string json = FormulaJson.Write(formula);

        json.Should().Contain("\"line\": \"first\"").And.Contain("\"ingredient\": \"sucrose\"\n");
        FormulaJson.Read(json).Should().Be(formula);
    }

    [Fact]
    public void Any_unit_of_the_quantity_is_read_and_the_canonical_one_written()
    {
        Formula formula = FormulaJson.Read(Documents.With(
            line: ",\"temperature\":{\"value\":50,\"unit\":\"[degF]\"},\"measured\":{\"density\":{\"value\":1.005,\"unit\":\"g/mL\"}}",
            members: ",\"service\":{\"heldFor\":{\"value\":1.5,\"unit\":\"h\"},\"portion\":{\"value\":1.005,\"unit\":\"kg\"}}"));

        FormulaJson.Write(formula).ReplaceLineEndings("").Replace(" ", "", StringComparison.Ordinal).Should()
            .Contain("\"temperature\":{\"value\":10,\"unit\":\"Cel\"}").And.Contain("\"density\":{\"value\":1005,\"unit\":\"kg/m3\"}")
            .And.Contain("\"heldFor\":{\"value\":5400,\"unit\":\"s\"}").And.Contain("\"portion\":{\"value\":1005,\"unit\":\"g\"}");
    }
}
