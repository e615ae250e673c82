using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about tannins, enzymes, proteins, fat and starch.</summary>
internal static class SensitivityRules
{
    public static IDescribedRule[] All => [new ProteaseRule(), new TanninRule(), new MilkDoseRule(), new MilkAcidRule(), new FluidGelRule(), new FatRule()];

    /// <summary>What the catalogue says of a sensitivity, for the cards of the rules; also where there is none.</summary>
    public static ValueList<Cited<string>> Of(SensitiveTo to) => ValueList<Cited<string>>.From(
        from ingredient in Catalogue.BuiltIn.Hydrocolloids
        let sensitivity = ingredient.Profile!.SensitivityTo(to)
        where sensitivity is not null
        select new Cited<string>(
            $"{ingredient.Name}: {(sensitivity.Harm == Harm.None ? "nothing" : Words.Of(sensitivity.Harm.ToSeverity()))}. {sensitivity.Consequence.Value}",
            sensitivity.Consequence.Citation, sensitivity.Consequence.Note));
}

/// <summary>Raw fruit whose enzymes cut proteins, with gelatin; in pieces too, since the gel around them does not set.</summary>
internal sealed class ProteaseRule : IDescribedRule
{
    public string Id => "protease-with-protein-gel";

    public RuleCard Card => new(
        "sensitivity",
        "Raw fruit with a protein-cutting enzyme, in the mix or in pieces, with an agent that is a protein: a conflict; a caution where sources dispute that the enzyme is strong enough.",
        "The fruit canned or heated; the pieces left for the plate; agar at the dose of the same texture.", SensitivityRules.Of(SensitiveTo.Protease));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        FormulaLine[] fruit = [.. context.Formula.Lines.Where(l => l.Ingredient.Protease?.Value.IsActive == true)];
        if (fruit.Length == 0)
        {
            yield break;
        }

        foreach ((AgentInMix agent, AgentSensitivity sensitivity) in StorageRules.Sensitive(context, SensitiveTo.Protease))
        {
            bool disputed = fruit.All(l => l.Ingredient.Protease!.Value.IsDisputed);
            yield return new Finding(
                Id,
                disputed ? Severity.Caution : sensitivity.Harm.ToSeverity(),
                $"{Phrases.And(fruit.Select(l => $"{l.Ingredient.Name} holds {l.Ingredient.Protease!.Value.Enzyme}"))}, which is active until it is heated. {sensitivity.Consequence.Value}"
                + (disputed ? " Sources dispute that it is strong enough; heated, it is safe." : ""),
                ValueList<string>.From(fruit.Select(l => l.Label).Append(agent.Line.Label)),
                ValueList<Evidence>.From(fruit.Select(l => new Evidence(
                    l.Ingredient.Name + ", raw", context.Formula.Proportions.PercentOfTotal(l), "% by weight of the total", new NumberRange(null, 0)))),
                ValueList<Citation>.From(fruit.Select(l => l.Ingredient.Protease!.Citation).Append(sensitivity.Consequence.Citation).Distinct()),
                ValueList<Remedy>.From(Remedies(context, agent, fruit, sensitivity)));
        }
    }

    private static IEnumerable<Remedy> Remedies(ReviewContext context, AgentInMix agent, FormulaLine[] fruit, AgentSensitivity sensitivity)
    {
        Formula formula = agent.Formula;
        ValueList<Citation> citations = ValueList<Citation>.Own([sensitivity.Consequence.Citation]);
        (FormulaLine Line, Ingredient Heated)[] heated = [.. fruit.Select(l => (l, Heated(l.Ingredient)))];
        if (heated.All(h => formula.FindLine(h.Heated.Id) is null && (h.Line.IsBase || AgentSwap.IsFree(formula, h.Line))))
        {
            // 80 °C for 5 min: a kitchen rule; the kinetics measured for bromelain need far less.
            yield return new Remedy(
                "fruit-heated", $"Use {Phrases.And(heated.Select(h => Phrases.InSentence(h.Heated.Name)))}; to heat it yourself, hold it at 80 °C for 5 min and let it cool.",
                "Heat ends the enzyme, and the gel sets.",
                new ChangeSequence(ValueList<IFormulaChange>.From(heated.Select(h => new IngredientSwap(h.Line.Label, h.Heated)))),
                ValueList<Citation>.Own([sensitivity.Consequence.Citation, BuiltInCatalogue.Cite("working-range", null, CitationBasis.Estimated)]));
        }

        if (fruit.All(l => l.Ingredient.Category == "fruit" && AgentSwap.IsFree(formula, l)))
        {
            yield return new Remedy(
                "fruit-on-the-plate", $"Leave the {Phrases.Names(fruit)} out of the gel and put it on the plate.", "The gel sets; the fruit stays raw.",
                new ChangeSequence(ValueList<IFormulaChange>.From(fruit.Select(l => new LineRemoved(l.Label)))), citations);
        }

        if (AgentSwap.For(context, agent.Line, "A polysaccharide: the enzyme leaves it alone, and the fruit stays raw.", Hydrocolloids.Agar) is { } swap)
        {
            yield return swap;
        }
    }

    /// <summary>The same kind of thing in the catalogue with the same enzyme ended, such as canned pineapple; else this one, heated.</summary>
    private static Ingredient Heated(Ingredient raw) => Catalogue.BuiltIn.All.FirstOrDefault(i => i.Category == raw.Category
            && i.Protease?.Value is { IsActive: false } protease && protease.Enzyme == raw.Protease!.Value.Enzyme)
        ?? raw.As(raw.Id + "-heated", raw.Name + ", heated").WithoutActiveProtease();
}

