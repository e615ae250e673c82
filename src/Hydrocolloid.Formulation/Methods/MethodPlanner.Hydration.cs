using Hydrocolloid.Formulation.Compatibility.Rules;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using static Hydrocolloid.Formulation.Phrases;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>Disperses, heats and holds the hydrocolloids.</summary>
internal sealed partial class MethodPlanner
{
    /// <summary>A hydrocolloid that is dispersed in a hot part of the liquid and hydrated cold; only where nothing else has to be heated.</summary>
    private Agent? HotDispersed => _agents.All(a => a.IsColdSoluble) && _sorted.Carriers.Length > 0 ? _agents.FirstOrDefault(a => a.By("hot-dispersal") is not null) : null;

    private static bool NeedsDryBlend(Agent agent) => !agent.IsSoaked && agent.Profile.Dispersal is { SugarPartsPerPart: not null } dispersal
        && (dispersal.LumpsAbove is null || dispersal.LumpsAbove.Value.Celsius.Min <= 40) && agent.By("hot-dispersal") is null;

    private void SoakFirst()
    {
        foreach (Agent agent in _agents.Where(a => a.IsSoaked))
        {
            Dispersal dispersal = agent.Profile.Dispersal;
            Cited<NumberRange> parts = dispersal.SoakWaterPartsPerPart!;
            double needed = _formula.Proportions.MassOf(agent.Line) * parts.Value.Min.GetValueOrDefault(1);
            // The most watery liquid of the base that is neither spirit nor raw protease swells it best.
            FormulaLine? liquid = _sorted.Carriers.Concat(_sorted.Rest).Where(l => l.Ingredient.Protease?.Value.IsActive != true && !(l.Ingredient.Composition?.Value.EthanolPercent > 0))
                .OrderByDescending(l => l.Ingredient.WaterPercent ?? 0).FirstOrDefault(l => _left[l.Index] >= needed);
            NumberRange? below = dispersal.LumpsAbove?.Value.Celsius.Min is { } limit ? new NumberRange(null, limit) : null;
            if (liquid is null)
            {
                Conflict(ConflictKind.TooLittleLiquid, $"The {agent.Name} needs {parts.Value} times its weight of cold liquid to swell in, and no liquid of the base is so much and free of alcohol.",
                    "Give the base more water, or less of the hydrocolloid.", [agent.Line], parts.Citation);
            }

            if (below?.Max < _formula.Process.SoakAtCelsius)
            {
                Conflict(ConflictKind.Limit, $"Soaking is planned at {C(_formula.Process.SoakAtCelsius.Value)}: above {C(below.Value.Max!.Value)} the {agent.Name} dissolves into the soaking liquid, and what is poured off is lost.",
                    "Soak it colder, or weigh the soaking liquid into the formula.", [agent.Line], dispersal.LumpsAbove!.Citation);
            }

            string cold = below is null ? "cold" : $"cold (not above {C(below.Value.Max!.Value)})";
            Step(StepAction.Soak, $"Soak the {agent.Name} in {cold} {(liquid is null ? "liquid of the formula" : InSentence(liquid))}, {parts.Value} times its weight, until swollen.",
                dispersal.Medium.IsEmpty ? "Swollen grains dissolve without lumps." : dispersal.Medium[0].Value, "No dry core when a grain or leaf is pressed; leaves are limp.", [agent.Line],
                [.. new[] { Take(agent.Line) }, .. liquid is null ? [] : new[] { Take(liquid, needed) }], below, waits: true, ahead: "covered in the cold",
                citations: [dispersal.Medium.IsEmpty ? null : dispersal.Medium[0].Citation, parts.Citation, dispersal.LumpsAbove?.Citation],
                notes: [parts.Note is { } note ? new Cited<string>(note, parts.Citation) : null,
                    new Cited<string>("The soaking liquid is part of the formula: water from outside would thin the gel.", Citation.CommonPractice), .. dispersal.Slurry]);
        }
    }

