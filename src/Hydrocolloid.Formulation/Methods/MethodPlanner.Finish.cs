using Hydrocolloid.Formulation.Internal;
using static Hydrocolloid.Formulation.Phrases;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>Strains, casts, sets, cuts and serves; layers.</summary>
internal sealed partial class MethodPlanner
{
    private void StrainAndDeaerate()
    {
        if (_agents.Length == 0)
        {
            return;
        }

        if (_pattern is not (MethodPattern.FluidGel or MethodPattern.Clarify))
        {
            Step(StepAction.Strain, $"Strain{(KeepAbove() is null ? "" : ", hot")}.", "It takes out what did not dissolve, and foam.", "Nothing but foam is left in the sieve: grains mean that it was not held long or hot enough.", [], null,
                KeepAbove() is { } k ? new NumberRange(k, null) : null);
        }

        Technique? bath = _pattern == MethodPattern.DirectBath ? Techniques.Get("direct-calcium-bath") : null;
        bool sheared = _steps.Any(s => (s.Equipment & (Equipment.HandBlender | Equipment.JugBlender | Equipment.ThermalMixer)) != Equipment.None && s.Action is StepAction.Shear or StepAction.Disperse);
        if (bath is null && (!sheared || _pattern is MethodPattern.FluidGel or MethodPattern.Foam or MethodPattern.Clarify))
        {
            return;
        }

        Equipment vacuum = _kitchen.Has(Equipment.VacuumChamber) ? Equipment.VacuumChamber : Equipment.None;
        Step(StepAction.Deaerate, vacuum != Equipment.None ? "Draw a vacuum until no more bubbles rise." : bath is null ? $"Let stand{(KeepAbove() is null ? "" : ", warm enough not to set,")} until the bubbles have risen; skim." : bath.Fact("air")!.Value,
            "Shear drew in air, which clouds a gel and floats drops.", "No bubbles against the light.", [], null, KeepAbove() is { } above ? new NumberRange(above, null) : null, waits: true, with: vacuum,
            ahead: bath is null ? null : "covered in the cold", citations: [bath?.Fact("air")!.Citation]);
    }

    private void FoldPiecesIn()
    {
        JoinIn(StepAction.FoldIn, _sorted.Pieces, lines => $"Fold in the pieces: {Names(lines)}.",
            KeepAbove() is null || _agents.Length == 0 ? "They do not take part in the gel." : "Cold pieces set the sol on their surface before it is cast, so they are warm.", SettingCitations());
    }

    private void Finish()
    {
        if (_agents.Length == 0)
        {
            return;
        }

        switch (_pattern)
        {
            case MethodPattern.FluidGel: FluidGel(); break;
            case MethodPattern.Foam: Foam(); break;
            case MethodPattern.Clarify: Clarify(); return;
            default:
                Cast();
                AlkaliOrHeatSet();
                SetOnCooling();
                SetOtherwise();
                break;
        }

        Store();
        Serve();
    }

    private void Cast()
    {
        KeepHot();
        string mould = _formula.Process.Mould is { } plan ? $"Fill into the {plan}" : "Fill into moulds or portion";
        (double Melts, Agent Agent)? below = MeltsBelow();
        if (KeepAbove() is not { } keep)
        {
            NumberRange? under = below is { } b ? new NumberRange(null, b.Melts) : null;
            Step(StepAction.Cast, $"{mould}{(under is null ? "" : $", at no more than {C(under.Value.Max!.Value)}")}.", under is null ? "Temperature does not decide when it sets." : $"Hotter, it melts the {below!.Value.Agent.Name} gel below.",
                "Level, without bubbles.", [], null, under, citations: [below?.Agent.Profile.Melting.Window!.Citation]);
            return;
        }

        if (_formula.Process.CastAtCelsius is { } at && at <= SetsBelow)
        {
            Conflict(ConflictKind.SetsTooEarly, $"Casting is planned at {C(at)}, but the mix may begin to set at {C(SetsBelow)}.", "Cast it hotter.", _agents.Where(a => a.SetsOnCooling).Select(a => a.Line), SettingCitations());
        }

        double? most = below?.Melts;
        if (most <= keep)
        {
            Conflict(ConflictKind.Melts, $"It must be cast at {C(keep)} or more, but the {below!.Value.Agent.Name} gel below melts from {C(most.Value)} on.",
                "Cast it in a mould of its own and lay it on, set the layer below with a gel that melts hotter, or let a spoonful set as a seal first.", _agents.Where(a => a.SetsOnCooling).Select(a => a.Line), [.. SettingCitations(), below.Value.Agent.Profile.Melting.Window!.Citation]);
            most = null;
        }

        if (most - keep < 2 * _kitchen.ThermometerKelvins)
        {
            Conflict(ConflictKind.Instrument, $"Between {C(keep)} and {C(most!.Value)} a thermometer that may be off by {Numbers.Significant(_kitchen.ThermometerKelvins, 2)} K cannot hit.", "Use a finer thermometer.", []);
        }

        string planned = _formula.Process.CastAtCelsius is { } p ? $" Planned: {C(p)}." : "";
        Step(StepAction.Cast, $"{mould} at {new TemperatureRange(new NumberRange(keep, most))}, at once.{planned}",
            $"It may begin to set at {C(SetsBelow)}; below that it is cast in lumps and layers.{(most is null ? "" : $" Hotter, it melts the layer below.")}",
            "The thermometer in the jug just before pouring; it runs without threads.", [], null, new NumberRange(keep, most), citations: [.. SettingCitations(), below?.Agent.Profile.Melting.Window?.Citation]);
    }

