using System.Text;
using Hydrocolloid.Formulation.Internal;
using static Hydrocolloid.Formulation.Text.QuantityKind;

namespace Hydrocolloid.Formulation.Text;

/// <summary>The known units, and the words for why a text is none of them.</summary>
internal static class UnitTable
{
    private const string Si = "SI Brochure, 9th ed. (2019)";
    private const string Ucum = "UCUM, specification 2.1";
    private const string Nist44 = "NIST Handbook 44, Appendix C";
    private const string Nist811 = "NIST SP 811 (2008), Appendix B";
    private const string Uk = "UK Weights and Measures Act 1985, Schedule 1";
    private const string Label = "UCUM, specification 2.1; 21 CFR 101.9(b)(5)(viii)";
    private const string Australia = "Standards Australia metric cup and spoon set";

    private static readonly KitchenUnit[] s_all =
    [
        new(Mass, "g", "gram", 1, Si, ["g", "gram", "grams"]),
        new(Mass, "kg", "kilogram", 1000, Si, ["kg", "kilogram", "kilograms"]),
        new(Mass, "mg", "milligram", 0.001m, Si, ["mg", "milligram", "milligrams"]),
        new(Mass, "ug", "microgram", 0.000_001m, Si, ["\u00B5g", "\u03BCg", "microgram", "micrograms"]),
        new(Mass, "t", "tonne", 1_000_000, Si, ["t", "tonne", "tonnes"]),
        new(Mass, "[oz_av]", "avoirdupois ounce", 28.349523125m, Nist44, ["oz", "ounce", "ounces"]),
        new(Mass, "[lb_av]", "avoirdupois pound", 453.59237m, Nist44, ["lb", "lbs", "pound", "pounds"]),

        new(Volume, "mL", "millilitre", 1, Si, ["mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters"]),
        new(Volume, "L", "litre", 1000, Si, ["L", "l", "litre", "litres", "liter", "liters"]),
        new(Volume, "cL", "centilitre", 10, Si, ["cL", "cl"]),
        new(Volume, "dL", "decilitre", 100, Si, ["dL", "dl"]),
        new(Volume, "cm3", "cubic centimetre", 1, Si, ["cm³", "cc"]),
        new(Volume, "m3", "cubic metre", 1_000_000, Si, ["m³"]),
        Us("[tsp_us]", "teaspoon", 4.92892159375m, KitchenMeasure.Teaspoon, "US tsp", "US teaspoon", "US teaspoons"),
        Us("[tbs_us]", "tablespoon", 14.78676478125m, KitchenMeasure.Tablespoon, "US tbsp", "US tablespoon", "US tablespoons"),
        Us("[foz_us]", "fluid ounce", 29.5735295625m, KitchenMeasure.FluidOunce, "US fl oz", "US fluid ounce", "US fluid ounces"),
        Us("[cup_us]", "cup", 236.5882365m, KitchenMeasure.Cup, "US cup", "US cups"),
        Us("[pt_us]", "liquid pint", 473.176473m, KitchenMeasure.Pint, "US pint", "US pints", "US pt"),
        Us("[qt_us]", "liquid quart", 946.352946m, KitchenMeasure.Quart, "US quart", "US quarts", "US qt"),
        Us("[gal_us]", "gallon", 3785.411784m, KitchenMeasure.Gallon, "US gallon", "US gallons", "US gal"),
        new(Volume, "[tsp_m]", "metric teaspoon", 5, Label, ["metric tsp", "metric teaspoon", "metric teaspoons"], measure: KitchenMeasure.Teaspoon),
        new(Volume, "[tbs_m]", "metric tablespoon", 15, Label, ["metric tbsp", "metric tablespoon", "metric tablespoons"], measure: KitchenMeasure.Tablespoon),
        new(Volume, "[cup_m]", "cup of United States nutrition labels (UCUM calls it metric)", 240, Label,
            ["US label cup", "US label cups"], measure: KitchenMeasure.Cup),
        new(Volume, "tbs-au", "Australian tablespoon", 20, Australia,
            ["Australian tbsp", "Australian tablespoon", "Australian tablespoons"], isUcum: false, measure: KitchenMeasure.Tablespoon),
        new(Volume, "cup-250", "metric cup", 250, Australia,
            ["metric cup", "metric cups", "Australian cup", "Australian cups"], isUcum: false, measure: KitchenMeasure.Cup),
        Imperial("[foz_br]", "fluid ounce", 28.4130625m, KitchenMeasure.FluidOunce, "imperial fl oz", "imperial fluid ounce", "imperial fluid ounces"),
        Imperial("[pt_br]", "pint", 568.26125m, KitchenMeasure.Pint, "imperial pint", "imperial pints", "imperial pt"),
        Imperial("[qt_br]", "quart", 1136.5225m, KitchenMeasure.Quart, "imperial quart", "imperial quarts", "imperial qt"),
        Imperial("[gal_br]", "gallon", 4546.09m, KitchenMeasure.Gallon, "imperial gallon", "imperial gallons", "imperial gal"),

        new(Temperature, "Cel", "degree Celsius", 1, Si, ["°C", "C"]),
        new(Temperature, "[degF]", "degree Fahrenheit", 5, Nist811, ["°F", "F"], divisor: 9, zero: 32),
        new(Temperature, "K", "kelvin", 1, Si, ["K"], zero: 273.15m),

        new(TemperatureDifference, "K", "kelvin", 1, Si, ["K"]),
        new(TemperatureDifference, "Cel", "degree Celsius of difference", 1, Si, ["°C", "C"]),
        new(TemperatureDifference, "[degF]", "degree Fahrenheit of difference", 5, Nist811, ["°F", "F"], divisor: 9),

        new(Duration, "s", "second", 1, Si, ["s", "sec", "second", "seconds"]),
        new(Duration, "min", "minute", 60, Si, ["min", "minute", "minutes"]),
        new(Duration, "h", "hour", 3600, Si, ["h", "hour", "hours"]),
        new(Duration, "d", "day", 86_400, Si, ["d", "day", "days"]),

        new(Length, "m", "metre", 1, Si, ["m", "metre", "metres", "meter", "meters"]),
        new(Length, "mm", "millimetre", 0.001m, Si, ["mm"]),
        new(Length, "cm", "centimetre", 0.01m, Si, ["cm"]),
        new(Length, "km", "kilometre", 1000, Si, ["km"]),
        new(Length, "[in_i]", "international inch", 0.0254m, Nist44, ["in", "inch", "inches"]),
        new(Length, "[ft_i]", "international foot", 0.3048m, Nist44, ["ft", "foot", "feet"]),

        new(Pressure, "Pa", "pascal", 1, Si, ["Pa"]),
        new(Pressure, "kPa", "kilopascal", 1000, Si, ["kPa"]),
        new(Pressure, "hPa", "hectopascal", 100, Si, ["hPa"]),
        new(Pressure, "mbar", "millibar", 100, Nist811, ["mbar"]),
        new(Pressure, "bar", "bar", 100_000, Nist811, ["bar"]),
        new(Pressure, "atm", "standard atmosphere", 101_325, Nist811, ["atm"]),
        new(Pressure, "mm[Hg]", "millimetre of mercury", 133.322m, Ucum, ["mmHg"]),

        new(Density, "kg/m3", "kilogram per cubic metre", 1, Si, ["kg/m³"]),
        new(Density, "g/mL", "gram per millilitre", 1000, Si, ["g/mL", "g/ml"]),
        new(Density, "g/cm3", "gram per cubic centimetre", 1000, Si, ["g/cm³"]),

        new(Percent, "%", "per cent", 1, Si, ["%"]),
    ];