    private void Hydrate()
    {
        Agent[] cold = [.. _agents.Where(a => a.IsColdSoluble)];
        List<HeatStage> rising = HeatStage.Group(_agents.Where(a => !a.IsColdSoluble));
        // What must not be heated as far as a later stage goes is added as the mix cools.
        double hottest = rising.Count > 0 ? rising.Max(s => s.Celsius.Min!.Value) : double.NegativeInfinity;
        HeatStage[] falling = [.. rising.Where(s => s.LimitCelsius < hottest)];
        rising.RemoveAll(s => falling.Contains(s));
        Agent[] coldLater = [.. cold.Where(a => a.GoesInBelowCelsius < hottest)];

        foreach (Agent agent in cold.Where(a => !coldLater.Contains(a)))
        {
            Disperse(agent);
            HoldCold(agent);
        }

        foreach (Agent agent in rising.SelectMany(s => s.Agents).Where(a => !a.IsSoaked))
        {
            Disperse(agent);
        }

        foreach (HeatStage stage in rising)
        {
            Heat(stage, stage == rising[rising.Count - 1] && falling.Length == 0 && coldLater.Length == 0);
        }

        foreach (HeatStage stage in falling.OrderByDescending(s => s.LimitCelsius))
        {
            AddWhileCooling(stage);
        }

        foreach (Agent agent in coldLater.OrderByDescending(a => a.GoesInBelowCelsius))
        {
            CoolBelow(agent.GoesInBelowCelsius, agent.SetsOnHeating ? agent.Hydration.Window : agent.Hydration.NotAbove!, [agent]);
            Disperse(agent);
            HoldCold(agent);
        }
    }

    private void Disperse(Agent agent)
    {
        _dissolving.Add(agent);
        if (agent == HotDispersed)
        {
            DisperseHot(agent);
            return;
        }

        Dispersal dispersal = agent.Profile.Dispersal;
        FormulaLine? sugar = NeedsDryBlend(agent) ? _sorted.SeparatingSugar() : null;
        StepAmount[] amounts = Take([agent.Line]);
        bool blended = false;
        if (sugar is not null && _left[sugar.Index] > 0 && dispersal.SugarPartsPerPart is { } parts)
        {
            double wanted = parts.Value.Min.GetValueOrDefault(parts.Value.Max ?? 1) * _formula.Proportions.MassOf(agent.Line);
            StepAmount taken = Take(sugar, wanted);
            string short_ = taken.PercentOfBase < wanted * 100 * 0.999 ? " It is all that the formula has left, less than the source asks for: sprinkle slowly." : "";
            amounts = [.. amounts, taken];
            Step(StepAction.DryBlend, $"Blend the {agent.Name} dry with {Numbers.Significant(taken.PercentOfBase / 100 / _formula.Proportions.MassOf(agent.Line), 3)} times its weight of {InSentence(sugar)}, taken from the formula's own.{short_}",
                "The sugar keeps the grains apart, so that they wet one by one.", "One even powder, without streaks.", [], amounts, ahead: "dry and closed", citations: [parts.Citation],
                notes: [new Cited<string>($"Published: {parts.Value} parts of sugar to one.", parts.Citation)]);
            amounts = [];
            blended = true;
        }

        Cited<TemperatureRange>? lumps = dispersal.LumpsAbove;
        double? limit = lumps?.Value.Celsius.Min;
        bool isHot = _celsius > Math.Max(limit ?? double.PositiveInfinity, _kitchen.RoomCelsius);
        if (isHot && !blended)
        {
            Conflict(ConflictKind.Lumps, $"The {agent.Name} goes in when the mix is at about {C(_celsius)}, and lumps above {C(limit!.Value)}.",
                dispersal.SugarPartsPerPart is { } ratio ? $"Blend it dry with {ratio.Value} parts of a sugar of the formula, or hydrate it in a cold part of the base and join that."
                    : "Hydrate it in a cold part of the base and join that.", [agent.Line], lumps!.Citation);
        }

        Equipment shearer = agent.Hydration.NeedsHighShear ? Shearer() : Equipment.None;
        if (agent.Hydration.NeedsHighShear && shearer == Equipment.None)
        {
            Conflict(ConflictKind.Equipment, $"The {agent.Name} needs high shear to disperse, and the kitchen has nothing that gives it.",
                dispersal.SugarPartsPerPart is null ? "Bring a hand blender." : "Bring a hand blender, or blend it dry with sugar and whisk long.", [agent.Line], agent.Hydration.Window.Citation);
        }

        string shear = agent.Hydration.NeedsHighShear ? $" with {Named(shearer)}" : ", whisking,";
        string below = limit is { } l && !isHot ? $" while it is below {C(l)}" : "";
        Cited<string>? rule = dispersal.Medium.IsEmpty ? null : dispersal.Medium[0];
        Step(StepAction.Disperse, $"{(blended ? "Sprinkle the blend" : $"Disperse the {agent.Name}")} into the liquid{shear}{below}.",
            rule?.Value ?? "Grains that touch before they are wet make lumps.", "No lumps on the whisk or the wall; a drop between two fingers is smooth.", [agent.Line], amounts,
            below.Length > 0 ? new NumberRange(null, limit) : null, with: shearer, citations: [rule?.Citation, lumps?.Citation],
            notes: [.. dispersal.Medium.Skip(1), .. dispersal.Slurry, .. dispersal.Shear]);
    }

