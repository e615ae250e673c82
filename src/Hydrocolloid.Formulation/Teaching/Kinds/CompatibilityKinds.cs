using Hydrocolloid.Formulation.Compatibility;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>Naming what does not go together, by the library's rules.</summary>
internal static class CompatibilityKinds
{
    public static ExerciseKind[] All =>
    [
        new("incompatibility", "What does not go together, and why", 2, Incompatibility),
    ];

    private static readonly Ingredient[] s_agents =
        [Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA, Hydrocolloids.GellanLowAcyl, Hydrocolloids.CarrageenanKappa, Hydrocolloids.CarrageenanIota, Hydrocolloids.SodiumAlginate, Hydrocolloids.PectinLowMethoxyl];

    private static readonly Ingredient[] s_liquids =
    [
        Pantry.WaterDistilled, Pantry.WaterHard, Pantry.PearJuice, Pantry.LemonJuice, Pantry.CranberryJuice, Pantry.BlackcurrantJuice, Pantry.PineappleJuiceRaw, Pantry.KiwiJuiceRaw, Pantry.PapayaJuiceRaw,
        Pantry.RedWine, Pantry.Spirit40, Pantry.WholeMilk, Pantry.Buttermilk, Pantry.Yoghurt, Pantry.SoyDrinkCalcium,
    ];

    // What the rules find, in words of our own; rules that see the same trouble at different stages are one answer. A liquid that has what another gel would suffer from is arguable where
    // the rules find nothing, so there the trouble is not offered as a wrong answer; an enzyme is, for it cuts nothing but protein.
    private static readonly (string Key, string Text, string[] Rules, Func<Ingredient, bool> IsArguable)[] s_troubles =
    [
        ("enzyme", "An enzyme of the raw fruit cuts it", ["protease-with-protein-gel"], _ => false),
        ("tannin", "Tannin binds it", ["tannin-weakens-gel"], l => l.Tannin?.Value > TanninLevel.Low),
        ("ions-missing", "The ions that it sets with are missing", ["gelling-ions-missing", "potassium-missing", "calcium-missing", "salts-missing"], l => l.Category == "water" || l.Composition?.Value.EthanolPercent > 0),
        ("calcium", "Calcium keeps it from dissolving", ["calcium-while-hydrating"], l => l.MilkProtein?.Value.Casein == true || l.Id == Pantry.WaterHard.Id || l.Composition?.Value.CalciumMg > 10),
        ("acid", "The acid keeps it from dissolving, weakens it or cuts it in the heat", ["ph-while-hydrating", "ph-while-heated", "ph-of-the-gel"], l => l.Ph?.Value < 5),
        ("alcohol", "The alcohol keeps it from dissolving or from setting", ["alcohol-while-hydrating", "alcohol-in-the-gel", "alcohol-boils-too-low", "ethanol-in-the-gel"], l => l.Composition?.Value.EthanolPercent > 0),
        ("casein", "Milk protein curdles with it", ["casein-curdles-with-gum"], l => l.MilkProtein?.Value.Casein == true),
    ];

    private static readonly RuleSet s_rules = RuleSet.Standard.Only([.. s_troubles.SelectMany(t => t.Rules)]);

    private static readonly RuleSet s_enzyme = RuleSet.Standard.Only("protease-with-protein-gel");

    // Reviewed once, so that a draw begins with a pair that has troubles and enough wrong answers beside them; by level.
    private static readonly Lazy<ILookup<int, (Ingredient Agent, Ingredient Liquid)>> s_pairs = new(() => s_agents.SelectMany(a => s_liquids.Select(l => (Agent: a, Liquid: l)))
        .Select(p => (Pair: p, Troubles(Gel(p.Agent, p.Liquid, DoseOf(p.Agent))).Keys)).Where(p => p.Keys.Count > 0)
        .Select(p => (p.Pair, p.Keys, Level: p.Keys.Count == 1 ? 1 : 2))
        .Where(p => p.Keys.Count + s_troubles.Count(t => !p.Keys.Contains(t.Key) && !t.IsArguable(p.Pair.Liquid)) >= OptionsAt(p.Level)).ToLookup(p => p.Level, p => p.Pair));

