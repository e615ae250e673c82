using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about temperatures at work and at service.</summary>
internal static class TemperatureRules
{
    public static IDescribedRule[] All =>
        [new SoakTemperatureRule(), new HydrationTemperatureRule(), new BoilsTooCoolRule(), new HeldHotTooLongRule(), new JoinedTooColdRule(), new CastTooCoolRule(), new CoolsTooSlowlyRule(), new ServedTemperatureRule()];

    public static ValueList<Cited<string>> Windows(string what, Func<HydrocolloidProfile, Cited<TemperatureRange>?> window) => ValueList<Cited<string>>.From(
        from ingredient in Catalogue.BuiltIn.Hydrocolloids
        where ingredient.Profile!.Role == HydrocolloidRole.GellingAgent
        let figure = window(ingredient.Profile!)
        where figure is not null
        select new Cited<string>($"{ingredient.Name} {what}: {figure.Value}", figure.Citation));

    public static ValueList<Cited<string>> Limits(LimitStage stage) => ValueList<Cited<string>>.From(
        from ingredient in Catalogue.BuiltIn.Hydrocolloids
        from limit in ingredient.Profile!.Limits
        where limit.Quantity == LimitedQuantity.Temperature && limit.Stage == stage
        select new Cited<string>($"{ingredient.Name}: {limit.Range.Value} °C ({Words.Of(limit.Harm.ToSeverity())})", limit.Range.Citation));

    /// <summary>The limits on a temperature, the most harmful first.</summary>
    public static AgentLimit[] LimitsOf(AgentInMix agent, LimitStage stage)
        => [.. agent.Profile.Limits.Where(l => l.Quantity == LimitedQuantity.Temperature && l.Stage == stage).OrderByDescending(l => l.Harm)];

    /// <summary>The temperature under which an agent that sets by cooling alone begins to set; null for the others.</summary>
    public static Cited<TemperatureRange>? SettingOnCooling(HydrocolloidProfile p)
        => p.Role == HydrocolloidRole.GellingAgent && !p.Setting.Triggers.IsEmpty && p.Setting.Triggers[0].Cause == SettingCause.Cooling && p.Setting.Window?.Value.Celsius.Max is not null
            ? p.Setting.Window : null;

    public static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    public static string InWords(double celsius) => Numbers.Fixed(celsius, 1) + " °C";
}

/// <summary>Soaking water so warm that the leaves dissolve in it.</summary>
internal sealed class SoakTemperatureRule() : LimitRule("soak-water-too-warm", "temperature", LimitedQuantity.Temperature, LimitStage.Soaking)
{
    // Leaves: 5 to 15 °C, best at 10.
    private const double GoodCelsius = 10;

    protected override string Trigger => "Leaves or powder are soaked in water warmer than they stand: a caution.";

    protected override string RemedyInWords => "Soaking at 10 °C.";

    protected override string QuantityName => "the temperature of the soaking water";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
        => context.Formula.Process.SoakAtCelsius is { } celsius ? new Reckoned(celsius, "°C", ReckonedHow.Measured, "stated") : null;

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value) => ValueList<Remedy>.Own(
    [
        new Remedy(
            "soak-cold", "Soak at 5–15 °C, best about 10 °C.", "All of it goes into the mix.",
            new ProcessChange(context.Formula.Process with { SoakAt = TemperatureRules.Celsius(GoodCelsius) }), ValueList<Citation>.Own([limit.Range.Citation])),
    ]);
}

/// <summary>A hydrocolloid kept hot so long that it ages.</summary>
internal sealed class HeldHotTooLongRule() : LimitRule("held-hot-too-long", "temperature", LimitedQuantity.Minutes, LimitStage.Heated)
{
    // The solutions that aged were kept at 80 °C.
    private const double HotCelsius = 80;

    protected override string Trigger => "A hydrocolloid is held at 80 °C or more, longer than it stands: a caution.";

    protected override string RemedyInWords => "The longest hold that does no harm.";

    protected override string QuantityName => "the time it is held at 80 °C or more";

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => agent.HydrationCelsius >= HotCelsius && context.Formula.Process.HydrateSeconds is not null;

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
        => agent.HoldMinutes is { } minutes ? new Reckoned(minutes, "min", ReckonedHow.Measured, "stated") : null;

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value) => ValueList<Remedy>.Own(
    [
        new Remedy(
            "shorter-hold", $"Keep it hot for {Numbers.Significant(limit.Range.Value.Max!.Value, 3)} min at most.", "It keeps its strength.",
            new ProcessChange(context.Formula.Process with { HydrateFor = Duration.FromMinutes(limit.Range.Value.Max.Value) }), ValueList<Citation>.Own([limit.Range.Citation])),
    ]);
}

