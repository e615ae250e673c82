using Hydrocolloid.Formulation.Analysis;
using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about alcohol and dissolved solids.</summary>
internal static class SolventRules
{
    public static IDescribedRule[] All =>
    [
        new BoilsTooLowRule(), new AlcoholWhileHydratingRule(),
        new AlcoholInTheGelRule("alcohol-in-the-gel", LimitedQuantity.AlcoholByVolume), new AlcoholInTheGelRule("ethanol-in-the-gel", LimitedQuantity.Ethanol),
        new SolidsWhileHydratingRule(), new SolidsOfTheGelRule(), new BeyondSolubilityRule(),
    ];
}

/// <summary>Alcohol in the pot: it boils before the hydrocolloid dissolves.</summary>
internal sealed class BoilsTooLowRule : IDescribedRule
{
    private static readonly Citation s_citation = BuiltInCatalogue.Cite("perry-ethanol-water", "boiling points at 1 atm", CitationBasis.Recalled);

    public string Id => "alcohol-boils-too-low";

    public RuleCard Card => new(
        "solvents", "A hydrocolloid is to be heated in a liquid with so much alcohol that it boils under the temperature needed: a conflict under every published temperature, a caution under the usual one only.",
        "The alcohol after the heat.", ValueList<Cited<string>>.Own([new Cited<string>("Boiling points of ethanol and water at 1 atm", s_citation)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach (AgentInMix agent in context.Agents)
        {
            if (agent.Profile.Hydration.Window.Value.Celsius.Min is not { } needed)
            {
                continue;
            }

            Reckoned ethanol = agent.Medium.Ethanol;
            if (!ethanol.Without.IsEmpty && needed >= AlcoholPot.LeastCelsius)
            {
                context.Needs(Id, $"the alcohol of {ethanol.Without}", agent.Line.Label);
            }

            if (AlcoholPot.BoilsAt(agent) is { } boils && boils < needed)
            {
                ValueList<Citation> citations = ValueList<Citation>.Own([s_citation, agent.Profile.Hydration.Window.Citation]);
                double least = agent.Profile.Hydration.Window.Alternatives.Min(w => w.Value.Celsius.Min) is { } published ? Math.Min(published, needed) : needed;
                yield return new Finding(
                    Id, boils < least ? Severity.Conflict : Severity.Caution,
                    $"{agent.Name} needs {Numbers.Significant(needed, 3)} °C to dissolve, but with {Numbers.Significant(agent.Medium.AlcoholByVolume.Value, 3)} % vol of alcohol the liquid boils at about {Numbers.Significant(boils, 3)} °C. "
                    + "Ethanol does not dissolve it either. The vapour of a boiling liquid with alcohol can catch fire: no open flame.",
                    ValueList<string>.From([agent.Line.Label, .. AlcoholPot.Lines(context, agent).Select(l => l.Label)]),
                    ValueList<Evidence>.Own([new Evidence("the boiling point of the liquid it is heated in", boils, "°C", new NumberRange(needed, null))]),
                    citations, AlcoholPot.Remedies(context, agent, citations, rest => AlcoholPot.BoilsAt(rest) is not { } later || later >= needed));
            }
        }
    }
}

/// <summary>Alcohol in what a hydrocolloid dissolves in.</summary>
internal static class AlcoholPot
{
    /// <summary>No mixture of ethanol and water boils lower at sea level.</summary>
    public const double LeastCelsius = 78;

    public static double? BoilsAt(AgentInMix agent) => BoilsAt(agent.Medium);

    /// <summary>The boiling point at sea level; null without alcohol to speak of, or without water.</summary>
    public static double? BoilsAt(MixContents liquid)
    {
        double water = liquid.Water.Value, sugars = liquid.Sugars.Value, ethanol = liquid.Ethanol.Value;
        return ethanol < 0.1 || water < 1 || water + sugars + ethanol > 100 ? null
            : Boiling.PointOf(new LiquidShares(water, sugars, 0, 0, ethanol)).Temperature.DegreesCelsius;
    }

    /// <summary>The lines with alcohol, the most of it first.</summary>
    public static FormulaLine[] Lines(ReviewContext context, AgentInMix agent) => [.. context.HydrationLines(agent.Line)
        .Where(l => l.Ingredient.Composition?.Value.EthanolPercent >= 1)
        .OrderByDescending(l => context.Formula.Proportions.MassOf(l) * l.Ingredient.Composition!.Value.EthanolPercent)];

    /// <summary>The spirit after the heat: added lines later, parts of the base held back from the carriers.</summary>
    public static ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, ValueList<Citation> citations, Func<MixContents, bool> isInOrder)
    {
        FormulaLine[] lines = Lines(context, agent);
        FormulaLine[] added = [.. lines.Where(l => !l.IsBase)], liquids = [.. lines.Where(l => l.IsBase)];
        FormulaLine[] carriers = HeldBack.Carriers(context, agent, liquids);
        if (lines.Length == 0 || (liquids.Length > 0 && carriers.Length == 0) || !isInOrder(new MixContents(context.Formula, context.HydrationLines(agent.Line).Except(lines))))
        {
            return default;
        }

        var changes = new List<IFormulaChange>();
        if (liquids.Length > 0)
        {
            changes.Add(HeldBack.ByCarriers(context, carriers));
        }

        if (added.Length > 0)
        {
            changes.Add(HeldBack.Later(added));
        }

        return ValueList<Remedy>.Own([new Remedy(
            "alcohol-after-heat", $"Dissolve the {Phrases.InSentence(agent.Name)} without the {Phrases.Names(lines)}; warm that and stir it in afterwards, away from the flame.",
            "It dissolves in water, and the alcohol stays in the mix.", new ChangeSequence(ValueList<IFormulaChange>.From(changes)), citations)]);
    }
}

/// <summary>More alcohol in what a hydrocolloid dissolves in than lets it dissolve.</summary>
internal sealed class AlcoholWhileHydratingRule() : LimitRule("alcohol-while-hydrating", "solvents", LimitedQuantity.AlcoholByVolume, LimitStage.Hydrating)
{
    protected override string Trigger => "A hydrocolloid is to dissolve in a liquid with more alcohol than lets it. Silent where that liquid boils too low, which is the graver trouble.";

