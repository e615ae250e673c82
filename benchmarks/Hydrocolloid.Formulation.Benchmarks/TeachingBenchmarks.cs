using BenchmarkDotNet.Attributes;
using Hydrocolloid.Formulation.Teaching;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>Exercises made and answers marked. The bounds: an exercise with its solution under 200 µs, ten thousand answers marked in under a second.</summary>
[MemoryDiagnoser]
public class TeachingBenchmarks
{
    private readonly Exercise[] _exercises = [.. ExerciseSet.Generate(1, 200).Exercises];
    private readonly string[] _answers;
    private ulong _seed;

    public TeachingBenchmarks() => _answers = [.. _exercises.Select((e, i) => i % 2 == 0 || e.Slips.IsEmpty || e.Slips[0].Value is not { } wrong ? e.AnswerText : e.Form.TextOf(wrong))];

    public static IEnumerable<string> Kinds => ExerciseKind.Standard.Select(k => k.Id);

    [Benchmark, ArgumentsSource(nameof(Kinds))]
    public Exercise OneExercise(string kind) => ExerciseKind.Standard.First(k => k.Id == kind).Generate(_seed++, 1);

    [Benchmark]
    public int TenThousandAnswers()
    {
        int right = 0;
        for (int i = 0; i < 10_000; i++)
        {
            right += Marking.Mark(_exercises[i % 200], _answers[i % 200]).Outcome == MarkOutcome.Right ? 1 : 0;
        }

        return right;
    }
}
