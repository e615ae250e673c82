using BenchmarkDotNet.Attributes;
using Hydrocolloid.Formulation.Teaching;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>One exercise with its solution and what known mistakes give, at the highest level of its kind. The target is 200 µs; there is nothing by hand to measure it against.</summary>
[MemoryDiagnoser]
public class TeachingBenchmarks
{
    private ulong _seed;

    public static IEnumerable<string> Kinds => ExerciseKind.Standard.Select(k => k.Id);

    [Benchmark, ArgumentsSource(nameof(Kinds))]
    public Exercise Generate_OneExercise(string kind)
    {
        ExerciseKind made = ExerciseKind.Standard.First(k => k.Id == kind);
        return made.Generate(_seed++, made.Levels);
    }
}