    protected override string RemedyInWords => "The alcohol after it has dissolved.";

    protected override string QuantityName => "the alcohol of the liquid it dissolves in";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
    {
        Reckoned alcohol = agent.Medium.AlcoholByVolume;
        if (!agent.Medium.Ethanol.Without.IsEmpty)
        {
            context.Needs(Id, $"the alcohol of {agent.Medium.Ethanol.Without}", agent.Line.Label);
        }

        return double.IsNaN(alcohol.Value) ? null : alcohol;
    }

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => !(AlcoholPot.BoilsAt(agent) < agent.Profile.Hydration.Window.Value.Celsius.Min);

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
        => AlcoholPot.Remedies(context, agent, ValueList<Citation>.Own([limit.Range.Citation]), rest => rest.AlcoholByVolume.Value <= limit.Range.Value.Max);
}

/// <summary>Alcohol in the mix that gels.</summary>
internal sealed class AlcoholInTheGelRule(string id, LimitedQuantity quantity) : LimitRule(id, "solvents", quantity, LimitStage.Finished)
{
    private static readonly double[] s_waterShares = [10, 20, 30, 40, 50];

    private readonly LimitedQuantity _quantity = quantity;

    protected override string Trigger => _quantity == LimitedQuantity.Ethanol
        ? "The mix holds more ethanol by weight than the gel of alginate stands." : "The mix holds more alcohol than the gel stands.";

    protected override string RemedyInWords => "Water in place of a part of the base.";

    protected override string QuantityName => "the alcohol of the mix";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
    {
        if (!context.Mix.Ethanol.Without.IsEmpty)
        {
            context.Needs(Id, $"the alcohol of {context.Mix.Ethanol.Without}", agent.Line.Label);
        }

        return Alcohol(context) is { } alcohol && !double.IsNaN(alcohol.Value) ? alcohol : null;
    }

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        double most = agent.Profile.Limits.Where(l => l.Quantity == _quantity && l.Stage == LimitStage.Finished).Min(l => l.Range.Value.Max!.Value);
        foreach (double share in s_waterShares)
        {
            var change = new BaseDiluted(Pantry.Water, share);
            if (Alcohol(new ReviewContext(change.ApplyTo(context.Formula)))?.Value <= most)
            {
                return ValueList<Remedy>.Own([new Remedy(
                    "less-alcohol", $"Take water for {Numbers.Significant(share, 3)} % of the base, and use it to dissolve the {Phrases.InSentence(agent.Name)}.",
                    $"The mix comes under {Numbers.Significant(most, 3)} {value.Unit}.", change, ValueList<Citation>.Own([limit.Range.Citation]))]);
            }
        }

