namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// A run of entries of a book in flat arrays, in the order of the document: what a core works through at a time, and what is copied
/// when one of its entries changes.
/// </summary>
/// <param name="Ids">The ids.</param>
/// <param name="Faults">Why an entry cannot be costed, null for one that can; null if all can.</param>
/// <param name="Starts">Where the lines of each entry begin, and where the last ones end.</param>
/// <param name="Shares">A line's mass in g per g of finished product.</param>
/// <param name="Slots">A line's ingredient: its slot among the names of the book.</param>
/// <param name="OwnSlots">The slot of an entry that others are made with; -1 for all others.</param>
internal sealed record BookSegment(string[] Ids, CostingProblem?[]? Faults, int[] Starts, double[] Shares, int[] Slots, int[] OwnSlots)
{
    /// <summary>How many entries the segments have, the last one excepted: about 150 kB of lines, which fits a core's cache.</summary>
    public const int Size = 1024;

    private int[]? _names;

    /// <summary>Every slot that a line of the segment names, once.</summary>
    public int[] Names => _names ??= [.. new HashSet<int>(Slots)]; // worked out by whoever asks first; the same for all

    public CostingProblem? FaultOf(int entry) => Faults?[entry];

    public ReadOnlySpan<double> SharesOf(int entry) => Shares.AsSpan(Starts[entry], Starts[entry + 1] - Starts[entry]);

    public ReadOnlySpan<int> SlotsOf(int entry) => Slots.AsSpan(Starts[entry], Starts[entry + 1] - Starts[entry]);

    public BookSegment WithOwnSlot(int entry, int slot)
    {
        int[] own = [.. OwnSlots];
        own[entry] = slot;
        return this with { OwnSlots = own };
    }

    public BookSegment WithLines(int entry, (CostingProblem? Fault, double[] Shares, int[] Slots) lines)
    {
        int start = Starts[entry], end = Starts[entry + 1], grown = lines.Shares.Length - (end - start);
        CostingProblem?[] faults = Faults is null ? new CostingProblem?[Ids.Length] : [.. Faults];
        faults[entry] = lines.Fault;
        return new BookSegment(
            Ids, faults.Any(f => f is not null) ? faults : null, [.. Starts.Select((s, i) => i > entry ? s + grown : s)],
            [.. Shares.AsSpan(0, start), .. lines.Shares, .. Shares.AsSpan(end)], [.. Slots.AsSpan(0, start), .. lines.Slots, .. Slots.AsSpan(end)], OwnSlots);
    }
}
