using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// A price to sell at: net, tax and gross apart, each with the decimals of the currency. The net price is rounded once, half away
/// from zero, the tax on it likewise, and the gross price is their sum. Immutable, equal by content.
/// </summary>
public sealed record SellingPrice
{
    private SellingPrice(Money cost, decimal exactNet, decimal taxPercent)
    {
        Cost = cost;
        Net = new Money(exactNet, cost.Currency).Rounded();
        Tax = (Net * (Amounts.InRange(taxPercent, 0, 1000, " %") / 100)).Rounded();
        if (Net.Amount == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(cost), cost.Amount, $"Is too little to sell for a whole unit of {cost.Currency}.");
        }
    }

    /// <summary>The cost it is worked out from.</summary>
    public Money Cost { get; }

    /// <summary>The price without tax.</summary>
    public Money Net { get; }

    /// <summary>The tax on it.</summary>
    public Money Tax { get; }

    /// <summary>The price with tax.</summary>
    public Money Gross => Net + Tax;

    /// <summary>The cost as it turns out after rounding, % of the net price.</summary>
    public decimal CostPercent => Cost.Amount / Net.Amount * 100;

    /// <summary>The margin as it turns out after rounding, % of the net price.</summary>
    public decimal MarginPercent => 100 - CostPercent;

    /// <summary>The price at which the ingredients are a percentage of the net price.</summary>
    /// <param name="ingredients">The cost of the ingredients; above 0.</param>
    /// <param name="foodCostPercent">What they shall be, % of the net price; 0.1 to 100.</param>
    /// <param name="taxPercent">The tax, % of the net price; 0 to 1000.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the cost too small for the currency.</exception>
    public static SellingPrice AtFoodCost(Money ingredients, decimal foodCostPercent, decimal taxPercent = 0)
        => new(Positive(ingredients), ingredients.Amount * 100 / Amounts.InRange(foodCostPercent, 0.1m, 100, " %"), taxPercent);

    /// <summary>The price that leaves a margin.</summary>
    /// <param name="cost">The cost, of ingredients and all else that the margin shall not have to pay for; above 0.</param>
    /// <param name="marginPercent">The margin, % of the net price, not of the cost; 0 to 99.9.</param>
    /// <param name="taxPercent">The tax, % of the net price; 0 to 1000.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the cost too small for the currency.</exception>
    public static SellingPrice AtMargin(Money cost, decimal marginPercent, decimal taxPercent = 0)
        => new(Positive(cost), cost.Amount * 100 / (100 - Amounts.InRange(marginPercent, 0, 99.9m, " %")), taxPercent);

    /// <summary>Net, tax and gross.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Net} + {Tax} tax = {Gross}";

    private static Money Positive(Money cost)
    {
        Amounts.InRange(Guard.NotNull(cost).Amount, 0, 1_000_000_000_000_000m, " " + cost.Currency.Code, excludingMin: true, nameof(cost));
        return cost;
    }
}
