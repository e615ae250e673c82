using System.Diagnostics;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// Many formulas made ready for costing. A line whose ingredient has the id of another entry stands for that entry; entries that
/// others are made with are costed once, and cycles are reported. The formulas themselves are not kept: a book is flat arrays of
/// 12 bytes a line, in the order of the entries. Immutable, safe to share between threads.
/// </summary>
[DebuggerDisplay("{Count} formulas")]
public sealed class FormulaBook
{
    private const double MaxShare = 1e6;

    private readonly Dictionary<string, int> _positions;

    private FormulaBook(BookSegment[] segments, BookNames names, Dictionary<string, int> positions)
    {
        Segments = segments;
        Names = names;
        _positions = positions;
        Count = segments.Sum(s => s.Ids.Length);
        Order = BookOrder.Of(names.Count, PartsOf);
    }

    /// <summary>How many entries there are, those that cannot be costed included.</summary>
    public int Count { get; }

    internal BookSegment[] Segments { get; }

    internal BookNames Names { get; }

    internal BookOrder Order { get; }

    /// <summary>Makes a book. The entries are read one by one, so that they need not all be in memory.</summary>
    /// <param name="entries">The entries. One whose id was there before is reported and not costed.</param>
    /// <returns>The book.</returns>
    public static FormulaBook From(IEnumerable<BookEntry> entries)
    {
        var names = new BookNames();
        var positions = new Dictionary<string, int>(StringComparer.Ordinal);
        var segments = new List<BookSegment>();
        var ids = new List<string>(BookSegment.Size);
        var faults = new List<CostingProblem?>(BookSegment.Size);
        var starts = new List<int>(BookSegment.Size + 1) { 0 };
        var shares = new List<double>();
        var slots = new List<int>();
        void Close()
        {
            segments.Add(new BookSegment(
                [.. ids], faults.Any(f => f is not null) ? [.. faults] : null, [.. starts], [.. shares], [.. slots], [.. Enumerable.Repeat(-1, ids.Count)]));
            ids.Clear();
            faults.Clear();
            starts.RemoveRange(1, starts.Count - 1);
            shares.Clear();
            slots.Clear();
        }

        foreach (BookEntry entry in Guard.NotNull(entries))
        {
            (CostingProblem? fault, double[] entryShares, int[] entrySlots) = LinesOf(Guard.NotNull(entry, nameof(entries)), names);
            int position = segments.Count * BookSegment.Size + ids.Count;
            bool isRepeated = positions.ContainsKey(entry.Id);
            if (!isRepeated)
            {
                positions.Add(entry.Id, position);
            }

            ids.Add(entry.Id);
            faults.Add(isRepeated ? new CostingProblem("id-repeated", entry.Id, $"Another entry of the book, number {Numbers.Exact(positions[entry.Id] + 1)}, has this id.") : fault);
            shares.AddRange(entryShares);
            slots.AddRange(entrySlots);
            starts.Add(shares.Count);
            if (ids.Count == BookSegment.Size)
            {
                Close();
            }
        }

        if (ids.Count > 0)
        {
            Close();
        }

        BookSegment[] all = [.. segments];
        Link(all, names, positions, 0);
        return new FormulaBook(all, names, positions);
    }

    /// <summary>The book with another formula in the place of an entry; the rest is shared.</summary>
    /// <param name="entry">The entry; the book must have one of that id.</param>
    /// <returns>The book.</returns>
    /// <exception cref="ArgumentException">The book has no entry of that id.</exception>
    public FormulaBook With(BookEntry entry)
    {
        int position = PositionOf(Guard.NotNull(entry).Id);
        var names = new BookNames(Names);
        BookSegment[] segments = [.. Segments];
        int segment = position / BookSegment.Size;
        segments[segment] = segments[segment].WithLines(position % BookSegment.Size, LinesOf(entry, names));
        Link(segments, names, _positions, Names.Count);
        return new FormulaBook(segments, names, _positions);
    }

    /// <summary>What every formula costs on a day; kept, so that it can be looked up and brought up to date.</summary>
    /// <param name="prices">The prices.</param>
    /// <param name="on">The day whose prices count, without a time.</param>
    /// <param name="maxCores">How many cores to use at most; null for all.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The costs.</returns>
    /// <exception cref="ArgumentException">The day has a time.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one core.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public BookCosts Cost(PriceList prices, DateTime on, int? maxCores = null, CancellationToken cancellation = default)
        => BookCosts.Of(this, Guard.NotNull(prices), Days.Check(on), OptionsFor(maxCores, cancellation));

    /// <summary>What every formula costs on a day, one by one in the order of the book; nothing is kept, and about 16 000 a core are worked out ahead.</summary>
    /// <param name="prices">The prices.</param>
    /// <param name="on">The day whose prices count, without a time.</param>
    /// <param name="maxCores">How many cores to use at most; null for all.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The costs.</returns>
    /// <exception cref="ArgumentException">The day has a time.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one core.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public IEnumerable<BookCost> Stream(PriceList prices, DateTime on, int? maxCores = null, CancellationToken cancellation = default)
        => BookCosts.Stream(this, Guard.NotNull(prices), Days.Check(on), OptionsFor(maxCores, cancellation));

    /// <summary>The slots of the entries that an entry is made with; null for an ingredient.</summary>
    internal IEnumerable<int>? PartsOf(int slot)
    {
        if (Names.EntryOf(slot) < 0)
        {
            return null;
        }

        (BookSegment segment, int entry) = Locate(Names.EntryOf(slot));
        return segment.SlotsOf(entry).ToArray().Where(s => Names.EntryOf(s) >= 0).Distinct();
    }

    internal (BookSegment Segment, int Entry) Locate(int position) => (Segments[position / BookSegment.Size], position % BookSegment.Size);

    internal int PositionOf(string id) => _positions.TryGetValue(Guard.NotNull(id), out int position) ? position
        : throw new ArgumentException($"The book has no entry '{id}'.", nameof(id));

    private static ParallelOptions OptionsFor(int? maxCores, CancellationToken cancellation) => new()
    {
        CancellationToken = cancellation,
        MaxDegreeOfParallelism = maxCores is { } cores ? (int)Guard.InRange(cores, 1, 10_000, "cores", nameof(maxCores)) : Environment.ProcessorCount,
    };

    /// <summary>Tells names and entries of each other, from a slot on.</summary>
    private static void Link(BookSegment[] segments, BookNames names, Dictionary<string, int> positions, int from)
    {
        for (int slot = from; slot < names.Count; slot++)
        {
            if (positions.TryGetValue(names[slot], out int position))
            {
                names.SetEntry(slot, position);
                int segment = position / BookSegment.Size;
                segments[segment] = segments[segment].WithOwnSlot(position % BookSegment.Size, slot);
            }
        }
    }

    private static (CostingProblem? Fault, double[] Shares, int[] Slots) LinesOf(BookEntry entry, BookNames names)
    {
        if (entry.Make(entry.Formula, out BookProblem? problem) is not { } batch)
        {
            return (new CostingProblem(problem!.Id, entry.Id, problem.Message), [], []);
        }

        double[] shares = [.. batch.Lines.Select(l => l.Grams / batch.FinishedGrams)];
        return shares.Any(s => !(s <= MaxShare))
            ? (new CostingProblem("batch-impossible", entry.Id, $"Its losses leave less than 1/{Numbers.Exact(MaxShare)} of a line's mass."), [], [])
            : (null, shares, [.. batch.Lines.Select(l => names.SlotOf(l.Line.Ingredient))]);
    }
}