    private static readonly Dictionary<string, KitchenMeasure> s_bareMeasures = new(StringComparer.OrdinalIgnoreCase)
    {
        ["tsp"] = KitchenMeasure.Teaspoon,
        ["tsps"] = KitchenMeasure.Teaspoon,
        ["tsp."] = KitchenMeasure.Teaspoon,
        ["teaspoon"] = KitchenMeasure.Teaspoon,
        ["teaspoons"] = KitchenMeasure.Teaspoon,
        ["tbs"] = KitchenMeasure.Tablespoon,
        ["tbsp"] = KitchenMeasure.Tablespoon,
        ["tbsps"] = KitchenMeasure.Tablespoon,
        ["tbsp."] = KitchenMeasure.Tablespoon,
        ["tablespoon"] = KitchenMeasure.Tablespoon,
        ["tablespoons"] = KitchenMeasure.Tablespoon,
        ["cup"] = KitchenMeasure.Cup,
        ["cups"] = KitchenMeasure.Cup,
        ["oz"] = KitchenMeasure.FluidOunce,
        ["ounce"] = KitchenMeasure.FluidOunce,
        ["ounces"] = KitchenMeasure.FluidOunce,
        ["floz"] = KitchenMeasure.FluidOunce,
        ["fl oz"] = KitchenMeasure.FluidOunce,
        ["fl. oz"] = KitchenMeasure.FluidOunce,
        ["fl. oz."] = KitchenMeasure.FluidOunce,
        ["fluid ounce"] = KitchenMeasure.FluidOunce,
        ["fluid ounces"] = KitchenMeasure.FluidOunce,
        ["pt"] = KitchenMeasure.Pint,
        ["pint"] = KitchenMeasure.Pint,
        ["pints"] = KitchenMeasure.Pint,
        ["qt"] = KitchenMeasure.Quart,
        ["quart"] = KitchenMeasure.Quart,
        ["quarts"] = KitchenMeasure.Quart,
        ["gal"] = KitchenMeasure.Gallon,
        ["gallon"] = KitchenMeasure.Gallon,
        ["gallons"] = KitchenMeasure.Gallon,
    };

