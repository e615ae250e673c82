using System.Globalization;
using Hydrocolloid.Formulation.Teaching;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Tests.Teaching;

/// <summary>
/// Ten thousand seeds of every kind: solvable, sane, its own solution marked right, each mistake told from it and named. Each run takes every eleventh of them (eleven, so that
/// every level comes up); with the environment variable HYDROCOLLOID_ALL_SEEDS=1 it takes all.
/// </summary>
public class ManySeedsTests
{
    private const int Seeds = 10_000;

    private static readonly uint s_stride = Environment.GetEnvironmentVariable("HYDROCOLLOID_ALL_SEEDS") == "1" ? 1U : 11U;

    public static TheoryData<string> Kinds => [.. ExerciseKind.Standard.Select(k => k.Id)];

    [Theory, MemberData(nameof(Kinds))]
    public void Every_seed_gives_a_fair_exercise(string id)
    {
        ExerciseKind kind = ExerciseKind.Standard.First(k => k.Id == id);
        var questions = new HashSet<string>(StringComparer.Ordinal);
        for (ulong seed = 0; seed < Seeds; seed += s_stride)
        {
            Exercise exercise = kind.Generate(seed, 1 + (int)(seed % (ulong)kind.Levels));
            questions.Add(exercise.Question + exercise.Form.Options);
            IsFair(exercise, $"{id} {seed}: {exercise.Question}");
        }

        // Kinds of a few situations repeat themselves; none gives the same exercise all along.
        questions.Should().HaveCountGreaterThan(10);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Constraints_give_fair_exercises_too(string id)
    {
        ExerciseKind kind = ExerciseKind.Standard.First(k => k.Id == id);
        ExerciseSettings[] all =
        [
            ExerciseSettings.Default with { Units = UnitSystem.UsCustomary },
            ExerciseSettings.Default with { WithCalculator = false },
            ExerciseSettings.Default with { Units = UnitSystem.UsCustomary, WithCalculator = false },
        ];
        foreach (ExerciseSettings settings in all)
        {
            for (ulong seed = 0; seed < 300; seed++)
            {
                bool there = kind.TryGenerate(seed, 1 + (int)(seed % (ulong)kind.Levels), settings, out Exercise? exercise);
                there.Should().Be(settings.WithCalculator || !kind.NeedsCalculator);
                if (there)
                {
                    IsFair(exercise!, $"{id} {seed} {settings.Units}: {exercise!.Question}");
                }
            }
        }
    }

    // Plain comparisons: an assertion library would take longer than the exercises.
    private static void IsFair(Exercise exercise, string which)
    {
        bool isNumber = exercise.Form.Shape == AnswerShape.Number;
        IsTrue(exercise.Givens.Count + exercise.Things.Count > 0, which + ": data without words");
        if (isNumber)
        {
            double value = exercise.Solution.Value;
            IsTrue(value is > 0 and < 20_000 || exercise.Form.Quantity == QuantityKind.Temperature && value is > -30 and < 250, which + ": sane, but " + value.ToString(CultureInfo.InvariantCulture));
        }

        IsTrue(exercise.Givens.All(g => g.Value is >= 0 and < 20_000), which + ": sane numbers");
        MarkedAnswer own = Marking.Mark(exercise, exercise.AnswerText);
        IsTrue(own.Outcome == MarkOutcome.Right, $"{which}: its own answer {exercise.AnswerText} is right, but {own}");
        IsTrue(exercise.Solution.Steps.Any(s => !s.IsGiven) && exercise.Hints.Count > 0, which + ": worked");
        foreach (ExpectedSlip slip in exercise.Slips)
        {
            string wrong = isNumber ? Written(exercise, slip.Value!.Value) : string.Join(',', slip.Keys);
            if (isNumber)
            {
                IsTrue(Math.Abs(slip.Value!.Value - exercise.Solution.Value) > exercise.Tolerance, $"{which}: {slip.Name} is apart");
                if (slip.Value < 0)
                {
                    continue;
                }
            }

            MarkedAnswer marked = Marking.Mark(exercise, wrong);
            IsTrue(marked.Outcome == MarkOutcome.Wrong && slip.Misconceptions.All(m => marked.Misconceptions.Contains(m) && marked.ToString().Contains(m.Name, StringComparison.Ordinal)),
                $"{which}: {slip.Name} ({wrong}) is named, but {marked}");
            IsTrue(marked.CreditPercent < 100, which + ": partial credit only");
            IsTrue(slip.PartsAtStep == 0 || marked.ToString().Contains(exercise.Solution.Steps[slip.PartsAtStep - 1].Expression, StringComparison.Ordinal) || marked.PartsAt != exercise.Solution.Steps[slip.PartsAtStep - 1],
                which + ": the step where the ways part is shown");
        }
    }

    private static string Written(Exercise exercise, double value) => value.ToString("R", CultureInfo.InvariantCulture) + " " + exercise.Form.Unit;

    private static void IsTrue(bool holds, string what)
    {
        if (!holds)
        {
            what.Should().BeEmpty();
        }
    }
}
