using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Compatibility.Rules;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>One substitution, step by step.</summary>
internal sealed class Substituting(Formula original, FormulaLine[] old, GelSystem to, MethodOptions options)
{
    private readonly List<SubstitutionStep> _steps = [];
    private readonly ValueList<Ingredient> _from = ValueList<Ingredient>.From(old.Select(l => l.Ingredient).Distinct());

    private string FromInWords => Phrases.And(_from.Select(i => Phrases.InSentence(i.Name)));

    public Substitution Run()
    {
        var context = new ReviewContext(original);
        Texture? aim = original.Service.Texture ?? TextureOf(context);
        if (aim is not { } texture || texture is Texture.Thickened or Texture.Modifier)
        {
            return Refused(aim, new Obstacle("texture-unknown", aim is null
                ? $"The formula states no texture, and the dose of the {FromInWords} lies in no window that tells one: state it in the service plan."
                : $"{Placing.InWords(aim.Value)} is not what a gelling agent is chosen for.", default));
        }

        Obstacle[] obstacles = [.. Placing.Obstacles(to, original.Service, texture, context.IsMostlyMilk)];
        if (obstacles.Length > 0)
        {
            return Refused(aim, obstacles);
        }

        FormulaLine first = old[0];
        Formula without = WithoutHelpers(WithoutAgents());
        DoseReference reference = first.Dose.Reference.Kind == DoseReferenceKind.Line ? DoseReference.Base : first.Dose.Reference;
        // The phase of the old agent is gone if it held nothing else; phases before it are there, less those that held helpers alone.
        int index = original.Phases.Take(first.PhaseIndex).Count(p => without.Phases.Any(w => w.Name == p.Name));
        var planned = new List<SubstitutionStep>();
        (Placing.Placed? placed, Obstacle? trouble) = Placing.Place(
            without, to, texture, first.Phase, index, reference, f => Fitted(f, planned), options, RuleSet.Standard, mayChangeTaste: true);
        if (placed is null)
        {
            return Refused(aim, trouble!);
        }

        foreach (ChosenDose dose in placed.Doses)
        {
            Step(SubstitutionStepKind.AgentIn, $"{dose.Agent.Name} comes in at {dose.Dose}, {Numbers.Significant(dose.PercentOfMix, 2)} % of the continuous mix. {dose.Why}", [dose.Label], dose.Citation);
        }

        if (original.Service.Texture is null)
        {
            Step(SubstitutionStepKind.PlanChanged, $"The texture is now stated: {Words.Of(texture).Replace('-', ' ')}, in whose window the old dose lies.", []);
        }

        _steps.AddRange(planned);
        foreach (Remedy remedy in placed.Remedies)
        {
            Step(SubstitutionStepKind.HelperIn, $"{remedy.Advice} {remedy.Effect}", [], [.. remedy.Citations]);
        }

        return new Substitution(original, _from, to, texture, default)
        {
            Formula = placed.Formula,
            Doses = placed.Doses,
            Steps = ValueList<SubstitutionStep>.From(_steps),
            Findings = placed.Findings,
            Method = placed.Method,
        };
    }

    private Substitution Refused(Texture? texture, params Obstacle[] why) => new(original, _from, to, texture, ValueList<Obstacle>.Own(why));

    private void Step(SubstitutionStepKind kind, string text, string[] lines, params Citation[] citations)
        => _steps.Add(new SubstitutionStep(kind, text, ValueList<string>.Own(lines), ValueList<Citation>.From(citations.Distinct())));

    /// <summary>The texture in whose window the old dose lies: of a blend if the old agents are one, else of the first that has one.</summary>
    private Texture? TextureOf(ReviewContext context)
    {
        AgentInMix[] agents = [.. context.Agents.Where(a => old.Contains(a.Line))];
        if (agents.Length == 2 && GelSystem.Between(agents[0].Line.Ingredient, agents[1].Line.Ingredient)?.Pair is { } pair
            && pair.Doses.FirstOrDefault(d => AgentInMix.IsWithin(d.Percent.Value, agents.Sum(a => a.Percent))) is { } dose)
        {
            return dose.Texture;
        }

        // A fluid gel is one by the way it is worked, not by its dose.
        return agents.Where(a => !a.IsDosedForMilk && a.Profile.Role == HydrocolloidRole.GellingAgent)
            .SelectMany(a => a.Profile.DoseWindows.Where(w => w.Texture != Texture.FluidGel && AgentInMix.IsWithin(w.Percent.Value, a.Percent)))
            .FirstOrDefault()?.Texture;
    }