/// <summary>A stated hydration temperature at which a hydrocolloid does not dissolve.</summary>
internal sealed class HydrationTemperatureRule : IDescribedRule
{
    // What dissolves under this needs no heat: a cold liquid only makes it slower.
    private const double NeedsHeatCelsius = 40;

    public string Id => "hydration-temperature";

    public RuleCard Card => new(
        "temperature",
        "The stated hydration temperature is outside a limit of a hydrocolloid (a conflict where it does not dissolve), or under what the protocol of one that needs heat asks (a caution).",
        "The temperature that its protocol asks.", TemperatureRules.Limits(LimitStage.Hydrating));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        if (context.Formula.Process.HydrateAtCelsius is not { } celsius)
        {
            yield break;
        }

        foreach (AgentInMix agent in context.Agents)
        {
            AgentLimit[] limits = TemperatureRules.LimitsOf(agent, LimitStage.Hydrating);
            Cited<TemperatureRange> asked = agent.Profile.Hydration.Window;
            if (Array.Find(limits, l => !l.Range.Value.Contains(celsius)) is { } limit)
            {
                yield return Report(context, agent, celsius, limit.Harm.ToSeverity(), limit.Range.Value, limit.Consequence, limit.Range.Citation);
            }
            else if (limits.Length == 0 && asked.Value.Celsius.Min is { } min && min >= NeedsHeatCelsius && celsius < min)
            {
                yield return Report(context, agent, celsius, Severity.Caution, new NumberRange(min, null), "Cooler than its protocol asks, a part may stay undissolved.", asked.Citation);
            }
        }
    }

    private Finding Report(ReviewContext context, AgentInMix agent, double celsius, Severity severity, NumberRange range, string consequence, Citation citation) => new(
        Id, severity, $"{agent.Name} is hydrated at {TemperatureRules.InWords(celsius)}; it needs {new TemperatureRange(range)}. {consequence}",
        ValueList<string>.Own([agent.Line.Label]),
        ValueList<Evidence>.Own([new Evidence($"hydration temperature of {agent.Name}", celsius, "°C", range)]),
        ValueList<Citation>.Own([citation]), Remedies(context, agent, citation));

    private static ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, Citation citation)
    {
        NumberRange asked = agent.Profile.Hydration.Window.Value.Celsius;
        bool isCold = asked.Max < NeedsHeatCelsius;
        if ((isCold ? asked.Max : asked.Min) is not { } target
            || context.Agents.Exists(a => a != agent && !IsHydrated(a, target) && IsHydrated(a, context.Formula.Process.HydrateAtCelsius!.Value)))
        {
            return default; // one temperature does not do for both: they are hydrated apart
        }

        return ValueList<Remedy>.Own([new Remedy(
            "hydrate-at", $"Hydrate {agent.Name} at {TemperatureRules.InWords(target)}.", "It dissolves.",
            new ProcessChange(context.Formula.Process with { HydrateAt = TemperatureRules.Celsius(target) }), ValueList<Citation>.Own([citation]))]);
    }

    private static bool IsHydrated(AgentInMix agent, double celsius)
        => Array.TrueForAll(TemperatureRules.LimitsOf(agent, LimitStage.Hydrating), l => l.Range.Value.Contains(celsius))
            && !(agent.Profile.Hydration.Window.Value.Celsius.Min is { } min && min >= NeedsHeatCelsius && celsius < min);
}

/// <summary>A kitchen so high that the pot boils before a hydrocolloid dissolves.</summary>
internal sealed class BoilsTooCoolRule : IDescribedRule
{
    private const double NeedsHeatCelsius = 60;

    public string Id => "boils-too-cool";

    public RuleCard Card => new(
        "temperature",
        "At the stated altitude the liquid boils before it is as hot as a hydrocolloid needs: a conflict where it does not dissolve, else a caution.",
        null, TemperatureRules.Limits(LimitStage.Hydrating));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        if (context.Formula.Process.Altitude is not { } altitude)
        {
            yield break;
        }

