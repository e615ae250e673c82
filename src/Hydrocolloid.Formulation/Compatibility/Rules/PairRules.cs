using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about hydrocolloids together: incompatible ones, their order, and synergies.</summary>
internal static class PairRules
{
    public static IDescribedRule[] All =>
        [new AntagonismRule(), new GelatinWithGumRule(), new BoiledTogetherRule(), new ThickenersThatGelRule(), new NoSynergyRule(), new BlendRatioRule()];

    /// <summary>The pairs of the formula's hydrocolloids that the catalogue knows, in the order of the catalogue's pair.</summary>
    public static IEnumerable<(AgentInMix First, AgentInMix Second, Synergy Pair)> Of(ReviewContext context) =>
        from first in context.Agents
        from second in context.Agents
        where first != second
        from pair in Synergies.Between(first.Line.Ingredient, second.Line.Ingredient)
        where pair.IsFirst(first.Line.Ingredient)
        select (first, second, pair);

    public static bool Has(this Synergy pair, SynergyEffect effect) => pair.Effects.Value.Contains(effect);

    /// <summary>What the catalogue says of some pairs, for the cards of the rules.</summary>
    public static ValueList<Cited<string>> Figures(Func<Synergy, Cited<NumberRange>?> figure, string unit, Func<Synergy, bool>? which = null) => ValueList<Cited<string>>.From(
        from pair in Synergies.All
        where which is null || which(pair)
        let range = figure(pair)
        where range is not null
        select new Cited<string>($"{pair.Id}: {range.Value} {unit}", range.Citation, range.Note));

    public static ValueList<Cited<string>> Effects(Func<Synergy, bool> which) => ValueList<Cited<string>>.From(
        Synergies.All.Where(which).Select(p => new Cited<string>(p.Id, p.Effects.Citation)));
}

/// <summary>Two agents that weaken each other's gel.</summary>
internal sealed class AntagonismRule : IDescribedRule
{
    public string Id => "agents-weaken-each-other";

    public RuleCard Card => new(
        "pair", "Two agents weaken each other's gel: a caution. Pairs of which papers disagree are left out.",
        "One of the two alone, at the dose of both together.", PairRules.Effects(IsAntagonism));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach ((AgentInMix first, AgentInMix second, Synergy pair) in PairRules.Of(context).Where(p => IsAntagonism(p.Pair)))
        {
            (AgentInMix kept, AgentInMix other) = first.Percent >= second.Percent ? (first, second) : (second, first);
            ValueList<Citation> citations = ValueList<Citation>.From(pair.Conditions.Select(c => c.Citation).Append(pair.Effects.Citation).Distinct());
            double both = first.Percent + second.Percent;
            yield return new Finding(
                Id, Severity.Caution,
                $"{first.Name} and {Phrases.InSentence(second.Line)} weaken each other's gel. {string.Join(" ", pair.Conditions.Select(c => c.Value))}",
                ValueList<string>.Own([first.Line.Label, second.Line.Label]),
                ValueList<Evidence>.Own([other.Evidence(new NumberRange(null, 0))]),
                citations,
                !AgentSwap.IsFree(context.Formula, other.Line) ? default : ValueList<Remedy>.Own([new Remedy(
                    "one-of-the-two", $"Use {Phrases.InSentence(kept.Line)} alone, {Numbers.Significant(both, 3)} % of the continuous mix.",
                    "The gel has the strength of that agent; make a trial.",
                    new ChangeSequence(ValueList<IFormulaChange>.Own(
                        [new DoseChange(kept.Line.Label, Amounts.ForPercentOfMix(context.Formula, kept.Line, both)), new LineRemoved(other.Line.Label)])), citations)]));
        }
    }

    private static bool IsAntagonism(Synergy pair)
        => pair.Has(SynergyEffect.Antagonism) && !pair.Has(SynergyEffect.FirmerGel) && !pair.Has(SynergyEffect.Precipitation);
}

