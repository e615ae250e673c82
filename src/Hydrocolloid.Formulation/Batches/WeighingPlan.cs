using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>
/// Which balance for which line of a batch, and a stock or premix for what is too small to weigh. Immutable, safe to share between threads.
/// </summary>
public sealed class WeighingPlan
{
    internal WeighingPlan(Batch batch, WeighingSetup setup, ValueList<PlannedLine> lines, ValueList<Preparation> preparations)
    {
        Batch = batch;
        Setup = setup;
        Lines = lines;
        Preparations = preparations;
    }

    /// <summary>The batch.</summary>
    public Batch Batch { get; }

    /// <summary>The balances and the tolerance.</summary>
    public WeighingSetup Setup { get; }

    /// <summary>The lines in the order of the formula.</summary>
    public ValueList<PlannedLine> Lines { get; }

    /// <summary>The stocks and premixes to make beforehand, in the order of the formula.</summary>
    public ValueList<Preparation> Preparations { get; }

    /// <summary>Whether every line can be weighed.</summary>
    public bool IsPossible => Lines.All(l => l.Way != WeighingWay.NotPossible);

    /// <summary>
    /// All readings of a batch together: the assembled mass to within half a step of the coarsest balance, as far as the tolerance of the lines
    /// lets them take up what rounding leaves.
    /// </summary>
    public Mass ShownTotal => Mass.FromGrams(Readings.Sum(r => r.Grams));

    /// <summary>The base mass from which on every line can be weighed by itself.</summary>
    public Mass SmallestDirectBatch
    {
        get
        {
            double least = Batch.Formula.Lines.Select(Batch.Formula.Proportions.MassOf).Where(m => m > 0).Min();
            return Mass.FromGrams(Setup.SmallestGrams(Setup.Tolerance) / least);
        }
    }

    /// <summary>Where the rule for the smallest weight comes from.</summary>
    public Citation RuleCitation => Setup.Rule == MinimumWeightRule.HalfDivision ? WeighingSources.Reading : WeighingSources.KitchenMinimum;

    private IEnumerable<BalanceReading> Readings => Lines.Where(l => l.Reading is not null).Select(l => l.Reading!).Concat(Preparations.Select(p => p.Aliquot));

    /// <summary>The plan of a line.</summary>
    /// <param name="label">The label of the line.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    public PlannedLine Line(string label) => Lines[Batch.Formula.Line(label).Index];

    /// <summary>How what gets into the batch of a line was worked out; of a line that cannot be weighed, the mass wanted.</summary>
    /// <param name="label">The label of the line.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    public Derivation Explain(string label)
    {
        PlannedLine planned = Line(label);
        Derivation wanted = Batch.Explain(label);
        if (planned.Preparation is { } preparation)
        {
            return preparation.Explain(wanted);
        }

        if (planned.Reading is not { } reading)
        {
            return wanted;
        }

        Derivation[] carried = [.. Preparations.Where(p => p.CarrierLine == planned.Line).Select(p => p.ExplainCarried(Batch.Explain(p.Line.Label)))];
        string step = $", to the next {Numbers.Significant(reading.Balance.DivisionGrams, 6)} g";
        double apart = planned.ExactGrams - carried.Sum(c => c.Value);
        double forTotal = reading.Grams - reading.Balance.RoundGrams(apart);
        if (forTotal != 0)
        {
            step += $", {(forTotal > 0 ? "+" : "-")} {Derivation.Text(Math.Abs(forTotal), "g")} to keep the total";
        }

        var shown = new Derivation($"{label}, weighed", string.Join(" - ", new[] { wanted }.Concat(carried).Select(d => d.ValueText)) + step, reading.Grams, "g", [wanted, .. carried]);
        return carried.Length == 0 ? shown
            : new Derivation($"{label}, delivered", string.Join(" + ", new[] { shown }.Concat(carried).Select(d => d.ValueText)), planned.DeliveredGrams!.Value, "g", [shown, .. carried]);
    }

    /// <summary>The preparations, then the lines, one a line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("\n", Preparations.Select(p => p.ToString()).Concat(Lines.Select(l => l.ToString())));
}
