using System.Globalization;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Costing;
using UnitsNet;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>
/// Re-costing a book of 100 000 formulas of twelve lines, one in ten made with one of ten syrups, against a bare loop that multiplies the
/// same doubles with the same decimals and keeps a sum a formula.
/// </summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class CostingBenchmarks
{
    private const int Formulas = 100_000;
    private const int Lines = 12;

    private readonly DateTime _on = new(2026, 3, 1);
    private readonly PriceList _prices = new(Currency.Of("EUR"), Enumerable.Range(0, 200)
        .Select(i => Price.PerMass(Ingredient(i), new Money(0.35m + i * 0.17m, "EUR"), Mass.FromGrams(1000))));

    private readonly decimal[] _sums = new decimal[Formulas];
    private FormulaBook _book = FormulaBook.From([]);
    private BookCosts? _costs;
    private BookEntry? _changed;
    private double[] _shares = [];
    private int[] _slots = [];
    private decimal[] _perGram = [];

    [GlobalSetup]
    public void Setup()
    {
        // A hundred formulas under 100 000 ids: a book keeps numbers of its own for each entry.
        Formula[] formulas = [.. Enumerable.Range(0, 100).Select(i => Make(i, i % 10 == 0 ? "syrup-" + Text(i / 10) : null))];
        _book = FormulaBook.From(Enumerable.Range(0, 10).Select(i => new BookEntry("syrup-" + Text(i), Make(i, null)))
            .Concat(Enumerable.Range(0, Formulas - 10).Select(i => new BookEntry("dish-" + Text(i), formulas[i % 100]))));
        _costs = _book.Cost(_prices, _on);
        _changed = new BookEntry("dish-500", Make(3, null));

        _shares = [.. Enumerable.Range(0, Formulas).SelectMany(i => Shares(formulas[i % 100]))];
        _slots = [.. Enumerable.Range(0, Formulas * Lines).Select(i => (i / Lines % 100 * 7 + i % Lines * 13) % 200)];
        _perGram = [.. _prices.Prices.Select(p => p.Amount.Amount / 1000)];
    }

    [Benchmark(Baseline = true), BenchmarkCategory("Recost")]
    public decimal Recost_BareLoop()
    {
        Multiply(0, Formulas);
        return _sums[Formulas - 1];
    }

    /// <summary>What two cores of the machine give at best: half of the bare loop each, nothing shared and nothing allocated.</summary>
    [Benchmark, BenchmarkCategory("Recost")]
    public decimal Recost_BareLoop_TwoCores()
    {
        Task other = Task.Run(() => Multiply(Formulas / 2, Formulas));
        Multiply(0, Formulas / 2);
        other.Wait();
        return _sums[Formulas - 1];
    }

    [Benchmark, BenchmarkCategory("Recost")]
    public BookCosts Recost_OneCore() => _book.Cost(_prices, _on, maxCores: 1);

    [Benchmark, BenchmarkCategory("Recost")]
    public BookCosts Recost_TwoCores() => _book.Cost(_prices, _on, maxCores: 2);

    [Benchmark, BenchmarkCategory("Recost")]
    public int Recost_Streamed()
    {
        int costed = 0;
        foreach (BookCost cost in _book.Stream(_prices, _on, maxCores: 2))
        {
            costed += cost.IsCosted ? 1 : 0;
        }

        return costed;
    }

    [Benchmark, BenchmarkCategory("Change")]
    public BookCosts Change_OneFormula() => _costs!.With(_changed!);

    private void Multiply(int first, int end)
    {
        double[] shares = _shares;
        int[] slots = _slots;
        decimal[] perGram = _perGram;
        for (int f = first; f < end; f++)
        {
            decimal sum = 0;
            for (int i = f * Lines; i < (f + 1) * Lines; i++)
            {
                sum += (decimal)shares[i] * perGram[slots[i]];
            }

            _sums[f] = sum;
        }
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Ingredient(int number) => "ingredient-" + Text(number);

    private static IEnumerable<double> Shares(Formula formula) => formula.Lines.Select(l => formula.Proportions.MassOf(l) / formula.Proportions.Total);

    private static Formula Make(int seed, string? part) => Formula.Named("dish")
        .Base(b => b.Share(Own(part ?? Ingredient(seed * 7 % 200)), 100))
        .Then("all", p =>
        {
            for (int i = 1; i < Lines; i++)
            {
                p.Add(Own(Ingredient((seed * 7 + i * 13) % 200)), Dose.Percent(0.37 + i * 1.13 + seed * 0.01).OfBase);
            }
        })
        .Build();

    private static Ingredient Own(string id) => Formulation.Ingredient.Own(id, id);
}
