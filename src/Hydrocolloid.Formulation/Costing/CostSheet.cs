using System.Diagnostics;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// What a batch costs, line by line. Nothing in it is rounded: each mass becomes a decimal (15 significant digits) once, all that
/// follows is decimal arithmetic, and <see cref="Money.Rounded"/> is for the figure that is shown. A line without a price is listed
/// and leaves every sum that it belongs to unknown. Immutable, safe to share between threads.
/// </summary>
[DebuggerDisplay("{Batch.Formula.Name}: {Total}")]
public sealed class CostSheet
{
    internal CostSheet(Batch batch, PriceList prices, DateTime on, PackCharge packs, ValueList<ExtraCost> extras)
    {
        Batch = batch;
        Prices = prices;
        On = on;
        Packs = packs;
        Extras = extras;
        CostLine[] lines = Cost();
        Known = Sum(lines.Select(l => l.Cost).OfType<Money>());
        Missing = ValueList<CostingProblem>.From(lines.Select(l => l.Gap).OfType<CostingProblem>());
        Ingredients = Missing.IsEmpty ? Known : null;
        Money extra = Sum(extras.Select(e => e.Cost));
        Total = Ingredients is null ? null : Ingredients + extra;
        Lines = ValueList<CostLine>.From(lines.Select(l => l with { SharePercent = Ingredients is { Amount: > 0 } all ? l.Cost!.Amount / all.Amount * 100 : null }));
        Phases = ValueList<PhaseCost>.From(Lines.GroupBy(l => l.Line.Line.PhaseIndex)
            .Select(g => new PhaseCost(g.First().Line.Line.Phase, g.Any(l => l.Cost is null) ? null : Sum(g.Select(l => l.Cost!)))));
    }

    /// <summary>The batch.</summary>
    public Batch Batch { get; }

    /// <summary>The prices.</summary>
    public PriceList Prices { get; }

    /// <summary>The day whose prices count.</summary>
    public DateTime On { get; }

    /// <summary>What is charged where only whole packs are sold.</summary>
    public PackCharge Packs { get; }

    /// <summary>Labour, energy and other costs.</summary>
    public ValueList<ExtraCost> Extras { get; }

    /// <summary>The lines, in the order of the batch.</summary>
    public ValueList<CostLine> Lines { get; }

    /// <summary>The base and the phases, in the order of the kitchen.</summary>
    public ValueList<PhaseCost> Phases { get; }

    /// <summary>The lines that have no cost, and why; empty if every line has one.</summary>
    public ValueList<CostingProblem> Missing { get; }

    /// <summary>The cost of the lines that have one: of all ingredients only if <see cref="Missing"/> is empty.</summary>
    public Money Known { get; }

    /// <summary>The cost of all ingredients; null if a line has none.</summary>
    public Money? Ingredients { get; }

    /// <summary>The cost of the batch: ingredients and extras; null if a line has no cost.</summary>
    public Money? Total { get; }

    /// <summary>The cost of 1 kg of finished gel; null if a line has no cost.</summary>
    public Money? PerKilogram => Total is null ? null : Total * 1000 / Amounts.Of(Batch.FinishedGrams);

    /// <summary>The cost of a portion, or of the filling of a cavity; null if a line has no cost or the yield names no count.</summary>
    public Money? PerPortion => PerCount(Total);

    /// <summary>The cost of the ingredients of a portion; null if a line has no cost or the yield names no count.</summary>
    public Money? IngredientsPerPortion => PerCount(Ingredients);

    /// <summary>The lines' costs in whole units of the currency, so that they add up to the rounded cost of the ingredients: by largest remainder, ties by order.</summary>
    /// <returns>A cost a line; empty if a line has none.</returns>
    public ValueList<Money> RoundedLines() => Ingredients is not { Amount: > 0 } all ? default
        : all.Rounded().Allocate(ValueList<decimal>.From(Lines.Select(l => l.Cost!.Amount)));

