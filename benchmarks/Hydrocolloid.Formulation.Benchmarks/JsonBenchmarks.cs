using System.Text.Json;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>The formula document by a source-generated serializer over plain classes: the baselines of reading and writing.</summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class JsonBenchmarks
{
    private JsonBaseline.PlainDocument _plain = JsonBaseline.From(TwelveLines.Build());
    private string _text = "";

    [GlobalSetup]
    public void Setup()
    {
        _plain = JsonBaseline.From(TwelveLines.Build());
        _text = Write_PlainClasses();
    }

    [Benchmark(Baseline = true), BenchmarkCategory("Write")]
    public string Write_PlainClasses() => JsonSerializer.Serialize(_plain, PlainContext.Default.PlainDocument);

    [Benchmark(Baseline = true), BenchmarkCategory("Read")]
    public object? Read_PlainClasses() => JsonSerializer.Deserialize(_text, PlainContext.Default.PlainDocument);
}
