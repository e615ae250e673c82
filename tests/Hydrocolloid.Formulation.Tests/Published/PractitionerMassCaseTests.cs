using Hydrocolloid.Formulation.Tests.Formulas;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>
/// Cases of weighing and scaling met by cooks, teachers and laboratories in public threads and pages; the trait holds the case's id.
/// Numbers are those given there or worked out from them; tolerances are relative unless the comment says otherwise, and allow for
/// the rounding of the published figures. Densities that a case needs and does not give are written beside it.
/// </summary>
public class PractitionerMassCaseTests
{
    private static readonly Ingredient s_liquid = Mixes.Dry("liquid").WithComposition(Composition.Per100Grams(water: 100));
    private static readonly Ingredient s_agent = Mixes.Dry("agent");

    private static Mass G(double grams) => Mass.FromGrams(grams);

    private static Formula Weighed(Action<BaseBuilder> liquids, Action<PhaseBuilder> additions)
        => Formula.Named("case").Base(liquids).Then("gel", additions).Build();

    private static Formula Dosed(Dose dose) => Formula.Named("case").Base(b => b.Share(s_liquid, 100)).Then("gel", p => p.Add(s_agent, dose)).Build();

    private static double PercentOfTotal(Formula formula, string label) => formula.Express(label, DoseReference.Total).PercentByMass;

    private static void Near(double actual, double expected, double tolerance) => actual.Should().BeApproximately(expected, Math.Abs(expected) * tolerance);

    /// <summary>Laboratory forum thread, 2007: 8 g agar (label 1.2 % w/v) and 15 g broth powder in 500 mL of water at 0.998 g/mL.</summary>
    [Fact, Trait("Case", "PC-001")]
    public void Eight_grams_of_agar_in_half_a_litre_of_broth()
    {
        const double water = 500 * 0.998;
        Formula formula = Weighed(
            b => b.Weigh(s_liquid, G(water)),
            p => p.Weigh(Mixes.Dry("broth-powder"), G(15), DoseReference.Base).Weigh(s_agent, G(8), DoseReference.Base));

        Near(PercentOfTotal(formula, "agent"), 1.533, 0.01);
        // grams per 100 mL are the percentage of the base times its density
        Near(formula.Line("agent").Dose.PercentByMass * 0.998, 1.6, 0.005);
        double label = formula.WithDose("agent", Dose.Percent(1.2 / 0.998).OfBase).OfBase(water).MassOf("agent").Grams;
        Near(label, 6.0, 0.005);
        Near(8 / label, 1.3333, 0.005);
        Near(formula.WithDose("agent", Dose.Percent(2.0 / 0.998).OfBase).OfBase(water).MassOf("agent").Grams, 10, 0.005);
    }

    /// <summary>School answer page: 69 g agar in 50 mL of water (1.00 g/mL), a decimal slip of 0.69 g.</summary>
    [Fact, Trait("Case", "PC-003")]
    public void Sixty_nine_grams_in_fifty_millilitres_is_a_paste()
    {
        Formula formula = Weighed(b => b.Weigh(s_liquid, G(50)), p => p.Weigh(s_agent, G(69), DoseReference.Total));

        Near(formula.Line("agent").Dose.PercentByMass, 57.98, 0.005);
        Near(Dosed(Dose.Percent(1.38).OfBase).OfBase(50).MassOf("agent").Grams, 0.69, 0.005);
    }

    /// <summary>Cook's report, 2008: 25 g leaf gelatin, 2 L cream (0.994 g/mL), 1 L milk (1.03 g/mL), 230 g sugar; part lost to the soak water.</summary>
    [Fact, Trait("Case", "PC-006")]
    public void Gelatin_lost_to_the_soak_water_had_little_to_spare()
    {
        Formula formula = Weighed(
            b => b.Weigh(Pantry.Cream35, G(2000 * 0.994)).Weigh(Pantry.WholeMilk, G(1000 * 1.03)),
            p => p.Weigh(Pantry.Sucrose, G(230), DoseReference.Base).Weigh(Hydrocolloids.GelatinTypeA, G(25), DoseReference.Total));
        Batch batch = formula.ScaleTo(Yield.FromStocks(new Stock(Hydrocolloids.GelatinTypeA, G(25))));

        Near(batch.AssembledMass.Grams, 3273, 0.01);
        Near(formula.Line(Hydrocolloids.GelatinTypeA).Dose.PercentByMass, 0.764, 0.01);
        Batch limit = formula.WithDose("gelatin-type-a", Dose.Percent(0.6).OfTotal).ScaleTo(Yield.Assembled(batch.AssembledMass));
        double needed = limit.MassOf(Hydrocolloids.GelatinTypeA).Grams;
        Near(needed, 19.6, 0.01);
        Near(100 * (1 - needed / 25), 21.4, 0.03);
    }

