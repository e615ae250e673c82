namespace Hydrocolloid.Formulation.Teaching;

/// <summary>Works out what known mistakes would give, alone and two together, and keeps those that can be told from the right answer and, for two together, from each other.</summary>
internal static class SlipFinder
{
    public static ValueList<ExpectedSlip> Find(Exercise exercise, ExerciseDraft draft, ValueList<Misconception> own)
    {
        var found = new List<ExpectedSlip>();
        foreach (Misconception one in draft.Misconceptions)
        {
            Add(found, exercise, draft.Solve(m => m.Equals(one)), one);
        }

        foreach (Misconception one in own)
        {
            if (exercise.Form.Shape == AnswerShape.Number && one.WouldGive?.Invoke(exercise) is { } value)
            {
                AddIfApart(found, exercise, new ExpectedSlip(ValueList<Misconception>.Own([one]), value, default, 0, 0));
            }
        }

        if (exercise.Form.Shape == AnswerShape.Number)
        {
            AddPairs(found, exercise, draft);
        }

        return ValueList<ExpectedSlip>.Own([.. found]);
    }

    public static bool IsSame(AnswerForm form, double answer, double expected) => Math.Abs(answer - expected) <= form.ToleranceOf(expected) * (1 + 1e-9);

    private static void AddPairs(List<ExpectedSlip> found, Exercise exercise, ExerciseDraft draft)
    {
        // Two together only of mistakes that can each be told alone.
        ExpectedSlip[] alone = [.. found];
        Misconception[] told = [.. alone.Select(s => s.Misconceptions[0]).Where(draft.Misconceptions.Contains)];
        var pairs = new List<ExpectedSlip>();
        for (int i = 0; i < told.Length; i++)
        {
            for (int j = i + 1; j < told.Length; j++)
            {
                (Misconception a, Misconception b) = (told[i], told[j]);
                Add(pairs, exercise, draft.Solve(m => m.Equals(a) || m.Equals(b)), a, b);
            }
        }

        foreach (ExpectedSlip pair in pairs)
        {
            if (!alone.Concat(pairs.Where(p => !ReferenceEquals(p, pair))).Any(o => IsNear(exercise.Form, o.Value!.Value, pair.Value!.Value)))
            {
                found.Add(pair);
            }
        }
    }

    private static void Add(List<ExpectedSlip> found, Exercise exercise, WorkedSolution? wrong, params Misconception[] made)
    {
        if (wrong is null)
        {
            return;
        }

        (int partsAt, int kept) = Compare(exercise.Solution, wrong);
        bool isNumber = exercise.Form.Shape == AnswerShape.Number;
        AddIfApart(found, exercise, new ExpectedSlip(ValueList<Misconception>.Own(made), isNumber ? wrong.Value : null, wrong.Keys, partsAt, kept));
    }

    private static void AddIfApart(List<ExpectedSlip> found, Exercise exercise, ExpectedSlip slip)
    {
        bool apart = slip.Value is { } value
            ? !double.IsNaN(value) && !double.IsInfinity(value) && !IsNear(exercise.Form, value, exercise.Solution.Value)
            : slip.Keys != exercise.Solution.Keys;
        if (apart)
        {
            found.Add(slip);
        }
    }

    // One answer cannot be within the tolerance of both.
    private static bool IsNear(AnswerForm form, double a, double b) => Math.Abs(a - b) <= (form.ToleranceOf(a) + form.ToleranceOf(b)) * (1 + 1e-9);

    /// <summary>
    /// Where the wrong way parts from the right one, and how many worked steps both have. Where it leaves out steps, the last of these is where it shows: not the sugar itself,
    /// but the sum that the sugar belongs to.
    /// </summary>
    private static (int PartsAt, int Kept) Compare(WorkedSolution right, WorkedSolution wrong)
    {
        int partsAt = 0, kept = 0;
        bool isLeavingOut = false;
        for (int i = 0; i < right.Steps.Count; i++)
        {
            SolutionStep step = right.Steps[i];
            if (step.IsGiven)
            {
                continue;
            }

            // A mistake at the end works the same quantity out once more: the last time counts.
            SolutionStep? same = wrong.Steps.LastOrDefault(s => s.Quantity == step.Quantity);
            if (same is not null && (step.Value is { } value ? same.Value is { } other && Math.Abs(other - value) <= 1e-9 * Math.Abs(value) : same.Expression == step.Expression))
            {
                kept++;
                isLeavingOut = false;
            }
            else if (partsAt == 0 || (isLeavingOut && same is null))
            {
                partsAt = i + 1;
                isLeavingOut = same is null;
            }
        }

        return (partsAt, kept);
    }
}
