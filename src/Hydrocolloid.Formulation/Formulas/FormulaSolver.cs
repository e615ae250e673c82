using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>
/// Checks a draft and solves it. In units of the base mass every line is affine in the assembled total T, m = a + b·T; one forward
/// pass carries the pairs (a, b), and T = Σa / (1 - Σb).
/// </summary>
internal sealed class FormulaSolver
{
    /// <summary>Shares may miss 100 % by the noise of adding doubles, never by a rounding of the user's.</summary>
    internal const double ShareTolerancePercent = 1e-6;

    /// <summary>A line may be at most this % of its reference.</summary>
    internal const double MaxDosePercent = 1e6;

    /// <summary>All lines together may be at most this many times the base.</summary>
    internal const double MaxTotal = 1e9;

    /// <summary>What gels must be at least this many times the base, so that a percentage of it is a number.</summary>
    internal const double MinMix = 1e-9;

    private readonly List<DraftLine> _base;
    private readonly List<DraftPhase> _phases;
    private readonly List<FormulaProblem> _problems = [];
    private readonly Dictionary<string, int> _lineByLabel;
    private readonly DraftLine[] _lines;
    private readonly int[] _phaseOf;
    private readonly int[] _firstOf;
    private readonly double[] _a;
    private readonly double[] _b;
    private double _weighedBaseGrams;

    private FormulaSolver(List<DraftLine> baseLines, List<DraftPhase> phases)
    {
        _base = baseLines;
        _phases = phases;
        int count = baseLines.Count;
        foreach (DraftPhase phase in phases)
        {
            count += phase.Lines.Count;
        }

        _lineByLabel = new Dictionary<string, int>(count, StringComparer.Ordinal);
        _lines = new DraftLine[count];
        _phaseOf = new int[count];
        _firstOf = new int[phases.Count];
        _a = new double[count];
        _b = new double[count];
        baseLines.CopyTo(_lines);
        int next = baseLines.Count;
        for (int p = 0; p < phases.Count; p++)
        {
            _firstOf[p] = next;
            phases[p].Lines.CopyTo(_lines, next);
            for (int i = 0; i < phases[p].Lines.Count; i++)
            {
                _phaseOf[next++] = p;
            }
        }

        for (int i = 0; i < baseLines.Count; i++)
        {
            _phaseOf[i] = -1;
        }
    }

    public static (Formula? Formula, ValueList<FormulaProblem> Problems) Solve(
        string name, List<DraftLine> baseLines, List<DraftPhase> phases, ProcessPlan process, ServicePlan service, ExtensionData? extensions)
    {
        var solver = new FormulaSolver(baseLines, phases);
        if (string.IsNullOrWhiteSpace(name))
        {
            solver.Report("name-missing", "/name", "The formula has no name.");
        }

        solver.CheckLabels();
        solver.CheckBase();
        solver.CheckPhases();
        solver.CheckProcess(process);
        if (solver.SolveMasses() is not { } proportions)
        {
            return (null, ValueList<FormulaProblem>.From(solver._problems));
        }

        var formula = new Formula(name, solver.BaseParts(), solver.PhasesWithDoses(proportions), process, service, extensions, proportions);
        return solver._problems.Count > 0 ? (null, ValueList<FormulaProblem>.From(solver._problems)) : (formula, default);
    }

    private void Report(string id, string pointer, string message, string? line = null, double? value = null, double? limit = null)
        => _problems.Add(new FormulaProblem(id, pointer, message, line, value, limit));

    private string Pointer(int line, string member = "")
    {
        int phase = _phaseOf[line];
        if (phase < 0)
        {
            return $"/base/{Numbers.Exact(line)}{member}";
        }

        return $"/phases/{Numbers.Exact(phase)}/add/{Numbers.Exact(line - _firstOf[phase])}{member}";
    }

    private void CheckLabels()
    {
        for (int i = 0; i < _lines.Length; i++)
        {
            string label = _lines[i].Label;
            if (!_lineByLabel.TryGetValue(label, out int first))
            {
                _lineByLabel.Add(label, i);
                continue;
            }

            Report("line-repeated", Pointer(i),
                $"'{label}' stands in two lines ({Pointer(first)} and here): put them together, or give one of them a label of its own.", label);
        }
    }