        return default;
    }

    private Reckoned? Alcohol(ReviewContext context) => _quantity == LimitedQuantity.Ethanol ? context.Mix.Ethanol : context.Mix.AlcoholByVolume;
}

/// <summary>Much sugar in what a hydrocolloid dissolves in.</summary>
internal sealed class SolidsWhileHydratingRule() : LimitRule("solids-while-hydrating", "solvents", LimitedQuantity.SolubleSolids, LimitStage.Hydrating)
{
    protected override string Trigger => "A hydrocolloid is to dissolve in a liquid with more sugar and other soluble solids than leave it the water.";

    protected override string RemedyInWords => "The sugar after it has dissolved.";

    protected override string QuantityName => "the content of soluble solids in the liquid it dissolves in";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent) => SolidsNeed.Asked(context, Id, agent, agent.Medium.Brix);

    protected override ValueList<string> Lines(ReviewContext context, AgentInMix agent)
        => ValueList<string>.From([agent.Line.Label, .. Sweet(context, agent).Select(l => l.Label)]);

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        ValueList<Citation> citations = ValueList<Citation>.Own([limit.Range.Citation]);
        FormulaLine[] added = [.. Sweet(context, agent).Where(l => !l.IsBase)], syrups = [.. Sweet(context, agent).Where(l => l.IsBase)];
        if (added.Length > 0 && IsInside(added))
        {
            return ValueList<Remedy>.Own([new Remedy(
                "sugar-afterwards", $"Dissolve the {Phrases.InSentence(agent.Name)} first, then stir in the {Phrases.Names(added)}, hot.", "It finds the water it needs.", HeldBack.Later(added), citations)]);
        }

        return syrups.Length > 0 && HeldBack.Carriers(context, agent, syrups) is { Length: > 0 } carriers && IsInside(syrups)
            ? ValueList<Remedy>.Own([new Remedy(
                "syrup-held-back", $"Dissolve the {Phrases.InSentence(agent.Name)} in the {Phrases.Names(carriers)} alone, and stir in the {Phrases.Names(syrups)} afterwards, hot.",
                "It finds the water it needs.", HeldBack.ByCarriers(context, carriers), citations)])
            : default;

        bool IsInside(FormulaLine[] without)
            => limit.Range.Value.Contains(new MixContents(context.Formula, context.HydrationLines(agent.Line).Except(without)).Brix.Value);
    }

    private static IEnumerable<FormulaLine> Sweet(ReviewContext context, AgentInMix agent)
        => context.HydrationLines(agent.Line).Where(l => l.Ingredient.Profile is null && (l.Ingredient.Composition?.Value.SugarsPercent > 40 || l.Ingredient.Brix?.Value > 40));
}

/// <summary>Soluble solids of the gel, reckoned as it sets.</summary>
internal sealed class SolidsOfTheGelRule() : LimitRule("solids-of-the-gel", "solvents", LimitedQuantity.SolubleSolids, LimitStage.Finished)
{
    private const double MostSugarPercent = 80;

    protected override string Trigger
        => "The mix as it sets holds less sugar and other soluble solids than high methoxyl pectin gels with, more than calcium sets low methoxyl pectin in, or so much that kappa carrageenan turns fragile.";

    protected override string RemedyInWords => "Sugar, as much as is missing.";

