using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about doses, and about lines of which nothing is known.</summary>
internal static class DoseRules
{
    public static IDescribedRule[] All =>
    [
        new UnknownIngredientRule(), new DecimalSlipRule(), new GellingMinimumRule(), new DoseWindowRule(),
        new TooThickToHydrateRule(), new ConcentratedByEvaporationRule(), new DoseOnWaterRule(), new LowMarginRule(),
    ];
}

/// <summary>An ingredient that no catalogue knows: it is weighed, but nothing can be said of it.</summary>
internal sealed class UnknownIngredientRule : IDescribedRule
{
    public string Id => "unknown-ingredient";

    public RuleCard Card => new(
        "formula",
        "A line names an ingredient that no catalogue knows: a caution.",
        null, default);

    public IEnumerable<Finding> Check(ReviewContext context) => context.Formula.Lines.Where(l => !l.Ingredient.IsKnown).Select(l => new Finding(
        Id, Severity.Caution,
        $"'{l.Ingredient.Id}' is in no catalogue: it is weighed, but its water, allergens and behaviour are unknown. Check the spelling, or state it as an own ingredient.",
        ValueList<string>.Own([l.Label])));
}

/// <summary>A dose outside every figure for it, but that a working window would hold if its decimal sign were moved.</summary>
internal sealed class DecimalSlipRule : IDescribedRule
{
    public string Id => "decimal-slip";

    public RuleCard Card => new(
        "dose",
        "A dose lies outside every published figure, but would lie in a working window if its decimal sign were moved: a conflict if nothing then gels or it is a hundred times too much, else a caution. Not in a blend at a working dose of both.",
        "The dose with the decimal sign moved.", DoseFigures.Windows);

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach (AgentInMix agent in context.Agents)
        {
            if (agent.Slip() is { } reading && !agent.IsInBlend)
            {
                yield return Report(agent, reading, context.Agents.Exists(a => a != agent && a.ReachesMinimum));
            }
        }
    }

    private Finding Report(AgentInMix agent, SlipReading reading, bool anotherGels)
    {
        DoseWindow window = reading.Window;
        FormulaLine line = agent.Line;
        string meant = Numbers.Significant(line.Dose.PercentByMass * reading.Factor, 6);
        // Too little does not gel unless another agent does, and a hundred times too much is no dose at all; in between it is a doubt.
        bool fails = (agent.IsUnderMinimum && !anotherGels) || reading.Factor < 0.05;
        return new Finding(
            Id,
            fails ? Severity.Conflict : Severity.Caution,
            $"{agent.Stated()}; that is outside every published dose{(agent.ChosenWindow == window ? " for this texture" : "")}. Read as {meant} % of {line.Dose.Reference} it would be "
            + $"{Numbers.Significant(reading.Percent, 3)} %, in the window for {Words.Of(window.Texture)} ({window.Percent.Value} %): "
            + "a slip of the decimal sign is likely.",
            ValueList<string>.Own([line.Label]),
            ValueList<Evidence>.Own(
            [
                agent.Evidence(window.Percent.Value),
                new Evidence($"{agent.Name} with the decimal sign moved", reading.Percent, "% by weight of the continuous mix", window.Percent.Value),
            ]),
            ValueList<Citation>.Own([window.Percent.Citation]),
            ValueList<Remedy>.Own([new Remedy(
                "decimal-sign-moved", $"Dose {agent.Name} at {meant} % of {line.Dose.Reference}, if that is what was meant.",
                $"It is then {Numbers.Significant(reading.Percent, 3)} % of the continuous mix: {Words.Of(window.Texture)}.",
                new DoseChange(line.Label, new Dose(line.Dose.PercentByMass * reading.Factor, line.Dose.Reference)),
                ValueList<Citation>.Own([window.Percent.Citation]))]));
    }
}

/// <summary>A gelling agent below the lowest dose that gels.</summary>
internal sealed class GellingMinimumRule : IDescribedRule
{
    public string Id => "dose-under-gelling-minimum";

