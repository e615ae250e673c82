using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using static Hydrocolloid.Formulation.Phrases;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>Writes the steps of a method in the order of the kitchen, from the protocols of the catalogue.</summary>
internal sealed partial class MethodPlanner
{
    // Common practice, no source: from here on a splash is treated as a scald.
    private const double ScaldsAboveCelsius = 60;

    // Sugars and acids as crystals or powder have less water than this; % by weight.
    private const double DryPercent = 10;

    private readonly Formula _formula;
    private readonly Kitchen _kitchen;
    private readonly Formula? _below;
    private readonly Batch? _batch;
    private readonly Agent[] _agents;
    private readonly LineSorting _sorted;
    private readonly Tempering _tempering;
    private readonly MethodPattern _pattern;
    private readonly double[] _left;
    private readonly List<MethodStep> _steps = [];
    private readonly List<MethodConflict> _conflicts = [];
    private readonly List<FormulaLine> _inPot = [];
    private readonly List<Agent> _dissolving = [];
    private readonly ValueList<Caution> _cautions;
    private double _celsius;

    public MethodPlanner(Formula formula, MethodOptions options, Batch? batch)
    {
        _formula = formula;
        _kitchen = options.Kitchen;
        _below = options.OnLayer;
        _batch = batch;
        _agents = [.. formula.Lines.Where(l => l.IsContinuous && l.Ingredient.Profile is not null).Select(l => new Agent(l))];
        _sorted = new LineSorting(formula, _agents);
        _tempering = new Tempering(formula, _kitchen);
        _pattern = options.Pattern != MethodPattern.FromFormula ? options.Pattern
            : formula.Service.Texture == Texture.FluidGel && _agents.Any(a => a.SetsOnCooling) ? MethodPattern.FluidGel
            : _agents.Any(a => a.SetsByCalciumAlone) && _sorted.CalciumLast.Length == 0 ? MethodPattern.DirectBath
            : MethodPattern.FromFormula;
        _left = [.. formula.Lines.Select(formula.Proportions.MassOf)];
        _celsius = _kitchen.RoomCelsius;
        _cautions = MethodCautions.For(formula, _agents.Where(a => !a.IsColdSoluble).Select(a => a.NeedsCelsius).DefaultIfEmpty(0).Max());
    }

    public Method Plan()
    {
        CheckPattern();
        StopEnzymes();
        SoakFirst();
        CombineCarriers();
        AddBefore();
        Hydrate();
        CheckLimits();
        CheckTender();
        AddDelayed();
        JoinHeldBack();
        AddAfter();
        StrainAndDeaerate();
        if (_pattern is MethodPattern.DirectBath or MethodPattern.ReverseBath)
        {
            Bath();
        }
        else
        {
            FoldPiecesIn();
            Finish();
        }

        CheckBalance();
        return new Method(_formula.Name, _pattern, ToWeigh(), ValueList<MethodStep>.From(_steps), ValueList<MethodConflict>.From(_conflicts), _cautions);
    }

    /// <summary>The highest temperature at which anything in the mix may begin to set; °C.</summary>
    private double SetsBelow => _agents.Select(a => a.SetsBelowCelsius).DefaultIfEmpty(double.NegativeInfinity).Max();

    /// <summary>What the mix is kept above until it is cast: the highest setting temperature and the kitchen's margin, as far as the pot gets so hot; null if nothing sets on cooling; °C.</summary>
    private double? KeepAbove()
    {
        double sets = SetsBelow;
        return double.IsNegativeInfinity(sets) ? null
            : Math.Max(sets, new[] { sets + _kitchen.MarginKelvins, Boil(), _agents.Min(a => a.LimitCelsius) }.Min());
    }

    private double Boil() => _inPot.Count == 0 ? 100 : _tempering.Boils(_inPot).Temperature.DegreesCelsius;

    /// <summary>A range of temperatures without what is too hot for a hydrocolloid that is in already.</summary>
    private NumberRange Capped(NumberRange celsius)
    {
        double limit = _dissolving.Select(a => a.LimitCelsius).DefaultIfEmpty(double.PositiveInfinity).Min();
        return limit >= (celsius.Max ?? double.PositiveInfinity) || limit < celsius.Min ? celsius : new NumberRange(celsius.Min, limit);
    }

    private Citation[] SettingCitations() => [.. _agents.Where(a => a.SetsOnCooling).Select(a => a.Profile.Setting.Window!.Citation)];

    private static string C(double celsius) => Numbers.Significant(celsius, 4) + " °C";

