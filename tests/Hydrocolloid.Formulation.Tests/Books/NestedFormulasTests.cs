using CsCheck;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Declarations;
using UnitsNet;
using static Hydrocolloid.Formulation.Tests.Costing.Kitchen;

namespace Hydrocolloid.Formulation.Tests.Books;

public class NestedFormulasTests
{
    /// <summary>A syrup of 600 g of pear juice and 400 g of sucrose, boiled down by 100 g.</summary>
    private static readonly Formula s_syrup = Formula.Named("Pear syrup")
        .Base(b => b.Share(Pantry.PearJuice, 60).Share(Pantry.Sucrose, 40))
        .Process(new ProcessPlan { Losses = new Losses { Evaporation = Loss.Percent(10) } })
        .Build();

    /// <summary>900 g of water and 100 g of syrup, and 0.5 % of agar on both.</summary>
    private static readonly Formula s_jelly = Formula.Named("Pear jelly")
        .Base(b => b.Share(Pantry.Water, 90).Share(Of("pear-syrup"), 10))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase))
        .Build();

    private static NestedFormulas Cafe => NestedFormulas.From([new BookEntry("pear-jelly", s_jelly), new BookEntry("pear-syrup", s_syrup)]);

    private static readonly Gen<Composition> s_composition =
        Gen.Select(Gen.Double[0.01, 1].Array[9], Gen.Double[0, 1].Array[4]).Select((parts, minerals) =>
        {
            parts[0] += 4; // enough water to boil off
            double[] p = [.. parts.Select(x => x / parts.Sum() * 100)];
            double[] mg = [.. minerals.Select(x => x * p[6] * 250)]; // four parts of the ash
            return Composition.Per100Grams(p[0], p[1], p[2], p[3], p[4], p[5], p[6], p[7], p[8], mg[0], mg[1], mg[2], mg[3]);
        });

    private static readonly Func<MixContents, Reckoned>[] s_parts =
    [
        m => m.Sugars, m => m.OtherCarbohydrate, m => m.Fibre, m => m.Protein, m => m.Fat, m => m.Ash, m => m.Ethanol, m => m.OrganicAcids,
        m => m.Calcium.MilligramsPerKg, m => m.Potassium.MilligramsPerKg, m => m.Sodium.MilligramsPerKg, m => m.Magnesium.MilligramsPerKg,
    ];

    /// <summary>Five leaves, and five formulas each made with any of what comes before it.</summary>
    private static readonly Gen<(Ingredient[] Leaves, Formula[] Formulas)> s_nest =
        Gen.Select(s_composition.Array[5], Gen.Double[0.5, 9].Array[5, 40], Gen.Int[0, 9].Array[5, 40], Gen.Double[0, 3].Array[5]).Select((compositions, sizes, picks, losses) =>
        {
            Ingredient[] leaves = [.. compositions.Select((c, i) => Ingredient.Own("leaf-" + i, "leaf").WithComposition(c))];
            var formulas = new Formula[5];
            int next = 0;
            for (int f = 0; f < 5; f++)
            {
                Ingredient Pick() => picks[next % picks.Length] % (5 + f) is var pick && pick < 5 ? leaves[pick] : Of("made-" + (pick - 5));
                double Size() => sizes[next++ % sizes.Length];
                int lines = 1 + picks[f] % 3;
                formulas[f] = Formula.Named("made")
                    .Base(b =>
                    {
                        for (int i = 0; i <= lines; i++)
                        {
                            Ingredient ingredient = Pick();
                            b.Weigh(ingredient, Mass.FromGrams(Size()), l => l.Labelled($"{ingredient.Id} {i}"));
                        }
                    })
                    .Then("more", p => p.Add(leaves[f], Dose.Percent(Size()).OfBase))
                    .Process(new ProcessPlan { Losses = new Losses { Evaporation = Loss.Percent(losses[f]), Transfer = Loss.Percent(losses[4 - f]), Trimming = Loss.Percent(losses[0]) } })
                    .Build();
            }

            return (leaves, formulas);
        });

    /// <summary>Analyses that add up to 101.5 g add up to more once water has gone; the parts and the minerals are brought back together.</summary>
    [Fact]
    public void A_brine_boiled_down_still_has_a_composition()
    {
        Ingredient brine = Ingredient.Own("brine", "Brine").WithComposition(Composition.Per100Grams(water: 90, sodium: 11_500));
        Formula reduced = Formula.Named("Reduced brine").Base(b => b.Share(brine, 100)).Process(new ProcessPlan { Losses = new Losses { Evaporation = Loss.Percent(60) } }).Build();
        Formula jelly = Formula.Named("Jelly").Base(b => b.Share(Pantry.Water, 90).Share(Of("reduced-brine"), 10)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase)).Build();

        NestedFormulas book = NestedFormulas.From([new BookEntry("jelly", jelly), new BookEntry("reduced-brine", reduced)]);

        double sodium = book["jelly"].Lines.Single(l => l.Label == "reduced-brine").Ingredient.Composition!.Value.Sodium!.Value.MilligramsPerKilogram;
        sodium.Should().BeApproximately(11_500 * 10 / 0.4 * 102 / 103.75, 1);
    }

    [Fact]
    public void Nested_equals_flattened_in_mass_and_in_every_part_of_the_composition()
        => s_nest.Sample(nest =>
        {
            NestedFormulas nested = NestedFormulas.From(nest.Formulas.Select((f, i) => new BookEntry("made-" + i, f)));
            nested.Problems.Should().BeEmpty();
            MakingPlan plan = nested.Plan("made-4", Yield.Finished(Mass.FromGrams(1000)));

            // By hand: what a gram takes, going down line by line, each step before its losses.
            var taken = new Dictionary<string, double>(StringComparer.Ordinal);
            double evaporated = 0;
            void Take(int f, double finishedGrams)
            {
                Formula formula = nest.Formulas[f];
                Losses losses = formula.Process.Losses;
                double afterBoiling = finishedGrams / (1 - losses.Trimming.PercentOfStep / 100) / (1 - losses.Transfer.PercentOfStep / 100);
                double assembled = afterBoiling / (1 - losses.Evaporation.PercentOfStep / 100);
                foreach (FormulaLine line in formula.Lines)
                {
                    double grams = assembled * formula.Proportions.MassOf(line) / formula.Proportions.Total;
                    if (line.Ingredient.Id.StartsWith("made-", StringComparison.Ordinal))
                    {
                        Take(line.Ingredient.Id[5] - '0', grams);
                    }
                    else
                    {
                        taken[line.Ingredient.Id] = taken.GetValueOrDefault(line.Ingredient.Id) + grams;
                    }
                }
            }

            Take(4, 1000);
            plan.Ingredients.Should().HaveCount(taken.Count);
            plan.Ingredients.Should().OnlyContain(m => Math.Abs(m.Mass.Grams - taken[m.Ingredient.Id]) < 1e-9 * taken[m.Ingredient.Id]);

            // Flattened, the food holds what the nested formula holds; only the water that boiled off the parts is still in the lines.
            Batch flat = plan.Flatten();
            evaporated = flat.EvaporatedWater.Grams - plan.Batch.EvaporatedWater.Grams;
            flat.FinishedMass.Grams.Should().BeApproximately(1000, 1e-8);
            flat.AssembledMass.Grams.Should().BeApproximately(plan.Batch.AssembledMass.Grams + evaporated, 1e-8);
            MixContents one = plan.Batch.Formula.Analyse().Assembled, other = flat.Formula.Analyse().Assembled;
            double nestedGrams = plan.Batch.AssembledMass.Grams, flatGrams = flat.AssembledMass.Grams;
            foreach (Func<MixContents, Reckoned> part in s_parts)
            {
                part(one).Without.Should().BeEmpty();
                (part(one).Value * nestedGrams).Should().BeApproximately(part(other).Value * flatGrams, 1e-9 * (1 + part(other).Value * flatGrams));
            }

            (one.Water.Value / 100 * nestedGrams).Should().BeApproximately(other.Water.Value / 100 * flatGrams - evaporated, 1e-8);
        }, iter: 300, threads: 1);

    [Fact]
    public void Of_each_part_as_much_is_made_as_its_losses_leave_for_its_users()
    {
        MakingPlan plan = Cafe.Plan("pear-jelly", Yield.OfBase(Mass.FromGrams(1000)));

        // 100 g of syrup is what is left of 111.11 g when 10 % have boiled off: 66.67 g of juice and 44.44 g of sucrose.
        plan.Batches.Select(b => (b.Id, Math.Round(b.Batch.FinishedMass.Grams, 6))).Should().Equal(("pear-syrup", 100), ("pear-jelly", 1005));
        plan.Batches[0].UsedBy.Should().Equal("pear-jelly");
        plan.Ingredients.Select(m => (m.Ingredient.Id, Math.Round(m.Mass.Grams, 4))).Should().BeEquivalentTo(
            new[] { ("pear-juice", 66.6667), ("sucrose", 44.4444), ("water", 900), ("agar", 5) });
        plan.ToString().Should().Be("pear-syrup: 100 g for pear-jelly\npear-jelly: 1000 g of base");
    }

    [Fact]
    public void Composition_flows_up_after_boiling_off()
    {
        Ingredient syrup = Cafe.Made("pear-syrup");
        double juiceSugars = Pantry.PearJuice.Composition!.Value.SugarsPercent!.Value, sucrose = Pantry.Sucrose.Composition!.Value.SugarsPercent!.Value;
        // 60 g of juice and 40 g of sucrose stand in 90 g of syrup.
        syrup.Composition!.Value.SugarsPercent.Should().BeApproximately((0.6 * juiceSugars + 0.4 * sucrose) / 0.9, 1e-9);
        syrup.Ph.Should().BeNull("what boils off changes the pH, and nobody measured it");
        syrup.Allergens!.Value.Should().BeEmpty();
        Cafe["pear-jelly"].Line("pear-syrup").Ingredient.Should().Be(syrup);
    }

    [Fact]
    public void Measured_values_go_before_what_is_worked_out()
    {
        NestedFormulas nested = NestedFormulas.From([new BookEntry("pear-syrup", s_syrup) { Measured = new Measurements { Ph = 3.9, Brix = 51 } }]);
        Ingredient syrup = nested.Made("pear-syrup");
        (syrup.Ph!.Value, syrup.Ph.Citation.Quality, syrup.Brix!.Value).Should().Be((3.9, CitationQuality.Measured, 51));
    }

    [Fact]
    public void Ph_is_worked_out_where_no_water_is_lost()
    {
        Formula mix = Formula.Named("mix").Base(b => b.Share(Pantry.PearJuice, 50).Share(Pantry.AppleJuice, 50)).Build();
        Ingredient made = NestedFormulas.From([new BookEntry("mix", mix)]).Made("mix");
        made.Ph!.Value.Should().Be(mix.Analyse().Assembled.Ph!.Value);
        made.Ph.Citation.Quality.Should().Be(CitationQuality.Estimate);
    }

    [Fact]
    public void Allergens_flow_up_and_known_ones_are_not_lost_where_others_are_unknown()
    {
        Formula Cream(Ingredient other) => Formula.Named("cream").Base(b => b.Share(Pantry.Cream35, 90).Share(other, 10)).Build();
        NestedFormulas.From([new BookEntry("cream", Cream(Pantry.Sucrose))]).Made("cream").Allergens!.Value.Should().Equal(Allergen.Milk);

        Ingredient unknown = NestedFormulas.From([new BookEntry("cream", Cream(Of("spice")))]).Made("cream");
        unknown.Allergens.Should().BeNull();
        unknown.Cautions.Should().Contain(c => c.Value.Contains("milk") && c.Value.Contains("spice"));
    }

    [Fact]
    public void Label_of_the_flattened_batch_names_the_ingredients_of_the_part()
    {
        Declaration label = Cafe.Plan("pear-jelly", Yield.Portions(10, Mass.FromGrams(100))).Flatten().Declare();
        label.Ingredients.Select(i => i.Text).Should().Contain(t => t.Contains("Pear juice")).And.Contain(t => t.Contains("Sucrose")).And.NotContain(t => t.Contains("syrup"));
        label.PortionGrams.Should().Be(100);
    }

    [Fact]
    public void Findings_and_methods_of_the_parts_come_with_those_of_the_whole()
    {
        Formula weak = Formula.Named("Weak gel").Base(b => b.Share(Pantry.PearJuice, 100)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.01).OfBase)).Build();
        Formula dish = Formula.Named("Dish").Base(b => b.Share(Pantry.Water, 80).Share(Of("weak-gel"), 20)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase)).Build();
        MakingPlan plan = NestedFormulas.From([new BookEntry("weak-gel", weak), new BookEntry("dish", dish)]).Plan("dish", Yield.Finished(Mass.FromGrams(500)));

        plan.Review().Where(f => f.Id == "weak-gel").Select(f => f.Finding.Id).Should().Equal(weak.Review().Select(f => f.Id)).And.NotBeEmpty();
        plan.PlanMethods().Select(m => m.Id).Should().Equal("weak-gel", "dish");
        plan.PlanMethods()[0].Method.Steps.Should().NotBeEmpty();
    }

    [Fact]
    public void Enzyme_of_a_part_is_seen_by_the_rules_for_the_whole()
    {
        Formula puree = Formula.Named("Pineapple purée").Base(b => b.Share(Pantry.PineappleRaw, 90).Share(Pantry.Sucrose, 10)).Build();
        Formula jelly = Formula.Named("Jelly").Base(b => b.Share(Of("pineapple-puree"), 100)).Then("gel", p => p.Add(Hydrocolloids.GelatinTypeB, Dose.Percent(2).OfBase)).Build();
        NestedFormulas nested = NestedFormulas.From([new BookEntry("pineapple-puree", puree), new BookEntry("jelly", jelly)]);

        nested["jelly"].Review().Should().Contain(f => f.Id == "protease-with-protein-gel" && f.Lines.Contains("pineapple-puree"));
    }

    [Fact]
    public void Shared_part_is_made_once_for_all_its_users()
    {
        Formula Half(string part) => Formula.Named(part + " half").Base(b => b.Share(Of(part), 50).Share(Pantry.Water, 50)).Build();
        Formula dish = Formula.Named("dish").Base(b => b.Share(Of("one"), 50).Share(Of("two"), 50)).Build();
        MakingPlan plan = NestedFormulas.From(
        [
            new BookEntry("dish", dish), new BookEntry("one", Half("pear-syrup")), new BookEntry("two", Half("pear-syrup")), new BookEntry("pear-syrup", s_syrup),
        ]).Plan("dish", Yield.Finished(Mass.FromGrams(1000)));

        PlannedBatch syrup = plan.Batches.Single(b => b.Id == "pear-syrup");
        syrup.Batch.FinishedMass.Grams.Should().BeApproximately(500, 1e-9);
        syrup.UsedBy.Should().BeEquivalentTo("one", "two");
        plan.Batches[0].Should().Be(syrup);
    }

    [Fact]
    public void Chain_of_thirty_doublings_is_worked_out_without_going_down_each_way()
    {
        // Each formula is made of two lines of the one before: 2^30 ways down.
        BookEntry[] entries = [.. Enumerable.Range(1, 30).Select(i => new BookEntry("f-" + i, Formula.Named("f").Base(b => b
            .Share(i == 1 ? Pantry.PearJuice : Of("f-" + (i - 1)), 50, l => l.Labelled("a")).Share(i == 1 ? Pantry.Water : Of("f-" + (i - 1)), 50, l => l.Labelled("b"))).Build()))];
        MakingPlan plan = NestedFormulas.From(entries.Reverse()).Plan("f-30", Yield.Finished(Mass.FromGrams(1000)));
        plan.Ingredients.Select(m => Math.Round(m.Mass.Grams, 6)).Should().Equal(500, 500);
        plan.Flatten().Lines.Should().HaveCount(4);
    }

    [Fact]
    public void Cycle_is_reported_with_its_chain_and_the_rest_is_usable()
    {
        Formula With(string part) => Formula.Named("with " + part).Base(b => b.Share(Of(part), 50).Share(Pantry.Water, 50)).Build();
        NestedFormulas nested = NestedFormulas.From(
        [
            new BookEntry("a", With("b")), new BookEntry("b", With("c")), new BookEntry("c", With("a")), new BookEntry("d", With("a")),
            new BookEntry("self", With("self")), new BookEntry("pear-syrup", s_syrup),
        ]);

        nested.Problems.Select(p => (p.Id, p.Entry, p.Message)).Should().BeEquivalentTo(new[]
        {
            ("cycle", "a", "a is made with b is made with c is made with a."),
            ("cycle", "b", "b is made with c is made with a is made with b."),
            ("cycle", "c", "c is made with a is made with b is made with c."),
            ("part-unusable", "d", "It is made with something that is made with itself."),
            ("cycle", "self", "self is made with self."),
        });
        nested["pear-syrup"].Should().Be(s_syrup);
        FluentActions.Invoking(() => nested["a"]).Should().Throw<ArgumentException>().WithMessage("*a is made with b*");
    }

    [Fact]
    public void Broken_and_repeated_entries_are_reported_and_what_is_made_with_them()
    {
        NestedFormulas nested = NestedFormulas.From(
        [
            BookEntry.Broken("pear-syrup", "line 3: not JSON"), new BookEntry("pear-jelly", s_jelly), new BookEntry("pear-jelly", s_syrup),
            new BookEntry("tea", Formula.Named("tea").Base(b => b.Share(Pantry.Water, 100)).Build()),
        ]);

        nested.Problems.Select(p => (p.Id, p.Entry)).Should().BeEquivalentTo(new[] { ("formula-broken", "pear-syrup"), ("part-unusable", "pear-jelly"), ("id-repeated", "pear-jelly") });
        nested.Plan("tea", Yield.Finished(Mass.FromGrams(100))).Batches.Should().ContainSingle();
        FluentActions.Invoking(() => nested.Plan("pear-jelly", Yield.Finished(Mass.FromGrams(100)))).Should().Throw<ArgumentException>().WithMessage("*pear-syrup*");
        FluentActions.Invoking(() => nested["coffee"]).Should().Throw<ArgumentException>().WithMessage("*coffee*");
    }

    [Fact]
    public void Part_with_a_fixed_loss_needs_its_size()
    {
        Formula strained = s_syrup.WithProcess(new ProcessPlan { Losses = new Losses { Straining = Loss.Of(Mass.FromGrams(50)) } });
        NestedFormulas.From([new BookEntry("pear-jelly", s_jelly), new BookEntry("pear-syrup", strained)]).Problems.Select(p => (p.Id, p.Entry))
            .Should().Equal(("size-missing", "pear-syrup"), ("part-unusable", "pear-jelly"));

        // What the batch then takes is worked out at the size that is made: 100 g and the 50 g that stay in the sieve.
        NestedFormulas sized = NestedFormulas.From([new BookEntry("pear-jelly", s_jelly), new BookEntry("pear-syrup", strained, Yield.Finished(Mass.FromGrams(1000)))]);
        sized.Plan("pear-jelly", Yield.OfBase(Mass.FromGrams(1000))).Batches[0].Batch.AssembledMass.Grams.Should().BeApproximately(150, 1e-9);
    }

    [Fact]
    public void Cost_flows_up_as_in_the_book_of_costs()
    {
        PriceList prices = Prices(PerKilo("pear-juice", 2.10m), PerKilo("sucrose", 1.15m), PerKilo("agar", 38.40m), PerKilo("water", 0.002m));
        BookEntry[] entries = [new("pear-jelly", s_jelly), new("pear-syrup", s_syrup)];
        PlanCost cost = NestedFormulas.From(entries).Plan("pear-jelly", Yield.OfBase(Mass.FromGrams(1000))).Cost(prices, Today);

        // 66.67 g of juice and 44.44 g of sucrose; with 0.9 kg of water and 5 g of agar.
        cost.Sheets[0].Total!.Amount.Should().BeApproximately(0.0666667m * 2.10m + 0.0444444m * 1.15m, 0.000001m);
        cost.Whole.Total!.Amount.Should().BeApproximately(cost.Sheets[0].Total!.Amount + 0.9m * 0.002m + 0.005m * 38.40m, 1e-12m);
        Money book = FormulaBook.From(entries).Cost(prices, Today)["pear-jelly"].PerKilogram!;
        cost.Whole.PerKilogram!.Amount.Should().BeApproximately(book.Amount, 1e-12m);
        cost.Missing.Should().BeEmpty();
    }

    [Fact]
    public void Missing_price_of_a_part_leaves_the_whole_without_a_cost()
    {
        PriceList prices = Prices(PerKilo("pear-juice", 2.10m), PerKilo("agar", 38.40m), PerKilo("water", 0.002m), PerKilo("pear-syrup", 1));
        PlanCost cost = Cafe.Plan("pear-jelly", Yield.OfBase(Mass.FromGrams(1000))).Cost(prices, Today);
        cost.Whole.Total.Should().BeNull("the price of 'pear-syrup' is not that of the one made here");
        cost.Missing.Select(p => (p.Id, p.Subject)).Should().Equal(("price-missing", "sucrose"));
    }

    [Fact]
    public void Formula_outside_the_book_can_be_made_with_its_entries()
    {
        Formula drink = Formula.Named("drink").Base(b => b.Share(Pantry.Water, 80).Share(Of("pear-syrup"), 20)).Build();
        Formula resolved = Cafe.Resolve(drink);
        resolved.Line("pear-syrup").Ingredient.Composition.Should().NotBeNull();
        Cafe.Resolve(s_syrup).Should().BeSameAs(s_syrup);
    }
}