/// <summary>Gelatin under its isoelectric point with a gum of negative charge.</summary>
internal sealed class GelatinWithGumRule() : LimitRule("gelatin-clouds-with-gum", "pair", LimitedQuantity.Ph, LimitStage.BesideAnionicGum)
{
    protected override string Trigger => "Gelatin under its isoelectric point beside a gum of negative charge.";

    protected override string RemedyInWords => "Gelatin type B if the pH allows it; the gum left out.";

    protected override string QuantityName => "the pH of the mix";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent) => context.Mix.Ph;

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit) => Gums(context, agent).Length > 0;

    protected override ValueList<string> Lines(ReviewContext context, AgentInMix agent)
        => ValueList<string>.From(Gums(context, agent).Select(l => l.Label).Append(agent.Line.Label));

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        Formula formula = context.Formula;
        ValueList<Citation> citations = ValueList<Citation>.Own([limit.Range.Citation]);
        var remedies = new List<Remedy>();
        Ingredient typeB = Hydrocolloids.GelatinTypeB;
        if (!agent.Is(typeB.Id) && formula.FindLine(typeB.Id) is null && AgentSwap.IsFree(formula, agent.Line)
            && typeB.Profile!.Limits.First(l => l.Stage == LimitStage.BesideAnionicGum).Range is var least && least.Value.Contains(value.Value))
        {
            remedies.Add(new Remedy(
                "gelatin-type-b", "Use gelatin type B of the same strength.", $"Its isoelectric point is lower: at this pH ({least.Value} and up) it has the same charge as the gum.",
                new IngredientSwap(agent.Line.Label, agent.Line.Ingredient.Grade is { } grade ? typeB.WithGrade(grade) : typeB), ValueList<Citation>.Own([least.Citation])));
        }

        FormulaLine[] gums = Gums(context, agent);
        if (gums.All(g => AgentSwap.IsFree(formula, g)))
        {
            remedies.Add(new Remedy(
                "gum-left-out", $"Leave out the {Phrases.Names(gums)}.", "Gelatin alone stays clear.",
                new ChangeSequence(ValueList<IFormulaChange>.From(gums.Select(g => new LineRemoved(g.Label)))), citations));
        }

        return ValueList<Remedy>.Own([.. remedies]);
    }

    private static FormulaLine[] Gums(ReviewContext context, AgentInMix gelatin) =>
    [
        .. context.Agents.Where(a => a != gelatin && Synergies.Between(gelatin.Line.Ingredient, a.Line.Ingredient).Any(s => s.Has(SynergyEffect.Precipitation))).Select(a => a.Line),
    ];
}

/// <summary>An agent that must not get hot, in one phase with one that must.</summary>
internal sealed class BoiledTogetherRule : IDescribedRule
{
    public string Id => "agents-hydrated-together";

