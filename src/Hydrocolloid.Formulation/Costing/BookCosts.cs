using System.Collections;
using System.Diagnostics;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// What the formulas of a book cost on a day, in the order of the book. 17 bytes a formula; a cost is made into an object only when it
/// is asked for. Immutable, safe to share between threads.
/// </summary>
[DebuggerDisplay("{Count} costs")]
public sealed class BookCosts : IReadOnlyList<BookCost>
{
    // A window ends when its last segment does; so many that the core that is done first waits a few per cent of the time at most.
    private const int SegmentsAheadPerCore = 16;

    private readonly BookValues _values;
    private readonly decimal[][] _perGram;
    private readonly byte[][] _states;

    private BookCosts(FormulaBook book, PriceList prices, DateTime on, BookValues values, decimal[][] perGram, byte[][] states, int recosted)
    {
        Book = book;
        Prices = prices;
        On = on;
        _values = values;
        _perGram = perGram;
        _states = states;
        Recosted = recosted;
    }

    /// <summary>The book.</summary>
    public FormulaBook Book { get; }

    /// <summary>The prices.</summary>
    public PriceList Prices { get; }

    /// <summary>The day whose prices count.</summary>
    public DateTime On { get; }

    /// <summary>How many formulas there are.</summary>
    public int Count => Book.Count;

    /// <summary>How many formulas were worked out for these costs; the others were taken over from the costs before.</summary>
    public int Recosted { get; }

    /// <summary>Why formulas have no cost, in the order of the book; worked out as it is read.</summary>
    public IEnumerable<CostingProblem> Problems
    {
        get
        {
            for (int s = 0; s < _states.Length; s++)
            {
                for (int e = 0; e < _states[s].Length; e++)
                {
                    if (_states[s][e] != BookValues.Costed)
                    {
                        foreach (CostingProblem problem in At(s, e).Problems)
                        {
                            yield return problem;
                        }
                    }
                }
            }
        }
    }

    /// <summary>A cost by its position in the book.</summary>
    /// <param name="index">From 0 to <see cref="Count"/> - 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such position.</exception>
    public BookCost this[int index] => index >= 0 && index < Count ? At(index / BookSegment.Size, index % BookSegment.Size)
        : throw new ArgumentOutOfRangeException(nameof(index));

    /// <summary>A cost by the id of its formula.</summary>
    /// <param name="id">The id.</param>
    /// <exception cref="ArgumentException">The book has no entry of that id.</exception>
    public BookCost this[string id] => this[Book.PositionOf(id)];

    /// <summary>The costs after a formula has changed: it and what is made with it are worked out again, directly or through others, and nothing else.</summary>
    /// <param name="entry">The changed entry; the book must have one of that id.</param>
    /// <returns>The costs of the changed book.</returns>
    /// <exception cref="ArgumentException">The book has no entry of that id.</exception>
    public BookCosts With(BookEntry entry)
    {
        FormulaBook book = Book.With(entry);
        int position = book.PositionOf(entry.Id);
        (BookValues values, bool[] isChanged) = _values.After(Book, book, position, Prices, On);
        decimal[][] perGram = [.. _perGram];
        byte[][] states = [.. _states];
        int recosted = 0;
        Parallel.For(0, book.Segments.Length, s =>
        {
            BookSegment segment = book.Segments[s];
            bool holdsIt = s == position / BookSegment.Size;
            if (!holdsIt && !BookValues.NamesAny(segment.Names, isChanged))
            {
                return;
            }

            int changed = 0;
            perGram[s] = [.. perGram[s]];
            states[s] = [.. states[s]];
            for (int e = 0; e < segment.Ids.Length; e++)
            {
                if ((holdsIt && e == position % BookSegment.Size) || BookValues.NamesAny(segment.SlotsOf(e), isChanged))
                {
                    perGram[s][e] = values.Cost(segment, e, out states[s][e]);
                    changed++;
                }
            }

            Interlocked.Add(ref recosted, changed);
        });
        return new BookCosts(book, Prices, On, values, perGram, states, recosted);
    }

    /// <summary>The cost of a formula as the price of an ingredient of that id, for the cost sheet of a batch that is made with it.</summary>
    /// <param name="id">The id of the formula.</param>
    /// <returns>The price of 1 kg.</returns>
    /// <exception cref="ArgumentException">The book has no entry of that id, or it has no cost.</exception>
    public Price PriceOf(string id) => this[id].PerKilogram is { Amount: > 0 } cost ? Price.PerMass(id, cost, Mass.FromGrams(1000))
        : throw new ArgumentException($"'{id}' has no cost: {string.Join(" ", this[id].Problems.Select(p => p.Message))}", nameof(id));

