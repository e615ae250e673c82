namespace Hydrocolloid.Formulation.Books;

/// <summary>The order in which things that are made with one another can be worked out: level by level, each after what it is made with.</summary>
internal sealed class BookOrder
{
    private const int Shown = 8;

    private readonly bool[] _isUnreached;

    private BookOrder(List<int[]> levels, bool[] isUnreached)
    {
        Levels = levels;
        _isUnreached = isUnreached;
    }

    /// <summary>The numbers of a level; they do not depend on one another.</summary>
    public List<int[]> Levels { get; }

    /// <summary>Whether something is part of a cycle, or made with one that is.</summary>
    public bool IsUnreached(int number) => number < _isUnreached.Length && _isUnreached[number];

    /// <summary>The order of things with the numbers from 0 on.</summary>
    /// <param name="count">How many numbers there are.</param>
    /// <param name="partsOf">The numbers of what one is made with, each once; null for a number that takes no part.</param>
    public static BookOrder Of(int count, Func<int, IEnumerable<int>?> partsOf)
    {
        // A queue, not recursion: a chain of formulas may be as long as the book.
        var waiting = new int[count];
        var users = new List<int>?[count];
        var unreached = new bool[count];
        var level = new List<int>();
        for (int number = 0; number < count; number++)
        {
            if (partsOf(number) is not { } parts)
            {
                continue;
            }

            unreached[number] = true;
            foreach (int part in parts)
            {
                waiting[number]++;
                (users[part] ??= []).Add(number);
            }

            if (waiting[number] == 0)
            {
                level.Add(number);
            }
        }

        var levels = new List<int[]>();
        while (level.Count > 0)
        {
            levels.Add([.. level]);
            level.Clear();
            foreach (int number in levels[levels.Count - 1])
            {
                unreached[number] = false;
                foreach (int user in users[number] ?? [])
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

    /// <summary>The shortest way from a thing back to itself in words; null if it is on no cycle.</summary>
    public string? CycleOf(int number, Func<int, IEnumerable<int>?> partsOf, Func<int, string> nameOf)
    {
        var from = new Dictionary<int, int>();
        var seen = new HashSet<int>();
        var queue = new Queue<int>();
        queue.Enqueue(number);
        while (queue.Count > 0)
        {
            int at = queue.Dequeue();
            foreach (int part in (partsOf(at) ?? []).Where(IsUnreached))
            {
                if (part == number)
                {
                    var way = new List<string>();
                    for (int back = at; back != number; back = from[back])
                    {
                        way.Add(nameOf(back));
                    }

                    way.Reverse();
                    string[] shown = way.Count <= Shown ? [.. way] : [.. way.Take(Shown - 1), "…", way[way.Count - 1]];
                    return string.Join(" is made with ", shown.Prepend(nameOf(number)).Append(nameOf(number)));
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
}
