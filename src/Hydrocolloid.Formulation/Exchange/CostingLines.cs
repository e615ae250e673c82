using System.Globalization;
using System.Text.Json;
using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Exchange;

/// <summary>
/// A batch as JSON lines for a costing system, format <c>hydrocolloid-costing-lines</c> version 1 (docs/exchange.md): one object a
/// line of the formula, UTF-8 without a mark, each ended by a line feed, decimals as text with all their digits. The same bytes on
/// every machine.
/// </summary>
public static class CostingLines
{
    /// <summary>What stands in the member <c>format</c>.</summary>
    public const string Format = "hydrocolloid-costing-lines";

    /// <summary>The version of the format.</summary>
    public const int Version = 1;

    /// <summary>Writes a batch. The bytes of several batches one after another are a file of the same format.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="export">What else the costing system needs.</param>
    /// <returns>The bytes.</returns>
    /// <exception cref="ArgumentException">A unit has no code of UN/ECE Recommendation 20, measures neither mass nor volume, or is a volume of an ingredient whose density is not known; or the cost sheet is of another batch.</exception>
    public static byte[] Write(Batch batch, CostingExport export)
    {
        Guard.NotNull(batch);
        if (Guard.NotNull(export).Costs is { } costs && costs.Batch != batch)
        {
            throw new ArgumentException("The cost sheet is of another batch.", nameof(export));
        }

        ValueList<Money> rounded = export.Costs?.RoundedLines() ?? default;
        using var bytes = new ByteBuffer(512 * batch.Lines.Count);
        foreach (BatchLine line in batch.Lines)
        {
            using (var json = new Utf8JsonWriter(bytes))
            {
                Line(json, batch, line, export, rounded);
            }

            bytes.GetSpan(1)[0] = (byte)'\n';
            bytes.Advance(1);
        }

        return bytes.ToArray();
    }

    private static void Line(Utf8JsonWriter json, Batch batch, BatchLine line, CostingExport export, ValueList<Money> rounded)
    {
        Ingredient ingredient = line.Line.Ingredient;
        json.WriteStartObject();
        json.WriteString("format", Format);
        json.WriteNumber("version", Version);
        json.WriteString("formulaId", export.FormulaId);
        json.WriteString("formulaVersion", export.FormulaVersion);
        json.WriteString("formulaName", batch.Formula.Name);
        if (export.ExportedAt is { } at)
        {
            json.WriteString("exportedAt", at.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture));
        }

        json.WriteNumber("lineNo", line.Line.Index + 1);
        json.WriteString("phase", line.Line.Phase);
        json.WriteString("label", line.Line.Label);
        json.WriteString("itemId", ingredient.Id);
        if (export.GtinOf?.Invoke(ingredient) is { } gtin)
        {
            json.WriteString("gtin", gtin.Digits);
        }

        json.WriteString("description", ingredient.Name);
        json.WriteString("role", RoleOf(line.Line));
        Strings(json, "eNumbers", ingredient.Additive?.ENumbers ?? default);
        Strings(json, "casNumbers", Additives.Of(ingredient).SelectMany(a => a.CasNumbers).Select(c => c.Value).Distinct(StringComparer.Ordinal));
        json.WriteString("percentOfTotal", PlainDecimal.Of(batch.Formula.Proportions.PercentOfTotal(line.Line)));
        KitchenUnit unit = export.UnitOf?.Invoke(ingredient) ?? UnitTable.Get(QuantityKind.Mass, "g");
        json.WriteString("quantity", Quantity(line, unit));
        json.WriteString("unitCode", UnitCodes.Of(unit) ?? throw new ArgumentException($"{unit.Name} has no code of Recommendation 20 for exchange.", nameof(export)));
        json.WriteString("ucum", unit.Code);
        json.WriteString("grams", PlainDecimal.Of(line.Grams));
        Strings(json, "allergens", (ingredient.Allergens?.Value ?? default).Select(a => BuiltInCatalogue.Labelling.Allergens[(int)a].Gs1Code.Value));
        json.WriteString("allergenStatus", AllergenStatus.Of(ingredient));
        if (export.Costs is { } costs)
        {
            Cost(json, costs.Lines[line.Line.Index], costs, rounded.IsEmpty ? null : rounded[line.Line.Index]);
        }

        json.WriteEndObject();
    }

    private static void Cost(Utf8JsonWriter json, CostLine line, CostSheet costs, Money? rounded)
    {
        json.WriteString("currency", costs.Prices.Currency.Code);
        json.WriteString("pricedOn", costs.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        if (line.Cost is { } cost)
        {
            json.WriteString("cost", Exactly.ToText(cost.Amount));
        }
        else
        {
            json.WriteString("costGap", line.Gap!.Id);
        }

        if (rounded is not null)
        {
            json.WriteString("roundedCost", rounded.Amount.ToString("F" + rounded.Currency.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
        }
    }

    private static string Quantity(BatchLine line, KitchenUnit unit)
    {
        if (unit.Kind == QuantityKind.Mass)
        {
            return PlainDecimal.Expand(unit.FromBaseInFull(line.Grams));
        }

        return unit.Kind != QuantityKind.Volume ? throw new ArgumentException($"{unit.Name} measures neither mass nor volume.", nameof(unit))
            : line.Line.Ingredient.DensityKgPerM3 is { } density ? PlainDecimal.Of(unit.FromBase(line.Grams / density.Value * 1000))
            : throw new ArgumentException($"The density of {line.Line.Ingredient.Name} is not known, so it cannot be stated in {unit.Symbol}.", nameof(unit));
    }

    private static string RoleOf(FormulaLine line) => line.IsBase ? "base" : line.Ingredient.Profile is { } profile
        ? profile.Role == HydrocolloidRole.GellingAgent ? "gelling-agent" : "thickener"
        : line.Ingredient.Category ?? "other";

    private static void Strings(Utf8JsonWriter json, string name, IEnumerable<string> items)
    {
        json.WriteStartArray(name);
        foreach (string item in items)
        {
            json.WriteStringValue(item);
        }

        json.WriteEndArray();
    }
}
