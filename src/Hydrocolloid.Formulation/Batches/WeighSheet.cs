using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A batch rounded to what a balance can show. Immutable, safe to share between threads.</summary>
public sealed class WeighSheet
{
    /// <summary>The largest error of a dose that needs no warning unless stated otherwise, % of the dose.</summary>
    public const double DefaultTolerancePercent = 5;

    internal WeighSheet(Batch batch, Balance balance, double tolerancePercent)
    {
        Batch = batch;
        Balance = balance;
        TolerancePercent = tolerancePercent;
        Lines = Round(batch, balance, tolerancePercent);
    }

    /// <summary>The batch.</summary>
    public Batch Batch { get; }

    /// <summary>The balance.</summary>
    public Balance Balance { get; }

    /// <summary>The largest error of a dose that needs no warning, % of the dose.</summary>
    public double TolerancePercent { get; }

    /// <summary>The lines in the order of the formula.</summary>
    public ValueList<WeighLine> Lines { get; }

    /// <summary>The lines whose dose is off by more than the tolerance.</summary>
    public IEnumerable<WeighLine> Warnings => Lines.Where(l => l.ExceedsTolerance);

    /// <summary>The lines, one a line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("\n", Lines);

    private static ValueList<WeighLine> Round(Batch batch, Balance balance, double tolerancePercent)
    {
        // What the doses become is worked out from the rounded masses as from any list of weights.
        var rounded = new RoundedMasses(batch, balance);
        var lines = new WeighLine[batch.Lines.Count];
        for (int i = 0; i < lines.Length; i++)
        {
            FormulaLine line = batch.Lines[i].Line;
            double wanted = line.Dose.PercentByMass;
            double exact = batch.Lines[i].Grams;
            double reference = rounded.ReferenceGrams(line);

            // Of a reference that rounds to nothing there are no percentages: the dose is lost, not unknown.
            Dose? dose = reference > 0 ? new Dose(rounded.Grams[i] / reference * 100, line.Dose.Reference) : null;
            double? error = wanted > 0 && dose is not null ? (dose.PercentByMass / wanted - 1) * 100 : null;

            // A rounding of exactly the tolerance is within it: the comparison allows for the noise of the division.
            bool exceeds = error is { } e ? Math.Abs(e) > tolerancePercent * (1 + 1e-9) : dose is null && exact > 0;
            lines[i] = new WeighLine(line, exact, rounded.Grams[i], dose, error, exceeds);
        }

        return ValueList<WeighLine>.Own(lines);
    }

    private sealed class RoundedMasses
    {
        private readonly Formula _formula;
        private readonly double _base;
        private readonly double _total;

        public RoundedMasses(Batch batch, Balance balance)
        {
            _formula = batch.Formula;
            Grams = [.. batch.Lines.Select(l => balance.RoundGrams(l.Grams))];
            _base = batch.Lines.Where(l => l.Line.IsBase).Sum(l => Grams[l.Line.Index]);
            _total = Grams.Sum();
        }

        public double[] Grams { get; }

        public double ReferenceGrams(FormulaLine line) => line.Dose.Reference.Kind switch
        {
            DoseReferenceKind.Base => _base,
            DoseReferenceKind.Preceding => Preceding(line.PhaseIndex).Sum(l => Grams[l.Index]),
            DoseReferenceKind.Total => _total,
            DoseReferenceKind.Water => Preceding(line.PhaseIndex).Sum(l => Grams[l.Index] * (l.Ingredient.WaterPercent ?? double.NaN) / 100),
            _ => Grams[_formula.Line(line.Dose.Reference.Label!).Index],
        };

        private IEnumerable<FormulaLine> Preceding(int phaseIndex) => _formula.Lines.Where(l => l.PhaseIndex < phaseIndex);
    }
}
