using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>Puts a gel system into a formula at the dose of a texture, and mends what the review then finds by the rules' own remedies.</summary>
internal static class Placing
{
    // What dissolves hot and is solid where it is served needs no heat at the table; unstated, a room of 20 °C is taken (common practice, no source).
    private const double TableCelsius = 20;

    /// <summary>Remedies that put in what an agent needs, or order the work for it, and leave the dish what it is: in small amounts, or not in amounts at all.</summary>
    private static readonly HashSet<string> s_gentle = new(StringComparer.Ordinal)
    {
        "add-gelling-ion", "bind-calcium", "calcium-after-heat", "calcium-held-back", "salt-afterwards", "acid-after-heat", "sour-liquid-held-back", "shorter-hold", "less-heat",
        "alcohol-after-heat", "sugar-afterwards", "syrup-held-back", "whole-base", "hydrate-at", "cast-hotter", "agent-after-heat", "buffer-with-citrate",
    };

    /// <summary>Remedies that change how the dish tastes: what high-methoxyl pectin asks for.</summary>
    private static readonly HashSet<string> s_tasted = new(StringComparer.Ordinal) { "add-acid", "add-sugar" };

    /// <summary>What speaks against a system for a texture before anything is weighed.</summary>
    public static IEnumerable<Obstacle> Obstacles(GelSystem system, ServicePlan service, Texture texture, bool isMostlyMilk)
    {
        if (system.Pair is { } pair)
        {
            if (pair.DoseFor(texture) is null)
            {
                yield return new Obstacle("no-dose-for-texture", $"{system.Name}: no working dose of both for {InWords(texture)} is known; {Known(pair.Doses.Select(d => d.Texture))}.", default);
            }

            if (pair.Melts is { Value.Celsius.Min: { } melts } window && service.ServedAtCelsius >= melts)
            {
                yield return new Obstacle("melts-at-service", $"{system.Name} melts at {window.Value}, and it is served at {Numbers.Significant(service.ServedAtCelsius.Value, 3)} °C.", Cite(window.Citation));
            }

            yield break;
        }

        Ingredient agent = system.Agents[0];
        HydrocolloidProfile profile = agent.Profile!;
        if (profile.WindowFor(texture) is null && MilkDose(profile, isMostlyMilk) is null)
        {
            yield return new Obstacle("no-dose-for-texture", $"{agent.Name}: no working dose for {InWords(texture)} is known; {Known(profile.DoseWindows.Select(w => w.Texture))}.", default);
        }

        if (profile.Setting.Triggers.FirstOrDefault() is not { } trigger)
        {
            yield break;
        }

        if (trigger.Cause == SettingCause.Calcium && profile.Setting.Window is null)
        {
            yield return new Obstacle("sets-in-a-bath", $"{agent.Name} is set by calcium from outside, as drops, threads or sheets in a bath: it makes no gel that is cast.", Cite(trigger.Description.Citation));
        }

        if (trigger.Cause == SettingCause.Heating && profile.Setting.Triggers.Count == 1 && profile.Melting.Reversibility == Reversibility.Reversible
            && profile.Limits.FirstOrDefault(l => l is { Quantity: LimitedQuantity.Temperature, Stage: LimitStage.Finished, Range.Value.Min: not null }) is { } warm
            && (service.ServedAtCelsius ?? TableCelsius) is var served && served < warm.Range.Value.Min)
        {
            yield return new Obstacle(
                "liquid-when-cold",
                $"{agent.Name} is a gel while it is hot and liquid again when it cools: it needs {Numbers.Significant(warm.Range.Value.Min!.Value, 3)} °C at service, and {Numbers.Significant(served, 3)} °C is {(service.ServedAtCelsius is null ? "taken, as none is stated" : "stated")}.",
                Cite(warm.Range.Citation));
        }
    }