    public RuleCard Card => new(
        "dose",
        "A gelling agent is under the lowest dose that gels: a conflict, or information if another agent carries the gel or the two are a blend at a working dose of both.",
        "The dose that reaches the minimum, or the soft window if there is one.", DoseFigures.Minima);

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        List<AgentInMix> agents = context.Agents;
        foreach (AgentInMix agent in agents.Where(a => a.IsUnderMinimum && (a.Slip() is null || a.IsInBlend)))
        {
            Cited<NumberRange> minimum = agent.Profile.MinimumGellingPercent!;
            bool anotherGels = agent.IsInBlend || agents.Exists(a => a != agent && a.ReachesMinimum);
            string outcome = agent.IsInBlend ? "Alone it will not gel; in this blend the two gel together." : anotherGels ? "It will not gel by itself; another agent of the formula carries the gel." : "It will not gel.";
            yield return new Finding(
                Id,
                anotherGels ? Severity.Information : Severity.Conflict,
                $"{agent.Stated()}; the lowest dose that gels is {Numbers.Significant(minimum.Value.Min!.Value, 4)} %. {outcome}",
                ValueList<string>.Own([agent.Line.Label]),
                ValueList<Evidence>.Own([agent.Evidence(new NumberRange(minimum.Value.Min, null))]),
                ValueList<Citation>.Own([minimum.Citation]),
                anotherGels ? default : ValueList<Remedy>.Own([Raise(agent, minimum)]));
        }
    }

    /// <summary>To the window of the texture aimed at, else the lowest window of a gel; the bare minimum if there is none.</summary>
    private static Remedy Raise(AgentInMix agent, Cited<NumberRange> minimum)
    {
        DoseWindow? window = agent.ChosenWindow ?? agent.Profile.DoseWindows
            .Where(w => w.Texture is Texture.Soft or Texture.Firm or Texture.VeryFirm && w.Percent.Value.Min >= minimum.Value.Min)
            .OrderBy(w => w.Percent.Value.Min).FirstOrDefault();
        return window?.Percent.Value.Min is { } low ? DoseRemedy.To(agent, Math.Max(low, minimum.Value.Min!.Value), window)
            : DoseRemedy.To(agent, minimum.Value.Min!.Value, "It then gels, just.", minimum.Citation);
    }
}

/// <summary>
/// A dose outside the working window of the texture aimed at; where no texture is stated, outside all working windows.
/// A thickener beside a gelling agent is held against its own windows.
/// </summary>
internal sealed class DoseWindowRule : IDescribedRule
{
    public string Id => "dose-outside-window";

