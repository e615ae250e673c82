using Hydrocolloid.Formulation.Internal;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>The steps of a method in order, from the planner.</summary>
internal static class MethodKinds
{
    public static ExerciseKind[] All =>
    [
        new("method-order", "The steps of a method in order", 2, MethodOrder, usesFormula: true),
    ];

    private const int Easy = 4, Most = 6;

    // Each of these needs the one before it, so their order is the only one: a powder is wetted before it is heated, heated before it is held, held before what harms it joins,
    // all of it in before it is cast, cast before it sets, set before it is turned out and cut. What could be done earlier or later (straining, skimming, covering) is left out.
    private static readonly StepAction[] s_chain = [StepAction.Disperse, StepAction.Soak, StepAction.Heat, StepAction.Hold, StepAction.Add, StepAction.Cast, StepAction.Set, StepAction.Unmould, StepAction.Slice];

    // Planning takes longer than drawing, and the steps do not hang on the amounts.
    private static readonly Lazy<(Ingredient Agent, Formula Formula, MethodStep[] Steps)[]> s_usual = new(() =>
        [.. new[] { Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA, Hydrocolloids.GellanLowAcyl, Hydrocolloids.CarrageenanKappa }.SelectMany(a => new[] { false, true }.Select(sour => Usual(a, sour)))]);

    private static (Ingredient Agent, Formula Formula, MethodStep[] Steps) Usual(Ingredient agent, bool sour)
    {
        NumberRange window = (agent.Profile!.WindowFor(Texture.Firm) ?? agent.Profile.WindowFor(Texture.Soft))!.Percent.Value;
        FormulaBuilder builder = Formula.Named("Exercise").Base(b => b.Share(Pantry.Water, 100)).Then("season", p =>
        {
            p.Add(Pantry.Sucrose, Dose.Percent(10).OfBase);
            if (sour)
            {
                p.Add(Pantry.CitricAcid, Dose.Percent(0.5).OfBase);
            }
        });
        Formula formula = builder.Then("gel", p => p.Add(agent, Dose.Percent(window.Min ?? window.Max!.Value).OfPreceding)).Serve(new ServicePlan { Texture = Texture.Firm, Shape = PortionShape.Slice }).Build();
        return (agent, formula, Chain(formula));
    }

    /// <summary>The steps whose order is the only one: each action of the chain that the method has once, and of the additions the first that has to wait until the hold is over.</summary>
    private static MethodStep[] Chain(Formula formula)
    {
        MethodStep[] all = [.. formula.PlanMethod().Steps];
        int held = Array.FindLastIndex(all, s => s.Action is StepAction.Hold);
        MethodStep[] chain = [.. all.Where((s, i) => s_chain.Contains(s.Action) && (s.Action == StepAction.Add ? i > held && held >= 0 : all.Count(o => o.Action == s.Action) == 1))];
        MethodStep? late = chain.FirstOrDefault(s => s.Action == StepAction.Add);
        return [.. chain.Where(s => s.Action != StepAction.Add || s == late)];
    }

    // 1: what is done with one agent; 2: more steps, and something that has to wait.
    private static ExerciseDraft? MethodOrder(ExerciseDraw draw)
    {
        bool sour = draw.Level == 2;
        Formula formula;
        MethodStep[] chain;
        if (!draw.Settings.Formulas.IsEmpty)
        {
            formula = draw.Pick(draw.Settings.Formulas);
            chain = Chain(formula);
        }
        else
        {
            var usual = s_usual.Value.Where(u => draw.Allowed(u.Agent).Length > 0 && sour == u.Formula.FindLine(Pantry.CitricAcid.Id) is not null).ToArray();
            if (usual.Length == 0)
            {
                return null;
            }

            (Ingredient agent, formula, chain) = draw.Pick(usual);
            draw.Name("agent", agent.Id);
        }

        int count = sour ? Most : Easy;
        string[] keep = [.. draw.Shuffled([.. chain.Select(Option)]).OrderBy(o => sour && chain.Any(s => s.Action == StepAction.Add && Key(s) == o.Key) ? 0 : 1).Take(count).Select(o => o.Key)];
        MethodStep[] steps = [.. chain.Where(s => keep.Contains(Key(s)))];
        if (steps.Length < Easy || steps.Select(Key).Distinct(StringComparer.Ordinal).Count() < steps.Length)
        {
            return null;
        }

        string gel = string.Join(", ", formula.Lines.Select(l => KitchenMix.InText(l.Ingredient)));
        return new ExerciseDraft(
            $"A gel is made of {gel}. Put these steps in the order in which they are done.",
            AnswerForm.Of(AnswerShape.Order, draw.Shuffled([.. steps.Select(Option)])),
            made => Wrong(steps, made) is { } order
                ? WorkedSolution.Of([.. order.Select((s, i) => new SolutionStep(s.Reason, $"step {Numbers.Exact(i + 1)}", s.Instruction.TrimEnd('.'), null, ""))]).Choosing([.. order.Select(Key)]) : null,
            IntoHotLiquid, AddedTooSoon, CastAfterSetting);
    }

    /// <summary>The order with a mistake; null where its steps are not there.</summary>
    private static MethodStep[]? Wrong(MethodStep[] steps, Func<Misconception, bool> made)
        => made(IntoHotLiquid) ? Moved(steps, steps.FirstOrDefault(s => s.Action is StepAction.Disperse or StepAction.Soak), StepAction.Heat, after: true)
            : made(AddedTooSoon) ? Moved(steps, steps.FirstOrDefault(s => s.Action == StepAction.Add), StepAction.Heat, after: false)
            : made(CastAfterSetting) ? Moved(steps, steps.FirstOrDefault(s => s.Action == StepAction.Cast), StepAction.Set, after: true)
            : steps;

    private static MethodStep[]? Moved(MethodStep[] steps, MethodStep? step, StepAction to, bool after)
    {
        if (step is null || steps.All(s => s.Action != to))
        {
            return null;
        }

        List<MethodStep> order = [.. steps.Where(s => s != step)];
        order.Insert(order.FindIndex(s => s.Action == to) + (after ? 1 : 0), step);
        return [.. order];
    }

    private static AnswerOption Option(MethodStep step) => new(Key(step), step.Instruction);

    private static string Key(MethodStep step) => step.Action.ToString().ToLowerInvariant();
}
