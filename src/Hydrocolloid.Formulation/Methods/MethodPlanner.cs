using Hydrocolloid.Formulation.Internal;
using static Hydrocolloid.Formulation.Phrases;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>Writes the steps of a method in the order of the kitchen, from the protocols of the catalogue.</summary>
internal sealed class MethodPlanner
{
    private readonly Formula _formula;
    private readonly List<MethodStep> _steps = [];
    private readonly List<string> _conflicts = [];
    private readonly Agent[] _agents;
    private readonly int _firstAgentPhase;

    public MethodPlanner(Formula formula)
    {
        _formula = formula;
        _agents = [.. formula.Lines.Where(l => l.IsContinuous && l.Ingredient.Profile is not null).Select(l => new Agent(l))];
        _firstAgentPhase = _agents.Length == 0 ? formula.Phases.Count : _agents.Min(a => a.Line.PhaseIndex);
    }

    public Method Plan()
    {
        CombineCarriers();
        AddBefore();
        if (_agents.Length > 0)
        {
            Hydrate();
        }

        JoinHeldBack();
        AddAfter();
        if (_agents.Length > 0)
        {
            Strain();
        }

        FoldPiecesIn();
        if (_agents.Length > 0)
        {
            Cast();
            Set();
            Serve();
        }

        return new Method(
            ValueList<MethodStep>.From(_steps), ValueList<string>.From(_conflicts), MethodCautions.For(_formula, HottestCelsius()));
    }

    private double HottestCelsius() => _agents.Where(a => !a.IsColdSoluble).Select(a => a.NeedsCelsius).DefaultIfEmpty(0).Max();

    private void CombineCarriers()
    {
        FormulaLine[] carriers = [.. _formula.Lines.Where(l => l.IsBase && IsCarrier(l))];
        if (carriers.Length > 0)
        {
            Step(StepAction.Combine, $"Put together cold: {Names(carriers)}.",
                _agents.Length > 0 ? "The hydrocolloids are dispersed in it, so it starts cold." : "The base comes first.", carriers,
                citations: [Citation.CommonPractice]);
        }
    }

    private bool IsCarrier(FormulaLine line) => line.IsContinuous && (_formula.Process.Carriers.IsEmpty || _formula.Process.Carriers.Contains(line.Label));

    private void AddBefore()
    {
        foreach (FormulaLine[] lines in PhaseLines(p => p <= _firstAgentPhase))
        {
            string keepBack = lines.FirstOrDefault(l => l == SeparatingSugar()) is { } sugar && DryBlended().Any()
                ? $" Keep back enough {InSentence(sugar)} for the dry blend." : "";
            Step(StepAction.Add, $"Add and dissolve: {Names(lines)}.{keepBack}", "It comes before the hydrocolloids in the formula.", lines,
                citations: [Citation.CommonPractice]);
        }
    }

    private void Hydrate()
    {
        Agent[] cold = [.. _agents.Where(a => a.IsColdSoluble)];
        Agent[] heated = [.. _agents.Where(a => !a.IsColdSoluble)];
        List<HeatStage> rising = HeatStage.Group(heated);
        // What must not be heated as far as a later stage goes is added as the mix cools.
        double hottest = rising.Count > 0 ? rising.Max(s => s.Celsius.Min!.Value) : double.NegativeInfinity;
        HeatStage[] falling = [.. rising.Where(s => s.LimitCelsius < hottest)];
        rising.RemoveAll(s => falling.Contains(s));
        Agent[] coldLater = [.. cold.Where(a => a.LimitCelsius < hottest)];

        foreach (Agent agent in cold.Where(a => !coldLater.Contains(a)))
        {
            Disperse(agent);
            HoldCold(agent);
        }

        foreach (Agent agent in rising.SelectMany(s => s.Agents))
        {
            Disperse(agent);
        }

        foreach (HeatStage stage in rising)
        {
            Heat(stage);
        }

        foreach (HeatStage stage in falling.OrderByDescending(s => s.LimitCelsius))
        {
            AddWhileCooling(stage);
        }

        foreach (Agent agent in coldLater)
        {
            CoolBelow(agent.LimitCelsius, agent.Hydration.NotAbove!, [agent]);
            Disperse(agent);
            HoldCold(agent);
        }
    }

