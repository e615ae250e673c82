using System.Text;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>The answer to a brief. Immutable.</summary>
public sealed class Choice
{
    internal Choice(Brief brief, ValueList<Finding> liquidConflicts, ValueList<Proposal> proposals, ValueList<Exclusion> exclusions)
    {
        Brief = brief;
        LiquidConflicts = liquidConflicts;
        Proposals = proposals;
        Exclusions = exclusions;
    }

    /// <summary>The brief.</summary>
    public Brief Brief { get; }

    /// <summary>Conflicts of the liquid itself with the brief, such as milk for vegans: then no agent can help, none is tried, and both lists are empty.</summary>
    public ValueList<Finding> LiquidConflicts { get; }

    /// <summary>The proposals, the best first.</summary>
    public ValueList<Proposal> Proposals { get; }

    /// <summary>What is not proposed, and why, in the order of the ids.</summary>
    public ValueList<Exclusion> Exclusions { get; }

    /// <summary>The proposals with their criteria, and the exclusions with their reasons and sources.</summary>
    /// <returns>The text; lines end with a line feed.</returns>
    public string ToText()
    {
        var text = new StringBuilder();
        foreach (Finding conflict in LiquidConflicts)
        {
            text.Append("The liquid itself: ").Append(conflict).Append('\n');
        }

        foreach (Proposal proposal in Proposals)
        {
            text.Append(proposal).Append('\n');
            foreach (Remedy helper in proposal.Helpers)
            {
                text.Append("    ").Append(helper.Advice).Append('\n');
            }

            foreach (CriterionScore score in proposal.Criteria)
            {
                text.Append("    ").Append(score).Append('\n');
            }
        }

        foreach (Exclusion exclusion in Exclusions)
        {
            text.Append("Not ").Append(Phrases.InSentence(exclusion.System.Name)).Append('\n');
            foreach (Obstacle reason in exclusion.Reasons)
            {
                text.Append("    ").Append(reason.Text);
                text.Append(reason.Citations.IsEmpty ? "" : $" ({string.Join("; ", reason.Citations)})").Append('\n');
            }
        }

        return text.ToString();
    }

    /// <summary>The proposals, one a line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Proposals.IsEmpty ? $"nothing for {Brief}" : string.Join("\n", Proposals);
}
