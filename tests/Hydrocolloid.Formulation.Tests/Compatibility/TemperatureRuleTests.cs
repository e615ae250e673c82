using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Tests.Compatibility.Cases;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Temperatures: the practitioners' cases, and what folklore calls trouble and is none.</summary>
public sealed class TemperatureRuleTests
{
    private static readonly RuleSet s_temperature = RuleSet.Standard.Only(
        "soak-water-too-warm", "hydration-temperature", "boils-too-cool", "held-hot-too-long", "joined-too-cold", "cast-too-cool", "served-outside-its-temperature");

    [Fact]
    public void PC_026_agar_under_a_90_F_lamp_has_not_melted()
        // 90 °F is 32.2 °C, some 50 K under the melting of agar: the liquid is weeping or condensation.
        => Served(Hydrocolloids.Agar, 0.5, (90 - 32) * 5 / 9.0).Review(s_temperature).Should().BeEmpty();

    [Theory]
    [InlineData("agar", 0.5, 75)] // set agar melts at 80 °C and more: hysteresis, it may be served hot
    [InlineData("pectin-high-methoxyl", 0.8, 95)] // irreversible (pectin-supplier-jp, read); the one table with a melting range conflicts with all others
    [InlineData("sodium-alginate", 1.2, 95)] // heat does not melt it (gelling-agents-review-table-6, read)
    [InlineData("konjac-glucomannan", 3, 98)] // stable in boiling water (konjac-encyclopaedia, read)
    [InlineData("curdlan-high-set", 3, 98)]
    [InlineData("methylcellulose", 1.5, 60)] // a hot gel
    [InlineData("gelatin-type-a", 1.5, 8)]
    [InlineData("xanthan-gum", 0.3, 80)]
    public void What_holds_at_the_temperature_of_service_is_not_called_melting(string agent, double percent, double celsius)
        => Served(Catalogue.BuiltIn.Get(agent), percent, celsius).Review(s_temperature).Should().BeEmpty();

    [Fact]
    public void PC_006_warm_soak_water_is_a_caution_with_cold_water_as_the_remedy()
    {
        // 25 g of gelatin in 3273 g: 0.764 %, tolerance 1 %. Soaked at 28 °C.
        Formula formula = Formula.Named("PC-006")
            .Base(b => b.Weigh(Pantry.Cream35, Mass.FromGrams(1988)).Weigh(Pantry.WholeMilk, Mass.FromGrams(1030)))
            .Then("sweeten", p => p.Weigh(Pantry.Sucrose, Mass.FromGrams(230), DoseReference.Base))
            .Then("gel", p => p.Weigh(Hydrocolloids.GelatinTypeA, Mass.FromGrams(25), DoseReference.Base))
            .Process(new ProcessPlan { SoakAt = Temperature.FromDegreesCelsius(28) }).Build();

        formula.Proportions.PercentOfTotal(formula.Line("gelatin-type-a")).Should().BeApproximately(0.764, 0.764 * 0.01);
        Finding finding = formula.Review(s_temperature).Should().ContainSingle().Subject;
        finding.Id.Should().Be("soak-water-too-warm");
        finding.Severity.Should().Be(Severity.Caution);
        finding.Remedies.Single().Apply(formula).Process.SoakAt!.Value.DegreesCelsius.Should().BeInRange(5, 15);
    }

    [Fact]
    public void PC_027_hot_agar_in_cold_cream_comes_under_its_setting_temperature()
    {
        // PC-027: 20.8 °C, tolerance 0.3 K, with 4.18 and 3.0 kJ/(kg·K). A cream of 46.5 % fat has the 3.0; the catalogue's of 38 % has 3.2, and the mix is 0.55 K colder.
        Ingredient mascarpone = Pantry.Cream35.As("mascarpone-cream", "Mascarpone cream")
            .WithComposition(Composition.Per100Grams(water: 47, fat: 46.5, sugars: 3, protein: 3, ash: 0.5));
        Formula formula = TemperatureCases.HotIntoCold(8).WithIngredient(Pantry.Cream35.Id, mascarpone);

        Finding finding = formula.Review().Single(f => f.Id == "joined-too-cold");

        finding.Severity.Should().Be(Severity.Conflict);
        finding.Evidence[0].Value.Should().BeApproximately(20.8, 0.3);
        formula.Review().Should().NotContain(f => f.Id == "dose-under-gelling-minimum", "0.35 % is enough if it is tempered");
        formula.Proportions.PercentOfTotal(formula.Line("agar")).Should().BeApproximately(0.35, 0.35 * 0.02);
    }

