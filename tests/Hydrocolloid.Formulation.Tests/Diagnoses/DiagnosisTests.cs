using CsCheck;
using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Serialization;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Diagnoses;

/// <summary>Failures of practitioners (the ids are those of the cases): the cause must be among the first two, with what shows it.</summary>
public sealed class DiagnosisTests
{
    [Fact, Trait("Case", "PC-001")]
    public void PC_001_enough_agar_that_was_not_boiled()
    {
        Diagnosis diagnosis = One(Pantry.Water, Hydrocolloids.Agar, 1.6).Diagnose(Symptom.TooSoft, new ProcessRecord { HydratedAt = C(85) });

        diagnosis.Causes.Take(2).Should().Contain(c => c.Id == "hydration-temperature" && c.Standing == CauseStanding.Shown);
        diagnosis.Causes[0].Evidence.Should().Contain(e => e.Value == 85);
        diagnosis.Causes.Should().NotContain(c => c.Id == "dose-under-gelling-minimum", "1.5 % is well over the minimum");
        diagnosis.Rescue.Should().Contain(r => r.Value.Contains("melt it"), "agar melts again");
    }

    [Fact, Trait("Case", "PC-005")]
    public void PC_005_raw_kiwi_in_gelatin()
    {
        Diagnosis diagnosis = One(Pantry.KiwiJuiceRaw, Hydrocolloids.GelatinTypeA, 1.8).Diagnose(Symptom.DidNotSet);

        diagnosis.Causes[0].Id.Should().Be("protease-with-protein-gel");
        diagnosis.Causes[0].Standing.Should().Be(CauseStanding.Shown);
        diagnosis.Causes[0].Remedies.Should().NotBeEmpty();
    }

    [Fact, Trait("Case", "PC-006")]
    public void PC_006_leaves_that_dissolved_in_the_soaking_water()
    {
        Formula cream = Formula.Named("set cream").Base(b => b.Weigh(Pantry.Cream35, Mass.FromGrams(2000)).Weigh(Pantry.WholeMilk, Mass.FromGrams(1018)))
            .Then("sweeten", p => p.Weigh(Pantry.Sucrose, Mass.FromGrams(230), DoseReference.Base))
            .Then("gel", p => p.Weigh(Hydrocolloids.GelatinTypeB, Mass.FromGrams(25), DoseReference.Base)).Build();

        Diagnosis diagnosis = cream.Diagnose(Symptom.DidNotSet, new ProcessRecord { SoakedAt = C(28) });

        diagnosis.Causes.Take(2).Should().Contain(c => c.Id == "soak-water-too-warm" && c.Standing == CauseStanding.Shown);
    }

    [Fact, Trait("Case", "PC-008")]
    public void PC_008_gellan_in_deionised_water()
    {
        Diagnosis diagnosis = One(Pantry.WaterDistilled, Hydrocolloids.GellanLowAcyl, 0.8).Diagnose(Symptom.DidNotSet);

        diagnosis.Causes[0].Id.Should().Be("gelling-ions-missing");
        diagnosis.Causes.Should().NotContain(c => c.Standing == CauseStanding.Shown && c.Id.StartsWith("dose", StringComparison.Ordinal));
    }

    [Fact, Trait("Case", "PC-009")]
    public void PC_009_cranberry_pearls_that_dissolve()
    {
        Diagnosis diagnosis = One(Pantry.CranberryJuice, Hydrocolloids.SodiumAlginate, 0.6).Diagnose(Symptom.SpheresBurst);

        diagnosis.Causes.Take(2).Should().Contain(c => c.Id == "ph-of-the-gel" && c.Standing == CauseStanding.Shown);
        One(Pantry.Water, Hydrocolloids.SodiumAlginate, 0.6).Diagnose(Symptom.SpheresBurst, new ProcessRecord { Ph = 2.5 })
            .Causes[0].Id.Should().Be("ph-measured");
    }

    [Fact, Trait("Case", "PC-014")]
    public void PC_014_noodles_with_a_quarter_of_the_methylcellulose()
    {
        Diagnosis diagnosis = One(Pantry.Water, Hydrocolloids.Methylcellulose, 0.245, Texture.Firm).Diagnose(Symptom.Broke, new ProcessRecord { HydratedAt = C(10) });

        diagnosis.Causes.Take(2).Should().Contain(c => c.Id.StartsWith("dose-", StringComparison.Ordinal) && c.Standing == CauseStanding.Shown);
        diagnosis.Causes.Where(c => c.Id == "methylcellulose-not-hydrated").Should().OnlyContain(c => c.Standing == CauseStanding.Unlikely, "it was chilled to 10 °C");
    }