        PotPressure pressure = PotPressure.AtAltitude(altitude);
        foreach (AgentInMix agent in context.Agents)
        {
            AgentLimit? limit = Array.Find(TemperatureRules.LimitsOf(agent, LimitStage.Hydrating), l => l.Range.Value.Min is not null);
            Citation citation = limit?.Range.Citation ?? agent.Profile.Hydration.Window.Citation;
            if ((limit?.Range.Value.Min ?? agent.Profile.Hydration.Window.Value.Celsius.Min) is not { } needed || needed < NeedsHeatCelsius || needed > 200
                || Boiling.Reaches(new TemperatureRange(new NumberRange(needed, null)), Liquid(agent.Medium), pressure) is not { IsEnough: false } answer)
            {
                continue;
            }

            yield return new Finding(
                Id, limit?.Harm.ToSeverity() ?? Severity.Caution,
                $"{agent.Name} needs {TemperatureRules.InWords(needed)}. At {Numbers.Significant(altitude.Meters, 4)} m above the sea: {answer} {limit?.Consequence}".TrimEnd(),
                ValueList<string>.Own([agent.Line.Label]),
                ValueList<Evidence>.Own([new Evidence("boiling point of the liquid", answer.BoilsAt.Temperature.DegreesCelsius, "°C", new NumberRange(needed, null))]),
                ValueList<Citation>.Own([citation]));
        }
    }

    /// <summary>What raises the boiling point. Ethanol, which lowers it at any altitude, is left out: this is about the altitude.</summary>
    private static LiquidShares Liquid(MixContents medium)
    {
        double water = medium.Water.Value, sugars = medium.Sugars.Value;
        return water > 1 && water + sugars <= 100 ? new LiquidShares(water, sugars) : new LiquidShares(100);
    }
}

/// <summary>A hot sol joined with cold liquid or cold pieces, so that it sets while it is stirred.</summary>
internal sealed class JoinedTooColdRule : IDescribedRule
{
    // Lines without a stated temperature that are together no more than this part of all hardly move the balance.
    private const double NegligiblePart = 0.02;

    public string Id => "joined-too-cold";

