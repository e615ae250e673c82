using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Derivations;

public class DerivationTests
{
    private static Mass G(double grams) => Mass.FromGrams(grams);

    [Fact]
    public void Dose_of_the_preceding_mix_is_written_as_on_a_board()
        => Mixes.TwoStage().OfBase(1000).Explain("agar").ToText().Should().Be(
            "1. base = 1000 g (given)\n"
            + "2. sucrose = 10 % of the base = 10/100 × 1000 g = 100 g\n"
            + "3. citric-acid = 1 % of the base = 1/100 × 1000 g = 10 g\n"
            + "4. everything before 'gel' = 1000 g (base) + 100 g (sucrose) + 10 g (citric-acid) = 1110 g\n"
            + "5. agar = 0.3 % of everything so far = 0.3/100 × 1110 g = 3.33 g\n");

    [Fact]
    public void Total_writes_each_step_once()
        => Mixes.TwoStage().OfBase(1000).ExplainTotal().ToText().Should().Be(
            "1. base = 1000 g (given)\n"
            + "2. sucrose = 10 % of the base = 10/100 × 1000 g = 100 g\n"
            + "3. citric-acid = 1 % of the base = 1/100 × 1000 g = 10 g\n"
            + "4. everything before 'gel' = 1000 g (base) + 100 g (sucrose) + 10 g (citric-acid) = 1110 g\n"
            + "5. agar = 0.3 % of everything so far = 0.3/100 × 1110 g = 3.33 g\n"
            + "6. locust-bean-gum = 0.1 % of everything so far = 0.1/100 × 1110 g = 1.11 g\n"
            + "7. total = 1000 g (base) + 100 g (sucrose) + 10 g (citric-acid) + 3.33 g (agar) + 1.11 g (locust-bean-gum) = 1114.44 g\n");

    [Fact]
    public void Dose_of_the_total_shows_how_the_total_was_found()
        => Mixes.TwoStage(p => p.OfTotal).OfBase(1000).Explain("agar").ToText().Should().Be(
            "1. base = 1000 g (given)\n"
            + "2. lines of fixed size = 1000 g (base) + 100 g (sucrose) + 10 g (citric-acid) = 1110 g\n"
            + "3. share of the total that other lines claim = 0.3 % (agar) + 0.1 % (locust-bean-gum) = 0.4 %\n"
            + "4. total = 1110 g / (1 - 0.4/100) = 1114.46 g\n"
            + "5. agar = 0.3 % of the total = 0.3/100 × 1114.46 g = 3.34337 g\n");

