using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about pH.</summary>
internal static class AcidRules
{
    public static IDescribedRule[] All => [new PhWhileHeatedRule(), new PhWhileHydratingRule(), new PhOfTheGelRule(), new IsoelectricPointRule()];

    /// <summary>A pH to the hundredth, which is finer than any is known: one that is meant to be at a limit is not under it.</summary>
    public static Reckoned? Rounded(Reckoned? ph) => ph is null ? null : ph with { Value = Math.Round(ph.Value, 2) };
}

/// <summary>The pH of what a hydrocolloid is in before it is dissolved: sour things can wait.</summary>
internal abstract class PotPhRule(string id, LimitStage stage) : LimitRule(id, "acid", LimitedQuantity.Ph, stage)
{
    private const string Effect = "The hydrocolloid dissolves in a liquid that does not harm it, and the mix keeps its acid.";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent) => AcidRules.Rounded(agent.Medium.Ph);

    protected override ValueList<string> Lines(ReviewContext context, AgentInMix agent)
        => ValueList<string>.From([agent.Line.Label, .. Sour(context, agent).Select(l => l.Label)]);

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        ValueList<Citation> citations = ValueList<Citation>.Own([limit.Range.Citation]);
        FormulaLine[] sour = value.Value < limit.Range.Value.Min ? [.. Sour(context, agent)] : [];
        FormulaLine[] added = [.. sour.Where(l => !l.IsBase)];
        FormulaLine[] liquids = [.. sour.Where(l => l.IsBase)];
        var remedies = new List<Remedy>();
        if (added.Length > 0 && IsInside(context, agent, limit, added))
        {
            remedies.Add(new Remedy("acid-after-heat", $"Stir in the {Phrases.Names(added)} after the heat.", Effect, HeldBack.Later(added), citations));
        }

        if (liquids.Length > 0 && HeldBack.Carriers(context, agent, liquids) is { Length: > 0 } carriers && IsInside(context, agent, limit, liquids))
        {
            remedies.Add(new Remedy(
                "sour-liquid-held-back", $"Dissolve the {agent.Name} in the {Phrases.Names(carriers)} alone, and stir in the {Phrases.Names(liquids)} afterwards.", Effect,
                HeldBack.ByCarriers(context, carriers), citations));
        }

        remedies.AddRange(MoreRemedies(context, agent, limit, citations));
        return ValueList<Remedy>.Own([.. remedies]);
    }

    protected virtual IEnumerable<Remedy> MoreRemedies(ReviewContext context, AgentInMix agent, AgentLimit limit, ValueList<Citation> citations) => [];

    /// <summary>Whether the liquid is in order without some lines.</summary>
    private static bool IsInside(ReviewContext context, AgentInMix agent, AgentLimit limit, FormulaLine[] without)
    {
        FormulaLine[] rest = [.. context.HydrationLines(agent.Line).Except(without)];
        return new MixContents(context.Formula, rest).Ph is { } ph && limit.Range.Value.Contains(ph.Value);
    }

    /// <summary>The lines in the pot that a remedy may keep back as sour, the most of them first: a choice of this library; whether it helps is worked out.</summary>
    private static IEnumerable<FormulaLine> Sour(ReviewContext context, AgentInMix agent) => context.HydrationLines(agent.Line)
        .Where(l => l.Ingredient.Profile is null && (l.Ingredient.Ph?.Value < 4.5 || l.Ingredient.Composition?.Value.OrganicAcidsPercent > 5))
        .OrderByDescending(context.Formula.Proportions.MassOf);
}

/// <summary>Acid or alkali in the pot while a hydrocolloid is held hot: its chains are cut.</summary>
internal sealed class PhWhileHeatedRule() : PotPhRule("ph-while-heated", LimitStage.Heated)
{
    protected override string Trigger
        => "A hydrocolloid is held hot, longer than it stands, in a liquid outside the pH it stands while hot.";

    protected override string RemedyInWords => "The sour additions after the heat; the sour liquids held back from it; a shorter hold; less heat.";

    protected override string QuantityName => "the pH of the liquid it is heated in";

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => (limit.FromCelsius is { } from ? agent.HydrationCelsius >= from : agent.IsHeated)
            && (limit.StoodMinutes is not { } stood || agent.HoldMinutes > stood);

