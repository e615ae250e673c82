using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>
/// A stock or dry premix from which an ingredient too small to weigh is taken. What it brings of its carrier is taken off the carrier's own line, so
/// that the composition stays as it is. Immutable, safe to share between threads.
/// </summary>
public sealed class Preparation
{
    private readonly double _wantedGrams;

    internal Preparation(
        WeighingWay way, FormulaLine line, FormulaLine carrier, int batches, double wantedGrams,
        BalanceReading substance, BalanceReading carried, BalanceReading aliquot, ValueList<Cited<string>> advice)
    {
        Way = way;
        Line = line;
        CarrierLine = carrier;
        Batches = batches;
        Substance = substance;
        Carrier = carried;
        Aliquot = aliquot;
        Advice = advice;
        _wantedGrams = wantedGrams;
    }

    /// <summary>Whether it is a stock or a premix.</summary>
    public WeighingWay Way { get; }

    /// <summary>The line of the formula that is too small to weigh.</summary>
    public FormulaLine Line { get; }

    /// <summary>The line of the formula that carries it.</summary>
    public FormulaLine CarrierLine { get; }

    /// <summary>How many batches it is made for.</summary>
    public int Batches { get; }

    /// <summary>What to weigh of the ingredient into it.</summary>
    public BalanceReading Substance { get; }

    /// <summary>What to weigh of the carrier into it.</summary>
    public BalanceReading Carrier { get; }

    /// <summary>What to weigh of it into each batch.</summary>
    public BalanceReading Aliquot { get; }

    /// <summary>How much of the ingredient is in it, % by weight.</summary>
    public double Percent => SubstanceShare * 100;

    /// <summary>All of it.</summary>
    public Mass Total => Mass.FromGrams(TotalGrams);

    /// <summary>What is left of it when every batch has had its part.</summary>
    public Mass Left => Mass.FromGrams(TotalGrams - Batches * Aliquot.Grams);

    /// <summary>
    /// How far the ingredient in a batch may be off by the rule of the plan, % of its mass: the sum over the three weighings of what each may be off.
    /// </summary>
    public double UncertaintyPercent
        => 100 * (Substance.UncertaintyGrams / Substance.Grams + Carrier.UncertaintyGrams / Carrier.Grams + Aliquot.UncertaintyGrams / Aliquot.Grams);

    /// <summary>How to make and keep it.</summary>
    public ValueList<Cited<string>> Advice { get; }

    /// <summary>Why so much of the ingredient, in words.</summary>
    internal string SubstanceSizing { get; init; } = "";

    /// <summary>Why the aliquot is to be that large, in words.</summary>
    internal string AliquotSizing { get; init; } = "";

    /// <summary>The aliquot aimed at before the stock is rounded to steps.</summary>
    internal double AliquotAimGrams { get; init; }

    internal double SubstanceInAliquotGrams => Aliquot.Grams * SubstanceShare;

    internal double CarrierInAliquotGrams => Aliquot.Grams * Carrier.Grams / TotalGrams;

    internal double TotalGrams => Substance.Grams + Carrier.Grams;

    private double SubstanceShare => Substance.Grams / TotalGrams;

    private string Name => Way == WeighingWay.Stock ? "stock" : "premix";

    /// <summary>The recipe in one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => $"{Name} of {Line.Ingredient}: {Substance} with {Carrier} of {CarrierLine.Ingredient}, {Numbers.Significant(Percent, 4)} %; {Aliquot} of it per batch";

    internal Derivation Explain(Derivation wanted)
    {
        string total = Derivation.Text(TotalGrams, "g");
        string needed = Derivation.Text(_wantedGrams, "g"), step = $", up to the next {Numbers.Significant(Substance.Balance.DivisionGrams, 6)} g";
        var substance = new Derivation($"{Line.Label} in the {Name}", SubstanceSizing + step, Substance.Grams, "g", wanted);
        var aim = new Derivation("aliquot aimed at", $"{AliquotSizing}, up to the next {Numbers.Significant(Aliquot.Balance.DivisionGrams, 6)} g", AliquotAimGrams, "g", wanted);
        var carrier = new Derivation($"{CarrierLine.Label} in the {Name}",
            $"{substance.ValueText} × ({aim.ValueText} - {needed}) / {needed}, up to the next {Numbers.Significant(Carrier.Balance.DivisionGrams, 6)} g", Carrier.Grams, "g", substance, aim);
        var aliquot = new Derivation($"{Name} per batch",
            $"{needed} / {substance.ValueText} × {total}, to the next {Numbers.Significant(Aliquot.Balance.DivisionGrams, 6)} g", Aliquot.Grams, "g", substance, carrier);
        return new Derivation($"{Line.Label}, delivered", $"{Derivation.Text(Aliquot.Grams, "g")} × {Derivation.Text(Substance.Grams, "g")} / {total}", SubstanceInAliquotGrams, "g", aliquot);
    }

    internal Derivation ExplainCarried(Derivation wanted)
    {
        Derivation aliquot = Explain(wanted).Inputs[0];
        return new Derivation($"{CarrierLine.Label} in the {Name} of {Line.Label}",
            $"{aliquot.ValueText} × {Derivation.Text(Carrier.Grams, "g")} / {Derivation.Text(TotalGrams, "g")}", CarrierInAliquotGrams, "g", aliquot);
    }
}
