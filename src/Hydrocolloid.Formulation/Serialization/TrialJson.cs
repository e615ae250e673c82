using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>
/// Own trials as JSON, format <c>hydrocolloid-trial</c>, version 1 (docs/choosing.md). Writing is canonical: equal trials give the same bytes, and reading them back gives an
/// equal trial; the fit is made again from the points. Reading is strict: what is not of the format is refused.
/// </summary>
public static class TrialJson
{
    private const string Format = "hydrocolloid-trial";
    private const int Version = 1;

    private static readonly DocumentShape s_shape = DocumentShape.Object(
        ("format", DocumentShape.Text, true), ("version", DocumentShape.Number, true), ("agent", DocumentShape.Text, true),
        ("grade", DocumentShape.Object(("scale", DocumentShape.Text, true), ("value", DocumentShape.Number, true)), false),
        ("conditions", DocumentShape.Text, false), ("strengthUnit", DocumentShape.Text, true), ("curve", DocumentShape.Text, false), ("criticalPercent", DocumentShape.Number, false),
        ("points", DocumentShape.List(DocumentShape.Object(("percent", DocumentShape.Number, true), ("strength", DocumentShape.Number, true), ("standardDeviation", DocumentShape.Number, false))), true));

    /// <summary>Writes a trial.</summary>
    /// <param name="trial">The trial.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The trial is null.</exception>
    public static string Write(AgentTrial trial)
    {
        Guard.NotNull(trial);
        using var bytes = new ByteBuffer(512);
        using var json = new Utf8JsonWriter(bytes, FormulaJson.Layout);
        json.WriteStartObject();
        json.WriteString("format"u8, Format);
        json.WriteNumber("version"u8, Version);
        json.WriteString("agent"u8, trial.Agent);
        if (trial.Grade is { } grade)
        {
            json.WriteStartObject("grade"u8);
            json.WriteString("scale"u8, Words.Of(grade.Scale));
            json.WriteNumber("value"u8, grade.Value);
            json.WriteEndObject();
        }

        if (trial.Conditions is { } conditions)
        {
            json.WriteString("conditions"u8, conditions);
        }

        json.WriteString("strengthUnit"u8, trial.Unit);
        json.WriteString("curve"u8, Words.Of(trial.Curve));
        if (trial.CriticalPercent > 0)
        {
            json.WriteNumber("criticalPercent"u8, trial.CriticalPercent);
        }

        json.WriteStartArray("points"u8);
        foreach (TrialPoint point in trial.Points)
        {
            json.WriteStartObject();
            json.WriteNumber("percent"u8, point.Dose);
            json.WriteNumber("strength"u8, point.Strength);
            if (point.StandardDeviation is { } deviation)
            {
                json.WriteNumber("standardDeviation"u8, deviation);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        return Encoding.UTF8.GetString(bytes.Array, 0, bytes.Length);
    }

    /// <summary>Reads a trial.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The trial.</returns>
    /// <exception cref="FormulaJsonException">The text is not a trial; the exception holds every problem with its place.</exception>
    public static AgentTrial Read(string json) => Read(Encoding.UTF8.GetBytes(Guard.NotNull(json)).AsSpan());

    /// <summary>Reads a trial.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <returns>The trial.</returns>
    /// <exception cref="FormulaJsonException">The text is not a trial; the exception holds every problem with its place.</exception>
    public static AgentTrial Read(ReadOnlySpan<byte> utf8)
        => DocumentParser.Parse(utf8, Format, Version, "A trial", s_shape, ReadTrial, out ValueList<FormulaJsonProblem> problems) is { } trial ? trial
            : throw FormulaJsonException.NoTrial(problems);

    private static AgentTrial? ReadTrial(JsonElement root, List<FormulaJsonProblem> problems)
    {
        var checks = new DocumentChecks();
        string agent = root.GetProperty("agent"u8).GetString()!;
        checks.Id(agent, DocumentPlace.Whole, "/agent");
        string? unit = checks.Words(root.GetProperty("strengthUnit"u8).GetString(), DocumentPlace.Whole, "/strengthUnit");
        string? conditions = root.TryGetProperty("conditions"u8, out JsonElement words) ? checks.Words(words.GetString(), DocumentPlace.Whole, "/conditions") : null;
        Grade? grade = root.TryGetProperty("grade"u8, out JsonElement lot) ? ReadGrade(lot, checks) : null;
        double critical = root.TryGetProperty("criticalPercent"u8, out JsonElement least) ? checks.Number(least.GetDouble(), 0, 100, "%", DocumentPlace.Whole, "/criticalPercent") ?? 0 : 0;
        var curve = TrialCurve.PowerLaw;
        if (root.TryGetProperty("curve"u8, out JsonElement word) && !Words.TryTrialCurve(word.GetString(), out curve))
        {
            checks.Unknown(word.GetString()!, Words.TrialCurveList, DocumentPlace.Whole, "/curve");
        }

        ValueList<TrialPoint> points = ReadPoints(root.GetProperty("points"u8), checks);
        if (checks.Problems.Count == 0)
        {
            foreach ((int point, string id, string message) in AgentTrial.Faults(points, curve, critical))
            {
                checks.Report(id, point < 0 ? DocumentPlace.Whole : DocumentPlace.Item("/points", point), point < 0 ? "/points" : "", message);
            }
        }

        problems.AddRange(checks.Problems);
        return problems.Count > 0 ? null : new AgentTrial(agent, unit!, points, curve, critical, grade, conditions);
    }

    private static Grade? ReadGrade(JsonElement json, DocumentChecks checks)
    {
        string word = json.GetProperty("scale"u8).GetString()!;
        if (!Words.TryScale(word, out GradeScale scale))
        {
            checks.Unknown(word, Words.ScaleList, DocumentPlace.Whole, "/grade/scale");
            return null;
        }

        return checks.Number(json.GetProperty("value"u8).GetDouble(), double.Epsilon, 100_000, Words.Of(scale), DocumentPlace.Whole, "/grade/value") is { } value ? new Grade(scale, value) : null;
    }

    private static ValueList<TrialPoint> ReadPoints(JsonElement json, DocumentChecks checks)
    {
        var points = new List<TrialPoint>();
        int index = 0;
        foreach (JsonElement point in json.EnumerateArray())
        {
            DocumentPlace at = DocumentPlace.Item("/points", index);
            index++;
            double? percent = checks.Number(point.GetProperty("percent"u8).GetDouble(), 0, 100, "%", at, "/percent");
            double? strength = checks.Number(point.GetProperty("strength"u8).GetDouble(), 0, 1e12, "", at, "/strength");
            double? deviation = point.TryGetProperty("standardDeviation"u8, out JsonElement sd) ? checks.Number(sd.GetDouble(), 1e-12, 1e12, "", at, "/standardDeviation") : null;
            if (percent is { } p && strength is { } s)
            {
                points.Add(new TrialPoint(p, s, deviation));
            }
        }

        return ValueList<TrialPoint>.Own([.. points]);
    }
}