    public RuleCard Card => new(
        "pair", "Two agents are added in one phase, and one must be hotter to dissolve than the other stands: a caution.",
        "The one that stands less in a phase after the heat.",
        ValueList<Cited<string>>.From(
            from ingredient in Catalogue.BuiltIn.Hydrocolloids
            let limit = ingredient.Profile!.Hydration.NotAbove
            where limit is not null
            select new Cited<string>($"{ingredient.Name}: not over {limit.Value}", limit.Citation, limit.Note)));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach (AgentInMix agent in context.Agents)
        {
            if (agent.Profile.Hydration.NotAbove is { Value.Celsius.Max: { } stands } limit
                && context.Agents.Where(a => a.Line.PhaseIndex == agent.Line.PhaseIndex && a.Profile.Hydration.Window.Value.Celsius.Min > stands).OrderByDescending(a => a.Profile.Hydration.Window.Value.Celsius.Min).FirstOrDefault() is { } hot)
            {
                double needed = hot.Profile.Hydration.Window.Value.Celsius.Min!.Value;
                yield return new Finding(
                    Id, Severity.Caution,
                    $"{hot.Name} must be held at {Numbers.Significant(needed, 3)} °C to dissolve; {Phrases.InSentence(agent.Line)} in the same phase should not be over {Numbers.Significant(stands, 3)} °C"
                    + (limit.Note is { } note ? $" ({note})." : "."),
                    ValueList<string>.Own([hot.Line.Label, agent.Line.Label]),
                    ValueList<Evidence>.Own([new Evidence($"temperature of {Phrases.InSentence(agent.Line)} in the pot", needed, "°C", new NumberRange(null, stands))]),
                    ValueList<Citation>.Own([limit.Citation, hot.Profile.Hydration.Window.Citation]),
                    !AgentSwap.IsFree(context.Formula, agent.Line) ? default : ValueList<Remedy>.Own([new Remedy(
                        "agent-after-heat", $"Stir in the {Phrases.InSentence(agent.Line)} after the heat, once the pot is under {Numbers.Significant(stands, 3)} °C.",
                        "Each dissolves at its own temperature.", new LineDelayed(agent.Line.Label, RemedyPhases.AfterHeat), ValueList<Citation>.Own([limit.Citation]))]));
            }
        }
    }
}

/// <summary>Two thickeners that gel together, where only thickness is wanted.</summary>
internal sealed class ThickenersThatGelRule : IDescribedRule
{
    public string Id => "thickeners-gel-together";

    public RuleCard Card => new(
        "pair", "A thickened liquid is aimed at with two thickeners that gel together: a caution.",
        "Guar gum in place of the partner of xanthan gum.",
        PairRules.Effects(s => s.Has(SynergyEffect.Gel) && s.Partner is null));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        if (context.Service.Texture != Texture.Thickened)
        {
            yield break;
        }

        foreach ((AgentInMix first, AgentInMix second, Synergy pair) in PairRules.Of(context).Where(p => p.Pair.Has(SynergyEffect.Gel)
            && p.First.Profile.Role == HydrocolloidRole.Thickener && p.Second.Profile.Role == HydrocolloidRole.Thickener))
        {
            double both = first.Percent + second.Percent;
            // An open lower bound is the least that gels; the other figures are the doses of studies.
            Cited<NumberRange>? least = pair.Percent.FirstOrDefault(p => p.Value is { Min: not null, Max: null });
            if (both < least?.Value.Min)
            {
                continue;
            }

            ValueList<Citation> citations = ValueList<Citation>.From(least is null ? [pair.Effects.Citation] : [pair.Effects.Citation, least.Citation]);
            Ingredient guar = Hydrocolloids.GuarGum;
            yield return new Finding(
                Id, Severity.Caution, $"{first.Name} and {Phrases.InSentence(second.Line)} thicken alone, but gel together; a thickened liquid is aimed at.",
                ValueList<string>.Own([first.Line.Label, second.Line.Label]),
                least is null ? default : ValueList<Evidence>.Own([new Evidence("the two together", both, "% by weight of the continuous mix", new NumberRange(null, least.Value.Min))]),
                citations,
                !first.Is(Hydrocolloids.XanthanGum.Id) || context.Formula.FindLine(guar.Id) is not null || !AgentSwap.IsFree(context.Formula, second.Line) ? default
                    : ValueList<Remedy>.Own([new Remedy(
                        "partner-that-only-thickens", $"Use guar gum in place of {Phrases.InSentence(second.Line)}, at the same dose.", "With xanthan gum guar gum makes it thicker, but no gel.",
                        new IngredientSwap(second.Line.Label, guar), ValueList<Citation>.From(Synergies.Between(first.Line.Ingredient, guar).Select(s => s.Effects.Citation)))]));
        }
    }
}

/// <summary>A gum that does not help a gelling agent, where another would.</summary>
internal sealed class NoSynergyRule : IDescribedRule
{
    public string Id => "gum-does-not-help";

