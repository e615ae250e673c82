using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Methods;

/// <summary>Part of the mix heated, kitchens, baths, fluid gels, layers, and the renderings.</summary>
public sealed class MethodPatternTests
{
    private static Formula Of(Ingredient liquid, Ingredient agent, double percent = 0.5) => Formula.Named("test").Base(b => b.Share(liquid, 100))
        .Then("gel", p => p.Add(agent, Dose.Percent(percent).OfPreceding)).Build();

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static MethodStep Only(Method method, StepAction action) => method.Steps.Single(s => s.Action == action);

    private static Formula InPart(double water, double juice, Action<LineBuilder>? line = null) => Formula.Named("part")
        .Base(b => b.Share(Pantry.Water, water).Share(Pantry.PearJuice, juice, line ?? (_ => { })).Share(Pantry.Pear, 100 - water - juice, l => l.Pieces()))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding))
        .Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) }).Build();

    [Fact]
    public void What_does_not_carry_the_agents_is_joined_raw_as_long_as_the_mix_stays_warm_and_pieces_are_warmed()
    {
        Method method = InPart(40, 40).PlanMethod();

        Only(method, StepAction.Combine).Lines.Should().Equal("water");
        Only(method, StepAction.Join).Lines.Should().Equal("pear-juice");
        Only(method, StepAction.Warm).Lines.Should().Equal("pear");
        Only(method, StepAction.Warm).Temperature!.Value.Celsius.Min.Should().Be(43, "common practice: pieces no colder than where the agar may set");
        MethodStep foldIn = Only(method, StepAction.FoldIn);
        foldIn.Lines.Should().Equal("pear");
        foldIn.Temperature!.Value.Celsius.Min.Should().Be(48);
        method.Conflicts.Should().BeEmpty();
    }

    [Fact]
    public void Too_small_a_hot_part_warms_the_rest_first()
    {
        Method method = InPart(15, 65).PlanMethod();

        method.Steps.Where(s => s.Action == StepAction.Warm).SelectMany(s => s.Lines).Should().Equal("pear-juice", "pear");
        method.Conflicts.Should().BeEmpty("0.5 % of all is 3.2 % of the water, under the 5 % that the catalogue lets agar hydrate at");
        InPart(8, 72).PlanMethod().Conflicts.Should().ContainSingle(c => c.Kind == ConflictKind.TooLittleLiquid, "there it is 5.9 %");
    }

    [Fact]
    public void The_largest_unheated_share_leaves_the_mix_at_the_setting_temperature_and_margin()
    {
        Formula base_ = Formula.Named("all").Base(b => b.Share(Pantry.Water, 50).Share(Pantry.PearJuice, 50)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.3).OfPreceding)).Build();

        UnheatedShare share = base_.LargestUnheatedShare();

        share.Limit.Should().Be(UnheatedLimit.Setting);
        // Equal specific heats: 95 - s (95 - 20) = 48, s = 62.7 %; agar's own heat and the juice's lower specific heat move it by less than 1 %.
        share.PercentOfLiquid.Should().BeApproximately(62.7, 1);
        share.Heat!.Mix.Temperature.DegreesCelsius.Should().BeApproximately(48, 0.01);
        Of(Pantry.Water, Hydrocolloids.XanthanGum).LargestUnheatedShare().Limit.Should().Be(UnheatedLimit.NothingIsHeated);
        Formula thick = Of(Pantry.Water, Hydrocolloids.Agar, 3);
        UnheatedShare limited = thick.LargestUnheatedShare();
        limited.Limit.Should().Be(UnheatedLimit.Concentration);
        limited.AgentPercent.Should().BeApproximately(5, 1e-9, "the catalogue lets it hydrate at no more");
    }

    [Fact]
    public void At_altitude_agar_boils_too_low_for_its_window_and_a_published_lower_one_holds_to_the_end()
    {
        var mexicoCity = new Kitchen { Altitude = Length.FromMeters(2240) };

        Method method = Of(Pantry.Water, Hydrocolloids.Agar).PlanMethod(mexicoCity);

        method.Conflicts.Should().BeEmpty();
        MethodStep heat = Only(method, StepAction.Heat);
        // Water boils at 92.6 °C there; the hydrocolloid collection gives 90 °C or more.
        heat.Temperature!.Value.Celsius.Max.Should().BeApproximately(92.6, 0.2);
        heat.Notes.Should().Contain(n => n.Value.Contains("90 °C or more"));
    }

    [Fact]
    public void Higher_still_it_cannot_be_done_without_a_pressure_cooker()
    {
        Formula formula = Of(Pantry.Water, Hydrocolloids.Agar);
        var high = new Kitchen { Altitude = Length.FromMeters(4000) };

        MethodConflict conflict = formula.PlanMethod(high).Conflicts.Single();
        conflict.Kind.Should().Be(ConflictKind.NotHotEnough);
        Pressure gauge = Boiling.Reaches(new TemperatureRange(C(95), null), new LiquidShares(100), PotPressure.AtAltitude(Length.FromMeters(4000))).GaugeNeeded!.Value;
        conflict.WayOut.Should().Contain(gauge.Kilopascals.ToString("0", System.Globalization.CultureInfo.InvariantCulture) + " kPa");

        Method cooked = formula.PlanMethod(high with { Equipment = Equipment.PressureCooker | Equipment.HandBlender });
        cooked.Conflicts.Should().BeEmpty();
        Only(cooked, StepAction.Heat).Equipment.Should().Be(Equipment.PressureCooker);
        formula.PlanMethod(high with { Equipment = Equipment.PressureCooker, CookerGauge = Pressure.FromKilopascals(20) }).Conflicts.Should().Contain(c => c.Kind == ConflictKind.NotHotEnough);
    }

    [Fact]
    public void A_measured_pressure_goes_before_the_altitude()
        => Of(Pantry.Water, Hydrocolloids.Agar).PlanMethod(new Kitchen { Altitude = Length.FromMeters(4000), AirPressure = Pressure.FromKilopascals(101.3) }).Conflicts.Should().BeEmpty();

    [Fact]
    public void Without_a_blender_alginate_cannot_be_dispersed_and_without_heat_agar_cannot_be_dissolved()
    {
        Of(Pantry.Water, Hydrocolloids.SodiumAlginate).PlanMethod(new Kitchen { Equipment = Equipment.Pan }).Conflicts.Should().Contain(c => c.Kind == ConflictKind.Equipment);
        Of(Pantry.Water, Hydrocolloids.Agar).PlanMethod(new Kitchen { Equipment = Equipment.HandBlender }).Conflicts.Should().Contain(c => c.Kind == ConflictKind.Equipment);
    }

    [Fact]
    public void A_coarse_thermometer_narrows_the_targets_and_a_coarse_balance_is_named()
    {
        Formula formula = Formula.Named("two").Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding).Add(Hydrocolloids.GelatinTypeA, Dose.Percent(1).OfPreceding)).Build();

        Only(formula.PlanMethod(new Kitchen { ThermometerAccuracy = TemperatureDelta.FromKelvins(2) }), StepAction.Cast).Temperature!.Value.Celsius.Min.Should().Be(50);
        formula.PlanMethod(new Kitchen { ThermometerAccuracy = TemperatureDelta.FromKelvins(19) }).Conflicts.Should().Contain(c => c.Kind == ConflictKind.Instrument);

        // Half a division of 1 g on 1 g of agar is half the dose.
        formula.ScaleTo(Yield.OfBase(Mass.FromGrams(290))).PlanMethod(new Kitchen { Balance = Balance.WithDivision(Mass.FromGrams(1)) })
            .Conflicts.Should().Contain(c => c.Kind == ConflictKind.Instrument && c.Lines.Contains("agar"));
    }

    [Fact]
    public void A_fluid_gel_is_set_then_sheared_and_strained_only_afterwards()
    {
        Method method = Of(Pantry.PearJuice, Hydrocolloids.GellanLowAcyl, 0.2).WithService(new ServicePlan { Texture = Texture.FluidGel }).PlanMethod();

        method.Pattern.Should().Be(MethodPattern.FluidGel);
        method.Steps.SkipWhile(s => s.Action != StepAction.Set).Select(s => s.Action)
            .Should().Equal(StepAction.Set, StepAction.Shear, StepAction.Strain, StepAction.Deaerate, StepAction.Cover, StepAction.Serve);
        method.Steps.TakeWhile(s => s.Action != StepAction.Set).Should().NotContain(s => s.Action == StepAction.Strain || s.Action == StepAction.Cast);
    }

    [Fact]
    public void A_gelatin_foam_is_whipped_while_it_thickens_and_sets_afterwards()
    {
        Method method = Of(Pantry.PearJuice, Hydrocolloids.GelatinTypeA, 1.5).PlanMethod(new MethodOptions { Pattern = MethodPattern.Foam });

        method.Conflicts.Should().BeEmpty();
        method.Steps.SkipWhile(s => s.Action != StepAction.Cool || s.Lines.Contains("pear-juice")).Select(s => s.Action)
            .Should().Equal(StepAction.Cool, StepAction.Whip, StepAction.Set, StepAction.Cover, StepAction.Serve);
        TemperatureRange sets = Hydrocolloids.GelatinTypeA.Profile!.Setting.Window!.Value;
        method.Steps.Single(s => s.Action == StepAction.Cool && s.Lines.Contains("gelatin-type-a")).Temperature.Should().Be(sets);
        method.Steps.Should().NotContain(s => s.Action == StepAction.Cast || s.Action == StepAction.Deaerate, "the air is wanted");
        Only(method, StepAction.Whip).Notes.Should().Contain(n => n.Value.Contains("pressure vessel"));
    }

    [Fact]
    public void A_methylcellulose_foam_is_whipped_cold_and_set_by_heat()
    {
        Method method = Of(Pantry.Water, Hydrocolloids.Methylcellulose, 1).PlanMethod(new MethodOptions { Pattern = MethodPattern.Foam });

        method.Conflicts.Should().BeEmpty();
        method.Steps.SkipWhile(s => s.Action != StepAction.Whip).Select(s => s.Action).Should().StartWith([StepAction.Whip, StepAction.Set]);
        Only(method, StepAction.Set).Temperature!.Value.Celsius.Min.Should().BeGreaterThan(40, "it sets when it is heated");
    }

    [Fact]
    public void Agar_clears_a_liquid_through_broken_curds_and_gelatin_by_freezing_and_thawing()
    {
        var clarify = new MethodOptions { Pattern = MethodPattern.Clarify };
        Method agar = Of(Pantry.PearJuice, Hydrocolloids.Agar, 0.2).PlanMethod(clarify);
        Method gelatin = Of(Pantry.PearJuice, Hydrocolloids.GelatinTypeB, 0.6).PlanMethod(clarify);

        agar.Conflicts.Should().BeEmpty();
        agar.Steps.SkipWhile(s => s.Action != StepAction.Set).Select(s => s.Action).Should().Equal(StepAction.Set, StepAction.Shear, StepAction.Drain);
        gelatin.Steps.SkipWhile(s => s.Action != StepAction.Set).Select(s => s.Action).Should().Equal(StepAction.Set, StepAction.Freeze, StepAction.Drain);
        Only(gelatin, StepAction.Freeze).Notes.Should().Contain(n => n.Citation.Source.Id == "handbook-of-hydrocolloids", "the catalogue's own fact of freezing stands beside it");
        Only(agar, StepAction.Drain).Instruction.Should().NotContain("Counted on");
        Of(Pantry.PearJuice, Hydrocolloids.Agar, 0.2).ToBuilder().Process(new ProcessPlan { Losses = new Losses { Straining = Loss.Percent(25) } }).Build().PlanMethod(clarify)
            .Steps[^1].Instruction.Should().Contain("25 %", "the yield is the kitchen's own");
    }

    [Fact]
    public void A_gel_too_firm_to_drain_and_an_agent_that_cannot_foam_are_conflicts()
    {
        Of(Pantry.PearJuice, Hydrocolloids.Agar, 0.8).PlanMethod(new MethodOptions { Pattern = MethodPattern.Clarify })
            .Conflicts.Should().ContainSingle(c => c.Kind == ConflictKind.Limit && c.Lines.Contains("agar"));
        Of(Pantry.PearJuice, Hydrocolloids.Agar, 0.5).PlanMethod(new MethodOptions { Pattern = MethodPattern.Foam })
            .Conflicts.Should().ContainSingle(c => c.Kind == ConflictKind.NothingSetsIt).Which.WayOut.Should().Contain("gelatin").And.Contain("methylcellulose");
    }

    [Fact]
    public void Alginate_without_calcium_goes_into_a_calcium_bath_with_its_times()
    {
        Method method = Of(Pantry.WaterDistilled, Hydrocolloids.SodiumAlginate).PlanMethod();

        method.Pattern.Should().Be(MethodPattern.DirectBath);
        method.Conflicts.Should().BeEmpty();
        Only(method, StepAction.MakeBath).Instruction.Should().Contain("2–3 %").And.Contain("calcium lactate");
        // Skin of twice the thickness takes four times as long: x = √(2 D c t/N).
        NumberRange seconds = Only(method, StepAction.Bathe).Duration!.Value.Seconds;
        (seconds.Max!.Value / seconds.Min!.Value).Should().BeApproximately(4, 0.1);
        Only(method, StepAction.Rinse).Number.Should().BeGreaterThan(Only(method, StepAction.Bathe).Number);
    }

    [Fact]
    public void Soluble_calcium_in_the_bowl_sets_alginate_in_lumps()
    {
        Formula formula = Formula.Named("lumps").Base(b => b.Share(Pantry.WaterDistilled, 100))
            .Then("gel", p => p.Add(Hydrocolloids.SodiumAlginate, Dose.Percent(0.5).OfPreceding).Add(Pantry.CalciumLactate, Dose.Percent(0.5).OfBase)).Build();

        formula.PlanMethod().Conflicts.Should().ContainSingle().Which.Kind.Should().Be(ConflictKind.Order);
    }

    [Fact]
    public void Methylcellulose_is_dispersed_hot_hydrated_cold_set_by_heat_and_served_hot()
    {
        Method method = Of(Pantry.Water, Hydrocolloids.Methylcellulose, 1.5).PlanMethod();

        method.Steps.First(s => s.Action == StepAction.Heat).Temperature!.Value.Celsius.Min.Should().Be(70);
        method.Steps.First(s => s.Action == StepAction.Heat).Amounts.Single().PercentOfBase.Should().BeApproximately(33.3, 1e-9);
        Only(method, StepAction.Hold).Temperature!.Value.Celsius.Max.Should().Be(15);
        Only(method, StepAction.Set).Temperature!.Value.Celsius.Min.Should().Be(60);
        Only(method, StepAction.Serve).Instruction.Should().Contain("hot");
    }

    [Fact]
    public void A_layer_is_cast_cooler_than_the_layer_below_melts()
    {
        Formula agar = Of(Pantry.Water, Hydrocolloids.Agar), gelatin = Of(Pantry.Water, Hydrocolloids.GelatinTypeA, 1.5);

        Method onAgar = agar.PlanMethod(new MethodOptions { OnLayer = agar });
        Only(onAgar, StepAction.Cast).Temperature!.Value.Celsius.Should().Be(new NumberRange(48, 80), "agar melts from 80 °C");
        onAgar.Conflicts.Should().BeEmpty();
        agar.PlanMethod(new MethodOptions { OnLayer = gelatin }).Conflicts.Should().ContainSingle().Which.Kind.Should().Be(ConflictKind.Melts, "gelatin melts from 24 °C");
    }

    [Fact]
    public void Served_hot_gelatin_melts_and_agar_does_not()
    {
        var hot = new ServicePlan { ServedAt = C(60) };

        Of(Pantry.Water, Hydrocolloids.GelatinTypeA).WithService(hot).PlanMethod().Conflicts.Should().ContainSingle().Which.Kind.Should().Be(ConflictKind.Melts);
        Of(Pantry.Water, Hydrocolloids.Agar).WithService(hot).PlanMethod().Conflicts.Should().BeEmpty();
    }

    [Fact]
    public void A_batch_gives_masses_that_add_up()
    {
        Batch batch = InPart(40, 40).ScaleTo(Yield.OfBase(Mass.FromGrams(1000)));

        Method method = batch.PlanMethod();

        method.ToWeigh.Sum(a => a.Mass!.Value.Grams).Should().BeApproximately(batch.AssembledMass.Grams, 1e-9);
        method.ToWeigh.Single(a => a.Label == "agar").Mass!.Value.Grams.Should().BeApproximately(batch.MassOf("agar").Grams, 1e-12);
        InPart(40, 40).PlanMethod().ToWeigh.Should().OnlyContain(a => !a.Mass.HasValue);
    }

    [Fact]
    public void Renderings_hold_every_step_and_the_json_reads()
    {
        Method method = InPart(40, 40).ScaleTo(Yield.OfBase(Mass.FromGrams(1000))).PlanMethod();

        string text = method.ToText(), markdown = method.ToMarkdown();
        foreach (MethodStep step in method.Steps)
        {
            text.Should().Contain(step.Instruction);
            markdown.Should().Contain($"{step.Number}. **");
        }

        using var json = System.Text.Json.JsonDocument.Parse(method.ToJson());
        json.RootElement.GetProperty("format").GetString().Should().Be("hydrocolloid-method");
        json.RootElement.GetProperty("steps").GetArrayLength().Should().Be(method.Steps.Count);
        json.RootElement.GetProperty("steps")[0].GetProperty("amounts")[0].GetProperty("grams").GetDouble().Should().Be(400);
        method.TotalTime.Seconds.Min.Should().Be(method.ActiveTime.Seconds.Min + method.WaitingTime.Seconds.Min);
        method.Ahead.Should().NotBeEmpty();
    }

    /// <summary>Cook, hot climate: leaves soaked at 28 °C (assumed) partly dissolve into the soaking water.</summary>
    [Fact, Trait("Case", "PC-006")]
    public void Soaking_too_warm_is_a_conflict()
    {
        Formula formula = Formula.Named("cream").Base(b => b.Share(Pantry.Cream35, 66).Share(Pantry.WholeMilk, 34)).Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(0.8).OfPreceding))
            .Process(new ProcessPlan { SoakAt = C(28) }).Build();

        formula.PlanMethod().Conflicts.Should().ContainSingle().Which.Kind.Should().Be(ConflictKind.Limit);
        formula.WithProcess(new ProcessPlan { SoakAt = C(10) }).PlanMethod().Conflicts.Should().BeEmpty();
    }

    /// <summary>Laboratory: powder that had settled was not dissolved. The plan whisks at 95 °C or more and looks for grains.</summary>
    [Fact, Trait("Case", "PC-001")]
    public void Agar_is_whisked_while_it_is_hot_enough()
    {
        Method method = Of(Pantry.Water, Hydrocolloids.Agar, 1.6).PlanMethod();

        Only(method, StepAction.Hold).Temperature!.Value.Celsius.Min.Should().Be(95);
        Only(method, StepAction.Hold).Instruction.Should().Contain("whisking");
        Only(method, StepAction.Hold).Check.Should().Contain("grains");
    }

    /// <summary>Laboratory: 30 min in a pressure cooker at low pH weakened agar; the protocol's hold is minutes.</summary>
    [Fact, Trait("Case", "PC-008")]
    public void A_hold_of_half_an_hour_in_acid_is_refused()
        => Of(Pantry.PearJuice, Hydrocolloids.Agar, 0.6).WithProcess(new ProcessPlan { HydrateFor = Duration.FromMinutes(30) }).PlanMethod()
            .Conflicts.Should().ContainSingle().Which.Kind.Should().Be(ConflictKind.Limit);

    /// <summary>Discussion: milk brings about 30 mmol/L of calcium, so alginate goes into the bath and not into the milk.</summary>
    [Fact, Trait("Case", "PC-010")]
    public void Milk_goes_into_an_alginate_bath()
    {
        MethodConflict conflict = Of(Pantry.WholeMilk, Hydrocolloids.SodiumAlginate).PlanMethod().Conflicts.Single();
        conflict.Kind.Should().Be(ConflictKind.Limit);
        conflict.WayOut.Should().Contain("reverse bath");

        Formula core = Formula.Named("core").Base(b => b.Share(Pantry.WholeMilk, 100)).Build();
        Method reverse = core.PlanMethod(new MethodOptions { Pattern = MethodPattern.ReverseBath });
        reverse.Conflicts.Should().BeEmpty();
        Only(reverse, StepAction.MakeBath).Instruction.Should().Contain("0.4–0.6 %");
        Only(Of(Pantry.WaterDistilled, Hydrocolloids.SodiumAlginate).PlanMethod(), StepAction.Serve).Instruction.Should().Contain("within minutes");
        Formula.Named("no calcium").Base(b => b.Share(Pantry.WaterDistilled, 100)).Build().PlanMethod(new MethodOptions { Pattern = MethodPattern.ReverseBath })
            .Conflicts.Should().ContainSingle().Which.Kind.Should().Be(ConflictKind.NothingSetsIt);
    }

    /// <summary>Home cook: dispersed at 85 °C and chilled to 10 °C, methylcellulose is worked rightly; it was the dose.</summary>
    [Fact, Trait("Case", "PC-014")]
    public void Dispersing_hot_and_chilling_lies_in_the_plan()
    {
        Method method = Of(Pantry.Water, Hydrocolloids.Methylcellulose).PlanMethod();

        method.Steps.First(s => s.Action == StepAction.Heat).Temperature!.Value.Contains(C(85)).Should().BeTrue();
        Only(method, StepAction.Hold).Temperature!.Value.Contains(C(10)).Should().BeTrue();
    }

    /// <summary>Konjac maker: bicarbonate, at pH 8.2, is too weak; slaked lime, one part to 25 of konjac, sets it.</summary>
    [Fact, Trait("Case", "PC-015")]
    public void Konjac_is_set_by_slaked_lime_and_boiling()
    {
        Method method = Of(Pantry.Water, Hydrocolloids.KonjacGlucomannan, 3).ScaleTo(Yield.OfBase(Mass.FromGrams(1000))).PlanMethod();

        MethodStep lime = method.Steps.Single(s => s.Action == StepAction.Add);
        lime.Instruction.Should().Contain("1.2 g", "30 g of konjac in 25");
        lime.Check.Should().Contain("10 or more");
        lime.Reason.Should().Contain("Bicarbonate");
        Only(method, StepAction.Set).Duration!.Value.Seconds.Should().Be(new NumberRange(600, 900));
        Only(method, StepAction.Set).Temperature!.Value.Celsius.Min.Should().Be(80);
    }

    /// <summary>Home cook: hot agar drizzled into cold mascarpone cream sets in threads; here with cream of 35 % fat. The cream is warmed first.</summary>
    [Fact, Trait("Case", "PC-027")]
    public void Cold_cream_is_warmed_before_hot_agar_meets_it()
    {
        Formula formula = Formula.Named("cream").Base(b => b.Share(Pantry.Water, 100.0 / 8.5).Share(Pantry.Cream35, 750 / 8.5, l => l.At(C(8))))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.353).OfBase))
            .Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) }).Build();

        MethodStep warm = Only(formula.PlanMethod(), StepAction.Warm);

        warm.Lines.Should().Equal("cream-35");
        // The case comes to 20.8 °C with 90 °C sol and 3.0 kJ/(kg·K); ours starts at 95 °C and its cream takes a little more heat.
        warm.Reason.Should().MatchRegex("would come to (1[89]|2[0-2]) °C");
        warm.Temperature!.Value.Celsius.Min.Should().BeInRange(35, 48);
    }
}