    private static int OptionsAt(int level) => level == 1 ? 4 : 5;

    private static double DoseOf(Ingredient agent) => (agent.Profile!.WindowFor(Texture.Firm) ?? agent.Profile.WindowFor(Texture.Soft))?.Percent.Value is { } window ? window.Min ?? window.Max!.Value : 1;

    private static Formula Gel(Ingredient agent, Ingredient liquid, double percent)
        => Formula.Named("Exercise").Base(b => b.Share(liquid, 100)).Then("gel", p => p.Add(agent, Dose.Percent(percent).OfPreceding)).Build();

    /// <summary>The troubles found, each with its first finding.</summary>
    private static Dictionary<string, Finding> Troubles(Formula formula) => formula.Review(s_rules).Where(f => f.Severity != Severity.Information)
        .GroupBy(f => s_troubles.First(t => t.Rules.Contains(f.Id)).Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);

    // 1: one trouble; 2: all of several.
    private static ExerciseDraft? Incompatibility(ExerciseDraw draw)
    {
        Ingredient[] allowed = draw.Allowed(s_agents);
        var pairs = s_pairs.Value[draw.Level].Where(p => allowed.Contains(p.Agent)).ToArray();
        if (pairs.Length == 0)
        {
            return null;
        }

        (Ingredient agent, Ingredient liquid) = draw.Pick(pairs);
        draw.Name("agent", agent.Id);
        draw.Name("liquid", liquid.Id);
        double percent = draw.Dose("dose", agent);
        Dictionary<string, Finding> found = Troubles(Gel(agent, liquid, percent));
        if (draw.Level == 1 ? found.Count != 1 : found.Count < 2)
        {
            return null;
        }

        string[] likeGelatin = found.ContainsKey("enzyme") || Gel(Hydrocolloids.GelatinTypeA, liquid, DoseOf(Hydrocolloids.GelatinTypeA)).Review(s_enzyme).Count == 0 ? [] : ["enzyme"];
        AnswerOption[] Options(Func<(string Key, string Text, string[] Rules, Func<Ingredient, bool> IsArguable), bool> which) => [.. s_troubles.Where(which).Select(t => new AnswerOption(t.Key, t.Text))];
        AnswerOption[] wrong = draw.Shuffled(Options(t => !found.ContainsKey(t.Key) && !t.IsArguable(liquid)));
        int count = OptionsAt(draw.Level);
        AnswerOption[] options = draw.Shuffled([.. Options(t => found.ContainsKey(t.Key)), .. wrong.OrderBy(o => likeGelatin.Contains(o.Key) ? 0 : 1).Take(count - found.Count)]);
        if (options.Length < count)
        {
            return null;
        }

        SolutionStep[] steps = [.. s_troubles.Where(t => found.ContainsKey(t.Key)).Select(t => new SolutionStep("Hold what the liquid brings, acid, ions, alcohol, enzymes, tannin, against what the agent stands.", t.Key, found[t.Key].Explanation.TrimEnd('.'), null, ""))];
        return new ExerciseDraft(
            $"{agent.Name}, {Internal.Numbers.Significant(percent, 6)} %, shall set {KitchenMix.InText(liquid)}. {(draw.Level == 1 ? "What stands against it?" : "What stands against it? Name all that does.")}",
            AnswerForm.Of(draw.Level == 1 ? AnswerShape.Choice : AnswerShape.List, options),
            made => !made(LikeGelatin) ? WorkedSolution.Of(steps).Choosing([.. options.Select(o => o.Key).Where(found.ContainsKey)])
                : likeGelatin.Length == 0 ? null : WorkedSolution.Of(steps).Choosing([.. options.Select(o => o.Key).Where(likeGelatin.Contains).Take(draw.Level == 1 ? 1 : 5)]), LikeGelatin);
    }
}
