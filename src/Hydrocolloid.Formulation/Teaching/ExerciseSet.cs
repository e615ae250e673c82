using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>A set of exercises, the easy ones first. Immutable, equal by content.</summary>
/// <param name="Exercises">The exercises, in order.</param>
public sealed record ExerciseSet(ValueList<Exercise> Exercises)
{
    private const int MaxCount = 1000;

    /// <summary>Makes a set without repeats: the kinds in turn, in an order of the seed's, with levels spread from the lowest to the highest.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="count">How many; 1 to 1000.</param>
    /// <param name="settings">What they may use; the default settings unless stated.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentException">The settings allow not so many different exercises.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is not from 1 to 1000.</exception>
    public static ExerciseSet Generate(ulong seed, int count, ExerciseSettings? settings = null)
    {
        Guard.InRange(count, 1, MaxCount, "exercises");
        ExerciseSettings allowed = settings ?? ExerciseSettings.Default;
        var random = new SplitMix64(seed);
        List<ExerciseKind> kinds = [.. allowed.Kinds.Where(k => LowestOf(k, allowed) <= HighestOf(k, allowed))];
        random.Shuffle(kinds);
        var made = new List<Exercise>();
        var questions = new HashSet<string>(StringComparer.Ordinal);
        // A kind that fails, or repeats itself, loses its turn; after enough lost turns there is no more to be had.
        int turn = 0, lost = 0;
        while (made.Count < count && lost < 40 * (kinds.Count + 1) && kinds.Count > 0)
        {
            ExerciseKind kind = kinds[turn++ % kinds.Count];
            int low = LowestOf(kind, allowed), high = HighestOf(kind, allowed);
            int level = low + (int)((long)(high - low + 1) * made.Count / count);
            if (kind.TryGenerate(random.Next(), level, allowed, out Exercise? exercise) && questions.Add(exercise.Question + exercise.Form.Options))
            {
                made.Add(exercise);
            }
            else
            {
                lost++;
            }
        }

        return made.Count == count
            ? new ExerciseSet(ValueList<Exercise>.From(made.Select((e, i) => (e, i)).OrderBy(p => p.e.Level).ThenBy(p => p.i).Select(p => p.e)))
            : throw new ArgumentException($"The settings allow only {Numbers.Exact(made.Count)} different exercises.", nameof(settings));
    }

    private static int LowestOf(ExerciseKind kind, ExerciseSettings settings) => Math.Max(1, Math.Min(settings.MinLevel, kind.Levels));

    private static int HighestOf(ExerciseKind kind, ExerciseSettings settings) => Math.Min(kind.Levels, settings.MaxLevel);
}
