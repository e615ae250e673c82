using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Methods;

/// <summary>The order of a method, from the protocols of one hydrocolloid or several.</summary>
public sealed class MethodPlannerTests
{
    public static TheoryData<string> Agents => [.. Catalogue.BuiltIn.Hydrocolloids.Select(h => h.Id)];

    private static Formula Of(params Ingredient[] agents) => Formula.Named("test").Base(b => b.Share(Pantry.PearJuice, 100))
        .Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(5).OfBase))
        .Then("gel", p => Array.ForEach(agents, a => p.Add(a, Dose.Percent(0.5).OfPreceding))).Build();

    private static MethodStep Only(Method method, StepAction action) => method.Steps.Single(s => s.Action == action);

    private static int IndexOf(Method method, Func<MethodStep, bool> step) => method.Steps.ToList().FindIndex(s => step(s));

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    /// <summary>Common practice, no source: cold dispersal, 4 min at a simmer with occasional whisking, a short burst with a hand blender, strain, cast; sets about 35 °C, melts about 80 °C.</summary>
    [Fact]
    public void Agar_is_worked_as_the_trade_works_it()
    {
        Method method = Of(Hydrocolloids.Agar).PlanMethod();

        method.Steps.Select(s => s.Action).Should().Equal(
            StepAction.Combine, StepAction.Add, StepAction.Disperse, StepAction.Heat, StepAction.Hold, StepAction.Shear,
            StepAction.Strain, StepAction.Deaerate, StepAction.Cast, StepAction.Set, StepAction.Cover, StepAction.Serve);
        method.Conflicts.Should().BeEmpty();
        Only(method, StepAction.Disperse).Reason.Should().Contain("cold");
        Only(method, StepAction.Heat).Instruction.Should().Contain("simmer").And.Contain("whisking now and then");
        Only(method, StepAction.Heat).Temperature!.Value.Celsius.Should().Be(new NumberRange(95, 100));
        Only(method, StepAction.Hold).Duration!.Value.Seconds.Contains(4 * 60).Should().BeTrue();
        Only(method, StepAction.Hold).Notes.Should().Contain(n => n.Value.Contains("4 min") && n.Citation.Quality == CitationQuality.CommonPractice);
        Only(method, StepAction.Shear).Equipment.Should().Be(Equipment.HandBlender);
        Only(method, StepAction.Shear).Instruction.Should().Contain("short burst").And.Contain("opaque");
        Only(method, StepAction.Cast).Temperature!.Value.Celsius.Min.Should().Be(48, "the upper end of the setting range, 43 °C, and the kitchen's margin of 5 K");
        Only(method, StepAction.Set).Notes.Should().Contain(n => n.Value.Contains("35 °C") && n.Citation.Quality == CitationQuality.CommonPractice);
        Only(method, StepAction.Serve).Notes.Should().Contain(n => n.Value.Contains("80 °C") && n.Citation.Quality == CitationQuality.CommonPractice);
    }

    [Theory, MemberData(nameof(Agents))]
    public void Every_hydrocolloid_alone_gives_a_method_within_its_own_protocol(string id)
    {
        Ingredient agent = Catalogue.BuiltIn.Get(id);
        HydrocolloidProfile profile = agent.Profile!;
        NumberRange window = profile.Hydration.Window.Value.Celsius, hold = profile.Hydration.Hold.Value.Seconds;

        Method method = Of(agent).PlanMethod();

        method.Conflicts.Where(c => c.Kind != ConflictKind.Limit).Should().BeEmpty("what the juice does to it is not its protocol's doing");
        method.Steps.Should().OnlyContain(s => s.Reason.Length > 0 && s.Check.Length > 0 && s.Citations.Count > 0, "each step has its reason, its check and its source");
        MethodStep held = Only(method, StepAction.Hold);
        Inside(held.Temperature!.Value.Celsius, window).Should().BeTrue($"it is held at {held.Temperature}, and hydrates at {window}");
        Inside(held.Duration!.Value.Seconds, hold).Should().BeTrue($"it is held for {held.Duration}, and needs {hold} s");
        int dispersed = IndexOf(method, s => s.Action is StepAction.Disperse or StepAction.Soak), kept = IndexOf(method, s => s.Action == StepAction.Hold);
        dispersed.Should().BeInRange(0, kept - 1);
        if (profile.Hydration.NotAbove?.Value.Celsius.Max is { } limit)
        {
            method.Steps.Where(s => s.Number > dispersed).Should().OnlyContain(s => s.Temperature == null || !(s.Temperature.Value.Celsius.Min > limit));
        }

        if (profile.Setting.Triggers[0].Cause == SettingCause.Cooling && profile.Setting.Window!.Value.Celsius.Max is { } sets)
        {
            Only(method, StepAction.Cast).Temperature!.Value.Celsius.Min.Should().BeGreaterThanOrEqualTo(sets);
        }

        method.Steps.Should().Contain(s => s.Action == StepAction.Set || s.Action == StepAction.Bathe);
        Weighed(method, Of(agent));
    }

    [Fact]
    public void Every_pair_gives_a_method_or_a_reasoned_conflict()
    {
        Ingredient[] all = [.. Catalogue.BuiltIn.Hydrocolloids];
        for (int i = 0; i < all.Length; i++)
        {
            for (int j = i + 1; j < all.Length; j++)
            {
                Formula formula = Of(all[i], all[j]);
                Method method = formula.PlanMethod();
                string pair = all[i].Id + " and " + all[j].Id;

                method.Steps.Where(s => s.Action is StepAction.Disperse or StepAction.Soak).SelectMany(s => s.Lines).Should().Contain([all[i].Id, all[j].Id], pair);
                method.Conflicts.Where(c => c.Text.Length == 0 || c.WayOut.Length == 0 || c.Lines.IsEmpty || c.Citations.IsEmpty).Should().BeEmpty(pair);
                Weighed(method, formula);
                if (method.Conflicts.IsEmpty)
                {
                    NoLimitIsPassed(method, all[i], pair);
                    NoLimitIsPassed(method, all[j], pair);
                }
            }
        }
    }

    /// <summary>From where it goes in on, nothing is heated past what it stands, and it is cast above where it sets.</summary>
    private static void NoLimitIsPassed(Method method, Ingredient agent, string because)
    {
        // Soaked, it waits beside the pot; it is in with the step that cools for it or that adds it.
        int from = IndexOf(method, s => s.Action is StepAction.Disperse or StepAction.Cool && s.Lines.Contains(agent.Id));
        if (agent.Profile!.Hydration.NotAbove?.Value.Celsius.Max is { } limit)
        {
            method.Steps.Skip(Math.Max(from, 0)).Where(s => from >= 0 || s.Lines.Contains(agent.Id))
                .Where(s => s.Temperature?.Celsius.Min > limit || (s.Action is StepAction.Heat or StepAction.Hold && s.Temperature?.Celsius.Max > limit)).Should().BeEmpty(because);
        }

        if (agent.Profile.Setting.Triggers.Select(t => t.Cause).FirstOrDefault() == SettingCause.Cooling && agent.Profile.Setting.Window!.Value.Celsius.Max is { } sets)
        {
            method.Steps.Where(s => s.Action == StepAction.Cast && !(s.Temperature?.Celsius.Min >= sets)).Should().BeEmpty(because);
        }
    }

    private static bool Inside(NumberRange inner, NumberRange outer) => !(inner.Min < outer.Min) && !(inner.Max > outer.Max);

    /// <summary>Each line goes in once, in whole.</summary>
    private static void Weighed(Method method, Formula formula)
    {
        foreach (FormulaLine line in formula.Lines)
        {
            method.Steps.SelectMany(s => s.Amounts).Where(a => a.Label == line.Label).Sum(a => a.PercentOfBase)
                .Should().BeApproximately(100 * formula.Proportions.MassOf(line), 1e-9, line.Label);
            method.ToWeigh.Single(a => a.Label == line.Label).PercentOfBase.Should().BeApproximately(100 * formula.Proportions.MassOf(line), 1e-12);
        }
    }

    [Fact]
    public void Gelatin_is_soaked_in_the_formulas_own_liquid_before_it_is_warmed()
    {
        Method method = Of(Hydrocolloids.GelatinTypeA).PlanMethod();

        IndexOf(method, s => s.Action == StepAction.Soak).Should().BeInRange(0, IndexOf(method, s => s.Action == StepAction.Heat) - 1);
        MethodStep soak = Only(method, StepAction.Soak);
        soak.Notes.Should().Contain(n => n.Value.Contains("part of the formula"));
        soak.Amounts.Select(a => a.Label).Should().Equal("gelatin-type-a", "pear-juice");
        (soak.Amounts[1].PercentOfBase / soak.Amounts[0].PercentOfBase).Should().BeApproximately(2, 1e-9, "the producer's least, parts of water to one");
        Only(method, StepAction.Heat).Temperature!.Value.Celsius.Max.Should().BeLessThan(80, "more heat with acid harms gelatin");
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

        IndexOf(method, s => s.Action == StepAction.Cool).Should().BeGreaterThan(IndexOf(method, s => s.Action == StepAction.Heat));
        Only(method, StepAction.Cool).Temperature!.Value.Celsius.Max.Should().Be(80);
        method.Conflicts.Should().BeEmpty();
    }

    [Fact]
    public void Gelatin_beside_high_acyl_gellan_has_no_temperature_that_suits_both()
    {
        MethodConflict conflict = Of(Hydrocolloids.GellanHighAcyl, Hydrocolloids.GelatinTypeA).PlanMethod().Conflicts.Single(c => c.Kind == ConflictKind.Order);

        conflict.Text.Should().Contain("80 °C");
        conflict.WayOut.Should().Contain("two layers");
    }

    [Fact]
    public void Hydroxypropyl_methylcellulose_beside_agar_has_a_way_out_through_a_cold_part()
    {
        MethodConflict conflict = Of(Hydrocolloids.Hpmc, Hydrocolloids.Agar).PlanMethod().Conflicts.Single();

        conflict.Kind.Should().Be(ConflictKind.Order);
        // HPMC sets from 58 °C, agar by 43 °C: with the margin of 5 K they can be joined at 48 °C.
        conflict.WayOut.Should().Contain("48 °C");
    }

    [Fact]
    public void Casting_planned_below_the_setting_temperature_is_a_conflict()
    {
        Formula formula = Of(Hydrocolloids.Agar).WithProcess(new ProcessPlan { CastAt = C(40) });

        MethodConflict conflict = formula.PlanMethod().Conflicts.Single();
        conflict.Kind.Should().Be(ConflictKind.SetsTooEarly);
        conflict.Text.Should().Contain("40 °C").And.Contain("43 °C");
        Of(Hydrocolloids.Agar).WithProcess(new ProcessPlan { CastAt = C(60) }).PlanMethod().Conflicts.Should().BeEmpty();
    }

    [Fact]
    public void Xanthan_is_blended_with_the_formulas_own_sugar_and_hydrates_without_heat()
    {
        Method method = Of(Hydrocolloids.XanthanGum).PlanMethod();

        MethodStep blend = Only(method, StepAction.DryBlend);
        blend.Amounts.Select(a => a.Label).Should().Equal("xanthan-gum", "sucrose");
        (blend.Amounts[1].PercentOfBase / blend.Amounts[0].PercentOfBase).Should().BeLessThanOrEqualTo(10, "the published ratio");
        method.Steps.Should().NotContain(s => s.Action == StepAction.Heat);
    }

    [Fact]
    public void Acid_waits_until_agar_is_dissolved_and_calcium_and_alcohol_come_last()
    {
        Formula formula = Formula.Named("test").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Pantry.CitricAcid, Dose.Percent(0.4).OfBase).Add(Pantry.SodiumCitrate, Dose.Percent(0.1).OfBase).Add(Pantry.CalciumLactate, Dose.Percent(0.2).OfBase)
                .Add(Pantry.Spirit40, Dose.Percent(5).OfBase).Add(Hydrocolloids.Agar, Dose.Percent(0.4).OfPreceding).Add(Hydrocolloids.GellanLowAcyl, Dose.Percent(0.1).OfPreceding)).Build();

        Method method = formula.PlanMethod();

        string[] order = [.. method.Steps.SelectMany(s => s.Amounts).Select(a => a.Label)];
        order.Should().Equal("water", "sodium-citrate", "gellan-low-acyl", "agar", "citric-acid", "spirit-40", "calcium-lactate");
        MethodStep spirit = method.Steps.Single(s => s.Lines.Contains("spirit-40"));
        spirit.Instruction.Should().Contain("off the heat");
        spirit.Cautions.Should().Contain(c => c.Kind == CautionKind.Flammable);
        method.Steps.Single(s => s.Lines.Contains("citric-acid")).Number.Should().BeGreaterThan(method.Steps.Last(s => s.Action == StepAction.Hold).Number);
    }

    [Fact]
    public void Acid_of_the_juice_cuts_the_hold_of_agar_short()
    {
        // Common practice, no source: 4 min outside pH 5.5 to 8 do no harm that matters; pear juice lies below it, water does not.
        Only(Of(Hydrocolloids.Agar).PlanMethod(), StepAction.Hold).Duration!.Value.Seconds.Max.Should().Be(4 * 60);
        Formula neutral = Formula.Named("test").Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding)).Build();
        Only(neutral.PlanMethod(), StepAction.Hold).Duration!.Value.Seconds.Max.Should().Be(5 * 60);
    }

    [Fact]
    public void Raw_pineapple_is_heated_before_gelatin_sees_it_and_not_before_agar()
    {
        Formula With(Ingredient agent) => Formula.Named("test").Base(b => b.Share(Pantry.Water, 80).Share(Pantry.PineappleRaw, 20))
            .Then("gel", p => p.Add(agent, Dose.Percent(1).OfPreceding)).Build();

        MethodStep first = With(Hydrocolloids.GelatinTypeA).PlanMethod().Steps[0];
        first.Action.Should().Be(StepAction.StopEnzymes);
        first.Temperature!.Value.Celsius.Min.Should().Be(80, "the kitchen rule; the measured kinetics need less");
        With(Hydrocolloids.Agar).PlanMethod().Steps.Should().NotContain(s => s.Action == StepAction.StopEnzymes);
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

    [Fact]
    public void Dry_sugar_after_the_pectin_is_stirred_in_over_the_heat()
    {
        Method method = Formula.Named("Paste").Base(b => b.Share(Pantry.RaspberryJuice, 100))
            .Then("gel", p => p.Add(Hydrocolloids.PectinHighMethoxyl, Dose.Percent(1.5).OfBase))
            .Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(120).OfBase)).Build().PlanMethod();

        method.Conflicts.Should().BeEmpty();
        method.Steps.Should().Contain(s => s.Action == StepAction.Heat && s.Instruction.Contains("Keep the pot on the heat while the sucrose goes in") && s.Temperature!.Value.Celsius.Min == 90);
    }
}
