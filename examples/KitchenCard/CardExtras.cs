using Hydrocolloid.Formulation;
using Hydrocolloid.Formulation.Costing;

namespace KitchenCard;

/// <summary>What a card shows only if it is given: a mould, balances, prices.</summary>
internal sealed record CardExtras(MouldPlan? Mould, WeighingSetup? Weighing, PriceList? Prices, DateTime On);