/// <summary>A mix rich in tannins with an agent that they weaken.</summary>
internal sealed class TanninRule : IDescribedRule
{
    // The catalogue knows classes by total phenols (TanninLevel); a line counts with the least of its class.
    private const double ModerateMilligramsPerLitre = 500;

    public string Id => "tannin-weakens-gel";

    public RuleCard Card => new(
        "sensitivity",
        "The mix holds 500 mg/L of phenols or more, each line counted with the least of its class, with an agent that tannins weaken: a caution with a line of the highest class, else information; a step less where the dose is at the top of its window, or glycerol is in a mix with agar.",
        "The dose at the top of the window.", SensitivityRules.Of(SensitiveTo.Tannin));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        FormulaLine[] lines = [.. context.Formula.Lines.Where(l => l.IsContinuous && LeastPhenols(l.Ingredient) > 0)];
        double phenols = lines.Sum(l => LeastPhenols(l.Ingredient) * context.Formula.Proportions.PercentOfContinuousMix(l) / 100);
        FormulaLine[] sources = [.. lines.Where(l => l.Ingredient.Tannin!.Value >= TanninLevel.Moderate)];
        // The figures of the classes are round: a liquid with a little sugar and agar in it is still of its class.
        if (phenols < ModerateMilligramsPerLitre * 0.9 || sources.Length == 0)
        {
            yield break;
        }

        foreach ((AgentInMix agent, AgentSensitivity sensitivity) in StorageRules.Sensitive(context, SensitiveTo.Tannin))
        {
            DoseWindow? window = agent.ChosenWindow ?? agent.Profile.DoseWindows.FirstOrDefault(w => AgentInMix.IsWithin(w.Percent.Value, agent.Percent));
            bool isHigh = window?.Percent.Value.Max is { } top && agent.Percent * 1.001 >= top;
            bool countered = agent.Is(Hydrocolloids.Agar.Id) && context.Formula.FindLine(Pantry.Glycerol.Id) is not null;
            int severity = (int)(sources.Any(l => l.Ingredient.Tannin!.Value == TanninLevel.High) ? sensitivity.Harm.ToSeverity() : Severity.Information) - (isHigh || countered ? 1 : 0);
            if (severity >= 0)
            {
                yield return new Finding(
                    Id, (Severity)severity,
                    $"The mix is rich in tannins ({Phrases.Names(sources)}) for {Phrases.InSentence(agent.Line)}. {sensitivity.Consequence.Value}"
                    + (sensitivity.Consequence.Note is { } note ? $" ({char.ToUpperInvariant(note[0])}{note.Substring(1)}.)" : ""),
                    ValueList<string>.From(sources.Select(l => l.Label).Append(agent.Line.Label)),
                    ValueList<Evidence>.Own([new Evidence("total phenols of the mix, at least", phenols, "mg/L", new NumberRange(null, ModerateMilligramsPerLitre))]),
                    ValueList<Citation>.Own([sensitivity.Consequence.Citation, BuiltInCatalogue.Cite("catalogue-classification", null, CitationBasis.Estimated)]),
                    isHigh || window?.Percent.Value.Max is not { } high ? default
                        : ValueList<Remedy>.Own([DoseRemedy.To(agent, high, $"It is then at the top of the window for {Words.Of(window.Texture)}; make a trial.", window.Percent.Citation)]));
            }
        }
    }

    private static double LeastPhenols(Ingredient ingredient) => ingredient.Tannin?.Value switch
    {
        TanninLevel.Low => 50,
        TanninLevel.Moderate => ModerateMilligramsPerLitre,
        TanninLevel.High => 1500,
        _ => 0,
    };
}

