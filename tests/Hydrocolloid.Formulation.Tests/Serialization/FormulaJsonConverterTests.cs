using System.Text.Json;
using System.Text.Json.Serialization;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Serialization;

public partial class FormulaJsonConverterTests
{
    [Fact]
    public void A_formula_stands_in_a_document_of_someone_elses()
    {
        var card = new Card { Kitchen = "north", Dish = FormulaJson.Read(Documents.Layers) };

        string json = JsonSerializer.Serialize(card, CardContext.Default.Card);

        json.Should().StartWith("{\"Kitchen\":\"north\",\"Dish\":{\"format\":\"hydrocolloid-formula\",\"version\":1,");
        JsonSerializer.Deserialize(json, CardContext.Default.Card)!.Dish.Should().Be(card.Dish);
        JsonSerializer.Deserialize("{\"Dish\":null}", CardContext.Default.Card)!.Dish.Should().BeNull();
        JsonSerializer.Serialize(new Card(), CardContext.Default.Card).Should().Contain("\"Dish\":null");
    }

    [Fact]
    public void What_is_not_a_formula_is_a_JsonException_with_every_problem()
    {
        string json = "{\"Kitchen\":\"north\",\"Dish\":" + Documents.With(percent: "-1") + "}";

        JsonException thrown = FluentActions.Invoking(() => JsonSerializer.Deserialize(json, CardContext.Default.Card)).Should().Throw<JsonException>().Which;

        thrown.InnerException.Should().BeOfType<FormulaJsonException>().Which.Problems.Single().Pointer.Should().Be("/phases/0/add/0/percent");
        thrown.Message.Should().Contain("/phases/0/add/0/percent");
    }

    [Fact]
    public void A_catalogue_of_ones_own_can_be_given()
    {
        Ingredient own = Ingredient.Own("house-stock", "House stock");
        var context = new CardContext(new JsonSerializerOptions { Converters = { new FormulaJsonConverter(Catalogue.BuiltIn.With(own)) } });
        Formula formula = Formula.Named("Sheet").Base(b => b.Share(own, 100)).Build();

        string json = JsonSerializer.Serialize(formula, context.Formula);

        json.Should().NotContain("ingredients");
        JsonSerializer.Deserialize(json, context.Formula).Should().Be(formula);
    }

    internal sealed class Card
    {
        public string? Kitchen { get; set; }

        public Formula? Dish { get; set; }
    }

    [JsonSourceGenerationOptions(Converters = [typeof(FormulaJsonConverter)])]
    [JsonSerializable(typeof(Card))]
    [JsonSerializable(typeof(Formula))]
    internal sealed partial class CardContext : JsonSerializerContext;
}