    /// <summary>Methylcellulose: whisked into a hot part of the liquid, where it cannot dissolve and so cannot lump, then the rest cold.</summary>
    private void DisperseHot(Agent agent)
    {
        Technique technique = agent.By("hot-dispersal")!;
        TechniqueFigure celsius = technique.Figure("liquid-celsius"), part = technique.Figure("part-of-liquid-percent");
        double share = part.Range.Value.Min!.Value / 100;
        StepAmount[] hot = [.. _sorted.Carriers.Select(l => Take(l, share * _left[l.Index]))];
        NumberRange range = celsius.Range.Value;
        Step(StepAction.Heat, $"Heat {Numbers.Significant(share * 100, 3)} % of the liquid ({Names(_sorted.Carriers)}) to {new TemperatureRange(range)}; keep the rest cold.",
            Why(celsius.Range, "It does not dissolve in hot liquid."), "The thermometer.", [], hot, range, with: Heater(_sorted.Carriers), citations: [celsius.Range.Citation, part.Range.Citation]);
        Equipment shearer = Shearer();
        Step(StepAction.Disperse, $"Whisk the {agent.Name} into the hot liquid with {Named(shearer)}.", agent.Profile.Dispersal.Medium[0].Value, "Milky, without lumps.", [],
            Take([agent.Line]), range, with: shearer, citations: [agent.Profile.Dispersal.Medium[0].Citation], notes: [technique.Fact("shear"), .. agent.Profile.Dispersal.Slurry]);
        Step(StepAction.Add, $"Stir in the rest of the liquid, ice-cold{(_sorted.Before.Count + _sorted.Sequestrants.Length > 0 ? $", with {Names(_sorted.Sequestrants.Concat(_sorted.Before))} dissolved in it," : "")} and chill to {C(agent.Window.Max!.Value)} or less.", "It dissolves only as it cools.", "It thickens and clears.", [], Take(_sorted.Medium),
            new NumberRange(null, agent.Window.Max), citations: [part.Range.Citation, agent.Hydration.Window.Citation]);
        _celsius = agent.Window.Max!.Value;
    }

    private void HoldCold(Agent agent)
    {
        Cited<DurationRange> hold = agent.Hydration.Hold;
        Cited<TemperatureRange> window = agent.Hydration.Window;
        if (agent.Window.Max < _celsius)
        {
            Step(StepAction.Cool, $"Chill to {C(agent.Window.Max.Value)} or less.", $"The {agent.Name} dissolves no warmer.", "The thermometer.", [agent.Line], null, new NumberRange(null, agent.Window.Max), waits: true, citations: [window.Citation]);
            _celsius = agent.Window.Max.Value;
        }

        Step(StepAction.Hold, $"Let the {agent.Name} hydrate for {hold.Value} at {window.Value}; it needs no heat.", Why(window, "It dissolves cold."), "It has thickened and shows no grains.", [agent.Line], null,
            Capped(agent.Window), hold.Value.Seconds, waits: true, ahead: "covered in the cold", citations: [window.Citation, hold.Citation],
            notes: [.. Agent.Practice(hold, "for the time"), .. agent.Hydration.Shear, .. agent.Hydration.HoldingLimit]);
    }

