using System.Globalization;
using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Declarations;
using Hydrocolloid.Formulation.Exchange;
using Hydrocolloid.Formulation.Tests.Serialization;
using Hydrocolloid.Formulation.Text;
using Json.Schema;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Exchange;

public class JsonExportTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(Documents.File("costing-lines.schema.json"));

    private static Batch Jelly() => Formula.Named("Pear </script> jelly")
        .Base(b => b.Share(Pantry.PearJuice, 100))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.45).OfPreceding).Add(Ingredient.Own("pearls", "Pearls"), Dose.Percent(1).OfBase))
        .Build().ScaleTo(Yield.Portions(48, Mass.FromGrams(35)));

    private static JsonElement[] Lines(byte[] bytes)
    {
        string text = Encoding.UTF8.GetString(bytes);
        text.Should().EndWith("\n").And.NotContain("\r");
        return [.. text.TrimEnd('\n').Split('\n').Select(l => JsonDocument.Parse(l).RootElement)];
    }

    [Fact]
    public void Every_costing_line_fits_the_schema()
    {
        var export = new CostingExport("pear-jelly")
        {
            FormulaVersion = "2.1",
            ExportedAt = new DateTimeOffset(2026, 3, 4, 5, 6, 7, TimeSpan.FromHours(2)),
            GtinOf = i => i.Id == "agar" && Gtin.TryParse("6291041500213", out Gtin? gtin, out _) ? gtin : null,
        };

        JsonElement[] lines = Lines(CostingLines.Write(Jelly(), export));

        lines.Should().HaveCount(3).And.OnlyContain(l => s_schema.Evaluate(l, null).IsValid);
        lines[1].GetProperty("gtin").GetString().Should().Be("06291041500213");
        lines[1].GetProperty("eNumbers")[0].GetString().Should().Be("E 406");
        lines[1].GetProperty("role").GetString().Should().Be("gelling-agent");
        lines[0].GetProperty("exportedAt").GetString().Should().Be("2026-03-04T05:06:07+02:00");
        lines.Select(l => l.GetProperty("allergenStatus").GetString()).Should().Equal("none-known", "none-known", "unknown");
        s_schema.Evaluate(JsonDocument.Parse("{}").RootElement).IsValid.Should().BeFalse();
        s_schema.Evaluate(JsonDocument.Parse(lines[0].GetRawText().Replace("\"GRM\"", "\"KG\"", StringComparison.Ordinal)).RootElement).IsValid.Should().BeFalse();
    }

    [Fact]
    public void Costs_are_exact_and_the_rounded_ones_add_up_to_the_rounded_batch()
    {
        Batch batch = Jelly();
        CostSheet Sheet(params string[] priced) => batch.Cost(new PriceList(Currency.Of("EUR"), priced.Select(p => Price.PerMass(p, new Money(9.99m, "EUR"), Mass.FromGrams(700)))), new DateTime(2026, 3, 1));
        CostSheet whole = Sheet("pear-juice", "agar", "pearls");

        JsonElement[] lines = Lines(CostingLines.Write(batch, new CostingExport("f") { Costs = whole }));

        lines.Should().OnlyContain(l => s_schema.Evaluate(l, null).IsValid && l.GetProperty("currency").GetString() == "EUR" && l.GetProperty("pricedOn").GetString() == "2026-03-01");
        decimal Of(JsonElement line, string member) => decimal.Parse(line.GetProperty(member).GetString()!, CultureInfo.InvariantCulture);
        lines.Sum(l => Of(l, "cost")).Should().Be(whole.Ingredients!.Amount);
        lines.Sum(l => Of(l, "roundedCost")).Should().Be(whole.Ingredients!.Rounded().Amount);
        lines.Should().OnlyContain(l => l.GetProperty("roundedCost").GetString()!.Split('.')[1].Length == 2);

        JsonElement[] gaps = Lines(CostingLines.Write(batch, new CostingExport("f") { Costs = Sheet("pear-juice", "agar") }));
        gaps.Should().OnlyContain(l => s_schema.Evaluate(l, null).IsValid);
        gaps.Select(l => (l.TryGetProperty("cost", out _), l.TryGetProperty("costGap", out _), l.TryGetProperty("roundedCost", out _)))
            .Should().Equal((true, false, false), (true, false, false), (false, true, false));
        FluentActions.Invoking(() => CostingLines.Write(Jelly(), new CostingExport("f") { Costs = whole })).Should().Throw<ArgumentException>().WithMessage("*another batch*");
    }

    [Fact]
    public void Quantities_are_exact_and_in_the_unit_of_purchase()
    {
        Batch batch = Jelly();
        KitchenUnit.TryFind(QuantityKind.Mass, "kg", out KitchenUnit? kilogram, out _);
        KitchenUnit.TryFind(QuantityKind.Volume, "L", out KitchenUnit? litre, out _);

        JsonElement[] lines = Lines(CostingLines.Write(batch, new CostingExport("f") { UnitOf = i => i.Id == "agar" ? kilogram : i.Id == "pear-juice" ? litre : null }));

        for (int i = 0; i < lines.Length; i++)
        {
            double.Parse(lines[i].GetProperty("grams").GetString()!, NumberStyles.Float, CultureInfo.InvariantCulture).Should().Be(batch.Lines[i].Mass.Grams);
        }

        (lines[1].GetProperty("unitCode").GetString(), lines[1].GetProperty("ucum").GetString()).Should().Be(("KGM", "kg"));
        (decimal.Parse(lines[1].GetProperty("quantity").GetString()!, CultureInfo.InvariantCulture) * 1000).Should().Be(decimal.Parse(lines[1].GetProperty("grams").GetString()!, CultureInfo.InvariantCulture));
        double litres = double.Parse(lines[0].GetProperty("quantity").GetString()!, CultureInfo.InvariantCulture);
        (litres * Pantry.PearJuice.DensityAt20C!.Value.KilogramsPerCubicMeter).Should().BeApproximately(batch.Lines[0].Mass.Grams, 1e-9);
        FluentActions.Invoking(() => CostingLines.Write(batch, new CostingExport("f") { UnitOf = _ => litre })).Should().Throw<ArgumentException>().WithMessage("*density of*");
    }

    [Fact]
    public void Allergens_are_codes_of_GS1()
    {
        // GS1 allergen type codes AM and AY (read); the milk and soybeans of the chocolate are the catalogue's.
        Batch batch = Formula.Named("f").Base(b => b.Share(Catalogue.BuiltIn.Get("chocolate-dark"), 100)).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(100)));

        Lines(CostingLines.Write(batch, new CostingExport("f")))[0].GetProperty("allergens").EnumerateArray().Select(a => a.GetString()).Should().BeEquivalentTo("AM", "AY");
    }

    [Theory]
    [InlineData("KGM", "kg", 1000)]
    [InlineData("GRM", "g", 1)]
    [InlineData("MGM", "mg", 0.001)]
    [InlineData("TNE", "t", 1e6)]
    [InlineData("LBR", "[lb_av]", 453.59237)]
    [InlineData("ONZ", "[oz_av]", 28.349523125)]
    [InlineData("LTR", "L", 1000)]
    [InlineData("MLT", "mL", 1)]
    [InlineData("OZA", "[foz_us]", 29.5735295625)]
    [InlineData("OZI", "[foz_br]", 28.4130625)]
    [InlineData("GLL", "[gal_us]", 3785.411784)]
    [InlineData("PTI", "[pt_br]", 568.26125)]
    public void Codes_of_recommendation_20_are_the_units_of_UCUM(string code, string ucum, double factor)
    {
        // UN/ECE Recommendation 20, revision 11e, and UCUM 2.2, both read.
        UnitCodes.TryFind(code, out KitchenUnit? unit).Should().BeTrue();
        (unit!.Code, unit.Factor).Should().Be((ucum, factor));
        UnitCodes.Of(unit).Should().Be(code);
    }

    [Theory]
    [InlineData("KG")]
    [InlineData("G")]
    [InlineData("L")]
    [InlineData("ML")]
    [InlineData("LB")]
    [InlineData("OZ")]
    [InlineData("GM")]
    [InlineData("NL")]
    [InlineData("G21")]
    [InlineData("kgm")]
    [InlineData("")]
    [InlineData(null)]
    public void Common_words_and_traps_are_no_codes(string? code) => UnitCodes.TryFind(code, out _).Should().BeFalse();

    [Theory]
    [InlineData("2012345678900", true)]
    [InlineData("0212345678903", true)]
    [InlineData("6291041500213", false)]
    public void A_number_of_the_shop_itself_is_marked(string number, bool inStore)
    {
        // GS1 General Specifications, prefixes 02 and 20 to 29 (recalled)
        string body = number[..^1];
        Gtin.TryParse(body + Gtin.CheckDigit(body), out Gtin? gtin, out _).Should().BeTrue();
        gtin!.IsInStore.Should().Be(inStore);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("629104150021")]
    [InlineData("6291041500213 ")]
    [InlineData("629104150021٣")]
    public void What_is_no_gtin_is_refused(string? text)
    {
        Gtin.TryParse(text, out _, out string error).Should().BeFalse();
        error.Should().NotBeEmpty();
    }

    [Fact]
    public void The_recipe_holds_only_what_schema_org_knows_of_each_type()
    {
        Batch batch = Jelly();
        byte[] bytes = RecipeJsonLd.Write(batch, batch.Formula.PlanMethod(), batch.Declare(), "en-GB");
        JsonElement recipe = JsonDocument.Parse(bytes).RootElement;

        recipe.GetProperty("@context").GetString().Should().Be("https://schema.org");
        recipe.GetProperty("@type").GetString().Should().Be("Recipe");
        recipe.GetProperty("recipeIngredient").GetArrayLength().Should().Be(3);
        recipe.GetProperty("recipeIngredient")[1].GetString().Should().EndWith(" g Agar");
        recipe.GetProperty("recipeInstructions").GetArrayLength().Should().Be(batch.Formula.PlanMethod().Steps.Count);
        recipe.GetProperty("recipeYield")[0].GetProperty("value").GetDouble().Should().Be(48);
        recipe.TryGetProperty("suitableForDiet", out _).Should().BeFalse("nothing is known of the pearls");
        recipe.GetProperty("nutrition").TryGetProperty("sodiumContent", out _).Should().BeFalse();
        Encoding.UTF8.GetString(bytes).Should().NotContain("</script>");
        Check(recipe);
    }

    [Fact]
    public void Nutrition_of_a_known_food_is_per_portion_and_a_vegan_one_is_said_to_be_vegan()
    {
        Batch batch = Formula.Named("f").Base(b => b.Share(Pantry.PearJuice, 100)).Build().ScaleTo(Yield.Portions(2, Mass.FromGrams(50)));
        JsonElement recipe = JsonDocument.Parse(RecipeJsonLd.Write(batch, null, batch.Declare())).RootElement;

        recipe.GetProperty("nutrition").GetProperty("servingSize").GetString().Should().Be("50 g");
        recipe.GetProperty("nutrition").GetProperty("sugarContent").GetString().Should().EndWith(" g");
        recipe.GetProperty("suitableForDiet").GetString().Should().Be("https://schema.org/VeganDiet");
        Check(recipe);
    }

    /// <summary>Properties of schema.org 30.0 (19 March 2026, read), those of the parent types among them, as far as the export may use them.</summary>
    private static readonly Dictionary<string, string[]> s_properties = new()
    {
        ["Recipe"] = ["name", "description", "identifier", "inLanguage", "recipeYield", "recipeIngredient", "recipeInstructions", "supply", "nutrition", "suitableForDiet", "totalTime", "prepTime", "cookTime"],
        ["HowToSupply"] = ["name", "identifier", "requiredQuantity", "estimatedCost"],
        ["HowToStep"] = ["name", "position", "text"],
        ["QuantitativeValue"] = ["value", "unitCode", "unitText", "minValue", "maxValue"],
        ["NutritionInformation"] =
        [
            "calories", "carbohydrateContent", "cholesterolContent", "fatContent", "fiberContent", "proteinContent", "saturatedFatContent", "servingSize", "sodiumContent", "sugarContent",
            "transFatContent", "unsaturatedFatContent",
        ],
    };

    private static void Check(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (JsonElement item in element.EnumerateArray())
            {
                Check(item);
            }
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            string[] known = s_properties[element.GetProperty("@type").GetString()!];
            foreach (JsonProperty member in element.EnumerateObject().Where(m => m.Name[0] != '@'))
            {
                known.Should().Contain(member.Name);
                Check(member.Value);
            }
        }
    }
}