    protected override IEnumerable<Remedy> MoreRemedies(ReviewContext context, AgentInMix agent, AgentLimit limit, ValueList<Citation> citations)
    {
        HydrationProtocol protocol = agent.Profile.Hydration;
        if (limit.StoodMinutes is { } stood && protocol.Hold.Value.Seconds.Min <= stood * 60)
        {
            yield return new Remedy(
                "shorter-hold", $"Hold it hot for {Numbers.Significant(stood, 3)} min, no longer.", "It dissolves, and stands that time in this liquid.",
                new ProcessChange(context.Formula.Process with { HydrateFor = UnitsNet.Duration.FromMinutes(stood) }), citations);
        }

        if (limit.FromCelsius is { } from && protocol.Window.Value.Celsius.Max is { } enough && enough < from && context.Agents.Count == 1)
        {
            yield return new Remedy(
                "less-heat", $"Dissolve it at {Numbers.Significant(enough, 3)} °C.", "It dissolves there, and the acid does it no harm.",
                new ProcessChange(context.Formula.Process with { HydrateAt = UnitsNet.Temperature.FromDegreesCelsius(enough) }), citations);
        }
    }
}

/// <summary>Acid in what a hydrocolloid should take up water from.</summary>
internal sealed class PhWhileHydratingRule() : PotPhRule("ph-while-hydrating", LimitStage.Hydrating)
{
    protected override string Trigger => "A hydrocolloid is to take up water in a liquid more sour than it dissolves in.";

    protected override string RemedyInWords => "The sour additions after it has dissolved; the sour liquids held back until then.";

    protected override string QuantityName => "the pH of the liquid it dissolves in";
}

/// <summary>The pH of what gels.</summary>
internal sealed class PhOfTheGelRule() : LimitRule("ph-of-the-gel", "acid", LimitedQuantity.Ph, LimitStage.Finished)
{
    private const double MostCitratePercent = 0.5; // kitchen range for juices 0.1–0.5 % by weight; over it, it tastes salty
    private const double MostAcidPercent = 2;

    private static readonly Citation s_citrate = BuiltInCatalogue.Cite("kitchen-science-teaching", "sodium citrate in juices", CitationBasis.Recalled);

    protected override string Trigger
        => "The mix that gels lies outside the pH that the gel stands, or needs: too sour for alginate or, by degrees, gelatin, not sour enough for high methoxyl pectin, not alkaline enough for konjac alone.";

    protected override string RemedyInWords => "Sodium citrate, up to 0.5 %, or citric acid, as much as the pH needs; for alginate also the reverse bath.";

    protected override string QuantityName => "the pH of the mix that gels";

    /// <summary>What the powders of the hydrocolloids themselves do to the pH is left out: they are little and near neutral.</summary>
    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
        => AcidRules.Rounded(context.Mix.Ph) is { } ph ? ph with { Without = ValueList<string>.From(ph.Without.Except(context.Agents.Select(a => a.Line.Label), StringComparer.Ordinal)) } : null;

    /// <summary>Konjac sets by its alkali only where nothing else sets it.</summary>
    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => !agent.Is("konjac-glucomannan") || context.Agents.Count == 1;

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        Formula formula = context.Formula;
        var remedies = new List<Remedy>();
        string phase = formula.Phases[agent.Line.PhaseIndex].Name;
        if (value.Value < limit.Range.Value.Min && !agent.Is("konjac-glucomannan")
            && AddedAmount.Find(formula, MostCitratePercent, p => Amounts.Add(formula, Pantry.SodiumCitrate, p, RemedyPhases.BeforeHeat, phase), c => c.Mix.Ph?.Value, limit.Range.Value.Min!.Value) is { } citrate)
        {
            remedies.Add(new Remedy(
                "buffer-with-citrate", $"Dissolve trisodium citrate in the liquid first: {AddedAmount.Stated(citrate)}. Check the pH; a juice differs from lot to lot.",
                $"The mix comes to pH {Numbers.Significant(limit.Range.Value.Min.Value, 3)}.", citrate, ValueList<Citation>.Own([limit.Range.Citation, s_citrate])));
        }

        if (agent.Line.Ingredient.IsAlginate() && ReverseBath.Remedy(agent) is { } reverse)
        {
            remedies.Add(reverse);
        }