    private void Heat(HeatStage stage, bool isLast)
    {
        FormulaLine[] lines = [.. stage.Agents.Select(a => a.Line)];
        string agents = And(stage.Agents.Select(a => a.Name));
        NumberRange celsius = stage.Celsius;
        // The last heating of all goes at once as far as the mix must stay until it is cast, if that lies in the window.
        _dissolving.AddRange(stage.Agents.Where(a => a.IsSoaked));
        celsius = Capped(celsius);
        if (isLast && KeepAbove() is { } keep && keep > celsius.Min && keep <= celsius.Max)
        {
            celsius = new NumberRange(keep, celsius.Max);
        }

        var notes = stage.Agents.SelectMany(a => Agent.Practice(a.Hydration.Window, "for the temperature")).ToList();
        Equipment with = Boiled(stage, ref celsius, notes);
        celsius = Planned(stage, celsius, lines);
        if (celsius.Max - celsius.Min < 2 * _kitchen.ThermometerKelvins)
        {
            notes.Add(new Cited<string>($"The thermometer may be off by {Numbers.Significant(_kitchen.ThermometerKelvins, 2)} K, more than this window allows: go by the bubbles.", Citation.CommonPractice));
        }

        _celsius = celsius.Min!.Value;
        if (stage.Agents.Any(a => a.IsSoaked))
        {
            Step(StepAction.Add, $"Add the swollen {And(stage.Agents.Where(a => a.IsSoaked).Select(a => a.Name))}.", "It melts as the liquid warms.", "It lies in the liquid, not on the wall.", [.. stage.Agents.Where(a => a.IsSoaked).Select(a => a.Line)]);
        }

        bool boils = celsius.Min >= Boil() - 8;
        Step(StepAction.Heat, $"Heat to {new TemperatureRange(celsius)}{(boils ? ", a simmer," : "")} so that the {agents} dissolve{(lines.Length == 1 ? "s" : "")}{(boils ? ", whisking now and then" : "")}.",
            string.Join(" ", stage.Agents.Select(a => Why(a.Hydration.Window, $"The {a.Name} needs it."))), boils ? "Bubbles rise all over, gently." : "The thermometer, in the middle after stirring.", lines, null, celsius,
            with: with, citations: stage.Agents.Select(a => a.Hydration.Window.Citation), notes: notes);
        Hold(stage, celsius, lines, with);
        FinalShear(stage, lines);
    }

    private void Hold(HeatStage stage, NumberRange celsius, FormulaLine[] lines, Equipment with)
    {
        NumberRange hold = stage.HoldSeconds;
        var reasons = stage.Agents.Select(a => Why(a.Hydration.Hold, $"The {a.Name} needs it.")).ToList();
        var citations = stage.Agents.Select(a => (Citation?)a.Hydration.Hold.Citation).ToList();
        MixContents medium = new(_formula, _inPot);
        // What needs more heat than this stage gives is not dissolved yet, so the hold does not harm it.
        foreach (Agent agent in _agents.Where(a => a.NeedsCelsius <= celsius.Min))
        {
            foreach (AgentLimit limit in agent.Profile.Limits.Where(l => l is { Stage: LimitStage.Heated, StoodMinutes: not null }))
            {
                if (LineSorting.Measure(limit.Quantity, medium) is not { } value || limit.Range.Value.Contains(value))
                {
                    continue;
                }

                double stood = limit.StoodMinutes!.Value * 60;
                citations.Add(limit.Range.Citation);
                reasons.Add($"Not over {Numbers.Significant(limit.StoodMinutes.Value, 3)} min: {limit.Consequence}");
                if (hold.Min > stood)
                {
                    Conflict(ConflictKind.Limit, $"The hold of {new DurationRange(hold)} is longer than the {Numbers.Significant(limit.StoodMinutes.Value, 3)} min that the {agent.Name} stands in this mix. {limit.Consequence}",
                        "Hydrate it in a part of the base that is nearer neutral, and join the rest afterwards.", [agent.Line], limit.Range.Citation);
                }
                else
                {
                    hold = new NumberRange(hold.Min, hold.Max < stood ? hold.Max : stood);
                }
            }
        }

        if (_formula.Process.HydrateSeconds is { } planned)
        {
            if (!hold.Contains(planned))
            {
                Conflict(ConflictKind.Limit, $"A hold of {new DurationRange(NumberRange.Single(planned))} is planned, but the protocol asks for {new DurationRange(hold)}.", "Plan it within that, or leave the time to the protocol.", lines, [.. citations]);
            }
            else
            {
                hold = NumberRange.Single(planned);
            }
        }

        Step(StepAction.Hold, $"Hold there for {new DurationRange(hold)}, whisking now and then.", string.Join(" ", reasons), "The clock, from the moment it is there; no grains when a spoon of it is held to the light.", lines, null, celsius, hold,
            with: with, citations: citations, notes: [.. stage.Agents.SelectMany(a => Agent.Practice(a.Hydration.Hold, "for the hold").Concat(a.Hydration.HoldingLimit))]);
    }

