using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>Questions whose answers are options: what a percentage is of, what is more, verdicts, what does not go together.</summary>
internal static class ChoiceKinds
{
    public static ExerciseKind[] All =>
    [
        new("percent-of-what", "Percent of what", 1, PercentOfWhat),
        new("most-agent", "Which dose is more", 1, MostAgent),
        new("cooling-verdict", "Cooled safely or not", 1, CoolingSafely),
        new("boil-hot-enough", "Hot enough at altitude", 1, HotEnough),
        new("which-agent", "The agent that does not fit", 2, WhichAgent),
        new("ph-mix", "The pH of a mix", 1, PhOfMix, needsCalculator: true),
    ];

    private static string N(double value) => Numbers.Significant(value, 6);

    private static readonly (string Key, DoseReference Reference, Misconception Mistake)[] s_references =
        [("base", DoseReference.Base, PercentOfBase), ("preceding", DoseReference.Preceding, PercentOfPreceding), ("total", DoseReference.Total, PercentOfTotal)];

    private static ExerciseDraft? PercentOfWhat(ExerciseDraw draw)
    {
        var (key, reference, _) = draw.Pick(s_references);
        if (KitchenMix.Draw(draw, reference) is not { } mix)
        {
            return null;
        }

        double baseGrams = draw.Number("base-mass", 500, 3000, 50, "g");
        Formula formula = mix.Formula;
        string percent = N(mix.Line.Dose.PercentByMass), sugar = N(formula.Lines[1].Dose.PercentByMass);
        double Grams(DoseReference r) => formula.WithDose(mix.Label, Dose.Percent(mix.Line.Dose.PercentByMass).Of(r)).ScaleTo(Yield.OfBase(Mass.FromGrams(baseGrams))).MassOf(mix.Label).Grams;
        double weighed = draw.State("agent-mass", Numbers.RoundHalfAway(Grams(reference), 3), "g");
        (string Key, double Grams, string Name)[] all = [.. s_references.Select(r => (r.Key, Grams(r.Reference), r.Reference.ToString()))];
        // To be told apart on a balance of 0.01 g.
        if (all.Any(a => all.Any(b => a.Key != b.Key && Math.Abs(a.Grams - b.Grams) < 0.02)))
        {
            return null;
        }

        AnswerOption[] options = draw.Shuffled([.. all.Select(a => new AnswerOption(a.Key, "of " + a.Name))]);
        return new ExerciseDraft(
            $"{N(baseGrams)} g of {mix.BaseName} and sugar ({sugar} % of the base) were set with {N(weighed)} g of {mix.Name}, which the note calls {percent} %. Of what?",
            AnswerForm.Of(AnswerShape.Choice, options),
            made => s_references.Where(r => made(r.Mistake)).Select(r => r.Key).ToArray() is { Length: <= 1 } wrong
                ? WorkedSolution.Of([.. all.Select(a => new SolutionStep("The mass of a dose is its percentage over 100, times what it is a percentage of.", "of " + a.Name, $"{percent}/100 × {N(a.Grams / mix.Line.Dose.PercentByMass * 100)} g", a.Grams, "g"))])
                    .Choosing(wrong.Length == 1 ? wrong[0] : key)
                : null,
            [.. s_references.Where(r => r.Key != key).Select(r => r.Mistake)]);
    }