    private void Disperse(Agent agent)
    {
        Dispersal dispersal = agent.Profile.Dispersal;
        if (agent.IsSoaked)
        {
            Soak(agent, dispersal);
            return;
        }

        FormulaLine? sugar = NeedsDryBlend(agent) ? SeparatingSugar() : null;
        if (sugar is not null && dispersal.SugarPartsPerPart is { } parts)
        {
            Step(StepAction.DryBlend, $"Blend the {agent.Name} dry with {parts.Value} times its weight of {InSentence(sugar)}, taken from the formula's own.",
                "The sugar keeps the grains apart, so that they wet one by one.", [agent.Line, sugar], citations: [parts.Citation]);
        }

        string shear = agent.Hydration.NeedsHighShear ? " with high shear" : " while whisking";
        Cited<TemperatureRange>? lumps = dispersal.LumpsAbove;
        string below = lumps?.Value.Celsius.Min is { } limit ? $" while it is below {Numbers.Significant(limit, 4)} °C" : "";
        Cited<string>? rule = dispersal.Medium.IsEmpty ? null : dispersal.Medium[0];
        Step(StepAction.Disperse, $"Disperse the {agent.Name} in the liquid{shear}{below}.",
            rule?.Value ?? "Grains that touch before they are wet make lumps.", [agent.Line],
            below.Length > 0 ? new NumberRange(null, lumps!.Value.Celsius.Min) : null,
            citations: Citations(rule?.Citation, lumps?.Citation),
            notes: [.. dispersal.Shear, .. dispersal.Medium.Skip(1), .. dispersal.Slurry]);
    }

    private void Soak(Agent agent, Dispersal dispersal)
    {
        Cited<NumberRange> parts = dispersal.SoakWaterPartsPerPart!;
        NumberRange? below = dispersal.LumpsAbove?.Value.Celsius.Min is { } limit ? new NumberRange(null, limit) : null;
        string cold = below is null ? "cold" : $"cold (not above {Numbers.Significant(below.Value.Max!.Value, 4)} °C)";
        Step(StepAction.Soak, $"Soak the {agent.Name} in {cold} liquid of the formula, {parts.Value} times its weight, until swollen.",
            dispersal.Medium.IsEmpty ? "Swollen grains dissolve without lumps." : dispersal.Medium[0].Value, [agent.Line], below,
            citations: Citations(dispersal.Medium.IsEmpty ? null : dispersal.Medium[0].Citation, parts.Citation, dispersal.LumpsAbove?.Citation),
            notes: [.. new[] { parts.Note }.Where(n => n is not null).Select(n => new Cited<string>(n!, parts.Citation)),
                new Cited<string>("The soaking liquid is part of the formula: water from outside would thin the gel.", Citation.CommonPractice), .. dispersal.Slurry]);
    }

    private void HoldCold(Agent agent)
    {
        Cited<DurationRange> hold = agent.Hydration.Hold;
        Cited<TemperatureRange> window = agent.Hydration.Window;
        Step(StepAction.Hold, $"Let the {agent.Name} hydrate for {hold.Value} at {window.Value}; it needs no heat.", Why(window, "It dissolves cold."), [agent.Line],
            window.Value.Celsius, hold.Value.Seconds, Citations(window.Citation, hold.Citation),
            [.. Agent.Practice(hold, "for the time"), .. agent.Hydration.Shear, .. agent.Hydration.HoldingLimit]);
    }

