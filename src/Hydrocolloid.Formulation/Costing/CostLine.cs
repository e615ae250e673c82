using UnitsNet;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>What one line of a batch costs. Immutable, equal by content.</summary>
public sealed record CostLine
{
    internal CostLine(BatchLine line, Price? price, Money? cost, decimal? packs, CostingProblem? gap)
    {
        Line = line;
        Price = price;
        Cost = cost;
        Packs = packs;
        Gap = gap;
    }

    /// <summary>The line of the batch.</summary>
    public BatchLine Line { get; }

    /// <summary>The price that was used; null if there is none.</summary>
    public Price? Price { get; }

    /// <summary>The cost, not rounded; null if it is not known.</summary>
    public Money? Cost { get; }

    /// <summary>Why there is no cost; null if there is one.</summary>
    public CostingProblem? Gap { get; }

    /// <summary>What has to be bought for it: its mass before the yield of the price; null if there is no price.</summary>
    public Mass? BoughtMass => Price is null ? null : Mass.FromGrams(Line.Grams / ((double)Price.YieldPercent / 100));

    /// <summary>How many packs are opened for the ingredient, all its lines together; null unless whole packs are charged for.</summary>
    public decimal? Packs { get; }

    /// <summary>Its share of the cost of all ingredients, %; null as long as a line has no cost.</summary>
    public decimal? SharePercent { get; internal init; }

    /// <summary>The ingredient and its cost.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Line}, {(object?)Cost ?? "no price"}";
}