    [Fact]
    public void Warming_the_cold_part_brings_the_mix_above_the_setting_window()
    {
        Formula formula = TemperatureCases.HotIntoCold(8);
        Remedy remedy = formula.Review().Single(f => f.Id == "joined-too-cold").Remedies.Single();

        Formula warmed = remedy.Apply(formula);

        warmed.Line(Pantry.Cream35).Details.Temperature!.Value.DegreesCelsius.Should().BeInRange(37, 48, "the sol is hotter than the 48 °C aimed at, the cream a little colder");
        warmed.Review(s_temperature).Should().BeEmpty();
    }

    [Fact]
    public void Frozen_pieces_are_not_guessed_at()
    {
        Formula formula = Formula.Named("test").Base(b => b.Share(Pantry.PearJuice, 70).Share(Pantry.Pear, 30, l => l.Pieces().At(Temperature.FromDegreesCelsius(-18))))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.3).OfBase)).Build();

        formula.Review().Should().NotContain(f => f.Id == "joined-too-cold" || f.Id == FormulaReview.RuleFailedId);
    }

    [Fact]
    public void Gelatin_that_melts_beside_agar_that_does_not_is_information()
    {
        Formula formula = Formula.Named("test").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase).Add(Hydrocolloids.GelatinTypeA, Dose.Percent(1).OfBase))
            .Serve(new ServicePlan { ServedAt = Temperature.FromDegreesCelsius(45) }).Build();

        formula.Review(s_temperature).Should().ContainSingle().Which.Severity.Should().Be(Severity.Information);
    }

    [Fact]
    public void A_gravy_bound_with_gelatin_may_be_hot()
        => Served(Hydrocolloids.GelatinTypeA, 1.5, 70, Texture.Thickened).Review(s_temperature).Should().BeEmpty("it is meant to be liquid");

    [Theory]
    [InlineData(20, Severity.Information)] // gelatin of cold-water fish melts at 11–17 °C, of warm-water fish at 24–29 °C (Karim and Bhat 2009, recalled)
    [InlineData(27, Severity.Caution)]
    [InlineData(32, Severity.Conflict)]
    public void Fish_gelatin_melts_by_its_species(double celsius, Severity severity)
        => Served(Hydrocolloids.GelatinFish, 2.5, celsius).Review(s_temperature).Should().ContainSingle().Which.Severity.Should().Be(severity);

    [Fact]
    public void A_fluid_gel_may_set_while_it_is_worked()
        => Gel(Hydrocolloids.Agar, 0.5, new ProcessPlan { CastAt = Temperature.FromDegreesCelsius(20) })
            .WithService(new ServicePlan { Texture = Texture.FluidGel }).Review(s_temperature).Should().BeEmpty();

    [Fact]
    public void Mexico_City_is_low_enough_for_agar()
        // Water boils at 92.5 °C at 2240 m (IAPWS-IF97 in the standard atmosphere); agar dissolves from 90 °C (Lersch 2008, read).
        => Gel(Hydrocolloids.Agar, 0.5, new ProcessPlan { Altitude = Length.FromMeters(2240) }).Review(s_temperature).Should().BeEmpty();

    [Fact]
    public void Two_agents_that_need_different_heat_get_no_common_temperature()
    {
        Formula formula = Formula.Named("test").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase).Add(Hydrocolloids.Methylcellulose, Dose.Percent(1).OfBase))
            .Process(new ProcessPlan { HydrateAt = Temperature.FromDegreesCelsius(95) }).Build();

        formula.Review(s_temperature).Single(f => f.Id == "hydration-temperature").Remedies.Should().BeEmpty();
    }

    [Fact]
    public void A_line_is_warmed_in_the_base_and_after_it()
    {
        Formula formula = Formula.Named("test").Base(b => b.Share(Pantry.Water, 100)).Then("season", p => p.Add(Pantry.Sucrose, Dose.Percent(5).OfBase)).Build();

        Formula warmed = new LineWarmed("sucrose", Temperature.FromDegreesCelsius(50)).ApplyTo(new LineWarmed("water", Temperature.FromDegreesCelsius(40)).ApplyTo(formula));

        warmed.Line("water").Details.Temperature!.Value.DegreesCelsius.Should().Be(40);
        warmed.Line("sucrose").Details.Temperature!.Value.DegreesCelsius.Should().Be(50);
        FluentActions.Invoking(() => new LineWarmed("salt", default).ApplyTo(formula)).Should().Throw<ArgumentException>();
    }

    private static Formula Served(Ingredient agent, double percent, double celsius, Texture? texture = null)
        => Gel(agent, percent, ProcessPlan.None).WithService(new ServicePlan { ServedAt = Temperature.FromDegreesCelsius(celsius), Texture = texture });

    private static Formula Gel(Ingredient agent, double percent, ProcessPlan process) => Formula.Named("test")
        .Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase)).Process(process).Build();
}
