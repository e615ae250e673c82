using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>How much to make. Immutable, equal by content.</summary>
public sealed record Yield
{
    internal const int MaxPortions = 1_000_000;

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

    /// <summary>How many portions or cavities; null if a single mass or stocks are stated.</summary>
    public int? Count { get; }

    /// <summary>The stocks that decide; empty if a mass is stated.</summary>
    public ValueList<Stock> Stocks { get; }

    /// <summary>The mould that is filled; null unless moulds decide.</summary>
    public MouldPlan? Mould { get; private init; }

    /// <summary>The temperature at which the moulds are filled; null for that of the process plan.</summary>
    public Temperature? CastAt => CastCelsius is { } c ? Temperature.FromDegreesCelsius(c) : null;

    private double? CastCelsius { get; init; }

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
        Guard.InRange(count, 1, MaxPortions, "portions");
        double grams = Guard.PositiveGrams(each);
        Guard.InRange(grams * count, 0, Guard.MaxMassGrams, "g", nameof(each));
        return new Yield(Defined(basis), grams, count, default);
    }

    /// <summary>As much as fills cavities of a mould.</summary>
    /// <param name="cavities">How many; 1 to 1 000 000.</param>
    /// <param name="mould">The mould; its volume must be known.</param>
    /// <param name="castAt">The temperature at which it is filled; null for that of the formula's process plan, or 20 °C if it states none.</param>
    /// <returns>The yield.</returns>
    /// <exception cref="ArgumentException">The volume of the mould is not known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count or the temperature is outside its range.</exception>
    public static Yield Moulds(int cavities, MouldPlan mould, Temperature? castAt = null)
    {
        if (Guard.NotNull(mould).FillVolume is null)
        {
            throw new ArgumentException($"The volume of '{mould.Name}' is not known: measure it, or state its shape.", nameof(mould));
        }

        return new Yield(YieldBasis.Assembled, 0, (int)Guard.InRange(cavities, 1, MaxPortions, "cavities"), default)
        {
            Mould = mould,
            CastCelsius = castAt is { } t ? Guard.Celsius(t, nameof(castAt)) : null,
        };
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

    /// <summary>Reads a yield as a cook writes it: a mass such as <c>2.4 kg</c>, or portions such as <c>48 x 35 g</c>. Invariant numbers, units of <see cref="KitchenUnit"/>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="basis">Which mass it states.</param>
    /// <param name="yield">The yield; null if the text is refused.</param>
    /// <param name="error">Why the text was refused; empty if it was not.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParse(string? text, YieldBasis basis, [NotNullWhen(true)] out Yield? yield, out string error)
    {
        Defined(basis);
        yield = null;
        string[] parts = (text ?? "").Split('x', '×');
        if (parts.Length > 2)
        {
            error = $"'{text}' is not a yield: write a mass such as '2.4 kg', or portions such as '48 x 35 g'.";
            return false;
        }

        if (!QuantityText.TryParseMass(parts[parts.Length - 1].Trim(), CultureInfo.InvariantCulture, out Mass mass, out error))
        {
            return false;
        }

        int count = 1;
        if (parts.Length == 2 && !(int.TryParse(parts[0].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out count) && count is >= 1 and <= MaxPortions))
        {
            error = $"'{parts[0].Trim()}' is not a count of portions: write a whole number from 1 to {Numbers.Exact(MaxPortions)}.";
            return false;
        }

        double grams = Guard.Grams(mass);
        if (!(grams > 0 && grams * count <= Guard.MaxMassGrams))
        {
            error = $"'{text}' is {Numbers.Significant(grams * count, 6)} g; a yield is more than 0 g and at most {Numbers.Exact(Guard.MaxMassGrams)} g.";
            return false;
        }

        yield = parts.Length == 2 ? Portions(count, mass, basis) : new Yield(basis, grams, null, default);
        return true;
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
        return Mould is not null ? $"{Numbers.Exact(Count!.Value)} × {Mould}" : !Stocks.IsEmpty ? "as much as the stocks allow: " + Stocks
            : Count is { } count ? $"{Numbers.Exact(count)} × {Numbers.Significant(Grams, 6)} g {what}"
            : $"{Numbers.Significant(Grams, 6)} g {what}";
    }

    internal static YieldBasis Defined(YieldBasis basis)
        => basis is >= YieldBasis.Finished and <= YieldBasis.Base ? basis : throw new ArgumentOutOfRangeException(nameof(basis));
}