    private void FinalShear(HeatStage stage, FormulaLine[] lines)
    {
        Cited<string>[] shear = [.. stage.Agents.SelectMany(a => a.Hydration.Shear)];
        if (shear.Length == 0)
        {
            return;
        }

        Cited<string>? burst = stage.Agents.Select(a => a.By("final-shear")?.Fact("shear")).FirstOrDefault(f => f is not null);
        Equipment shearer = burst is null ? Equipment.None : Shearer();
        Step(StepAction.Shear, burst is null ? shear[0].Value : $"{burst.Value} Here: {Named(shearer)}.", "Shear disperses what is not yet wet; more than that draws in air and costs strength.",
            "Smooth, and no foam on top.", lines, null, with: shearer, citations: [burst?.Citation ?? shear[0].Citation], notes: shear);
    }

    /// <summary>What the stage is heated with: the pan if it boils hot enough, else a pressure cooker, else a published lower window with the longest hold; else a conflict.</summary>
    private Equipment Boiled(HeatStage stage, ref NumberRange celsius, List<Cited<string>> notes)
    {
        FormulaLine[] lines = [.. stage.Agents.Select(a => a.Line)];
        Equipment heater = Heater(lines);
        SimmerAnswer answer = _tempering.Reaches(celsius.Min!.Value, _inPot);
        double boils = answer.BoilsAt.Temperature.DegreesCelsius;
        if (answer.IsEnough)
        {
            celsius = new NumberRange(celsius.Min, celsius.Max < boils ? celsius.Max : Math.Max(celsius.Min.Value, Math.Round(boils)));
            return heater;
        }

        double gauge = answer.GaugeNeeded!.Value.Kilopascals;
        string kilopascals = $"{Numbers.Significant(gauge, 2)} kPa over the air";
        if (_kitchen.Has(Equipment.PressureCooker) && gauge <= _kitchen.CookerGauge.Kilopascals)
        {
            notes.Add(new Cited<string>($"In the open it boils at {Numbers.Fixed(boils, 1)} °C, too low; the cooker must hold {kilopascals}, no more: let the pressure out slowly.", Citation.CommonPractice));
            return Equipment.PressureCooker;
        }

        Agent[] short_ = [.. stage.Agents.Where(a => a.NeedsCelsius > boils)];
        Cited<TemperatureRange>?[] lower = [.. short_.Select(a => a.Hydration.Window.Alternatives.FirstOrDefault(w => w.Value.Celsius.Min <= boils))];
        if (lower.All(w => w is not null))
        {
            celsius = new NumberRange(Math.Min(boils, stage.Agents.Except(short_).Select(a => a.NeedsCelsius).Concat(lower.Select(w => w!.Value.Celsius.Min!.Value)).Max()), Math.Round(boils, 1));
            notes.AddRange(lower.Select(w => new Cited<string>($"It boils at {Numbers.Fixed(boils, 1)} °C here; this source finds {w!.Value} enough. Hold to the end of the time.", w.Citation)));
            return heater;
        }

        celsius = new NumberRange(Math.Floor(boils * 10) / 10, null);
        Conflict(ConflictKind.NotHotEnough, $"The {And(short_.Select(a => a.Name))} {Does(short_, "need", "needs")} {C(short_.Max(a => a.NeedsCelsius))}, but here the mix boils at {Numbers.Fixed(boils, 1)} °C.",
            $"Use a pressure cooker that holds {kilopascals}, carry it in a part of the base without alcohol, or choose another hydrocolloid.", lines, [.. short_.Select(a => a.Hydration.Window.Citation)]);
        return heater;
    }