    private void Heat(HeatStage stage)
    {
        FormulaLine[] lines = [.. stage.Agents.Select(a => a.Line)];
        string agents = And(stage.Agents.Select(a => a.Name));
        Step(StepAction.Heat, $"Heat to {new TemperatureRange(stage.Celsius)} so that the {agents} dissolve{(lines.Length == 1 ? "s" : "")}.",
            string.Join(" ", stage.Agents.Select(a => Why(a.Hydration.Window, $"The {a.Name} needs it."))), lines, stage.Celsius,
            citations: [.. stage.Agents.Select(a => a.Hydration.Window.Citation)],
            notes: [.. stage.Agents.SelectMany(a => Agent.Practice(a.Hydration.Window, "for the temperature"))]);
        Step(StepAction.Hold, $"Hold there for {new DurationRange(stage.HoldSeconds)}.",
            string.Join(" ", stage.Agents.Select(a => Why(a.Hydration.Hold, $"The {a.Name} needs it."))), lines, stage.Celsius, stage.HoldSeconds,
            [.. stage.Agents.Select(a => a.Hydration.Hold.Citation)],
            [.. stage.Agents.SelectMany(a => Agent.Practice(a.Hydration.Hold, "for the hold").Concat(a.Hydration.HoldingLimit))]);
        Cited<string>[] shear = [.. stage.Agents.SelectMany(a => a.Hydration.Shear)];
        if (shear.Length > 0)
        {
            Step(StepAction.Shear, shear[0].Value, "Shear disperses what is not yet wet; more than that draws in air and costs strength.", lines,
                citations: [shear[0].Citation], notes: shear.Skip(1));
        }
    }

    private void AddWhileCooling(HeatStage stage)
    {
        Agent[] agents = [.. stage.Agents];
        Cited<TemperatureRange> limit = agents.OrderBy(a => a.LimitCelsius).First().Hydration.NotAbove!;
        foreach (Agent agent in agents.Where(a => a.IsSoaked))
        {
            Disperse(agent);
        }

        CoolBelow(stage.LimitCelsius, limit, agents);
        foreach (Agent agent in agents.Where(a => !a.IsSoaked))
        {
            Disperse(agent);
        }

        Step(StepAction.Hold, $"Stir in and keep at {new TemperatureRange(stage.Celsius)} for {new DurationRange(stage.HoldSeconds)} until dissolved.",
            string.Join(" ", agents.Select(a => Why(a.Hydration.Window, $"The {a.Name} needs it."))), [.. agents.Select(a => a.Line)],
            stage.Celsius, stage.HoldSeconds,
            [.. agents.SelectMany(a => new[] { a.Hydration.Window.Citation, a.Hydration.Hold.Citation })],
            [.. agents.SelectMany(a => a.Hydration.Shear)]);
    }

    private void CoolBelow(double celsius, Cited<TemperatureRange> limit, Agent[] agents)
    {
        Agent? tooEarly = _agents.Where(a => !agents.Contains(a)).OrderByDescending(a => a.SetsBelowCelsius).FirstOrDefault(a => a.SetsBelowCelsius >= celsius);
        if (tooEarly is not null)
        {
            _conflicts.Add($"The {And(agents.Select(a => a.Name))} must not be heated above {Numbers.Significant(celsius, 4)} °C, but the {tooEarly.Name} "
                + $"may begin to set at {Numbers.Significant(tooEarly.SetsBelowCelsius, 4)} °C: no temperature suits both. Set them in two layers, or choose another agent.");
        }

        Step(StepAction.Cool, $"Let cool to {Numbers.Significant(celsius, 4)} °C or a little below before the {And(agents.Select(a => a.Name))} go{(agents.Length == 1 ? "es" : "")} in.",
            Why(limit, "More heat would harm it."), [.. agents.Select(a => a.Line)], new NumberRange(null, celsius), citations: [limit.Citation]);
    }

    private void JoinHeldBack()
    {
        FormulaLine[] rest = [.. _formula.Lines.Where(l => l.IsBase && l.IsContinuous && !IsCarrier(l))];
        if (rest.Length > 0)
        {
            double sets = SetsBelow();
            string warm = sets > 0 ? $", warmed so that the mix stays above {Numbers.Significant(sets, 4)} °C" : "";
            Step(StepAction.Join, $"Stir in the rest of the base{warm}: {Names(rest)}.",
                sets > 0 ? "Cold liquid sets the sol in threads and grains." : "It was kept back from the heat.", rest, sets > 0 ? new NumberRange(sets, null) : null,
                citations: SettingCitations());
        }
    }

