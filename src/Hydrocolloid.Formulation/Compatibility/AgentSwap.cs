using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Another gelling agent for the same texture, as a remedy.</summary>
internal static class AgentSwap
{
    /// <summary>The first of some agents that suits the formula, at the middle of its dose window; null if none does or the line does not gel.</summary>
    public static Remedy? For(ReviewContext context, FormulaLine line, string effect, params Ingredient[] candidates)
    {
        if (context.Agents.Find(a => a.Line == line) is not { Profile.Role: HydrocolloidRole.GellingAgent } agent)
        {
            return null;
        }

        Texture texture = context.Service.Texture
            ?? agent.Profile.DoseWindows.FirstOrDefault(w => AgentInMix.IsWithin(w.Percent.Value, agent.Percent))?.Texture ?? Texture.Soft;
        foreach (Ingredient candidate in candidates)
        {
            if (candidate.Profile!.WindowFor(texture)?.Percent is { Value: { Min: { } low, Max: { } high } } window && Suits(context, candidate))
            {
                double percent = (low + high) / 2;
                Dose dose = Amounts.ForPercentOfMix(context.Formula, line, percent);
                return new Remedy(
                    "other-agent", $"Take {candidate.Name} instead of {line.Ingredient.Name}, at {dose}: {Numbers.Significant(percent, 3)} % of the continuous mix.", effect,
                    new ChangeSequence(ValueList<IFormulaChange>.Own([new IngredientSwap(line.Label, candidate, dose), .. Process(context, candidate)])),
                    ValueList<Citation>.Own([window.Citation]));
            }
        }

        return null;
    }

    private static bool Suits(ReviewContext context, Ingredient candidate)
    {
        ServicePlan service = context.Service;
        return context.Formula.Lines.All(l => l.Ingredient.Id != candidate.Id && l.Label != candidate.Id)
            && !(service.Frozen == true && candidate.Profile!.SensitivityTo(SensitiveTo.Freezing) is not null)
            && !(service.ServedAtCelsius > candidate.Profile!.Melting.Window?.Value.Celsius.Min)
            && !(service.Shape == PortionShape.MiniCup && service.Market == Market.EuropeanUnion)
            && !(service.Market == Market.UnitedStates && Additives.Of(candidate).Any(a => !a.UsCeilings.IsEmpty));
    }

    /// <summary>What a stated process must become for the other agent: hot enough to dissolve it, and cast before it sets.</summary>
    private static IEnumerable<IFormulaChange> Process(ReviewContext context, Ingredient candidate)
    {
        ProcessPlan plan = context.Formula.Process;
        ProcessPlan changed = plan;
        if (plan.HydrateAtCelsius < candidate.Profile!.Hydration.Window.Value.Celsius.Min)
        {
            changed = changed with { HydrateAt = candidate.Profile.Hydration.Window.Value.Min };
        }

        if (plan.CastAtCelsius <= candidate.Profile.Setting.Window?.Value.Celsius.Max)
        {
            changed = changed with { CastAt = Temperature.FromDegreesCelsius(candidate.Profile.Setting.Window!.Value.Celsius.Max!.Value + CastingMargin.Kelvins) };
        }

        if (changed != plan)
        {
            yield return new ProcessChange(changed);
        }
    }
}
