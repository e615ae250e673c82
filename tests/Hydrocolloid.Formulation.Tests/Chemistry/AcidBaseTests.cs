using CsCheck;
using Hydrocolloid.Formulation.Chemistry;

namespace Hydrocolloid.Formulation.Tests.Chemistry;

public class AcidBaseTests
{
    private static readonly AcidBaseSystem s_lemon = AcidBaseSystem.FromMeasured(2.4, 5, Acids.Citric, 91);

    private static Gen<AcidBaseSystem> Liquids
        => Gen.Select(Gen.Double[0, 0.05].Array[Acids.All.Count], Gen.Double[0, 0.05], Gen.Double[0, 0.02], Gen.Double[0, 0.01], Gen.Double[-0.03, 0.05], Gen.Double[60, 100],
            (acids, sodium, calcium, magnesium, other, water) => AcidBaseSystem.Of(acids.Select((mol, i) => new AcidAmount(Acids.All[i], i % 3 == 0 ? mol : mol / 10)),
                new StrongIons { SodiumMolPerKg = sodium, CalciumMolPerKg = calcium, MagnesiumMolPerKg = magnesium, OtherChargeMolPerKg = other }, water));

    [Fact]
    public void A_measured_liquid_gives_its_measurements_back()
    {
        s_lemon.Solve().PH.Should().BeApproximately(2.4, 1e-8);
        s_lemon.TitratableAcidityPercent(Acids.Citric).Should().BeApproximately(5, 1e-8);
        s_lemon.TotalMolPerKg(Acids.Citric).Should().BeInRange(0.25, 0.30);
    }

    [Fact]
    public void Measured_liquids_give_their_measurements_back()
        => Gen.Select(Gen.Double[2.6, 4.5], Gen.Double[0.1, 6], Gen.Int[0, 4].Select(i => Acids.All[i])).Sample((pH, acidity, acid) =>
        {
            AcidBaseSystem liquid = AcidBaseSystem.FromMeasured(pH, acidity, acid, 88);
            return Math.Abs(liquid.Solve().PH - pH) < 1e-7 && Math.Abs(liquid.TitratableAcidityPercent(acid) - acidity) < 1e-7;
        });

    [Fact]
    public void The_pH_of_a_mix_is_not_the_mean()
    {
        AcidBaseSystem milk = AcidBaseSystem.Of([new AcidAmount(Acids.Citric, 0.009), new AcidAmount(Acids.Phosphoric, 0.02)], default, 88).WithPH(6.7);

        AcidBaseSystem.Mix([new MixPart(s_lemon, 1), new MixPart(milk, 1)]).Solve().PH.Should().BeLessThan(3.2, "lemon juice has far more buffer than milk").And.BeGreaterThan(2.4);
    }

    [Fact]
    public void Mixing_is_associative_and_conserves()
        => Gen.Select(Liquids, Liquids, Liquids, Gen.Double[0.1, 10].Array[3]).Sample((a, b, c, parts) =>
        {
            AcidBaseSystem ab = AcidBaseSystem.Mix([new MixPart(a, parts[0]), new MixPart(b, parts[1])]);
            AcidBaseSystem left = AcidBaseSystem.Mix([new MixPart(ab, parts[0] + parts[1]), new MixPart(c, parts[2])]);
            AcidBaseSystem right = AcidBaseSystem.Mix([new MixPart(c, parts[2]), new MixPart(b, parts[1]), new MixPart(a, parts[0])]);
            double sum = parts.Sum();
            double Mean(Func<AcidBaseSystem, double> of) => ((parts[0] * of(a)) + (parts[1] * of(b)) + (parts[2] * of(c))) / sum;
            return Acids.All.All(acid => Near(left.TotalMolPerKg(acid), Mean(s => s.TotalMolPerKg(acid))))
                && Near(left.Ions.DifferenceMolPerKg, Mean(s => s.Ions.DifferenceMolPerKg)) && Near(left.WaterPercent / 100, Mean(s => s.WaterPercent / 100))
                && Near(left.Ions.CalciumMolPerKg, Mean(s => s.Ions.CalciumMolPerKg))
                && Math.Abs(left.Solve().PH - right.Solve().PH) < 1e-8;
        });

