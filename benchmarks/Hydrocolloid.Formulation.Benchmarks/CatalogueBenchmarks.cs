using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>Look-ups in the built-in catalogue against a dictionary.</summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class CatalogueBenchmarks
{
    private readonly Dictionary<string, Ingredient> _byHand = new(StringComparer.Ordinal);
    private Catalogue _catalogue = Catalogue.BuiltIn;

    [GlobalSetup]
    public void Setup()
    {
        _catalogue = Catalogue.BuiltIn;
        foreach (Ingredient ingredient in _catalogue.All)
        {
            _byHand.Add(ingredient.Id, ingredient);
        }
    }

    [Benchmark(Baseline = true), BenchmarkCategory("Lookup")]
    public Ingredient Lookup_Dictionary() => _byHand["agar"];

    [Benchmark, BenchmarkCategory("Lookup")]
    public Ingredient Lookup_Get() => _catalogue.Get("agar");

    [Benchmark, BenchmarkCategory("Lookup")]
    public Ingredient Lookup_Property() => Hydrocolloids.Agar;

    [Benchmark, BenchmarkCategory("Find")]
    public IReadOnlyList<Ingredient> Find_ENumber() => _catalogue.Find("E 406");

    [Benchmark, BenchmarkCategory("Find")]
    public Cited<NumberRange>? Find_DoseWindow() => Hydrocolloids.Agar.Profile!.WindowFor(Texture.Soft)?.Percent;
}