    private void CheckBase()
    {
        if (_base.Count == 0)
        {
            Report("base-empty", "/base", "The base is empty: it needs at least one part.");
            return;
        }

        int weighed = 0;
        foreach (DraftLine part in _base)
        {
            weighed += part.Grams is null ? 0 : 1;
        }

        if (weighed > 0 && weighed < _base.Count)
        {
            Report("base-mixed", "/base", "The base mixes shares and weights: state all its parts in one of the two.");
            return;
        }

        if (weighed > 0)
        {
            _weighedBaseGrams = _base.Sum(p => p.Grams!.Value);
            if (_weighedBaseGrams <= 0)
            {
                Report("base-empty", "/base", "The base weighs nothing: its parts must weigh more than 0 g together.", null, _weighedBaseGrams, 0);
                return;
            }

            for (int i = 0; i < _base.Count; i++)
            {
                _a[i] = _base[i].Grams!.Value / _weighedBaseGrams;
            }

            return;
        }

        bool valid = true;
        double sum = 0;
        for (int i = 0; i < _base.Count; i++)
        {
            double percent = _base[i].Percent;
            if (!(percent >= 0 && percent <= 100 + ShareTolerancePercent))
            {
                valid = false;
                Report("share-invalid", Pointer(i, "/percent"),
                    $"The share of {_base[i].Label} is {Numbers.Exact(percent)} %; it must be between 0 % and 100 % of the base.", _base[i].Label, percent,
                    percent < 0 ? 0 : 100);
            }

            sum += percent;
        }

        if (valid && !(Math.Abs(sum - 100) <= ShareTolerancePercent))
        {
            Report("base-shares", "/base", $"The shares of the base add up to {Numbers.Significant(sum, 10)} %; they must add up to 100 %.", null, sum, 100);
            return;
        }

        for (int i = 0; i < _base.Count; i++)
        {
            _a[i] = _base[i].Percent / sum;
        }
    }

    private void CheckPhases()
    {
        HashSet<string>? names = _phases.Count > 1 ? new HashSet<string>(StringComparer.Ordinal) : null;
        for (int p = 0; p < _phases.Count; p++)
        {
            string name = _phases[p].Name;
            string pointer = "/phases/" + Numbers.Exact(p);
            if (string.IsNullOrWhiteSpace(name))
            {
                Report("phase-name", pointer + "/name", $"Phase {Numbers.Exact(p + 1)} has no name.");
            }
            else if (names?.Add(name) == false)
            {
                Report("phase-name", pointer + "/name", $"The phase name '{name}' is used twice.");
            }

            if (_phases[p].Lines.Count == 0)
            {
                Report("phase-empty", pointer + "/add", $"The phase '{name}' adds nothing.");
            }
        }
    }

    private void CheckProcess(ProcessPlan process)
    {
        for (int i = 0; i < process.Carriers.Count; i++)
        {
            string? label = process.Carriers[i]; // a list of the caller's may hold null all the same
            string pointer = "/process/carriers/" + Numbers.Exact(i);
            if (label is null || !_lineByLabel.TryGetValue(label, out int line))
            {
                Report("carrier-unknown", pointer, $"The carrier '{label}' is not a line of the formula.", label);
            }
            else if (_lines[line].Details.Form == LineForm.Pieces)
            {
                Report("carrier-pieces", pointer, $"The carrier '{label}' is pieces; only a liquid can carry a hydrocolloid.", label);
            }
        }
    }