    public RuleCard Card => new(
        "temperature",
        "A hot sol and the cold rest or cold pieces come to a temperature under the setting window: a conflict; within the window: a caution. By the balance of heat, without losses, so the true mix is colder. Not for a fluid gel.",
        "The cold lines warmed to the temperature that keeps the mix 5 K above the setting window.", TemperatureRules.Windows("sets at", TemperatureRules.SettingOnCooling));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        Joint[] joints = [.. context.Agents.Select(a => Join(context, a)).Where(j => j is not null).Select(j => j!)];
        if (joints.Length > 0)
        {
            // The same cold lines meet every agent: the one that sets first stands for all.
            Joint worst = joints.OrderByDescending(j => j.IsUnder).ThenByDescending(j => j.Setting.Value.Celsius.Max).First();
            yield return Report(worst);
        }
    }

    private Joint? Join(ReviewContext context, AgentInMix agent)
    {
        if (context.Service.Texture == Texture.FluidGel || TemperatureRules.SettingOnCooling(agent.Profile) is not { } setting || agent.HydrationCelsius is not { } hot || hot is < 0 or > FoodProperties.MaxCelsius)
        {
            return null;
        }

        Formula formula = context.Formula;
        FormulaLine[] hydrated = [.. context.HydrationLines(agent.Line)];
        FormulaLine[] later = [.. formula.Lines.Except(hydrated).Where(l => formula.Proportions.MassOf(l) > 0)];
        FormulaLine[] cold = [.. later.Where(l => l.Details.Celsius is not null)];
        FormulaLine[] unknown = [.. later.Where(l => l.Details.Celsius is null)];
        if (later.Length == 0)
        {
            return null;
        }

        if (unknown.Sum(formula.Proportions.MassOf) > NegligiblePart * formula.Proportions.Total)
        {
            context.Needs(Id, $"the temperature of the {Phrases.Names(unknown)}", [.. unknown.Select(l => l.Label)]);
            return null;
        }

        if (cold.Length == 0 || cold.Any(l => l.Details.Celsius is < 0 or > FoodProperties.MaxCelsius))
        {
            return null; // frozen pieces: how much of their water is ice is not known
        }

        if (Body(formula, hydrated, hot) is not { } sol || Body(formula, cold, 0) is not { } coldBody)
        {
            context.Needs(Id, "the composition of all lines", [agent.Line.Label]);
            return null;
        }

        JoiningBody[] others = [sol, .. cold.Select(l => Body(formula, [l], l.Details.Celsius!.Value)!.Value)];
        double celsius = Joining.Of(others).Celsius;
        return celsius > setting.Value.Celsius.Max ? null : new Joint(agent, setting, cold, sol, coldBody, celsius);
    }

    private Finding Report(Joint joint)
    {
        NumberRange window = joint.Setting.Value.Celsius;
        double target = window.Max!.Value + CastingMargin.Kelvins;
        NeededTemperature needed = Joining.TemperatureNeeded(joint.ColdBody, [joint.Sol], TemperatureRules.Celsius(target));
        ValueList<Citation> citations = ValueList<Citation>.Own([joint.Setting.Citation]);
        string names = Phrases.Names(joint.Cold);
        return new Finding(
            Id, joint.IsUnder ? Severity.Conflict : Severity.Caution,
            $"With the {names} the mix comes to {TemperatureRules.InWords(joint.Celsius)} at most, but {joint.InMix.Name} sets at {joint.Setting.Value}: it sets in threads and lumps while it is stirred.",
            ValueList<string>.From([joint.InMix.Line.Label, .. joint.Cold.Select(l => l.Label)]),
            ValueList<Evidence>.Own([new Evidence("temperature of the mix", joint.Celsius, "°C", new NumberRange(window.Max, null))]),
            citations,
            needed.Outcome != NeededOutcome.Possible ? default : ValueList<Remedy>.Own([new Remedy(
                "warm-the-cold-part", $"Warm the {names} to {TemperatureRules.InWords(needed.Temperature.DegreesCelsius)}.",
                $"The mix then comes to {TemperatureRules.InWords(target)} and stays fluid until it is cast.",
                new ChangeSequence(ValueList<IFormulaChange>.From(joint.Cold.Select(l => new LineWarmed(l.Label, needed.Temperature)))), citations)]));
    }

    /// <summary>Lines as one body; null if the composition of one is not known well enough.</summary>
    private static JoiningBody? Body(Formula formula, FormulaLine[] lines, double celsius)
    {
        double mass = 0, water = 0, protein = 0, fat = 0, carbohydrate = 0, fibre = 0, ash = 0;
        foreach (FormulaLine line in lines)
        {
            double m = formula.Proportions.MassOf(line);
            if (new Analysis.MixLine(line, 1).Shares() is not { } food)
            {
                return null;
            }

            mass += m;
            water += m * food.WaterPercent;
            protein += m * food.ProteinPercent;
            fat += m * food.FatPercent;
            carbohydrate += m * food.CarbohydratePercent;
            fibre += m * food.FibrePercent;
            ash += m * food.AshPercent;
        }

        double Mean(double sum) => Math.Min(100, sum / mass);
        return mass > 0
            ? JoiningBody.Food(Mass.FromKilograms(mass), TemperatureRules.Celsius(celsius), new FoodShares(Mean(water), Mean(protein), Mean(fat), Mean(carbohydrate), Mean(fibre), Mean(ash)))
            : null;
    }

    private sealed record Joint(
        AgentInMix InMix, Cited<TemperatureRange> Setting, FormulaLine[] Cold, JoiningBody Sol, JoiningBody ColdBody, double Celsius)
    {
        public bool IsUnder => Celsius < Setting.Value.Celsius.Min;
    }
}

/// <summary>A mix that has begun to set before it is cast.</summary>
internal sealed class CastTooCoolRule : IDescribedRule
{
    public string Id => "cast-too-cool";

