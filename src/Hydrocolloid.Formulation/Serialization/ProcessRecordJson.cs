using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Process records as JSON, format <c>hydrocolloid-record</c>, version 1 (docs/diagnosis.md). Strict: what is not of the format is refused.</summary>
public static class ProcessRecordJson
{
    private const string Format = "hydrocolloid-record";
    private const int Version = 1;

    private static readonly DocumentShape s_quantity = DocumentShape.Object(("value", DocumentShape.Number, true), ("unit", DocumentShape.Text, true));

    private static readonly DocumentShape s_shape = DocumentShape.Object(
        ("format", DocumentShape.Text, true), ("version", DocumentShape.Number, true),
        ("weighed", DocumentShape.List(DocumentShape.Object(("line", DocumentShape.Text, true), ("value", DocumentShape.Number, true), ("unit", DocumentShape.Text, true))), false),
        ("soakedAt", s_quantity, false), ("hydratedAt", s_quantity, false), ("hydratedFor", s_quantity, false), ("castAt", s_quantity, false),
        ("ph", DocumentShape.Number, false), ("castMass", s_quantity, false), ("leftToSet", s_quantity, false), ("servedAt", s_quantity, false),
        ("heldFor", s_quantity, false), ("storedFor", s_quantity, false), ("altitude", s_quantity, false), ("covered", DocumentShape.Flag, false),
        ("frozen", DocumentShape.Flag, false));

    /// <summary>Reads a record.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The record.</returns>
    /// <exception cref="FormulaJsonException">The text is not a process record; the exception holds every problem with its place.</exception>
    public static ProcessRecord Read(string json) => Read(Encoding.UTF8.GetBytes(Guard.NotNull(json)).AsSpan());

    /// <summary>Reads a record.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <returns>The record.</returns>
    /// <exception cref="FormulaJsonException">The text is not a process record; the exception holds every problem with its place.</exception>
    public static ProcessRecord Read(ReadOnlySpan<byte> utf8)
        => DocumentParser.Parse(utf8, Format, Version, "A process record", s_shape, ReadRecord, out ValueList<FormulaJsonProblem> problems) is { } record ? record
            : throw FormulaJsonException.NoRecord(problems);

    /// <summary>Writes a record; what is not known is left out. Reading it gives an equal record.</summary>
    /// <param name="record">The record.</param>
    /// <returns>The document, indented, in the base units of the format: g, °C, s, m.</returns>
    /// <exception cref="FormulaJsonException">A label holds half a surrogate pair, which no JSON can hold.</exception>
    public static string Write(ProcessRecord record)
    {
        Guard.NotNull(record);
        for (int i = 0; i < record.Weighed.Count; i++)
        {
            DocumentWriter.CheckText(record.Weighed[i].Label, $"/weighed/{Numbers.Exact(i)}/line");
        }

        using var bytes = new ByteBuffer(1024);
        using (var json = new Utf8JsonWriter(bytes, FormulaJson.Layout))
        {
            WriteRecord(json, record);
        }

        return Encoding.UTF8.GetString(bytes.Array, 0, bytes.Length);
    }