    /// <summary>The lowest temperature at which a gel of the layer below melts.</summary>
    private (double Melts, Agent Agent)? MeltsBelow()
    {
        (double Melts, Agent Agent)? lowest = null;
        foreach (Agent agent in (_below?.Lines ?? default).Where(l => l.IsContinuous && l.Ingredient.Profile is not null).Select(l => new Agent(l)))
        {
            if (agent.Profile.Melting.Window?.Value.Celsius is { } window && (window.Min ?? window.Max) is { } melts && !(melts >= lowest?.Melts))
            {
                lowest = (melts, agent);
            }
        }

        return lowest;
    }

    private void FoldPiecesLate()
    {
        if (Take(_sorted.Pieces) is { Length: > 0 } pieces)
        {
            Step(StepAction.FoldIn, $"Fold in the pieces: {Names(_sorted.Pieces)}.", "They do not take part in the gel.", "They are spread evenly.", [], pieces);
        }
    }

    private void SetOnCooling()
    {
        Agent[] agents = [.. _agents.Where(a => a.SetsOnCooling)];
        if (agents.Length == 0)
        {
            return;
        }

        NumberRange window = new(null, agents.Min(a => a.Profile.Setting.Window!.Value.Celsius.Min ?? a.SetsBelowCelsius));
        SettingBehaviour[] settings = [.. agents.Select(a => a.Profile.Setting)];
        NumberRange[] stable = [.. settings.Where(s => s.TimeToStable is not null).Select(s => s.TimeToStable!.Value.Seconds)];
        NumberRange? seconds = stable.Length == 0 ? null : new NumberRange(stable.Max(s => s.Min ?? s.Max), stable.Max(s => s.Max));
        var notes = new List<Cited<string>>();
        if (_formula.TryCool(out CoolingOutlook? outlook, out _) && outlook.SetThrough is { Time: { } usual })
        {
            string late = outlook.SetThroughAtLatest?.Time is { } slow ? $", at latest {Numbers.Significant(slow.Minutes, 2)} min" : "";
            notes.Add(new Cited<string>($"Set through in this mould after about {Numbers.Significant(usual.Minutes, 2)} min{late} (computed).", outlook.SettingCitation!));
        }

        Step(StepAction.Set, $"Let set undisturbed: {string.Join("; ", agents.Select(a => $"the {a.Name} at {a.Profile.Setting.Window!.Value}{(a.Trigger!.Ion is { } ion ? $", with {ion}" : "")}"))}.{(seconds is { } s ? $" Its strength is stable after {new DurationRange(s)}." : "")}",
            agents[0].Trigger!.Description.Value, "It does not run when the mould is tilted, and springs back under a finger.", agents.Select(a => a.Line), null, window, seconds, waits: true, ahead: "covered in the cold",
            citations: settings.SelectMany(s => new[] { s.Window!.Citation, s.Triggers[0].Description.Citation, s.TimeToStable?.Citation }),
            notes: [.. notes, .. settings.SelectMany(s => Agent.Practice(s.Window!, "for setting").Concat(s.Dependence))]);
    }

