using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Another gelling agent in place of one, at the dose of the same texture.</summary>
internal static class AgentSwap
{
    /// <summary>The window that counts for an agent: that of the texture aimed at, else the one its dose lies in; null if there is none.</summary>
    public static DoseWindow? WindowOf(AgentInMix agent)
        => agent.ChosenWindow ?? agent.Profile.DoseWindows.FirstOrDefault(w => AgentInMix.IsWithin(w.Percent.Value, agent.Percent));

    /// <summary>
    /// The other agent as far up its window as the one is in its own, both windows being of one texture. Null if the formula holds the
    /// other already, if a line is dosed on the one, or if one of the windows is not known.
    /// </summary>
    public static Remedy? To(AgentInMix agent, Ingredient other, string effect, ValueList<Citation> citations)
    {
        Formula formula = agent.Formula;
        DoseWindow? from = WindowOf(agent);
        DoseWindow? to = other.Profile!.WindowFor(formula.Service.Texture ?? from?.Texture ?? Texture.Soft);
        if (formula.Lines.Any(l => l.Ingredient.Id == other.Id) || !IsFree(formula, agent.Line)
            || to?.Percent.Value is not { Min: { } low, Max: { } high })
        {
            return null;
        }

        double percent = low + (high - low) * (from?.Percent.Value is { Min: { } min, Max: { } max } ? Math.Min(1, Math.Max(0, (agent.Percent - min) / (max - min))) : 0.5);
        Dose dose = Amounts.ForPercentOfMix(formula, agent.Line, percent);
        return new Remedy(
            "another-agent", $"Gel it with {Phrases.InSentence(other.Name)} at {dose} in place of {Phrases.InSentence(agent.Line)}: {Numbers.Significant(percent, 3)} % of the continuous mix, {Words.Of(to.Texture)}.",
            effect, new IngredientSwap(agent.Line.Label, other, dose), ValueList<Citation>.From(citations.Append(to.Percent.Citation)));
    }

    /// <summary>True if a line is an addition on which no other line is dosed, so that it can go or change its name.</summary>
    public static bool IsFree(Formula formula, FormulaLine line)
        => !line.IsBase && formula.Lines.All(l => l.IsBase || l.Dose.Reference.Label != line.Label);
}
