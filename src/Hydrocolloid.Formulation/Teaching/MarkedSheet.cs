namespace Hydrocolloid.Formulation.Teaching;

/// <summary>The answers of one student, marked, in the order of the set. Immutable, equal by content.</summary>
/// <param name="Student">The name or number.</param>
/// <param name="Answers">One for each exercise of the set; an exercise left out is asked again.</param>
public sealed record MarkedSheet(string Student, ValueList<MarkedAnswer> Answers)
{
    /// <summary>The credit of the whole sheet, % of the full mark.</summary>
    public double CreditPercent => Answers.IsEmpty ? 0 : Answers.Average(a => a.CreditPercent);

    /// <summary>The misconceptions of a class, the commonest first, each with how often it was met.</summary>
    /// <param name="sheets">The sheets.</param>
    /// <returns>Misconception and count.</returns>
    public static ValueList<(Misconception Misconception, int Count)> Commonest(IEnumerable<MarkedSheet> sheets)
        => ValueList<(Misconception, int)>.From(Internal.Guard.NotNull(sheets).SelectMany(s => s.Answers).SelectMany(a => a.Misconceptions).GroupBy(m => m)
            .Select(g => (g.Key, g.Count())).OrderByDescending(g => g.Item2).ThenBy(g => g.Key.Id, StringComparer.Ordinal));
}