    [Fact]
    public void Dose_of_the_water_shows_where_the_water_is()
    {
        Ingredient juice = Mixes.Dry("juice").WithComposition(Composition.Per100Grams(water: 90));
        Formula formula = Formula.Named("f").Base(b => b.Share(juice, 80).Share(Mixes.Dry("oil").WithComposition(Composition.Per100Grams(water: 0)), 20))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfWater)).Build();

        formula.OfBase(1000).Explain("agar").ToText().Should().Be(
            "1. base = 1000 g (given)\n"
            + "2. juice = 80 % of the base = 80/100 × 1000 g = 800 g\n"
            + "3. the water so far = 90/100 × 800 g (juice) = 720 g\n"
            + "4. agar = 1 % of the water so far = 1/100 × 720 g = 7.2 g\n");
    }

    [Fact]
    public void Dose_of_a_line_starts_from_that_line()
    {
        Formula formula = Formula.Named("f").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.9).OfBase).Add(Hydrocolloids.LocustBeanGum, Dose.Percent(10).Of(Hydrocolloids.Agar))).Build();

        formula.Explain("locust-bean-gum").ToText().Should().Be(
            "1. base = 100 g (given)\n"
            + "2. agar = 0.9 % of the base = 0.9/100 × 100 g = 0.9 g\n"
            + "3. locust-bean-gum = 10 % of agar = 10/100 × 0.9 g = 0.09 g\n");
    }

    [Fact]
    public void Dose_on_another_reference_is_a_quotient_of_two_masses()
        => Mixes.Simple(0.5).ExplainDose("agar", DoseReference.Total).ToText().Should().Be(
            "1. base = 100 g (given)\n"
            + "2. agar = 0.5 % of the base = 0.5/100 × 100 g = 0.5 g\n"
            + "3. total = 100 g (base) + 0.5 g (agar) = 100.5 g\n"
            + "4. agar on the total = 0.5 g / 100.5 g × 100 % = 0.497512 %\n");

    [Fact]
    public void Batch_from_a_finished_mass_starts_from_that_mass()
    {
        Batch batch = Mixes.Simple(0.5).ScaleTo(Yield.Finished(G(950)), new Losses { Transfer = Loss.Percent(5) });

        batch.Explain("agar").ToText().Should().Be(
            "1. assembled = 950 g finished, before losses (transfer 5 %) = 1000 g\n"
            + "2. base = 1000 g assembled / 1.005 per unit of base = 995.025 g\n"
            + "3. agar = 0.5 % of the base = 0.5/100 × 995.025 g = 4.97512 g\n");
        batch.ExplainFinished().ToString().Should().Be("after transfer = 1000 g - 5/100 × 1000 g = 950 g");
    }

    [Fact]
    public void Batch_from_stocks_names_the_one_in_shortest_supply()
        => Mixes.Simple(0.5).ScaleTo(Yield.FromStocks(new Stock("agar", G(3)), new Stock("water", G(2000)))).Explain("water").ToText().Should().Be(
            "1. base = 3 g of agar, in shortest supply, / 0.005 per unit of base = 600 g\n"
            + "2. water = 100 % of the base = 100/100 × 600 g = 600 g\n");

    [Fact]
    public void Finished_mass_is_explained_loss_by_loss()
    {
        var losses = new Losses { Evaporation = Loss.Percent(10), Straining = Loss.Of(G(20)), Trimming = Loss.Of(G(15)) };
        Batch batch = Formula.Named("f").Base(b => b.Share(Pantry.Water, 100)).Build().ScaleTo(Yield.OfBase(G(1000)), losses);

        batch.ExplainFinished().ToText().Should().Be(
            "1. base = 1000 g (given)\n"
            + "2. after evaporation = 1000 g - 10/100 × 1000 g = 900 g\n"
            + "3. after straining = 900 g - 20 g = 880 g\n"
            + "4. after trimming = 880 g - 15 g = 865 g\n");
        batch.Formula.ScaleTo(Yield.OfBase(G(1000)), losses with { ToppedUp = true }).ExplainFinished().ToText()
            .Should().NotContain("evaporation").And.EndWith("after trimming = 980 g - 15 g = 965 g\n");
    }

    [Fact]
    public void Value_of_every_derivation_is_the_batchs_own_number()
    {
        foreach (Formula formula in new[] { Mixes.TwoStage(), Mixes.TwoStage(p => p.OfTotal), Mixes.TwoStage(p => p.OfWater), Mixes.TwoStage(p => p.OfBase) })
        {
            var losses = new Losses { Evaporation = Loss.Percent(3), Transfer = Loss.Of(G(12)) };
            Batch batch = formula.ScaleTo(Yield.Finished(G(777)), losses);
            foreach (BatchLine line in batch.Lines)
            {
                batch.Explain(line.Line.Label).Value.Should().Be(line.Mass.Grams);
                formula.Explain(line.Line.Label).Value.Should().Be(formula.OfBase(100).MassOf(line.Line.Label).Grams);
            }

            batch.ExplainTotal().Value.Should().Be(batch.AssembledMass.Grams);
            batch.ExplainFinished().Value.Should().Be(batch.FinishedMass.Grams);
            formula.ExplainDose("agar", DoseReference.Total).Value.Should().Be(formula.Express("agar", DoseReference.Total).PercentByMass);
        }
    }

    [Fact]
    public void Explaining_changes_nothing()
    {
        Formula formula = Mixes.TwoStage();
        Batch batch = formula.OfBase(1000);
        string before = batch.ToString();
        Derivation first = batch.Explain("agar");

        batch.Explain("agar").Should().Be(first);
        first.GetHashCode().Should().Be(batch.Explain("agar").GetHashCode());
        batch.ToString().Should().Be(before);
        formula.Should().Be(Mixes.TwoStage());
    }

    [Fact]
    public void Many_phases_on_the_preceding_mix_write_one_step_each()
    {
        FormulaBuilder builder = Formula.Named("deep").Base(b => b.Share(Pantry.Water, 100));
        for (int i = 0; i < 60; i++)
        {
            Ingredient powder = Mixes.Dry("powder-" + i);
            builder.Then("phase " + i, p => p.Add(powder, Dose.Percent(1).OfPreceding));
        }

        Derivation total = builder.Build().ExplainTotal();

        // the base, 60 lines, the mixes before phases 1 to 59, the total
        total.ToText().Split('\n', StringSplitOptions.RemoveEmptyEntries).Should().HaveCount(1 + 60 + 59 + 1);
        total.GetHashCode().Should().Be(total.GetHashCode());
    }

    [Fact]
    public void Unknown_line_cannot_be_explained()
    {
        Formula formula = Mixes.Simple();
        formula.Invoking(f => f.Explain("milk")).Should().Throw<ArgumentException>();
        formula.OfBase(1).Invoking(b => b.Explain("milk")).Should().Throw<ArgumentException>();
        formula.Invoking(f => f.ExplainDose("milk", DoseReference.Total)).Should().Throw<ArgumentException>();
        formula.Invoking(f => f.ExplainDose("agar", DoseReference.Line("milk"))).Should().Throw<FormulaException>();
    }
}