    /// <summary>Goes through the costs in the order of the book.</summary>
    /// <returns>The enumerator.</returns>
    public IEnumerator<BookCost> GetEnumerator() => Enumerable.Range(0, Count).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    internal static BookCosts Of(FormulaBook book, PriceList prices, DateTime on, ParallelOptions options)
    {
        BookValues values = BookValues.Of(book, prices, on, options);
        var perGram = new decimal[book.Segments.Length][];
        var states = new byte[book.Segments.Length][];
        Share(0, perGram.Length, options, s =>
        {
            int count = book.Segments[s].Ids.Length;
            Fill(book.Segments[s], values, perGram[s] = new decimal[count], states[s] = new byte[count]);
        });
        return new BookCosts(book, prices, on, values, perGram, states, book.Count);
    }

    internal static IEnumerable<BookCost> Stream(FormulaBook book, PriceList prices, DateTime on, ParallelOptions options)
    {
        BookValues values = BookValues.Of(book, prices, on, options);
        var here = new Window(book, values, options);
        var ahead = new Window(book, values, options);
        Task filling = Task.CompletedTask;
        here.Fill(0);
        try
        {
            for (int first = 0; first < book.Segments.Length; first += here.Size)
            {
                // The cores work on what comes next while the caller takes what is there.
                Window next = ahead;
                int from = first + here.Size;
                filling = options.MaxDegreeOfParallelism > 1 ? Task.Run(() => next.Fill(from)) : Task.CompletedTask;
                for (int i = 0; i < here.Size && first + i < book.Segments.Length; i++)
                {
                    BookSegment segment = book.Segments[first + i];
                    for (int e = 0; e < segment.Ids.Length; e++)
                    {
                        yield return new BookCost(book, prices, on, values, segment, e, here.PerGram[i][e], here.States[i][e]);
                    }
                }

                if (options.MaxDegreeOfParallelism == 1)
                {
                    next.Fill(from);
                }

                filling.GetAwaiter().GetResult();
                options.CancellationToken.ThrowIfCancellationRequested();
                (here, ahead) = (next, here);
            }
        }
        finally
        {
            ((IAsyncResult)filling).AsyncWaitHandle.WaitOne(); // a caller who stops early leaves nothing running
        }
    }

    /// <summary>Does a work for each number of a range, the next one always on the core that is free first.</summary>
    private static void Share(int first, int end, ParallelOptions options, Action<int> work)
    {
        int next = first - 1;
        Parallel.For(0, Math.Max(0, Math.Min(options.MaxDegreeOfParallelism, end - first)), options, _ =>
        {
            for (int i = Interlocked.Increment(ref next); i < end; i = Interlocked.Increment(ref next))
            {
                options.CancellationToken.ThrowIfCancellationRequested();
                work(i);
            }
        });
    }

    private static void Fill(BookSegment segment, BookValues values, decimal[] perGram, byte[] states)
    {
        for (int e = 0; e < segment.Ids.Length; e++)
        {
            perGram[e] = values.Cost(segment, e, out states[e]);
        }
    }

    private BookCost At(int segment, int entry)
        => new(Book, Prices, On, _values, Book.Segments[segment], entry, _perGram[segment][entry], _states[segment][entry]);

    /// <summary>The costs of some segments in a row, in arrays that are used again.</summary>
    private sealed class Window(FormulaBook book, BookValues values, ParallelOptions options)
    {
        public int Size => PerGram.Length;

        public decimal[][] PerGram { get; } = Rows<decimal>(book, options);

        public byte[][] States { get; } = Rows<byte>(book, options);

        /// <summary>Works out the segments from one on, as many as there are.</summary>
        public void Fill(int first)
            => Share(first, Math.Min(first + Size, book.Segments.Length), options, s => BookCosts.Fill(book.Segments[s], values, PerGram[s - first], States[s - first]));

        private static T[][] Rows<T>(FormulaBook book, ParallelOptions options)
            => [.. Enumerable.Range(0, Math.Min(book.Segments.Length, options.MaxDegreeOfParallelism * SegmentsAheadPerCore)).Select(_ => new T[BookSegment.Size])];
    }
}