    private void AddAfter()
    {
        foreach (FormulaLine[] lines in PhaseLines(p => p > _firstAgentPhase))
        {
            Step(StepAction.Add, $"Stir in: {Names(lines)}.", "It comes after the hydrocolloids in the formula.", lines, citations: [Citation.CommonPractice]);
        }
    }

    private void Strain() => Step(StepAction.Strain, "Strain.", "It takes out what did not dissolve, and foam.", [], citations: [Citation.CommonPractice]);

    private void FoldPiecesIn()
    {
        FormulaLine[] pieces = [.. _formula.Lines.Where(l => !l.IsContinuous)];
        if (pieces.Length == 0)
        {
            return;
        }

        double sets = SetsBelow();
        bool warm = sets > 0 && _agents.Length > 0;
        Step(StepAction.FoldIn, warm ? $"Warm the pieces and fold them in; the mix must stay above {Numbers.Significant(sets, 4)} °C: {Names(pieces)}." : $"Fold in the pieces: {Names(pieces)}.",
            warm ? "Cold pieces set the sol on their surface before it is cast." : "They do not take part in the gel.", pieces, warm ? new NumberRange(sets, null) : null,
            citations: SettingCitations());
    }

    private void Cast()
    {
        double sets = SetsBelow();
        if (!(sets > 0))
        {
            Step(StepAction.Cast, "Fill into moulds or portion.", "Temperature does not decide when it sets.", [], citations: [Citation.CommonPractice]);
            return;
        }

        string planned = _formula.Process.CastAtCelsius is { } at ? $" Planned: {Numbers.Significant(at, 4)} °C." : "";
        if (_formula.Process.CastAtCelsius <= sets)
        {
            _conflicts.Add($"Casting is planned at {Numbers.Significant(_formula.Process.CastAtCelsius!.Value, 4)} °C, but the mix may begin to set at {Numbers.Significant(sets, 4)} °C: cast it hotter.");
        }

        string mould = _formula.Process.Mould is { } plan ? $" into the {plan}" : "";
        Step(StepAction.Cast, $"Cast{mould} above {Numbers.Significant(sets, 4)} °C, at once.{planned}", "Below that it begins to set and is cast in lumps and layers.", [],
            new NumberRange(sets, null), citations: SettingCitations());
    }

    private void Set()
    {
        foreach (Agent agent in _agents)
        {
            SettingBehaviour setting = agent.Profile.Setting;
            SettingTrigger? trigger = agent.Trigger;
            string time = setting.TimeToStable is { } stable ? $" Its strength is stable after {stable.Value}." : "";
            string ion = trigger?.Ion is { } needed ? $" It needs {needed}." : "";
            string what = agent.SetsOnCooling ? $"The {agent.Name} sets at {setting.Window!.Value}." : trigger?.Cause switch
            {
                SettingCause.None => $"The {agent.Name} thickens; it does not set alone.",
                SettingCause.Calcium => $"The {agent.Name} sets as soon as calcium reaches it, at any temperature.",
                SettingCause.Heating => $"The {agent.Name} sets on heating{(setting.Window is { } w ? $", at {w.Value}" : "")}.",
                _ => $"The {agent.Name} sets.",
            };
            Step(StepAction.Set, what + ion + time, trigger?.Description.Value ?? what, [agent.Line], setting.Window?.Value.Celsius, setting.TimeToStable?.Value.Seconds,
                Citations(setting.Window?.Citation, trigger?.Description.Citation, setting.TimeToStable?.Citation),
                [.. setting.Window is null ? [] : Agent.Practice(setting.Window, "for setting"), .. setting.Dependence]);
        }
    }