    /// <summary>Gels that set when they are heated: methylcellulose, curdlan, konjac with alkali, starches that have already swollen.</summary>
    private void AlkaliOrHeatSet()
    {
        foreach (Agent agent in _agents.Where(a => a.Cause == SettingCause.Heating))
        {
            SettingBehaviour setting = agent.Profile.Setting;
            Technique? alkali = agent.By("alkali-set");
            if (alkali is not null)
            {
                TechniqueFigure parts = alkali.Figure("agent-parts-per-part"), ph = alkali.Figure("ph");
                double mass = _formula.Proportions.MassOf(agent.Line) / parts.Range.Value.Min!.Value;
                string amount = _batch is null ? $"{Numbers.Significant(mass * 100, 3)} % of the base" : $"{Numbers.Significant(mass * _batch.BaseGrams, 3)} g";
                MethodStep cast = _steps[_steps.Count - 1];
                _steps.RemoveAt(_steps.Count - 1);
                Step(StepAction.Add, $"Stir in slaked lime, {amount}, slurried in a little water: one part to {Numbers.Significant(parts.Range.Value.Min.Value, 3)} parts of {agent.Name}.",
                    $"Strong alkali lets it set. {Why(ph.Range, "")}", $"pH paper shows {Numbers.Significant(ph.Range.Value.Min!.Value, 3)} or more.", [agent.Line],
                    citations: [parts.Range.Citation, ph.Range.Citation], notes: [new Cited<string>("Slaked lime burns skin and eyes: gloves and glasses. It is not a line of the formula, so it is weighed apart.", Citation.CommonPractice)]);
                Step(cast.Action, cast.Instruction, cast.Reason, cast.Check, [], celsius: cast.Temperature?.Celsius, citations: cast.Citations);
            }

            if (setting.Window is not { } window)
            {
                continue;
            }

            bool swollen = !agent.IsColdSoluble && alkali is null && agent.NeedsCelsius >= (window.Value.Celsius.Min ?? window.Value.Celsius.Max ?? 0);
            if (swollen)
            {
                Step(StepAction.Set, $"The {agent.Name} has set or thickened in the heat of its hold; let it cool undisturbed.", agent.Trigger!.Description.Value, "It holds the mark of a spoon.", [agent.Line], null, waits: true,
                    citations: [window.Citation, agent.Trigger.Description.Citation], notes: setting.Dependence);
                continue;
            }

            TechniqueFigure? boil = alkali?.Figure("boil-minutes");
            NumberRange hot = boil is null ? new NumberRange(window.Value.Celsius.Max ?? window.Value.Celsius.Min, null) : window.Value.Celsius;
            Step(StepAction.Set, $"Set it by heat: to {new TemperatureRange(hot)} all through, in hot water, steam or oven{(boil is null ? "" : $", for {new DurationRange(new NumberRange(boil.Range.Value.Min * 60, boil.Range.Value.Max * 60))} at the boil")}.",
                agent.Trigger!.Description.Value, "Firm to a finger in the middle, not only outside.", [agent.Line], null, hot, boil is null ? null : new NumberRange(boil.Range.Value.Min * 60, boil.Range.Value.Max * 60),
                with: _kitchen.Has(Equipment.Steam) ? Equipment.Steam : Heater([agent.Line]), citations: [window.Citation, agent.Trigger.Description.Citation, boil?.Range.Citation],
                notes: [alkali?.Fact("heat"), .. setting.Dependence]);
        }
    }

    /// <summary>What neither cold nor heat sets.</summary>
    private void SetOtherwise()
    {
        foreach (Agent agent in _agents.Where(a => a.SetsByCalciumAlone || a.Cause == SettingCause.Acid))
        {
            Step(StepAction.Set, agent.SetsByCalciumAlone ? $"Leave at rest: the {agent.Name} sets as calcium reaches it, at any temperature." : $"Leave at rest: the {agent.Name} sets by acid.", agent.Trigger!.Description.Value,
                "It does not run when tilted.", [agent.Line], null, waits: true, ahead: "covered in the cold", citations: [agent.Trigger.Description.Citation], notes: [.. agent.Profile.Setting.Triggers.Skip(1).Select(t => t.Description), .. agent.Profile.Setting.Dependence]);
        }

        if (_agents.All(a => a.Cause == SettingCause.None))
        {
            Step(StepAction.Set, $"Let it come to rest: the {And(_agents.Select(a => a.Name))} {Does(_agents, "thicken; they do not set", "thickens; it does not set")} alone.", _agents[0].Trigger?.Description.Value ?? "Thickeners reach their thickness at rest.",
                "It coats a spoon as thickly as after a minute before.", _agents.Select(a => a.Line), null, waits: true, ahead: "covered in the cold", citations: _agents.Select(a => a.Trigger?.Description.Citation ?? a.Hydration.Window.Citation),
                notes: [.. _agents.SelectMany(a => a.Profile.Setting.Dependence)]);
        }
    }

