using System.Text.Json;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Checks single values of a document and collects what is wrong with them. What is wrong reads as not stated.</summary>
internal sealed class DocumentChecks
{
    public List<FormulaJsonProblem> Problems { get; } = [];

    public void Report(string id, in DocumentPlace at, string path, string message) => Problems.Add(new FormulaJsonProblem(id, at.Pointer(path), message));

    public double? Number(double value, double min, double max, string unit, in DocumentPlace at, string path)
    {
        if (double.IsNaN(value))
        {
            return null; // left out: JSON has no NaN
        }

        if (value >= min && value <= max)
        {
            return value;
        }

        Report("number-range", at, path,
            $"Must be {Between(min, max, unit)}, but is {Numbers.Exact(value)} {unit}.");
        return null;
    }

    public double? Quantity(FormulaDto.Quantity? quantity, QuantityKind kind, double min, double max, in DocumentPlace at, string path)
        => quantity is null ? null : Quantity(quantity.Value, quantity.Unit, kind, min, max, at, path);

    /// <summary>The value in the base unit of its kind.</summary>
    public double? Quantity(double value, string unit, QuantityKind kind, double min, double max, in DocumentPlace at, string path)
    {
        KindFacts facts = KindFacts.Of(kind);
        if (unit != BaseCode(kind))
        {
            KitchenUnit? known = Find(kind, unit);
            if (known is null)
            {
                Report("unit-unknown", at, path + "/unit",
                    $"{UnitTable.Quote(unit)} is not a UCUM code for a {facts.Noun} that is read here; those are {string.Join(", ", Codes(kind))}.");
                return null;
            }

            value = known.ToBase(Numbers.Exact(value), value);
        }

        if (value >= min && value <= max)
        {
            return value;
        }

        Report("number-range", at, path + "/value",
            $"Must be {Between(min, max, facts.BaseSymbol)}, but is {Numbers.Exact(value)} {facts.BaseSymbol}.");
        return null;
    }

    public string? Words(string? text, in DocumentPlace at, string path)
    {
        if (text is null || !string.IsNullOrWhiteSpace(text))
        {
            return text;
        }

        Report("text-blank", at, path, "Must not be empty or blank.");
        return null;
    }

    /// <summary>An integrator's own data; null if not stated.</summary>
    public ExtensionData? Extensions(JsonElement json, in DocumentPlace at, string path)
    {
        if (json.ValueKind is JsonValueKind.Undefined or JsonValueKind.Object)
        {
            return json.ValueKind == JsonValueKind.Object ? new ExtensionData(json) : null;
        }

        Report("value-type", at, path, "Must be an object.");
        return null;
    }

    public bool Id(string id, in DocumentPlace at, string path)
    {
        bool isValid = Ids.IsValid(id);
        if (!isValid)
        {
            Report("id-invalid", at, path,
                $"Must be kebab-case (a to z, 0 to 9, single hyphens, at most {Numbers.Exact(Ids.MaxLength)} characters), such as pear-juice, but is {UnitTable.Quote(id)}.");
        }

        return isValid;
    }

    public void Unknown(string word, string choices, in DocumentPlace at, string path)
        => Report("word-unknown", at, path, $"Must be one of {choices}, but is {UnitTable.Quote(word)}.");

    internal static string BaseCode(QuantityKind kind) => kind switch
    {
        QuantityKind.Mass => "g",
        QuantityKind.Volume => "mL",
        QuantityKind.Temperature => "Cel",
        QuantityKind.Duration => "s",
        QuantityKind.Length => "m",
        QuantityKind.Density => "kg/m3",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    internal static IEnumerable<string> Codes(QuantityKind kind) => KitchenUnit.All.Where(u => u.Kind == kind && u.IsUcum).Select(u => u.Code);

    // The least number above 0 stands for "above 0".
    private static string Between(double min, double max, string unit) => min == double.Epsilon
        ? $"above 0 {unit} and at most {Numbers.Exact(max)} {unit}"
        : $"between {Numbers.Exact(min)} {unit} and {Numbers.Exact(max)} {unit} inclusive";

    private static KitchenUnit? Find(QuantityKind kind, string code)
    {
        foreach (KitchenUnit unit in KitchenUnit.All)
        {
            if (unit.Kind == kind && unit.IsUcum && unit.Code == code)
            {
                return unit;
            }
        }

        return null;
    }
}
