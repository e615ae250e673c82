using System.Diagnostics.CodeAnalysis;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Teaching.Kinds;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>
/// A kind of exercise. The list is open: a school makes its own from a function that turns draws into a draft. The draws come from SplitMix64, seeded by the seed
/// alone, so the same seed gives the same exercise on every machine and target. Immutable, safe to share between threads if the function is pure.
/// </summary>
public sealed class ExerciseKind
{
    private const int MaxTries = 60;

    private readonly Func<ExerciseDraw, ExerciseDraft?> _make;

    /// <summary>Makes a kind.</summary>
    /// <param name="id">A stable kebab-case id.</param>
    /// <param name="title">What it practises, in a few words.</param>
    /// <param name="levels">How many levels it has, 1 to 9.</param>
    /// <param name="make">Turns draws into a draft; null where the draws do not fit together (it is asked again) or the settings do not allow the exercise.</param>
    /// <param name="needsCalculator">Whether it is left out where there is no calculator.</param>
    /// <param name="usesFormula">Whether it can take a teacher's own formula.</param>
    /// <exception cref="ArgumentException">The id is not kebab-case, or the title is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The levels are not from 1 to 9.</exception>
    public ExerciseKind(string id, string title, int levels, Func<ExerciseDraw, ExerciseDraft?> make, bool needsCalculator = false, bool usesFormula = false)
    {
        Id = Ids.Check(id, nameof(id));
        Title = Guard.NotBlank(title);
        Levels = (int)Guard.InRange(levels, 1, 9, "levels");
        _make = Guard.NotNull(make);
        NeedsCalculator = needsCalculator;
        UsesFormula = usesFormula;
    }

    /// <summary>The kinds of the library.</summary>
    public static ValueList<ExerciseKind> Standard { get; } = ValueList<ExerciseKind>.From(
        [.. DoseKinds.All, .. SizeKinds.All, .. StockKinds.All, .. MoneyKinds.All, .. StrengthKinds.All, .. SolutionKinds.All, .. HeatKinds.All, .. ChoiceKinds.All, .. CompatibilityKinds.All, .. MethodKinds.All, .. CauseKinds.All, .. LabelKinds.All]);

    /// <summary>A stable kebab-case id.</summary>
    public string Id { get; }

    /// <summary>What it practises.</summary>
    public string Title { get; }

    /// <summary>How many levels it has.</summary>
    public int Levels { get; }

    /// <summary>Whether it is left out where there is no calculator.</summary>
    public bool NeedsCalculator { get; }

    /// <summary>Whether it can take a teacher's own formula.</summary>
    public bool UsesFormula { get; }

    /// <summary>Makes an exercise.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="level">The level, from 1 to <see cref="Levels"/>.</param>
    /// <param name="settings">What it may use; the default settings unless stated.</param>
    /// <returns>The exercise.</returns>
    /// <exception cref="ArgumentException">The settings allow no exercise of this kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such level.</exception>
    public Exercise Generate(ulong seed, int level, ExerciseSettings? settings = null)
        => TryGenerate(seed, level, settings ?? ExerciseSettings.Default, out Exercise? exercise) ? exercise
            : throw new ArgumentException($"The settings allow no exercise of the kind '{Id}'.", nameof(settings));

    /// <summary>Makes an exercise, if the settings allow one.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="level">The level, from 1 to <see cref="Levels"/>.</param>
    /// <param name="settings">What it may use.</param>
    /// <param name="exercise">The exercise; null if the settings allow none.</param>
    /// <returns>Whether there is one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such level.</exception>
    public bool TryGenerate(ulong seed, int level, ExerciseSettings settings, [NotNullWhen(true)] out Exercise? exercise)
    {
        Guard.NotNull(settings);
        Guard.InRange(level, 1, Levels, "");
        exercise = null;
        if ((NeedsCalculator && !settings.WithCalculator) || (!settings.Formulas.IsEmpty && !UsesFormula))
        {
            return false;
        }

        var random = new SplitMix64(seed);
        for (int i = 0; i < MaxTries && exercise is null; i++)
        {
            var draw = new ExerciseDraw(random, level, settings);
            exercise = _make(draw) is { } draft ? Finished(draft, draw) : null;
        }

        return exercise is not null;
    }

    /// <summary>Id and title.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Id}: {Title}";

    private Exercise? Finished(ExerciseDraft draft, ExerciseDraw draw)
    {
        if (draft.Solve(_ => false) is not { } right || !IsFinite(draft.Form, right))
        {
            return null;
        }

        var exercise = new Exercise(Id, draw.Level, draft.Question, draw.Givens, draw.Things, draft.Form, right, default);
        return exercise with { Slips = SlipFinder.Find(exercise, draft, draw.Settings.Misconceptions) };
    }

    private static bool IsFinite(AnswerForm form, WorkedSolution solution) => form.Shape == AnswerShape.Number
        ? !double.IsNaN(solution.Value) && !double.IsInfinity(solution.Value)
        : !solution.Keys.IsEmpty && solution.Keys.All(k => form.IndexOf(k) >= 0);
}