    [Fact]
    public void Charge_and_calcium_balance()
        => Liquids.Sample(liquid =>
        {
            AcidBaseState state = liquid.Solve();
            double water = liquid.WaterPercent / 100, charge = 1000 * (state.HydrogenMolPerKgWater - state.HydroxideMolPerKgWater + (liquid.Ions.DifferenceMolPerKg / water));
            double calcium = state.FreeCalciumMmolPerKgWater;
            double magnesium = liquid.Ions.MagnesiumMolPerKg / water * 1000;
            foreach (Acid acid in Acids.All)
            {
                double all = 0;
                for (int n = 0; n <= acid.PKa.Count; n++)
                {
                    double form = state.FormMmolPerKgWater(acid, n), complex = state.CalciumComplexMmolPerKgWater(acid, n);
                    charge += form * (acid.Charge + n) + complex * (acid.Charge + n);
                    calcium += complex;
                    all += form + complex;
                }

                // What the forms and the calcium complexes do not hold is with magnesium.
                double withMagnesium = (liquid.TotalMolPerKg(acid) / water * 1000) - all;
                if (withMagnesium < -1e-9 || (acid.Complexes.All(c => !c.Magnesium) && withMagnesium > 1e-9))
                {
                    return false;
                }
            }

            return Math.Abs(calcium - (liquid.Ions.CalciumMolPerKg / water * 1000)) < 1e-8
                && (magnesium > 1e-6 || Math.Abs(charge) < 1e-6);
        });

    [Fact]
    public void PH_falls_as_acid_is_added()
        => Gen.Select(Liquids, Gen.Double[0.01, 20]).Where((liquid, _) => liquid.Solve().PH > 3.2).Sample((liquid, grams)
            => liquid.Add(Reagents.CitricAcid, grams).Solve().PH < liquid.Solve().PH);

    [Fact]
    public void The_dose_to_a_pH_reaches_it_and_comes_back()
        => Gen.Select(Gen.Double[2.6, 4], Gen.Double[0.2, 3], Gen.Double[0.1, 30]).Sample((pH, acidity, grams) =>
        {
            AcidBaseSystem juice = AcidBaseSystem.FromMeasured(pH, acidity, Acids.Malic, 88);
            DoseResult dose = juice.DoseToPH(Reagents.TrisodiumCitrateDihydrate, juice.Add(Reagents.TrisodiumCitrateDihydrate, grams).Solve().PH);
            return dose.Outcome == DoseOutcome.Reached && Math.Abs(dose.GramsPerKg - grams) < 1e-5 * grams;
        });

    [Fact]
    public void Bicarbonate_raises_the_pH_and_boiling_the_gas_off_raises_it_further()
    {
        DoseResult dose = s_lemon.DoseToPH(Reagents.SodiumBicarbonate, 4);

        dose.Outcome.Should().Be(DoseOutcome.Reached);
        dose.Mix.WithoutCarbonDioxide().Solve().PH.Should().BeGreaterThan(4);
    }

    [Fact]
    public void A_pH_out_of_reach_names_the_limit()
    {
        DoseResult dose = AcidBaseSystem.Water.DoseToPH(Reagents.CitricAcid, 1);

        dose.Outcome.Should().Be(DoseOutcome.NotReached);
        dose.GramsPerKg.Should().Be(100);
        dose.Explanation.Should().StartWith("citric acid cannot bring it below pH 1.7").And.EndWith("within 10 %");
    }

    [Fact]
    public void The_wrong_reagent_is_said_to_be_wrong()
        => s_lemon.DoseToPH(Reagents.CitricAcid, 4).Explanation.Should().StartWith("citric acid moves it away from pH 4");