    private void Store()
    {
        Cited<string>[] drying = [.. _agents.Select(a => a.Profile.SensitivityTo(SensitiveTo.Drying)).Where(s => s is { Harm: not Harm.None }).Select(s => s!.Consequence)];
        Step(StepAction.Cover, "Cover closely and keep cold.", drying.Length > 0 ? drying[0].Value : "A gel dries at its surface, and takes up smells.", "The cover touches or seals; nothing dries at the rim.", [], waits: true, ahead: "covered in the cold",
            citations: drying.Select(d => d.Citation));
        bool holdsShape = _pattern is not (MethodPattern.FluidGel or MethodPattern.Foam) && _agents.Any(a => a.Cause != SettingCause.None);
        Texture? texture = _formula.Service.Texture;
        if (holdsShape && _formula.Process.Mould is not null && texture is not (Texture.Soft or Texture.Thickened or Texture.FluidGel))
        {
            bool melts = _agents.Any(a => a.SetsOnCooling && a.Profile.Melting.Window?.Value.Celsius.Min < ScaldsAboveCelsius);
            Step(StepAction.Unmould, $"Loosen the rim{(melts ? ", dip the mould in warm water for a moment" : " and let air in at the side")} and turn out.",
                melts ? "A film at the wall melts and lets go." : "It does not melt in warm water: only air lets it go.", "It slides when the mould is tilted.", []);
        }

        if (holdsShape && _formula.Service.Shape is PortionShape.Slice or PortionShape.Cube)
        {
            Step(StepAction.Slice, "Cut cold, with a thin wet blade or a wire, wiped between cuts.", "A cold gel is firmest; a dry blade drags.", "Clean faces, no crumbs.", []);
        }
    }

    private void Serve()
    {
        Agent[] agents = [.. _agents.Where(a => a.Profile.Melting.Reversibility is not null || a.Profile.Melting.Window is not null)];
        if (agents.Length == 0)
        {
            return;
        }

        double? melts = agents.Min(a => a.Profile.Melting.Window?.Value.Celsius.Min ?? a.Profile.Melting.Window?.Value.Celsius.Max);
        string Say(Agent agent) => agent.Profile.Melting switch
        {
            { Reversibility: Reversibility.Reversible } when agent.Cause == SettingCause.Heating => $"the {agent.Name} gel turns liquid again on cooling: serve it hot",
            { Window: { } window, Reversibility: Reversibility.Irreversible } => $"the {agent.Name} gel melts at {window.Value} and does not set again",
            { Window: { } window } => $"the {agent.Name} gel melts at {window.Value}",
            { Reversibility: Reversibility.Irreversible } => $"the {agent.Name} gel does not melt: it can be served hot",
            _ => $"no melting temperature is known for the {agent.Name} gel",
        };
        if (_formula.Service.ServedAtCelsius is { } served && served >= melts)
        {
            Agent agent = agents.First(a => (a.Profile.Melting.Window?.Value.Celsius.Min ?? a.Profile.Melting.Window?.Value.Celsius.Max) == melts);
            Conflict(ConflictKind.Melts, $"It is served at {C(served)}, and the {agent.Name} gel melts from {C(melts.Value)} on.", "Serve it cooler, or set it with a gel that melts hotter or not at all.", [agent.Line], agent.Profile.Melting.Window!.Citation);
        }

        NumberRange? celsius = melts is { } m ? new NumberRange(null, m) : null;
        Agent? hot = agents.FirstOrDefault(a => a.Cause == SettingCause.Heating && a.Profile.Melting.Reversibility == Reversibility.Reversible && a.Profile.Setting.Window?.Value.Celsius.Max is not null);
        if (hot is not null && celsius is null)
        {
            celsius = new NumberRange(hot.Profile.Setting.Window!.Value.Celsius.Max, null);
        }

        string sentence = string.Join("; ", agents.Select(Say));
        Step(StepAction.Serve, char.ToUpperInvariant(sentence[0]) + sentence.Substring(1) + ".", agents[0].Profile.Melting.ReversibilityFact?.Value ?? "A gel served above its melting temperature runs.", "It keeps its shape on the plate.",
            agents.Select(a => a.Line), null, celsius, citations: agents.SelectMany(a => new[] { a.Profile.Melting.Window?.Citation, a.Profile.Melting.ReversibilityFact?.Citation }),
            notes: [.. agents.SelectMany(a => (a.Profile.Melting.Window is { } w ? Agent.Practice(w, "for melting") : []).Concat(a.Profile.Melting.Dependence))]);
    }
}