    private static string Does(IReadOnlyCollection<Agent> agents, string verb, string verbs) => agents.Count == 1 ? verbs : verb;

    private ValueList<StepAmount> ToWeigh()
    {
        var order = new List<string>();
        order.AddRange(_steps.SelectMany(s => s.Amounts).Select(a => a.Label).Distinct(StringComparer.Ordinal));
        return ValueList<StepAmount>.From(order.Select(label => _formula.Line(label)).Select(l => Amount(l, _formula.Proportions.MassOf(l))));
    }

    private StepAmount Amount(FormulaLine line, double mass) => new(line.Label, line.Ingredient.Name, mass * 100, mass * _batch?.BaseGrams);

    /// <summary>What of a line goes in now: all that is left of it, or so much of that.</summary>
    private StepAmount Take(FormulaLine line, double most = double.PositiveInfinity)
    {
        double mass = Math.Min(most, _left[line.Index]);
        _left[line.Index] -= mass;
        if (line.IsContinuous && !_inPot.Contains(line))
        {
            _inPot.Add(line);
        }

        return Amount(line, mass);
    }

    private StepAmount[] Take(IEnumerable<FormulaLine> lines) => [.. lines.Where(l => _left[l.Index] > 0).Select(l => Take(l))];

    /// <summary>A range that the thermometer must show so that the true temperature lies in the range.</summary>
    private TemperatureRange? Read(NumberRange? celsius)
    {
        if (celsius is not { } range)
        {
            return null;
        }

        double off = _kitchen.ThermometerKelvins;
        double? min = range.Min + off, max = range.Max - off;
        return new TemperatureRange(min > max ? range : new NumberRange(min, max));
    }

    private void Step(
        StepAction action,
        string instruction,
        string reason,
        string check,
        IEnumerable<FormulaLine> lines,
        StepAmount[]? amounts = null,
        NumberRange? celsius = null,
        NumberRange? seconds = null,
        bool waits = false,
        Equipment with = Equipment.None,
        string? ahead = null,
        IEnumerable<Citation?>? citations = null,
        IEnumerable<Cited<string>?>? notes = null)
    {
        StepAmount[] taken = [.. (amounts ?? []).Where(a => a.PercentOfBase > 0)];
        string[] labels = [.. lines.Select(l => l.Label).Concat(taken.Select(a => a.Label)).Distinct(StringComparer.Ordinal)];
        Citation[] cited = [.. (citations ?? []).Where(c => c is not null).Select(c => c!).Distinct()];
        bool hot = action is StepAction.Heat or StepAction.StopEnzymes or StepAction.Hold or StepAction.Cast && celsius?.Min >= ScaldsAboveCelsius;
        _steps.Add(new MethodStep(_steps.Count + 1, action, instruction, reason, check)
        {
            Lines = ValueList<string>.Own(labels),
            Amounts = ValueList<StepAmount>.Own(taken),
            Temperature = Read(celsius),
            Duration = seconds is { } s ? new DurationRange(s) : null,
            Equipment = with,
            IsActive = !waits,
            Ahead = ahead,
            Citations = ValueList<Citation>.Own(cited.Length > 0 ? cited : [Citation.CommonPractice]),
            Notes = ValueList<Cited<string>>.From((notes ?? []).Where(n => n is not null).Select(n => n!).Distinct()),
            Cautions = ValueList<Caution>.From(_cautions.Where(c => (hot && c.Kind == CautionKind.HotLiquid)
                || (c.Kind == CautionKind.Flammable && c.Lines.Any(l => labels.Contains(l)) && (hot || action is StepAction.Add or StepAction.Warm or StepAction.Join)))),
        });
    }

    private void Conflict(ConflictKind kind, string text, string wayOut, IEnumerable<FormulaLine> lines, params Citation?[] citations)
        => _conflicts.Add(new MethodConflict(kind, text, wayOut, ValueList<string>.From(lines.Select(l => l.Label)),
            ValueList<Citation>.From(citations.Where(c => c is not null).Select(c => c!).Distinct())));

    private static string Why<T>(Cited<T> figure, string otherwise)
        where T : notnull
        => figure.Note is { Length: > 0 } note ? char.ToUpperInvariant(note[0]) + note.Substring(1) + "." : otherwise;

    private Equipment Heater(IEnumerable<FormulaLine> lines)
    {
        foreach (Equipment one in (Equipment[])[Equipment.Pan, Equipment.ThermalMixer, Equipment.PressureCooker, Equipment.Steam])
        {
            if (_kitchen.Has(one))
            {
                return one;
            }
        }

        Conflict(ConflictKind.Equipment, "Something has to be heated, and the kitchen has nothing to heat with.", "Bring a pan, or choose a hydrocolloid that dissolves cold.", lines);
        return Equipment.None;
    }

