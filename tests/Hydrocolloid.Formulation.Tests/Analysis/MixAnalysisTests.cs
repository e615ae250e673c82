using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Analysis;

public class MixAnalysisTests
{
    private static readonly Temperature s_room = Temperature.FromDegreesCelsius(20);

    private static MixContents With(Ingredient liquid, Ingredient addition, double percentOfBase) => Formula.Named("mix")
        .Base(b => b.Share(liquid, 100)).Then("add", p => p.Add(addition, Dose.Percent(percentOfBase).OfBase)).Build().Analyse().Assembled;

    private static MixContents Lot(Ingredient ingredient, Measurements measured)
        => Formula.Named("lot").Base(b => b.Share(ingredient, 100, l => l.Measured(measured))).Build().Analyse().Assembled;

    [Fact]
    public void Pieces_are_left_out_of_the_continuous_mix()
    {
        MixAnalysis analysis = Formula.Named("fruit gel").Base(b => b.Share(Pantry.Water, 100))
            .Then("fruit", p => p.Add(Pantry.PineappleRaw, Dose.Percent(50).OfBase, l => l.Pieces()))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfBase)).Build().Analyse();

        analysis.Assembled.ActiveProteases.Select(l => l.Label).Should().Equal("pineapple-raw");
        analysis.Continuous.ActiveProteases.Should().BeEmpty();
        analysis.Assembled.Sugars.Value.Should().BeGreaterThan(2);
        analysis.Continuous.Sugars.Value.Should().Be(0);
        analysis.Assembled.MassPerBase.Should().BeApproximately(1.51, 1e-9);
        analysis.Continuous.MassPerBase.Should().BeApproximately(1.01, 1e-9);
        AgentConcentration agar = analysis.Hydrocolloids.Single();
        agar.PercentOfTotal.Should().BeApproximately(1 / 1.51, 1e-9);
        agar.PercentOfContinuousMix.Should().BeApproximately(1 / 1.01, 1e-9);
        agar.PercentOfContinuousWater.Should().BeApproximately(1 / 0.999, 1e-9);
    }

    [Fact]
    public void Some_lines_together_are_analysed_as_a_mix_of_their_own()
    {
        MixAnalysis analysis = Mixes.TwoStage().Analyse();
        MixContents part = analysis.Of("pear-juice", "sucrose", "pear-juice");

        part.MassPerBase.Should().BeApproximately(1.1, 1e-12);
        part.Sugars.Value.Should().BeApproximately((Contents.Of(Pantry.PearJuice).Sugars.Value + 0.1 * Contents.Of(Pantry.Sucrose).Sugars.Value) / 1.1, 1e-9);
        analysis.Of("sucrose").Water.Value.Should().BeApproximately(0.02, 1e-9);
        FluentActions.Invoking(() => analysis.Of()).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => analysis.Of("rum")).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => analysis.Of(null!)).Should().Throw<ArgumentNullException>();
    }

    [Fact]
    public void Lines_that_weigh_nothing_are_refused()
    {
        MixAnalysis analysis = Formula.Named("none").Base(b => b.Share(Pantry.Water, 100)).Then("x", p => p.Add(Pantry.Salt, Dose.Percent(0).OfBase)).Build().Analyse();
        FluentActions.Invoking(() => analysis.Of("salt")).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => FormulaAnalysis.Analyse(null!)).Should().Throw<ArgumentNullException>();
    }

    [Fact]
    public void Unknown_ingredient_is_named_and_never_counts_as_zero()
    {
        MixContents mix = Contents.Of((Pantry.Water, 60), (Mixes.Dry("secret"), 40));

        foreach (Reckoned value in Contents.Parts(mix).Concat([mix.Brix, mix.AlcoholByVolume, mix.Ph!, mix.FreeCalcium!, mix.WaterActivity, mix.DensityAt(s_room), mix.SpecificHeatAt(s_room), mix.ConductivityAt(s_room)])
            .Concat(Contents.Minerals(mix).Select(m => m.MilligramsPerKg)))
        {
            value.Without.Should().Contain("secret", value.ToString());
            value.IsSound.Should().BeFalse();
            value.ToString().Should().Contain("without");
        }
    }

    [Fact]
    public void Of_an_unknown_ingredient_alone_nothing_is_said()
    {
        MixContents mix = Contents.Of(Mixes.Dry("secret"));

        mix.Ph.Should().BeNull();
        new[] { mix.WaterActivity, mix.DensityAt(s_room), mix.SpecificHeatAt(s_room), mix.ConductivityAt(s_room) }.Should().OnlyContain(v => double.IsNaN(v.Value));
        Contents.All(mix).Select(v => v.Value).Should().OnlyContain(v => v.Without.Contains("secret") && v.How != ReckonedHow.Measured);
    }

    [Fact]
    public void Composition_that_states_the_water_alone_gives_no_density_and_no_heat()
    {
        MixContents mix = Contents.Of(Mixes.Dry("mash").WithComposition(Composition.Per100Grams(water: 70)));

        mix.Water.Value.Should().Be(70);
        mix.Water.IsSound.Should().BeTrue();
        mix.Sugars.Without.Should().Contain("mash");
        mix.WaterActivity.Without.Should().Contain("mash");
        mix.DensityAt(s_room).Without.Should().Contain("mash");
        mix.SpecificHeatAt(s_room).Without.Should().Contain("mash");
    }

    [Fact]
    public void Measurement_of_the_lot_replaces_the_catalogue()
    {
        MixContents lot = Lot(Pantry.OrangeJuice, new Measurements { Ph = 3.2, Brix = 10.5, Density = Density.FromKilogramsPerCubicMeter(1040) });

        (lot.Ph!.Value, lot.Ph.How).Should().Be((lot.Ph.Value, ReckonedHow.Measured));
        lot.Ph.Value.Should().BeApproximately(3.2, 0.001);
        (lot.Brix.Value, lot.Brix.How).Should().Be((10.5, ReckonedHow.Measured));
        (lot.DensityAt(s_room).Value, lot.DensityAt(s_room).How).Should().Be((1040, ReckonedHow.Measured));
        lot.DensityAt(Temperature.FromDegreesCelsius(80)).How.Should().Be(ReckonedHow.Computed);
        MixContents catalogue = Contents.Of(Pantry.OrangeJuice);
        new[] { catalogue.Ph!.How, catalogue.Brix.How, catalogue.DensityAt(s_room).How }.Should().NotContain(ReckonedHow.Measured);
    }

    [Fact]
    public void Measurement_of_an_ingredient_replaces_the_catalogue()
    {
        Ingredient own = Pantry.OrangeJuice.As("our-juice", "Our juice").WithPh(3.2).WithBrix(10.5).WithDensity(Density.FromKilogramsPerCubicMeter(1040));
        MixContents contents = Contents.Of(own);

        contents.Ph!.Value.Should().BeApproximately(3.2, 0.001);
        new[] { contents.Ph.How, contents.Brix.How, contents.DensityAt(s_room).How }.Should().AllBeEquivalentTo(ReckonedHow.Measured);
        contents.Brix.Value.Should().Be(10.5);
        contents.DensityAt(s_room).Value.Should().BeApproximately(1040, 1e-9);
    }

    [Fact]
    public void Mixing_measured_liquids_is_computed()
    {
        MixContents mix = Formula.Named("two").Base(b => b
            .Share(Pantry.OrangeJuice, 50, l => l.Measured(new Measurements { Ph = 3.6, Brix = 11 }))
            .Share(Pantry.LemonJuice, 50, l => l.Measured(new Measurements { Ph = 2.4, Brix = 9 }))).Build().Analyse().Assembled;

        mix.Ph!.How.Should().Be(ReckonedHow.Computed);
        (mix.Brix.Value, mix.Brix.How).Should().Be((10, ReckonedHow.Computed));
    }

    [Fact]
    public void PH_of_two_juices_lies_between_and_is_not_the_average()
    {
        double lemon = Contents.Of(Pantry.LemonJuice).Ph!.Value, orange = Contents.Of(Pantry.OrangeJuice).Ph!.Value;
        double mix = Contents.Of((Pantry.LemonJuice, 50), (Pantry.OrangeJuice, 50)).Ph!.Value;

        mix.Should().BeInRange(lemon + 0.05, orange - 0.05);
        Math.Abs(mix - (lemon + orange) / 2).Should().BeGreaterThan(0.05);
        mix.Should().BeLessThan((lemon + orange) / 2, "lemon has five times the acid");
    }

    [Theory]
    [InlineData("orange-juice"), InlineData("pear-juice"), InlineData("whole-milk"), InlineData("carrot-juice"), InlineData("red-wine"), InlineData("water")]
    public void Citric_acid_lowers_the_ph_and_sodium_citrate_raises_it(string id)
    {
        Ingredient liquid = Catalogue.BuiltIn.Get(id);
        double alone = Contents.Of(liquid).Ph!.Value;
        double[] sour = [.. new[] { 0.05, 0.2, 1 }.Select(p => With(liquid, Pantry.CitricAcid, p).Ph!.Value)];

        sour.Should().BeInDescendingOrder().And.OnlyContain(ph => ph < alone && ph > 1.8);
        if (alone < 6)
        {
            With(liquid, Pantry.SodiumCitrate, 0.5).Ph!.Value.Should().BeGreaterThan(alone);
        }
    }

    /// <summary>Phosphate stands for the buffers of milk, which leaves out casein and citrate: below pH 6 the mix comes out too sour, and is marked an estimate.</summary>
    [Fact]
    public void Milk_resists_lemon_juice_more_than_water_does()
    {
        Reckoned milk = Contents.Of((Pantry.WholeMilk, 98), (Pantry.LemonJuice, 2)).Ph!;
        Reckoned water = Contents.Of((Pantry.WaterDistilled, 98), (Pantry.LemonJuice, 2)).Ph!;

        milk.Value.Should().BeInRange(water.Value + 1, 6.5);
        milk.How.Should().Be(ReckonedHow.Estimated);
    }

    [Fact]
    public void Citrate_binds_calcium()
    {
        double Free(double citrate) => Formula.Named("bath").Base(b => b.Share(Pantry.WaterDistilled, 100))
            .Then("salts", p => p.Add(Pantry.CalciumChloride, Dose.Percent(0.1).OfBase).Add(Pantry.SodiumCitrate, Dose.Percent(citrate).OfBase)).Build().Analyse().Assembled.FreeCalcium!.Value;

        Free(0).Should().BeApproximately(1000 / 147.01, 0.05);
        new[] { Free(0), Free(0.05), Free(0.1), Free(0.3) }.Should().BeInDescendingOrder();
        Free(0.3).Should().BeLessThan(Free(0) / 5);
    }

    [Fact]
    public void A_salt_whose_chemistry_is_not_known_and_cocoa_are_named()
    {
        With(Pantry.OrangeJuice, Pantry.SodiumHexametaphosphate, 0.2).FreeCalcium!.Without.Should().Contain("sodium-hexametaphosphate");
        With(Pantry.OrangeJuice, Pantry.CocoaPowder, 2).Ph!.Without.Should().Contain("cocoa-powder");
        With(Pantry.OrangeJuice, Pantry.Sucrose, 20).Ph!.IsSound.Should().BeTrue();
        With(Pantry.OrangeJuice, Hydrocolloids.Agar, 1).Ph!.IsSound.Should().BeTrue();
        With(Pantry.OrangeJuice, Hydrocolloids.GelatinTypeB, 8).Ph!.Without.Should().Contain("gelatin-type-b");
    }

    [Fact]
    public void More_salt_than_water_is_no_solution()
    {
        MixContents paste = Contents.Of((Pantry.OrangeJuice, 10), (Pantry.CitricAcid, 90));
        paste.Ph!.Without.Should().Contain("citric-acid");
        paste.Ph.IsSound.Should().BeFalse();
    }

    /// <summary>Labels: red 13.5 % vol within 0.3 of the catalogue's analysis, spirit 40 % vol within 0.01 (OIML R 22).</summary>
    [Fact]
    public void Alcohol_of_wine_and_spirit_alone_is_near_the_label()
    {
        Contents.Of(Pantry.RedWine).AlcoholByVolume.Value.Should().BeApproximately(13.5, 0.3);
        Contents.Of(Pantry.Spirit40).AlcoholByVolume.Value.Should().BeApproximately(40, 0.01);
        Contents.Of(Pantry.Whisky43).AlcoholByVolume.Value.Should().BeApproximately(43, 0.1);
        Contents.Of(Pantry.OrangeJuice).AlcoholByVolume.Value.Should().Be(0);
    }

    /// <summary>Volumes that simply add (the model) against the exact blend: within 0.3 % vol at these strengths.</summary>
    [Theory]
    [InlineData(50), InlineData(25), InlineData(80)]
    public void Alcohol_of_a_dilution_is_that_of_the_blend(double spirit)
    {
        double exact = EthanolWater.Blend(Mass.FromGrams(spirit), 40, Mass.FromGrams(100 - spirit), 0).EthanolPercentByVolume;
        Contents.Of((Pantry.Spirit40, spirit), (Pantry.WaterDistilled, 100 - spirit)).AlcoholByVolume.Value.Should().BeApproximately(exact, 0.3);
        MixContents wine = Contents.Of((Pantry.RedWine, spirit), (Pantry.Water, 100 - spirit));
        wine.Ethanol.Value.Should().BeApproximately(10.55 * spirit / 100, 1e-9);
        wine.AlcoholByVolume.Value.Should().BeApproximately(Contents.Of(Pantry.RedWine).AlcoholByVolume.Value * spirit / 100, 0.1);
    }

    /// <summary>Tables of sucrose solutions (CRC Handbook): crystal density with water's by volume holds 0.5 % to 70 % sugar.</summary>
    [Theory]
    [InlineData(10), InlineData(30), InlineData(50), InlineData(65)]
    public void Density_of_syrup_is_near_the_tables(double percent)
    {
        MixContents syrup = Contents.Of((Pantry.Water, 100 - percent), (Pantry.Sucrose, percent));
        double table = SucroseWater.DensityOf(syrup.Sugars.Value).Value.KilogramsPerCubicMeter;

        syrup.DensityAt(s_room).Value.Should().BeApproximately(table, table * 0.005);
        syrup.Brix.Value.Should().BeApproximately(percent, 0.2);
    }

    [Fact]
    public void Sugar_sorbitol_glycerol_and_salt_lower_the_water_activity()
    {
        double[] syrups = [.. new double[] { 0, 20, 40, 60 }.Select(p => Contents.Of((Pantry.WaterDistilled, 100 - p), (Pantry.Sucrose, p)).WaterActivity.Value)];

        syrups[0].Should().Be(1);
        syrups.Should().BeInDescendingOrder();
        syrups[3].Should().BeApproximately(0.8953, 0.001, "Norrish for 60 % sucrose");
        Contents.Of((Pantry.WaterDistilled, 50), (Pantry.Glycerol, 50)).WaterActivity.Value.Should().BeApproximately(0.8108, 0.005);
        Contents.Of((Pantry.WaterDistilled, 60), (Pantry.Sorbitol, 40)).WaterActivity.Value.Should().BeApproximately(0.9322, 0.001);
        Contents.Of((Pantry.WaterDistilled, 90), (Pantry.Salt, 10)).WaterActivity.Value.Should().BeInRange(0.92, 0.95);
        Contents.Of(Pantry.Sucrose).WaterActivity.Outside.Should().NotBeNull();
        Contents.Of(Pantry.OliveOil).WaterActivity.By.Should().Be("no water");
    }

    [Fact]
    public void Enzymes_casein_and_tannin_are_pointed_out()
    {
        Contents.Of(Pantry.PineappleJuiceRaw).ActiveProteases.Should().ContainSingle();
        Contents.Of(Pantry.PineappleJuiceCanned).ActiveProteases.Should().BeEmpty();
        Contents.Of(Pantry.WholeMilk).Casein.Should().ContainSingle();
        Contents.Of(Pantry.OatDrink).Casein.Should().BeEmpty();
        Contents.Of(Pantry.RedWine).Tannin.Should().Be(TanninLevel.High);
        Contents.Of((Pantry.RedWine, 0.5), (Pantry.Water, 99.5)).Tannin.Should().Be(TanninLevel.None);
        Contents.Of((Pantry.RedWine, 2), (Pantry.Water, 98)).Tannin.Should().Be(TanninLevel.High);
    }

    [Fact]
    public void Estimated_composition_makes_the_value_an_estimate()
    {
        Contents.Of(Pantry.PearJuice).Water.How.Should().Be(ReckonedHow.Estimated);
        Contents.Of((Pantry.PearJuice, 0.5), (Pantry.Water, 99.5)).Water.How.Should().Be(ReckonedHow.Computed);
        Contents.Of(Pantry.OrangeJuice).Water.How.Should().Be(ReckonedHow.Computed);
    }

    [Theory]
    [InlineData("strawberry-juice")]
    [InlineData("grape-juice-white")]
    [InlineData("pineapple-juice-raw")]
    public void Acids_stated_as_a_sum_buffer_too_and_the_value_is_an_estimate(string id)
    {
        MixContents plain = Contents.Of(Catalogue.BuiltIn.Get(id)), salted = With(Catalogue.BuiltIn.Get(id), Pantry.SodiumCitrate, 0.3);

        salted.Ph!.How.Should().Be(ReckonedHow.Estimated);
        (salted.Ph.Value - plain.Ph!.Value).Should().BeInRange(0.1, 0.8, "0.6 to 1 % of fruit acid takes up 10 mmol/kg of citrate with little change");
    }

    /// <summary>Acidity counted as gluconic and succinic acid (honey, sake) is theirs.</summary>
    [Fact]
    public void Every_acid_that_the_format_names_is_known()
    {
        Contents.Of(Pantry.Sake).AcidBaseSystem!.TotalMolPerKg(Acids.Succinic).Should().BePositive();
        Contents.Of((Pantry.Honey, 20), (Pantry.Water, 80)).AcidBaseSystem!.TotalMolPerKg(Acids.Gluconic).Should().BePositive();
    }

    /// <summary>Yoghurt of pH 4.2 takes up 115 mmol/kg of alkali to pH 8.1, and 60 mmol of bicarbonate brings it halfway there. It holds about 0.1 mol/kg of lactic acid [recalled], not the 0.46 that its acidity alone would ask for.</summary>
    [Fact]
    public void What_buffers_yoghurt_is_not_taken_for_several_times_its_lactic_acid()
    {
        AcidBaseSystem yoghurt = Contents.Of(Pantry.Yoghurt).AcidBaseSystem!;

        yoghurt.TotalMolPerKg(Acids.Lactic).Should().Be(0);
        yoghurt.Add(Reagents.SodiumBicarbonate, 5).Solve().PH.Should().BeInRange(5.2, 6.6);
        Contents.Of(Pantry.Yoghurt).Ph!.How.Should().Be(ReckonedHow.Estimated);
    }

    [Fact]
    public void A_solution_of_a_salt_or_an_acid_counts_as_much_of_it_as_it_holds()
    {
        Ingredient bath = Pantry.CalciumLactate.As("calcium-solution", "Calcium lactate, 10 %").WithComposition(Composition.Per100Grams(water: 90, calcium: 1300));
        Ingredient half = Pantry.CitricAcid.As("citric-50", "Citric acid, 50 %").WithComposition(Composition.Per100Grams(water: 50, organicAcids: 50));

        MixContents calcium = With(Pantry.WaterDistilled, bath, 10);
        calcium.FreeCalcium!.Value.Should().BeLessThan(calcium.Calcium.MmolPerKg / (calcium.Water.Value / 100) + 1e-9, "no more is free than there is");
        calcium.FreeCalcium.Value.Should().BeApproximately(With(Pantry.WaterDistilled, Pantry.CalciumLactate, 1 / 1.09).FreeCalcium!.Value, 0.05);
        With(Pantry.WaterDistilled, half, 2).Ph!.Value.Should().BeApproximately(With(Pantry.WaterDistilled, Pantry.CitricAcid, 1).Ph!.Value, 0.01);

        Ingredient sourSugar = Pantry.CitricAcid.As("sour-sugar", "Sour sugar").WithComposition(Composition.Per100Grams(water: 0, sugars: 90, organicAcids: 10));
        With(Pantry.AppleJuice, sourSugar, 20).Ph!.Value.Should().BeApproximately(With(Pantry.AppleJuice, Pantry.CitricAcid, 2).Ph!.Value, 1e-6, "the sugar beside the acid is no water");
    }

    [Fact]
    public void An_own_acid_or_salt_is_never_taken_as_inert()
    {
        Ingredient malic = Ingredient.Own("malic-acid", "Malic acid").WithComposition(Composition.Per100Grams(water: 0, sugars: 0, organicAcids: 100)).WithPh(2.2);
        Ingredient soda = Ingredient.Own("baking-soda", "Soda").WithComposition(Composition.Per100Grams(water: 0, sodium: 27370));

        With(Pantry.AppleJuice, malic, 2).Ph!.Without.Should().Equal("malic-acid");
        With(Pantry.AppleJuice, soda, 0.5).Ph!.Without.Should().Equal("baking-soda");
        With(Pantry.AppleJuice, Pantry.Sucrose, 20).Ph!.Without.Should().BeEmpty();
    }

    [Fact]
    public void A_pH_is_measured_only_where_the_measured_liquid_is_all_that_counts()
    {
        Ingredient juice = Pantry.AppleJuice.WithPh(3.3), unknown = Ingredient.Own("mystery", "Mystery").WithComposition(Composition.Per100Grams(water: 90, sugars: 10));

        Contents.Of(juice).Ph!.How.Should().Be(ReckonedHow.Measured);
        With(juice, Hydrocolloids.Agar, 1).Ph!.How.Should().Be(ReckonedHow.Measured);
        Contents.Of((juice, 1), (unknown, 99)).Ph!.How.Should().NotBe(ReckonedHow.Measured);
        Contents.Of((juice, 60), (Pantry.Sucrose, 40)).Ph!.How.Should().NotBe(ReckonedHow.Measured);
    }

    [Fact]
    public void A_juice_known_by_pH_and_Brix_alone_has_a_pH()
    {
        Ingredient juice = Ingredient.Own("verjus", "Verjus").WithPh(3.3).WithBrix(11.2);

        Contents.Of(juice).Ph!.Value.Should().BeApproximately(3.3, 1e-6);
        Ingredient pure = Ingredient.Own("filtered", "Filtered water").WithComposition(Composition.Per100Grams(water: 100));
        MixContents sour = With(pure, Pantry.CitricAcid, 1);
        sour.Ph!.Value.Should().BeApproximately(With(Pantry.WaterDistilled, Pantry.CitricAcid, 1).Ph!.Value, 0.01);
        sour.Ph.How.Should().Be(ReckonedHow.Estimated);
    }

    [Theory]
    [InlineData("almond-drink-calcium")]
    [InlineData("soy-drink-calcium")]
    [InlineData("rhubarb-juice")]
    [InlineData("spinach-juice")]
    [InlineData("egg-yolk")]
    public void Calcium_that_may_not_be_dissolved_is_not_called_free(string id)
    {
        Reckoned free = Contents.Of((Catalogue.BuiltIn.Get(id), 60), (Pantry.Water, 40)).FreeCalcium!;

        free.IsSound.Should().BeFalse();
        free.How.Should().Be(ReckonedHow.Estimated);
    }

    [Fact]
    public void The_pH_of_soured_milk_is_out_of_range()
    {
        With(Pantry.WholeMilk, Pantry.CitricAcid, 0.3).Ph!.IsSound.Should().BeFalse("casein buffers, and is not in the balance");
        Contents.Of((Pantry.WholeMilk, 50), (Pantry.LemonJuice, 50)).Ph!.IsSound.Should().BeFalse();
        Contents.Of((Pantry.WholeMilk, 90), (Pantry.Sucrose, 10)).Ph!.IsSound.Should().BeTrue();
    }

    [Theory]
    [InlineData("potassium-chloride", 10)]
    [InlineData("calcium-chloride", 40)]
    [InlineData("citric-acid", 20)]
    [InlineData("isomalt", 150)]
    public void Water_activity_names_what_it_does_not_count(string id, double percent)
    {
        With(Pantry.WaterDistilled, Catalogue.BuiltIn.Get(id), percent).WaterActivity.Without.Should().Equal(id);
        With(Pantry.WaterDistilled, Catalogue.BuiltIn.Get(id), 0.2).WaterActivity.IsSound.Should().BeTrue("so little does not matter");
    }

    [Fact]
    public void Own_table_sugar_lowers_water_activity_as_table_sugar()
    {
        Ingredient caster = Ingredient.Own("caster", "Caster sugar").WithComposition(Composition.Per100Grams(water: 0, sugars: 100));

        With(Pantry.Water, caster, 150).WaterActivity.Value.Should().BeApproximately(With(Pantry.Water, Pantry.Sucrose, 150).WaterActivity.Value, 0.002);
        With(Pantry.Water, Pantry.Dextrose, 100).WaterActivity.Value.Should().BeLessThan(With(Pantry.Water, Pantry.Sucrose, 100).WaterActivity.Value - 0.01);
    }

    /// <summary>Kell (1975): 971.8 kg/m³ at 80 °C.</summary>
    [Fact]
    public void Hot_water_has_the_density_of_water()
        => Contents.Of(Pantry.WaterDistilled).DensityAt(Temperature.FromDegreesCelsius(80)).Value.Should().BeApproximately(971.8, 0.3);
}
