using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Tests.Compatibility.Cases;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>What the rules about enzymes, tannins and proteins must say, and where folklore sees trouble and the literature none.</summary>
public sealed class SensitivityRuleTests
{
    private const string Protease = "protease-with-protein-gel";

    public static TheoryData<string> GelsOfPolysaccharides { get; } = new(
        Catalogue.BuiltIn.OfRole(HydrocolloidRole.GellingAgent).Where(i => !i.Id.StartsWith("gelatin", StringComparison.Ordinal)).Select(i => i.Id));

    [Theory]
    [MemberData(nameof(GelsOfPolysaccharides))]
    public void Raw_pineapple_does_nothing_to_a_gel_of_a_polysaccharide(string agent)
    {
        // PC-002: a newspaper said that agar fails with raw papaya, pineapple and kiwi. An enzyme that cuts proteins has nothing to cut.
        Ingredient ingredient = Catalogue.BuiltIn.Get(agent);

        DoseCases.In(Pantry.PineappleJuiceRaw, ingredient, 1).Review().Should().NotContain(f => f.Id == Protease);
        ingredient.Profile!.Sensitivities.Should().Contain(s => s.To == SensitiveTo.Protease && s.Harm == Harm.None, "the catalogue says so");
    }

    [Theory]
    [InlineData("pineapple-juice-raw")]
    [InlineData("kiwi-juice-raw")]
    [InlineData("papaya-juice-raw")]
    [InlineData("ginger-juice")]
    public void Raw_fruit_with_gelatin_is_a_conflict_with_ways_out(string juice)
    {
        // R06, PC-005: heat the fruit, keep it out of the gel (not a juice), or change the agent.
        Finding finding = DoseCases.In(Catalogue.BuiltIn.Get(juice), Hydrocolloids.GelatinTypeA, 1.5).Review().Single(f => f.Id == Protease);

        finding.Severity.Should().Be(Severity.Conflict);
        finding.Lines.Should().Equal(juice, "gelatin-type-a");
        finding.Remedies.Select(r => r.Id).Should().Equal("fruit-heated", "other-agent");
    }

