using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// What an ingredient costs: an amount of money for a mass, a volume or a count of pieces, before tax. Immutable, equal by content.
/// </summary>
public sealed record Price
{
    private const decimal MaxAmount = 1_000_000_000m;

    private Price(string ingredient, Money amount, PriceBasis basis, decimal quantity, decimal? gramsPerUnit)
    {
        Ingredient = Ids.Check(ingredient, nameof(ingredient));
        Amounts.InRange(Guard.NotNull(amount).Amount, 0, MaxAmount, " " + amount.Currency.Code, excludingMin: true, nameof(amount));
        Amount = amount;
        Basis = basis;
        Quantity = quantity;
        GramsPerUnit = gramsPerUnit;
    }

    /// <summary>The id of the ingredient.</summary>
    public string Ingredient { get; }

    /// <summary>The amount for <see cref="Quantity"/>.</summary>
    public Money Amount { get; private init; }

    /// <summary>What the price is for.</summary>
    public PriceBasis Basis { get; }

    /// <summary>How much the amount buys: g, mL or pieces, by <see cref="Basis"/>.</summary>
    public decimal Quantity { get; }

    /// <summary>The mass of one unit of <see cref="Quantity"/> in g: 1 for a mass, the density in g/mL for a volume (null if not stated), the mass of a piece for a count.</summary>
    public decimal? GramsPerUnit { get; }

    /// <summary>Whether <see cref="Quantity"/> is what a pack holds and only whole packs are sold.</summary>
    public bool IsPack { get; private init; }

    /// <summary>Who sells it; null if not stated.</summary>
    public string? Supplier { get; private init; }

    /// <summary>The first day on which it is valid; null if always so far.</summary>
    public DateTime? ValidFrom { get; private init; }

    /// <summary>The last day on which it is valid; null if until further notice.</summary>
    public DateTime? ValidTo { get; private init; }

    /// <summary>How much of what is bought goes into the pot, % by weight; 100 unless stated.</summary>
    public decimal YieldPercent { get; private init; } = 100;

    /// <summary>A price for a mass.</summary>
    /// <param name="ingredient">The id of the ingredient.</param>
    /// <param name="amount">The amount; above 0 and up to 1e9.</param>
    /// <param name="per">The mass it buys; 0.001 g to 1e9 g.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentException">The id is not kebab-case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The amount or the mass is outside its range.</exception>
    public static Price PerMass(string ingredient, Money amount, Mass per)
        => new(ingredient, amount, PriceBasis.Mass, Amounts.Of(Guard.InRange(Guard.Grams(per), 0.001, 1e9, "g", nameof(per))), 1);

    /// <summary>A price for a volume.</summary>
    /// <param name="ingredient">The id of the ingredient.</param>
    /// <param name="amount">The amount; above 0 and up to 1e9.</param>
    /// <param name="per">The volume it buys; 0.001 mL to 1e9 mL.</param>
    /// <param name="density">The density, 100 to 30 000 kg/m³; null to take that of the ingredient.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentException">The id is not kebab-case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The amount, the volume or the density is outside its range.</exception>
    public static Price PerVolume(string ingredient, Money amount, Volume per, Density? density = null)
        => new(ingredient, amount, PriceBasis.Volume, Amounts.Of(Guard.InRange(Guard.Millilitres(per), 0.001, 1e9, "mL", nameof(per))),
            density is { } d ? Amounts.Of(Guard.InRange(Guard.KilogramsPerCubicMetre(d, nameof(density)), 100, 30_000, "kg/m³", nameof(density))) / 1000 : null);

    /// <summary>A price for a count of pieces.</summary>
    /// <param name="ingredient">The id of the ingredient.</param>
    /// <param name="amount">The amount; above 0 and up to 1e9.</param>
    /// <param name="count">How many pieces it buys; 1 to 1 000 000.</param>
    /// <param name="each">The mass of a piece; 0.001 g to 1e9 g.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentException">The id is not kebab-case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The amount, the count or the mass is outside its range.</exception>
    public static Price PerCount(string ingredient, Money amount, int count, Mass each)
        => new(ingredient, amount, PriceBasis.Count, (decimal)Guard.InRange(count, 1, 1_000_000, "pieces"),
            Amounts.Of(Guard.InRange(Guard.Grams(each), 0.001, 1e9, "g", nameof(each))));