    private static ExerciseDraft? MostAgent(ExerciseDraw draw)
    {
        if (draw.Agent(KitchenMix.UsualAgents) is not { } agent)
        {
            return null;
        }

        double baseGrams = draw.Number("base-mass", 1000, 1000, 1, "g"), sugar = draw.Number("sugar", 15, 40, 5, "%"), percent = draw.Dose("dose", agent);
        // The smaller dose of more against the larger dose of less.
        (DoseReference Reference, double Percent)[] doses =
            [(DoseReference.Preceding, percent), (DoseReference.Base, Numbers.RoundHalfAway(percent * 1.05, 2)), (DoseReference.Total, Numbers.RoundHalfAway(percent * 0.97, 2))];
        double Grams((DoseReference Reference, double Percent) dose) => Formula.Named("Exercise").Base(b => b.Share(Pantry.Water, 100)).Then("season", p => p.Add(Pantry.Sucrose, Dose.Percent(sugar).OfBase))
            .Then("gel", p => p.Add(agent, Dose.Percent(dose.Percent).Of(dose.Reference))).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(baseGrams))).MassOf(agent).Grams;
        (string Key, double Grams, double Percent, string Text)[] all = [.. doses.Select(d => (d.Reference.Kind.ToString().ToLowerInvariant(), Grams(d), d.Percent, $"{N(d.Percent)} % of {d.Reference}"))];
        if (all.Any(a => all.Any(b => a.Key != b.Key && Math.Abs(a.Grams / b.Grams - 1) < 0.01)))
        {
            return null;
        }

        WorkedSolution steps = WorkedSolution.Of([.. all.Select(a => new SolutionStep("The mass of a dose is its percentage over 100, times what it is a percentage of.", a.Text, $"{N(a.Percent)}/100 × {N(a.Grams / a.Percent * 100)} g", a.Grams, "g"))]);
        return new ExerciseDraft(
            $"{N(baseGrams)} g of water and sugar ({N(sugar)} % of the base) are to be set with {KitchenMix.InText(agent)}. Put these doses in order, the smallest mass first.",
            AnswerForm.Of(AnswerShape.Order, draw.Shuffled([.. all.Select(a => new AnswerOption(a.Key, a.Text))])),
            made => steps.Choosing([.. (made(PercentOfBase) ? all.OrderBy(a => a.Percent) : all.OrderBy(a => a.Grams)).Select(a => a.Key)]), PercentOfBase);
    }

    private static ExerciseDraft? CoolingSafely(ExerciseDraw draw)
    {
        CoolingRule rule = CoolingRules.UsFoodCode;
        double start = draw.Number("first-stage-minutes", 60, 160, 5, "min"), more = draw.Number("second-stage-minutes", 120, 300, 5, "min");
        CoolingReading At(double minutes, double celsius) => new(Duration.FromMinutes(minutes), Temperature.FromDegreesCelsius(celsius));
        CoolingVerdict verdict = rule.Check(At(0, 57), At(start, 21), At(start + more, 5));
        string Key(CoolingRuleOutcome outcome) => outcome == CoolingRuleOutcome.Met ? "safe" : "discard";
        return new ExerciseDraft(
            $"A gel made with milk has 57 °C at the start, 21 °C after {N(start)} min and 5 °C after {N(start + more)} min. The rule is {rule.Name}: {string.Join("; ", rule.Limits)}. What now?",
            AnswerForm.Of(AnswerShape.Choice, new("safe", "The rule is met"), new("discard", "The rule is not met: discard it")),
            made => WorkedSolution.Of([.. verdict.Checks.Select(c => new SolutionStep("Each limit has its own clock.", c.Limit.ToString(), $"took {N(Numbers.RoundHalfAway(c.Taken!.Value.Minutes, 1))} min, {(c.Outcome == CoolingRuleOutcome.Met ? "met" : "not met")}", null, ""))])
                .Choosing(made(OneLimitOnly) ? Key(verdict.Checks[0].Outcome) : Key(verdict.Outcome)), OneLimitOnly);
    }

    private static ExerciseDraft? HotEnough(ExerciseDraw draw)
    {
        if (draw.Agent(Hydrocolloids.Agar, Hydrocolloids.GellanLowAcyl, Hydrocolloids.LocustBeanGum, Hydrocolloids.CarrageenanKappa) is not { Profile: { } profile } agent
            || profile.Hydration.Window.Value.Min is not { DegreesCelsius: var needed })
        {
            return null;
        }

        double metres = draw.Number("altitude", 0, 4500, 250, "m");
        PotPressure pot = PotPressure.AtAltitude(Length.FromMeters(metres));
        var window = new TemperatureRange(Temperature.FromDegreesCelsius(needed), null);
        SimmerAnswer There(PotPressure pressure) => Boiling.Reaches(window, new LiquidShares(100), pressure);
        string Key(SimmerAnswer answer) => answer.IsEnough ? "enough" : "short";
        SimmerAnswer right = There(pot);
        if (Math.Abs(right.BoilsAt.Temperature.DegreesCelsius - needed) < 0.5)
        {
            return null;
        }

        draw.State("hydration-temperature", needed, "°C");
        double boils = draw.State("boils-at", Numbers.RoundHalfAway(right.BoilsAt.Temperature.DegreesCelsius, 1), "°C");
        return new ExerciseDraft(
            $"{agent.Name} hydrates in water from {N(needed)} °C. At {N(metres)} m the kitchen's open pots boil; the air presses with {N(Numbers.RoundHalfAway(pot.Absolute.Kilopascals, 1))} kPa, and water boils 1 °C lower for about every 300 m. Is the boil hot enough?",
            AnswerForm.Of(AnswerShape.Choice, new("enough", "Yes"), new("short", "No: a pressure cooker or another agent")),
            made => WorkedSolution.Of(
                    new SolutionStep("Water boils where its steam presses as much as the air.", "boil", $"steam of {N(Numbers.RoundHalfAway(pot.Absolute.Kilopascals, 1))} kPa", boils, "°C"),
                    new SolutionStep("Compare it with what the agent needs.", "above what is needed", $"{N(boils)} - {N(needed)}", boils - needed, "K"))
                .Choosing(Key(made(SeaLevelBoil) ? There(default) : right)), SeaLevelBoil);
    }

    // Situations by a rule that stands in the library, reviewed once: which agent meets a conflict or a caution there.
    private static readonly Lazy<Situation[]> s_situations = new(() =>
    [
        new("a vegan menu", "diet-not-met", f => f.WithService(new ServicePlan { Diets = ValueList<Diet>.From([Diet.Vegan]) })),
        new("a buffet where it stands at 35 °C", "served-outside-its-temperature", f => f.WithService(new ServicePlan { ServedAt = Temperature.FromDegreesCelsius(35) })),
    ]);

    // 1: the one that does not fit; 2: all that do not fit.
    private static ExerciseDraft? WhichAgent(ExerciseDraw draw)
    {
        Situation situation = draw.Pick(s_situations.Value);
        draw.Name("situation", situation.Rule);
        Ingredient[] allowed = draw.Settings.Agents.IsEmpty ? Situation.Agents : [.. Situation.Agents.Where(i => draw.Settings.Agents.Any(a => a.Id == i.Id))];
        Ingredient[] bad = [.. allowed.Where(a => situation.Reasons.ContainsKey(a.Id))], good = [.. allowed.Where(a => !situation.Reasons.ContainsKey(a.Id))];
        int wrongCount = draw.Level == 1 ? 1 : 2;
        if (bad.Length < wrongCount || good.Length < 4 - wrongCount)
        {
            return null;
        }

        string[] chosen = [.. draw.Shuffled([.. bad.Select(Option)]).Take(wrongCount).Select(o => o.Key)];
        AnswerOption[] options = draw.Shuffled([.. bad.Where(b => chosen.Contains(b.Id)).Select(Option), .. draw.Shuffled([.. good.Select(Option)]).Take(4 - wrongCount)]);
        SolutionStep[] steps = [.. chosen.OrderBy(c => c, StringComparer.Ordinal).Select(c => new SolutionStep("Ask of each agent where it comes from and what its gel stands.", c, situation.Reasons[c].TrimEnd('.'), null, ""))];
        return new ExerciseDraft(
            $"A gel of pear juice is planned for {situation.Name}. Which {(wrongCount == 1 ? "agent does" : "agents do")} not fit?",
            AnswerForm.Of(wrongCount == 1 ? AnswerShape.Choice : AnswerShape.List, options),
            _ => WorkedSolution.Of(steps).Choosing([.. options.Select(o => o.Key).Where(chosen.Contains)]));
    }

    private static AnswerOption Option(Ingredient agent) => new(agent.Id, agent.Name);

    // Round figures of such juices, estimated for practice: a real one is measured.
    private static readonly (string Id, string Name, double Ph, double AcidPercent)[] s_sour =
        [("lemon-juice", "lemon juice", 2.4, 5), ("passion-fruit-juice", "passion fruit juice", 3.0, 3), ("raspberry-juice", "raspberry juice", 3.2, 1.5), ("apple-juice", "apple juice", 3.5, 0.5)];

    private static ExerciseDraft? PhOfMix(ExerciseDraw draw)
    {
        var (id, name, ph, acid) = draw.Pick(s_sour);
        draw.Name("juice", id);
        double water = draw.Number("water-parts", 1, 4, 1, "");
        draw.State("ph", ph, "");
        AcidBaseState mixed = AcidBaseSystem.Mix([new MixPart(AcidBaseSystem.FromMeasured(ph, acid, Acids.Citric, 90), 1), new MixPart(AcidBaseSystem.Water, water)]).Solve();
        double average = (ph + 7 * water) / (1 + water);
        if (average - mixed.PH < 0.5)
        {
            return null;
        }

        return new ExerciseDraft(
            $"One part of {name} (pH {N(ph)}) is stirred into {N(water)} {(water == 1 ? "part" : "parts")} of pure water (pH 7). What pH has the mix?",
            AnswerForm.Of(AnswerShape.Choice, draw.Shuffled(
                new("computed", "about " + Numbers.Fixed(mixed.PH, 1)), new("average", "about " + Numbers.Fixed(average, 1)), new("neutral", "about 7.0"))),
            made => WorkedSolution.Of(new SolutionStep("The acids of the juice hold its pH: it rises little. The balance of charges gives it.", "pH", "balance of charges of the mix", mixed.PH, ""))
                .Choosing(made(AveragedPh) ? "average" : "computed"), AveragedPh);
    }

    /// <summary>A way of serving, and what the library's rule says of each agent in it.</summary>
    private sealed class Situation
    {
        public static readonly Ingredient[] Agents =
            [Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA, Hydrocolloids.GelatinTypeB, Hydrocolloids.GelatinFish, Hydrocolloids.GellanLowAcyl, Hydrocolloids.CarrageenanKappa];

        public Situation(string name, string rule, Func<Formula, Formula> serve)
        {
            Name = name;
            Rule = rule;
            RuleSet rules = RuleSet.Standard.Only(rule);
            foreach (Ingredient agent in Agents)
            {
                NumberRange? window = (agent.Profile!.WindowFor(Texture.Firm) ?? agent.Profile.WindowFor(Texture.Soft))?.Percent.Value;
                Formula formula = serve(Formula.Named("Exercise").Base(b => b.Share(Pantry.PearJuice, 100)).Then("gel", p => p.Add(agent, Dose.Percent(window?.Min ?? window?.Max ?? 1).OfPreceding)).Build());
                if (formula.Review(rules).FirstOrDefault(f => f.Severity != Severity.Information) is { } finding)
                {
                    Reasons.Add(agent.Id, finding.Explanation);
                }
            }
        }

        public string Name { get; }

        public string Rule { get; }

        public Dictionary<string, string> Reasons { get; } = new(StringComparer.Ordinal);
    }
}