    public RuleCard Card => new(
        "temperature",
        "The mix is cast under the setting window of an agent that sets by cooling: a conflict; within it: a caution. Not for a fluid gel, which is stirred while it sets.",
        "Casting 5 K above the setting window.", TemperatureRules.Windows("sets at", TemperatureRules.SettingOnCooling));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        ProcessPlan process = context.Formula.Process;
        foreach (AgentInMix agent in context.Agents)
        {
            if (context.Service.Texture == Texture.FluidGel || TemperatureRules.SettingOnCooling(agent.Profile) is not { } setting)
            {
                continue;
            }

            if (process.CastAtCelsius is not { } celsius)
            {
                context.Needs(Id, "the temperature at which it is cast", agent.Line.Label);
                continue;
            }

            NumberRange window = setting.Value.Celsius;
            if (celsius <= window.Max)
            {
                bool hasSet = celsius < window.Min;
                bool heals = agent.Profile.Melting.Reversibility != Reversibility.Irreversible;
                yield return new Finding(
                    Id, hasSet ? Severity.Conflict : Severity.Caution,
                    $"It is cast at {TemperatureRules.InWords(celsius)}, but {agent.Name} sets at {setting.Value}: it {(hasSet ? "has set" : "may be setting")} in the pot, and the broken gel "
                    + (heals ? "heals only if it is melted again." : "does not heal, not even on heating."),
                    ValueList<string>.Own([agent.Line.Label]),
                    ValueList<Evidence>.Own([new Evidence("casting temperature", celsius, "°C", new NumberRange(window.Max, null))]),
                    ValueList<Citation>.Own([setting.Citation]),
                    Remedy(context, setting.Citation));
            }
        }
    }

    /// <summary>Above the setting window of every agent.</summary>
    private static ValueList<Remedy> Remedy(ReviewContext context, Citation citation)
    {
        double target = context.Agents.Max(a => TemperatureRules.SettingOnCooling(a.Profile)?.Value.Celsius.Max ?? 0) + CastingMargin.Kelvins;
        return ValueList<Remedy>.Own([new Remedy(
            "cast-hotter", $"Cast it at {TemperatureRules.InWords(target)} or hotter.", "It sets in the mould, not in the pot.",
            new ProcessChange(context.Formula.Process with { CastAt = TemperatureRules.Celsius(target) }), ValueList<Citation>.Own([citation]))]);
    }
}

/// <summary>A temperature on the plate at which the gel melts, softens, or (methylcellulose) turns liquid.</summary>
internal sealed class ServedTemperatureRule : IDescribedRule
{
    public string Id => "served-outside-its-temperature";

    public RuleCard Card => new(
        "temperature",
        "It is served above the melting window of an agent: a conflict; within the window, or outside the temperature the gel keeps its shape at: a caution. Information if another agent holds the shape.",
        "Serving it at the limit; for gelatin, another agent.",
        ValueList<Cited<string>>.From([.. TemperatureRules.Limits(LimitStage.Finished), .. TemperatureRules.Windows("melts at", p => p.Melting.Window)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        if (context.Service.Texture is Texture.Thickened or Texture.Modifier)
        {
            yield break;
        }

        AgentInMix[] gelling = [.. context.Agents.Where(a => a.Profile.Role == HydrocolloidRole.GellingAgent)];
        foreach (AgentInMix agent in gelling)
        {
            if (context.Service.ServedAtCelsius is not { } celsius)
            {
                if (agent.Profile.Melting.Window is not null || TemperatureRules.LimitsOf(agent, LimitStage.Finished).Length > 0)
                {
                    context.Needs(Id, "the temperature at service", agent.Line.Label);
                }
            }
            else if (Trouble.Of(agent, celsius) is { } trouble)
            {
                AgentInMix? stands = Array.Find(gelling, a => a != agent && !a.IsUnderMinimum && Trouble.Of(a, celsius) is null);
                yield return Report(context, agent, celsius, trouble, stands);
            }
        }
    }

    private Finding Report(ReviewContext context, AgentInMix agent, double celsius, Trouble trouble, AgentInMix? stands)
    {
        ValueList<Citation> citations = ValueList<Citation>.Own([trouble.Citation]);
        return new Finding(
            Id, stands is null ? trouble.Severity : Severity.Information,
            $"It is served at {TemperatureRules.InWords(celsius)}. {agent.Name}: {trouble.Consequence}{(stands is null ? "" : $" {stands.Name} keeps the shape.")}",
            ValueList<string>.Own([agent.Line.Label]),
            ValueList<Evidence>.Own([new Evidence("temperature at service", celsius, "°C", trouble.Range)]),
            citations, stands is not null || trouble.Severity == Severity.Information ? default : Remedies(context, agent, trouble, citations));
    }

    private static ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, Trouble trouble, ValueList<Citation> citations)
    {
        var serve = new Remedy(
            "serve-at", $"Serve it at {TemperatureRules.InWords(trouble.ServeAt)}.", "It keeps its shape.",
            new ServiceChange(context.Service with { ServedAt = TemperatureRules.Celsius(trouble.ServeAt) }), citations);
        Remedy? swap = trouble.Range.Max is null ? null : AgentSwap.For(context, agent.Line, "Its gel does not melt at this temperature.", Hydrocolloids.Agar);
        return swap is null ? ValueList<Remedy>.Own([serve]) : ValueList<Remedy>.Own([serve, swap]);
    }

    /// <summary>What a temperature does to a gel, and the nearest at which it is in order.</summary>
    private sealed record Trouble(Severity Severity, NumberRange Range, double ServeAt, string Consequence, Citation Citation)
    {
        public static Trouble? Of(AgentInMix agent, double celsius)
        {
            AgentLimit[] limits = TemperatureRules.LimitsOf(agent, LimitStage.Finished);
            AgentLimit? broken = Array.Find(limits, l => !l.Range.Value.Contains(celsius));
            AgentLimit? ceiling = Array.Find(limits, l => l.Range.Value.Max is not null && l.Harm > Harm.Notable);
            Cited<TemperatureRange>? melting = agent.Profile.Melting.Window;
            double? keepsShapeTo = ceiling?.Range.Value.Max ?? melting?.Value.Celsius.Min;
            if (celsius > melting?.Value.Celsius.Max)
            {
                return new Trouble(
                    Severity.Conflict, new NumberRange(null, melting.Value.Celsius.Max), keepsShapeTo ?? melting.Value.Celsius.Max.Value, $"Its gel melts at {melting.Value}.", melting.Citation);
            }

            if (broken is not null)
            {
                NumberRange range = broken.Range.Value;
                return new Trouble(broken.Harm.ToSeverity(), range, celsius < range.Min ? range.Min.Value : range.Max!.Value, broken.Consequence, broken.Range.Citation);
            }

            return ceiling is null && celsius > melting?.Value.Celsius.Min
                ? new Trouble(Severity.Caution, new NumberRange(null, melting.Value.Celsius.Min), melting.Value.Celsius.Min.Value, $"Its gel melts at {melting.Value}, by grade, dose and what else is in it.", melting.Citation)
                : null;
        }
    }
}

/// <summary>A mould that cools too slowly through its stated stages for the two-stage rule.</summary>
internal sealed class CoolsTooSlowlyRule : IDescribedRule
{
    public string Id => "cools-too-slowly";

