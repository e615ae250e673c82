using System.Text;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Serialization;

public sealed class CatalogueJsonTests
{
    private const string Own = """
        {
          "format": "hydrocolloid-catalogue",
          "version": 1,
          "sources": [ { "id": "house-lab", "title": "Bench book of the training kitchen", "kind": "measurement-of-ours" } ],
          "ingredients": []
        }
        """;

    private static string Document(string ingredients, string sources = """[ { "id": "house-book", "title": "Bench book of the training kitchen", "kind": "teaching" } ]""")
        => $$"""{ "format": "hydrocolloid-catalogue", "version": 1, "sources": {{sources}}, "ingredients": [ {{ingredients}} ] }""";

    private static FormulaJsonProblem Refused(string json)
        => FluentActions.Invoking(() => CatalogueJson.Read(json)).Should().Throw<FormulaJsonException>().Which.Problems.Should().ContainSingle().Subject;

    [Fact]
    public void An_own_ingredient_is_added_with_its_sources()
    {
        Catalogue catalogue = CatalogueJson.Read(Document("""
            { "id": "house-verjus", "name": "House verjus", "category": "juice",
              "composition": { "water": 90, "sugars": 7, "read": "house-book" },
              "ph": { "value": 2.9, "recalled": "usda-food-ph" } }
            """));

        Ingredient verjus = catalogue.Get("house-verjus");
        verjus.Composition!.Value.WaterPercent.Should().Be(90);
        verjus.Composition.Citation.Source.Title.Should().Be("Bench book of the training kitchen");
        verjus.Ph!.Citation.IsRecalled.Should().BeTrue("it cites a source of the built-in catalogue, from memory");
        catalogue.All.Count.Should().Be(Catalogue.BuiltIn.All.Count + 1);
        catalogue.Sources.Count.Should().Be(Catalogue.BuiltIn.Sources.Count + 1);
        Catalogue.BuiltIn.TryGet("house-verjus", out _).Should().BeFalse("a catalogue never changes");
    }

    [Fact]
    public void An_entry_with_a_known_id_takes_its_place()
    {
        Catalogue catalogue = CatalogueJson.Read(Document("""{ "id": "pear-juice", "name": "Pear juice of this orchard", "brix": { "value": 13.1, "read": "house-book" } }"""));

        catalogue.Get("pear-juice").Brix!.Value.Should().Be(13.1);
        catalogue.All.Count.Should().Be(Catalogue.BuiltIn.All.Count);
    }

    [Fact]
    public void A_built_in_document_is_read_like_an_own_one()
    {
        using Stream agar = typeof(Catalogue).Assembly.GetManifestResourceStream("hydrocolloids/seaweed/agar.json")!;

        CatalogueJson.Read(agar, Catalogue.BuiltIn).Get("agar").Should().Be(Hydrocolloids.Agar);
    }

    [Fact]
    public void An_entry_that_is_like_another_states_only_what_differs()
    {
        Catalogue catalogue = CatalogueJson.Read(Document("""
            { "id": "house-agar", "like": "agar", "name": "Agar of the house", "hydrocolloid": {
              "minimumGellingPercent": { "value": 0.2, "read": "house-book" },
              "moreFacts": [ { "topic": "flavour", "text": "It smells of nothing.", "read": "house-book" } ] } },
            { "id": "strong-agar", "like": "house-agar", "name": "Strong agar", "hydrocolloid": { "facts": [] } }
            """));
        Ingredient house = catalogue.Get("house-agar");
        HydrocolloidProfile profile = house.Profile!, agar = Hydrocolloids.Agar.Profile!;

        profile.MinimumGellingPercent!.Value.Min.Should().Be(0.2);
        profile.Setting.Should().Be(agar.Setting);
        profile.Facts.Should().Equal([.. agar.Facts, profile.Facts[^1]]);
        profile.Facts[^1].Topic.Should().Be("flavour");
        house.Origin.Should().Be(Hydrocolloids.Agar.Origin);
        house.Provenance.Should().BeNull("where it comes from is each entry's own");
        house.BasedOn.Should().Be(Hydrocolloids.Agar, "rules that know agar by its id know this one");
        catalogue.Get("strong-agar").Profile!.MinimumGellingPercent!.Value.Min.Should().Be(0.2);
        catalogue.Get("strong-agar").Profile!.Facts.Should().BeEmpty();
    }

