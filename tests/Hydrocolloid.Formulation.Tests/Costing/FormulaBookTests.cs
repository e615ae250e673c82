using System.Globalization;
using CsCheck;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Costing;
using UnitsNet;
using static Hydrocolloid.Formulation.Tests.Costing.Kitchen;

namespace Hydrocolloid.Formulation.Tests.Costing;

public class FormulaBookTests
{
    private static readonly PriceList s_prices = Prices(PerKilo("water", 0.01m), PerKilo("sugar", 1), PerKilo("pear", 4).WithYield(80), PerKilo("agar-x", 40));

    /// <summary>Every line's mass has 15 digits in each level of a book of at most six, and its doubles 16.</summary>
    private const decimal Noise = 1e-13m;

    [Fact]
    public void A_formula_costs_what_its_cost_sheet_says()
    {
        FormulaBook book = FormulaBook.From([new("jelly", Jelly())]);
        BookCost cost = book.Cost(JellyPrices, Today)["jelly"];
        cost.PerKilogram!.Amount.Should().BeApproximately(2.9324m / 1.111m, Noise * 10);
        cost.Of(Mass.FromGrams(100))!.Amount.Should().BeApproximately(2.9324m / 11.11m, Noise);
        cost.Problems.Should().BeEmpty();
    }

    [Fact]
    public void Losses_of_the_plan_count()
    {
        Formula lossy = Mix(("sugar", 100)).WithProcess(new ProcessPlan { Losses = new Losses { Trimming = Loss.Percent(20) } });
        Formula fixedLoss = Mix(("sugar", 100)).WithProcess(new ProcessPlan { Losses = new Losses { Transfer = Loss.Of(Mass.FromGrams(100)) } });
        BookCosts costs = FormulaBook.From([new("lossy", lossy), new("pan", fixedLoss), new("sized-pan", fixedLoss, Yield.Assembled(Mass.FromGrams(500)))]).Cost(s_prices, Today);
        costs["lossy"].PerKilogram!.Amount.Should().BeApproximately(1.25m, Noise);
        costs["sized-pan"].PerKilogram!.Amount.Should().BeApproximately(1.25m, Noise);
        costs["pan"].Problems.Should().ContainSingle(p => p.Id == "size-missing" && p.Subject == "pan");
    }

    [Fact]
    public void Nested_equals_flattened()
        => Gen.Select(Gen.Double[1, 99].Array[2, 6], Gen.Int[1, 9999].Array[4]).Sample((percents, cents) =>
        {
            // Each level is so much of the level below, the rest an ingredient; flattened, the shares multiply.
            string[] ingredients = ["water", "sugar", "pear", "agar-x"];
            PriceList prices = Prices([.. ingredients.Select((id, i) => PerKilo(id, cents[i] / 100m))]);
            var entries = new List<BookEntry> { new("level-0", Mix(("water", percents[0]), ("sugar", 100 - percents[0]))) };
            decimal flat = (Dec(percents[0]) * cents[0] + (100 - Dec(percents[0])) * cents[1]) / 10_000;
            for (int i = 1; i < percents.Length; i++)
            {
                entries.Add(new("level-" + i.ToString(CultureInfo.InvariantCulture), Mix(("level-" + (i - 1).ToString(CultureInfo.InvariantCulture), percents[i]), (ingredients[i % 4], 100 - percents[i]))));
                flat = (Dec(percents[i]) * flat + (100 - Dec(percents[i])) * cents[i % 4] / 100) / 100;
            }

            entries.Reverse(); // a part may stand after what is made with it
            BookCosts costs = FormulaBook.From(entries).Cost(prices, Today);
            return Math.Abs(costs[0].PerKilogram!.Amount / flat - 1) < Noise && costs.Recosted == entries.Count;
        });

    [Fact]
    public void Cycles_are_reported_and_the_rest_is_costed()
    {
        BookCosts costs = FormulaBook.From(
        [
            new("a", Mix(("b", 50), ("water", 50))), new("b", Mix(("c", 50), ("water", 50))), new("c", Mix(("a", 50), ("sugar", 50))),
            new("selfish", Mix(("selfish", 10), ("water", 90))),
            new("on-a", Mix(("a", 50), ("water", 50))),
            new("fine", Mix(("sugar", 100))),
        ]).Cost(s_prices, Today);

        costs["a"].Problems.Should().Equal(costs.Problems.First());
        costs["a"].Problems[0].ToString().Should().Be("a: a is made with b is made with c is made with a.");
        costs["selfish"].Problems[0].Message.Should().Be("selfish is made with selfish.");
        costs["on-a"].Problems[0].Id.Should().Be("part-without-cost");
        costs.Where(c => c.IsCosted).Select(c => c.Id).Should().Equal("fine");
        costs.Problems.Count(p => p.Id == "cycle").Should().Be(4);
    }