    /// <summary>The formula without the old agents; lines that are dosed on one keep their mass.</summary>
    private Formula WithoutAgents()
    {
        Formula formula = original;
        // An agent of the new system that is there already takes its place in it.
        FormulaLine[] gone = [.. old, .. original.Lines.Where(l => !old.Contains(l) && l is { IsBase: false, IsContinuous: true } && to.Agents.Any(a => a.Id == l.Label))];
        foreach (FormulaLine line in gone)
        {
            foreach (FormulaLine dependent in original.Lines.Where(l => !l.IsBase && l.Dose.Reference.Label == line.Label && !gone.Contains(l)))
            {
                formula = formula.Reexpress(dependent.Label, DoseReference.Base);
                Step(SubstitutionStepKind.LeftAsIs, $"The {Phrases.InSentence(dependent)} was dosed on the {Phrases.InSentence(line)}; its mass stays.", [dependent.Label]);
            }

            Step(SubstitutionStepKind.AgentOut, $"{line.Ingredient.Name}, {line.Dose}, goes out.", [line.Label]);
        }

        FormulaBuilder builder = formula.ToBuilder();
        foreach (DraftPhase phase in builder.PhaseDrafts)
        {
            phase.Lines.RemoveAll(d => gone.Any(l => l.Label == d.Label));
        }

        builder.PhaseDrafts.RemoveAll(p => p.Lines.Count == 0);
        return builder.Build();
    }

    /// <summary>Takes out the salts that were there for the old agents alone (what the new one needs of them is put in again, in its own amount), and names what else was.</summary>
    private Formula WithoutHelpers(Formula formula)
    {
        Ingredient[] staying = [.. formula.Lines.Where(l => l is { IsContinuous: true, Ingredient.Profile: not null }).Select(l => l.Ingredient)];
        foreach (FormulaLine line in formula.Lines.Where(l => l is { IsBase: false, IsContinuous: true }))
        {
            if (NeedOf(line.Ingredient) is { } need && _from.FirstOrDefault(need.Has) is { } owner && AgentSwap.IsFree(formula, line))
            {
                if (!staying.Any(need.Has))
                {
                    formula = formula.Without(line.Label);
                    Step(SubstitutionStepKind.HelperOut, $"{line.Ingredient.Name}, {line.Dose}, goes out: it was there {need.For} {Phrases.InSentence(owner.Name)}, and nothing else needs it.", [line.Label]);
                }
                else
                {
                    Step(SubstitutionStepKind.LeftAsIs, $"The {Phrases.InSentence(line)} stays as it was: {Phrases.InSentence(staying.First(need.Has).Name)} has a use for it.", [line.Label]);
                }
            }
            else if (line.Ingredient.Profile is not null && _from.SelectMany(f => Synergies.Between(f, line.Ingredient)).FirstOrDefault() is { } pair)
            {
                Step(SubstitutionStepKind.LeftAsIs,
                    $"The {Phrases.InSentence(line)} stays: with {FromInWords} it made: {string.Join(", ", pair.Effects.Value.Select(e => Words.Of(e).Replace('-', ' ')))}. "
                    + (to.Agents.SelectMany(a => Synergies.Between(a, line.Ingredient)).FirstOrDefault() is { } other
                        ? $"With {Phrases.InSentence(to.Name)} it makes: {string.Join(", ", other.Effects.Value.Select(e => Words.Of(e).Replace('-', ' ')))}."
                        : $"With {Phrases.InSentence(to.Name)} no effect is known."), [line.Label], pair.Effects.Citation);
            }
            else if (line.Ingredient is { Category: "acid" or "sweetener" } && _from.FirstOrDefault(HasHighMethoxylNeed) is { } pectin && !to.Agents.Any(HasHighMethoxylNeed))
            {
                Step(SubstitutionStepKind.LeftAsIs, $"The {Phrases.InSentence(line)} stays for the taste: {Phrases.InSentence(pectin.Name)} could not set without it, {Phrases.InSentence(to.Name)} can.", [line.Label]);
            }
        }

        return formula;
    }

