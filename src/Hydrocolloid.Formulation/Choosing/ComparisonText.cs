using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>Writes a comparison for people.</summary>
internal static class ComparisonText
{
    public static string Plain(AgentComparison comparison)
    {
        ValueList<Citation> sources = comparison.Sources;
        var text = new StringBuilder();
        text.Append(Title(comparison)).Append('\n');
        foreach (ComparisonRow row in comparison.Rows)
        {
            text.Append('\n').Append(Name(row.Property)).Append('\n');
            for (int i = 0; i < row.Cells.Count; i++)
            {
                text.Append("  ").Append(comparison.Agents[i].Name).Append(": ").Append(Cell(row.Cells[i], sources, ". ")).Append('\n');
            }
        }

        text.Append("\nSources\n");
        for (int i = 0; i < sources.Count; i++)
        {
            text.Append("  [").Append(Numbers.Exact(i + 1)).Append("] ").Append(sources[i]).Append('\n');
        }

        return text.ToString();
    }

    public static string Markdown(AgentComparison comparison)
    {
        ValueList<Citation> sources = comparison.Sources;
        var text = new StringBuilder();
        text.Append("| |");
        foreach (Ingredient agent in comparison.Agents)
        {
            text.Append(' ').Append(Escaped(agent.Name)).Append(" |");
        }

        text.Append("\n|---|").Append(string.Concat(comparison.Agents.Select(_ => "---|"))).Append('\n');
        foreach (ComparisonRow row in comparison.Rows)
        {
            text.Append("| ").Append(Name(row.Property)).Append(" |");
            foreach (ComparisonCell cell in row.Cells)
            {
                text.Append(' ').Append(Escaped(Cell(cell, sources, "\n")).Replace("\n", "<br>")).Append(" |");
            }

            text.Append('\n');
        }

        text.Append("\nSources\n\n");
        for (int i = 0; i < sources.Count; i++)
        {
            text.Append(Numbers.Exact(i + 1)).Append(". ").Append(Escaped(sources[i].ToString())).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The property as a heading.</summary>
    public static string Name(AgentProperty property) => Words.Of(property).Replace('-', ' ');

    private static string Title(AgentComparison comparison)
    {
        string title = comparison.ToString();
        return char.ToUpperInvariant(title[0]) + title.Substring(1);
    }

    private static string Cell(ComparisonCell cell, ValueList<Citation> sources, string between)
        => cell.Facts.IsEmpty ? ComparisonCell.Nothing : string.Join(between, cell.Facts.Select(f => $"{Sentence(f)} [{Numbers.Exact(IndexOf(sources, f.Citation) + 1)}]"));

    private static string Sentence(Cited<string> fact) => fact.Value.TrimEnd('.') + (fact.Note is { } note ? $" ({note})" : "");

    private static int IndexOf(ValueList<Citation> sources, Citation citation)
    {
        int index = 0;
        while (sources[index] != citation)
        {
            index++;
        }

        return index;
    }

    private static string Escaped(string text) => text.Replace("\\", "\\\\").Replace("|", "\\|").Replace("<", "&lt;").Replace("*", "\\*").Replace("_", "\\_");
}