    [Fact, Trait("Case", "PC-026")]
    public void PC_026_agar_under_a_lamp_did_not_melt()
    {
        Diagnosis diagnosis = One(Pantry.Water, Hydrocolloids.Agar, 1.5).Diagnose(Symptom.MeltedAtService, new ProcessRecord { ServedAt = C(32.2) });

        diagnosis.Causes.Should().NotContain(c => c.Standing == CauseStanding.Shown);
        One(Pantry.Water, Hydrocolloids.Agar, 1.5).Diagnose(Symptom.Weeping).Causes[0].Id.Should().Be("agar-weeps");
    }

    [Fact, Trait("Case", "PC-027")]
    public void PC_027_hot_agar_into_cold_cream()
    {
        Formula cream = Formula.Named("cream").Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(100), l => l.At(C(90))).Weigh(Pantry.Cream35, Mass.FromGrams(750), l => l.At(C(8))))
            .Then("gel", p => p.Weigh(Hydrocolloids.Agar, Mass.FromGrams(3), DoseReference.Base)).Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) }).Build();

        cream.Diagnose(Symptom.SetTooEarly).Causes.Take(2).Should().Contain(c => c.Id == "joined-too-cold" && c.Standing == CauseStanding.Shown);
        cream.Diagnose(Symptom.Grainy).Causes[0].Id.Should().Be("joined-too-cold");
    }

    [Fact]
    public void What_was_weighed_counts_not_what_was_planned()
    {
        Formula formula = One(Pantry.PearJuice, Hydrocolloids.Agar, 0.5, Texture.Firm);
        var record = new ProcessRecord { Weighed = ValueList<WeighedLine>.From([new("pear-juice", Mass.FromGrams(1000)), new("agar", Mass.FromGrams(1))]) };

        Diagnosis diagnosis = formula.Diagnose(Symptom.DidNotSet, record);

        record.AsMade(formula).Line("agar").Dose.PercentByMass.Should().BeApproximately(0.1, 1e-12);
        diagnosis.Causes.Take(2).Should().Contain(c => c.Id == "weighed-otherwise");
        formula.Diagnose(Symptom.TooFirm, record).Causes.Should().NotContain(c => c.Id == "weighed-otherwise", "a fifth of the agar makes nothing firmer");
    }

    [Fact]
    public void Water_that_boiled_off_makes_it_firmer()
    {
        Formula formula = One(Pantry.Water, Hydrocolloids.Agar, 0.5);
        var record = new ProcessRecord { Weighed = ValueList<WeighedLine>.From([new("water", Mass.FromGrams(1000)), new("agar", Mass.FromGrams(5))]), CastMass = Mass.FromGrams(804) };

        LikelyCause cause = formula.Diagnose(Symptom.TooFirm, record).Causes[0];

        cause.Id.Should().Be("boiled-down");
        cause.Explanation.Should().Contain("25 %", "1005 / 804 = 1.25");
    }

    [Fact]
    public void With_nothing_known_it_says_what_to_ask()
    {
        Diagnosis diagnosis = One(Pantry.Water, Hydrocolloids.Agar, 0.5).Diagnose(Symptom.TooSoft);

        diagnosis.Causes.Should().OnlyContain(c => c.Standing != CauseStanding.Shown);
        diagnosis.AskFirst.Should().NotBeEmpty().And.Contain(q => q.Contains("hot"));
        diagnosis.Causes.Should().OnlyContain(c => !c.Citations.IsEmpty);
    }

    [Fact]
    public void What_is_recorded_and_in_order_is_unlikely()
    {
        var record = new ProcessRecord { HydratedAt = C(98), HydratedFor = Duration.FromMinutes(4), Altitude = Length.Zero };

        One(Pantry.Water, Hydrocolloids.Agar, 0.5).Diagnose(Symptom.TooSoft, record).Causes.Single(c => c.Id == "agar-not-dissolved")
            .Standing.Should().Be(CauseStanding.Unlikely);
    }

    [Fact]
    public void Every_known_failure_concerns_an_agent_and_rules_that_exist()
    {
        string[] rules = [.. RuleSet.Standard.Select(r => r.Id)];
        foreach (KnownFailure failure in KnownFailure.All)
        {
            Catalogue.BuiltIn.Hydrocolloids.Should().Contain(i => failure.Concerns(i), failure.Id);
            failure.Rules.Should().BeSubsetOf(rules, failure.Id);
            failure.Symptoms.IsEmpty.Should().BeFalse(failure.Id);
        }

        SymptomsOfRules.Rules.Should().BeSubsetOf(rules);
        KnownFailure.All.Select(f => f.Id).Should().OnlyHaveUniqueItems().And.NotIntersectWith(rules);
    }

    [Theory]
    [InlineData("agar", 1)]
    [InlineData("pear-juice", 2)]
    public void A_record_that_does_not_fit_is_refused(string line, int times)
    {
        var record = new ProcessRecord { Weighed = ValueList<WeighedLine>.From(Enumerable.Repeat(new WeighedLine(line, Mass.FromGrams(5)), times)) };

        FluentActions.Invoking(() => One(Pantry.PearJuice, Hydrocolloids.Agar, 0.5).Diagnose(Symptom.TooSoft, record)).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Records_are_read_from_documents()
    {
        ProcessRecord record = ProcessRecordJson.Read("""
            { "format": "hydrocolloid-record", "version": 1,
              "weighed": [ { "line": "water", "value": 1, "unit": "kg" }, { "line": "agar", "value": 5, "unit": "g" } ],
              "hydratedAt": { "value": 185, "unit": "[degF]" }, "hydratedFor": { "value": 4, "unit": "min" }, "ph": 3.4, "castMass": { "value": 950, "unit": "g" }, "covered": false }
            """);

        record.HydratedAt!.Value.DegreesCelsius.Should().BeApproximately(85, 1e-9);
        record.Should().Be(new ProcessRecord
        {
            Weighed = ValueList<WeighedLine>.From([new("water", Mass.FromGrams(1000)), new("agar", Mass.FromGrams(5))]),
            HydratedAt = record.HydratedAt,
            HydratedFor = Duration.FromMinutes(4),
            Ph = 3.4,
            CastMass = Mass.FromGrams(950),
            Covered = false,
        });
    }

    [Theory]
    [InlineData("""{ "format": "hydrocolloid-record", "version": 1, "ph": 15 }""", "number-range")]
    [InlineData("""{ "format": "hydrocolloid-record", "version": 1, "castAt": { "value": 60, "unit": "degrees" } }""", "unit-unknown")]
    [InlineData("""{ "format": "hydrocolloid-record", "version": 1, "weather": "fine" }""", "member-unknown")]
    [InlineData("""{ "format": "hydrocolloid-record", "version": 2 }""", "version-newer")]
    [InlineData("""{ "format": "hydrocolloid-formula", "version": 1 }""", "format-unknown")]
    public void Bad_records_are_refused_with_the_reason(string json, string problem)
        => FluentActions.Invoking(() => ProcessRecordJson.Read(json)).Should().Throw<FormulaJsonException>().Which.Problems.Should().Contain(p => p.Id == problem);

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    [Fact]
    public void A_record_is_written_and_read_without_loss()
    {
        Gen<double?> some(double from, double to) => Gen.Double[from, to].Nullable();
        (from weighed in Gen.Select(Gen.String[Gen.Char.AlphaNumeric, 1, 20], Gen.Double[0, 1e6]).Array[0, 4]
         from celsius in some(-100, 999).Array[4]
         from seconds in some(0, 1e9).Array[4]
         from other in Gen.Select(some(0, 14), some(0.001, 1e6), some(-500, 9000))
         from flags in Gen.Bool.Nullable().Array[2]
         select new ProcessRecord
         {
             Weighed = ValueList<WeighedLine>.From(weighed.Select(w => new WeighedLine(w.Item1, Mass.FromGrams(w.Item2)))),
             SoakedAt = Degrees(celsius[0]),
             HydratedAt = Degrees(celsius[1]),
             CastAt = Degrees(celsius[2]),
             ServedAt = Degrees(celsius[3]),
             HydratedFor = Time(seconds[0]),
             LeftToSet = Time(seconds[1]),
             HeldFor = Time(seconds[2]),
             StoredFor = Time(seconds[3]),
             Ph = other.Item1,
             CastMass = other.Item2 is { } g ? Mass.FromGrams(g) : null,
             Altitude = other.Item3 is { } m ? Length.FromMeters(m) : null,
             Covered = flags[0],
             Frozen = flags[1],
         }).Sample(record => ProcessRecordJson.Read(ProcessRecordJson.Write(record)).Should().Be(record));

        static Temperature? Degrees(double? celsius) => celsius is { } c ? Temperature.FromDegreesCelsius(c) : null;
        static Duration? Time(double? seconds) => seconds is { } s ? Duration.FromSeconds(s) : null;
    }

    [Fact]
    public void A_label_that_is_no_text_cannot_be_written()
        => FluentActions.Invoking(() => ProcessRecordJson.Write(new ProcessRecord { Weighed = ValueList<WeighedLine>.From([new WeighedLine("a\ud800", Mass.FromGrams(1))]) }))
            .Should().Throw<FormulaJsonException>().Which.Problems.Should().ContainSingle(p => p.Id == "text-invalid");

    private static Formula One(Ingredient liquid, Ingredient agent, double percent, Texture? texture = null) => Formula.Named("test").Base(b => b.Share(liquid, 100))
        .Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase)).Serve(new ServicePlan { Texture = texture }).Build();
}
