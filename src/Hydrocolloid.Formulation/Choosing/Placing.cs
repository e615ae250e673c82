using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>Puts a gel system into a formula at the dose of a texture, and mends what the review then finds by the rules' own remedies.</summary>
internal static class Placing
{
    // What dissolves hot and is solid where it is served needs no heat at the table; unstated, a room of 20 °C is taken (common practice, no source).
    private const double TableCelsius = 20;

    private const int MostRemedies = 8, MostRounds = 4;

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
            if (isMostlyMilk && system.Agents.FirstOrDefault(a => MilkDose(a.Profile!, isMostlyMilk) is not null) is { } milky)
            {
                yield return new Obstacle(
                    "no-dose-in-milk", $"{system.Name}: the doses of both are for water; in milk {Phrases.InSentence(milky.Name)} takes {MilkDose(milky.Profile!, isMostlyMilk)!.Value} %, and none of the blend is known.",
                    Cite(MilkDose(milky.Profile!, isMostlyMilk)!.Citation));
            }

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

        if (profile.Setting.Triggers.IsEmpty)
        {
            yield break;
        }

        SettingTrigger trigger = profile.Setting.Triggers[0];
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

    /// <summary>The formula with the agents of the system in a phase, dosed for the texture and mended; null if that cannot be, with the reason.</summary>
    public static (Placed? Placed, Obstacle? Obstacle) Place(
        Formula formula, GelSystem system, Texture texture, string phase, int index, DoseReference reference, Func<Formula, Formula> fitted, MethodOptions options, RuleSet rules, bool mayChangeTaste)
    {
        if (system.Agents.FirstOrDefault(a => formula.FindLine(a.Id) is not null) is { } there)
        {
            return (null, new Obstacle("there-already", $"{there.Name} is in the formula already.", default));
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
            return (null, new Obstacle("cannot-be", string.Join(" ", problems), default));
        }

        (Wanted[] wanted, Obstacle? obstacle) = Doses(placed, system, texture);
        if (obstacle is not null)
        {
            return (null, obstacle);
        }

        placed = fitted(Dosed(placed, wanted));
        var remedies = new List<Remedy>();
        for (int round = 1; ; round++)
        {
            (Formula mended, List<Remedy> applied, ValueList<Finding> findings, Method method) = Mend(placed, options, rules, mayChangeTaste);
            remedies.AddRange(applied);
            // What was added has thinned the agents: they are dosed again, and then perhaps a little more of a helper is due.
            Formula again = Dosed(mended, wanted);
            if (round == MostRounds || again.Equals(mended))
            {
                return (new Placed(mended, ValueList<ChosenDose>.From(wanted.Select(w => Chosen(mended, w))), ValueList<Remedy>.From(remedies), findings, method), null);
            }

            placed = again;
        }
    }

    public static string InWords(Texture texture) => texture switch
    {
        Texture.FluidGel => "a fluid gel",
        Texture.Thickened => "a thickened liquid",
        Texture.Modifier => "a modifier",
        _ => $"a {Words.Of(texture).Replace('-', ' ')} gel",
    };

    private static (Wanted[] Wanted, Obstacle? Obstacle) Doses(Formula placed, GelSystem system, Texture texture)
    {
        Ingredient agent = system.Agents[0];
        if (system.Pair?.DoseFor(texture) is { } both)
        {
            double all = Middle(both.Percent.Value);
            string why = $"The two together for {InWords(texture)}: the middle of {both.Percent.Value} % of the continuous mix, {Numbers.Significant(both.FirstPercent, 3)} % of it {Phrases.InSentence(agent.Name)}.";
            return ([.. system.Agents.Select((a, i) => new Wanted(a, Scaled(both.Percent.Value, Share(i) / 100), all * Share(i) / 100, why, both.Percent.Citation))], null);

            double Share(int i) => i == 0 ? both.FirstPercent : 100 - both.FirstPercent;
        }

        if (MilkDose(agent.Profile!, new ReviewContext(placed).IsMostlyMilk) is { } milk)
        {
            return ([new Wanted(agent, milk.Value, Middle(milk.Value), $"{milk.Value} % of the continuous mix is what gels milk; how firm, the source does not say.", milk.Citation)], null);
        }

        AgentDosing dosing = placed.DosedFor(agent.Id, texture);
        return dosing is { Percent: { } percent, Window: { } window }
            ? ([new Wanted(agent, window, percent, $"The middle for {InWords(texture)}. {dosing.Corrections[0]}", dosing.Source!)], null)
            : ([], new Obstacle("no-dose-for-texture", dosing.Explanation, dosing.Source is { } source ? Cite(source) : default));
    }

    /// <summary>Each agent at its percentage of the continuous mix; twice, because they thin each other. No line is dosed on them, so there is room.</summary>
    private static Formula Dosed(Formula formula, Wanted[] wanted)
        => wanted.Concat(wanted).Aggregate(formula, (f, w) => f.WithDose(w.Agent.Id, Plain(f, w, AgentLines.DoseFor(f, w.Agent.Id, w.Percent)!)));

    private static ChosenDose Chosen(Formula formula, Wanted wanted)
    {
        FormulaLine line = formula.Line(wanted.Agent.Id);
        return new ChosenDose(line.Label, line.Ingredient, line.Dose, formula.Proportions.PercentOfContinuousMix(line), wanted.Why, wanted.Citation);
    }

    /// <summary>Applies the rules' own remedies, one after another, as long as each leaves fewer conflicts, or as many and fewer cautions.</summary>
    private static (Formula Formula, List<Remedy> Remedies, ValueList<Finding> Findings, Method Method) Mend(Formula formula, MethodOptions options, RuleSet rules, bool mayChangeTaste)
    {
        var applied = new List<Remedy>();
        (ValueList<Finding> findings, Method method) = Look(formula, options, rules);
        bool better = true;
        while (better && applied.Count < MostRemedies)
        {
            better = false;
            foreach (Remedy remedy in findings.Where(f => f.Severity >= Severity.Caution).SelectMany(f => f.Remedies)
                .Where(r => s_gentle.Contains(r.Id) || (mayChangeTaste && s_tasted.Contains(r.Id)))
                // Sugar takes the most room and thins the rest, so it goes first.
                .OrderByDescending(r => r.Id == "add-sugar"))
            {
                Formula changed = remedy.Apply(formula);
                (ValueList<Finding> later, Method plan) = Look(changed, options, rules);
                (int conflicts, int cautions) = Trouble(later, plan);
                (int before, int less) = Trouble(findings, method);
                if (conflicts < before || (conflicts == before && cautions < less))
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
    private static Dose Plain(Formula formula, Wanted wanted, Dose dose)
    {
        int decimals = 1 - (int)Math.Floor(Math.Log10(dose.PercentByMass));
        var plain = new Dose(Numbers.RoundHalfAway(dose.PercentByMass, Math.Max(decimals, 0)), dose.Reference);
        Formula changed = formula.WithDose(wanted.Agent.Id, plain);
        return wanted.Window.Contains(changed.Proportions.PercentOfContinuousMix(changed.Line(wanted.Agent.Id))) ? plain : dose;
    }

    /// <summary>A formula with a system in it.</summary>
    public sealed record Placed(Formula Formula, ValueList<ChosenDose> Doses, ValueList<Remedy> Remedies, ValueList<Finding> Findings, Method Method);

    private sealed record Wanted(Ingredient Agent, NumberRange Window, double Percent, string Why, Citation Citation);
}
