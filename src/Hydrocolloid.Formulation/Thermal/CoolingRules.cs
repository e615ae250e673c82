namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Rules on cooling cooked food that needs temperature control. They differ from place to place and are revised: the local food code decides.</summary>
public static class CoolingRules
{
    /// <summary>United States: 57 to 21 °C within 2 h, and 57 to 5 °C within 6 h in all. Food at air temperature all along the way meets both or neither: from 3 °C air one Newtonian curve meets the two exactly.</summary>
    public static CoolingRule UsFoodCode { get; } = new("us-food-code", "US Food Code, two stages", CoolingSources.FoodCodeCooling, new CoolingLimit(57, 21, 2), new CoolingLimit(57, 5, 6));

    /// <summary>United States, food made from ingredients at ambient temperature: to 5 °C within 4 h.</summary>
    public static CoolingRule UsFoodCodeFromAmbient { get; } = new("us-food-code-from-ambient", "US Food Code, from ambient temperature", CoolingSources.FoodCodeCooling, new CoolingLimit(null, 5, 4));

    /// <summary>The older form in the United States: 60 to 21 °C within 2 h, then 21 to 5 °C within 4 h.</summary>
    public static CoolingRule UsOlder { get; } = new("us-older", "US, older adoptions", CoolingSources.MaineCooling, new CoolingLimit(60, 21, 2), new CoolingLimit(21, 5, 4));

    /// <summary>United Kingdom, guidance and not law: from 63 °C to 8 °C within 90 min (recalled). A council's leaflet that was read says that food is not to be left out more than an hour and a half.</summary>
    public static CoolingRule UkGuidance { get; } = new("uk-guidance", "UK guidance, 90 minutes", CoolingSources.UkGuide, new CoolingLimit(63, 8, 1.5));

    /// <summary>Australia and New Zealand: 60 to 21 °C within 2 h, then 21 to 5 °C within 4 h (recalled; the first stage was read in the State of Victoria's rules).</summary>
    public static CoolingRule Australia { get; } = new("au", "Food Standards Code 3.2.2", CoolingSources.Fsanz, new CoolingLimit(60, 21, 2), new CoolingLimit(21, 5, 4));

    /// <summary>Codex, mass catering: the core from 60 to 10 °C within 2 h (recalled), then stored at 4 °C or below.</summary>
    public static CoolingRule Codex { get; } = new("codex", "Codex, mass catering", CoolingSources.Codex, new CoolingLimit(60, 10, 2));

    /// <summary>All of them.</summary>
    public static ValueList<CoolingRule> All { get; } = ValueList<CoolingRule>.From([UsFoodCode, UsFoodCodeFromAmbient, UsOlder, UkGuidance, Australia, Codex]);
}