    public RuleCard Card => new(
        "temperature",
        "Mould, casting temperature and stages of cooling are stated, and at the slowest the middle does not cool as the US Food Code's two stages ask: a caution. The local code decides.",
        "An ice bath, kept stirred, in place of the stages, if that is enough.",
        ValueList<Cited<string>>.From(CoolingRules.UsFoodCode.Limits.Select(l => new Cited<string>(l.ToString(), CoolingRules.UsFoodCode.Citation))));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        ProcessPlan plan = context.Formula.Process;
        if (plan.Cooling.IsEmpty)
        {
            yield break;
        }

        if (!context.Formula.TryCool(out CoolingOutlook? outlook, out ValueList<string> missing))
        {
            context.Needs(Id, string.Join(" and ", missing));
            yield break;
        }

        CoolingVerdict verdict = outlook.Check(CoolingRules.UsFoodCode);
        if (verdict.Outcome != CoolingRuleOutcome.NotMet)
        {
            yield break;
        }

        ValueList<Citation> citations = ValueList<Citation>.Own([CoolingRules.UsFoodCode.Citation]);
        yield return new Finding(
            Id, Severity.Caution,
            $"At the slowest the middle cools too slowly in this mould: {string.Join("; ", verdict.Checks)}. {verdict.Caution}",
            evidence: ValueList<Evidence>.From(verdict.Checks.Where(c => c.Taken is not null).Select(c =>
                new Evidence($"time to {InWords(c)}", c.Taken!.Value.Hours, "h", new NumberRange(null, c.Limit.Max.Hours)))),
            citations: citations, remedies: Remedies(context.Formula, plan, citations));
    }

    private static string InWords(CoolingCheck check) => TemperatureRules.InWords(check.Limit.To.DegreesCelsius);

    private static ValueList<Remedy> Remedies(Formula formula, ProcessPlan plan, ValueList<Citation> citations)
    {
        ProcessPlan faster = plan with { Cooling = ValueList<CoolingStage>.Own([new CoolingStage("stirred ice bath", TemperatureRules.Celsius(0)) { Medium = CoolingMedium.StirredIceBath }]) };
        return formula.WithProcess(faster).TryCool(out CoolingOutlook? outlook, out _) && outlook.Check(CoolingRules.UsFoodCode).Outcome != CoolingRuleOutcome.NotMet
            ? ValueList<Remedy>.Own(
            [
                new Remedy(
                    "stirred-ice-bath", $"Cool it in ice water, kept stirred, until the middle is at 5 °C: about {Numbers.Fixed(outlook.Slow.TimeUntilBelow(TemperatureRules.Celsius(5)).Time?.Hours ?? 0, 1)} h.",
                    "It is then through both stages in time.", new ProcessChange(faster), citations),
            ]) : default;
    }
}
