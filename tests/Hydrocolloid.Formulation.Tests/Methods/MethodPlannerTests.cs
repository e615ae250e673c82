namespace Hydrocolloid.Formulation.Tests.Methods;

/// <summary>The method of one hydrocolloid, and the simple cases of several.</summary>
public sealed class MethodPlannerTests
{
    public static TheoryData<string> Agents => [.. Catalogue.BuiltIn.Hydrocolloids.Select(h => h.Id)];

    private static Formula Of(params Ingredient[] agents) => Formula.Named("test").Base(b => b.Share(Pantry.PearJuice, 100))
        .Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(5).OfBase))
        .Then("gel", p => Array.ForEach(agents, a => p.Add(a, Dose.Percent(0.5).OfPreceding))).Build();

    [Fact]
    public void Agar_is_dispersed_cold_simmered_sheared_strained_and_cast_above_its_setting_temperature()
    {
        Method method = Of(Hydrocolloids.Agar).PlanMethod();

        method.Steps.Select(s => s.Action).Should().Equal(
            StepAction.Combine, StepAction.Add, StepAction.Disperse, StepAction.Heat, StepAction.Hold, StepAction.Shear,
            StepAction.Strain, StepAction.Cast, StepAction.Set, StepAction.Serve);
        method.Conflicts.Should().BeEmpty();

        // Common practice, no source: dispersal cold, simmer 4 min, sets about 35 °C, melts about 80 °C.
        MethodStep Step(StepAction action) => method.Steps.Single(s => s.Action == action);
        Step(StepAction.Disperse).Reason.Should().Contain("cold");
        Step(StepAction.Heat).Temperature!.Value.Celsius.Should().Be(new NumberRange(95, 100));
        Step(StepAction.Hold).Duration!.Value.Seconds.Contains(4 * 60).Should().BeTrue();
        Step(StepAction.Hold).Notes.Should().Contain(n => n.Value.Contains("4 min") && n.Citation.Quality == CitationQuality.CommonPractice);
        Step(StepAction.Cast).Temperature!.Value.Celsius.Min.Should().Be(43, "the upper end of the setting range, and pieces of gel form below it");
        Step(StepAction.Set).Temperature!.Value.Celsius.Contains(35).Should().BeTrue();
        Step(StepAction.Set).Notes.Should().Contain(n => n.Value.Contains("35 °C") && n.Citation.Quality == CitationQuality.CommonPractice);
        Step(StepAction.Serve).Notes.Should().Contain(n => n.Value.Contains("80 °C") && n.Citation.Quality == CitationQuality.CommonPractice);
    }

    [Theory]
    [MemberData(nameof(Agents))]
    public void Every_hydrocolloid_alone_gives_a_method_within_its_own_protocol(string id)
    {
        Ingredient agent = Catalogue.BuiltIn.Get(id);
        HydrocolloidProfile profile = agent.Profile!;

        Method method = Of(agent).PlanMethod();

        method.Conflicts.Should().BeEmpty();
        method.Steps.Should().OnlyContain(s => s.Reason.Length > 0 && s.Citations.Count > 0, "each step has its reason and its source");
        foreach (MethodStep step in method.Steps.Where(s => s.Action is StepAction.Heat or StepAction.Hold))
        {
            step.Temperature!.Value.Celsius.Should().Be(profile.Hydration.Window.Value.Celsius);
        }

        method.Steps.Single(s => s.Action == StepAction.Hold).Duration!.Value.Should().Be(profile.Hydration.Hold.Value);
        method.Steps.Should().ContainSingle(s => s.Action == StepAction.Set);
    }

    [Fact]
    public void Gelatin_is_soaked_in_the_formulas_own_liquid_before_it_is_warmed()
    {
        Method method = Of(Hydrocolloids.GelatinTypeA).PlanMethod();

        int soak = method.Steps.ToList().FindIndex(s => s.Action == StepAction.Soak);
        int heat = method.Steps.ToList().FindIndex(s => s.Action == StepAction.Heat);
        soak.Should().BeInRange(0, heat - 1);
        method.Steps[soak].Notes.Should().Contain(n => n.Value.Contains("part of the formula"));
        method.Steps[heat].Temperature!.Value.Celsius.Max.Should().BeLessThan(80, "more heat with acid harms gelatin");
    }

    [Fact]
    public void Agar_and_locust_bean_gum_are_heated_one_after_the_other_each_for_its_own_hold()
    {
        MethodStep[] heats = [.. Of(Hydrocolloids.Agar, Hydrocolloids.LocustBeanGum).PlanMethod().Steps.Where(s => s.Action == StepAction.Heat)];

        heats.Select(h => h.Lines.Single()).Should().Equal("locust-bean-gum", "agar");
        heats[0].Temperature!.Value.Celsius.Max.Should().BeLessThan(heats[1].Temperature!.Value.Celsius.Min!.Value);
    }

    [Fact]
    public void Agents_whose_windows_meet_share_one_heating_and_the_longest_hold()
    {
        Method method = Of(Hydrocolloids.CarrageenanKappa, Hydrocolloids.CarrageenanIota).PlanMethod();

        method.Steps.Should().ContainSingle(s => s.Action == StepAction.Heat).Which.Lines.Should().HaveCount(2);
        method.Steps.Should().ContainSingle(s => s.Action == StepAction.Hold);
    }

    [Fact]
    public void Gelatin_beside_agar_goes_in_as_the_mix_cools_under_its_limit()
    {
        Method method = Of(Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA).PlanMethod();

        List<MethodStep> steps = [.. method.Steps];
        int boil = steps.FindIndex(s => s.Action == StepAction.Heat);
        int cool = steps.FindIndex(s => s.Action == StepAction.Cool);
        cool.Should().BeGreaterThan(boil);
        steps[cool].Temperature!.Value.Celsius.Max.Should().Be(80);
        method.Conflicts.Should().BeEmpty();
    }

    [Fact]
    public void Gelatin_beside_high_acyl_gellan_has_no_temperature_that_suits_both()
    {
        Method method = Of(Hydrocolloids.GellanHighAcyl, Hydrocolloids.GelatinTypeA).PlanMethod();

        method.Conflicts.Should().ContainSingle().Which.Should().Contain("80 °C");
    }

    [Fact]
    public void Casting_planned_below_the_setting_temperature_is_a_conflict()
    {
        Formula formula = Of(Hydrocolloids.Agar).WithProcess(new ProcessPlan { CastAt = UnitsNet.Temperature.FromDegreesCelsius(40) });

        formula.PlanMethod().Conflicts.Should().ContainSingle().Which.Should().Contain("40 °C").And.Contain("43 °C");
        Of(Hydrocolloids.Agar).WithProcess(new ProcessPlan { CastAt = UnitsNet.Temperature.FromDegreesCelsius(60) }).PlanMethod().Conflicts.Should().BeEmpty();
    }

    [Fact]
    public void What_does_not_carry_the_agents_is_joined_afterwards_and_pieces_are_folded_in_warm()
    {
        Formula formula = Formula.Named("test")
            .Base(b => b.Share(Pantry.Water, 30).Share(Pantry.PearJuice, 50).Share(Pantry.Pear, 20, l => l.Pieces()))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding))
            .Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) }).Build();

        Method method = formula.PlanMethod();

        method.Steps.Single(s => s.Action == StepAction.Combine).Lines.Should().Equal("water");
        method.Steps.Single(s => s.Action == StepAction.Join).Lines.Should().Equal("pear-juice");
        MethodStep foldIn = method.Steps.Single(s => s.Action == StepAction.FoldIn);
        foldIn.Lines.Should().Equal("pear");
        foldIn.Temperature!.Value.Celsius.Min.Should().Be(43);
    }

    [Fact]
    public void Xanthan_is_blended_with_the_formulas_own_sugar_and_hydrates_without_heat()
    {
        Method method = Of(Hydrocolloids.XanthanGum).PlanMethod();

        method.Steps.Single(s => s.Action == StepAction.DryBlend).Lines.Should().Equal("xanthan-gum", "sucrose");
        method.Steps.Single(s => s.Action == StepAction.Add).Instruction.Should().Contain("Keep back");
        method.Steps.Should().NotContain(s => s.Action == StepAction.Heat);
    }

    [Fact]
    public void Cautions_name_hot_liquid_alcohol_allergens_and_what_spoils()
    {
        Formula formula = Formula.Named("mulled").Base(b => b.Share(Pantry.RedWine, 60).Share(Pantry.WholeMilk, 40))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding)).Build();

        ValueList<Caution> cautions = formula.PlanMethod().Cautions;

        cautions.Select(c => c.Kind).Should().Contain([CautionKind.HotLiquid, CautionKind.Flammable, CautionKind.Allergens, CautionKind.Perishable, CautionKind.Ingredient]);
        cautions.Where(c => c.Kind == CautionKind.Allergens).SelectMany(c => c.Lines).Should().Contain(["red-wine", "whole-milk"]);
        cautions.Single(c => c.Kind == CautionKind.Perishable).Text.Value.Should().Contain("local food code");
        cautions.Should().Contain(c => c.Text.Value.Contains("choking"), "agar carries the mini-cup caution");
    }

    [Fact]
    public void Unknown_allergens_are_said_to_be_unknown()
    {
        Formula formula = Formula.Named("own").Base(b => b.Share(Ingredient.Own("house-verjus", "House verjus"), 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding)).Build();

        formula.PlanMethod().Cautions.Should().Contain(c => c.Kind == CautionKind.Allergens && c.Text.Value.Contains("House verjus"));
    }

    [Fact]
    public void A_formula_without_hydrocolloids_still_has_a_method()
    {
        Formula formula = Formula.Named("syrup").Base(b => b.Share(Pantry.Water, 100)).Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(100).OfBase)).Build();

        formula.PlanMethod().Steps.Select(s => s.Action).Should().Equal(StepAction.Combine, StepAction.Add);
    }
}
