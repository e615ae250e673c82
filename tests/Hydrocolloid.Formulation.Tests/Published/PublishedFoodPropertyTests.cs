using System.Text.Json;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>The checks of <c>food-property-checks.json</c>, which holds each one's source, tolerance and how it was seen.</summary>
public class PublishedFoodPropertyTests
{
    private static readonly JsonElement s_document = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", "food-property-checks.json"))).RootElement;

    public static TheoryData<string> Ids => [.. s_document.GetProperty("checks").EnumerateArray().Select(c => c.GetProperty("id").GetString()!)];

    [Theory, MemberData(nameof(Ids))]
    public void Value_is_met(string id)
    {
        JsonElement check = s_document.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("id").GetString() == id);
        FoodShares food = Food(check.GetProperty("food"));
        double value = Value(check.GetProperty("property").GetString()!, food, check.GetProperty("celsius").GetDouble());
        if (check.TryGetProperty("asSum", out _))
        {
            value *= food.SumPercent / 100;
        }

        double min = check.TryGetProperty("expected", out JsonElement expected) ? expected.GetDouble() : check.GetProperty("min").GetDouble();
        double max = expected.ValueKind == JsonValueKind.Number ? min : check.GetProperty("max").GetDouble();
        double tolerance = check.GetProperty("tolerance").GetDouble();
        double allowed = check.TryGetProperty("within", out JsonElement within) ? within.GetDouble() : tolerance;

        allowed.Should().BeGreaterThanOrEqualTo(tolerance);
        value.Should().BeInRange(min - allowed, max + allowed);
    }

    [Fact]
    public void Every_check_is_cited_and_every_wider_tolerance_and_omission_has_its_reason()
    {
        foreach (JsonElement check in s_document.GetProperty("checks").EnumerateArray())
        {
            check.GetProperty("source").GetString().Should().NotBeNullOrWhiteSpace();
            check.GetProperty("seen").GetString().Should().BeOneOf("read", "recalled", "derived");
            (!check.TryGetProperty("within", out _) || check.TryGetProperty("note", out _)).Should().BeTrue(check.GetProperty("id").GetString());
        }

        s_document.GetProperty("leftOut").EnumerateArray().Should().OnlyContain(c => c.GetProperty("why").GetString()!.Length > 10);
    }

    private static FoodShares Food(JsonElement food)
    {
        double Part(string name) => food.TryGetProperty(name, out JsonElement value) ? value.GetDouble() : 0;
        return new FoodShares(Part("water"), Part("protein"), Part("fat"), Part("carbohydrate"), Part("fibre"), Part("ash"));
    }

    private static double Value(string property, FoodShares food, double celsius)
    {
        Temperature at = Temperature.FromDegreesCelsius(celsius);
        return property switch
        {
            "density" => FoodProperties.DensityOf(food, at).Value.KilogramsPerCubicMeter,
            "specificHeat" => FoodProperties.SpecificHeatOf(food, at).Value.KilojoulesPerKilogramKelvin,
            _ => FoodProperties.ConductivityOf(food, at).Value.WattsPerMeterKelvin,
        };
    }
}