/// <summary>A dose that would be right in water, in a mix that is mostly milk.</summary>
internal sealed class MilkDoseRule() : LimitRule("dose-in-milk", "sensitivity", LimitedQuantity.Concentration, LimitStage.BesideCasein)
{
    protected override string Trigger => "In a mix that is half milk or more, an agent that casein makes stronger is outside its doses for milk. Too little is reported only where a gel is aimed at.";

    protected override string RemedyInWords => "The near end of the doses for milk.";

    protected override string QuantityName => "the dose in a mix that is mostly milk";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
        => new(agent.Percent, "% by weight of the mix", ReckonedHow.Computed, "masses add");

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => agent.IsDosedForMilk && (limit.Range.Value.Min is null
            ? context.Service.Texture is not Texture.VeryFirm
            : context.Service.Texture is Texture.Soft or Texture.Firm or Texture.VeryFirm);

    protected override ValueList<string> Lines(ReviewContext context, AgentInMix agent)
        => ValueList<string>.From(context.Mix.Casein.Select(l => l.Label).Append(agent.Line.Label));

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
        => ValueList<Remedy>.Own([DoseRemedy.To(agent, (limit.Range.Value.Min ?? limit.Range.Value.Max)!.Value * (limit.Range.Value.Min is null ? 0.999 : 1),
            "It is then a dose for milk.", limit.Range.Citation)]);
}

/// <summary>Milk under the isoelectric point of casein, with an agent that curdles with it.</summary>
internal sealed class MilkAcidRule() : LimitRule("casein-curdles-with-gum", "sensitivity", LimitedQuantity.Ph, LimitStage.BesideCasein)
{
    protected override string Trigger => "An agent that forms a curd with casein, in milk under the isoelectric point of casein, where the pH was measured or all that holds casein is sour itself.";

    protected override string QuantityName => "the pH of the mix with casein";

    protected override string Need(AgentInMix agent) => "the measured pH of the mix with milk";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
    {
        // The casein and citrate that buffer milk from pH 4 to 6 are not in the computed pH, which is too low: it counts only where it is not in doubt.
        Reckoned? ph = context.Mix.Ph;
        bool allSour = context.Mix.Casein.All(l => l.Ingredient.Ph?.Value < 4.6);
        return ph is { How: ReckonedHow.Measured } || ph?.Value >= 4.6 || allSour ? ph : null;
    }

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit) => context.IsMostlyMilk;

    protected override ValueList<string> Lines(ReviewContext context, AgentInMix agent)
        => ValueList<string>.From(context.Mix.Casein.Select(l => l.Label).Append(agent.Line.Label));
}

/// <summary>A fluid gel of an agent that does not stay sheared.</summary>
internal sealed class FluidGelRule : IDescribedRule
{
    public string Id => "fluid-gel-sets-again";

    public RuleCard Card => new(
        "sensitivity",
        "A fluid gel is aimed at with an agent that does not stay sheared: a caution.",
        "Agar at the dose of a fluid gel.", SensitivityRules.Of(SensitiveTo.Shear));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        if (context.Service.Texture != Texture.FluidGel)
        {
            yield break;
        }

        foreach ((AgentInMix agent, AgentSensitivity sensitivity) in StorageRules.Sensitive(context, SensitiveTo.Shear))
        {
            Remedy? swap = AgentSwap.For(context, agent.Line, "It stays a fluid gel once it is sheared.", Hydrocolloids.Agar);
            yield return new Finding(
                Id, sensitivity.Harm.ToSeverity(), $"A fluid gel is aimed at with {Phrases.InSentence(agent.Line)}. {sensitivity.Consequence.Value}",
                ValueList<string>.Own([agent.Line.Label]), default, ValueList<Citation>.Own([sensitivity.Consequence.Citation]),
                swap is null ? default : ValueList<Remedy>.Own([swap]));
        }
    }
}

/// <summary>More fat than a hydrocolloid gels firmly with.</summary>
internal sealed class FatRule() : LimitRule("fat-of-the-gel", "sensitivity", LimitedQuantity.Fat, LimitStage.Finished)
{
    protected override string Trigger => "The mix holds more fat than a hydrocolloid is known to bear without change: as serious as the catalogue says.";

    protected override string QuantityName => "the fat of the mix";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent) => context.Mix.Fat;
}
