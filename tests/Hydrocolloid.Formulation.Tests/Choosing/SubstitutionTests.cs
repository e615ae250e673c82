using CsCheck;
using Hydrocolloid.Formulation.Choosing;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Choosing;

public class SubstitutionTests
{
    private static Formula Jelly(Ingredient liquid, Ingredient agent, double percent, ServicePlan? service = null) => Formula.Named("Jelly").Base(b => b.Share(liquid, 100))
        .Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(5).OfBase))
        .Then("gel", p => p.Add(agent, Dose.Percent(percent).OfPreceding))
        .Then("season", p => p.Add(Pantry.Salt, Dose.Percent(0.1).OfBase))
        .Serve(service ?? ServicePlan.None).Build();

    private static double Percent(Formula formula, string label) => formula.Proportions.PercentOfContinuousMix(formula.Line(label));

    private static Formula TomatoSheet() => Formula.Named("Tomato sheet").Base(b => b.Share(Pantry.TomatoWater, 100))
        .Then("bind", p => p.Add(Pantry.SodiumCitrate, Dose.Percent(0.15).OfBase))
        .Then("gel", p => p.Add(Hydrocolloids.GellanLowAcyl, Dose.Percent(0.35).OfBase))
        .Then("set", p => p.Add(Pantry.CalciumLactate, Dose.Percent(0.15).OfBase))
        .Process(new ProcessPlan { HydrateAt = Temperature.FromDegreesCelsius(90), CastAt = Temperature.FromDegreesCelsius(70) })
        .Serve(new ServicePlan { Texture = Texture.Firm }).Build();

    [Fact]
    public void Agar_takes_the_place_of_gelatin_at_the_same_texture()
    {
        // 1.8 % of gelatin lies in the catalogue's window for a firm gel (1.2–2.2 %); that of agar is 0.4–0.7 %.
        Substitution agar = Jelly(Pantry.PearJuice, Hydrocolloids.GelatinTypeA, 1.8).Substitute("gelatin", "agar");

        agar.Texture.Should().Be(Texture.Firm);
        agar.IsSound.Should().BeTrue();
        agar.Formula!.Lines.Select(l => l.Label).Should().Equal("pear-juice", "sucrose", "agar", "salt");
        agar.Formula.Phases.Select(p => p.Name).Should().Equal("sweeten", "gel", "season");
        agar.Formula.Line("agar").Dose.Reference.Should().Be(DoseReference.Preceding, "the old agent was dosed on that");
        Percent(agar.Formula, "agar").Should().BeInRange(0.4, 0.7);
        agar.Formula.Service.Texture.Should().Be(Texture.Firm);
        agar.Steps.Select(s => s.Kind).Should().Equal(SubstitutionStepKind.AgentOut, SubstitutionStepKind.AgentIn, SubstitutionStepKind.PlanChanged);
        agar.Doses.Single().Citation.Should().Be(Hydrocolloids.Agar.Profile!.WindowFor(Texture.Firm)!.Percent.Citation);
        agar.Original.Lines.Should().HaveCount(4);
    }

    /// <summary>Kappa-carrageenan does not gel without potassium; the catalogue aims at 30–150 mmol/kg.</summary>
    [Fact]
    public void Kappa_comes_with_its_potassium()
    {
        Formula kappa = Jelly(Pantry.Water, Hydrocolloids.Agar, 0.5).Substitute("agar", "carrageenan-kappa").Formula!;

        kappa.Line("potassium-chloride").PhaseIndex.Should().BeGreaterThan(kappa.Line("carrageenan-kappa").PhaseIndex);
        kappa.Analyse().Continuous.Potassium.MmolPerKg.Should().BeInRange(30, 150);
    }

    /// <summary>Gellan: 4–6 mmol/L of calcium (handbook, recalled), where magnesium does as well and 100–200 mmol/L of sodium or potassium as 4–6 of calcium (paper, read).</summary>
    [Fact]
    public void Low_acyl_gellan_comes_with_its_calcium()
    {
        Substitution with = Jelly(Pantry.Water, Hydrocolloids.Agar, 0.5).Substitute("agar", "gellan-low-acyl");

        with.IsSound.Should().BeTrue();
        MixContents mix = with.Formula!.Analyse().Continuous;
        (mix.Calcium.MmolPerKg + mix.Magnesium.MmolPerKg + (mix.Sodium.MmolPerKg + mix.Potassium.MmolPerKg) / 25).Should().BeInRange(3, 7);
        with.Steps.Should().ContainSingle(s => s.Kind == SubstitutionStepKind.HelperIn).Which.Citations.Should().NotBeEmpty();
    }

    /// <summary>Low-methoxyl pectin: 0.5 to 1 mmol of calcium per gram of it (the catalogue's limits); it is dosed at 0.95 %.</summary>
    [Fact]
    public void Low_methoxyl_pectin_comes_with_its_calcium()
    {
        Substitution with = Jelly(Pantry.Water, Hydrocolloids.Agar, 0.5).Substitute("agar", "pectin-low-methoxyl");

        with.IsSound.Should().BeTrue();
        (with.Formula!.Analyse().Continuous.Calcium.MmolPerKg / (Percent(with.Formula!, "pectin-low-methoxyl") * 10)).Should().BeInRange(0.499, 1);
    }

    /// <summary>High-methoxyl pectin gels at 55 °Brix or more and pH 3.5 or less (supplier's bulletin).</summary>
    [Fact]
    public void High_methoxyl_pectin_comes_with_its_sugar_and_acid()
    {
        Substitution pectin = Jelly(Pantry.PearJuice, Hydrocolloids.GelatinTypeA, 1.8).Substitute("gelatin", "pectin-high-methoxyl");

        pectin.IsSound.Should().BeTrue();
        Formula formula = pectin.Formula!;
        formula.Analyse().Continuous.Brix.Value.Should().BeGreaterThanOrEqualTo(55);
        formula.Analyse().Continuous.Ph!.Value.Should().BeLessThanOrEqualTo(3.505);
        Percent(formula, "pectin-high-methoxyl").Should().BeInRange(0.5, 1, "it is dosed again once the sugar is in");
    }

    [Fact]
    public void The_helpers_of_the_old_agent_go_with_it()
    {
        Substitution gelatin = TomatoSheet().Substitute("gellan", "gelatin");

        gelatin.IsSound.Should().BeTrue();
        gelatin.Formula!.Lines.Select(l => l.Label).Should().Equal("tomato-water", "gelatin-type-a");
        gelatin.Steps.Where(s => s.Kind == SubstitutionStepKind.HelperOut).Select(s => s.Lines.Single()).Should().Equal("sodium-citrate", "calcium-lactate");
        gelatin.Formula.Process.HydrateAt.Should().BeNull("gelatin dissolves at 50–65 °C");
        gelatin.Formula.Process.CastAt.Should().Be(Temperature.FromDegreesCelsius(70), "gelatin is still liquid there");
    }

    [Fact]
    public void A_line_that_is_dosed_on_the_old_agent_keeps_its_mass()
    {
        Formula soaked = Formula.Named("Leaf jelly").Base(b => b.Share(Pantry.AppleJuice, 100)).Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(1.8).OfBase))
            .Then("water", p => p.Add(Pantry.Water, Dose.Percent(500).Of(Hydrocolloids.GelatinTypeA))).Build();

        Substitution agar = soaked.Substitute("gelatin-type-a", "agar");

        agar.Formula!.Proportions.MassOf(agar.Formula.Line("water")).Should().BeApproximately(0.09, 1e-12);
        agar.Steps.Should().ContainSingle(s => s.Kind == SubstitutionStepKind.LeftAsIs).Which.Lines.Should().Equal("water");
    }

    [Fact]
    public void One_of_several_agents_can_go_or_all()
    {
        Formula both = Formula.Named("Jelly").Base(b => b.Share(Pantry.AppleJuice, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding).Add(Hydrocolloids.LocustBeanGum, Dose.Percent(0.1).OfPreceding))
            .Serve(new ServicePlan { Texture = Texture.Firm }).Build();

        Substitution one = both.Substitute("agar", "gelatin-type-a"), all = both.SubstituteAll("gelatin-type-a");

        one.Formula!.Lines.Select(l => l.Label).Should().Equal("apple-juice", "locust-bean-gum", "gelatin-type-a");
        one.Steps.Should().ContainSingle(s => s.Kind == SubstitutionStepKind.LeftAsIs).Which.Text.Should().Contain("no effect is known");
        all.Formula!.Lines.Select(l => l.Label).Should().Equal("apple-juice", "gelatin-type-a");
        all.From.Should().Equal(Hydrocolloids.Agar, Hydrocolloids.LocustBeanGum);
    }

    [Fact]
    public void A_blend_takes_the_place_of_one_agent_and_back()
    {
        Formula jelly = Jelly(Pantry.AppleJuice, Hydrocolloids.GelatinTypeA, 1.8);

        Substitution blend = jelly.Substitute("gelatin", "carrageenan-kappa-and-locust-bean-gum");

        double kappa = Percent(blend.Formula!, "carrageenan-kappa"), gum = Percent(blend.Formula!, "locust-bean-gum");
        (kappa / (kappa + gum)).Should().BeInRange(0.6, 0.7);
        blend.Findings.Should().NotContain(f => f.Severity == Severity.Conflict);
        blend.Findings.Should().NotContain(f => f.Id == "dose-outside-window" || f.Id == "decimal-slip");
        blend.Differences!.Agents.Select(a => a.Id).Should().Equal("gelatin-type-a", "carrageenan-kappa", "locust-bean-gum");
        blend.Differences.Row(AgentProperty.Melting)!.Cells.Should().HaveCount(3);
        blend.Formula!.SubstituteAll("gelatin-type-a").Formula!.Lines.Select(l => l.Label).Should().Equal("apple-juice", "sucrose", "gelatin-type-a", "salt");
    }

    [Theory]
    [InlineData("sodium-alginate", Texture.Firm, "sets-in-a-bath")]
    [InlineData("methylcellulose", Texture.Firm, "liquid-when-cold")]
    [InlineData("gellan-low-acyl-and-gellan-high-acyl", Texture.VeryFirm, "no-dose-for-texture")]
    [InlineData("gelatin-type-a", Texture.FluidGel, "no-dose-for-texture")]
    public void What_cannot_be_is_said_with_its_reason(string to, Texture texture, string reason)
    {
        Substitution none = Jelly(Pantry.AppleJuice, Hydrocolloids.Agar, 0.5, new ServicePlan { Texture = texture }).Substitute("agar", to);

        none.Formula.Should().BeNull();
        none.IsSound.Should().BeFalse();
        none.Obstacles.Select(o => o.Id).Should().Contain(reason);
        none.ToString().Should().Contain("not possible");
    }

    [Fact]
    public void Without_a_texture_there_is_no_substitution()
        => Jelly(Pantry.AppleJuice, Hydrocolloids.GelatinTypeA, 9).Substitute("gelatin", "agar").Obstacles.Should().ContainSingle().Which.Id.Should().Be("texture-unknown");

    /// <summary>In milk kappa-carrageenan gels at a fifth of its dose (handbook, recalled): 0.15–0.25 %.</summary>
    [Fact]
    public void Kappa_is_dosed_for_milk_in_milk()
        => Percent(Jelly(Pantry.WholeMilk, Hydrocolloids.GelatinTypeA, 1.8).Substitute("gelatin", "carrageenan-kappa").Formula!, "carrageenan-kappa").Should().BeInRange(0.15, 0.25);

    /// <summary>Reader's question: agar instead of gelatin with raw pineapple. It sets: agar is no protein. The other way round it cannot.</summary>
    [Fact, Trait("Case", "PC-002")]
    public void Agar_in_place_of_gelatin_carries_raw_pineapple()
    {
        Substitution agar = Jelly(Pantry.PineappleJuiceRaw, Hydrocolloids.GelatinTypeA, 1.8).Substitute("gelatin", "agar");

        agar.Original.Review().Should().Contain(f => f.Severity == Severity.Conflict && f.Id == "protease-with-protein-gel");
        agar.Findings.Should().NotContain(f => f.Severity == Severity.Conflict);
        agar.Formula!.Substitute("agar", "gelatin").Findings.Should().Contain(f => f.Severity == Severity.Conflict && f.Id == "protease-with-protein-gel");
    }

    [Fact]
    public void Words_that_nothing_answers_to_are_refused_with_what_there_is()
    {
        Formula jelly = Jelly(Pantry.AppleJuice, Hydrocolloids.Agar, 0.5);

        jelly.Invoking(j => j.Substitute("gelatin", "agar")).Should().Throw<ArgumentException>().WithMessage("*Those that are: agar*").WithParameterName("from");
        jelly.Invoking(j => j.Substitute("agar", "guar gum")).Should().Throw<ArgumentException>().WithMessage("*gelatin-type-a*agar-and-locust-bean-gum*").WithParameterName("to");
        Formula.Named("Juice").Base(b => b.Share(Pantry.AppleJuice, 100)).Build().Invoking(j => j.SubstituteAll("agar")).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Swapping_twice_returns_the_texture_class()
    {
        string[] agents = ["agar", "gelatin-type-a", "carrageenan-kappa", "carrageenan-iota", "gellan-low-acyl", "gellan-high-acyl", "pectin-low-methoxyl", "pectin-high-methoxyl"];
        Texture[] textures = [Texture.Soft, Texture.Firm, Texture.VeryFirm];
        Gen.Select(Gen.OneOf(agents), Gen.OneOf(agents), Gen.OneOf(textures), Gen.OneOf(Pantry.AppleJuice, Pantry.Water, Pantry.BeetrootJuice)).Where(g => g.Item1 != g.Item2).Sample(
            (from, to, texture, liquid) =>
            {
                Ingredient agent = Catalogue.BuiltIn.Get(from);
                NumberRange window = agent.Profile!.WindowFor(texture)!.Percent.Value;
                Formula start = Jelly(liquid, agent, (window.Min!.Value + window.Max!.Value) / 2 * 1.01);

                Substitution there = start.Substitute(from, to);
                Substitution back = there.Formula!.Substitute(to, from);

                there.Texture.Should().Be(back.Texture);
                back.Formula!.Service.Texture.Should().Be(there.Texture);
                NumberRange known = agent.Profile.WindowFor(there.Texture!.Value)!.Percent.Value;
                Percent(back.Formula, from).Should().BeInRange(known.Min!.Value, known.Max!.Value);
            },
            iter: 60);
    }
}
