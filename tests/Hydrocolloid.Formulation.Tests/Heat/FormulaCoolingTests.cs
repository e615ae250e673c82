using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Heat;

public sealed class FormulaCoolingTests
{
    private static readonly ProcessPlan s_plan = new()
    {
        CastAt = Celsius(60),
        Mould = new MouldPlan("tray") { Shape = MouldShape.Block(Mm(400), Mm(300), Mm(30)), Headspace = Mm(5) },
        Cooling = ValueList<CoolingStage>.From(
        [
            new CoolingStage("bench", Celsius(22), Duration.FromMinutes(30)),
            new CoolingStage("refrigerator", Celsius(3)) { Medium = CoolingMedium.FanRefrigerator },
        ]),
    };

    private static Formula Layer(ProcessPlan plan, Ingredient? agent = null) => Formula.Named("Cucumber layer")
        .Base(b => b.Share(Pantry.CucumberJuice, 100))
        .Then("gel", p => p.Add(agent ?? Hydrocolloids.Agar, Dose.Percent(0.5).OfBase))
        .Process(plan).Build();

    [Fact]
    public void A_tray_cools_like_a_block_of_its_fill_depth_that_gives_off_no_heat_below()
    {
        Formula formula = Layer(s_plan);
        formula.TryCool(out CoolingOutlook? outlook, out ValueList<string> missing).Should().BeTrue();

        missing.IsEmpty.Should().BeTrue();
        var byHand = new CoolingCourse(
            GelBody.Block(Mm(400), Mm(300), Mm(25), ExposedFaces.One), outlook!.Usual.Properties, Celsius(60),
            CoolingStep.In(CoolingMedium.StillAir, Celsius(22), Duration.FromMinutes(30)), CoolingStep.In(CoolingMedium.FanRefrigerator, Celsius(3)));
        outlook.Usual.TimeUntilBelow(Celsius(21)).Time!.Value.Minutes.Should().BeApproximately(byHand.TimeUntilBelow(Celsius(21)).Time!.Value.Minutes, 1e-6);
        outlook.Assumptions.Should().Contain(a => a.Contains("still air")).And.Contain(a => a.Contains("bottom"));
    }

    [Fact]
    public void Set_through_means_the_warmest_part_is_under_the_lowest_setting_temperature()
    {
        Layer(s_plan).TryCool(out CoolingOutlook? outlook, out _);

        outlook!.SetsBelow!.Value.DegreesCelsius.Should().Be(Hydrocolloids.Agar.Profile!.Setting.Window!.Value.Celsius.Min);
        outlook.SetThrough!.Value.Time!.Value.Minutes.Should().BeLessThan(outlook.SetThroughAtLatest!.Value.Time!.Value.Minutes);
        outlook.Usual.At(outlook.SetThrough.Value.Time!.Value).Centre.DegreesCelsius.Should().BeApproximately(outlook.SetsBelow.Value.DegreesCelsius, 0.1);
    }

    [Fact]
    public void The_verdict_is_that_of_the_slow_course_and_says_that_the_local_code_decides()
    {
        Layer(s_plan).TryCool(out CoolingOutlook? outlook, out _);

        CoolingVerdict verdict = outlook!.Check(CoolingRules.UsFoodCode);
        verdict.Should().Be(CoolingRules.UsFoodCode.Check(outlook.Slow));
        verdict.Caution.Should().Contain("local");
    }

    [Fact]
    public void A_deep_terrine_in_still_air_fails_the_two_stage_rule()
    {
        ProcessPlan deep = s_plan with { Mould = new MouldPlan("deep pan") { Shape = MouldShape.Block(Mm(300), Mm(300), Mm(150)) } };
        Layer(deep).TryCool(out CoolingOutlook? outlook, out _);

        outlook!.Check(CoolingRules.UsFoodCode).Outcome.Should().Be(CoolingRuleOutcome.NotMet);
    }

    [Fact]
    public void What_is_not_stated_is_named()
    {
        Layer(ProcessPlan.None).TryCool(out CoolingOutlook? outlook, out ValueList<string> missing).Should().BeFalse();

        outlook.Should().BeNull();
        missing.Should().HaveCount(3);
    }

    [Fact]
    public void What_does_not_set_on_cooling_has_no_time_to_set()
    {
        Layer(s_plan, Hydrocolloids.XanthanGum).TryCool(out CoolingOutlook? outlook, out _).Should().BeTrue();

        outlook!.SetsBelow.Should().BeNull();
        outlook.SetThrough.Should().BeNull();
    }

    [Fact]
    public void Every_shape_of_mould_cools()
    {
        foreach (MouldShape shape in Moulds.MouldShapeTests.Volumes.Select(v => (MouldShape)v[1]))
        {
            Layer(s_plan with { Mould = new MouldPlan("mould") { Shape = shape } }).TryCool(out CoolingOutlook? outlook, out _).Should().BeTrue(shape.ToString());
            outlook!.Usual.TimeUntilBelow(Celsius(5)).Outcome.Should().Be(CoolingTimeOutcome.Reached);
        }
    }

    [Fact]
    public void The_medium_goes_through_documents_unchanged()
        => FormulaJson.Read(FormulaJson.Write(Layer(s_plan))).Should().Be(Layer(s_plan));

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