    /// <summary>Blog of 2017 and a cookbook: 70 g dried weed on 500 mL cream and 200 mL milk against 7 g on 900 mL milk.</summary>
    [Fact, Trait("Case", "PC-007")]
    public void Seventy_grams_of_weed_is_ten_times_too_much()
    {
        Formula blog = Weighed(
            b => b.Weigh(Pantry.Cream35, G(500 * 0.994)).Weigh(Pantry.WholeMilk, G(200 * 1.03)),
            p => p.Weigh(Pantry.Sucrose, G(75), DoseReference.Base).Weigh(s_agent, G(70), DoseReference.Base));
        Formula cookbook = Weighed(b => b.Weigh(Pantry.WholeMilk, G(900 * 1.03)), p => p.Weigh(s_agent, G(7), DoseReference.Base));
        Formula corrected = blog.WithDose("agent", Dose.Percent(blog.Line("agent").Dose.PercentByMass / 10).OfBase);

        Near(blog.Line("agent").Dose.PercentByMass, 9.96, 0.01);
        Near(cookbook.Line("agent").Dose.PercentByMass, 0.755, 0.01);
        Near(corrected.Line("agent").Dose.PercentByMass, 0.996, 0.01);
        Near(70.0 / 700 / (7.0 / 900), 12.86, 0.01);
    }

    /// <summary>Two extension leaflets on soft jelly: amounts per US quart and per US cup, for six cups.</summary>
    [Theory, Trait("Case", "PC-011")]
    [InlineData("1 US qt", "0.25 US cup", 88.7)]
    [InlineData("1 US qt", "0.5 US cup", 177.4)]
    [InlineData("1 US qt", "2 US tbsp", 44.4)]
    [InlineData("1 US qt", "4 US tsp", 29.6)]
    [InlineData("1 US cup", "2 US tbsp", 177.4)]
    [InlineData("1 US cup", "1 US tbsp", 88.7)]
    [InlineData("1 US cup", "1.5 US tsp", 44.4)]
    public void Six_cups_of_jelly_take_the_amounts_in_proportion(string per, string amount, double millilitres)
    {
        double factor = QuantityText.ParseVolume("6 US cup") / QuantityText.ParseVolume(per);

        Near(factor * QuantityText.ParseVolume(amount).Milliliters, millilitres, 0.005);
    }

    /// <summary>Forum thread of 2009 on a jam made seven-fold: 28 cups instead of 4, 18 pints where 24 were expected.</summary>
    [Fact, Trait("Case", "PC-012")]
    public void Seven_fold_batch_scales_in_its_masses_and_loses_a_quarter()
    {
        Formula formula = Dosed(Dose.Percent(2).OfBase);
        Batch once = formula.OfBase(4);
        Batch seven = formula.OfBase(28);

        seven.Lines.Zip(once.Lines, (a, b) => a.Mass / b.Mass).Should().OnlyContain(factor => Math.Abs(factor - 7) < 1e-14);
        Batch boiled = formula.ScaleTo(Yield.Finished(G(18)), new Losses { Evaporation = Loss.Percent(25) });
        Near(boiled.AssembledMass.Grams, 24, 1e-12);
        Near(100 * (boiled.FinishedMass / boiled.AssembledMass), 75, 1e-12);
    }

    /// <summary>Forum thread of a dressing maker: 0.5 % of the total advised, 0.13 % found by trial; 35 % of the mass is water (assumed).</summary>
    [Fact, Trait("Case", "PC-013")]
    public void Half_a_percent_of_the_total_is_much_of_the_water()
    {
        Ingredient rest = Mixes.Dry("oil-and-cheese").WithComposition(Composition.Per100Grams(water: 0));
        Formula formula = Formula.Named("dressing")
            .Base(b => b.Share(s_liquid, 100))
            .Then("rest", p => p.Add(rest, Dose.Percent(100 * (0.65 - 0.005) / 0.35).OfBase))
            .Then("thicken", p => p.Add(s_agent, Dose.Percent(0.5).OfTotal))
            .Build();
        Formula settled = formula.WithDose("agent", Dose.Percent(0.13).OfTotal);

        Near(formula.Express("agent", DoseReference.Water).PercentByMass, 1.43, 0.01);
        Near(settled.Express("agent", DoseReference.Water).PercentByMass, 0.37, 0.02);
        Near(0.5 / 0.13, 3.85, 0.01);
        Near(settled.ScaleTo(Yield.Assembled(G(1000))).MassOf("agent").Grams, 1.3, 0.005);
    }