    /// <summary>Says that only whole packs of this quantity are sold.</summary>
    /// <returns>The price.</returns>
    public Price AsPack() => this with { IsPack = true };

    /// <summary>Says who sells it.</summary>
    /// <param name="supplier">The name; not blank.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public Price FromSupplier(string supplier) => this with { Supplier = Guard.NotBlank(supplier) };

    /// <summary>Says when it is valid.</summary>
    /// <param name="from">The first day, without a time; null if always so far.</param>
    /// <param name="to">The last day, without a time, not before the first; null if until further notice.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentException">A day has a time, or the last day comes before the first.</exception>
    public Price ValidBetween(DateTime? from, DateTime? to)
    {
        DateTime? first = from is { } f ? Days.Check(f, nameof(from)) : null, last = to is { } t ? Days.Check(t, nameof(to)) : null;
        return last < first ? throw new ArgumentException($"The last day, {Days.Text(last.Value)}, comes before the first, {Days.Text(first!.Value)}.", nameof(to))
            : this with { ValidFrom = first, ValidTo = last };
    }

    /// <summary>Says how much of what is bought goes into the pot, the rest being peel, bones and the like.</summary>
    /// <param name="percent">% by weight of what is bought; above 0 and up to 100.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is outside its range.</exception>
    public Price WithYield(decimal percent) => this with { YieldPercent = Amounts.InRange(percent, 0, 100, " %", excludingMin: true) };

    /// <summary>The price a percentage higher or lower.</summary>
    /// <param name="percent">The change, % of the amount: 10 for a rise by a tenth; above -100 and up to 1e6.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage, or the amount it leads to, is outside its range.</exception>
    public Price Changed(decimal percent) => WithAmount(Amount * (1 + Amounts.InRange(percent, -100, 1_000_000, " %", excludingMin: true) / 100));

    /// <summary>The price in another currency; not rounded.</summary>
    /// <param name="rate">The rate from the price's currency.</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentException">The rate is from another currency.</exception>
    public Price ConvertAt(ExchangeRate rate) => WithAmount(Amount.ConvertAt(rate));

    /// <summary>The price in words.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => $"{Ingredient}: {Amount} per {Exactly.ToText(Quantity)} {Basis switch { PriceBasis.Mass => "g", PriceBasis.Volume => "mL", _ => "pieces" }}"
        + (IsPack ? " pack" : "") + (YieldPercent == 100 ? "" : $", yield {Exactly.ToText(YieldPercent)} %")
        + (ValidFrom is { } from ? ", from " + Days.Text(from) : "") + (ValidTo is { } to ? ", to " + Days.Text(to) : "") + (Supplier is null ? "" : ", " + Supplier);

    /// <summary>The UCUM code of the unit of <see cref="Quantity"/>.</summary>
    internal string UnitCode => Basis switch { PriceBasis.Mass => "g", PriceBasis.Volume => "mL", _ => "{piece}" };

    /// <summary>The mass of a piece in g, where the price is for a count.</summary>
    internal decimal? PieceGrams => Basis == PriceBasis.Count ? GramsPerUnit : null;

    /// <summary>The density, where the price is for a volume and states it.</summary>
    internal decimal? DensityKgPerM3 => Basis == PriceBasis.Volume ? GramsPerUnit * 1000 : null;

    internal bool IsValidOn(DateTime day) => !(day < ValidFrom) && !(day > ValidTo);

    /// <summary>What <see cref="Quantity"/> weighs as bought; null for a volume whose density nobody states.</summary>
    /// <param name="densityKgPerM3">The density to use where the price states none, kg/m³.</param>
    internal decimal? BoughtGrams(double? densityKgPerM3) => Quantity * (GramsPerUnit ?? (densityKgPerM3 is { } d ? Amounts.Of(d) / 1000 : null));

    /// <summary>The cost of 1 g in the pot; null for a volume whose density nobody states.</summary>
    internal decimal? PerGram(double? densityKgPerM3) => Amount.Amount * 100 / (BoughtGrams(densityKgPerM3) * YieldPercent);

    private Price WithAmount(Money amount)
    {
        Amounts.InRange(amount.Amount, 0, MaxAmount, " " + amount.Currency.Code, excludingMin: true, nameof(amount));
        return this with { Amount = amount };
    }
}
