using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>How one line of a batch is weighed. Immutable, safe to share between threads.</summary>
public sealed class PlannedLine
{
    internal PlannedLine(
        FormulaLine line, WeighingWay way, double exactGrams, BalanceReading? reading, Preparation? preparation, double? deliveredGrams, double? uncertaintyGrams, ValueList<string> reasons)
    {
        Line = line;
        Way = way;
        ExactGrams = exactGrams;
        Reading = reading;
        Preparation = preparation;
        DeliveredGrams = deliveredGrams;
        UncertaintyPercent = exactGrams > 0 ? uncertaintyGrams / exactGrams * 100 : null;
        Reasons = reasons;
    }

    /// <summary>The line of the formula.</summary>
    public FormulaLine Line { get; }

    /// <summary>How it gets into the batch.</summary>
    public WeighingWay Way { get; }

    /// <summary>The mass wanted.</summary>
    public Mass Exact => Mass.FromGrams(ExactGrams);

    /// <summary>What to weigh of it by itself: what stocks and premixes bring of it is taken off. Null if it is not weighed by itself, or weighs nothing.</summary>
    public BalanceReading? Reading { get; }

    /// <summary>The stock or premix it comes with; null if it is weighed by itself.</summary>
    public Preparation? Preparation { get; }

    /// <summary>What gets into the batch when every balance shows what it shall; null if it cannot be weighed.</summary>
    public Mass? Delivered => DeliveredGrams is { } grams ? Mass.FromGrams(grams) : null;

    /// <summary>The error that the rounding leaves, % of the mass wanted: 5 if it is 5 % too much; null for nothing wanted, and if it cannot be weighed.</summary>
    public double? ErrorPercent => ExactGrams > 0 ? (DeliveredGrams / ExactGrams - 1) * 100 : null;

    /// <summary>How far the readings may be off by the rule of the plan, % of the mass wanted; null for nothing wanted, and if it cannot be weighed.</summary>
    public double? UncertaintyPercent { get; }

    /// <summary>Why nothing at hand weighs it, each way that was tried; empty if it can be weighed.</summary>
    public ValueList<string> Reasons { get; }

    internal double ExactGrams { get; }

    internal double? DeliveredGrams { get; }

    /// <summary>The ingredient and what to weigh.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Line.Ingredient}: " + Way switch
    {
        WeighingWay.Direct => Reading?.ToString() ?? "nothing",
        WeighingWay.NotPossible => $"{Numbers.Significant(ExactGrams, 4)} g cannot be weighed: {string.Join("; ", Reasons)}",
        _ => $"{Preparation!.Aliquot} of its {(Way == WeighingWay.Stock ? "stock" : "premix")}",
    };
}