    /// <summary>What shears with the least air; none if the kitchen has nothing.</summary>
    private Equipment Shearer()
    {
        foreach (Equipment one in (Equipment[])[Equipment.HandBlender, Equipment.ThermalMixer, Equipment.JugBlender])
        {
            if (_kitchen.Has(one))
            {
                return one;
            }
        }

        return Equipment.None;
    }

    private static string Named(Equipment one) => one switch
    {
        Equipment.HandBlender => "the hand blender, its head kept under the surface",
        Equipment.ThermalMixer => "the thermal mixer",
        Equipment.JugBlender => "the jug blender, which draws in air: let it rest afterwards",
        Equipment.PressureCooker => "the pressure cooker",
        Equipment.Steam => "steam",
        _ => "a whisk",
    };

    private void StopEnzymes()
    {
        FormulaLine[] raw = [.. _formula.Lines.Where(l => l.Ingredient.Protease?.Value.IsActive == true)];
        if (raw.Length == 0 || _agents.FirstOrDefault(a => a.By("protease-heating") is not null || a.Profile.SensitivityTo(SensitiveTo.Protease) is { Harm: Harm.Weakens or Harm.Fails }) is not { } agent)
        {
            return;
        }

        Technique technique = Techniques.Get("protease-heating");
        TechniqueFigure celsius = technique.Figure("celsius"), minutes = technique.Figure("minutes");
        Step(StepAction.StopEnzymes, $"Heat the {Names(raw)} to {C(celsius.Range.Value.Min!.Value)} or more for {Numbers.Significant(minutes.Range.Value.Min!.Value, 3)} min, then cool, before anything else.",
            $"Raw, its enzymes digest the {agent.Name}. {technique.Fact("harm")!.Value}", "The thermometer in the middle of the pulp.", raw, null, celsius.Range.Value,
            new NumberRange(minutes.Range.Value.Min * 60, null), with: Heater(raw), ahead: "covered in the cold",
            citations: [celsius.Range.Citation, technique.Fact("harm")!.Citation], notes: [new Cited<string>(Why(celsius.Range, ""), celsius.Range.Citation)]);
    }

    private void CombineCarriers()
    {
        FormulaLine[] carriers = _sorted.Carriers;
        StepAmount[] amounts = Take(carriers.Where(l => HotDispersed is null));
        if (amounts.Length > 0)
        {
            Step(StepAction.Combine, $"Put together cold: {Names(carriers.Where(l => amounts.Any(a => a.Label == l.Label)))}.",
                _agents.Length > 0 ? "The hydrocolloids are dispersed in it, so it starts cold." : "The base comes first.", "All of it is in, and cold.", [], amounts,
                ahead: "covered in the cold");
        }
    }

    private void AddBefore()
    {
        if (HotDispersed is not null)
        {
            return; // it goes in with the cold part of the liquid
        }

        if (Take(_sorted.Sequestrants) is { Length: > 0 } sequestrants)
        {
            Agent agent = _agents.First(a => a.IsCalciumSensitive);
            Step(StepAction.Add, $"Dissolve first: {Names(_sorted.Sequestrants)}.",
                $"It binds the calcium of the liquid, which would keep the {agent.Name} from dissolving; added later it comes too late.", "No grains at the bottom.", [], sequestrants,
                citations: [agent.Profile.Setting.Triggers.First(t => t.Ion == "calcium" || t.Cause == SettingCause.Calcium).Description.Citation]);
        }

        FormulaLine? sugar = _sorted.SeparatingSugar();
        double kept = sugar is null ? 0 : _agents.Where(NeedsDryBlend).Sum(a => a.Profile.Dispersal.SugarPartsPerPart!.Value.Min.GetValueOrDefault(5) * _formula.Proportions.MassOf(a.Line));
        foreach (IGrouping<int, FormulaLine> phase in _sorted.Before.GroupBy(l => l.PhaseIndex))
        {
            bool keepsBack = sugar is not null && kept > 0 && phase.Contains(sugar);
            StepAmount[] amounts = [.. phase.Select(l => Take(l, l == sugar ? Math.Max(0, _left[l.Index] - kept) : double.PositiveInfinity))];
            FormulaLine[] going = [.. phase.Where((l, i) => amounts[i].PercentOfBase > 0)];
            if (going.Length > 0)
            {
                Step(StepAction.Add, $"Add and dissolve: {Names(going)}.{(keepsBack ? $" Keep back the {InSentence(sugar!)} of the dry blend." : "")}",
                    "It comes before the hydrocolloids in the formula.", "The liquid is clear of grains.", [], amounts);
            }
        }
    }