    private static void WriteRecord(Utf8JsonWriter json, ProcessRecord record)
    {
        void At(string member, Temperature? temperature) => DocumentWriter.WriteQuantity(json, member, temperature?.DegreesCelsius, QuantityKind.Temperature);
        void For(string member, Duration? duration) => DocumentWriter.WriteQuantity(json, member, duration?.Seconds, QuantityKind.Duration);

        json.WriteStartObject();
        json.WriteString("format", Format);
        json.WriteNumber("version", Version);
        if (!record.Weighed.IsEmpty)
        {
            json.WriteStartArray("weighed");
            foreach (WeighedLine line in record.Weighed)
            {
                json.WriteStartObject();
                json.WriteString("line", line.Label);
                json.WriteNumber("value", line.Grams);
                json.WriteString("unit", DocumentChecks.BaseCode(QuantityKind.Mass));
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        At("soakedAt", record.SoakedAt);
        At("hydratedAt", record.HydratedAt);
        For("hydratedFor", record.HydratedFor);
        At("castAt", record.CastAt);
        DocumentWriter.WriteNumber(json, "ph", record.Ph);
        DocumentWriter.WriteQuantity(json, "castMass", record.CastGrams, QuantityKind.Mass);
        For("leftToSet", record.LeftToSet);
        At("servedAt", record.ServedAt);
        For("heldFor", record.HeldFor);
        For("storedFor", record.StoredFor);
        DocumentWriter.WriteQuantity(json, "altitude", record.Altitude?.Meters, QuantityKind.Length);
        DocumentWriter.WriteFlag(json, "covered", record.Covered);
        DocumentWriter.WriteFlag(json, "frozen", record.Frozen);
        json.WriteEndObject();
    }

    private static ProcessRecord? ReadRecord(JsonElement root, List<FormulaJsonProblem> problems)
    {
        var checks = new DocumentChecks();
        Temperature? At(string member) => Quantity(root, member, QuantityKind.Temperature, Guard.AbsoluteZeroCelsius, 1000, checks) is { } c ? Temperature.FromDegreesCelsius(c) : null;
        Duration? For(string member) => Quantity(root, member, QuantityKind.Duration, 0, 1e9, checks) is { } s ? Duration.FromSeconds(s) : null;
        bool? Whether(string member) => root.TryGetProperty(member, out JsonElement flag) ? flag.GetBoolean() : null;

        var record = new ProcessRecord
        {
            Weighed = Weighed(root, checks),
            SoakedAt = At("soakedAt"),
            HydratedAt = At("hydratedAt"),
            HydratedFor = For("hydratedFor"),
            CastAt = At("castAt"),
            Ph = root.TryGetProperty("ph"u8, out JsonElement ph) ? checks.Number(ph.GetDouble(), 0, 14, "pH", DocumentPlace.Whole, "/ph") : null,
            CastMass = Quantity(root, "castMass", QuantityKind.Mass, double.Epsilon, Guard.MaxMassGrams, checks) is { } grams ? Mass.FromGrams(grams) : null,
            LeftToSet = For("leftToSet"),
            ServedAt = At("servedAt"),
            HeldFor = For("heldFor"),
            StoredFor = For("storedFor"),
            Altitude = Quantity(root, "altitude", QuantityKind.Length, -500, 9000, checks) is { } metres ? Length.FromMeters(metres) : null,
            Covered = Whether("covered"),
            Frozen = Whether("frozen"),
        };
        problems.AddRange(checks.Problems);
        return record;
    }

    private static ValueList<WeighedLine> Weighed(JsonElement root, DocumentChecks checks)
    {
        var lines = new List<WeighedLine>();
        if (root.TryGetProperty("weighed"u8, out JsonElement list))
        {
            int index = 0;
            foreach (JsonElement json in list.EnumerateArray())
            {
                DocumentPlace at = DocumentPlace.Item("/weighed", index);
                index++;
                string? label = checks.Words(json.GetProperty("line"u8).GetString(), at, "/line");
                double? grams = checks.Quantity(json.GetProperty("value"u8).GetDouble(), json.GetProperty("unit"u8).GetString()!, QuantityKind.Mass, 0, Guard.MaxMassGrams, at, "");
                if (label is not null && grams is { } g)
                {
                    lines.Add(new WeighedLine(label, Mass.FromGrams(g)));
                }
            }
        }

        return ValueList<WeighedLine>.Own([.. lines]);
    }

    private static double? Quantity(JsonElement root, string member, QuantityKind kind, double min, double max, DocumentChecks checks)
        => root.TryGetProperty(member, out JsonElement json)
            ? checks.Quantity(json.GetProperty("value"u8).GetDouble(), json.GetProperty("unit"u8).GetString()!, kind, min, max, DocumentPlace.Whole, "/" + member) : null;
}
