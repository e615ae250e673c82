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

    protected override string RemedyInWords => "The acid after the heat; or the sour liquid held back from it.";

    protected override string QuantityName => "the pH of the liquid it is heated in";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent) => agent.Medium.Ph;

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => agent.IsHeated && (limit.StoodMinutes is not { } stood || agent.HoldMinutes > stood);

    protected override ValueList<string> Lines(ReviewContext context, AgentInMix agent)
        => ValueList<string>.From([agent.Line.Label, .. Sour(context, agent).Select(l => l.Label)]);

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        const string effect = "The hydrocolloid dissolves in a liquid that does not harm it, and the mix keeps its acid.";
        var remedies = new List<Remedy>();
        FormulaLine[] added = [.. Sour(context, agent).Where(l => !l.IsBase)];
        if (value.Value < limit.Range.Value.Min && added.Length > 0)
        {
            remedies.Add(new Remedy(
                "acid-after-heat", $"Stir in the {Phrases.Names(added)} after the heat.", effect,
                new ChangeSequence(ValueList<FormulaChange>.From(added.Select(l => new LineDelayed(l.Label, Phases.AfterHeat)))),
                ValueList<Citation>.Own([limit.Range.Citation])));
        }

        return ValueList<Remedy>.Own([.. remedies]);
    }

    /// <summary>The sour lines in the pot, the most of them first.</summary>
    private static IEnumerable<FormulaLine> Sour(ReviewContext context, AgentInMix agent) => context.HydrationLines(agent.Line)
        .Where(l => l.Ingredient.Profile is null && (l.Ingredient.Ph?.Value < 4.5 || l.Ingredient.Composition?.Value.OrganicAcidsPercent > 5))
        .OrderByDescending(context.Formula.Proportions.MassOf);
}
