using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>Works out what batches cost.</summary>
public static class BatchCosting
{
    /// <summary>What a batch costs on a day.</summary>
    /// <param name="batch">The batch. Water that is topped up after boiling is not a line and costs nothing.</param>
    /// <param name="prices">The prices.</param>
    /// <param name="on">The day whose prices count, without a time.</param>
    /// <param name="packs">What is charged where only whole packs are sold; the part that is used unless stated.</param>
    /// <param name="extras">Labour, energy and other costs of the batch, in the currency of the prices.</param>
    /// <returns>The cost sheet.</returns>
    /// <exception cref="ArgumentException">The day has a time, or an extra cost is in another currency.</exception>
    public static CostSheet Cost(this Batch batch, PriceList prices, DateTime on, PackCharge packs = PackCharge.UsedPart, params ExtraCost[] extras)
        => new(Guard.NotNull(batch), Guard.NotNull(prices), Days.Check(on), (PackCharge)Guard.Defined((int)packs, (int)PackCharge.WholePacks, nameof(packs)),
            ValueList<ExtraCost>.From(Guard.NotNull(extras)));
}
