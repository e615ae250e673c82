using System.Text;
using Hydrocolloid.Formulation;
using Hydrocolloid.Formulation.Choosing;

namespace KitchenCard;

/// <summary>What was done to make the formula with another agent, and what will differ, as plain text or Markdown below the card.</summary>
internal static class SubstitutionText
{
    public static string Render(Substitution substitution, bool markdown)
    {
        var text = new StringBuilder();
        Heading(text, $"Made with {substitution.To.Name}", markdown);
        text.Append(substitution).Append('\n');
        foreach (SubstitutionStep step in substitution.Steps)
        {
            text.Append("- ").Append(step.Text);
            text.Append(step.Citations.IsEmpty ? "" : $" ({string.Join("; ", step.Citations)})").Append('\n');
        }

        if (substitution.Formula is not null && substitution.Differences is { } differences)
        {
            Heading(text, "What will differ", markdown);
            text.Append(markdown ? differences.ToMarkdown() : differences.ToText());
        }

        return text.ToString();
    }

    private static void Heading(StringBuilder text, string heading, bool markdown)
        => text.Append('\n').Append(markdown ? $"## {heading}\n\n" : $"{heading.ToUpperInvariant()}\n{new string('-', 78)}\n");
}