    [Fact]
    public void Sequestrant_brings_free_calcium_under_a_limit()
    {
        AcidBaseSystem hard = AcidBaseSystem.Of([], new StrongIons { CalciumMolPerKg = 0.003, ChlorideMolPerKg = 0.006 });

        DoseResult dose = hard.DoseToFreeCalcium(Reagents.TrisodiumCitrateDihydrate, 0.1);

        dose.Outcome.Should().Be(DoseOutcome.Reached);
        (dose.GramsPerKg / 294.099 * 1000).Should().BeInRange(3, 6, "one to one holds 2.9, and the last of it takes an excess");
        hard.DoseToFreeCalcium(Reagents.TrisodiumCitrateDihydrate, 0).Outcome.Should().Be(DoseOutcome.NotReached);
    }

    [Fact]
    public void A_salt_beyond_its_solubility_is_an_outcome()
    {
        DoseResult gypsum = AcidBaseSystem.Water.DoseToFreeCalcium(Reagents.CalciumSulphateDihydrate, 30);
        gypsum.Outcome.Should().Be(DoseOutcome.BeyondSolubility);
        gypsum.Explanation.Should().Contain("beyond its solubility");

        AcidBaseSystem.Water.DoseToFreeCalcium(Reagents.CalciumLactatePentahydrate, 53, maxGramsPerKg: 150).Outcome.Should().Be(DoseOutcome.BeyondSolubility);
        AcidBaseSystem.Water.DoseToFreeCalcium(Reagents.CalciumLactatePentahydrate, 20).Outcome.Should().Be(DoseOutcome.Reached);
        AcidBaseSystem.Water.DoseToFreeCalcium(Reagents.CalciumChlorideDihydrate, 200).Outcome.Should().Be(DoseOutcome.Reached);
        AcidBaseSystem.Water.DoseToFreeCalcium(Reagents.SodiumChloride, 5).Outcome.Should().Be(DoseOutcome.NotReached);
    }

    /// <summary>The way to the level turns: pure water with bicarbonate is at its highest near 0.1 g/kg, with disodium phosphate near 1 g/kg, by its own ionic strength.</summary>
    [Fact]
    public void The_smallest_dose_is_found_where_the_way_there_turns()
    {
        DoseResult bicarbonate = AcidBaseSystem.Water.DoseToPH(Reagents.SodiumBicarbonate, 8.2);
        DoseResult phosphate = AcidBaseSystem.Water.DoseToPH(Reagents.DisodiumHydrogenPhosphate, 9.3);

        bicarbonate.Outcome.Should().Be(DoseOutcome.Reached);
        bicarbonate.State.PH.Should().BeApproximately(8.2, 1e-6);
        phosphate.State.PH.Should().BeApproximately(9.3, 1e-6);
        phosphate.GramsPerKg.Should().BeLessThan(1.01);
        double highest = Enumerable.Range(0, 600).Max(i => AcidBaseSystem.Water.Add(Reagents.SodiumBicarbonate, Math.Pow(10, -4 + (i / 100.0))).Solve().PH);
        DoseResult beyond = AcidBaseSystem.Water.DoseToPH(Reagents.SodiumBicarbonate, highest + 0.01);
        beyond.Outcome.Should().Be(DoseOutcome.NotReached);
        beyond.State.PH.Should().BeApproximately(highest, 1e-3, "the limit that is named is the highest there is, not that of the largest dose");
        AcidBaseSystem.Water.DoseToPH(Reagents.SodiumBicarbonate, highest - 0.0005).Outcome.Should().Be(DoseOutcome.Reached, "it is reached between two steps of the search");
    }

    [Fact]
    public void Acid_lowers_free_calcium_before_it_raises_it()
    {
        AcidBaseSystem hard = AcidBaseSystem.Of([new AcidAmount(Acids.Carbonic, 0.0062)], new StrongIons { CalciumMolPerKg = 0.003 });

        DoseResult dose = hard.DoseToFreeCalcium(Reagents.CitricAcid, 2.2);

        dose.Outcome.Should().Be(DoseOutcome.Reached);
        dose.State.FreeCalciumMmolPerKgWater.Should().BeApproximately(2.2, 1e-6);
        dose.GramsPerKg.Should().BeLessThan(0.3);
    }