    private void Serve()
    {
        foreach (Agent agent in _agents.Where(a => a.Profile.Melting.Reversibility is not null || a.Profile.Melting.Window is not null))
        {
            MeltingBehaviour melting = agent.Profile.Melting;
            string reversible = melting.Reversibility switch
            {
                Reversibility.Reversible => " It sets again on cooling.",
                Reversibility.Conditional => " Whether it sets again depends on ions, grade and dose.",
                Reversibility.Irreversible => " It does not set again.",
                _ => "",
            };
            string what = agent.Trigger?.Cause == SettingCause.Heating && melting.Reversibility == Reversibility.Reversible
                ? $"The {agent.Name} gel turns liquid again on cooling: serve it hot."
                : melting.Window is { } window ? $"The {agent.Name} gel melts at {window.Value}: serve below.{reversible}"
                : melting.Reversibility == Reversibility.Irreversible ? $"The {agent.Name} gel does not melt: it can be served hot."
                : $"No melting temperature is known for the {agent.Name} gel.{reversible}";
            Step(StepAction.Serve, what, melting.ReversibilityFact?.Value ?? "A gel served above its melting temperature runs.", [agent.Line], melting.Window?.Value.Celsius,
                citations: Citations(melting.Window?.Citation, melting.ReversibilityFact?.Citation),
                notes: [.. melting.Window is null ? [] : Agent.Practice(melting.Window, "for melting"), .. melting.Dependence]);
        }
    }

    /// <summary>The highest temperature at which anything in the mix may begin to set; °C.</summary>
    private double SetsBelow() => _agents.Select(a => a.SetsBelowCelsius).DefaultIfEmpty(double.NegativeInfinity).Max();

    private Citation[] SettingCitations() => [.. _agents.Where(a => a.SetsOnCooling).Select(a => a.Profile.Setting.Window!.Citation)];

    private IEnumerable<FormulaLine[]> PhaseLines(Func<int, bool> phases) => _formula.Lines
        .Where(l => !l.IsBase && l.IsContinuous && l.Ingredient.Profile is null && phases(l.PhaseIndex))
        .GroupBy(l => l.PhaseIndex).Select(g => g.ToArray());

    /// <summary>Agents that the catalogue's first rule, or their lumping, wants separated by dry sugar.</summary>
    private IEnumerable<Agent> DryBlended() => _agents.Where(NeedsDryBlend);

    private static bool NeedsDryBlend(Agent agent) => !agent.IsSoaked && agent.Profile.Dispersal is { SugarPartsPerPart: not null } dispersal
        && (dispersal.LumpsAbove is null || dispersal.LumpsAbove.Value.Celsius.Min <= 40);

    /// <summary>A dry sugar of the formula, before or in the phase of the agents, to separate their grains with.</summary>
    private FormulaLine? SeparatingSugar() => _formula.Lines.FirstOrDefault(l => !l.IsBase && l.PhaseIndex <= _firstAgentPhase && l.IsContinuous
        && l.Ingredient.Category == "sweetener" && l.Ingredient.WaterPercent < 2);

    private void Step(
        StepAction action,
        string instruction,
        string reason,
        FormulaLine[] lines,
        NumberRange? celsius = null,
        NumberRange? seconds = null,
        Citation[]? citations = null,
        IEnumerable<Cited<string>>? notes = null) => _steps.Add(new MethodStep(action, instruction, reason)
        {
            Lines = ValueList<string>.From(lines.Select(l => l.Label)),
            Temperature = celsius is { } c ? new TemperatureRange(c) : null,
            Duration = seconds is { } s ? new DurationRange(s) : null,
            Citations = ValueList<Citation>.From((citations ?? []).Distinct()),
            Notes = ValueList<Cited<string>>.From((notes ?? []).Distinct()),
        });

    private static Citation[] Citations(params Citation?[] citations) => [.. citations.Where(c => c is not null).Select(c => c!)];

    private static string Why<T>(Cited<T> figure, string otherwise)
        where T : notnull
        => figure.Note is { Length: > 0 } note ? char.ToUpperInvariant(note[0]) + note.Substring(1) + "." : otherwise;
}
