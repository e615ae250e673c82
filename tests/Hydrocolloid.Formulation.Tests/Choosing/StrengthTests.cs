using CsCheck;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Tests.Formulas;

namespace Hydrocolloid.Formulation.Tests.Choosing;

public class StrengthTests
{
    private static readonly Ingredient s_gelatin = Hydrocolloids.GelatinTypeA.WithGrade(new(GradeScale.Bloom, 200));

    private static readonly AgentTrial s_trial = new("agar", "g/cm²",
        [new(0.4, 61), new(0.6, 118), new(0.8, 203), new(1.0, 290), new(1.2, 405)], grade: new(GradeScale.GelStrength, 900), conditions: "pear juice, 20 °C, 24 h");

    [Fact]
    public void More_gelatin_is_never_softer()
        => Gen.Select(Gen.Double[1.5, 9], Gen.Double[1, 1.1], Gen.Double[50, 300]).Sample((percent, more, bloom) =>
        {
            Ingredient lot = Hydrocolloids.GelatinTypeA.WithGrade(new(GradeScale.Bloom, bloom));
            StrengthForecast less = Mixes.Simple(percent, lot).PredictStrength(lot.Id), firmer = Mixes.Simple(percent * more, lot).PredictStrength(lot.Id);
            return firmer.Value >= less.Value && firmer.Range!.Value.Min >= less.Range!.Value.Min;
        });

    [Fact]
    public void More_is_never_softer_by_a_rising_trial()
        => Gen.Select(Gen.Double[0.05, 3], Gen.Double[1, 2]).Sample((percent, more) =>
            Mixes.Simple(percent * more, Hydrocolloids.Agar).PredictStrength("agar", s_trial).Value >= Mixes.Simple(percent, Hydrocolloids.Agar).PredictStrength("agar", s_trial).Value);

    [Theory]
    [InlineData("carrageenan-kappa", "ion form")]
    [InlineData("carrageenan-iota", "ion form")]
    [InlineData("sodium-alginate", "calcium")]
    [InlineData("gellan-low-acyl", "ions")]
    [InlineData("pectin-low-methoxyl", "calcium")]
    [InlineData("agar", "first guess")]
    [InlineData("gelatin-fish", "first guess")]
    [InlineData("curdlan", "published relation")]
    public void Where_no_curve_is_predictive_there_is_no_number(string id, string reason)
    {
        Ingredient agent = Catalogue.BuiltIn.Get(id);
        StrengthForecast forecast = Mixes.Simple(1, agent.WithGrade(new(StrengthModel.For(agent).Scale ?? GradeScale.GelStrength, 800))).PredictStrength(id);

        forecast.Value.Should().BeNull();
        forecast.Range.Should().BeNull();
        forecast.Reliance.Should().Be(Reliance.QualitativeOnly);
        forecast.Explanation.Should().Contain(reason).And.Contain("trial");
    }

    [Fact]
    public void A_number_is_refused_where_the_curve_does_not_hold_and_says_why()
    {
        Mixes.Simple(3, Hydrocolloids.GelatinTypeA).PredictStrength("gelatin-type-a").Explanation.Should().Contain("grade is not stated");

        Formula mixed = Formula.Named("mixed").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(s_gelatin, Dose.Percent(3).OfBase).Add(Hydrocolloids.Agar, Dose.Percent(0.3).OfBase)).Build();
        mixed.PredictStrength("gelatin-type-a").Explanation.Should().Contain("agar is in the mix too");

        Formula raw = Formula.Named("raw pineapple").Base(b => b.Share(Pantry.PineappleJuiceRaw, 100)).Then("gel", p => p.Add(s_gelatin, Dose.Percent(3).OfBase)).Build();
        raw.PredictStrength("gelatin-type-a").Explanation.Should().Contain("protease-with-protein-gel");
        raw.PredictStrength("gelatin-type-a").Value.Should().BeNull();