        if (value.Value > limit.Range.Value.Max && agent.IsHeated
            && AddedAmount.Find(formula, MostAcidPercent, p => Amounts.Add(formula, Pantry.CitricAcid, p, RemedyPhases.AfterHeat), c => c.Mix.Ph?.Value, limit.Range.Value.Max!.Value) is { } acid)
        {
            remedies.Add(new Remedy(
                "add-acid", $"Stir in citric acid last: {AddedAmount.Stated(acid)}.", $"The mix comes to pH {Numbers.Significant(limit.Range.Value.Max.Value, 3)}.",
                acid, ValueList<Citation>.Own([limit.Range.Citation])));
        }

        return ValueList<Remedy>.Own([.. remedies]);
    }
}

/// <summary>Gelatin type B in a mix at its isoelectric point: where its charges cancel, it may cloud and lose firmness.</summary>
internal sealed class IsoelectricPointRule : IDescribedRule
{
    // A range to keep out of, which a limit of the catalogue cannot state.
    private static readonly NumberRange s_point = new(4.8, 5.4);
    private static readonly Citation s_citation = BuiltInCatalogue.Cite("gelatin-producer-iep");

    public string Id => "gelatin-at-isoelectric-point";

    public RuleCard Card => new(
        "acid", "Gelatin type B is in a mix at its isoelectric point: a caution, because it may cloud and be less firm.",
        "Gelatin type A of the same Bloom.", ValueList<Cited<string>>.Own([new Cited<string>($"Isoelectric point of gelatin type B: pH {s_point}", s_citation)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach (AgentInMix agent in context.Agents.Where(a => a.Is("gelatin-type-b")))
        {
            if (AcidRules.Rounded(context.Mix.Ph) is not { } ph)
            {
                context.Needs(Id, "the pH of the mix that gels", agent.Line.Label);
            }
            else if (ph.Value > s_point.Min && ph.Value < s_point.Max)
            {
                ValueList<Citation> citations = ValueList<Citation>.Own([s_citation]);
                yield return new Finding(
                    Id, Severity.Caution,
                    $"The mix has pH {Numbers.Significant(ph.Value, 3)}, where the charges of {Phrases.InSentence(agent.Line)} cancel (pH {s_point}): it may cloud and set less firm.",
                    ValueList<string>.Own([agent.Line.Label]),
                    ValueList<Evidence>.Own([new Evidence("distance of the pH from 5.1, the middle of the isoelectric range", Math.Abs(ph.Value - 5.1), "pH", new NumberRange(0.3, null))]),
                    citations,
                    context.Formula.FindLine(Hydrocolloids.GelatinTypeA.Id) is null
                        ? ValueList<Remedy>.Own([new Remedy("gelatin-type-a", "Take gelatin type A of the same Bloom.", "Its isoelectric point lies elsewhere.", new IngredientSwap(agent.Line.Label, Hydrocolloids.GelatinTypeA), citations)])
                        : default);
            }
        }
    }
}

/// <summary>Changes that keep something from the pot.</summary>
internal static class HeldBack
{
    public static ChangeSequence Later(IEnumerable<FormulaLine> lines)
        => new(ValueList<IFormulaChange>.From(lines.Select(l => new LineDelayed(l.Label, RemedyPhases.AfterHeat))));

    public static FormulaLine[] Carriers(ReviewContext context, AgentInMix agent, FormulaLine[] without)
        => [.. context.HydrationLines(agent.Line).Where(l => l.IsBase).Except(without)];

    public static ProcessChange ByCarriers(ReviewContext context, FormulaLine[] carriers)
        => new(context.Formula.Process with { Carriers = ValueList<string>.From(carriers.Select(c => c.Label)) });
}

/// <summary>Alginate in the bath and calcium in the drop, instead of the other way round.</summary>
internal static class ReverseBath
{
    public static bool IsAlginate(this Ingredient ingredient) => (ingredient.BasedOn ?? ingredient).Id.StartsWith("sodium-alginate", StringComparison.Ordinal);

    public static Remedy? Remedy(AgentInMix agent)
    {
        Citation practice = BuiltInCatalogue.Cite("common-practice");
        return new Remedy(
            "reverse-bath", $"Turn it round: leave {Phrases.InSentence(agent.Line)} out of this mix, see that the mix has calcium, and drop it into a bath of alginate in soft water.",
            "The alginate dissolves in water of its own, and the skin forms around the drop.", new LineRemoved(agent.Line.Label), ValueList<Citation>.Own([practice]));
    }
}