    /// <summary>The formula with the agents of the system in a phase, dosed for the texture; null if that cannot be, with the reason.</summary>
    public static (Formula? Formula, ValueList<ChosenDose> Doses, Obstacle? Obstacle) Place(Formula formula, GelSystem system, Texture texture, string phase, int index, DoseReference reference)
    {
        if (system.Agents.FirstOrDefault(a => formula.FindLine(a.Id) is not null) is { } there)
        {
            return (null, default, new Obstacle("there-already", $"{there.Name} is in the formula already.", default));
        }

        FormulaBuilder builder = formula.ToBuilder().Serve(formula.Service with { Texture = texture });
        if (builder.PhaseDrafts.Find(p => p.Name == phase) is not { } draft)
        {
            draft = new DraftPhase(phase);
            builder.PhaseDrafts.Insert(Math.Min(index, builder.PhaseDrafts.Count), draft);
        }

        draft.Lines.AddRange(system.Agents.Select(a => new DraftLine(a, 1, null, reference, LineDetails.None)));
        if (!builder.TryBuild(out Formula? placed, out ValueList<FormulaProblem> problems))
        {
            return (null, default, new Obstacle("cannot-be", string.Join(" ", problems), default));
        }

        (Ingredient Agent, NumberRange Window, double Percent, string Why, Citation Citation)[] wanted;
        if (system.Pair?.DoseFor(texture) is { } both)
        {
            double all = Middle(both.Percent.Value);
            string why = $"The two together for {InWords(texture)}: the middle of {both.Percent.Value} % of the continuous mix, {Numbers.Significant(both.FirstPercent, 3)} % of it {Phrases.InSentence(system.Agents[0].Name)}.";
            wanted = [.. system.Agents.Select((a, i) => (a, Scaled(both.Percent.Value, Share(i) / 100), all * Share(i) / 100, why, both.Percent.Citation))];

            double Share(int i) => i == 0 ? both.FirstPercent : 100 - both.FirstPercent;
        }
        else if (MilkDose(system.Agents[0].Profile!, new ReviewContext(placed).IsMostlyMilk) is { } milk)
        {
            wanted = [(system.Agents[0], milk.Value, Middle(milk.Value), $"{milk.Value} % of the continuous mix is what gels milk; how firm, the source does not say.", milk.Citation)];
        }
        else
        {
            AgentDosing dosing = placed.DosedFor(system.Agents[0].Id, texture);
            if (dosing is not { Percent: { } percent, Window: { } window })
            {
                return (null, default, new Obstacle("no-dose-for-texture", dosing.Explanation, dosing.Source is { } source ? Cite(source) : default));
            }

            wanted = [(system.Agents[0], window, percent, dosing.Explanation, dosing.Source!)];
        }

        for (int pass = 0; pass < 2; pass++)
        {
            placed = wanted.Aggregate(placed, (f, w) => f.WithDose(w.Agent.Id, Plain(f, w.Agent.Id, AgentLines.DoseFor(f, w.Agent.Id, w.Percent), w.Window)));
        }

        return (placed, ValueList<ChosenDose>.From(wanted.Select(w => placed.Line(w.Agent.Id)).Select((l, i) => new ChosenDose(
            l.Label, l.Ingredient, l.Dose, placed.Proportions.PercentOfContinuousMix(l), wanted[i].Why, wanted[i].Citation))), null);
    }

    /// <summary>Applies the rules' own remedies, one after another, as long as each leaves fewer conflicts, or as many and fewer cautions.</summary>
    public static (Formula Formula, List<Remedy> Remedies, ValueList<Finding> Findings, Method Method) Mend(Formula formula, MethodOptions options, RuleSet rules, bool mayChangeTaste)
    {
        var applied = new List<Remedy>();
        (ValueList<Finding> findings, Method method) = Look(formula, options, rules);
        bool better = true;
        while (better && applied.Count < 8)
        {
            better = false;
            foreach (Remedy remedy in findings.Where(f => f.Severity >= Severity.Caution).SelectMany(f => f.Remedies)
                .Where(r => s_gentle.Contains(r.Id) || (mayChangeTaste && s_tasted.Contains(r.Id))))
            {
                Formula changed = remedy.Apply(formula);
                (ValueList<Finding> later, Method plan) = Look(changed, options, rules);
                if (Trouble(later, plan) is var (conflicts, cautions) && Trouble(findings, method) is var (before, less) && (conflicts < before || (conflicts == before && cautions < less)))
                {
                    (formula, findings, method, better) = (changed, later, plan, true);
                    applied.Add(remedy);
                    break;
                }
            }
        }

        return (formula, applied, findings, method);
    }

    private static (int Conflicts, int Cautions) Trouble(ValueList<Finding> findings, Method method)
        => (findings.Count(f => f.Severity == Severity.Conflict) + method.Conflicts.Count, findings.Count(f => f.Severity == Severity.Caution));

    private static (ValueList<Finding> Findings, Method Method) Look(Formula formula, MethodOptions options, RuleSet rules) => (formula.Review(rules), formula.PlanMethod(options));

    public static string InWords(Texture texture) => texture switch
    {
        Texture.FluidGel => "a fluid gel",
        Texture.Thickened => "a thickened liquid",
        Texture.Modifier => "a modifier",
        _ => $"a {Words.Of(texture).Replace('-', ' ')} gel",
    };

    public static ValueList<Citation> Cite(params Citation[] citations) => ValueList<Citation>.Own(citations);

    /// <summary>The dose in milk, for an agent that has one of its own there and a mix that is half milk or more.</summary>
    private static Cited<NumberRange>? MilkDose(HydrocolloidProfile profile, bool isMostlyMilk)
    {
        AgentLimit[] limits = isMostlyMilk ? [.. profile.Limits.Where(l => l is { Quantity: LimitedQuantity.Concentration, Stage: LimitStage.BesideCasein })] : [];
        double? min = limits.Max(l => l.Range.Value.Min), max = limits.Min(l => l.Range.Value.Max);
        return min is not null && max is not null ? new(new NumberRange(min, max), limits[0].Range.Citation, limits[0].Range.Note) : null;
    }

    private static string Known(IEnumerable<Texture> textures)
    {
        string known = Phrases.And(textures.Select(InWords));
        return known.Length == 0 ? "none is for any texture" : $"there are doses for {known}";
    }

    private static double Middle(NumberRange range) => ((range.Min ?? range.Max)!.Value + (range.Max ?? range.Min)!.Value) / 2;

    private static NumberRange Scaled(NumberRange range, double by) => new(range.Min * by, range.Max * by);

    /// <summary>The dose to two digits, which is as fine as the figures are, unless that leaves the window.</summary>
    private static Dose Plain(Formula formula, string label, Dose dose, NumberRange window)
    {
        var plain = new Dose(Numbers.RoundSignificant(dose.PercentByMass, 2), dose.Reference);
        Formula changed = formula.WithDose(label, plain);
        return window.Contains(changed.Proportions.PercentOfContinuousMix(changed.Line(label))) ? plain : dose;
    }
}
