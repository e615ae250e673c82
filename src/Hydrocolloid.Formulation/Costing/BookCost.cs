using System.Runtime.InteropServices;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>What one formula of a book costs. Immutable; not made but by a book.</summary>
[StructLayout(LayoutKind.Auto)]
public readonly struct BookCost : IEquatable<BookCost>
{
    private readonly FormulaBook _book;
    private readonly PriceList _prices;
    private readonly DateTime _on;
    private readonly BookValues _values;
    private readonly BookSegment _segment;
    private readonly int _entry;
    private readonly decimal _perGram;
    private readonly byte _state;

    internal BookCost(FormulaBook book, PriceList prices, DateTime on, BookValues values, BookSegment segment, int entry, decimal perGram, byte state)
    {
        _book = book;
        _prices = prices;
        _on = on;
        _values = values;
        _segment = segment;
        _entry = entry;
        _perGram = perGram;
        _state = state;
    }

    /// <summary>The id of the formula.</summary>
    public string Id => _segment?.Ids[_entry] ?? "";

    /// <summary>Whether it has a cost.</summary>
    public bool IsCosted => _segment is not null && _state == BookValues.Costed;

    /// <summary>The cost of 1 kg of finished product, not rounded; null if it has none.</summary>
    public Money? PerKilogram => IsCosted ? new Money(_perGram * 1000, _prices.Currency) : null;

    /// <summary>Why it has no cost: every ingredient without a price, every part without a cost; empty if it has one.</summary>
    public ValueList<CostingProblem> Problems => IsCosted || _segment is null ? default : ValueList<CostingProblem>.From(FindProblems());

    /// <summary>True if both are of one formula and the same cost.</summary>
    /// <param name="left">One cost.</param>
    /// <param name="right">The other cost.</param>
    /// <returns>Whether they are equal.</returns>
    public static bool operator ==(BookCost left, BookCost right) => left.Equals(right);

    /// <summary>True if the formulas or their costs differ.</summary>
    /// <param name="left">One cost.</param>
    /// <param name="right">The other cost.</param>
    /// <returns>Whether they differ.</returns>
    public static bool operator !=(BookCost left, BookCost right) => !left.Equals(right);

    /// <summary>The cost of a mass of finished product, such as a portion; not rounded.</summary>
    /// <param name="mass">The mass.</param>
    /// <returns>The cost; null if it has none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative or beyond 1e9 g.</exception>
    public Money? Of(Mass mass)
    {
        decimal grams = Amounts.Of(Guard.Grams(mass));
        return IsCosted ? new Money(_perGram, _prices.Currency) * grams : null;
    }

    /// <inheritdoc/>
    public bool Equals(BookCost other) => Id == other.Id && _state == other._state && _perGram == other._perGram && _prices?.Currency == other._prices?.Currency;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is BookCost other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked(StringComparer.Ordinal.GetHashCode(Id) * 31 + _perGram.GetHashCode());

    /// <summary>The id and the cost of 1 kg.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Id}: {(PerKilogram is { } cost ? cost + " per kg" : "no cost")}";

    private List<CostingProblem> FindProblems()
    {
        var problems = new List<CostingProblem>();
        if (_segment.FaultOf(_entry) is { } fault)
        {
            problems.Add(fault);
            return problems;
        }

        FormulaBook book = _book;
        int own = _segment.OwnSlots[_entry];
        if (own >= 0 && _book.Order.IsUnreached(own) && _book.Order.CycleOf(own, book.PartsOf, s => book.Names[s]) is { } cycle)
        {
            problems.Add(new CostingProblem("cycle", Id, cycle + "."));
            return problems;
        }

        foreach (int slot in _segment.SlotsOf(_entry).ToArray().Where(IsWithoutCost).Distinct())
        {
            string name = _book.Names[slot];
            problems.Add(_book.Names.EntryOf(slot) >= 0 ? new CostingProblem("part-without-cost", Id, $"'{name}' of the book has no cost.")
                : !_prices.TryFind(name, _on, out Price? price) ? new CostingProblem("price-missing", Id, $"There is no price of '{name}' on {Days.Text(_on)}.")
                : _values.StateOf(slot) == BookValues.Unpriced ? new CostingProblem("density-missing", Id, $"The price of '{name}' is for a volume, and no density is stated.")
                : new CostingProblem("cost-too-large", Id, $"The price of '{name}' is beyond what is reckoned with."));
        }

        if (problems.Count == 0)
        {
            problems.Add(new CostingProblem("cost-too-large", Id, "The cost is beyond what is reckoned with."));
        }

        return problems;
    }

    private bool IsWithoutCost(int slot) => _values.StateOf(slot) != BookValues.Costed;
}
