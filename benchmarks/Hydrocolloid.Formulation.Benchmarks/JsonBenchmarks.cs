using System.Text.Json;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>
/// The formula document, against a source-generated serializer over plain classes of the same shape. Reading a formula also checks and
/// solves it, which the baseline does not.
/// </summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class JsonBenchmarks
{
    private JsonBaseline.PlainDocument _plain = JsonBaseline.From(JsonBaseline.TwelveLinesWithWordsOnly());
    private Formula _formula = JsonBaseline.TwelveLinesWithWordsOnly();
    private string _text = "";

    [GlobalSetup]
    public void Setup()
    {
        _plain = JsonBaseline.From(JsonBaseline.TwelveLinesWithWordsOnly());
        _formula = JsonBaseline.TwelveLinesWithWordsOnly();
        _text = Write_FormulaJson();
    }

    [Benchmark(Baseline = true), BenchmarkCategory("Write")]
    public string Write_PlainClasses() => JsonSerializer.Serialize(_plain, PlainContext.Default.PlainDocument);

    [Benchmark, BenchmarkCategory("Write")]
    public string Write_FormulaJson() => FormulaJson.Write(_formula);

    [Benchmark(Baseline = true), BenchmarkCategory("Read")]
    public object? Read_PlainClasses() => JsonSerializer.Deserialize(_text, PlainContext.Default.PlainDocument);

    [Benchmark, BenchmarkCategory("Read")]
    public Formula Read_FormulaJson() => FormulaJson.Read(_text);
}