    /// <summary>Cook's blog: 1.3 g methylcellulose, 160 mL water, 370 mL cream cheese of 54 % water, both about 1 g/mL.</summary>
    [Fact, Trait("Case", "PC-014")]
    public void Cheese_noodles_hold_a_quarter_of_the_dose_they_need()
    {
        Ingredient cheese = Mixes.Dry("cream-cheese").WithComposition(Composition.Per100Grams(water: 54));
        Formula formula = Weighed(b => b.Weigh(s_liquid, G(160)).Weigh(cheese, G(370)), p => p.Weigh(s_agent, G(1.3), DoseReference.Total));

        Near(formula.Line("agent").Dose.PercentByMass, 0.245, 0.01);
        Near(formula.Express("agent", DoseReference.Water).PercentByMass, 0.36, 0.02);
        Near(formula.WithDose("agent", Dose.Percent(1).OfTotal).OfBase(530).MassOf("agent").Grams, 5.35, 0.01);
        Near(formula.WithDose("agent", Dose.Percent(1.5).OfTotal).OfBase(530).MassOf("agent").Grams, 8.07, 0.01);
    }

    /// <summary>Cookery page: 500 g liquid, 4.5 g agar, 0.5 g locust bean gum, called 0.9 % and 0.1 %; scaled to 2000 g (assumed).</summary>
    [Fact, Trait("Case", "PC-017")]
    public void Blend_in_percent_of_liquid_is_less_in_percent_of_the_total()
    {
        Formula formula = Weighed(
            b => b.Weigh(s_liquid, G(500)),
            p => p.Weigh(Hydrocolloids.Agar, G(4.5), DoseReference.Base).Weigh(Hydrocolloids.LocustBeanGum, G(0.5), DoseReference.Base));
        Batch batch = formula.ScaleTo(Yield.Finished(G(2000)));

        Near(formula.Line("agar").Dose.PercentByMass, 0.9, 1e-12);
        Near(PercentOfTotal(formula, "agar"), 0.891, 0.005);
        Near(PercentOfTotal(formula, "locust-bean-gum"), 0.099, 0.01);
        double gum = batch.MassOf("locust-bean-gum").Grams;
        double agar = batch.MassOf("agar").Grams;
        Near(100 * gum / (gum + agar), 10, 0.005);
        Near(batch.MassOf("liquid").Grams, 1980.2, 0.001);
        Near(agar, 17.82, 0.001);
        Near(gum, 1.98, 0.002);
    }

    /// <summary>Teaching laboratory's sheet: 5 g in 333 mL in each of two flasks, for 20 boxes of 50 mL.</summary>
    [Fact, Trait("Case", "PC-019")]
    public void Two_flasks_fill_thirteen_boxes_of_twenty()
    {
        Volume needed = QuantityText.ParseVolume("50 mL") * 20;
        Volume available = QuantityText.ParseVolume("333 mL") * 2;

        Near(needed.Milliliters, 1000, 1e-12);
        Near(available.Milliliters, 666, 1e-12);
        Near((needed - available).Milliliters, 334, 1e-12);
        Math.Floor(available.Milliliters / 50).Should().Be(13);
        // at 1 g/mL grams per 100 mL are the percentage of the base
        Formula flask = Weighed(b => b.Weigh(s_liquid, G(333)), p => p.Weigh(s_agent, G(5), DoseReference.Base));
        Near(flask.Line("agent").Dose.PercentByMass, 1.5, 0.005);
        Near(flask.OfBase(1000).MassOf("agent").Grams, 15.02, 0.005);
    }

    /// <summary>Pastry worker's thread, 2008: a hundred portions of 100 g, 5 % loss, 0.8 % gelatin (masses and loss assumed).</summary>
    [Fact, Trait("Case", "PC-020")]
    public void Hundred_portions_divide_the_loss_out()
    {
        Formula formula = Dosed(Dose.Percent(0.8).OfTotal);
        var losses = new Losses { Transfer = Loss.Percent(5) };
        Batch batch = formula.ScaleTo(Yield.Portions(100, G(100)), losses);

        Near(batch.AssembledMass.Grams, 10526.3, 0.0005);
        Near(batch.MassOf("agent").Grams, 84.21, 0.001);
        Near(formula.ScaleTo(Yield.Assembled(G(10_500)), losses).FinishedMass.Grams / 100, 99.75, 0.001);

        Losses learned = LearnedLosses.From([new StepWeighing(LossStep.Transfer, G(2000), G(1900)), new StepWeighing(LossStep.Transfer, G(400), G(380))]).ToLosses();
        Near(formula.ScaleTo(Yield.Portions(100, G(100)), learned).AssembledMass.Grams, 10526.3, 0.0005);
    }

