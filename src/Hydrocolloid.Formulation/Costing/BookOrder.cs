namespace Hydrocolloid.Formulation.Costing;

/// <summary>The order in which the entries that others are made with can be costed: level by level, each after what it is made with.</summary>
internal sealed class BookOrder
{
    private const int Shown = 8;

    private readonly bool[] _isUnreached;

    private BookOrder(List<int[]> levels, bool[] isUnreached)
    {
        Levels = levels;
        _isUnreached = isUnreached;
    }

    /// <summary>The slots of a level; they do not depend on one another.</summary>
    public List<int[]> Levels { get; }

    /// <summary>Whether an entry is part of a cycle, or made with one that is.</summary>
    public bool IsUnreached(int slot) => slot < _isUnreached.Length && _isUnreached[slot];

    public static BookOrder Of(FormulaBook book)
    {
        // A queue, not recursion: a chain of formulas may be as long as the book.
        BookNames names = book.Names;
        var waiting = new int[names.Count];
        var users = new List<int>?[names.Count];
        var unreached = new bool[names.Count];
        var level = new List<int>();
        for (int slot = 0; slot < names.Count; slot++)
        {
            if (names.EntryOf(slot) < 0)
            {
                continue;
            }

            unreached[slot] = true;
            foreach (int part in PartsOf(book, slot))
            {
                waiting[slot]++;
                (users[part] ??= []).Add(slot);
            }

            if (waiting[slot] == 0)
            {
                level.Add(slot);
            }
        }

        var levels = new List<int[]>();
        while (level.Count > 0)
        {
            levels.Add([.. level]);
            level.Clear();
            foreach (int slot in levels[levels.Count - 1])
            {
                unreached[slot] = false;
                foreach (int user in users[slot] ?? [])
                {
                    waiting[user]--;
                    if (waiting[user] == 0)
                    {
                        level.Add(user);
                    }
                }
            }
        }

        return new BookOrder(levels, unreached);
    }

    /// <summary>The shortest way from an entry back to itself; null if it is on no cycle.</summary>
    public string? CycleOf(FormulaBook book, int slot)
    {
        var from = new Dictionary<int, int>();
        var seen = new HashSet<int>();
        var queue = new Queue<int>();
        queue.Enqueue(slot);
        while (queue.Count > 0)
        {
            int at = queue.Dequeue();
            foreach (int part in PartsOf(book, at).Where(IsUnreached))
            {
                if (part == slot)
                {
                    var way = new List<string>();
                    for (int back = at; back != slot; back = from[back])
                    {
                        way.Add(book.Names[back]);
                    }

                    way.Reverse();
                    string[] shown = way.Count <= Shown ? [.. way] : [.. way.Take(Shown - 1), "…", way[way.Count - 1]];
                    return string.Join(" is made with ", shown.Prepend(book.Names[slot]).Append(book.Names[slot]));
                }

                if (seen.Add(part))
                {
                    from[part] = at;
                    queue.Enqueue(part);
                }
            }
        }

        return null;
    }

    private static IEnumerable<int> PartsOf(FormulaBook book, int slot)
    {
        (BookSegment segment, int entry) = book.Locate(book.Names.EntryOf(slot));
        return segment.SlotsOf(entry).ToArray().Where(s => book.Names.EntryOf(s) >= 0).Distinct();
    }
}
