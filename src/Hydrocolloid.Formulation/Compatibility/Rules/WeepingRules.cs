using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about weeping, clarity and air.</summary>
internal static class WeepingRules
{
    public static IDescribedRule[] All => [new WeepingRule(), new CloudyGelRule(), new CloudyLiquidRule(), new AirRule()];
}

/// <summary>A gel that weeps, where it is to be stored or cut, without anything that keeps it from it.</summary>
internal sealed class WeepingRule : IDescribedRule
{
    public string Id => "weeping";

    public RuleCard Card => new(
        "weeping",
        "A gel that weeps much is to be stored (a caution) or cut (information); one that weeps little is to be stored and cut (information). Not where a helper is in it at its amount; a step less with one that helps in part. Gels in milk are left out.",
        "The amount of the helper.",
        ValueList<Cited<string>>.From(SensitivityRules.Of(SensitiveTo.Weeping)
            .Concat(PairRules.Figures(s => s.AgainstWeepingPercent, "% of the second"))
            .Concat(PairRules.Figures(s => s.FirstPercent, "% of the first", s => s.AgainstWeepingPercent is null && s.Has(SynergyEffect.LessSyneresis)))));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        bool stored = context.Service.StoredSeconds > 0;
        bool cut = context.Service.Shape is PortionShape.Slice or PortionShape.Cube;
        foreach ((AgentInMix agent, AgentSensitivity sensitivity) in StorageRules.Sensitive(context, SensitiveTo.Weeping))
        {
            Severity? severity = sensitivity.Harm >= Harm.Weakens
                ? stored ? Severity.Caution : cut ? Severity.Information : null
                : stored && cut ? Severity.Information : null;
            WeepingHelper[] helpers = severity is null || agent.IsUnderMinimum || agent.IsDosedForMilk ? [] : [.. WeepingHelper.Of(context, agent)];
            if (helpers.Length == 0 || helpers.Any(h => h.IsEnough))
            {
                continue;
            }

            ValueList<Remedy> remedies = ValueList<Remedy>.From(helpers.Select(h => h.ToRemedy()).Where(r => r is not null).Select(r => r!));
            if (remedies.IsEmpty && sensitivity.Harm < Harm.Weakens)
            {
                continue;
            }

            bool partly = context.Agents.Any(a => Synergies.Between(agent.Line.Ingredient, a.Line.Ingredient).Any(s => s.Has(SynergyEffect.MoreElastic)));
            yield return new Finding(
                Id, partly ? Severity.Information : severity!.Value,
                $"{agent.Name}, to be {(stored && cut ? "stored and cut" : stored ? "stored" : "cut")}: {char.ToLowerInvariant(sensitivity.Consequence.Value[0])}{sensitivity.Consequence.Value.Substring(1)}",
                ValueList<string>.Own([agent.Line.Label]),
                ValueList<Evidence>.From(helpers.Where(h => h.Needed > 0).Select(h => h.Evidence)),
                ValueList<Citation>.Own([sensitivity.Consequence.Citation]),
                remedies);
        }
    }
}

/// <summary>An agent with a cloudy gel where a clear one is wanted.</summary>
internal sealed class CloudyGelRule : IDescribedRule
{
    public string Id => "gel-not-clear";

    public RuleCard Card => new(
        "weeping", "A clear gel is wanted, and the gel of an agent is cloudy (a caution) or not brilliant (information).",
        "Gelatin at the dose of the same texture, where no diet is stated, nothing cuts it and it is served cold.", SensitivityRules.Of(SensitiveTo.Cloudiness));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        if (context.Service.Clear != true)
        {
            yield break;
        }

        foreach ((AgentInMix agent, AgentSensitivity sensitivity) in StorageRules.Sensitive(context, SensitiveTo.Cloudiness))
        {
            bool suits = context.Service.Diets.IsEmpty && context.Service.ServedAtCelsius is not > 20 && context.Service.Texture != Texture.FluidGel
                && context.Agents.Count == 1 && context.Formula.Lines.All(l => l.Ingredient.Protease?.Value.IsActive != true);
            Remedy? swap = suits ? AgentSwap.For(context, agent.Line, "Its gel is clear; it melts in a warm room.", Hydrocolloids.GelatinTypeA) : null;
            yield return new Finding(
                Id, sensitivity.Harm.ToSeverity(), $"It should be clear, but is gelled with {Phrases.InSentence(agent.Line)}. {sensitivity.Consequence.Value}",
                ValueList<string>.Own([agent.Line.Label]), default, ValueList<Citation>.Own([sensitivity.Consequence.Citation]),
                swap is null ? default : ValueList<Remedy>.Own([swap]));
        }
    }
}

/// <summary>Milk, or another liquid with fat in it, where a clear gel is wanted.</summary>
internal sealed class CloudyLiquidRule : IDescribedRule
{
    private const double LeastPercent = 1;

    public string Id => "liquid-not-clear";

    public RuleCard Card => new(
        "weeping", "A clear gel is wanted, and a line of 1 % of the mix or more holds casein or at least 1 % of fat: a caution.", null,
        ValueList<Cited<string>>.Own([new Cited<string>("Droplets of fat and casein scatter light; the 1 % is a round number of this catalogue.", Citation.CommonPractice)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        FormulaLine[] cloudy = context.Service.Clear != true ? [] :
        [
            .. context.Formula.Lines.Where(l => l.IsContinuous && context.Formula.Proportions.PercentOfContinuousMix(l) >= LeastPercent
                && (l.Ingredient.MilkProtein?.Value.Casein == true || l.Ingredient.Composition?.Value.FatPercent >= LeastPercent)),
        ];
        if (cloudy.Length > 0)
        {
            yield return new Finding(
                Id, Severity.Caution, $"It should be clear, but the {Phrases.Names(cloudy)} in it scatters light: droplets of fat and casein make it cloudy or white.",
                ValueList<string>.From(cloudy.Select(l => l.Label)),
                ValueList<Evidence>.From(cloudy.Select(l => new Evidence(l.Ingredient.Name, context.Formula.Proportions.PercentOfContinuousMix(l), "% by weight of the continuous mix", new NumberRange(null, LeastPercent)))),
                ValueList<Citation>.Own([Citation.CommonPractice]));
        }
    }
}

/// <summary>High shear draws in air, which shows in a clear gel.</summary>
internal sealed class AirRule : IDescribedRule
{
    public string Id => "air-in-clear-gel";

    public RuleCard Card => new(
        "weeping", "A clear gel is wanted, and an agent needs high shear: information.", null,
        ValueList<Cited<string>>.Own([new Cited<string>("A jug blender draws in air.", Citation.CommonPractice)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        AgentInMix[] sheared = context.Service.Clear != true ? [] : [.. context.Agents.Where(a => a.Profile.Hydration.NeedsHighShear)];
        if (sheared.Length > 0)
        {
            yield return new Finding(
                Id, Severity.Information,
                $"It should be clear, and {Phrases.Names(sheared.Select(a => a.Line))} needs high shear: a jug blender draws in air that stays as bubbles. Use a stick blender under the surface, and let the mix stand or draw a vacuum before it sets.",
                ValueList<string>.From(sheared.Select(a => a.Line.Label)), default, ValueList<Citation>.Own([Citation.CommonPractice]));
        }
    }
}
