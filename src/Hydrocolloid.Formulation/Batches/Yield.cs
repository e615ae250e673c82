using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>How much to make. Immutable, equal by content.</summary>
public sealed record Yield
{
    private Yield(YieldBasis basis, double grams, int? count, ValueList<Stock> stocks)
    {
        Basis = basis;
        Grams = grams;
        Count = count;
        Stocks = stocks;
    }

    /// <summary>Which mass is stated.</summary>
    public YieldBasis Basis { get; }

    /// <summary>The mass stated: of one portion where <see cref="Count"/> is given; zero where stocks decide.</summary>
    public Mass Mass => Mass.FromGrams(Grams);

    /// <summary>How many portions; null if a single mass or stocks are stated.</summary>
    public int? Count { get; }

    /// <summary>The stocks that decide; empty if a mass is stated.</summary>
    public ValueList<Stock> Stocks { get; }

    internal double Grams { get; }

    internal double TotalGrams => Grams * (Count ?? 1);

    /// <summary>A base mass.</summary>
    /// <param name="mass">Above 0 g.</param>
    /// <returns>The yield.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 g.</exception>
    public static Yield OfBase(Mass mass) => new(YieldBasis.Base, Guard.PositiveGrams(mass), null, default);

    /// <summary>The mass of all lines together, before any loss.</summary>
    /// <param name="mass">Above 0 g.</param>
    /// <returns>The yield.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 g.</exception>
    public static Yield Assembled(Mass mass) => new(YieldBasis.Assembled, Guard.PositiveGrams(mass), null, default);

    /// <summary>The mass of finished gel, after all losses.</summary>
    /// <param name="mass">Above 0 g.</param>
    /// <returns>The yield.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 g.</exception>
    public static Yield Finished(Mass mass) => new(YieldBasis.Finished, Guard.PositiveGrams(mass), null, default);

    /// <summary>Portions of a mass.</summary>
    /// <param name="count">How many; 1 to 1 000 000.</param>
    /// <param name="each">The mass of one; above 0 g.</param>
    /// <param name="basis">Which mass the portions are taken from; finished gel unless stated.</param>
    /// <returns>The yield.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count or the mass is outside its range, or all portions weigh more than 1e9 g.</exception>
    public static Yield Portions(int count, Mass each, YieldBasis basis = YieldBasis.Finished)
    {
        Guard.InRange(count, 1, 1_000_000, "portions");
        double grams = Guard.PositiveGrams(each);
        Guard.InRange(grams * count, 0, Guard.MaxMassGrams, "g", nameof(each));
        return new Yield(Defined(basis), grams, count, default);
    }

    /// <summary>As much as the stocks allow: the one in shortest supply decides.</summary>
    /// <param name="stocks">One stock or several; what is not named is taken as plenty.</param>
    /// <returns>The yield.</returns>
    /// <exception cref="ArgumentException">No stock is named, or one is named twice.</exception>
    public static Yield FromStocks(params Stock[] stocks)
    {
        if (Guard.NotNull(stocks).Length == 0 || stocks.Select(s => Guard.NotNull(s, nameof(stocks)).Label).Distinct(StringComparer.Ordinal).Count() != stocks.Length)
        {
            throw new ArgumentException("Name at least one stock, and each only once.", nameof(stocks));
        }

        return new Yield(YieldBasis.Base, 0, null, ValueList<Stock>.From(stocks));
    }

    /// <summary>The yield in words.</summary>
    /// <returns>The words.</returns>
    public override string ToString()
    {
        string what = Basis switch
        {
            YieldBasis.Base => "of base",
            YieldBasis.Assembled => "assembled",
            _ => "finished",
        };
        return !Stocks.IsEmpty ? "as much as the stocks allow: " + Stocks
            : Count is { } count ? $"{Numbers.Exact(count)} × {Numbers.Significant(Grams, 6)} g {what}"
            : $"{Numbers.Significant(Grams, 6)} g {what}";
    }

    internal static YieldBasis Defined(YieldBasis basis)
        => basis is >= YieldBasis.Finished and <= YieldBasis.Base ? basis : throw new ArgumentOutOfRangeException(nameof(basis));
}
