using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>Works out what making plans cost.</summary>
public static class PlanCosting
{
    /// <summary>What all batches of a plan cost on a day; the cost of a part goes before a price of its id.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="prices">The prices.</param>
    /// <param name="on">The day whose prices count, without a time.</param>
    /// <param name="packs">What is charged where only whole packs are sold; whole packs are opened for each batch. The part that is used unless stated.</param>
    /// <param name="extras">Labour, energy and other costs of what was asked for, in the currency of the prices.</param>
    /// <returns>The cost sheets.</returns>
    /// <exception cref="ArgumentException">The day has a time, or an extra cost is in another currency.</exception>
    public static PlanCost Cost(this MakingPlan plan, PriceList prices, DateTime on, PackCharge packs = PackCharge.UsedPart, params ExtraCost[] extras)
    {
        Guard.NotNull(prices);
        var sheets = new List<CostSheet>();
        foreach (PlannedBatch planned in Guard.NotNull(plan).Batches)
        {
            CostSheet sheet = planned.Batch.Cost(prices, on, packs, planned.UsedBy.IsEmpty ? extras : []);
            sheets.Add(sheet);
            IEnumerable<Price> others = prices.Prices.Where(p => p.Ingredient != planned.Id);
            prices = new PriceList(prices.Currency, sheet.PerKilogram is { Amount: > 0 } cost ? others.Append(Price.PerMass(planned.Id, cost, Mass.FromGrams(1000))) : others);
        }

        return new PlanCost(ValueList<string>.From(plan.Batches.Select(b => b.Id)), ValueList<CostSheet>.From(sheets));
    }
}