    /// <summary>The same batch under other prices.</summary>
    /// <param name="prices">The prices; of another currency only if there are no extra costs.</param>
    /// <returns>The cost sheet.</returns>
    /// <exception cref="ArgumentException">An extra cost is in another currency.</exception>
    public CostSheet WithPrices(PriceList prices) => new(Batch, Guard.NotNull(prices), On, Packs, Extras);

    /// <summary>The same yield of another formula: one with an ingredient swapped or a dose changed.</summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The cost sheet.</returns>
    /// <exception cref="FormulaException">There is no such batch of it.</exception>
    public CostSheet WithFormula(Formula formula) => new(Guard.NotNull(formula).ScaleTo(Batch.Yield, Batch.Losses), Prices, On, Packs, Extras);

    /// <summary>The same formula at another size; the extra costs stay as they are.</summary>
    /// <param name="yield">How much to make.</param>
    /// <returns>The cost sheet.</returns>
    /// <exception cref="FormulaException">There is no such batch.</exception>
    public CostSheet WithYield(Yield yield) => new(Batch.Formula.ScaleTo(Guard.NotNull(yield), Batch.Losses), Prices, On, Packs, Extras);

    /// <summary>What changes from this sheet to another.</summary>
    /// <param name="after">The other sheet, in the same currency.</param>
    /// <returns>The difference.</returns>
    /// <exception cref="ArgumentException">The currencies differ.</exception>
    public CostDifference ChangeTo(CostSheet after) => new(this, Guard.NotNull(after));

    /// <summary>The lines, the extras and the total, one a line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("\n", Lines.Select(l => l.ToString()).Concat(Extras.Select(e => e.ToString())).Append($"total: {(object?)Total ?? "not known"}"));

    private Money Sum(IEnumerable<Money> costs) => costs.Aggregate(new Money(0, Prices.Currency), (sum, cost) => sum + cost);

    private Money? PerCount(Money? cost) => cost is not null && Batch.Yield.Count is { } count ? cost / count : null;

    private CostLine[] Cost()
    {
        var lines = new CostLine[Batch.Lines.Count];
        foreach (IGrouping<string, BatchLine> ingredient in Batch.Lines.GroupBy(l => l.Line.Ingredient.Id, StringComparer.Ordinal))
        {
            Prices.TryFind(ingredient.Key, On, out Price? price);
            decimal used = ingredient.Sum(l => Amounts.Of(l.Grams));
            bool byPack = price is { IsPack: true } && Packs == PackCharge.WholePacks && used > 0;
            decimal? opened = byPack ? OpenedPacks(price!, ingredient) : null;
            foreach (BatchLine line in ingredient)
            {
                // What is paid for opened packs is spread over the lines by mass.
                decimal grams = Amounts.Of(line.Grams);
                decimal? amount = byPack ? opened * price!.Amount.Amount * grams / used : price?.PerGram(DensityOf(line)) * grams;
                Money? cost = amount is { } a ? new Money(a, Prices.Currency) : null;
                lines[line.Line.Index] = new CostLine(line, price, cost, opened, cost is null ? Gap(ingredient.Key, price) : null);
            }
        }

        return lines;
    }

    private CostingProblem Gap(string ingredient, Price? price) => price is null
        ? new CostingProblem("price-missing", ingredient, $"There is no price on {Days.Text(On)}.")
        : new CostingProblem("density-missing", ingredient, $"The price is for a volume, and no density is stated: {price}.");

    /// <summary>Whole packs for all lines of an ingredient; null if a line has no density. A billionth of a pack opens none: a mass is not known better.</summary>
    private static decimal? OpenedPacks(Price price, IEnumerable<BatchLine> lines)
        => lines.Select(l => Amounts.Of(l.Grams) * 100 / (price.YieldPercent * price.BoughtGrams(DensityOf(l)))).ToArray() is var packs && packs.All(p => p is not null)
            ? Math.Ceiling(Math.Round(packs.Sum(p => p!.Value), 9)) : null;

    /// <summary>kg/m³: measured on the lot, or the catalogue's.</summary>
    private static double? DensityOf(BatchLine line) => line.Line.Details.Measured?.DensityKgPerM3 ?? line.Line.Ingredient.DensityKgPerM3?.Value;
}