    public RuleCard Card => new(
        "dose",
        "A dose lies outside the working window of the texture aimed at, or outside all windows where no texture is stated: a caution. Information if no window is known. Not in a blend at a working dose of both.",
        "The dose at the near end of the window.", DoseFigures.Windows);

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach (AgentInMix agent in context.Agents)
        {
            if (agent.Profile.DoseWindows.IsEmpty || agent.IsDosedForMilk || agent.Slip() is not null || agent.IsUnderMinimum || agent.IsInBlend)
            {
                continue;
            }

            Texture? aim = context.Service.Texture;
            if (aim is { } texture && agent.Profile.Role == HydrocolloidRole.GellingAgent)
            {
                if (agent.ChosenWindow is not { } window)
                {
                    yield return new Finding(
                        Id, Severity.Information, $"{agent.Stated()}; no working dose for {Words.Of(texture)} is known, so the dose was not checked.",
                        ValueList<string>.Own([agent.Line.Label]));
                }
                else if (!AgentInMix.IsWithin(window.Percent.Value, agent.Percent))
                {
                    yield return Outside(agent, window, $"the window for {Words.Of(texture)} is {window.Percent.Value} %");
                }
            }
            else if (!agent.Profile.DoseWindows.Any(w => AgentInMix.IsWithin(w.Percent.Value, agent.Percent)))
            {
                DoseWindow nearest = agent.Profile.DoseWindows.OrderBy(w => Distance(w.Percent.Value, agent.Percent)).First();
                yield return Outside(agent, nearest, $"the nearest window ({Words.Of(nearest.Texture)}) is {nearest.Percent.Value} %");
            }
        }
    }

    private static double Distance(NumberRange range, double value)
        => Math.Max((range.Min ?? double.NegativeInfinity) - value, value - (range.Max ?? double.PositiveInfinity));

    private Finding Outside(AgentInMix agent, DoseWindow window, string what)
    {
        double target = agent.Percent < window.Percent.Value.Min ? window.Percent.Value.Min.Value : window.Percent.Value.Max!.Value;
        string consequence = agent.Percent < window.Percent.Value.Min ? "Expect it softer than meant." : "Expect it firmer or thicker than meant.";
        return new Finding(
            Id,
            Severity.Caution,
            $"{agent.Stated()}; {what}. {consequence}",
            ValueList<string>.Own([agent.Line.Label]),
            ValueList<Evidence>.Own([agent.Evidence(window.Percent.Value)]),
            ValueList<Citation>.Own([window.Percent.Citation]),
            ValueList<Remedy>.Own([DoseRemedy.To(agent, target, window)]));
    }
}

/// <summary>More of a hydrocolloid in what it dissolves in than one step dissolves.</summary>
internal sealed class TooThickToHydrateRule() : LimitRule("too-thick-to-hydrate", "dose", LimitedQuantity.Concentration, LimitStage.Hydrating)
{
    protected override string Trigger => "A hydrocolloid is more concentrated in what it dissolves in than one step dissolves.";

    protected override string RemedyInWords => "All of the base to dissolve it in.";

    protected override string QuantityName => "its share of the liquid it dissolves in";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
        => new(context.Formula.Proportions.MassOf(agent.Line) / agent.Medium.MassPerBase * 100, "% by weight", ReckonedHow.Computed, "masses");

    /// <summary>A slip of the decimal sign is reported as such.</summary>
    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit) => agent.Slip() is null;

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        var change = new ProcessChange(context.Formula.Process with { Carriers = default });
        var changed = new ReviewContext(change.ApplyTo(context.Formula));
        return !context.Formula.Process.Carriers.IsEmpty && AddedAmount.Same(changed, agent) is { } same && Measure(changed, same) is { } share && limit.Range.Value.Contains(share.Value)
            ? ValueList<Remedy>.Own([new Remedy(
                "whole-base", $"Dissolve the {Phrases.InSentence(agent.Name)} in the whole base.", $"It is then {Numbers.Significant(share.Value, 3)} % of the liquid.", change, ValueList<Citation>.Own([limit.Range.Citation]))])
            : default;
    }
}

/// <summary>Water that boils off and is not put back, so that the dose as it sets leaves its window.</summary>
internal sealed class ConcentratedByEvaporationRule : IDescribedRule
{
    public string Id => "concentrated-by-evaporation";

    public RuleCard Card => new(
        "dose", "Water boils off and is not put back, and a dose that is in its window as written lies over it as it sets: a caution.",
        "The water put back; a lower dose.", DoseFigures.Windows);

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        Formula formula = context.Formula;
        Losses losses = formula.Process.Losses;
        if (losses.ToppedUp || losses.Evaporation.IsNone)
        {
            yield break;
        }