    public RuleCard Card => new(
        "pair", "A gum that is known not to help the gelling agent, at more than the dose it is used at for something else: information.",
        "Locust bean gum in its place where that helps.", PairRules.Effects(s => s.Has(SynergyEffect.NoSynergy)));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach ((AgentInMix first, AgentInMix second, Synergy pair) in PairRules.Of(context).Where(p => p.Pair.Has(SynergyEffect.NoSynergy)))
        {
            Cited<NumberRange>? elsewhere = pair.Percent.IsEmpty ? null : pair.Percent[0];
            Ingredient helper = Hydrocolloids.LocustBeanGum;
            Synergy? help = Synergies.Between(first.Line.Ingredient, helper).FirstOrDefault(s => s.Has(SynergyEffect.FirmerGel));
            if (help is null || (elsewhere is not null && second.Percent <= elsewhere.Value.Max * 1.05) || context.Formula.FindLine(helper.Id) is not null)
            {
                continue;
            }

            yield return new Finding(
                Id, Severity.Information,
                $"{second.Name} does not make the gel of {Phrases.InSentence(first.Line)} better. {string.Join(" ", pair.Conditions.Select(c => c.Value))}",
                ValueList<string>.Own([first.Line.Label, second.Line.Label]),
                ValueList<Evidence>.Own([second.Evidence(elsewhere?.Value ?? new NumberRange(null, 0))]),
                ValueList<Citation>.From(pair.Conditions.Select(c => c.Citation).Append(pair.Effects.Citation).Distinct()),
                !AgentSwap.IsFree(context.Formula, second.Line) ? default : ValueList<Remedy>.Own([new Remedy(
                    "gum-that-helps", $"Use locust bean gum in place of {Phrases.InSentence(second.Line)}, at the same dose.",
                    "It makes the gel less brittle and keeps it from weeping.", new IngredientSwap(second.Line.Label, helper), ValueList<Citation>.Own([help.Effects.Citation]))]));
        }
    }
}

/// <summary>Two agents that help each other, far from their best ratio.</summary>
internal sealed class BlendRatioRule : IDescribedRule
{
    public string Id => "blend-ratio";

    public RuleCard Card => new(
        "pair", "Two agents that help each other are outside their published best ratios: information. Less of the second is in order where it is enough against weeping.",
        "The dose of the second at the near end.", PairRules.Figures(s => s.FirstPercent, "% of the first"));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach ((AgentInMix first, AgentInMix second, Synergy pair) in PairRules.Of(context))
        {
            double share = first.Percent / (first.Percent + second.Percent) * 100;
            if (pair.FirstPercent is not { Value: { Min: { } min, Max: { } max } range } best || AgentInMix.IsWithin(range, share)
                || (share > max && pair.AgainstWeepingPercent?.Value.Min is { } enough && second.Percent * 1.05 >= enough))
            {
                continue;
            }

            double end = share > max ? max : min;
            double percent = first.Percent * (100 - end) / end;
            Dose dose = Amounts.ForPercentOfMix(context.Formula, second.Line, percent);
            yield return new Finding(
                Id, Severity.Information,
                $"{first.Name} is {Numbers.Significant(share, 3)} % of the two with {Phrases.InSentence(second.Line)}; they work best together at {best.Value} %"
                + (best.Note is { } note ? $" ({note})." : "."),
                ValueList<string>.Own([first.Line.Label, second.Line.Label]),
                ValueList<Evidence>.Own([new Evidence($"{Phrases.InSentence(first.Line)} in the two together", share, "% by weight of the two", range)]),
                ValueList<Citation>.Own([best.Citation]),
                second.Line.IsBase ? default : ValueList<Remedy>.Own([new Remedy(
                    "best-ratio", $"Dose {Phrases.InSentence(second.Line)} at {dose}: {Numbers.Significant(percent, 3)} % of the continuous mix.", "The two then help each other most; make a trial.",
                    new DoseChange(second.Line.Label, dose), ValueList<Citation>.Own([best.Citation]))]));
        }
    }
}