    public static IReadOnlyList<KitchenUnit> All { get; } = Array.AsReadOnly(s_all);

    public static KitchenUnit Get(QuantityKind kind, string text)
        => TryFind(KindFacts.Of(kind), text, out KitchenUnit? unit, out string error) ? unit! : throw new FormatException(error);

    public static bool TryFind(KindFacts kind, string? text, out KitchenUnit? unit, out string error)
    {
        unit = string.IsNullOrEmpty(text) ? null : Find(kind.Kind, text!, StringComparison.Ordinal);
        error = unit is null ? WhyNot(kind, text ?? "") : "";
        return unit is not null;
    }

    private static KitchenUnit? Find(QuantityKind? kind, string text, StringComparison comparison)
    {
        foreach (KitchenUnit unit in s_all)
        {
            if (kind is not null && unit.Kind != kind)
            {
                continue;
            }

            if (string.Equals(unit.Code, text, comparison))
            {
                return unit;
            }

            foreach (string symbol in unit.Symbols)
            {
                if (string.Equals(symbol, text, comparison))
                {
                    return unit;
                }
            }
        }

        return null;
    }

    private static string WhyNot(KindFacts kind, string text)
    {
        if (text.Length == 0)
        {
            return $"The unit is missing. Known units of {kind.Noun}: {Choices(kind.Kind)}.";
        }

        string quoted = Quote(text);
        if (text is "T")
        {
            return kind.Kind == Mass
                ? $"Unit {quoted} is refused: the tonne is \"t\", and a recipe's T is a tablespoon, which is a volume."
                : kind.Kind == Volume ? Several(quoted, KitchenMeasure.Tablespoon) : Unknown(kind, quoted);
        }

        if (text is "t" && kind.Kind == Volume)
        {
            return Several(quoted, KitchenMeasure.Teaspoon);
        }

        bool isBare = s_bareMeasures.TryGetValue(text, out KitchenMeasure measure);
        if (isBare && kind.Kind == Volume)
        {
            return Several(quoted, measure);
        }

        if (Find(null, text, StringComparison.Ordinal) is { } other)
        {
            return $"Unit {quoted} measures {KindFacts.Of(other.Kind).Noun}, not {kind.Noun}.";
        }

        if (Find(kind.Kind, text, StringComparison.OrdinalIgnoreCase) is { } near)
        {
            return $"Unit {quoted} is not known: units are case-sensitive, and this is not {near.Symbol}. Known units of {kind.Noun}: {Choices(kind.Kind)}.";
        }

        return isBare ? $"Unit {quoted} measures volume, not {kind.Noun}." : Unknown(kind, quoted);
    }

    /// <summary>The text in quotation marks, cut where it is long, without control characters.</summary>
    internal static string Quote(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (char c in text.Length > 40 ? text.Substring(0, 40) : text)
        {
            quoted.Append(char.IsControl(c) || char.IsSurrogate(c) ? '?' : c);
        }

        return quoted.Append(text.Length > 40 ? "…\"" : "\"").ToString();
    }

    private static string Unknown(KindFacts kind, string quoted)
        => $"Unit {quoted} is not known. Known units of {kind.Noun}: {Choices(kind.Kind)}.";

    private static string Several(string quoted, KitchenMeasure measure)
    {
        var text = new StringBuilder($"Unit {quoted} is refused because it does not say whose measure it is. Write one of:");
        string separator = " ";
        foreach (KitchenUnit unit in s_all)
        {
            if (unit.Measure == measure)
            {
                text.Append(separator).Append(unit.Symbol).Append(" (").Append(Numbers.Significant(unit.Factor, 6)).Append(" mL)");
                separator = ", ";
            }
        }

        return text.Append('.').ToString();
    }

    private static string Choices(QuantityKind kind)
    {
        var text = new StringBuilder();
        foreach (KitchenUnit unit in s_all)
        {
            if (unit.Kind == kind)
            {
                text.Append(text.Length == 0 ? "" : ", ").Append(unit.Symbol);
            }
        }

        return text.ToString();
    }

    private static KitchenUnit Us(string code, string name, decimal millilitres, KitchenMeasure measure, params string[] symbols)
        => new(Volume, code, "US customary " + name, millilitres, Nist44, symbols, measure: measure);

    private static KitchenUnit Imperial(string code, string name, decimal millilitres, KitchenMeasure measure, params string[] symbols)
        => new(Volume, code, "imperial " + name, millilitres, Uk, symbols, measure: measure);
}
