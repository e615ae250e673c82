using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Tests.Compatibility.Cases;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Rules about pH: where folklore sees trouble and the literature none, and practitioners' cases.</summary>
public sealed class AcidRulesTests
{
    private static readonly RuleSet s_acid = RuleSet.Standard.Only("ph-while-heated", "ph-while-hydrating", "ph-of-the-gel", "gelatin-at-isoelectric-point");

    /// <summary>Acid added to dissolved agar without further heating cost no gelling power (a paper of 1979); the gel stands pH 2.5 and more.</summary>
    [Fact]
    public void Acid_stirred_into_dissolved_agar_is_no_trouble()
        => IonCases.Later(Pantry.PearJuice, Hydrocolloids.Agar, 0.5, Pantry.CitricAcid, 0.5)
            .WithProcess(new ProcessPlan { HydrateFor = UnitsNet.Duration.FromMinutes(4) }).Review(s_acid).Should().BeEmpty();

    /// <summary>In a set kappa gel bound potassium protects the chains (a trade note): only the hot sol minds.</summary>
    [Fact]
    public void Acid_stirred_into_dissolved_kappa_carrageenan_is_no_trouble()
        => IonCases.Later(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Pantry.CitricAcid, 0.2).Review(s_acid).Should().BeEmpty();

    /// <summary>Acid added to a gelatin sol at 40–98 °C left its hardness as it was (a paper of 1976); it is the heating with acid that harms.</summary>
    [Fact]
    public void Gelatin_dissolved_in_a_sour_liquid_under_80_degrees_keeps_its_gelling()
        => DoseCases.In(Pantry.OrangeJuice, Hydrocolloids.GelatinTypeA, 1.5).Review(s_acid).Should().NotContain(f => f.Id == "ph-while-heated");

    /// <summary>Konjac's viscosity was the same from pH 2 to 8, and after 5 h at pH 3.5 and 70 °C: beside another gelling agent nothing is asked of its pH.</summary>
    [Fact]
    public void Konjac_beside_a_gelling_agent_may_be_sour()
        => IonCases.With(Pantry.OrangeJuice, Hydrocolloids.KonjacGlucomannan, 0.3, Hydrocolloids.XanthanGum, 0.3).Review(s_acid).Should().BeEmpty();

    /// <summary>Low methoxyl pectin gels up to neutral with calcium; a milk that is heated for a minute is no hot holding.</summary>
    [Fact]
    public void Low_methoxyl_pectin_in_milk_is_no_trouble()
        => DoseCases.In(Pantry.WholeMilk, Hydrocolloids.PectinLowMethoxyl, 0.8).Review(s_acid).Should().BeEmpty();

    [Fact, Trait("Case", "PC-002")]
    public void Agar_boiled_with_acid_is_a_caution_and_never_a_matter_of_enzymes()
    {
        Formula boiled = DoseCases.In(Pantry.PineappleJuiceRaw, Hydrocolloids.Agar, 0.6).WithProcess(new ProcessPlan { HydrateFor = UnitsNet.Duration.FromMinutes(10) });

        boiled.Review(s_acid).Should().ContainSingle(f => f.Id == "ph-while-heated" && f.Severity == Severity.Caution);
    }

    /// <summary>pH 2.5 blocks direct alginate: 2.5 under 4.</summary>
    [Fact, Trait("Case", "PC-009")]
    public void Alginate_in_cranberry_juice_is_a_conflict_of_its_acid()
    {
        ValueList<Finding> findings = DoseCases.In(Pantry.CranberryJuice, Hydrocolloids.SodiumAlginate, 0.7).Review();

        Finding acid = findings.Should().ContainSingle(f => f.Id == "ph-of-the-gel").Subject;
        acid.Severity.Should().Be(Severity.Conflict);
        acid.Evidence[0].Value.Should().BeApproximately(2.5, 0.1);
        acid.Evidence[0].Limit.Min.Should().Be(4);
        acid.Remedies.Should().Contain(r => r.Id == "reverse-bath");
    }

    /// <summary>Bicarbonate cannot lift the pH to the 10 that konjac sets at.</summary>
    [Fact, Trait("Case", "PC-015")]
    public void Konjac_with_alkali_that_is_too_weak_is_a_conflict()
    {
        Ingredient bicarbonate = Ingredient.Own("bicarbonate-water", "Bicarbonate water").WithComposition(Composition.Per100Grams(water: 98.9)).WithPh(8.2);
        Ingredient lime = Ingredient.Own("lime-water", "Lime water").WithComposition(Composition.Per100Grams(water: 99.7)).WithPh(12.4);

        DoseCases.In(bicarbonate, Hydrocolloids.KonjacGlucomannan, 2.5).Review(s_acid).Should().ContainSingle(f => f.Id == "ph-of-the-gel" && f.Severity == Severity.Conflict);
        DoseCases.In(lime, Hydrocolloids.KonjacGlucomannan, 2.5).Review(s_acid).Should().BeEmpty();
    }
}
