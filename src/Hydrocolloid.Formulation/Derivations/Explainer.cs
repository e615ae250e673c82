using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Writes the derivations of a formula at a given base mass. Each node is made once, so shared steps stay shared.</summary>
internal sealed class Explainer
{
    private readonly Formula _formula;
    private readonly double _baseGrams;
    private readonly Derivation _base;
    private readonly Derivation?[] _lines;
    private readonly Derivation?[] _preceding;
    private Derivation? _total;

    public Explainer(Formula formula, double baseGrams, Derivation? givenBase = null)
    {
        _formula = formula;
        _baseGrams = baseGrams;
        _base = givenBase ?? new Derivation("base", "", baseGrams, "g");
        _lines = new Derivation?[formula.Lines.Count];
        _preceding = new Derivation?[formula.Phases.Count + 1];
    }

    public Derivation Base => _base;

    public Derivation Line(FormulaLine line) => _lines[line.Index] ??= LineStep(line);

    public Derivation Total() => _total ??= TotalStep();

    public Derivation Preceding(int phaseIndex) => phaseIndex == 0 ? _base : _preceding[phaseIndex] ??= Sum(
        phaseIndex == _formula.Phases.Count ? "everything" : $"everything before '{_formula.Phases[phaseIndex].Name}'",
        _formula.Proportions.PrecedingMass(phaseIndex) * _baseGrams,
        _formula.Lines.Where(l => !l.IsBase && l.PhaseIndex < phaseIndex));

    /// <summary>A line as a percentage of a reference.</summary>
    public Derivation Share(FormulaLine line, DoseReference reference)
    {
        Dose dose = _formula.Express(line.Label, reference);
        Derivation mass = Line(line);
        Derivation whole = Reference(reference, line.PhaseIndex);
        return new Derivation($"{line.Label} on {reference}", $"{mass.ValueText} / {whole.ValueText} × 100 %", dose.PercentByMass, "%", mass, whole);
    }

    private Derivation LineStep(FormulaLine line)
    {
        double grams = _formula.Proportions.Masses[line.Index] * _baseGrams;
        string percent = Numbers.Significant(line.Dose.PercentByMass, 6);
        Derivation whole = Reference(line.Dose.Reference, line.PhaseIndex);
        return new Derivation(line.Label, $"{percent} % of {line.Dose.Reference} = {percent}/100 × {whole.ValueText}", grams, "g", whole);
    }

    private Derivation Reference(DoseReference reference, int phaseIndex) => reference.Kind switch
    {
        DoseReferenceKind.Base => _base,
        DoseReferenceKind.Preceding => Preceding(phaseIndex),
        DoseReferenceKind.Total => Total(),
        DoseReferenceKind.Water => Water(phaseIndex),
        _ => Line(_formula.Line(reference.Label!)),
    };

    private Derivation Water(int phaseIndex)
    {
        FormulaLine[] lines = [.. _formula.Lines.Where(l => l.PhaseIndex < phaseIndex && l.Ingredient.WaterPercent > 0)];
        Derivation[] inputs = [.. lines.Select(Line)];
        string expression = string.Join(" + ", lines.Select((l, i) =>
            $"{Numbers.Significant(l.Ingredient.WaterPercent!.Value, 6)}/100 × {inputs[i].ValueText} ({l.Label})"));
        return new Derivation("the water so far", expression, _formula.Proportions.PrecedingWater(phaseIndex)!.Value * _baseGrams, "g", inputs);
    }

    private Derivation TotalStep()
    {
        double total = _formula.Proportions.Total * _baseGrams;
        double[] fixedMasses = _formula.Proportions.FixedMasses;
        double[] shares = _formula.Proportions.ShareOfTotal;
        if (shares.All(b => b == 0))
        {
            return Sum("total", total, _formula.Lines.Where(l => !l.IsBase));
        }

        // A line dosed on the total is not known before the total is: T = Σa / (1 - Σb).
        var fixedPart = new Derivation(
            "lines of fixed size",
            string.Join(" + ", new[] { _base.ValueText + " (base)" }.Concat(_formula.Lines.Where(l => !l.IsBase && fixedMasses[l.Index] > 0)
                .Select(l => $"{Derivation.Text(fixedMasses[l.Index] * _baseGrams, "g")} ({l.Label})"))),
            fixedMasses.Sum() * _baseGrams, "g", _base);
        var claimed = new Derivation(
            "share of the total that other lines claim",
            string.Join(" + ", _formula.Lines.Where(l => shares[l.Index] > 0).Select(l => $"{Derivation.Text(shares[l.Index] * 100, "%")} ({l.Label})")),
            shares.Sum() * 100, "%");
        return new Derivation("total", $"{fixedPart.ValueText} / (1 - {Numbers.Significant(claimed.Value, 6)}/100)", total, "g", fixedPart, claimed);
    }

    private Derivation Sum(string quantity, double grams, IEnumerable<FormulaLine> additions)
    {
        Derivation[] parts = [_base, .. additions.Select(Line)];
        return parts.Length == 1 ? _base
            : new Derivation(quantity, string.Join(" + ", parts.Select(p => $"{p.ValueText} ({p.Quantity})")), grams, "g", parts);
    }
}