    [Fact]
    public void Raw_kiwi_folded_into_gelatin_has_three_ways_out()
    {
        // PC-005.
        Formula formula = Formula.Named("mould").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeB, Dose.Percent(1.5).OfBase))
            .Then("fruit", p => p.Add(Pantry.KiwiRaw, Dose.Percent(20).OfBase, l => l.Pieces())).Build();

        Finding finding = formula.Review().Single(f => f.Id == Protease);

        finding.Remedies.Select(r => r.Id).Should().Equal("fruit-heated", "fruit-on-the-plate", "other-agent");
        finding.Remedies[1].Apply(formula).FindLine("kiwi-raw").Should().BeNull();
    }

    [Fact]
    public void Heated_pineapple_is_that_of_the_pantry_and_heated_kiwi_is_made_of_the_raw_one()
    {
        Formula pineapple = DoseCases.In(Pantry.PineappleJuiceRaw, Hydrocolloids.GelatinTypeA, 1.5);
        Formula kiwi = DoseCases.In(Pantry.KiwiJuiceRaw, Hydrocolloids.GelatinTypeA, 1.5);

        Heated(pineapple).Lines[0].Ingredient.Should().Be(Pantry.PineappleJuiceCanned);
        Formula heated = Heated(kiwi);
        heated.Lines[0].Ingredient.BasedOn.Should().Be(Pantry.KiwiJuiceRaw);
        FormulaJson.Read(FormulaJson.Write(heated)).Should().Be(heated, "a document keeps that the enzyme has been ended");

        static Formula Heated(Formula f) => f.Review().Single(x => x.Id == Protease).Remedies.Single(r => r.Id == "fruit-heated").Apply(f);
    }

    [Fact]
    public void Agar_takes_the_place_of_gelatin_at_the_same_texture()
    {
        // Gelatin firm from 1.2 to 2.2 %, agar firm from 0.4 to 0.7 %: the middle of one is the middle of the other.
        double dose = 1.7 / (100 - 1.7) * 100;
        Formula formula = DoseCases.In(Pantry.PineappleJuiceRaw, Hydrocolloids.GelatinTypeA, dose, Texture.Firm);

        Formula changed = formula.Review().Single(f => f.Id == Protease).Remedies.Single(r => r.Id == "other-agent").Apply(formula);

        changed.Proportions.PercentOfContinuousMix(changed.Line("agar")).Should().BeApproximately(0.55, 0.001, "doses are rounded to four digits");
    }

    [Fact]
    public void What_has_no_active_enzyme_is_not_changed_by_heating_it()
        => Pantry.AppleJuice.WithoutActiveProtease().Should().Be(Pantry.AppleJuice);

    [Theory]
    [InlineData("carrageenan-kappa", "tannic acid made its gel stronger in the one study there is")]
    [InlineData("gellan-low-acyl", "it gels with the polyphenols of tea from pH 3 to 9")]
    [InlineData("pectin-low-methoxyl", "nothing is known against it")]
    public void Tannins_do_nothing_to(string agent, string because)
        => DoseCases.In(Pantry.GyokuroTea, Catalogue.BuiltIn.Get(agent), 0.5).Review().Should().NotContain(f => f.Id == "tannin-weakens-gel", because);

    [Fact]
    public void Fruit_with_few_tannins_is_no_reason_to_warn_of_agar()
        => DoseCases.In(Pantry.PearJuice, Hydrocolloids.Agar, 0.5, Texture.Firm).Review().Should().NotContain(f => f.Id == "tannin-weakens-gel");

    [Fact]
    public void Glycerol_counters_tannins_with_agar()
    {
        // Common practice; no amount is published, so none is offered as a remedy, but what is there counts.
        Formula plain = DoseCases.In(Pantry.GrapeJuiceRed, Hydrocolloids.Agar, 0.5, Texture.Firm);
        Formula with = plain.ToBuilder().Then("glycerol", p => p.Add(Pantry.Glycerol, Dose.Percent(1).OfBase)).Build();

        plain.Review().Single(f => f.Id == "tannin-weakens-gel").Severity.Should().Be(Severity.Caution);
        with.Review().Single(f => f.Id == "tannin-weakens-gel").Severity.Should().Be(Severity.Information);
    }

    [Fact]
    public void Kappa_carrageenan_sets_milk_at_a_dose_that_would_not_set_water()
    {
        // Carrageenan bulletins: flan-type milk gels at 0.2 %; 0.3 % is the least in water.
        DoseCases.In(Pantry.WholeMilk, Hydrocolloids.CarrageenanKappa, 0.2, Texture.Firm).Review().Where(f => f.Severity > Severity.Information)
            .Should().NotContain(f => f.Id.StartsWith("dose", StringComparison.Ordinal));
        DoseCases.In(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.2).Review().Should().Contain(f => f.Id == "dose-under-gelling-minimum");
    }

    [Fact]
    public void Kappa_carrageenan_that_only_keeps_cocoa_afloat_is_not_called_too_little()
        => DoseCases.In(Pantry.WholeMilk, Hydrocolloids.CarrageenanKappa, 0.02, Texture.Thickened).Review()
            .Should().NotContain(f => f.Id == "dose-in-milk" || f.Id == "dose-under-gelling-minimum", "0.02 % keeps the cocoa of chocolate milk suspended");

    [Fact]
    public void Agar_in_milk_is_no_trouble()
        => DoseCases.In(Pantry.WholeMilk, Hydrocolloids.Agar, 0.5, Texture.Firm).Review(RuleSet.Standard.Only("dose-in-milk", "casein-curdles-with-gum", Protease))
            .Should().BeEmpty("agar has no specific reaction with casein");
}
