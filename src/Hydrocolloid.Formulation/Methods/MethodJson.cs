using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>Writes a method as JSON (docs/method.md).</summary>
internal static class MethodJson
{
    private const int Version = 1;

    public static string Write(Method method)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("format", "hydrocolloid-method");
            json.WriteNumber("version", Version);
            json.WriteString("name", method.Name);
            json.WriteString("pattern", Words.Kebab(method.Pattern.ToString()));
            Range(json, "totalSeconds", method.TotalTime.Seconds);
            Range(json, "activeSeconds", method.ActiveTime.Seconds);
            Range(json, "waitingSeconds", method.WaitingTime.Seconds);
            Texts(json, "equipment", Names(method.Equipment));
            Amounts(json, "toWeigh", method.ToWeigh);
            json.WriteStartArray("steps");
            foreach (MethodStep step in method.Steps)
            {
                Step(json, step);
            }

            json.WriteEndArray();
            json.WriteStartArray("conflicts");
            foreach (MethodConflict conflict in method.Conflicts)
            {
                json.WriteStartObject();
                json.WriteString("kind", Words.Kebab(conflict.Kind.ToString()));
                json.WriteString("text", conflict.Text);
                json.WriteString("wayOut", conflict.WayOut);
                Texts(json, "lines", conflict.Lines);
                Texts(json, "sources", conflict.Citations.Select(c => c.ToString()));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Cautions(json, method.Cautions);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length).Replace("\r\n", "\n");
    }

    private static void Step(Utf8JsonWriter json, MethodStep step)
    {
        json.WriteStartObject();
        json.WriteNumber("number", step.Number);
        json.WriteString("action", Words.Kebab(step.Action.ToString()));
        json.WriteString("instruction", step.Instruction);
        json.WriteString("reason", step.Reason);
        json.WriteString("check", step.Check);
        json.WriteBoolean("active", step.IsActive);
        Texts(json, "lines", step.Lines);
        Amounts(json, "amounts", step.Amounts);
        Range(json, "celsius", step.Temperature?.Celsius);
        Range(json, "seconds", step.Duration?.Seconds);
        Texts(json, "equipment", Names(step.Equipment));
        if (step.Ahead is { } ahead)
        {
            json.WriteString("ahead", ahead);
        }

        Texts(json, "sources", step.Citations.Select(c => c.ToString()));
        json.WriteStartArray("notes");
        foreach (Cited<string> note in step.Notes)
        {
            json.WriteStartObject();
            json.WriteString("text", note.Value);
            json.WriteString("source", note.Citation.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Cautions(json, step.Cautions);
        json.WriteEndObject();
    }

    private static void Amounts(Utf8JsonWriter json, string name, ValueList<StepAmount> amounts)
    {
        json.WriteStartArray(name);
        foreach (StepAmount amount in amounts)
        {
            json.WriteStartObject();
            json.WriteString("line", amount.Label);
            json.WriteString("name", amount.Name);
            json.WriteNumber("percentOfBase", amount.PercentOfBase);
            if (amount.Grams is { } grams)
            {
                json.WriteNumber("grams", grams);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Cautions(Utf8JsonWriter json, ValueList<Caution> cautions)
    {
        json.WriteStartArray("cautions");
        foreach (Caution caution in cautions)
        {
            json.WriteStartObject();
            json.WriteString("kind", Words.Kebab(caution.Kind.ToString()));
            json.WriteString("text", caution.Text.Value);
            Texts(json, "lines", caution.Lines);
            json.WriteString("source", caution.Text.Citation.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Range(Utf8JsonWriter json, string name, NumberRange? range)
    {
        if (range is not { } r)
        {
            return;
        }

        json.WriteStartObject(name);
        if (r.Min is { } min)
        {
            json.WriteNumber("min", min);
        }

        if (r.Max is { } max)
        {
            json.WriteNumber("max", max);
        }

        json.WriteEndObject();
    }

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    private static IEnumerable<string> Names(Equipment equipment)
        => equipment == Equipment.None ? [] : equipment.ToString().Split([", "], StringSplitOptions.None).Select(Words.Kebab);
}
