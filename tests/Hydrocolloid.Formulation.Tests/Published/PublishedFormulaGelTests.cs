using System.Text.Json;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Gelation;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>The checks of <c>gel-checks.json</c> that a formula can be held to: grades, leaves, expected firmness, own trials. Source, tolerance and how each was seen stand there.</summary>
public class PublishedFormulaGelTests
{
    private static readonly JsonElement[] s_checks =
        [.. JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", "gel-checks.json"))).RootElement.GetProperty("checks").EnumerateArray()];

    private static JsonElement Check(string id) => s_checks.Single(c => c.GetProperty("id").GetString() == id);

    private static double Given(JsonElement check, string name) => check.GetProperty("given").GetProperty(name).GetDouble();

    private static void Near(double actual, JsonElement check, string name)
    {
        double expected = check.GetProperty("expected").GetProperty(name).GetDouble();
        actual.Should().BeApproximately(expected, Math.Abs(expected) * check.GetProperty("tolerance").GetProperty("relative").GetDouble(), check.GetProperty("id").GetString());
    }

    private static Formula Gelatin(double bloom, Dose dose, Ingredient? agent = null) => Formula.Named("jelly").Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add((agent ?? Hydrocolloids.GelatinTypeA).WithGrade(new(GradeScale.Bloom, bloom)), dose, l => l.Labelled("gelatin"))).Build();

    [Theory]
    [InlineData("bloom-sub-250-to-160")]
    [InlineData("bloom-sub-160-to-250")]
    [InlineData("bloom-sub-225-to-200")]
    [InlineData("bloom-sub-200-to-225")]
    public void Grade_of_a_formula_is_adjusted(string id)
    {
        JsonElement check = Check(id);
        GradeAdjustment adjusted = Gelatin(Given(check, "B1"), Dose.Percent(Given(check, "m1_g")).OfBase).AdjustGrade("gelatin", new(GradeScale.Bloom, Given(check, "B2")));

        Near(adjusted.Dose!.PercentByMass, check, "p_0_5");
        Near(adjusted.DoseByOtherRule!.PercentByMass, check, "p_1");
    }

    [Fact]
    public void Packet_becomes_sheets()
    {
        JsonElement check = Check("leaf-count-from-packet");
        var gold = new GelatinPiece("gold sheet", NumberRange.Single(Given(check, "sheet_bloom")), Given(check, "sheet_g"));
        Formula packet = Gelatin(Given(check, "packet_bloom"), Dose.Percent(Given(check, "packet_g")).OfBase);

        SheetAdjustment sheets = packet.AdjustSheets("gelatin", gold, Mass.FromGrams(100));
        Near(sheets.Count, check, "sheets_sqrt_rule");
        Near(sheets.CountByOtherRule, check, "sheets_linear_rule");
        Near(packet.AdjustSheets("gelatin", gold, Mass.FromGrams(100), GradeRule.Proportional).Count, check, "sheets_linear_rule");
    }

    [Theory]
    [InlineData("bloom-scale-200-2")]
    [InlineData("bloom-scale-200-3")]
    [InlineData("bloom-scale-225-2")]
    [InlineData("bloom-scale-160-3.5")]
    [InlineData("bloom-scale-250-6.67")]
    public void Firmness_of_a_gelatin_jelly_is_predicted(string id)
    {
        JsonElement check = Check(id);
        StrengthForecast forecast = Gelatin(Given(check, "bloom"), Dose.Percent(Given(check, "c_percent")).OfTotal).PredictStrength("gelatin");

        Near(forecast.Value!.Value, check, "F_g");
        forecast.Reliance.Should().Be(Reliance.Predictive);
        forecast.Unit.Should().Be("g");
        forecast.Range!.Value.Contains(forecast.Value.Value).Should().BeTrue();
    }

    [Fact]
    public void Dose_for_a_firmness_follows_from_a_published_series()
    {
        JsonElement check = Check("fit-inverse-gelatin"), series = Check("fit-gelatin-nguyen-0oil");
        double[] x = [.. series.GetProperty("given").GetProperty("x").EnumerateArray().Select(v => v.GetDouble())];
        double[] y = [.. series.GetProperty("given").GetProperty("y").EnumerateArray().Select(v => v.GetDouble())];
        var trial = new AgentTrial("gelatin-type-a", "kPa", x.Select((c, i) => new TrialPoint(c, y[i])));
        Formula jelly = Formula.Named("jelly").Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(2).OfBase)).Build();

        AgentDosing dosed = jelly.DosedForStrength("gelatin-type-a", trial, Given(check, "target_kPa"));
        Near(dosed.Percent!.Value, check, "c_percent");
        dosed.Standing.Should().Be(DoseStanding.Measured);
        dosed.Window!.Value.Contains(dosed.Percent.Value).Should().BeTrue();
        // The dose is rounded up to four digits: n ln(1.001) is 0.2 %.
        dosed.Formula!.PredictStrength("gelatin-type-a", trial).Value!.Value.Should().BeApproximately(5, 5 * 0.004);
    }
}