    [Fact]
    public void No_limit_is_named_that_does_not_dissolve()
    {
        DoseResult tartrate = AcidBaseSystem.Water.DoseToPH(Reagents.PotassiumHydrogenTartrate, 3.45);
        tartrate.Outcome.Should().Be(DoseOutcome.BeyondSolubility);
        tartrate.Explanation.Should().Contain("0.57 g per 100 g of water");

        DoseResult gluconate = AcidBaseSystem.Water.DoseToFreeCalcium(Reagents.CalciumGluconateMonohydrate, 300);
        gluconate.Outcome.Should().Be(DoseOutcome.NotReached);
        gluconate.State.SaturationIndex(CalciumSolid.Gluconate).Should().BeApproximately(0, 1e-3, "the dose is the most that dissolves");
        gluconate.Explanation.Should().Contain("cannot bring it above").And.Contain("beyond its solubility");

        DoseResult lactate = AcidBaseSystem.Water.DoseToFreeCalcium(Reagents.CalciumLactatePentahydrate, 200, maxGramsPerKg: 200);
        lactate.Outcome.Should().Be(DoseOutcome.NotReached);
        (lactate.GramsPerKg / (10 * lactate.Mix.WaterPercent / 100 * (1 + (lactate.GramsPerKg / 1000)))).Should().BeApproximately(Reagents.CalciumLactatePentahydrate.SolubilityGramsPer100GWater!.Value, 0.01);
    }

    [Fact]
    public void A_liquid_with_little_water_is_solved_or_refused_by_the_name_of_what_was_passed()
    {
        AcidBaseSystem.Of([], default, 1).Add(Reagents.SodiumChloride, 1000).Solve().InRange.Should().BeFalse("the ionic strength is far beyond the relation");
        FluentActions.Invoking(() => AcidBaseSystem.Of([], default, 5).Add(Reagents.GluconoDeltaLactone, 1000)).Should().Throw<ArgumentOutOfRangeException>()
            .WithParameterName("gramsPerKg").WithMessage("*0.1 % of water*5 %*");
    }

    /// <summary>Gypsum dissolves to about 15 mmol/kg, the value of solubility tables [recalled]; the constants give it within 1.</summary>
    [Fact]
    public void Gypsum_is_saturated_at_15_mmol()
    {
        double Index(double mmol) => AcidBaseSystem.Water.Add(Reagents.CalciumSulphateDihydrate, mmol * 0.172164).Solve().SaturationIndex(CalciumSolid.Gypsum);

        Index(14).Should().BeNegative();
        Index(17).Should().BePositive();
    }

    [Fact]
    public void Impossible_numbers_are_refused()
    {
        FluentActions.Invoking(() => new AcidAmount(Acids.Citric, -1)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*between 0 mol/kg and 100 mol/kg*-1 mol/kg*");
        FluentActions.Invoking(() => new StrongIons { SodiumMolPerKg = double.NaN }).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => AcidBaseSystem.Water.WithPH(15)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*between 0 and 14*15*");
        FluentActions.Invoking(() => AcidBaseSystem.Water.DoseToPH(Reagents.CitricAcid, double.NaN)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new MixPart(AcidBaseSystem.Water, -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => AcidBaseSystem.Mix([])).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => AcidBaseSystem.Mix([default])).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => AcidBaseSystem.FromMeasured(9, 1, Acids.Citric)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => AcidBaseSystem.FromMeasured(1.5, 0.01, Acids.Citric)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*Must be at least*is free at pH 1.5*");
        FluentActions.Invoking(() => AcidBaseSystem.Of([], waterPercent: 0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => AcidBaseSystem.Water.Add(Reagents.SodiumChloride, 2000)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Acids_carry_their_sources()
    {
        Acids.Ascorbic.PKa.Should().OnlyContain(k => k.Citation.IsRecalled);
        Acids.Citric.PKa.Should().OnlyContain(k => k.Citation.Quality == CitationQuality.Dataset);
        Acids.All.Select(a => a.Index).Should().Equal(Enumerable.Range(0, Acids.All.Count));
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-14 + (1e-12 * Math.Abs(b));
}