    [Theory]
    [InlineData("""{ "id": "x", "name": "X", "colour": "green" }""", "/ingredients/0")]
    [InlineData("""{ "id": "X y", "name": "X" }""", "/ingredients/0")]
    [InlineData("""{ "id": "x" }""", "/ingredients/0")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": "12", "read": "house-book" } }""", "/ingredients/0/brix/value")]
    [InlineData("""{ "id": "x", "name": "X", "brix": 12 }""", "/ingredients/0/brix")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "min": 11, "max": 12, "read": "house-book" } }""", "/ingredients/0/brix")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 12, "text": "ripe", "read": "house-book" } }""", "/ingredients/0/brix")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 12, "read": "house-book", "others": [{ "value": "11", "read": "house-book" }] } }""", "/ingredients/0/brix/others/0/value")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 12, "read": "house-book", "derivedFrom": ["house-book", "nowhere"] } }""", "/ingredients/0/brix/derivedFrom/1")]
    [InlineData("""{ "id": "x", "name": "X", "cautions": [{ "text": "Dusty.", "value": 1, "read": "house-book" }] }""", "/ingredients/0/cautions/0")]
    [InlineData("""{ "id": "x", "name": "X", "allergens": { "contains": ["milk", 7], "read": "house-book" } }""", "/ingredients/0/allergens/contains/1")]
    [InlineData("""{ "id": "x", "name": "X", "diet": { "vegan": "yes", "read": "house-book" } }""", "/ingredients/0/diet")]
    [InlineData("""{ "id": "x", "name": "X", "tannin": { "level": "low", "read": "house-book", "others": [] } }""", "/ingredients/0/tannin")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "minimumGellingPercent": { "min": 0.1, "value": 0.2, "read": "house-book" } } }""", "/ingredients/0/hydrocolloid/minimumGellingPercent")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 12 } }""", "/ingredients/0/brix")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 12, "read": "nowhere" } }""", "/ingredients/0/brix")]
    [InlineData("""{ "id": "x", "like": "y", "name": "X" }""", "/ingredients/0/like")]
    [InlineData("""{ "id": "x", "like": 1, "name": "X" }""", "/ingredients/0")]
    [InlineData("""{ "id": "x", "name": "X", "hydrocolloid": { "moreFacts": [] } }""", "/ingredients/0/hydrocolloid/moreFacts")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 12, "guessed": "house-book" } }""", "/ingredients/0/brix")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 12, "read": "house-book", "recalled": "house-book" } }""", "/ingredients/0/brix")]
    [InlineData("""{ "id": "x", "name": "X", "ph": { "value": 15, "read": "house-book" } }""", "/ingredients/0/ph")]
    [InlineData("""{ "id": "x", "name": "X", "composition": { "water": 90, "sugars": 20, "read": "house-book" } }""", "/ingredients/0/composition")]
    [InlineData("""{ "id": "x", "name": "X", "composition": { "water": -1, "read": "house-book" } }""", "/ingredients/0/composition/water")]
    [InlineData("""{ "id": "x", "name": "X", "category": null }""", "/ingredients/0/category")]
    [InlineData("""{ "id": "x", "name": "X", "category": "juicy" }""", "/ingredients/0/category")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 150, "read": "house-book" } }""", "/ingredients/0/brix")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": -5, "read": "house-book" } }""", "/ingredients/0/brix")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 1e400, "read": "house-book" } }""", "/ingredients/0/brix/value")]
    [InlineData("""{ "id": "x", "name": "X", "densityKgPerM3": { "value": 0, "read": "house-book" } }""", "/ingredients/0/densityKgPerM3")]
    [InlineData("""{ "id": "x", "name": "X", "titratableAcidity": { "value": 1, "as": "quinic", "read": "house-book" } }""", "/ingredients/0/titratableAcidity")]
    [InlineData("""{ "id": "x", "name": "X", "titratableAcidity": { "value": 101, "as": "malic", "read": "house-book" } }""", "/ingredients/0/titratableAcidity")]
    [InlineData("""{ "id": "x", "name": "X", "diet": { "vegan": true, "vegetarian": false, "read": "house-book" } }""", "/ingredients/0/diet")]
    [InlineData("""{ "id": "x", "name": "X", "allergens": { "contains": ["milk", "milk"], "read": "house-book" } }""", "/ingredients/0/allergens/contains/1")]
    [InlineData("""{ "id": "x", "name": "X", "composition": { "water": 90, "calcium": 20000, "read": "house-book" } }""", "/ingredients/0/composition")]
    [InlineData("""{ "id": "x", "name": "X", "ph": { "min": 3, "max": 15, "read": "house-book" } }""", "/ingredients/0/ph")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "minimumGellingPercent": { "value": 500, "read": "house-book" } } }""", "/ingredients/0/hydrocolloid/minimumGellingPercent")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "ph": { "range": { "min": 2, "max": 20, "read": "house-book" } } } }""", "/ingredients/0/hydrocolloid/ph/range")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "melting": { "celsius": { "value": 5000, "read": "house-book" } } } }""", "/ingredients/0/hydrocolloid/melting/celsius")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "melting": { "celsius": { "min": 90, "max": 80, "read": "house-book" } } } }""", "/ingredients/0/hydrocolloid/melting/celsius")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "grade": { "scale": "gel-strength", "value": 0 } }""", "/ingredients/0/grade/value")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "grade": { "scale": "firmness", "value": 900 } }""", "/ingredients/0/grade/scale")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "grade": { "scale": "gel-strength" } }""", "/ingredients/0/grade")]
    [InlineData("""{ "id": "x", "name": "X", "synonyms": "y" }""", "/ingredients/0/synonyms")]
    [InlineData("7", "/ingredients/0")]
    public void A_broken_entry_is_refused_with_its_place(string entry, string pointer)
    {
        FormulaJsonProblem problem = Refused(Document(entry));

        problem.Pointer.Should().StartWith(pointer);
        problem.LineNumber.Should().Be(1);
        problem.Message.Should().NotBeNullOrWhiteSpace().And.NotContain("Parameter").And.NotContain("Actual value");
    }

    [Theory]
    [InlineData("""{ "id": 1, "name": "X" }""", "/ingredients/0/id", "must be a text")]
    [InlineData("""{ "id": "x", "name": 1 }""", "/ingredients/0/name", "must be a text")]
    [InlineData("7", "/ingredients/0", "must be an object")]
    [InlineData("""{ "id": "x", "name": "X", "synonyms": ["Y", " "] }""", "/ingredients/0/synonyms/1", "must not be empty or blank")]
    [InlineData("""{ "id": "x", "name": "X", "category": "juicy" }""", "/ingredients/0/category", "there are water, juice,")]
    [InlineData("""{ "id": "x", "name": "X", "origin": { "class": "moon", "text": "Cheese.", "read": "house-book" } }""", "/ingredients/0/origin/class", "there are mineral, plant,")]
    [InlineData("""{ "id": "x", "name": "X", "tannin": { "level": "much", "read": "house-book" } }""", "/ingredients/0/tannin/level", "there are none, low, moderate, high")]
    [InlineData("""{ "id": "x", "name": "X", "allergens": { "contains": ["nuts"], "read": "house-book" } }""", "/ingredients/0/allergens/contains/0", "there are gluten,")]
    [InlineData("""{ "id": "x", "name": "X", "titratableAcidity": { "value": 1, "as": "quinic", "read": "house-book" } }""", "/ingredients/0/titratableAcidity/as", "there are citric, malic,")]
    [InlineData("""{ "id": "x", "name": "X", "protease": { "enzyme": " ", "active": true, "read": "house-book" } }""", "/ingredients/0/protease/enzyme", "must not be empty or blank")]
    [InlineData("""{ "id": "x", "name": "X", "milkProtein": { "casein": 1, "whey": true, "read": "house-book" } }""", "/ingredients/0/milkProtein/casein", "must be true or false")]
    [InlineData("""{ "id": "x", "name": "X", "diet": { "vegan": "yes", "read": "house-book" } }""", "/ingredients/0/diet/vegan", "must be true or false")]
    [InlineData("""{ "id": "x", "name": "X", "brix": { "value": 12, "read": "house-book", "others": [{ "value": 500, "read": "house-book" }] } }""", "/ingredients/0/brix/others/0", "between 0 and 100 °Brix, but is 500 °Brix")]
    [InlineData("""{ "id": "x", "name": "X", "ph": { "value": 3, "read": "house-book", "others": [{ "value": 50, "read": "house-book" }] } }""", "/ingredients/0/ph/others/0", "between 0 and 14 pH, but is 50 pH")]
    [InlineData("""{ "id": "x", "name": "X", "ph": { "value": 3, "min": 4, "max": 5, "read": "house-book" } }""", "/ingredients/0/ph", "outside its own range")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "grade": { "scale": "firmness", "value": 900 } }""", "/ingredients/0/grade/scale", "there are bloom, gel-strength, sag")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "doses": [{ "texture": "soft", "value": 1, "read": "house-book", "others": [{ "value": 500, "read": "house-book" }] }] } }""", "/ingredients/0/hydrocolloid/doses/0/others/0", "between 0 and 100 %")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "limits": [{ "of": "ph", "when": "finished", "harm": "fails", "consequence": "No gel.", "max": 20, "read": "house-book" }] } }""", "/ingredients/0/hydrocolloid/limits/0", "between 0 and 14 pH")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "limits": [{ "of": "ethanol", "when": "finished", "harm": "fails", "consequence": "No gel.", "max": 500, "read": "house-book" }] } }""", "/ingredients/0/hydrocolloid/limits/0", "between 0 and 100 %")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "limits": [{ "of": "temperature", "when": "finished", "harm": "fails", "consequence": "No gel.", "max": 5000, "read": "house-book" }] } }""", "/ingredients/0/hydrocolloid/limits/0", "between 0 and 1000 °C")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "limits": [{ "of": "ph", "when": "finished", "harm": "fails", "consequence": "No gel.", "max": 5, "stoodMinutes": -3, "read": "house-book" }] } }""", "/ingredients/0/hydrocolloid/limits/0/stoodMinutes", "but is -3 min")]
    [InlineData("""{ "id": "x", "like": "agar", "name": "X", "hydrocolloid": { "setting": { "hoursToStable": { "value": -1, "read": "house-book" } } } }""", "/ingredients/0/hydrocolloid/setting/hoursToStable", "but is -3600 s")]
    public void A_fault_is_told_with_its_member_and_the_limit(string entry, string pointer, string reason)
    {
        FormulaJsonProblem problem = Refused(Document(entry));

        problem.Pointer.Should().Be(pointer);
        problem.Message.Should().Contain(reason).And.NotContain("requested operation");
    }

    [Fact]
    public void Every_broken_entry_is_reported()
        => FluentActions.Invoking(() => CatalogueJson.Read(Document("""{ "id": "a" }, { "id": "b", "name": "B" }, { "id": "c", "name": "C", "x": 1 }, { "id": "b", "name": "B again" }""")))
            .Should().Throw<FormulaJsonException>().Which.Problems.Select(p => p.Pointer).Should().Equal("/ingredients/0", "/ingredients/2", "/ingredients/3/id");

    [Fact]
    public void A_lot_is_measured_and_has_a_grade()
    {
        Catalogue catalogue = CatalogueJson.Read(Document("""
            { "id": "strong-agar", "like": "agar", "name": "Agar of the house", "grade": { "scale": "gel-strength", "value": 900 } },
            { "id": "house-juice", "like": "apple-juice", "name": "Juice of the house", "ph": { "value": 3.3, "read": "bench" }, "brix": { "value": 11.2, "read": "bench" } }
            """, """[ { "id": "bench", "title": "Bench book of the training kitchen", "kind": "measurement" } ]"""));

        catalogue.Get("strong-agar").Grade.Should().Be(new Grade(GradeScale.GelStrength, 900));
        MixContents juice = Analysis.Contents.Of(catalogue.Get("house-juice"));
        juice.Ph!.Value.Should().BeApproximately(3.3, 1e-6);
        juice.Ph.How.Should().Be(ReckonedHow.Measured);
        juice.Brix.Value.Should().Be(11.2);
        juice.Brix.How.Should().Be(ReckonedHow.Measured);
        catalogue.Get("house-juice").Ph!.Citation.ToString().Should().Be("Bench book of the training kitchen [measured]", "whose measurement it is stays known");
    }

    [Theory]
    [InlineData("recalled", CitationQuality.Recalled)]
    [InlineData("estimated", CitationQuality.Estimate)]
    public void What_was_not_read_in_the_bench_book_was_not_measured(string basis, CitationQuality quality)
    {
        Catalogue catalogue = CatalogueJson.Read(Document($$"""{ "id": "house-juice", "like": "apple-juice", "name": "Juice of the house", "brix": { "value": 11.2, "{{basis}}": "bench" } }""",
            """[ { "id": "bench", "title": "Bench book of the training kitchen", "kind": "measurement" } ]"""));

        catalogue.Get("house-juice").Brix!.Citation.Quality.Should().Be(quality);
        Analysis.Contents.Of(catalogue.Get("house-juice")).Brix.How.Should().NotBe(ReckonedHow.Measured);
    }

    [Theory]
    [InlineData("""[{ "id": "a", "title": "A", "kind": "teaching" }, { "id": "a", "title": "B", "kind": "teaching" }]""", "/sources/1", "'a' is listed twice")]
    [InlineData("""[{ "id": "a", "title": "A", "kind": "teaching" }, { "title": "B", "kind": "teaching" }]""", "/sources/1", "needs an id")]
    [InlineData("""[{ "id": "a", "title": "A", "kind": "teaching" }, 7]""", "/sources/1", "must be an object")]
    [InlineData("""[{ "id": "a", "title": 7, "kind": "teaching" }]""", "/sources", "a/title must be a text")]
    [InlineData("""[{ "id": "a", "title": "A" }]""", "/sources", "a needs a kind")]
    public void A_broken_source_is_refused_with_its_place(string sources, string pointer, string reason)
    {
        FormulaJsonProblem problem = Refused(Document("", sources));

        problem.Pointer.Should().Be(pointer);
        problem.Message.Should().Contain(reason);
    }

    [Fact]
    public void Words_are_read_however_they_are_escaped()
    {
        Catalogue catalogue = CatalogueJson.Read(Document(
            """{ "id": "x", "name": "X", "br\u0069x": { "value": 12, "r\u0065ad": "house-b\u006fok", "at": "a\\u0062" } }, { "id": "y", "name": "Y", "brix": { "value": 12, "read": "house-book", "at": "a\u0062" } }"""));

        catalogue.Get("x").Brix!.Citation.Place.Should().Be(@"a\u0062");
        catalogue.Get("y").Brix!.Citation.Place.Should().Be("ab");
    }

    [Theory]
    [InlineData("", "syntax")]
    [InlineData("{", "syntax")]
    [InlineData("[]", "value-type")]
    [InlineData("""{ "format": "hydrocolloid-catalogue", "version": 2 }""", "version-newer")]
    [InlineData("""{ "format": "hydrocolloid-formula", "version": 1 }""", "format-unknown")]
    [InlineData("""{ "format": "hydrocolloid-catalogue", "version": 1, "version": 1 }""", "syntax")]
    [InlineData("""{ "format": "hydrocolloid-catalogue", "version": 1, "more": 1 }""", "member-unknown")]
    [InlineData("""{ "format": "hydrocolloid-catalogue", "version": 1, "sources": 1 }""", "value-type")]
    [InlineData(Own, "entry-invalid")]
    public void A_broken_document_is_refused(string json, string id) => Refused(json).Id.Should().Be(id);

    [Fact]
    public void No_mutation_of_a_document_gives_another_exception()
    {
        byte[] sound = Encoding.UTF8.GetBytes(Document("""{ "id": "x", "name": "X", "brix": { "value": 12, "read": "house-book" } }"""));
        CsCheck.Check.Sample(CsCheck.Gen.Select(CsCheck.Gen.Int[0, sound.Length - 1], CsCheck.Gen.Byte), (at, value) =>
        {
            byte[] mutated = [.. sound];
            mutated[at] = value;
            try
            {
                _ = CatalogueJson.Read(mutated.AsSpan(), Catalogue.BuiltIn);
            }
            catch (FormulaJsonException e)
            {
                e.Problems.Count.Should().BePositive();
            }
        }, iter: 5000);
    }
}
