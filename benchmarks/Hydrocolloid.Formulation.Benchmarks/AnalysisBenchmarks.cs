using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>The analysis of the twelve-line formula with pH and free calcium, and its review, against one scaling of it.</summary>
[MemoryDiagnoser]
public class AnalysisBenchmarks
{
    private readonly Yield _yield = Yield.OfBase(Mass.FromGrams(1000));
    private Formula _formula = TwelveLines.Build();

    [GlobalSetup]
    public void Setup() => _formula = TwelveLines.Build();

    [Benchmark(Baseline = true)]
    public Batch Scale_Once() => _formula.ScaleTo(_yield);

    [Benchmark]
    public double Analyse_PhAndCalcium()
    {
        MixContents mix = _formula.Analyse().Continuous;
        return mix.Ph!.Value + mix.FreeCalcium!.Value + mix.Water.Value + mix.Brix.Value;
    }

    /// <summary>The review with all standard rules, findings and remedies included.</summary>
    [Benchmark]
    public int Review_AllRules() => _formula.Review().Count;
}