    private Proportions? SolveMasses()
    {
        int phaseCount = _phases.Count;
        double sumA = 0, sumB = 0, waterA = 0, waterB = 0;
        string? withoutWater = null;
        var precedingA = new double[phaseCount + 1];
        var precedingB = new double[phaseCount + 1];
        var precedingWaterA = new double[phaseCount + 1];
        var precedingWaterB = new double[phaseCount + 1];
        var waterKnown = new bool[phaseCount + 1];

        int next = 0;
        for (int phase = -1; phase < phaseCount; phase++)
        {
            if (phase >= 0)
            {
                (precedingA[phase], precedingB[phase]) = (sumA, sumB);
                (precedingWaterA[phase], precedingWaterB[phase]) = (waterA, waterB);
                waterKnown[phase] = withoutWater is null;
            }

            int first = next;
            for (; next < _lines.Length && _phaseOf[next] == phase; next++)
            {
                if (phase >= 0)
                {
                    SolveLine(next, phase, precedingA[phase], precedingB[phase], precedingWaterA[phase], precedingWaterB[phase], withoutWater);
                }
            }

            for (int i = first; i < next; i++)
            {
                sumA += _a[i];
                sumB += _b[i];
                if (WaterShareOf(i) is { } share)
                {
                    waterA += share * _a[i];
                    waterB += share * _b[i];
                }
                else
                {
                    withoutWater ??= _lines[i].Label;
                }
            }

            if (phase < 0)
            {
                sumA = 1; // the unit of mass, without the noise of adding the shares up
            }
        }

        (precedingA[phaseCount], precedingB[phaseCount]) = (sumA, sumB);
        (precedingWaterA[phaseCount], precedingWaterB[phaseCount]) = (waterA, waterB);
        waterKnown[phaseCount] = withoutWater is null;

        if (!(sumB < 1))
        {
            Report("total-shares", "/phases",
                $"The lines dosed on the total claim {Numbers.Significant(sumB * 100, 10)} % of it; they must stay below 100 %: "
                + string.Join(", ", LinesOnTotal()) + ".", null, sumB * 100, 100);
        }

        if (_problems.Count > 0)
        {
            return null;
        }

        double total = sumA / (1 - sumB);
        if (!(total <= MaxTotal))
        {
            Report("total-too-large", "/phases",
                $"All lines together are {Numbers.Exact(total)} times the base; at most {Numbers.Exact(MaxTotal)} times are possible.", null, total, MaxTotal);
            return null;
        }

        var masses = new double[_lines.Length];
        double continuous = 0, continuousWater = 0;
        bool continuousWaterKnown = true;
        for (int i = 0; i < masses.Length; i++)
        {
            masses[i] = _a[i] + _b[i] * total;
            if (_lines[i].Details.Form == LineForm.Mix)
            {
                continuous += masses[i];
                double? share = WaterShareOf(i);
                continuousWater += masses[i] * (share ?? 0);
                continuousWaterKnown &= share is not null || masses[i] == 0;
            }
        }

        if (!(continuous >= MinMix))
        {
            Report("mix-empty", "/base",
                $"There is no mix that could gel: what is not pieces weighs {Numbers.Significant(continuous, 6)} times the base; at least {Numbers.Exact(MinMix)} times is needed.",
                null, continuous, MinMix);
            return null;
        }

        var preceding = new double[phaseCount + 1];
        var precedingWater = new double?[phaseCount + 1];
        for (int p = 0; p <= phaseCount; p++)
        {
            preceding[p] = precedingA[p] + precedingB[p] * total;
            precedingWater[p] = waterKnown[p] ? precedingWaterA[p] + precedingWaterB[p] * total : null;
        }

        return new Proportions(_a, _b, masses, preceding, precedingWater, total, continuous, continuousWaterKnown ? continuousWater : null);
    }

    private void SolveLine(int line, int phase, double precedingA, double precedingB, double waterA, double waterB, string? withoutWater)
    {
        DraftLine draft = _lines[line];
        int referred = -1;
        DoseReferenceKind kind = draft.Reference.Kind;
        if (kind == DoseReferenceKind.Line && !FindReferred(line, out referred))
        {
            return;
        }

        if (kind == DoseReferenceKind.Water)
        {
            if (withoutWater is not null)
            {
                Report("water-unknown", Pointer(line, "/of"),
                    $"{draft.Label} is dosed on the water so far, but the water content of {withoutWater} is unknown.", draft.Label);
                return;
            }

            if (waterA <= 0 && waterB <= 0 && _problems.Count == 0)
            {
                Report("reference-empty", Pointer(line, "/of"), $"{draft.Label} is dosed on the water so far, but there is none.", draft.Label, 0, 0);
                return;
            }
        }

        if (draft.Grams is { } grams)
        {
            if (_weighedBaseGrams > 0)
            {
                _a[line] = grams / _weighedBaseGrams;
            }
            else if (_base.Count > 0 && _base.TrueForAll(p => p.Grams is null))
            {
                Report("weight-without-base", Pointer(line), $"{draft.Label} is given by weight, but the base is not.", draft.Label, grams);
            }

            return;
        }

        double percent = draft.Percent;
        double limit = kind == DoseReferenceKind.Total ? 100 : MaxDosePercent;
        if (!(percent >= 0))
        {
            Report("dose-invalid", Pointer(line, "/percent"), $"The dose of {draft.Label} is {Numbers.Exact(percent)} % of {draft.Reference}; it must be 0 % or more.", draft.Label, percent, 0);
            return;
        }

        if (kind == DoseReferenceKind.Total ? percent >= limit : percent > limit)
        {
            ReportTooLarge(line, Pointer(line, "/percent"), percent, limit);
            return;
        }

        double r = percent / 100;
        (_a[line], _b[line]) = kind switch
        {
            DoseReferenceKind.Base => (r, 0),
            DoseReferenceKind.Preceding => (r * precedingA, r * precedingB),
            DoseReferenceKind.Total => (0, r),
            DoseReferenceKind.Water => (r * waterA, r * waterB),
            _ => (r * _a[referred], r * _b[referred]),
        };
    }

