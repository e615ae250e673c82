using System.Globalization;
using BenchmarkDotNet.Attributes;
using Hydrocolloid.Formulation.Teaching;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>
/// Ten thousand answers to numbers, every second one right, the others a known mistake. The target is one second. By hand: the number in front of the unit is parsed and compared with the
/// right one and the wrong ones; units are not converted, bad input is not told apart, and there is no feedback.
/// </summary>
[MemoryDiagnoser]
public class MarkingBenchmarks
{
    private const int Answers = 10_000;

    private readonly Exercise[] _exercises = [.. ExerciseSet.Generate(1, 400).Exercises.Where(e => e.Form.Shape == AnswerShape.Number)];
    private readonly string[] _answers;
    private readonly (double Right, double Tolerance, double[] Wrong)[] _plain;

    public MarkingBenchmarks()
    {
        _answers = [.. _exercises.Select((e, i) => e.Form.TextOf(i % 2 == 0 || e.Slips.IsEmpty ? e.Solution.Value : e.Slips[0].Value!.Value))];
        _plain = [.. _exercises.Select(e => (e.Solution.Value, e.Tolerance, e.Slips.Select(s => s.Value!.Value).ToArray()))];
    }

    [Benchmark(Baseline = true)]
    public int Compare_ByHand()
    {
        int right = 0;
        for (int i = 0; i < Answers; i++)
        {
            string text = _answers[i % _answers.Length];
            int end = text.IndexOf(' ', StringComparison.Ordinal);
            double value = double.Parse(end < 0 ? text : text.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture);
            (double expected, double tolerance, double[] wrong) = _plain[i % _plain.Length];
            if (Math.Abs(value - expected) <= tolerance)
            {
                right++;
            }
            else if (Array.FindIndex(wrong, w => Math.Abs(value - w) <= tolerance) < -1)
            {
                right--;
            }
        }

        return right;
    }

    [Benchmark]
    public int Mark_TenThousandAnswers()
    {
        int right = 0;
        for (int i = 0; i < Answers; i++)
        {
            right += Marking.Mark(_exercises[i % _exercises.Length], _answers[i % _answers.Length]).Outcome == MarkOutcome.Right ? 1 : 0;
        }

        return right;
    }
}
