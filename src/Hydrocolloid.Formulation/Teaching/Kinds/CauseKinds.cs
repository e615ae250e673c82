using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>What the record of a batch says of why it failed, by the library's diagnosis.</summary>
internal static class CauseKinds
{
    public static ExerciseKind[] All =>
    [
        new("find-cause", "The cause in a process record", 2, FindCause),
    ];

    private static readonly Ingredient[] s_agents = [Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA, Hydrocolloids.GelatinTypeB];

    private static readonly Symptom[] s_symptoms = [Symptom.TooSoft, Symptom.DidNotSet, Symptom.Broke];

    // What the record can show, in words of our own, and what the diagnosis calls it.
    private static readonly (string Key, string Text, string[] Ids)[] s_causes =
    [
        ("hydrated", "It was not hot enough to dissolve the gelling agent", ["hydration-temperature", "boils-too-cool"]),
        ("held", "It was kept hot for too long", ["held-hot-too-long"]),
        ("weighed", "There was too little of the gelling agent for the liquid", ["weighed-otherwise", "dose-outside-window", "dose-under-gelling-minimum", "low-dose-margin", "decimal-slip"]),
        ("waited", "It was judged before it had its strength", ["judged-too-soon"]),
        ("cast", "It had begun to set when it was cast", ["cast-too-cool"]),
        ("soaked", "The soaking water was so warm that gelatin dissolved in it and was poured away", ["soak-water-too-warm"]),
    ];

    // What a diagnosis without a record puts first: a usual cause.
    private static readonly Lazy<Dictionary<(string Agent, Symptom Symptom), string>> s_usual = new(() => s_agents.SelectMany(a => s_symptoms.Select(s => (Agent: a, Symptom: s)))
        .ToDictionary(p => (p.Agent.Id, p.Symptom), p => Jelly(p.Agent, Pantry.Water, 0.5 * (Window(p.Agent).Min!.Value + Window(p.Agent).Max!.Value)).Diagnose(p.Symptom).Causes.Select(c => c.Id).FirstOrDefault() ?? ""));

    private static NumberRange Window(Ingredient agent) => (agent.Profile!.WindowFor(Texture.Firm) ?? agent.Profile.WindowFor(Texture.Soft))!.Percent.Value;