    private void ReportTooLarge(int line, string pointer, double percent, double limit)
    {
        DraftLine draft = _lines[line];
        string bound = draft.Reference.Kind == DoseReferenceKind.Total ? "it must stay below 100 %" : $"at most {Numbers.Exact(limit)} % are possible";
        Report("dose-too-large", pointer, $"The dose of {draft.Label} is {Numbers.Exact(percent)} % of {draft.Reference}; {bound}.", draft.Label, percent, limit);
    }

    private bool FindReferred(int line, out int referred)
    {
        DraftLine draft = _lines[line];
        string label = draft.Reference.Label!;
        if (!_lineByLabel.TryGetValue(label, out referred))
        {
            Report("reference-unknown", Pointer(line, "/of"), $"{draft.Label} is dosed on '{label}', which is not a line of the formula.", draft.Label);
            return false;
        }

        if (referred >= line)
        {
            Report("reference-later", Pointer(line, "/of"),
                referred == line ? $"{draft.Label} is dosed on itself; it can only be dosed on an earlier line."
                    : $"{draft.Label} is dosed on '{label}', which comes later; it can only be dosed on an earlier line.", draft.Label);
            return false;
        }

        return true;
    }

    /// <summary>The share of water in a line; null if unknown.</summary>
    private double? WaterShareOf(int line) => _lines[line].Ingredient.WaterPercent / 100;

    private IEnumerable<string> LinesOnTotal()
    {
        for (int i = 0; i < _lines.Length; i++)
        {
            if (_b[i] > 0)
            {
                yield return $"{_lines[i].Label} {Numbers.Significant(_b[i] * 100, 6)} %";
            }
        }
    }

    private ValueList<BasePart> BaseParts()
    {
        var parts = new BasePart[_base.Count];
        for (int i = 0; i < parts.Length; i++)
        {
            parts[i] = new BasePart(_base[i].Ingredient, _base[i].Grams is null ? _base[i].Percent : _a[i] * 100, _base[i].Details);
        }

        return ValueList<BasePart>.Own(parts);
    }

    private ValueList<Phase> PhasesWithDoses(Proportions proportions)
    {
        var phases = new Phase[_phases.Count];
        int line = _base.Count;
        for (int p = 0; p < phases.Length; p++)
        {
            var additions = new Addition[_phases[p].Lines.Count];
            for (int i = 0; i < additions.Length; i++, line++)
            {
                DraftLine draft = _lines[line];
                double percent = draft.Grams is null ? draft.Percent
                    : proportions.Masses[line] / ReferenceMass(draft.Reference, p, proportions) * 100;
                if (double.IsNaN(percent) || double.IsInfinity(percent))
                {
                    Report("reference-empty", Pointer(line, "/of"), $"{draft.Label} is weighed as a percentage of {draft.Reference}, which weighs nothing.", draft.Label, 0, 0);
                }
                else if (draft.Grams is not null && percent > MaxDosePercent)
                {
                    ReportTooLarge(line, Pointer(line), percent, MaxDosePercent);
                }

                additions[i] = new Addition(draft.Ingredient, new Dose(percent, draft.Reference), draft.Details);
            }

            phases[p] = new Phase(_phases[p].Name, ValueList<Addition>.Own(additions));
        }

        return ValueList<Phase>.Own(phases);
    }

    private double ReferenceMass(DoseReference reference, int phase, Proportions proportions) => reference.Kind switch
    {
        DoseReferenceKind.Base => 1,
        DoseReferenceKind.Preceding => proportions.PrecedingMass(phase),
        DoseReferenceKind.Total => proportions.Total,
        DoseReferenceKind.Water => proportions.PrecedingWater(phase) ?? double.NaN,
        _ => proportions.Masses[_lineByLabel[reference.Label!]],
    };
}