        foreach (AgentInMix agent in context.Agents.Where(a => !a.Profile.DoseWindows.IsEmpty))
        {
            if (losses.Evaporation.Grams > 0)
            {
                context.Needs(Id, "the evaporation as a percentage: in grams it depends on the size of the batch", agent.Line.Label);
                continue;
            }

            double asSet = agent.Percent * formula.Proportions.ContinuousMix / (formula.Proportions.ContinuousMix - losses.EvaporatedGrams(formula.Proportions.Total));
            DoseWindow[] windows = agent.ChosenWindow is { } chosen ? [chosen] : [.. agent.Profile.DoseWindows];
            DoseWindow top = windows.OrderByDescending(w => w.Percent.Value.Max).First();
            if (!windows.Any(w => AgentInMix.IsWithin(w.Percent.Value, agent.Percent)) || !(asSet > 0) || AgentInMix.IsWithin(new NumberRange(null, top.Percent.Value.Max), asSet))
            {
                continue;
            }

            ValueList<Citation> citations = ValueList<Citation>.Own([top.Percent.Citation]);
            yield return new Finding(
                Id, Severity.Caution,
                $"{agent.Stated()}; {losses.Evaporation} boils off and is not put back, so it sets at {Numbers.Significant(asSet, 3)} %, over the window for {Words.Of(top.Texture)} ({top.Percent.Value} %). Expect it firmer or thicker than meant.",
                ValueList<string>.Own([agent.Line.Label]),
                ValueList<Evidence>.Own([new Evidence($"{agent.Name} in the continuous mix as it sets", asSet, "% by weight of it", top.Percent.Value)]),
                citations,
                ValueList<Remedy>.Own(
                [
                    new Remedy("top-up", "Weigh the pan and put the lost water back before casting.", "The dose is then as written.",
                        new ProcessChange(formula.Process with { Losses = losses with { ToppedUp = true } }), citations),
                    DoseRemedy.To(agent, agent.Percent * top.Percent.Value.Max!.Value / asSet, "As it sets, it is then at the top of its window.", top.Percent.Citation),
                ]));
        }
    }
}

/// <summary>Xanthan in a mix with little water: it thickens the water, so that is what its dose is of.</summary>
internal sealed class DoseOnWaterRule : IDescribedRule
{
    private const double LittleWaterPercent = 50; // water and sugars; a judgement: an oily dressing or a cheese sauce, not a syrup

    public string Id => "dose-counts-on-water";

    public RuleCard Card => new(
        "dose", "Xanthan in a mix of which water and sugars are less than half is in its window of the mix, but over it of the water, which is what it thickens: a caution.",
        "The dose that is in the window of the water.", DoseFigures.Windows);

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach (AgentInMix agent in context.Agents.Where(a => a.Is("xanthan-gum") && a.Slip() is null))
        {
            if (!context.Mix.Water.Without.IsEmpty)
            {
                context.Needs(Id, $"the water of {context.Mix.Water.Without}", agent.Line.Label);
                continue;
            }

            double ofWater = agent.Percent / context.Mix.Water.Value * 100;
            DoseWindow window = agent.ChosenWindow ?? agent.Profile.DoseWindows.OrderByDescending(w => w.Percent.Value.Max).First();
            if (context.Mix.Water.Value + context.Mix.Sugars.Value >= LittleWaterPercent || !AgentInMix.IsWithin(window.Percent.Value, agent.Percent) || AgentInMix.IsWithin(new NumberRange(null, window.Percent.Value.Max), ofWater))
            {
                continue;
            }

            double target = window.Percent.Value.Max!.Value * context.Mix.Water.Value / 100;
            yield return new Finding(
                Id, Severity.Caution,
                $"{agent.Stated()}, but only {Numbers.Significant(context.Mix.Water.Value, 3)} % of that is water: it is {Numbers.Significant(ofWater, 3)} % of the water it thickens, and the window is {window.Percent.Value} %. Expect it much thicker than meant; try a small batch.",
                ValueList<string>.Own([agent.Line.Label]),
                ValueList<Evidence>.Own([new Evidence($"{agent.Name} in the water of the continuous mix", ofWater, "% by weight of that water", window.Percent.Value)]),
                ValueList<Citation>.Own([window.Percent.Citation]),
                ValueList<Remedy>.Own([DoseRemedy.To(agent, target, $"It is then {Numbers.Significant(window.Percent.Value.Max.Value, 4)} % of the water.", window.Percent.Citation)]));
        }
    }
}