    /// <summary>The plans without what was planned for the old agent and is not for the new one.</summary>
    private Formula Fitted(Formula formula, List<SubstitutionStep> planned)
    {
        ProcessPlan plan = formula.Process;
        HydrocolloidProfile[] agents = [.. to.Agents.Select(a => a.Profile!)];
        if (plan.HydrateAtCelsius is { } at && agents.FirstOrDefault(a => !a.Hydration.Window.Value.Celsius.Contains(at)) is { } other)
        {
            plan = plan with { HydrateAt = null };
            Plan($"Hydrating at {Numbers.Significant(at, 3)} °C was planned for the old agent; the new one asks {other.Hydration.Window.Value}, and the method follows that.", other.Hydration.Window.Citation);
        }

        if (plan.HydrateSeconds is { } seconds && agents.FirstOrDefault(a => !a.Hydration.Hold.Value.Seconds.Contains(seconds)) is { } held)
        {
            plan = plan with { HydrateFor = null };
            Plan($"Holding for {Numbers.Significant(seconds / 60, 3)} min was planned for the old agent; the new one asks {held.Hydration.Hold.Value}, and the method follows that.", held.Hydration.Hold.Citation);
        }

        if (plan.CastAtCelsius is { } cast && agents.Select(a => a.Setting.Window).FirstOrDefault(w => cast <= w?.Value.Celsius.Max) is { } sets)
        {
            plan = plan with { CastAt = null };
            Plan($"Casting at {Numbers.Significant(cast, 3)} °C was planned for the old agent; the new one sets at {sets.Value}, so it is cast hotter.", sets.Citation);
        }

        if (plan.SoakAtCelsius is not null && formula.Lines.All(l => l.Ingredient.Profile?.Dispersal.SoakWaterPartsPerPart is null))
        {
            plan = plan with { SoakAt = null };
            Plan("Nothing is soaked any more.");
        }

        return plan == formula.Process ? formula : formula.WithProcess(plan);

        void Plan(string text, params Citation[] citations)
            => planned.Add(new SubstitutionStep(SubstitutionStepKind.PlanChanged, text, default, ValueList<Citation>.Own(citations)));
    }

    private static bool HasHighMethoxylNeed(Ingredient agent)
        => agent.Profile?.Limits.Any(l => l is { Quantity: LimitedQuantity.SolubleSolids, Stage: LimitStage.Finished, Range.Value.Min: not null }) == true;

    /// <summary>What a salt does for hydrocolloids; null if it is no helper.</summary>
    private static Need? NeedOf(Ingredient salt)
    {
        if (salt.Category != "salt" || salt.Profile is not null)
        {
            return null;
        }

        Composition? composition = salt.Composition?.Value;
        return GelIons.IsSequestrant(salt) || (salt.BasedOn ?? salt).Id == "sodium-hexametaphosphate"
                ? new Need("to bind the calcium that hinders", a => a.Profile!.Limits.Any(l => l is { Quantity: LimitedQuantity.Calcium, Stage: LimitStage.Hydrating, Harm: Harm.Weakens or Harm.Fails }))
            : composition?.CalciumMg > 1000 ? new Need("to set the", a => SetsWith(a, "calcium") || a.Profile!.Limits.Any(l => l is { Quantity: LimitedQuantity.Calcium or LimitedQuantity.CalciumPerGram or LimitedQuantity.Cations, Stage: LimitStage.Finished, Range.Value.Min: not null }))
            : composition?.PotassiumMg > 10_000 ? new Need("to set the", a => SetsWith(a, "potassium") || a.Profile!.Limits.Any(l => l is { Quantity: LimitedQuantity.Potassium or LimitedQuantity.Cations, Stage: LimitStage.Finished, Range.Value.Min: not null }))
            : null;
    }

    private static bool SetsWith(Ingredient agent, string ion) => agent.Profile!.Setting.Triggers.Any(t => t.Ion == ion);

    private sealed record Need(string For, Func<Ingredient, bool> Has);
}
