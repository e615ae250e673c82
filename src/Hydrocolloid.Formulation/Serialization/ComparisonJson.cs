using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Comparisons of agents as JSON, format <c>hydrocolloid-comparison</c>, version 1 (docs/choosing.md). For other programs to show; it is not read back.</summary>
public static class ComparisonJson
{
    /// <summary>Writes a comparison: equal comparisons give the same text.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The comparison is null.</exception>
    public static string Write(AgentComparison comparison)
    {
        Citation[] sources = [.. Guard.NotNull(comparison).Sources];
        using var bytes = new ByteBuffer(4096);
        using var json = new Utf8JsonWriter(bytes, FormulaJson.Layout);
        json.WriteStartObject();
        json.WriteString("format"u8, "hydrocolloid-comparison"u8);
        json.WriteNumber("version"u8, 1);
        json.WriteStartArray("agents"u8);
        foreach (Ingredient agent in comparison.Agents)
        {
            json.WriteStartObject();
            json.WriteString("id"u8, agent.Id);
            json.WriteString("name"u8, agent.Name);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("rows"u8);
        foreach (ComparisonRow row in comparison.Rows)
        {
            json.WriteStartObject();
            json.WriteString("property"u8, Words.Of(row.Property));
            json.WriteStartArray("cells"u8);
            foreach (ComparisonCell cell in row.Cells)
            {
                WriteCell(json, cell, sources);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteSources(json, sources);
        json.WriteEndObject();
        json.Flush();
        return Encoding.UTF8.GetString(bytes.Array, 0, bytes.Length);
    }

    private static void WriteCell(Utf8JsonWriter json, ComparisonCell cell, Citation[] sources)
    {
        json.WriteStartArray();
        foreach (Cited<string> fact in cell.Facts)
        {
            json.WriteStartObject();
            json.WriteString("text"u8, fact.Value);
            if (fact.Note is { } note)
            {
                json.WriteString("note"u8, note);
            }

            json.WriteNumber("source"u8, Array.IndexOf(sources, fact.Citation) + 1);
            json.WriteString("quality"u8, Words.Of(fact.Citation.Quality));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteSources(Utf8JsonWriter json, Citation[] sources)
    {
        json.WriteStartArray("sources"u8);
        for (int i = 0; i < sources.Length; i++)
        {
            json.WriteStartObject();
            json.WriteNumber("number"u8, i + 1);
            json.WriteString("id"u8, sources[i].Source.Id);
            json.WriteString("text"u8, sources[i].ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