    protected override string QuantityName => "the content of soluble solids in the mix as it sets";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent) => AsItSets(context) is { } brix ? SolidsNeed.Asked(context, Id, agent, brix) : null;

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        double there = context.Formula.FindLine(Pantry.Sucrose.Id) is { IsBase: false } line ? context.Formula.Proportions.PercentOfContinuousMix(line) : 0;
        return limit.Range.Value.Min is { } least && there < MostSugarPercent
            && AddedAmount.Find(context.Formula, MostSugarPercent - there, p => Amounts.Add(context.Formula, Pantry.Sucrose, p, RemedyPhases.AfterHeat), c => AsItSets(c)?.Value, least) is { } sugar
            ? ValueList<Remedy>.Own([new Remedy(
                "add-sugar", $"Stir in sugar, hot, once the {Phrases.InSentence(agent.Name)} has dissolved: {AddedAmount.Stated(sugar)}.",
                $"The mix comes to {Numbers.Significant(least, 3)} °Brix.", sugar, ValueList<Citation>.Own([limit.Range.Citation]))])
            : default;
    }

    /// <summary>The solids in what is left when water has boiled off; null if how much boils off depends on the size of the batch.</summary>
    private static Reckoned? AsItSets(ReviewContext context)
    {
        Formula formula = context.Formula;
        Losses losses = formula.Process.Losses;
        if (losses.ToppedUp || losses.Evaporation.IsNone)
        {
            return context.Mix.Brix;
        }

        return losses.Evaporation.Grams > 0 ? null : context.Mix.Brix with
        {
            Value = context.Mix.Brix.Value * formula.Proportions.ContinuousMix / (formula.Proportions.ContinuousMix - losses.EvaporatedGrams(formula.Proportions.Total)),
        };
    }
}

/// <summary>What is asked for where soluble solids are not known.</summary>
internal static class SolidsNeed
{
    public static Reckoned Asked(ReviewContext context, string id, AgentInMix agent, Reckoned brix)
    {
        if (!brix.Without.IsEmpty)
        {
            context.Needs(id, $"the °Brix of {brix.Without}", agent.Line.Label);
        }

        return brix;
    }
}

/// <summary>More of a salt than the water of the mix dissolves: crystals.</summary>
internal sealed class BeyondSolubilityRule : IDescribedRule
{
    private const double SaltGramsPer100GramsWater = 35.9;

    private static readonly Citation s_salt = BuiltInCatalogue.Cite("crc-handbook", "sodium chloride, 35.9 g in 100 g of water at 25 °C", CitationBasis.Recalled);

    public string Id => "beyond-solubility";

    public RuleCard Card => new(
        "solvents", "A salt is more than the water of the mix dissolves at 25 °C: a conflict. Salts that are meant to dissolve slowly are left out.",
        "As much as dissolves.", ValueList<Cited<string>>.Own([new Cited<string>($"Salt: {Numbers.Significant(SaltGramsPer100GramsWater, 3)} g in 100 g of water", s_salt)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        double water = context.Mix.Water.Value;
        foreach (FormulaLine line in context.Formula.Lines.Where(l => l is { IsContinuous: true, IsBase: false }))
        {
            if (Solubility(line.Ingredient) is not { } most)
            {
                continue;
            }

            if (!context.Mix.Water.Without.IsEmpty)
            {
                context.Needs(Id, $"the water of {context.Mix.Water.Without}", line.Label);
                continue;
            }

            double percent = context.Formula.Proportions.PercentOfContinuousMix(line);
            double ratio = percent / water * 100;
            if (ratio <= most.Value)
            {
                continue;
            }

            Dose dose = Amounts.ForPercentOfMix(context.Formula, line, percent * most.Value / ratio * 0.999 / (1 - percent / 100 * (1 - most.Value / ratio)));
            yield return new Finding(
                Id, Severity.Conflict,
                $"There are {Numbers.Significant(ratio, 3)} g of {Phrases.InSentence(line)} to 100 g of water, but only {Numbers.Significant(most.Value, 3)} g dissolve: "
                + $"{Numbers.Significant((ratio - most.Value) * water / 10, 3)} g in a kilogram of the mix stay crystals. Dissolve the hydrocolloid before the salt.",
                ValueList<string>.Own([line.Label]),
                ValueList<Evidence>.Own([new Evidence($"{Phrases.InSentence(line)} in the water of the mix", ratio, "g per 100 g of water", new NumberRange(null, most.Value))]),
                ValueList<Citation>.Own([most.Citation]),
                ValueList<Remedy>.Own([new Remedy("less-salt", $"Take {dose} of {Phrases.InSentence(line)}.", "All of it dissolves.", new DoseChange(line.Label, dose), ValueList<Citation>.Own([most.Citation]))]));
        }
    }

    private static Cited<double>? Solubility(Ingredient ingredient)
        => (ingredient.BasedOn ?? ingredient).Id == "salt" ? new Cited<double>(SaltGramsPer100GramsWater, s_salt)
            : PureSubstances.Find(ingredient) is { Solid: null, SolubilityGramsPer100GWater: { } solubility } ? solubility : null;
}
