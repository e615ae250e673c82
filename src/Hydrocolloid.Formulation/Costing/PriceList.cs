using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// What a kitchen pays: prices in one currency, at most one an ingredient on any day. Immutable, safe to share between threads.
/// </summary>
[DebuggerDisplay("{Prices.Count} prices in {Currency}")]
public sealed class PriceList
{
    private readonly Dictionary<string, Price[]> _byIngredient;

    /// <summary>Makes a list.</summary>
    /// <param name="currency">The currency of all prices.</param>
    /// <param name="prices">The prices.</param>
    /// <exception cref="CostingException">A price is in another currency, or two prices of an ingredient are valid at once.</exception>
    public PriceList(Currency currency, IEnumerable<Price> prices)
    {
        Currency = Guard.NotNull(currency);
        Prices = ValueList<Price>.From(Guard.NotNull(prices).Select(p => Guard.NotNull(p, nameof(prices))));
        if (ProblemsOf(currency, Prices) is { Count: > 0 } problems)
        {
            throw new CostingException("The prices cannot stand in one list:", ValueList<CostingProblem>.From(problems.Select(p => p.Problem)));
        }

        _byIngredient = Prices.GroupBy(p => p.Ingredient, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
    }

    /// <summary>The currency of all prices.</summary>
    public Currency Currency { get; }

    /// <summary>The prices, in the order given.</summary>
    public ValueList<Price> Prices { get; }

    /// <summary>The price of an ingredient on a day.</summary>
    /// <param name="ingredient">The id of the ingredient.</param>
    /// <param name="on">The day, without a time.</param>
    /// <param name="price">The price; null if there is none.</param>
    /// <returns>Whether there is one.</returns>
    /// <exception cref="ArgumentException">The day has a time.</exception>
    public bool TryFind(string ingredient, DateTime on, [NotNullWhen(true)] out Price? price)
    {
        DateTime day = Days.Check(on);
        price = _byIngredient.TryGetValue(Guard.NotNull(ingredient), out Price[]? prices) ? Array.Find(prices, p => p.IsValidOn(day)) : null;
        return price is not null;
    }

    /// <summary>The list with another price, which takes the place of all prices of its ingredient.</summary>
    /// <param name="price">The price.</param>
    /// <returns>The list.</returns>
    /// <exception cref="CostingException">The price is in another currency.</exception>
    public PriceList With(Price price) => new(Currency, Prices.Where(p => p.Ingredient != Guard.NotNull(price).Ingredient).Append(price));

    /// <summary>The list with all prices of one ingredient higher or lower.</summary>
    /// <param name="ingredient">The id of the ingredient.</param>
    /// <param name="percent">The change, % of the amount: 10 for a rise by a tenth; above -100 and up to 1e6.</param>
    /// <returns>The list.</returns>
    /// <exception cref="ArgumentException">The list has no price of it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The percentage, or the amount it leads to, is outside its range.</exception>
    public PriceList WithChange(string ingredient, decimal percent)
        => _byIngredient.ContainsKey(Guard.NotNull(ingredient)) ? new(Currency, Prices.Select(p => p.Ingredient == ingredient ? p.Changed(percent) : p))
            : throw new ArgumentException($"The list has no price of '{ingredient}'.", nameof(ingredient));

    /// <summary>Every reason why the prices cannot stand in one list, with the positions of the prices it is about.</summary>
    internal static List<(int Index, int Other, CostingProblem Problem)> ProblemsOf(Currency currency, IReadOnlyList<Price> prices)
    {
        var problems = new List<(int, int, CostingProblem)>();
        for (int i = 0; i < prices.Count; i++)
        {
            if (prices[i].Amount.Currency != currency)
            {
                problems.Add((i, i, new CostingProblem("currency-mixed", prices[i].Ingredient,
                    $"The price is in {prices[i].Amount.Currency}, the list in {currency}: convert it at a stated rate.")));
            }
        }

        foreach (IGrouping<string, int> ingredient in Enumerable.Range(0, prices.Count).GroupBy(i => prices[i].Ingredient, StringComparer.Ordinal))
        {
            int? latest = null;
            foreach (int i in ingredient.OrderBy(i => prices[i].ValidFrom ?? DateTime.MinValue))
            {
                DateTime from = prices[i].ValidFrom ?? DateTime.MinValue, until = prices[i].ValidTo ?? DateTime.MaxValue;
                DateTime before = latest is { } l ? prices[l].ValidTo ?? DateTime.MaxValue : DateTime.MinValue;
                if (latest is { } other && from <= before)
                {
                    problems.Add((Math.Max(i, other), Math.Min(i, other), new CostingProblem("prices-overlap", ingredient.Key,
                        $"Two prices are valid at once: {prices[Math.Min(i, other)]}; {prices[Math.Max(i, other)]}.")));
                }

                latest = latest is null || until > before ? i : latest;
            }
        }

        return problems;
    }
}
