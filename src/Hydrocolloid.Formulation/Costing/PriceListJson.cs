using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Text;
using UnitsNet;
using static Hydrocolloid.Formulation.Serialization.DocumentShape;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// Price lists as JSON, format <c>hydrocolloid-prices</c>, version 1 (docs/costing.md). Strict: what is not of the format is refused.
/// What is written reads back as an equal list.
/// </summary>
public static class PriceListJson
{
    private const string Format = "hydrocolloid-prices";
    private const int Version = 1;

    private static readonly DocumentShape s_quantity = DocumentShape.Object(("value", Number, true), ("unit", DocumentShape.Text, true));

    private static readonly DocumentShape s_shape = DocumentShape.Object(
        ("format", DocumentShape.Text, true), ("version", Number, true), ("currency", DocumentShape.Text, true),
        ("prices", List(DocumentShape.Object(
            ("ingredient", DocumentShape.Text, true), ("price", Number, true), ("per", s_quantity, true), ("pack", Flag, false),
            ("density", s_quantity, false), ("pieceMass", s_quantity, false), ("yieldPercent", Number, false),
            ("supplier", DocumentShape.Text, false), ("from", DocumentShape.Text, false), ("to", DocumentShape.Text, false))), true));

    /// <summary>Writes a list; masses in g, volumes in mL, densities in kg/m³.</summary>
    /// <param name="list">The list.</param>
    /// <returns>The document in UTF-8, without a byte order mark.</returns>
    public static byte[] Write(PriceList list)
    {
        Guard.NotNull(list);
        using var bytes = new ByteBuffer(256 * (1 + list.Prices.Count));
        using (var json = new Utf8JsonWriter(bytes, FormulaJson.Layout))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            json.WriteString("currency", list.Currency.Code);
            json.WriteStartArray("prices");
            foreach (Price price in list.Prices)
            {
                WritePrice(json, price);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }

    /// <summary>Reads a list.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The list.</returns>
    /// <exception cref="FormulaJsonException">The text is not a price list; the exception holds every problem with its place.</exception>
    public static PriceList Read(string json) => Read(Encoding.UTF8.GetBytes(Guard.NotNull(json)).AsSpan());

    /// <summary>Reads a list.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <returns>The list.</returns>
    /// <exception cref="FormulaJsonException">The text is not a price list; the exception holds every problem with its place.</exception>
    public static PriceList Read(ReadOnlySpan<byte> utf8)
        => DocumentParser.Parse(utf8, Format, Version, "A price list", s_shape, ReadList, out ValueList<FormulaJsonProblem> problems) is { } list ? list
            : throw FormulaJsonException.NoPriceList(problems);

    private static void WritePrice(Utf8JsonWriter json, Price price)
    {
        void Quantity(string member, decimal? value, string unit)
        {
            if (value is { } v)
            {
                json.WriteStartObject(member);
                json.WriteNumber("value", v);
                json.WriteString("unit", unit);
                json.WriteEndObject();
            }
        }

        void Text(string member, string? text)
        {
            if (text is not null)
            {
                json.WriteString(member, text);
            }
        }

        json.WriteStartObject();
        json.WriteString("ingredient", price.Ingredient);
        json.WriteNumber("price", price.Amount.Amount);
        Quantity("per", price.Quantity, price.UnitCode);
        if (price.IsPack)
        {
            json.WriteBoolean("pack", true);
        }

        Quantity("pieceMass", price.PieceGrams, "g");
        Quantity("density", price.DensityKgPerM3, "kg/m3");
        if (price.YieldPercent != 100)
        {
            json.WriteNumber("yieldPercent", price.YieldPercent);
        }

        Text("supplier", price.Supplier);
        Text("from", price.ValidFrom is { } from ? Days.Text(from) : null);
        Text("to", price.ValidTo is { } to ? Days.Text(to) : null);
        json.WriteEndObject();
    }

    private static PriceList? ReadList(JsonElement root, List<FormulaJsonProblem> problems)
    {
        string code = root.GetProperty("currency"u8).GetString()!;
        if (!Currency.TryFind(code, out Currency? currency))
        {
            problems.Add(new FormulaJsonProblem("currency-unknown", "/currency", $"{UnitTable.Quote(code)} is not a currency of ISO 4217 with a minor unit."));
            currency = Currency.Of("EUR"); // the prices are still looked at
        }

        var prices = new List<Price>();
        var pointers = new List<string>();
        int index = 0;
        foreach (JsonElement json in root.GetProperty("prices"u8).EnumerateArray())
        {
            string pointer = "/prices/" + Numbers.Exact(index);
            index++;
            var draft = new PriceDraft((id, member, message) => problems.Add(new FormulaJsonProblem(id, pointer + member switch
            {
                "per" => "/per/value",
                "unit" => "/per/unit",
                "pieceMass" or "density" when id == "number-range" => $"/{member}/value",
                "pieceMass" or "density" when id == "unit-unknown" => $"/{member}/unit",
                _ => "/" + member,
            }, message)));
            if (ReadPrice(json, draft, currency) is { } price)
            {
                prices.Add(price);
                pointers.Add(pointer);
            }
        }

        problems.AddRange(PriceList.ProblemsOf(currency, prices).Select(p => new FormulaJsonProblem(p.Problem.Id, pointers[p.Index], p.Problem.Message)));
        return problems.Count > 0 ? null : new PriceList(currency, prices);
    }

    private static Price? ReadPrice(JsonElement json, PriceDraft draft, Currency currency)
    {
        draft.Ingredient = Text(json, "ingredient");
        draft.Amount = Decimal(json, "price", draft);
        JsonElement per = json.GetProperty("per"u8);
        draft.Quantity = Decimal(per, "value", draft, "per");
        draft.Unit = Text(per, "unit");
        draft.IsPack = json.TryGetProperty("pack"u8, out JsonElement pack) && pack.GetBoolean();
        draft.PieceGrams = Quantity(json, "pieceMass", QuantityKind.Mass, draft);
        draft.DensityKgPerM3 = Quantity(json, "density", QuantityKind.Density, draft);
        draft.YieldPercent = json.TryGetProperty("yieldPercent"u8, out _) ? Decimal(json, "yieldPercent", draft) : null;
        draft.Supplier = Text(json, "supplier");
        draft.From = Text(json, "from");
        draft.To = Text(json, "to");
        return draft.Read(currency);
    }

    private static string? Text(JsonElement json, string member) => json.TryGetProperty(member, out JsonElement text) ? text.GetString() : null;

    private static decimal? Decimal(JsonElement json, string member, PriceDraft draft, string? of = null)
    {
        if (json.GetProperty(member).TryGetDecimal(out decimal value))
        {
            return value;
        }

        draft.Report("number-range", of ?? member, "Must be a number of at most 28 digits.");
        return null;
    }

    private static double? Quantity(JsonElement json, string member, QuantityKind kind, PriceDraft draft)
        => json.TryGetProperty(member, out JsonElement quantity) && Decimal(quantity, "value", draft, member) is { } value
            ? draft.ToBase(kind, value, quantity.GetProperty("unit"u8).GetString()!, member) : null;
}