    [Fact]
    public void One_broken_formula_does_not_stop_the_book()
    {
        BookCosts costs = FormulaBook.From(
        [
            BookEntry.Broken("torn", "The document is not JSON."),
            new("fine", Mix(("sugar", 100))), new("fine", Mix(("water", 100))),
            new("with-torn", Mix(("torn", 50), ("water", 50))),
            new("unpriced", Mix(("saffron", 1), ("gold-leaf", 1), ("water", 98))),
            new("with-unpriced", Mix(("unpriced", 50), ("water", 50))),
            new("too-much-steam", Mix(("sugar", 100)).WithProcess(new ProcessPlan { Losses = new Losses { Transfer = Loss.Of(Mass.FromGrams(5000)) } }), Yield.Assembled(Mass.FromGrams(1000))),
        ]).Cost(s_prices, Today);

        costs["fine"].PerKilogram.Should().Be(Eur(1));
        costs.Problems.Select(p => (p.Subject, p.Id)).Should().Equal(
            ("torn", "formula-broken"), ("fine", "id-repeated"), ("with-torn", "part-without-cost"), ("unpriced", "price-missing"), ("unpriced", "price-missing"),
            ("with-unpriced", "part-without-cost"), ("too-much-steam", "batch-impossible"));
        costs[2].IsCosted.Should().BeFalse();
        FluentActions.Invoking(() => costs["nobody"]).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => costs[7]).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => costs.PriceOf("torn")).Should().Throw<ArgumentException>().WithMessage("*not JSON*");
        default(BookCost).Problems.Should().BeEmpty();
    }

    [Fact]
    public void A_volume_price_takes_the_density_that_a_line_states()
    {
        PriceList perLitre = Prices(Price.PerVolume("oil", Eur(8), Volume.FromMilliliters(1000)));
        Formula dense = Formula.Named("oil").Base(b => b.Share(Of("oil").WithDensity(Density.FromKilogramsPerCubicMeter(800)), 100)).Build();
        FormulaBook book = FormulaBook.From([new("plain", Mix(("oil", 100)))]);
        book.Cost(perLitre, Today)[0].Problems.Should().ContainSingle(p => p.Id == "density-missing");
        book.Cost(perLitre, Today).With(new("plain", dense))["plain"].PerKilogram.Should().Be(Eur(10));
    }

    [Fact]
    public void A_change_recomputes_what_depends_on_it_and_nothing_else()
    {
        // 4000 formulas; every hundredth has the syrup, and the coulis has it too, with ten users of its own.
        string Id(int i) => "dish-" + i.ToString(CultureInfo.InvariantCulture);
        List<BookEntry> entries = [.. Enumerable.Range(0, 4000).Select(i => new BookEntry(Id(i), i % 100 == 0 ? Mix(("syrup", 30), ("water", 70)) : i % 400 == 1 ? Mix(("coulis", 20), ("water", 80)) : Mix(("sugar", 30), ("water", 70))))];
        entries.Add(new("syrup", Mix(("sugar", 50), ("water", 50))));
        entries.Add(new("coulis", Mix(("syrup", 50), ("pear", 50))));
        BookCosts before = FormulaBook.From(entries).Cost(s_prices, Today);

        BookCosts after = before.With(new("syrup", Mix(("sugar", 60), ("water", 40))));
        after.Recosted.Should().Be(1 + 40 + 1 + 10);
        entries[4000] = new("syrup", Mix(("sugar", 60), ("water", 40)));
        after.Should().Equal(FormulaBook.From(entries).Cost(s_prices, Today));

        before.With(new(Id(7), Mix(("pear", 30), ("water", 70)))).Recosted.Should().Be(1);
        FluentActions.Invoking(() => before.With(new("new", Jelly()))).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Changes_one_by_one_are_the_same_as_the_changed_book()
    {
        // Twelve entries that may use one another in any way, cycles too, and ingredients without a price.
        string[] ids = [.. Enumerable.Range(0, 12).Select(i => "entry-" + i.ToString(CultureInfo.InvariantCulture))];
        string[] parts = [.. ids, "water", "sugar", "saffron"];
        Gen<BookEntry> entry = Gen.Select(Gen.Int[0, 11], Gen.Int[0, 14], Gen.Int[12, 14], Gen.Int[0, 9])
            .Select((i, a, b, broken) => broken == 0 ? BookEntry.Broken(ids[i], "torn") : new BookEntry(ids[i], a == b ? Mix((parts[a], 100)) : Mix((parts[a], 40), (parts[b], 60))));
        entry.Array[1, 20].Sample(changes =>
        {
            var current = ids.ToDictionary(id => id, id => new BookEntry(id, Mix(("water", 100))));
            BookCosts costs = FormulaBook.From(ids.Select(id => current[id])).Cost(s_prices, Today);
            foreach (BookEntry change in changes)
            {
                costs = costs.With(change);
                current[change.Id] = change;
            }

            BookCosts anew = FormulaBook.From(ids.Select(id => current[id])).Cost(s_prices, Today);
            return costs.SequenceEqual(anew) && costs.Problems.Select(p => p.Id).SequenceEqual(anew.Problems.Select(p => p.Id));
        });
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(null)]
    public void Streaming_gives_the_same_in_the_order_of_the_book(int? cores)
    {
        // More than are worked out ahead at a time on one core, and on two.
        FormulaBook book = LargeBook(40_000);
        BookCosts kept = book.Cost(s_prices, Today, cores);
        book.Stream(s_prices, Today, cores).Should().Equal(kept);
        kept.Count.Should().Be(40_000);
    }

    [Fact]
    public void A_stream_can_be_left_early_read_again_and_stopped()
    {
        FormulaBook book = LargeBook(70_000);
        IEnumerable<BookCost> stream = book.Stream(s_prices, Today, 2);
        BookCost[] first = [.. stream.Take(3)];
        stream.Take(3).Should().Equal(first);
        using var stop = new CancellationTokenSource();
        int seen = 0;
        FluentActions.Invoking(() =>
        {
            foreach (BookCost _ in book.Stream(s_prices, Today, 2, stop.Token))
            {
                seen++;
                if (seen == 40_000)
                {
                    stop.Cancel();
                }
            }
        }).Should().Throw<OperationCanceledException>();
        seen.Should().BeInRange(40_000, 69_999);
    }

    [Fact]
    public void A_chain_of_a_hundred_thousand_formulas_overflows_no_stack()
    {
        string Id(int i) => "e-" + i.ToString(CultureInfo.InvariantCulture);
        const int Length = 100_000;
        Formula[] links = [.. Enumerable.Range(0, Length).Select(i => Mix((i == 0 ? "sugar" : Id(i - 1), 100)))];
        FormulaBook.From(links.Select((f, i) => new BookEntry(Id(i), f))).Cost(s_prices, Today)[Length - 1].PerKilogram.Should().Be(Eur(1));
        BookCosts ring = FormulaBook.From(links.Select((f, i) => new BookEntry(Id(i), i == 0 ? Mix((Id(Length - 1), 100)) : f))).Cost(s_prices, Today);
        ring[0].IsCosted.Should().BeFalse();
        ring[0].Problems.Should().ContainSingle(p => p.Id == "cycle");
    }

    [Fact]
    public void An_entry_can_stand_as_a_price_in_a_cost_sheet()
    {
        BookCosts costs = FormulaBook.From([new("syrup", Mix(("sugar", 50), ("water", 50))), new("dish", Mix(("syrup", 40), ("pear", 60)))]).Cost(s_prices, Today);
        CostSheet sheet = Mix(("syrup", 40), ("pear", 60)).ScaleTo(Yield.Finished(Mass.FromGrams(1000))).Cost(s_prices.With(costs.PriceOf("syrup")), Today);
        sheet.Total!.Amount.Should().BeApproximately(costs["dish"].PerKilogram!.Amount, Noise * 10);
    }

    [Fact]
    public void Work_can_be_stopped_and_bad_settings_are_refused()
    {
        FormulaBook book = FormulaBook.From([new("syrup", Mix(("sugar", 100)))]);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        FluentActions.Invoking(() => book.Cost(s_prices, Today, null, stop.Token)).Should().Throw<OperationCanceledException>();
        FluentActions.Invoking(() => book.Cost(s_prices, Today, 0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => book.Cost(s_prices, Today.AddHours(1))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new BookEntry("Not an id", Jelly())).Should().Throw<ArgumentException>();
        FormulaBook.From([]).Cost(s_prices, Today).Should().BeEmpty();
    }

    private static FormulaBook LargeBook(int count)
    {
        Formula[] mixes = [.. Enumerable.Range(0, 90).Select(i => Mix(("sugar", 1 + i), ("water", 99 - i)))];
        return FormulaBook.From(Enumerable.Range(0, count).Select(i => i % 997 == 3 ? BookEntry.Broken("e-" + i.ToString(CultureInfo.InvariantCulture), "torn")
            : new BookEntry("e-" + i.ToString(CultureInfo.InvariantCulture), mixes[i % 90])));
    }

    private static decimal Dec(double value) => (decimal)value;
}
