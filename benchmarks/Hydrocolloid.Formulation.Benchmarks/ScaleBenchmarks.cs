using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using UnitsNet;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>Scaling against loops written by hand that do the same multiplications.</summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class ScaleBenchmarks
{
    private readonly Formula _formula = TwelveLines.Build();
    private readonly Yield _yield = Yield.OfBase(Mass.FromGrams(1000));
    private readonly Mass _baseMass = Mass.FromGrams(1000);
    private readonly double[] _grams = new double[12];
    private HandLine[] _handLines = [];
    private double[] _shares = [];

    [GlobalSetup]
    public void Setup()
    {
        _shares = [.. _formula.Lines.Select(_formula.Proportions.MassOf)];
        _handLines = [.. _formula.Lines.Select(l => new HandLine(l.Label, l.Dose.PercentByMass))];
    }

    [Benchmark(Baseline = true), BenchmarkCategory("Batch")]
    public HandBatch Batch_ByHand()
    {
        HandLine[] lines = _handLines;
        double[] shares = _shares;
        double baseGrams = _baseMass.Grams;
        var scaled = new HandBatchLine[lines.Length];
        double total = 0;
        for (int i = 0; i < scaled.Length; i++)
        {
            double grams = shares[i] * baseGrams;
            total += grams;
            scaled[i] = new HandBatchLine(lines[i], grams);
        }

        return new HandBatch(scaled, baseGrams, total);
    }

    [Benchmark, BenchmarkCategory("Batch")]
    public Batch Batch_ScaleTo() => _formula.ScaleTo(_yield);

    [Benchmark(Baseline = true), BenchmarkCategory("Masses")]
    public double Masses_ByHand()
    {
        ReadOnlySpan<double> shares = _shares;
        Span<double> grams = _grams;
        double baseGrams = _baseMass.Grams;
        for (int i = 0; i < shares.Length; i++)
        {
            grams[i] = shares[i] * baseGrams;
        }

        return grams[11];
    }

    [Benchmark, BenchmarkCategory("Masses")]
    public double Masses_MassesInto()
    {
        _formula.MassesInto(_baseMass, _grams);
        return _grams[11];
    }

    public sealed record HandLine(string Label, double Percent);

    public sealed record HandBatchLine(HandLine Line, double Grams);

    public sealed record HandBatch(HandBatchLine[] Lines, double BaseGrams, double AssembledGrams);
}