    private static Formula Jelly(Ingredient agent, Ingredient liquid, double percent)
        => Formula.Named("Exercise").Base(b => b.Share(liquid, 100)).Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase)).Build();

    private static string N(double value) => Numbers.Significant(value, 6);

    // 1: three causes to choose from, each plain in the record; 2: more, and weights that only show the fault as a percentage.
    private static ExerciseDraft? FindCause(ExerciseDraw draw)
    {
        if (draw.Agent(s_agents) is not { Profile: { } profile } agent
            || (profile.Hydration.Window.Value.Celsius, profile.Setting.Window?.Value.Celsius, profile.Setting.TimeToStable?.Value.Seconds)
                is not ({ Min: { } dissolves } dissolving, { Max: { } sets }, { Min: { } stable } strength))
        {
            return null;
        }

        bool isSoaked = profile.Dispersal.SoakWaterPartsPerPart is not null;
        Symptom symptom = draw.Pick(s_symptoms);
        string fault = draw.Pick([.. s_causes.Select(o => o.Key).Where(k => isSoaked || k != "soaked")]);
        Ingredient liquid = draw.Pick(Pantry.Water, Pantry.PearJuice);
        draw.Name("liquid", liquid.Id);
        draw.Name("symptom", Words.Of(symptom));
        double baseGrams = draw.Number("base-mass", 800, 2000, 100, "g"), percent = draw.Dose("dose", agent), planned = Numbers.RoundHalfAway(percent * baseGrams / 100, 1);
        bool lessAgent = fault == "weighed" && draw.Level == 1, moreLiquid = fault == "weighed" && draw.Level == 2;
        double weighedBase = draw.State("weighed-base", moreLiquid ? Math.Round(baseGrams * draw.Pick(1.5, 1.75, 2) / 50) * 50 : baseGrams, "g"), weighedAgent = draw.State("weighed-agent", Numbers.RoundHalfAway(lessAgent ? planned * draw.Pick(0.5, 0.6, 0.7) : planned, 1), "g");
        double hottest = Math.Min(dissolving.Max ?? dissolves + 4, dissolves + 10);
        double hydratedAt = fault == "hydrated" ? draw.Number("hydrated-at", Math.Round(dissolves) - 22, Math.Round(dissolves) - 10, 1, "°C") : draw.Number("hydrated-at", Math.Ceiling(dissolves), Math.Floor(hottest), 1, "°C");
        double held = fault == "held" ? draw.Number("held-for", 240, 600, 30, "min") : draw.Number("held-for", Math.Ceiling((profile.Hydration.Hold.Value.Seconds.Min ?? 60) / 60), Math.Floor((profile.Hydration.Hold.Value.Seconds.Max ?? 300) / 60), 1, "min");
        double castAt = fault == "cast" ? draw.Number("cast-at", Math.Round(sets) - 8, Math.Round(sets) - 3, 1, "°C") : draw.Number("cast-at", Math.Ceiling(sets) + 6, Math.Ceiling(sets) + 12, 1, "°C");
        double left = fault == "waited" ? draw.Number("left-to-set", 1, Math.Max(1, Math.Floor(stable / 3600 / 2)), 1, "h") : draw.Number("left-to-set", Math.Ceiling((strength.Max ?? stable) / 3600), Math.Ceiling((strength.Max ?? stable) / 3600) + 12, 1, "h");
        double soakedAt = !isSoaked ? 0 : fault == "soaked" ? draw.Number("soaked-at", 35, 50, 1, "°C") : draw.Number("soaked-at", 5, 15, 1, "°C");
        var record = new ProcessRecord
        {
            Weighed = ValueList<WeighedLine>.From([new WeighedLine(liquid.Id, Mass.FromGrams(weighedBase)), new WeighedLine(agent.Id, Mass.FromGrams(weighedAgent))]),
            SoakedAt = isSoaked ? Temperature.FromDegreesCelsius(soakedAt) : null,
            HydratedAt = Temperature.FromDegreesCelsius(hydratedAt),
            HydratedFor = Duration.FromMinutes(held),
            CastAt = Temperature.FromDegreesCelsius(castAt),
            LeftToSet = Duration.FromHours(left),
        };
        Diagnosis diagnosis = Jelly(agent, liquid, percent).Diagnose(symptom, record);
        LikelyCause[] shown = [.. diagnosis.Causes.Where(c => c.Standing == CauseStanding.Shown)];
        // One cause and no other, and it is the one that was put into the record.
        if (shown.Length == 0 || shown.Any(c => !s_causes.First(o => o.Key == fault).Ids.Contains(c.Id)))
        {
            return null;
        }

        int count = draw.Level == 1 ? 3 : 5;
        string usual = s_usual.Value[(agent.Id, symptom)];
        (string Key, string Text, string[] Ids) right = s_causes.First(o => o.Key == fault);
        // Known failures that the diagnosis has looked at and finds in order, and what the record shows to be in order; the usual cause is offered where it is one of them.
        AnswerOption[] wrong =
        [
            .. diagnosis.Causes.Where(c => c.Standing == CauseStanding.Unlikely && !s_causes.Any(o => KnownOf(c.Id).Rules.Any(o.Ids.Contains))).Select(c => new AnswerOption(c.Id, KnownOf(c.Id).Cause.Value.TrimEnd('.'))),
            .. s_causes.Where(o => o.Key != fault && (isSoaked || o.Key != "soaked")).Select(o => new AnswerOption(o.Key, o.Text)),
        ];
        string? usualKey = wrong.Any(o => o.Key == usual) ? usual
            : s_causes.Where(o => o.Key != fault && KnownFailure.All.Any(f => f.Id == usual && f.Rules.Any(o.Ids.Contains))).Select(o => o.Key).FirstOrDefault(k => wrong.Any(o => o.Key == k));
        AnswerOption[] offered = [.. draw.Shuffled(wrong).OrderBy(o => o.Key == usualKey ? 0 : 1).Take(count - 1)];
        AnswerOption[] options = draw.Shuffled([new AnswerOption(right.Key, right.Text), .. offered]);
        SolutionStep[] steps = [.. shown.Select(c => new SolutionStep("Hold each value of the record against its limit.", "outside its limit", c.Explanation.TrimEnd('.'), null, "")), new SolutionStep("What lies outside its limit is the cause.", "cause", right.Text, null, "")];
        string name = KitchenMix.InText(agent);
        return new ExerciseDraft(
            $"Planned: {N(baseGrams)} g of {KitchenMix.InText(liquid)} and {N(percent)} % of it of {name}, which "
                + (isSoaked ? "is soaked in cold water, " : "") + $"dissolves from {N(dissolves)} °C, sets at {profile.Setting.Window!.Value}, and has its strength after {profile.Setting.TimeToStable!.Value}."
                + $" The record: {N(weighedBase)} g of {KitchenMix.InText(liquid)} and {N(weighedAgent)} g of {name} weighed; {(isSoaked ? $"soaked at {N(soakedAt)} °C; " : "")}heated to {N(hydratedAt)} °C and kept there for {N(held)} min; cast at {N(castAt)} °C; left for {N(left)} h."
                + $" {Says(symptom)} What is the cause?",
            AnswerForm.Of(AnswerShape.Choice, options),
            made => !made(RecordNotRead) ? WorkedSolution.Of(steps).Choosing(right.Key) : usualKey is null ? null : WorkedSolution.Of(steps).Choosing(usualKey), RecordNotRead);
    }

    private static string Says(Symptom symptom) => symptom switch
    {
        Symptom.DidNotSet => "It did not set.",
        Symptom.Broke => "It broke when it was turned out.",
        _ => "It is too soft.",
    };

    private static KnownFailure KnownOf(string id) => KnownFailure.All.First(f => f.Id == id);
}
