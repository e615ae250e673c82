using System.Text;
using Hydrocolloid.Formulation;
using Hydrocolloid.Formulation.Choosing;

namespace KitchenCard;

/// <summary>What was done to make the formula with another agent, to follow the card.</summary>
internal static class SubstitutionText
{
    public static string Render(Substitution? substitution, bool markdown)
    {
        if (substitution is null)
        {
            return "";
        }

        var text = new StringBuilder();
        string heading = $"Made with {substitution.To.Name}";
        text.Append('\n').Append(markdown ? $"## {heading}\n\n" : $"{heading.ToUpperInvariant()}\n{new string('-', 78)}\n");
        foreach (SubstitutionStep step in substitution.Steps)
        {
            string sources = step.Citations.IsEmpty ? "" : $" ({string.Join("; ", step.Citations)})";
            text.AppendJoin('\n', markdown ? [$"- {step.Text}{sources}"] : Text.Wrap($"- {step.Text}{sources}", 78, "", "  ")).Append('\n');
        }

        return text.ToString();
    }
}
