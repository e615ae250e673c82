using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Thermal;

public class CoolingRuleTests
{
    private static readonly ThermalProperties s_gel = new(Density.FromKilogramsPerCubicMeter(1040), SpecificEntropy.FromJoulesPerKilogramKelvin(4000), ThermalConductivity.FromWattsPerMeterKelvin(0.57));

    [Fact]
    public void The_clock_starts_when_the_food_has_come_down_to_the_first_temperature()
    {
        // 80 to 57 °C takes 1 h; it then reaches 21 °C in 1.9 h and 5 °C in 5.9 h, which the Food Code allows.
        CoolingVerdict verdict = CoolingRules.UsFoodCode.Check(Readings((0, 80), (1, 57), (2.9, 21), (6.9, 5)));
        verdict.Outcome.Should().Be(CoolingRuleOutcome.Met);
        verdict.Checks[0].Taken!.Value.Hours.Should().BeApproximately(1.9, 1e-9);
        verdict.Checks[1].Taken!.Value.Hours.Should().BeApproximately(5.9, 1e-9);
        verdict.Caution.Should().Contain("local food code");
    }

    [Fact]
    public void Exactly_on_the_limit_is_met()
        => CoolingRules.UsFoodCode.Check(Readings((0, 57), (2, 21), (6, 5))).Outcome.Should().Be(CoolingRuleOutcome.Met);

    [Fact]
    public void A_curve_that_ends_early_is_not_shown_and_one_that_is_late_already_is_not_met()
    {
        CoolingRules.UsFoodCode.Check(Readings((0, 57), (1.5, 21), (5, 7))).Checks.Select(c => c.Outcome).Should().Equal(CoolingRuleOutcome.Met, CoolingRuleOutcome.NotShown);
        CoolingRules.UsFoodCode.Check(Readings((0, 57), (1.5, 21), (6.5, 7))).Outcome.Should().Be(CoolingRuleOutcome.NotMet);
        CoolingRules.UsFoodCode.Check(Readings((0, 90), (3, 60))).Outcome.Should().Be(CoolingRuleOutcome.NotShown);
    }

    [Fact]
    public void Stages_are_counted_as_each_rule_counts_them()
    {
        // 0.5 h and then 4.5 h: within 6 h in all, but the second stage alone takes more than 4 h.
        CoolingReading[] slowEnd = Readings((0, 60), (0.5, 21), (5, 5));
        CoolingRules.UsFoodCode.Check(slowEnd).Outcome.Should().Be(CoolingRuleOutcome.Met);
        CoolingRules.Australia.Check(slowEnd).Outcome.Should().Be(CoolingRuleOutcome.NotMet);
        CoolingRules.UsOlder.Check(slowEnd).Outcome.Should().Be(CoolingRuleOutcome.NotMet);
        CoolingRules.UsFoodCodeFromAmbient.Check(Readings((0, 20), (3.9, 5))).Outcome.Should().Be(CoolingRuleOutcome.Met);
        CoolingRules.UkGuidance.Check(Readings((0, 70), (0.5, 63), (1.9, 8))).Outcome.Should().Be(CoolingRuleOutcome.Met);
        CoolingRules.Codex.Check(Readings((0, 60), (2.1, 10))).Outcome.Should().Be(CoolingRuleOutcome.NotMet);
    }

    [Fact]
    public void A_computed_course_is_judged_like_its_own_curve()
    {
        GelBody layer = GelBody.Slab(Length.FromMillimeters(25), ExposedFaces.One);
        CoolingCourse blast = new(layer, s_gel, Celsius(70), CoolingStep.In(CoolingMedium.BlastChiller, Celsius(-2)));
        CoolingCourse fridge = new(layer, s_gel, Celsius(70), CoolingStep.In(CoolingMedium.StillAir, Celsius(3)));
        foreach (CoolingCourse course in new[] { blast, fridge })
        {
            CoolingVerdict computed = CoolingRules.UsFoodCode.Check(course);
            CoolingVerdict read = CoolingRules.UsFoodCode.Check(course.Curve.Select(p => new CoolingReading(p.Time, p.Centre)));
            computed.Outcome.Should().Be(read.Outcome);
            computed.Checks[0].Taken!.Value.Hours.Should().BeApproximately(read.Checks[0].Taken!.Value.Hours, 0.02);
        }

        CoolingRules.UsFoodCode.Check(blast).Outcome.Should().Be(CoolingRuleOutcome.Met);
        CoolingRules.UsFoodCode.Check(fridge).Outcome.Should().Be(CoolingRuleOutcome.NotMet);
        CoolingVerdict warm = CoolingRules.UsFoodCode.Check(new CoolingCourse(layer, s_gel, Celsius(70), CoolingStep.In(CoolingMedium.BlastChiller, Celsius(8))));
        warm.Outcome.Should().Be(CoolingRuleOutcome.NotMet, "8 °C air never brings the gel to 5 °C");
        warm.Checks[1].Taken.Should().BeNull();
    }

    [Fact]
    public void Readings_must_be_in_order()
    {
        FluentActions.Invoking(() => CoolingRules.UsFoodCode.Check(Readings((0, 57), (0, 21)))).Should().Throw<ArgumentException>().WithMessage("*Reading 2*");
        FluentActions.Invoking(() => CoolingRules.UsFoodCode.Check(Readings())).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new CoolingReading(Duration.FromHours(-1), Celsius(5))).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Every_rule_is_cited_and_what_was_not_read_says_so()
    {
        CoolingRules.All.Select(r => r.Id).Should().OnlyHaveUniqueItems();
        CoolingRules.All.Where(r => r.Citation.IsRecalled).Select(r => r.Id).Should().Equal("uk-guidance", "au", "codex");
        CoolingRules.UsFoodCode.Citation.Quality.Should().Be(CitationQuality.Regulation);
    }

    [Theory, InlineData(63, "Hot"), InlineData(62, "Between"), InlineData(8, "Cold"), InlineData(8.1, "Between")]
    public void United_Kingdom_holds_at_63_and_8(double celsius, string expected)
        => HoldingRule.UnitedKingdom.Check(Celsius(celsius)).ToString().Should().Be(expected);

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static CoolingReading[] Readings(params (double Hours, double Celsius)[] readings)
        => [.. readings.Select(r => new CoolingReading(Duration.FromHours(r.Hours), Celsius(r.Celsius)))];
}