/// <summary>Gelatin that is soaked, with so little over its minimum that what the soaking water takes may cost the gel.</summary>
internal sealed class LowMarginRule : IDescribedRule
{
    private const double LowPercent = 30; // a practitioner's case: within 30 % of the lower limit

    private static readonly Citation s_citation = BuiltInCatalogue.Cite("common-practice");

    public string Id => "low-dose-margin";

    public RuleCard Card => new(
        "dose", "Gelatin is soaked in water of a stated temperature, and losing 30 % of it or less would take it under the lowest dose that gels: information.",
        null, ValueList<Cited<string>>.Own([new Cited<string>("A margin of 30 %", s_citation)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach (AgentInMix agent in context.Agents.Where(IsGelatin))
        {
            if (context.Formula.Process.SoakAtCelsius is null || agent.Profile.MinimumGellingPercent is not { Value.Min: { } minimum } limit)
            {
                continue;
            }

            double margin = (1 - minimum / agent.Percent) * 100;
            if (margin > 0 && margin <= LowPercent)
            {
                yield return new Finding(
                    Id, Severity.Information,
                    $"{agent.Stated()}; the lowest dose that gels is {Numbers.Significant(minimum, 3)} %. If the soaking water takes {Numbers.Significant(margin, 2)} % of it, it will not set: soak it cold and briefly, or use the powder's own water.",
                    ValueList<string>.Own([agent.Line.Label]),
                    ValueList<Evidence>.Own([new Evidence($"{agent.Name} that may be lost", margin, "% of it", new NumberRange(LowPercent, null))]),
                    ValueList<Citation>.Own([limit.Citation, s_citation]));
            }
        }
    }

    private static bool IsGelatin(AgentInMix agent) => agent.Is("gelatin-type-a") || agent.Is("gelatin-type-b") || agent.Is("gelatin-fish");
}

/// <summary>The doses that the catalogue states, in words, for the cards of the dose rules.</summary>
internal static class DoseFigures
{
    public static ValueList<Cited<string>> Windows => ValueList<Cited<string>>.From(
        from ingredient in Catalogue.BuiltIn.Hydrocolloids
        from window in ingredient.Profile!.DoseWindows
        select new Cited<string>($"{ingredient.Name}, {Words.Of(window.Texture)}: {window.Percent.Value} %", window.Percent.Citation));

    public static ValueList<Cited<string>> Minima => ValueList<Cited<string>>.From(
        from ingredient in Catalogue.BuiltIn.Hydrocolloids
        where ingredient.Profile!.MinimumGellingPercent is not null
        let minimum = ingredient.Profile!.MinimumGellingPercent!
        select new Cited<string>($"{ingredient.Name}: {minimum.Value} %", minimum.Citation));
}

/// <summary>Another dose of a hydrocolloid that is in the formula.</summary>
internal static class DoseRemedy
{
    /// <summary>The dose that brings it into a window.</summary>
    public static Remedy To(AgentInMix agent, double percent, DoseWindow window)
        => To(agent, percent, $"It is then in the window for {Words.Of(window.Texture)}.", window.Percent.Citation);

    /// <summary>The dose that makes it a percentage by weight of the continuous mix.</summary>
    public static Remedy To(AgentInMix agent, double percent, string effect, Citation citation)
    {
        Dose dose = Amounts.ForPercentOfMix(agent.Formula, agent.Line, percent);
        bool more = percent > agent.Percent;
        return new Remedy(
            more ? "raise-dose" : "lower-dose",
            $"{(more ? "Raise" : "Lower")} {agent.Name} to {dose}: {Numbers.Significant(percent, 4)} % of the continuous mix.",
            effect, new DoseChange(agent.Line.Label, dose), ValueList<Citation>.Own([citation]));
    }
}
