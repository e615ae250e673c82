using CsCheck;
using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Batches;

public class WeighingPlanTests
{
    private static readonly Balance s_kitchen = Balance.WithDivision(G(1)) with { Capacity = G(5000) };
    private static readonly Balance s_fine = Balance.WithDivision(G(0.1)) with { Capacity = G(500) };

    private static Mass G(double grams) => Mass.FromGrams(grams);

    private static Formula Mix(Ingredient small, double percent, double sugar = 10, double salt = 0) => Formula.Named("mix")
        .Base(b => b.Share(Pantry.Water, 100))
        .Then("season", p => p.Add(Pantry.Sucrose, Dose.Percent(sugar).OfBase).Add(Pantry.Salt, Dose.Percent(salt).OfBase))
        .Then("gel", p => p.Add(small, Dose.Percent(percent).OfBase))
        .Build();

    [Fact]
    public void Each_line_goes_to_the_balance_that_shows_it_best()
    {
        WeighingPlan plan = Mix(Hydrocolloids.Agar, 0.5).OfBase(2000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine));

        plan.Line("water").Reading!.Balance.Should().Be(s_kitchen, "the fine one carries 500 g");
        plan.Line("sucrose").Reading!.Balance.Should().Be(s_fine);
        plan.Line("agar").Reading!.ToString().Should().Be("10 g (0.1 g steps)");
        plan.Line("salt").ToString().Should().Be("Salt: nothing");
        (plan.IsPossible, plan.Preparations.Count).Should().Be((true, 0));
    }

    [Fact]
    public void Mass_above_every_capacity_is_weighed_in_goes()
    {
        BalanceReading water = Mix(Hydrocolloids.Agar, 0.5).OfBase(12_000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine)).Line("water").Reading!;

        (water.Goes, water.Shown.Grams, water.Balance).Should().Be((3, 12_000, s_kitchen));
        water.Uncertainty.Grams.Should().BeApproximately(3 * 0.82, 1e-12);
    }

    [Fact]
    public void Balance_of_a_class_adds_its_permissible_error_in_service()
    {
        Balance trade = Balance.OfClass(BalanceClass.Medium, G(1), G(6000));
        WeighingPlan plan = Mix(Hydrocolloids.Agar, 2).OfBase(3000).PlanWeighing(new WeighingSetup(trade));

        plan.Line("water").Reading!.PermissibleError!.Value.Grams.Should().Be(3, "twice 1.5 e above 2 000 e");
        plan.Line("agar").Reading!.PermissibleError!.Value.Grams.Should().Be(1, "twice 0.5 e up to 500 e");
        Mix(Hydrocolloids.Agar, 2).OfBase(3000).PlanWeighing(new WeighingSetup(s_kitchen)).Line("agar").Reading!.PermissibleError.Should().BeNull();
    }

    /// <summary>Xanthan lumps unless blended with ten parts of sugar (the catalogue), so the premix holds at most one part in eleven.</summary>
    [Fact]
    public void Hydrocolloid_goes_with_sugar_of_the_formula_which_is_taken_off_it()
    {
        WeighingPlan plan = Mix(Hydrocolloids.XanthanGum, 0.1).OfBase(1000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine));
        Preparation premix = plan.Preparations.Should().ContainSingle().Subject;

        (premix.Way, premix.Line.Label, premix.CarrierLine.Label).Should().Be((WeighingWay.Premix, "xanthan-gum", "sucrose"));
        premix.Percent.Should().BeLessThanOrEqualTo(100.0 / 11 + 1e-9);
        double share = premix.Substance.Shown.Grams / (premix.Substance.Shown.Grams + premix.Carrier.Shown.Grams);
        plan.Line("xanthan-gum").Delivered!.Value.Grams.Should().BeApproximately(premix.Aliquot.Shown.Grams * share, 1e-12);
        (plan.Line("sucrose").Reading!.Shown.Grams + premix.Aliquot.Shown.Grams * (1 - share)).Should().BeApproximately(100, 0.05 + 1e-9);
        premix.UncertaintyPercent.Should().BeLessThanOrEqualTo(5);
        premix.Advice.Should().Contain(a => a.Citation.Quality == CitationQuality.CommonPractice).And.Contain(a => a.Citation.Source.Id == "imeson-2010");
    }

    [Fact]
    public void Without_sugar_a_thickener_goes_as_a_stock_no_stronger_than_it_pours()
    {
        WeighingPlan plan = Mix(Hydrocolloids.XanthanGum, 0.1, sugar: 0).OfBase(1000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine));
        Preparation stock = plan.Preparations.Should().ContainSingle().Subject;

        (stock.Way, stock.CarrierLine.Label).Should().Be((WeighingWay.Stock, "water"));
        stock.Percent.Should().BeLessThanOrEqualTo(0.5, "the doses that thicken end at 0.5 %");
        plan.ShownTotal.Grams.Should().BeApproximately(1001, 0.5 + 1e-9);
        plan.Explain("xanthan-gum").Value.Should().Be(plan.Line("xanthan-gum").Delivered!.Value.Grams);
        plan.Explain("water").Value.Should().Be(plan.Line("water").Delivered!.Value.Grams);
    }

    [Fact]
    public void Thickener_that_must_be_heated_is_said_to_be_only_spread_in_a_cold_stock()
        => Mix(Hydrocolloids.LocustBeanGum, 0.1, sugar: 0).OfBase(1000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine)).Preparations.Single()
            .Advice.Should().Contain(a => a.Value.Contains("still has to reach 80 °C"));

    [Fact]
    public void Gellan_has_no_cold_stock_and_without_sugar_nothing_helps()
    {
        WeighingPlan plan = Mix(Hydrocolloids.GellanLowAcyl, 0.1, sugar: 0).OfBase(1000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine));
        PlannedLine gellan = plan.Line("gellan-low-acyl");

        (plan.IsPossible, gellan.Way, gellan.Delivered, gellan.ErrorPercent).Should().Be((false, WeighingWay.NotPossible, null, null));
        gellan.Reasons.Should().Equal(
            "the balances weigh 1.64 g and more within 5 %",
            "the catalogue knows no strength at which Low-acyl gellan gum still pours as a cold stock",
            "the formula holds no dry sugar or salt to blend it with");
        plan.SmallestDirectBatch.Grams.Should().BeApproximately(1640, 1e-9);
        plan.Explain("gellan-low-acyl").Value.Should().BeApproximately(1, 1e-12);
    }

    /// <summary>At most 5 % of agar hydrate in one step (the catalogue); by the doses for thickening it would have no stock.</summary>
    [Fact]
    public void Concentration_that_hydrates_limits_a_stock()
    {
        Preparation stock = Mix(Hydrocolloids.Agar, 0.01, sugar: 0).OfBase(1000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine)).Preparations.Single();

        stock.Percent.Should().BeLessThanOrEqualTo(5);
        stock.Advice.Should().Contain(a => a.Value.Contains("only spread, not dissolved"));
    }

    [Fact]
    public void Salt_is_not_blended_with_what_salt_keeps_from_hydrating()
    {
        // The catalogue limits the sodium in which alginate swells; agar has no such limit.
        Mix(Hydrocolloids.SodiumAlginate, 0.1, sugar: 0, salt: 10).OfBase(1000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine)).Line("sodium-alginate").Way.Should().Be(WeighingWay.NotPossible);
        Mix(Hydrocolloids.Agar, 0.1, sugar: 0, salt: 10).OfBase(1000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine)).Preparations.Single().CarrierLine.Label.Should().Be("salt");
    }

    [Fact]
    public void Salts_go_as_solutions_within_their_solubility_and_chalk_does_not()
    {
        var setup = new WeighingSetup(s_kitchen, s_fine);
        Preparation lactate = Mix(Pantry.CalciumLactate, 0.1).OfBase(1000).PlanWeighing(setup).Preparations.Single();

        // 6.7 g of the anhydrous salt, 9.47 g of the pentahydrate, in 100 g of water.
        (lactate.Way, lactate.Percent <= 100 * 9.466 / 109.466).Should().Be((WeighingWay.Stock, true));
        Mix(Pantry.CalciumCarbonate, 0.1).OfBase(1000).PlanWeighing(setup).Preparations.Single().Way.Should().Be(WeighingWay.Premix);
    }

    [Fact]
    public void One_stock_serves_several_batches()
    {
        Preparation one = Mix(Pantry.CitricAcid, 0.1).OfBase(1000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine)).Preparations.Single();
        Preparation twenty = Mix(Pantry.CitricAcid, 0.1).OfBase(1000).PlanWeighing(new WeighingSetup(s_kitchen, s_fine) { Batches = 20 }).Preparations.Single();

        (twenty.Batches, twenty.Substance.Shown.Grams).Should().Be((20, 21), "20 × 1 g and 5 % more");
        twenty.Left.Grams.Should().BeGreaterThanOrEqualTo(0);
        twenty.Total.Grams.Should().BeGreaterThanOrEqualTo(20 * twenty.Aliquot.Shown.Grams);
        twenty.Aliquot.Shown.Should().Be(one.Aliquot.Shown);
    }

    /// <summary>
    /// Forum question of 2013: 0.5 % of 100 g on a balance that reads whole grams. By half a division, 2000 g are needed for ±5 % with 1 g steps and 200 g
    /// with 0.1 g steps; otherwise the answer there is a stock. For xanthan in plain water a stock cannot be: at the 0.5 % at which it still pours, the
    /// stock would be the whole batch. Of what dissolves, it can.
    /// </summary>
    [Fact, Trait("Case", "PC-029")]
    public void Half_a_gram_on_a_one_gram_scale()
    {
        WeighingSetup whole = new(Balance.WithDivision(G(1))) { Rule = MinimumWeightRule.HalfDivision };
        WeighingSetup tenth = new(Balance.WithDivision(G(0.1))) { Rule = MinimumWeightRule.HalfDivision };
        Batch xanthan = Mixes.Simple(0.5, Hydrocolloids.XanthanGum).OfBase(100);

        xanthan.PlanWeighing(whole).Line("xanthan-gum").Way.Should().Be(WeighingWay.NotPossible);
        xanthan.PlanWeighing(whole).SmallestDirectBatch.Grams.Should().BeApproximately(2000, 2000 * 0.005);
        xanthan.PlanWeighing(tenth).SmallestDirectBatch.Grams.Should().BeApproximately(200, 200 * 0.005);
        Mixes.Simple(0.5, Hydrocolloids.XanthanGum).OfBase(200).PlanWeighing(tenth).Line("xanthan-gum").Way.Should().Be(WeighingWay.Direct);

        WeighingPlan acid = Mixes.Simple(0.5, Pantry.CitricAcid).OfBase(100).PlanWeighing(whole);
        acid.Preparations.Single().Way.Should().Be(WeighingWay.Stock);
        acid.Line("citric-acid").Delivered!.Value.Grams.Should().BeApproximately(0.5, 0.5 * 0.05);
    }

    /// <summary>A mix of water, sugar, salt and up to three small lines, at any size, on one to three balances.</summary>
    private static readonly Gen<(Batch Batch, WeighingSetup Setup)> s_any = Gen.Select(
        Gen.OneOf<Ingredient>(Hydrocolloids.XanthanGum, Hydrocolloids.Agar, Hydrocolloids.GuarGum, Hydrocolloids.LocustBeanGum),
        Gen.Double[-2, 0].Array[3],
        Gen.Double[0, 40],
        Gen.Double[2, 4],
        Gen.Select(Gen.OneOf<double>(0.01, 0.1, 0.5, 1, 2, 5), Gen.Double[2, 4]).Array[1, 3],
        Gen.Double[0.5, 20],
        Gen.Int[1, 30]).Select((agent, powers, sugar, size, balances, tolerance, batches) =>
        {
            Formula formula = Formula.Named("any").Base(b => b.Share(Pantry.Water, 60).Share(Pantry.PearJuice, 40))
                .Then("season", p => p
                    .Add(Pantry.Sucrose, Dose.Percent(sugar).OfBase)
                    .Add(Pantry.Salt, Dose.Percent(Math.Pow(10, powers[0])).OfBase)
                    .Add(Pantry.SodiumCitrate, Dose.Percent(Math.Pow(10, powers[1])).OfPreceding))
                .Then("gel", p => p.Add(agent, Dose.Percent(Math.Pow(10, powers[2])).OfTotal))
                .Build();
            var setup = new WeighingSetup([.. balances.Select(b => Balance.WithDivision(G(b.Item1)) with { Capacity = G(Math.Pow(10, b.Item2)) })])
            {
                TolerancePercent = tolerance,
                Rule = batches % 2 == 0 ? MinimumWeightRule.HalfDivision : MinimumWeightRule.Repeatability,
                Batches = batches,
            };
            return (formula.OfBase(Math.Pow(10, size)), setup);
        });

    [Fact]
    public void Stocks_and_premixes_leave_the_composition_as_it_is_to_the_tolerance()
    {
        int preparations = 0;
        s_any.Sample(c =>
        {
            WeighingPlan plan = c.Batch.PlanWeighing(c.Setup);
            Interlocked.Add(ref preparations, plan.Preparations.Count);

            // What is in the pot, worked out from the readings alone.
            double[] pot = [.. plan.Lines.Select(l => l.Reading?.Shown.Grams ?? 0)];
            foreach (Preparation made in plan.Preparations)
            {
                double share = made.Substance.Shown.Grams / (made.Substance.Shown.Grams + made.Carrier.Shown.Grams);
                pot[made.Line.Index] += made.Aliquot.Shown.Grams * share;
                pot[made.CarrierLine.Index] += made.Aliquot.Shown.Grams * (1 - share);
            }

            double tolerance = c.Setup.TolerancePercent / 100 * (1 + 1e-9);
            return plan.Lines.Zip(pot, (line, grams) => line.Way == WeighingWay.NotPossible
                    ? grams == 0 && line.Reasons.Count > 1
                    : Math.Abs(grams - line.Exact.Grams) <= tolerance * line.Exact.Grams && Math.Abs(line.Delivered!.Value.Grams - grams) <= 1e-9 * grams).All(ok => ok)
                && Math.Abs(pot.Sum() - plan.ShownTotal.Grams) <= 1e-9 * pot.Sum();
        }, iter: 2000);
        preparations.Should().BeGreaterThan(500);
    }

    [Fact]
    public void Every_reading_is_a_step_of_a_balance_that_weighs_it_within_the_tolerance()
        => s_any.Sample(c =>
        {
            WeighingPlan plan = c.Batch.PlanWeighing(c.Setup);
            IEnumerable<BalanceReading> readings = plan.Lines.Select(l => l.Reading).OfType<BalanceReading>().Concat(plan.Preparations.SelectMany(p => new[] { p.Substance, p.Carrier, p.Aliquot }));
            return readings.All(r => Math.Abs(r.Shown.Grams / r.Balance.Division.Grams - Math.Round(r.Shown.Grams / r.Balance.Division.Grams)) < 1e-6)
                && plan.Preparations.All(p => p.UncertaintyPercent <= c.Setup.TolerancePercent * (1 + 1e-9) && p.Left.Grams >= -1e-9)
                && plan.Lines.All(l => l.UncertaintyPercent is not { } u || u <= c.Setup.TolerancePercent * (1 + 1e-9))
                && plan.Lines.All(l => l.Delivered is not { } d || Math.Abs(plan.Explain(l.Line.Label).Value - d.Grams) <= 1e-9 * d.Grams);
        }, iter: 1000);

    [Fact]
    public void Rounding_keeps_the_total_of_a_mix_with_one_large_line()
        => Gen.Select(Gen.Double[5, 30], Gen.Double[1, 4], Gen.Double[200, 4000]).Sample((sugar, agar, grams) =>
        {
            Batch batch = Mix(Hydrocolloids.Agar, agar, sugar).OfBase(grams);
            WeighingPlan plan = batch.PlanWeighing(new WeighingSetup(s_kitchen));
            double wanted = plan.Lines.Where(l => l.Way != WeighingWay.NotPossible).Sum(l => l.Exact.Grams);
            return Math.Abs(plan.ShownTotal.Grams - wanted) <= 0.5 + 1e-9;
        });

    [Fact]
    public void Total_is_kept_by_the_line_that_is_then_least_off_and_the_derivation_says_so()
    {
        // 1000.4 + 50.4 + 20.4 g are 1071.2 g; rounded one by one they are 1070 g.
        Formula formula = Formula.Named("f").Base(b => b.Weigh(Pantry.Water, G(1000.4)))
            .Then("season", p => p.Weigh(Pantry.Sucrose, G(50.4), DoseReference.Base).Weigh(Pantry.Salt, G(20.4), DoseReference.Base)).Build();
        WeighingPlan plan = formula.OfBase(1000.4).PlanWeighing(new WeighingSetup(Balance.WithDivision(G(1))));

        plan.Lines.Select(l => l.Reading!.Shown.Grams).Should().Equal(1001, 50, 20);
        plan.Explain("water").ToText().Should().EndWith("water, weighed = 1000.4 g, to the next 1 g, + 1 g to keep the total = 1001 g\n");
    }

    [Theory]
    [InlineData(1e-30, 100)]
    [InlineData(1e-300, 1e8)]
    [InlineData(1e-7, 1e-9)]
    public void Masses_beyond_any_balance_are_told_apart_and_not_choked_on(double percent, double baseGrams)
    {
        WeighingPlan plan = Mix(Pantry.CitricAcid, percent).OfBase(baseGrams).PlanWeighing(new WeighingSetup(s_kitchen, Balance.WithDivision(G(1e-6))) { Batches = 10_000 });

        plan.Line("citric-acid").Way.Should().Be(WeighingWay.NotPossible);
        plan.Line("citric-acid").Reasons.Should().NotBeEmpty();
    }

    [Fact]
    public void Setup_refuses_what_cannot_be()
    {
        FluentActions.Invoking(() => new WeighingSetup()).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new WeighingSetup([null!])).Should().Throw<ArgumentNullException>();
        FluentActions.Invoking(() => new WeighingSetup(s_fine) { TolerancePercent = 0 }).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new WeighingSetup(s_fine) { TolerancePercent = 101 }).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new WeighingSetup(s_fine) { Batches = 0 }).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new WeighingSetup(s_fine) { Rule = (MinimumWeightRule)9 }).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Mixes.Simple().OfBase(1).PlanWeighing(null!)).Should().Throw<ArgumentNullException>();
    }
}
