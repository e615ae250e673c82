using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Tests.Compatibility.Cases;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Rules about alcohol and dissolved solids: where nothing may fire, and practitioners' cases.</summary>
public sealed class SolventRulesTests
{
    private static readonly RuleSet s_solvents = RuleSet.Standard.Only(
        "alcohol-boils-too-low", "alcohol-while-hydrating", "alcohol-in-the-gel", "ethanol-in-the-gel", "solids-while-hydrating", "solids-of-the-gel", "beyond-solubility");

    /// <summary>Alcohol in the sol gave a harder gelatin gel, and wine with sugar promoted gelling (a paper): wine is no trouble.</summary>
    [Fact]
    public void Gelatin_in_wine_is_no_trouble()
        => DoseCases.In(Pantry.WhiteWine, Hydrocolloids.GelatinTypeA, 1.5).Review(s_solvents).Should().BeEmpty();

    /// <summary>Up to 15 % by weight ethanol raised the strength of calcium alginate gels (a study of 2016).</summary>
    [Fact]
    public void Alginate_at_fifteen_percent_of_ethanol_is_no_trouble()
        => SolventCases.Blend(Pantry.Spirit40, 45, Hydrocolloids.SodiumAlginate, 1).Review(s_solvents).Should().BeEmpty();

    /// <summary>30 % sucrose multiplied the strength of agar gels by 1.2–1.8 (a study): sugar stirred in afterwards is no trouble.</summary>
    [Fact]
    public void Agar_with_much_sugar_afterwards_is_no_trouble()
        => IonCases.Later(Pantry.Water, Hydrocolloids.Agar, 0.5, Pantry.Sucrose, 100).Review(s_solvents).Should().BeEmpty();

    /// <summary>
    /// 5 parts of 40 % vodka with 3 of water are 25 % vol and a warning; three quarters of it are 30 %, where a set is not promised beyond.
    /// The case leaves contraction out (under 1 point).
    /// </summary>
    [Theory, Trait("Case", "PC-028")]
    [InlineData(5.0 / 8, 25, Severity.Caution)]
    [InlineData(0.85, 34, Severity.Conflict)]
    public void How_strong_a_gelatin_shot_may_be(double spiritByVolume, double alcoholByVolume, Severity expected)
    {
        // 40 % vol spirit weighs 948 kg/m³, water 998 kg/m³
        double spirit = spiritByVolume * 948, water = (1 - spiritByVolume) * 998;

        Finding finding = SolventCases.Blend(Pantry.Spirit40, 100 * spirit / (spirit + water), Hydrocolloids.GelatinTypeA, 0.5)
            .Review(s_solvents).Should().ContainSingle(f => f.Id == "alcohol-in-the-gel").Subject;

        finding.Severity.Should().Be(expected);
        finding.Evidence[0].Value.Should().BeApproximately(alcoholByVolume, 1);
    }

    /// <summary>200 g of salt in 500 g of water are 40 g per 100 g, over 35.9: 20.5 g stay undissolved, within 5 %; 50 g are fine.</summary>
    [Fact, Trait("Case", "PC-025")]
    public void Crystals_in_the_agar_are_salt()
    {
        Formula much = IonCases.With(Pantry.WaterDistilled, Hydrocolloids.Agar, 3, Pantry.Salt, 40);

        Finding finding = much.Review(s_solvents).Should().ContainSingle(f => f.Id == "beyond-solubility").Subject;

        finding.Severity.Should().Be(Severity.Conflict);
        // Table salt holds 0.2 % of water of its own.
        finding.Evidence[0].Value.Should().BeApproximately(40, 40 * 0.005);
        ((finding.Evidence[0].Value - 35.9) * 5).Should().BeApproximately(20.5, 20.5 * 0.05);
        IonCases.With(Pantry.WaterDistilled, Hydrocolloids.Agar, 3, Pantry.Salt, 10).Review(s_solvents).Should().BeEmpty();
    }

    /// <summary>A jam that boils down is judged as it sets: 40 °Brix with a third boiled off are 60.</summary>
    [Fact]
    public void Solids_count_as_the_gel_sets()
    {
        Formula jam = IonCases.Later(Pantry.AppleJuice, Hydrocolloids.PectinHighMethoxyl, 0.8, Pantry.Sucrose, 48);

        jam.Review(s_solvents).Should().ContainSingle(f => f.Id == "solids-of-the-gel" && f.Severity == Severity.Conflict);
        jam.WithProcess(new ProcessPlan { Losses = new Losses { Evaporation = Loss.Percent(33) } }).Review(s_solvents).Should().NotContain(f => f.Id == "solids-of-the-gel");
    }
}