    private void AddDelayed()
    {
        foreach (IGrouping<string, (FormulaLine Line, Cited<string> Reason)> group in _sorted.Delayed.GroupBy(d => d.Reason.Value, StringComparer.Ordinal))
        {
            JoinIn(StepAction.Add, [.. group.Select(d => d.Line)], lines => $"Only now stir in: {Names(lines)}.", group.Key, group.Select(d => d.Reason.Citation));
        }
    }

    private void JoinHeldBack()
    {
        KeepHot();
        JoinIn(StepAction.Join, _sorted.Rest, lines => $"Stir in the rest of the base: {Names(lines)}.",
            KeepAbove() is null ? "It was kept back from the heat." : "It was kept back from the heat; joined too cold, it would set the sol in threads and grains.", SettingCitations());
    }

    private void AddAfter()
    {
        foreach (IGrouping<int, FormulaLine> phase in _sorted.After.GroupBy(l => l.PhaseIndex))
        {
            JoinIn(StepAction.Add, [.. phase], lines => $"Stir in: {Names(lines)}.", "It comes after the hydrocolloids in the formula.", []);
        }

        JoinIn(StepAction.Add, [.. _sorted.OffTheHeat], lines => $"Take the pan off the heat and stir in: {Names(lines)}.",
            "On the heat alcohol boils off, can catch fire, and keeps hydrocolloids from dissolving.", []);
        if (_sorted.CalciumLast.Length > 0 && _pattern != MethodPattern.DirectBath)
        {
            Agent agent = _agents.First(a => a.IsCalciumSensitive);
            SettingTrigger trigger = agent.Profile.Setting.Triggers.First(t => t.Ion == "calcium" || t.Cause == SettingCause.Calcium);
            JoinIn(StepAction.Add, _sorted.CalciumLast, lines => $"Last, dissolved in a spoonful of the formula's own liquid, stir in: {Names(lines)}.",
                $"It sets the {agent.Name}, so it comes when all else is in. {trigger.Description.Value}", [trigger.Description.Citation]);
        }
    }

    /// <summary>Something sets at temperatures that something else does not stand.</summary>
    private void CheckTender()
    {
        if (_agents.OrderBy(a => a.LimitCelsius).FirstOrDefault() is { } tender && tender.LimitCelsius <= SetsBelow && !_conflicts.Any(c => c.Kind == ConflictKind.Order && c.Lines.Contains(tender.Label)))
        {
            Agent early = _agents.OrderByDescending(a => a.SetsBelowCelsius).First();
            Conflict(ConflictKind.Order, $"The {tender.Name} must not be heated above {C(tender.LimitCelsius)}, but the {early.Name} may begin to set at {C(early.SetsBelowCelsius)}: there is no temperature to cast at.",
                "Set them in two layers, or choose another hydrocolloid.", [tender.Line, early.Line], [tender.Hydration.NotAbove!.Citation, .. SettingCitations()]);
        }
    }

    /// <summary>Brings the mix back above where it sets, if it was hydrated below that.</summary>
    private void KeepHot()
    {
        if (KeepAbove() is { } keep && _celsius < keep && keep <= _agents.Min(a => a.LimitCelsius) && _agents.Any(a => !a.IsColdSoluble))
        {
            Step(StepAction.Heat, $"Bring to {C(keep)} or more and keep it there until it is cast.", "Below that it begins to set.", "The thermometer; the spoon shows no skin and no threads.", [], null,
                new NumberRange(keep, null), with: Heater(_inPot), citations: SettingCitations());
            _celsius = keep;
        }
    }

    /// <summary>Joins lines to the mix; warms them first, as far as the mix would set otherwise.</summary>
    private void JoinIn(StepAction action, FormulaLine[] lines, Func<FormulaLine[], string> instruction, string reason, IEnumerable<Citation?> citations)
    {
        lines = [.. lines.Where(l => _left[l.Index] > 0)];
        if (lines.Length == 0)
        {
            return;
        }

        double? keep = KeepAbove();
        if (keep is { } target && _inPot.Count > 0 && _agents.Any(a => !a.IsColdSoluble))
        {
            Warm(lines, target);
        }

        NumberRange? celsius = keep is { } k && _celsius >= k ? new NumberRange(k, null) : null;
        Step(action, instruction(lines), reason, celsius is null ? "It is mixed evenly." : $"The thermometer shows no less than {C(celsius.Value.Min!.Value)} after stirring.", [], Take(lines), celsius,
            citations: citations);
    }