    /// <summary>The temperature that the formula plans, if the protocols allow it.</summary>
    private NumberRange Planned(HeatStage stage, NumberRange celsius, FormulaLine[] lines)
    {
        if (_formula.Process.HydrateAtCelsius is not { } planned)
        {
            return celsius;
        }

        if (planned >= celsius.Min && planned <= Math.Min(stage.LimitCelsius, Math.Ceiling(Math.Max(celsius.Min.Value, Boil()))))
        {
            return NumberRange.Single(planned);
        }

        Conflict(ConflictKind.Limit, $"It is planned to hydrate at {C(planned)}, but the {And(stage.Agents.Select(a => a.Name))} {Does(stage.Agents, "ask", "asks")} for {new TemperatureRange(celsius)}.",
            "Plan it within that, or leave the temperature to the protocol.", lines, [.. stage.Agents.Select(a => a.Hydration.Window.Citation)]);
        return celsius;
    }

    private void AddWhileCooling(HeatStage stage)
    {
        Agent[] agents = [.. stage.Agents];
        Cited<TemperatureRange> limit = agents.OrderBy(a => a.LimitCelsius).First().Hydration.NotAbove!;
        CoolBelow(stage.LimitCelsius, limit, agents);
        foreach (Agent agent in agents.Where(a => !a.IsSoaked))
        {
            Disperse(agent);
        }

        double keep = Math.Min(stage.LimitCelsius, Math.Max(stage.Celsius.Min!.Value, KeepAbove() ?? 0));
        var range = new NumberRange(keep, stage.LimitCelsius);
        _celsius = keep;
        Step(StepAction.Hold, $"Stir in the {And(agents.Select(a => a.Name))} and keep at {new TemperatureRange(range)} for {new DurationRange(stage.HoldSeconds)} until dissolved.",
            string.Join(" ", agents.Select(a => Why(a.Hydration.Window, $"The {a.Name} needs it."))), "No grains when a spoon of it is held to the light.", agents.Select(a => a.Line), null, range, stage.HoldSeconds,
            citations: agents.SelectMany(a => new[] { a.Hydration.Window.Citation, a.Hydration.Hold.Citation }), notes: [.. agents.SelectMany(a => a.Hydration.Shear)]);
    }

    private void CoolBelow(double celsius, Cited<TemperatureRange> limit, Agent[] agents)
    {
        string names = And(agents.Select(a => a.Name));
        Agent? tooEarly = _agents.Where(a => !agents.Contains(a)).OrderByDescending(a => a.SetsBelowCelsius).FirstOrDefault(a => a.SetsBelowCelsius >= celsius);
        if (tooEarly is not null)
        {
            double warm = tooEarly.SetsBelowCelsius + _kitchen.MarginKelvins;
            bool canJoin = agents.All(a => a.SetsOnHeating && a.Profile.Setting.Window!.Value.Celsius.Min > warm);
            Conflict(ConflictKind.Order, $"The {names} {(agents[0].SetsOnHeating ? "dissolves at no more than" : "must not be heated above")} {C(celsius)}, but the {tooEarly.Name} may begin to set at {C(tooEarly.SetsBelowCelsius)}: no temperature suits both.",
                canJoin ? $"Hydrate the {names} in a cold part of the base, warm that to {C(warm)} and join the hot sol to it."
                    : "Set them in two layers, or choose another hydrocolloid.", agents.Append(tooEarly).Select(a => a.Line), limit.Citation, tooEarly.Profile.Setting.Window!.Citation);
        }
        else if (SetsBelowOf(agents) + (2 * _kitchen.ThermometerKelvins) > celsius)
        {
            Conflict(ConflictKind.Instrument, $"Between {C(SetsBelowOf(agents))}, where the mix may set, and {C(celsius)}, the most that the {names} {Does(agents, "stand", "stands")}, a thermometer that may be off by {Numbers.Significant(_kitchen.ThermometerKelvins, 2)} K cannot hit.",
                "Use a finer thermometer.", agents.Select(a => a.Line), limit.Citation);
        }

        Step(StepAction.Cool, $"Let cool to {C(celsius)} or a little below before the {names} {Does(agents, "go", "goes")} in.",
            Why(limit, "More heat would harm it."), "The thermometer, in the middle after stirring.", agents.Select(a => a.Line), null, new NumberRange(null, celsius), waits: true, citations: [limit.Citation]);
        _celsius = celsius;
    }

