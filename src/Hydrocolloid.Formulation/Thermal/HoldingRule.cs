using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>The limits for holding food that needs temperature control: hot above one temperature, cold below another. The local food code decides. Immutable, equal by content.</summary>
public sealed record HoldingRule
{
    private HoldingRule(string id, Cited<double> hotMinCelsius, Cited<double> coldMaxCelsius)
    {
        Id = id;
        HotMinCelsius = hotMinCelsius;
        ColdMaxCelsius = coldMaxCelsius;
    }

    /// <summary>United States: 57 °C or above, 5 °C or below.</summary>
    public static HoldingRule UsFoodCode { get; } = new("us-food-code", new(57, CoolingSources.FoodCodeHolding), new(5, CoolingSources.FoodCodeHolding));

    /// <summary>United Kingdom: 63 °C or above, 8 °C or below by law; 5 °C is advised.</summary>
    public static HoldingRule UnitedKingdom { get; } = new("uk", new(63, CoolingSources.WalesHot), new(8, CoolingSources.EnglandChill, "5 °C is advised"));

    /// <summary>Kebab-case id.</summary>
    public string Id { get; }

    /// <summary>The lowest temperature of hot food, °C.</summary>
    public Cited<double> HotMinCelsius { get; }

    /// <summary>The highest temperature of cold food, °C.</summary>
    public Cited<double> ColdMaxCelsius { get; }

    /// <summary>Where a temperature lies.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>Hot or cold enough, or between.</returns>
    public HoldingOutcome Check(Temperature temperature)
    {
        double celsius = Guard.Celsius(temperature);
        return celsius >= HotMinCelsius.Value ? HoldingOutcome.Hot : celsius <= ColdMaxCelsius.Value ? HoldingOutcome.Cold : HoldingOutcome.Between;
    }
}
