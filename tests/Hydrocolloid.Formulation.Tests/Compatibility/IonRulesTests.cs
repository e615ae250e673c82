using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Tests.Compatibility.Cases;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Rules about ions: where nothing may fire, and practitioners' cases.</summary>
public sealed class IonRulesTests
{
    private static readonly RuleSet s_ions = RuleSet.Standard.Only(
        "calcium-while-hydrating", "salt-while-hydrating", "gelling-ions-missing", "calcium-missing", "potassium-missing", "salts-missing",
        "too-much-calcium", "too-much-calcium-for-dose", "too-much-potassium");

    /// <summary>Alginate is set in the bath: no calcium is asked for in its mix.</summary>
    [Fact]
    public void Alginate_for_a_calcium_bath_needs_no_calcium_in_the_mix()
        => DoseCases.In(Pantry.WaterDistilled, Hydrocolloids.SodiumAlginate, 0.7).Review(s_ions).Should().BeEmpty();

    /// <summary>A sparingly soluble calcium salt beside alginate is how it is set from inside, not what stops it from dissolving.</summary>
    [Fact]
    public void A_slow_calcium_salt_does_not_hinder_alginate()
        => IonCases.With(Pantry.WaterDistilled, Hydrocolloids.SodiumAlginate, 1, Pantry.CalciumCarbonate, 0.1).Review(s_ions).Should().BeEmpty();

    /// <summary>Kappa gels with the casein of milk, and needs no potassium there.</summary>
    [Fact]
    public void Kappa_carrageenan_in_milk_needs_no_potassium()
        => DoseCases.In(Pantry.SkimmedMilk, Hydrocolloids.CarrageenanKappa, 0.3).Review(s_ions).Should().BeEmpty();

    /// <summary>What casein holds does not hinder gellan or pectin: the total calcium of milk may not be held against them.</summary>
    [Theory]
    [InlineData("gellan-low-acyl")]
    [InlineData("pectin-low-methoxyl")]
    [InlineData("pectin-amidated-low-methoxyl")]
    public void Milk_is_no_trouble_for_gellan_and_pectin(string agent)
        => DoseCases.In(Pantry.WholeMilk, Catalogue.BuiltIn.Get(agent), 0.5).Review(s_ions).Should().BeEmpty();

    /// <summary>High-acyl gellan hardly minds ions, before and after (a producer).</summary>
    [Fact]
    public void High_acyl_gellan_asks_for_no_ions_and_minds_none()
    {
        DoseCases.In(Pantry.WaterDistilled, Hydrocolloids.GellanHighAcyl, 0.4).Review(s_ions).Should().BeEmpty();
        DoseCases.In(Pantry.WaterSparklingCalciumRich, Hydrocolloids.GellanHighAcyl, 0.4).Review(s_ions).Should().BeEmpty();
    }

    /// <summary>Agar sets without ions and does not come down with calcium (a handbook).</summary>
    [Fact]
    public void Agar_asks_for_no_ions_and_minds_none()
    {
        DoseCases.In(Pantry.WaterDistilled, Hydrocolloids.Agar, 0.5).Review(s_ions).Should().BeEmpty();
        IonCases.With(Pantry.WaterHard, Hydrocolloids.Agar, 0.5, Pantry.CalciumLactate, 1).Review(s_ions).Should().BeEmpty();
    }

    /// <summary>Acid sets low-acyl gellan and low methoxyl pectin as well: a sour mix needs no calcium.</summary>
    [Fact]
    public void In_acid_gellan_and_pectin_need_no_calcium()
    {
        IonCases.Later(Pantry.WaterDistilled, Hydrocolloids.GellanLowAcyl, 0.3, Pantry.CitricAcid, 0.3).Review(s_ions).Should().BeEmpty();
        IonCases.Later(Pantry.WaterDistilled, Hydrocolloids.PectinLowMethoxyl, 0.8, Pantry.CitricAcid, 0.3).Review(s_ions).Should().BeEmpty();
    }

    /// <summary>0.4, 0.8 and 1.2 % in deionised water: the dose is fine, the ion is missing; 0.294 g of the dihydrate in half a litre give 4 mmol/L, within 1 %.</summary>
    [Theory, Trait("Case", "PC-008")]
    [InlineData(0.4)]
    [InlineData(0.8)]
    [InlineData(1.2)]
    public void Gellan_in_deionised_water_lacks_calcium(double percentOfWater)
    {
        Formula formula = DoseCases.In(Pantry.WaterDistilled, Hydrocolloids.GellanLowAcyl, percentOfWater);

        ValueList<Finding> findings = formula.Review();

        findings.Should().NotContain(f => f.Id == "dose-under-gelling-minimum");
        Finding missing = findings.Should().ContainSingle(f => f.Id == "gelling-ions-missing").Subject;
        missing.Severity.Should().Be(Severity.Conflict);
        LineAdded added = missing.Remedies.Should().ContainSingle().Which.Change.Should().BeOfType<LineAdded>().Subject;
        added.Ingredient.Should().Be(Pantry.CalciumChloride);
        // The case counts 4 mmol per litre of water; here it is per kg of the mix, which the gellan makes heavier by its own share.
        double gramsInHalfALitre = added.Dose.PercentByMass / 100 * 500 / (1 + percentOfWater / 100);
        gramsInHalfALitre.Should().BeApproximately(0.294, 0.294 * 0.01);
    }

    /// <summary>10.4 mmol/L thicken alginate, which is a caution; its acid is the conflict.</summary>
    [Fact, Trait("Case", "PC-009")]
    public void Ten_millimoles_of_calcium_are_a_caution_for_alginate()
    {
        Ingredient juice = Ingredient.Own("fortified-juice", "Fortified juice").WithComposition(Composition.Per100Grams(water: 88, sugars: 12, calcium: 41.67)).WithPh(4.4);

        Finding finding = DoseCases.In(juice, Hydrocolloids.SodiumAlginate, 0.7).Review(s_ions).Should().ContainSingle(f => f.Id == "calcium-while-hydrating").Subject;

        finding.Severity.Should().Be(Severity.Caution);
        finding.Evidence[0].Value.Should().BeApproximately(10.4, 0.1);
    }

    /// <summary>Milk has 29.9 mmol/L, within 5 % as the catalogue's milk goes: direct alginate is a conflict, the reverse bath is not.</summary>
    [Fact, Trait("Case", "PC-010")]
    public void Alginate_in_milk_is_a_conflict_and_the_reverse_bath_is_not()
    {
        Formula direct = DoseCases.In(Pantry.WholeMilk, Hydrocolloids.SodiumAlginate, 0.7);

        Finding finding = direct.Review(s_ions).Should().ContainSingle(f => f.Id == "calcium-while-hydrating").Subject;

        finding.Severity.Should().Be(Severity.Conflict);
        (finding.Evidence[0].Value * 1.03).Should().BeApproximately(29.9, 29.9 * 0.05, "a litre of milk weighs 1.03 kg");
        finding.Remedies.Should().ContainSingle(r => r.Id == "reverse-bath").Which.Apply(direct).Review(s_ions).Should().BeEmpty();
    }
}