    private void Warm(FormulaLine[] lines, double target)
    {
        JoiningBody? pot = _tempering.Body(_inPot, _celsius), body = _tempering.Body(lines, 20);
        JoiningBody?[] own = [.. lines.Select(l => _tempering.Body([l], _tempering.CelsiusOf(l)))];
        if (pot is null || body is null || own.Any(b => b is null))
        {
            if (lines.Any(l => _tempering.CelsiusOf(l) < target) && lines.Sum(_formula.Proportions.MassOf) > 0.01)
            {
                WarmStep(lines, target, $"Their composition is not known, so the temperature after joining cannot be worked out: as warm as the mix must stay, they cannot set it.");
            }

            return;
        }

        JoinedMix asTheyAre = Joining.Of([pot.Value, .. own.Select(b => b!.Value)]);
        // Pieces do not mix in: at their surface the sol takes their temperature, whatever the whole comes to. Common practice, no source: they are as warm as where it sets.
        double surface = lines.All(l => l.IsContinuous) ? double.NegativeInfinity : SetsBelow;
        if (asTheyAre.Celsius >= target)
        {
            if (lines.Any(l => _tempering.CelsiusOf(l) < surface))
            {
                WarmStep(lines, surface, $"The mix would stay at {Numbers.Fixed(asTheyAre.Celsius, 0)} °C, but it would set at the surface of pieces colder than {C(surface)}.");
            }

            _celsius = asTheyAre.Celsius;
            return;
        }

        if (lines.All(l => l is { IsContinuous: true, Ingredient.WaterPercent: < DryPercent }))
        {
            Step(StepAction.Heat, $"Keep the pot on the heat while the {Names(lines)} goes in, in portions, so that it stays at {C(target)} or more.",
                $"Dry as it is, it cannot be warmed first; all at once it would bring the mix to {Numbers.Fixed(asTheyAre.Celsius, 0)} °C, and it would begin to set.", "The thermometer, after each portion has dissolved.", lines, null,
                new NumberRange(target, null), with: Heater(_inPot), citations: SettingCitations());
            _celsius = target;
            return;
        }

        double boils = Math.Min(150, _tempering.Boils(lines).Temperature.DegreesCelsius);
        NeededTemperature needed = Joining.TemperatureNeeded(body.Value, [pot.Value], UnitsNet.Temperature.FromDegreesCelsius(target), boilsAt: UnitsNet.Temperature.FromDegreesCelsius(boils));
        double warm = Math.Max(surface, Math.Min(Math.Ceiling(needed.Temperature.DegreesCelsius), target > needed.Temperature.DegreesCelsius ? target : boils));
        WarmStep(lines, warm, $"Joined as they are, the mix would come to {Numbers.Fixed(asTheyAre.Celsius, 0)} °C and begin to set; so it stays at {C(target)} or more.");
        if (needed.Outcome == NeededOutcome.NeedsAboveBoiling)
        {
            Conflict(ConflictKind.SetsTooEarly, $"Even with the {Names(lines)} at the boil the mix comes to {Numbers.Fixed(needed.Mix.Celsius, 0)} °C, under the {C(target)} at which it must stay.",
                "Let more of the base carry the hydrocolloids: LargestUnheatedShare says how much can stay cold.", lines, SettingCitations());
        }

        _celsius = Math.Max(needed.Mix.Celsius, needed.Outcome == NeededOutcome.Possible ? target : needed.Mix.Celsius);
    }

    private void WarmStep(FormulaLine[] lines, double celsius, string reason) => Step(StepAction.Warm, $"Meanwhile warm the {Names(lines)} to {C(celsius)} or a little more.", reason,
        "The thermometer, after stirring; pieces in their middle.", lines, null, new NumberRange(celsius, null), with: Heater(lines), citations: SettingCitations());

    private void CheckBalance()
    {
        if (_batch is null || _kitchen.Balance is null)
        {
            return;
        }

        foreach (WeighLine line in _batch.WeighOn(_kitchen.Balance).Lines.Where(l => l.ExceedsTolerance))
        {
            Conflict(ConflictKind.Instrument, $"The balance shows {_kitchen.Balance}, which puts the {InSentence(line.Line)} off by {Numbers.Significant(Math.Abs(line.ErrorPercent ?? 100), 2)} % of its dose.",
                $"Use a finer balance, or make a base of at least {Numbers.Significant(_kitchen.Balance.SmallestBatch(_formula).Grams, 3)} g.", [line.Line]);
        }
    }
}
