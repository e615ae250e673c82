using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about pH.</summary>
internal static class AcidRules
{
    public static IDescribedRule[] All => [new PhWhileHeatedRule()];
}

/// <summary>Acid or alkali in the pot while a hydrocolloid is held hot: its chains are cut.</summary>
internal sealed class PhWhileHeatedRule() : LimitRule("ph-while-heated", "acid", LimitedQuantity.Ph, LimitStage.Heated)
{
    protected override string Trigger
        => "A hydrocolloid is held hot, longer than it stands, in a liquid outside the pH it stands while hot.";

    protected override string RemedyInWords => "The sour additions after the heat; the sour liquids held back from it; a shorter hold.";

    private const string Effect = "The hydrocolloid dissolves in a liquid that does not harm it, and the mix keeps its acid.";

    protected override string QuantityName => "the pH of the liquid it is heated in";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent) => agent.Medium.Ph;

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => agent.IsHeated && (limit.StoodMinutes is not { } stood || agent.HoldMinutes > stood);

    protected override ValueList<string> Lines(ReviewContext context, AgentInMix agent)
        => ValueList<string>.From([agent.Line.Label, .. Sour(context, agent).Select(l => l.Label)]);

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        Formula formula = context.Formula;
        ValueList<Citation> citations = ValueList<Citation>.Own([limit.Range.Citation]);
        FormulaLine[] sour = value.Value < limit.Range.Value.Min ? [.. Sour(context, agent)] : [];
        FormulaLine[] added = [.. sour.Where(l => !l.IsBase)];
        FormulaLine[] liquids = [.. sour.Where(l => l.IsBase)];
        FormulaLine[] carriers = [.. context.HydrationLines(agent.Line).Where(l => l.IsBase).Except(liquids)];
        var remedies = new List<Remedy>();
        if (added.Length > 0 && IsInside(context, agent, limit, added))
        {
            remedies.Add(new Remedy(
                "acid-after-heat", $"Stir in the {Phrases.Names(added)} after the heat.", Effect,
                new ChangeSequence(ValueList<IFormulaChange>.From(added.Select(l => new LineDelayed(l.Label, RemedyPhases.AfterHeat)))), citations));
        }

        if (liquids.Length > 0 && carriers.Length > 0 && IsInside(context, agent, limit, liquids))
        {
            remedies.Add(new Remedy(
                "sour-liquid-held-back", $"Heat the {agent.Name} in the {Phrases.Names(carriers)} alone, and stir in the {Phrases.Names(liquids)} afterwards.", Effect,
                new ProcessChange(formula.Process with { Carriers = ValueList<string>.From(carriers.Select(c => c.Label)) }), citations));
        }

        if (limit.StoodMinutes is { } stood && agent.Profile.Hydration.Hold.Value.Seconds.Min <= stood * 60)
        {
            remedies.Add(new Remedy(
                "shorter-hold", $"Hold it hot for {Numbers.Significant(stood, 3)} min, no longer.", "It dissolves, and stands that time in this liquid.",
                new ProcessChange(formula.Process with { HydrateFor = UnitsNet.Duration.FromMinutes(stood) }), citations));
        }

        return ValueList<Remedy>.Own([.. remedies]);
    }

    /// <summary>Whether the liquid it is heated in is in order without some lines.</summary>
    private static bool IsInside(ReviewContext context, AgentInMix agent, AgentLimit limit, FormulaLine[] without)
    {
        FormulaLine[] rest = [.. context.HydrationLines(agent.Line).Except(without)];
        return new MixContents(context.Formula, rest).Ph is { } ph && limit.Range.Value.Contains(ph.Value);
    }

    /// <summary>The sour lines in the pot, the most of them first.</summary>
    private static IEnumerable<FormulaLine> Sour(ReviewContext context, AgentInMix agent) => context.HydrationLines(agent.Line)
        .Where(l => l.Ingredient.Profile is null && (l.Ingredient.Ph?.Value < 4.5 || l.Ingredient.Composition?.Value.OrganicAcidsPercent > 5))
        .OrderByDescending(context.Formula.Proportions.MassOf);
}