    private double SetsBelowOf(Agent[] without) => _agents.Where(a => !without.Contains(a)).Select(a => a.SetsBelowCelsius).DefaultIfEmpty(double.NegativeInfinity).Max();

    /// <summary>Holds what is in the pot against what the catalogue says of hydrating in it.</summary>
    private void CheckLimits()
    {
        if (_inPot.Count == 0)
        {
            return;
        }

        MixContents medium = new(_formula, _inPot);
        bool isPart = _sorted.Rest.Length > 0;
        foreach (Agent agent in _agents)
        {
            // How much calcium alginate bears before its bath is worked out from its dose, not from a limit.
            foreach (IGrouping<LimitedQuantity, AgentLimit> limits in agent.Profile.Limits
                .Where(l => l is { Stage: LimitStage.Hydrating, Harm: Harm.Weakens or Harm.Fails, Quantity: not LimitedQuantity.Concentration }
                    && !(l.Quantity == LimitedQuantity.Calcium && agent.Trigger?.Cause == SettingCause.Calcium))
                .GroupBy(l => l.Quantity))
            {
                double? value = limits.Key == LimitedQuantity.Calcium ? GelIons.CalciumThatHinders(_formula, agent.Line, _inPot)?.Value : LineSorting.Measure(limits.Key, medium);
                if (value is { } v && limits.Where(l => !l.Range.Value.Contains(v)).OrderByDescending(l => l.Harm).FirstOrDefault() is { } limit)
                {
                    PassedLimit(agent, limit, v);
                }
            }

            if ((isPart || agent.Profile.Limits.Any(l => l is { Quantity: LimitedQuantity.Concentration, Stage: LimitStage.Hydrating })) && agent.HighestPercent() is { Value.Max: { } highest } figure)
            {
                double percent = 100 * _formula.Proportions.MassOf(agent.Line) / medium.MassPerBase;
                if (percent > highest * 1.0000001)
                {
                    double part = 100 * ((_formula.Proportions.MassOf(agent.Line) * 100 / highest) - medium.MassPerBase);
                    Conflict(ConflictKind.TooLittleLiquid, $"In what carries it the {agent.Name} is at {Numbers.Significant(percent, 3)} %, above the {Numbers.Significant(highest, 3)} % that is the highest figure known for it: it would be too thick to disperse and dissolve evenly.",
                        $"Let at least {Numbers.Significant(part, 3)} % of the base more carry it.", [agent.Line], figure.Citation);
                }
            }
        }
    }

    /// <summary>A conflict where the hydrocolloid then fails, as in a review; where it is only weaker, a note on the step in which it dissolves.</summary>
    private void PassedLimit(Agent agent, AgentLimit limit, double value)
    {
        string text = $"What the {agent.Name} is hydrated in has {Words.Of(limit.Quantity).Replace('-', ' ')} {Numbers.Significant(value, 3)}, where it should be {limit.Range.Value}. {limit.Consequence}";
        const string wayOut = "Carry it in another part of the base, and join what is in the way afterwards.";
        int step = _steps.FindLastIndex(s => s.Action is StepAction.Hold or StepAction.Disperse && s.Lines.Contains(agent.Label));
        if (limit.Harm == Harm.Fails || step < 0)
        {
            Conflict(ConflictKind.Limit, text, wayOut, [agent.Line], limit.Range.Citation);
        }
        else
        {
            _steps[step] = _steps[step] with { Notes = ValueList<Cited<string>>.From(_steps[step].Notes.Append(new Cited<string>($"{text} {wayOut}", limit.Range.Citation))) };
        }
    }
}