        Mixes.Simple(3, s_gelatin).WithService(ServicePlan.None with { Audience = Audience.Infants }).PredictStrength("gelatin-type-a").Value.Should().BeNull();
    }

    [Fact, Trait("Case", "PC-038")]
    public void Firmness_of_no_agent_is_no_number()
    {
        Mixes.Simple(0, s_gelatin).PredictStrength("gelatin-type-a").ToString().Should().Contain("There is none in the mix");
        Mixes.Simple(0, Hydrocolloids.Agar).PredictStrength("agar", s_trial).Value.Should().BeNull();
    }

    [Fact]
    public void Outside_its_range_the_number_is_marked_and_fat_is_noted()
    {
        Mixes.Simple(1, s_gelatin).PredictStrength("gelatin-type-a").ToString().Should().Contain("is outside 1.5–10");
        Formula cream = Formula.Named("cream").Base(b => b.Share(Pantry.WholeMilk, 100)).Then("gel", p => p.Add(s_gelatin, Dose.Percent(2).OfBase)).Build();
        cream.PredictStrength("gelatin-type-a").Notes.Should().Contain(n => n.Value.Contains("% of fat"));
    }

    [Fact]
    public void Own_trial_is_the_model_of_its_ingredient()
    {
        StrengthForecast at = Mixes.Simple(0.8, Hydrocolloids.Agar).PredictStrength("agar", s_trial);
        TrialPrediction fit = s_trial.Fit.StrengthAt(at.Percent);

        at.Value.Should().Be(fit.Strength);
        at.Range.Should().Be(fit.Prediction);
        at.Unit.Should().Be("g/cm²");
        at.Reliance.Should().Be(Reliance.Predictive);
        at.Notes.Should().ContainSingle().Which.Value.Should().EndWith("pear juice, 20 °C, 24 h");
        Mixes.Simple(2, Hydrocolloids.Agar).PredictStrength("agar", s_trial).Reliance.Should().Be(Reliance.Screening, "it is outside the doses of the trial");
    }

    [Fact]
    public void Dose_for_a_firmness_gives_that_firmness_in_the_formula()
        => Gen.Select(Gen.Double[30, 600], Gen.Int[0, 3]).Sample((strength, reference) =>
        {
            DosePercent percent = Dose.Percent(0.3);
            Dose dose = reference switch { 0 => percent.OfBase, 1 => percent.OfPreceding, 2 => percent.OfTotal, _ => percent.OfWater };
            Formula dosed = DosingTests.WithPieces(Hydrocolloids.Agar, dose).DosedForStrength("agent", s_trial, strength).Formula!;
            // A dose is good to four digits, and strength goes with its power 1.73.
            return Math.Abs(dosed.PredictStrength("agent", s_trial).Value!.Value / strength - 1) < 0.005;
        });

    [Fact]
    public void A_trial_that_does_not_reach_the_firmness_gives_no_dose()
    {
        var falling = new AgentTrial("agar", "kPa", [new(0.4, 9), new(0.8, 7), new(1.2, 4)], TrialCurve.Line);
        AgentDosing none = Mixes.Simple().DosedForStrength("agar", falling, 8);
        none.Formula.Should().BeNull();
        none.ToString().Should().Contain("does not rise");

        var critical = new AgentTrial("agar", "kPa", [new(0.4, 4), new(0.8, 9), new(1.2, 15)], criticalPercent: 0.2);
        Mixes.Simple(0.1).PredictStrength("agar", critical).Value.Should().BeNull();
        Mixes.Simple(0.5).DosedForStrength("agar", s_trial, 1e9).Formula.Should().BeNull("more than all of the mix is no dose");
        Mixes.Simple(0.5).WithService(ServicePlan.None with { Audience = Audience.Dysphagia }).PredictStrength("agar", s_trial).Value.Should().BeNull();
    }

    [Fact]
    public void A_trial_of_another_lot_is_refused()
    {
        FluentActions.Invoking(() => Mixes.Simple(0.5, Hydrocolloids.GellanLowAcyl).PredictStrength("gellan-low-acyl", s_trial)).Should().Throw<ArgumentException>().WithMessage("*the trial was made with 'agar'*");
        FluentActions.Invoking(() => Mixes.Simple(0.5, Hydrocolloids.Agar.WithGrade(new(GradeScale.GelStrength, 700))).DosedForStrength("agar", s_trial, 100)).Should().Throw<ArgumentException>().WithMessage("*700 g/cm²*900 g/cm²*");
    }

    [Fact]
    public void All_faults_of_a_trial_are_told_at_once()
        => FluentActions.Invoking(() => new AgentTrial("agar", "kPa", [new(0.1, 5, 1), new(0.1, 0), new(100, 3)], criticalPercent: 0.2)).Should().Throw<ArgumentException>()
            .WithMessage("*above the critical 0.2 %, but one is 0.1 %*Strengths must be above 0*under 100 %*standard deviation must be given for every point*");

    [Fact]
    public void A_trial_is_kept_as_a_document()
        => Gen.Select(Gen.Double[0.01, 99].Array[2, 8], Gen.Double[0.01, 1e6], Gen.Bool, Gen.Bool).Sample((doses, strength, line, weighted) =>
        {
            if (doses.Max() - doses.Min() < 1e-3)
            {
                return true;
            }

            var trial = new AgentTrial("house-agar", "kPa", doses.Select((d, i) => new TrialPoint(d, strength * (i + 1), weighted ? 0.1 * strength : null)), line ? TrialCurve.Line : TrialCurve.PowerLaw,
                line ? 0 : 0.005, new(GradeScale.GelStrength, 900), "pear juice, \"cold\"");
            string json = TrialJson.Write(trial);
            return TrialJson.Read(json) == trial && TrialJson.Write(TrialJson.Read(json)) == json;
        });

    [Theory]
    [InlineData("""{ "format": "hydrocolloid-trial", "version": 1, "agent": "agar", "strengthUnit": "kPa", "points": [ { "percent": 0.4, "strength": 3 } ] }""", "/points", "trial-unfit")]
    [InlineData("""{ "format": "hydrocolloid-trial", "version": 1, "agent": "agar", "strengthUnit": "kPa", "points": [ { "percent": 0.4, "strength": 3 }, { "percent": 120, "strength": 3 } ] }""", "/points/1/percent", "number-range")]
    [InlineData("""{ "format": "hydrocolloid-trial", "version": 1, "agent": "agar", "strengthUnit": "kPa", "points": [ { "percent": 0.4, "strength": 3 }, { "percent": 0, "strength": 3 } ] }""", "/points/1", "number-range")]
    [InlineData("""{ "format": "hydrocolloid-trial", "version": 1, "agent": "Agar!", "strengthUnit": " ", "curve": "cubic", "grade": { "scale": "stars", "value": 3 }, "points": [] }""", "/agent|/strengthUnit|/grade/scale|/curve", "id-invalid|text-blank|word-unknown|word-unknown")]
    [InlineData("""{ "format": "hydrocolloid-trial", "version": 1, "agent": "agar", "strengthUnit": "kPa", "mood": 1, "points": [ { "dose": 1 } ] }""", "/mood|/points/0/dose|/points/0/percent|/points/0/strength", "member-unknown|member-unknown|member-missing|member-missing")]
    [InlineData("""{ "format": "hydrocolloid-trial", "version": 2 }""", "/version", "version-newer")]
    [InlineData("""{ "format": "hydrocolloid-formula", "version": 1 }""", "/format", "format-unknown")]
    public void What_is_no_trial_is_refused_with_every_reason(string json, string places, string ids)
    {
        FormulaJsonException refusal = FluentActions.Invoking(() => TrialJson.Read(json)).Should().Throw<FormulaJsonException>().Which;
        refusal.Problems.Select(p => p.Pointer).Should().BeEquivalentTo(places.Split('|'));
        refusal.Problems.Select(p => p.Id).Should().BeEquivalentTo(ids.Split('|'));
        refusal.Message.Should().StartWith("The document is not a trial:");
    }
}