    /// <summary>Teaching page: 26 plates of 20 mL, 28 g/L of a powder that holds about 15 g/L agar; 10 % overage assumed, 1 g/mL.</summary>
    [Fact, Trait("Case", "PC-024")]
    public void Twenty_six_plates_take_their_powder_in_proportion()
    {
        Formula formula = Dosed(Dose.Percent(2.8).OfBase);
        Batch plates = formula.ScaleTo(Yield.Portions(26, G(20), YieldBasis.Base));
        Batch more = formula.ScaleTo(Yield.Portions(26, G(22), YieldBasis.Base));

        Near(plates.BaseMass.Grams, 520, 0.005);
        Near(plates.MassOf("agent").Grams, 14.56, 0.001);
        Near(more.BaseMass.Grams, 572, 0.005);
        Near(more.MassOf("agent").Grams, 16.016, 0.001);
        Near(Dosed(Dose.Percent(1.5).OfBase).OfBase(520).MassOf("agent").Grams, 7.8, 0.02);
    }

    /// <summary>Forum question of 2013: 0.5 % of 100 g on a balance that reads whole grams.</summary>
    [Fact, Trait("Case", "PC-029")]
    public void Half_a_gram_needs_a_larger_batch_or_a_finer_balance()
    {
        Formula formula = Dosed(Dose.Percent(0.5).OfBase);
        Balance whole = Balance.WithDivision(G(1)), tenth = Balance.WithDivision(G(0.1));

        Near(formula.OfBase(100).MassOf("agent").Grams, 0.5, 0.005);
        WeighLine half = formula.OfBase(100).WeighOn(whole).Lines[1];
        (half.Rounded.Grams, half.ExceedsTolerance).Should().Be((1, true));
        Near(half.ErrorPercent!.Value, 100, 1e-12);
        Near(100 * (0.5 / formula.OfBase(200).MassOf("agent").Grams), 50, 0.005);
        Near(whole.SmallestBatch(formula).Grams, 2000, 0.005);
        Near(tenth.SmallestBatch(formula).Grams, 200, 0.005);
    }

    /// <summary>Beginner's question on a site of questions and answers: 0.2 % to 3.0 % of what, for 500 g (assumed).</summary>
    [Theory, Trait("Case", "PC-030")]
    [InlineData(0.2, 1.0, 1.002)]
    [InlineData(3.0, 15.0, 15.464)]
    public void Percent_of_the_base_and_of_the_total_differ_by_the_dose_itself(double percent, double ofBase, double ofTotal)
    {
        Near(Dosed(Dose.Percent(percent).OfBase).OfBase(500).MassOf("agent").Grams, ofBase, 0.005);
        Near(Dosed(Dose.Percent(percent).OfTotal).OfBase(500).MassOf("agent").Grams, ofTotal, 0.0005);
    }

    /// <summary>Issue of a units library, 2018: a ratio that turns into a plain number mistakes 0.9 % for 0.009.</summary>
    [Fact, Trait("Case", "PC-037")]
    public void Percentage_never_turns_into_a_plain_number_by_itself()
    {
        Near(Dosed(Dose.Percent(0.9).OfBase).OfBase(500).MassOf("agent").Grams, 4.5, 1e-9);
        Near(Dosed(Dose.Share(Ratio.FromDecimalFractions(0.009)).OfBase).OfBase(500).MassOf("agent").Grams, 4.5, 1e-9);
        Near(Dosed(Dose.Percent(0.009).OfBase).OfBase(500).MassOf("agent").Grams, 0.045, 1e-9);

        foreach (Type type in new[] { typeof(Dose), typeof(DosePercent) })
        {
            type.GetMethods().Should().NotContain(m => m.Name == "op_Implicit" || m.Name == "op_Explicit");
        }
    }

    /// <summary>Issue of a JSON library, 2021: a division by nothing that is met only when the result is saved.</summary>
    [Fact, Trait("Case", "PC-038")]
    public void Nothing_to_divide_by_is_an_error_at_once()
    {
        FluentActions.Invoking(() => Yield.Portions(0, G(100))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Yield.Finished(G(0))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Weighed(b => b.Weigh(s_liquid, G(0)), p => p.Weigh(s_agent, G(1), DoseReference.Base)))
            .Should().Throw<FormulaException>().Which.Problems.Should().Contain(p => p.Id == "base-empty");
        Formula empty = Dosed(Dose.Percent(0).OfBase);
        empty.OfBase(100).WeighOn(Balance.WithDivision(G(1))).Lines[1].ErrorPercent.Should().BeNull();
        FluentActions.Invoking(() => Mass.FromGrams(double.NaN)).Should().Throw<ArgumentException>();
    }
}
