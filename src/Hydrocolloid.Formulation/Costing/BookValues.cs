namespace Hydrocolloid.Formulation.Costing;

/// <summary>What 1 g of everything that a book names costs: the table that the lines are looked up in.</summary>
internal sealed class BookValues
{
    public const byte Costed = 0;
    public const byte Unpriced = 1;
    public const byte Broken = 2;

    private const int WorthSharing = 64;

    private const decimal MaxPerGram = 1_000_000_000_000m;

    private readonly decimal[] _perGram;
    private readonly byte[] _states;
    private bool _allCosted = true;

    private BookValues(int count)
    {
        _perGram = new decimal[count];
        _states = new byte[count];
    }

    /// <summary>The table of a whole book.</summary>
    public static BookValues Of(FormulaBook book, PriceList prices, DateTime on, ParallelOptions options)
    {
        var values = new BookValues(book.Names.Count);
        for (int slot = 0; slot < book.Names.Count; slot++)
        {
            values.SetPrice(slot, book, prices, on);
        }

        foreach (int[] level in book.Order.Levels)
        {
            if (level.Length < WorthSharing)
            {
                Array.ForEach(level, slot => values.SetPart(slot, book));
                continue;
            }

            Parallel.For(0, level.Length, options, i => values.SetPart(level[i], book));
        }

        return values;
    }

    /// <summary>The table after an entry changed, and the slots whose value may be another one.</summary>
    public (BookValues Values, bool[] IsChanged) After(FormulaBook before, FormulaBook book, int changedPosition, PriceList prices, DateTime on)
    {
        var values = new BookValues(book.Names.Count);
        Array.Copy(_perGram, values._perGram, _perGram.Length);
        Array.Copy(_states, values._states, _states.Length);
        values._allCosted = _allCosted;
        var isChanged = new bool[book.Names.Count];
        for (int slot = 0; slot < isChanged.Length; slot++)
        {
            bool isNew = slot >= _perGram.Length;
            isChanged[slot] = isNew || before.Order.IsUnreached(slot) || book.Order.IsUnreached(slot) || book.Names.EntryOf(slot) == changedPosition;
            if (isNew || book.Order.IsUnreached(slot))
            {
                values.SetPrice(slot, book, prices, on);
            }
            else if (book.Names.EntryOf(slot) < 0 && before.Names.DensityKgPerM3(slot) != book.Names.DensityKgPerM3(slot))
            {
                values.SetPrice(slot, book, prices, on); // the changed entry is the first to state a density
                isChanged[slot] = true;
            }
        }

        foreach (int slot in book.Order.Levels.SelectMany(l => l))
        {
            (BookSegment segment, int entry) = book.Locate(book.Names.EntryOf(slot));
            if (isChanged[slot] || NamesAny(segment.SlotsOf(entry), isChanged))
            {
                isChanged[slot] = true;
                values.SetPart(slot, book);
            }
        }

        values._allCosted = Array.TrueForAll(values._states, s => s == Costed);
        return (values, isChanged);
    }

    public static bool NamesAny(ReadOnlySpan<int> slots, bool[] marks)
    {
        foreach (int slot in slots)
        {
            if (marks[slot])
            {
                return true;
            }
        }

        return false;
    }

    public byte StateOf(int slot) => _states[slot];

    public decimal PerGram(int slot) => _perGram[slot];

    /// <summary>The cost of 1 g of an entry's finished product, and whether it is one.</summary>
    public decimal Cost(BookSegment segment, int entry, out byte state)
    {
        int own = segment.OwnSlots[entry];
        if (own >= 0)
        {
            state = _states[own];
            return _perGram[own];
        }

        return Work(segment, entry, out state);
    }

    private decimal Work(BookSegment segment, int entry, out byte state)
    {
        ReadOnlySpan<int> slots = segment.SlotsOf(entry);
        state = segment.Faults?[entry] is not null ? Broken : _allCosted ? Costed : WorstOf(slots);
        if (state != Costed)
        {
            return 0;
        }

        ReadOnlySpan<double> shares = segment.SharesOf(entry);
        decimal[] perGram = _perGram;
        decimal sum = 0;
        for (int i = 0; i < slots.Length; i++)
        {
            sum += (decimal)shares[i] * perGram[slots[i]];
        }

        state = sum <= MaxPerGram ? Costed : Broken; // what costs that much could overflow where it is a part
        return sum;
    }

    private byte WorstOf(ReadOnlySpan<int> slots)
    {
        byte worst = Costed;
        foreach (int slot in slots)
        {
            worst = Math.Max(worst, _states[slot]);
        }

        return worst;
    }

    private void SetState(int slot, byte state)
    {
        _states[slot] = state;
        if (state != Costed)
        {
            _allCosted = false; // all who depend on the slot are of a later level, and see it
        }
    }

    private void SetPrice(int slot, FormulaBook book, PriceList prices, DateTime on)
    {
        if (book.Names.EntryOf(slot) >= 0)
        {
            _perGram[slot] = 0;
            SetState(slot, book.Order.IsUnreached(slot) ? Broken : Costed); // the others are worked out after the prices
            return;
        }

        decimal? perGram = prices.TryFind(book.Names[slot], on, out Price? price) ? price.PerGram(book.Names.DensityKgPerM3(slot)) : null;
        _perGram[slot] = perGram ?? 0;
        SetState(slot, perGram is null ? Unpriced : perGram <= MaxPerGram ? Costed : Broken);
    }

    private void SetPart(int slot, FormulaBook book)
    {
        (BookSegment segment, int entry) = book.Locate(book.Names.EntryOf(slot));
        _perGram[slot] = Work(segment, entry, out byte state);
        SetState(slot, state);
    }
}
