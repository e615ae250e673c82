using BenchmarkDotNet.Attributes;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>The temperature after joining four bodies, against the formula with constant specific heats.</summary>
[MemoryDiagnoser]
public class JoiningBenchmarks
{
    private readonly double[] _kilograms = [0.5, 0.2, 0.3, 0.6];
    private readonly double[] _heats = [3900, 3950, 3800, 460];
    private readonly double[] _celsius = [85, 5, 38, 20];
    private readonly HeatLoss _rate = HeatLoss.AtRate(1.5, Temperature.FromDegreesCelsius(20), Duration.FromMinutes(2));
    private JoiningBody[] _constant = [];
    private JoiningBody[] _foods = [];

    [GlobalSetup]
    public void Setup()
    {
        FoodShares[] shares = [new(88, carbohydratePercent: 12), new(90, carbohydratePercent: 10), new(85, carbohydratePercent: 13.5, fibrePercent: 1.5)];
        _constant = [.. _celsius.Select((c, i) => JoiningBody.OfSpecificHeat(Mass.FromKilograms(_kilograms[i]), Temperature.FromDegreesCelsius(c), SpecificEntropy.FromJoulesPerKilogramKelvin(_heats[i])))];
        _foods = [.. shares.Select((s, i) => JoiningBody.Food(Mass.FromKilograms(_kilograms[i]), Temperature.FromDegreesCelsius(_celsius[i]), s)), _constant[3]];
    }

    [Benchmark(Baseline = true)]
    public double ByHand()
    {
        double heat = 0, capacity = 0;
        for (int i = 0; i < _kilograms.Length; i++)
        {
            heat += _kilograms[i] * _heats[i] * _celsius[i];
            capacity += _kilograms[i] * _heats[i];
        }

        return heat / capacity;
    }

    [Benchmark]
    public JoinedMix Constant() => Joining.Of(_constant);

    [Benchmark]
    public JoinedMix FromComposition() => Joining.Of(_foods);

    [Benchmark]
    public JoinedMix FromComposition_WithLossRate() => Joining.Of(_foods, _rate);
}
