using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Formulas;

public class FormulaEditTests
{
    private static readonly Formula s_blend = Formula.Named("blend")
        .Base(b => b.Share(Pantry.Water, 60).Share(Pantry.PearJuice, 40))
        .Then("gel", p => p
            .Add(Hydrocolloids.Agar, Dose.Percent(0.9).OfBase)
            .Add(Hydrocolloids.LocustBeanGum, Dose.Percent(10).Of(Hydrocolloids.Agar)))
        .Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) })
        .Build();

    [Fact]
    public void New_dose_leaves_the_old_formula_alone()
    {
        Formula before = Mixes.TwoStage();
        Formula after = before.WithDose("agar", Dose.Percent(0.5).OfTotal);

        after.Line("agar").Dose.Should().Be(Dose.Percent(0.5).OfTotal);
        before.Should().Be(Mixes.TwoStage());
        after.Should().NotBe(before);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(1e7)]
    public void Dose_that_cannot_be_is_refused(double percent)
        => s_blend.Invoking(f => f.WithDose("agar", Dose.Percent(percent).OfBase)).Should().Throw<FormulaException>();

    [Fact]
    public void Dose_of_a_base_part_is_refused_with_the_way_to_change_it()
        => s_blend.Invoking(f => f.WithDose("water", Dose.Percent(50).OfBase)).Should().Throw<ArgumentException>()
            .WithMessage("'water' is a part of the base: change its share with WithShares.*");

    [Fact]
    public void Doses_follow_a_swapped_ingredient()
    {
        Formula swapped = s_blend.WithIngredient("agar", Hydrocolloids.CarrageenanKappa);

        swapped.Line("locust-bean-gum").Dose.Should().Be(Dose.Percent(10).Of(Hydrocolloids.CarrageenanKappa));
        swapped.OfBase(1000).MassOf(Hydrocolloids.LocustBeanGum).Grams.Should().BeApproximately(0.9, 1e-12);
    }

    [Fact]
    public void Carriers_follow_a_swapped_ingredient()
        => s_blend.WithIngredient("water", Pantry.WaterHard).Process.Carriers.Should().Equal("water-hard");

    [Fact]
    public void Labelled_line_keeps_its_label_when_its_ingredient_is_swapped()
    {
        Formula formula = Formula.Named("f").Base(b => b.Share(Pantry.Water, 100, l => l.Labelled("liquid")))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfLine("liquid"))).Build();

        formula.WithIngredient("liquid", Pantry.PearJuice).Line("agar").Dose.Reference.Label.Should().Be("liquid");
    }

    [Fact]
    public void Measurements_of_a_lot_go_with_the_ingredient_they_were_made_on()
    {
        Formula formula = Formula.Named("f").Base(b => b.Share(Pantry.LemonJuice, 100, l => l.Labelled("liquid").Measured(new Measurements { Ph = 2.3 }))).Build();

        formula.WithIngredient("liquid", Pantry.WholeMilk).Line("liquid").Details.Should().Be(new LineDetails { Label = "liquid" });
        formula.WithIngredient("liquid", Pantry.LemonJuice.WithBrix(8)).Line("liquid").Details.Measured!.Ph.Should().Be(2.3);
    }

    [Fact]
    public void Ingredient_that_already_stands_in_another_line_is_refused()
        => s_blend.Invoking(f => f.WithIngredient("agar", Hydrocolloids.LocustBeanGum)).Should().Throw<FormulaException>()
            .Which.Problems.Should().Contain(p => p.Id == "line-repeated");

    [Fact]
    public void Line_on_which_another_is_dosed_cannot_go()
        => s_blend.Invoking(f => f.Without("agar")).Should().Throw<FormulaException>().Which.Problems.Single().Id.Should().Be("reference-unknown");

    [Fact]
    public void Line_can_go_and_an_empty_phase_goes_with_it()
    {
        Formula left = Mixes.Simple().Without("agar");

        left.Phases.Should().BeEmpty();
        left.Lines.Select(l => l.Label).Should().Equal("water");
    }

    [Fact]
    public void Base_part_cannot_go_while_it_has_a_share()
    {
        s_blend.Invoking(f => f.Without("pear-juice")).Should().Throw<FormulaException>().Which.Problems.Single().Id.Should().Be("base-shares");
        s_blend.WithShares(label => label == "water" ? 100 : 0).Without("pear-juice").Base.Parts.Should().ContainSingle();
    }

    [Fact]
    public void Carrier_cannot_go()
        => s_blend.WithShares(label => label == "water" ? 0 : 100).Invoking(f => f.Without("water")).Should().Throw<FormulaException>()
            .Which.Problems.Single().Id.Should().Be("carrier-unknown");

    [Fact]
    public void New_shares_must_add_up()
    {
        s_blend.WithShares(label => label == "water" ? 25 : 75).OfBase(1000).MassOf(Pantry.Water).Grams.Should().BeApproximately(250, 1e-12);
        s_blend.Invoking(f => f.WithShares(_ => 40)).Should().Throw<FormulaException>().Which.Problems.Single().Id.Should().Be("base-shares");
        s_blend.Invoking(f => f.WithShares(_ => double.NaN)).Should().Throw<FormulaException>();
    }

    [Fact]
    public void New_process_is_checked_against_the_lines()
    {
        s_blend.WithProcess(ProcessPlan.None).Process.Carriers.Should().BeEmpty();
        s_blend.Invoking(f => f.WithProcess(new ProcessPlan { Carriers = ValueList<string>.From(["milk"]) })).Should().Throw<FormulaException>();
    }

    [Fact]
    public void Name_service_and_extensions_change_nothing_else()
    {
        var service = new ServicePlan { Texture = Texture.Firm };
        var data = ExtensionData.Parse("{\"shelf\":3}");
        Formula changed = s_blend.WithName("other").WithService(service).WithExtensions(data);

        (changed.Name, changed.Service, changed.Extensions).Should().Be(("other", service, data));
        changed.Lines.Should().Equal(s_blend.Lines);
        changed.WithName("blend").WithService(ServicePlan.None).WithExtensions(null).Should().Be(s_blend);
        s_blend.Invoking(f => f.WithName(" ")).Should().Throw<FormulaException>();
    }

    [Fact]
    public void Unknown_line_is_an_argument_exception_for_every_edit()
    {
        s_blend.Invoking(f => f.WithDose("x", Dose.Percent(1).OfBase)).Should().Throw<ArgumentException>();
        s_blend.Invoking(f => f.WithIngredient("x", Pantry.Water)).Should().Throw<ArgumentException>();
        s_blend.Invoking(f => f.Without("x")).Should().Throw<ArgumentException>();
        s_blend.Invoking(f => f.Reexpress("x", DoseReference.Total)).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Builder_stays_usable_and_leaves_what_was_built_alone()
    {
        FormulaBuilder builder = Formula.Named("first").Base(b => b.Share(Pantry.Water, 100));
        Formula first = builder.Build();
        builder.Named("second").Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfBase)).Process(new ProcessPlan { Altitude = Length.FromMeters(500) });
        Formula second = builder.Build();

        first.Lines.Should().ContainSingle();
        (first.Name, first.Process).Should().Be(("first", ProcessPlan.None));
        second.Lines.Should().HaveCount(2);
        second.OfBase(100).MassOf(Hydrocolloids.Agar).Grams.Should().BeApproximately(1, 1e-14);
        builder.Build().Should().Be(second);
    }

    [Fact]
    public void Builder_can_be_mended_after_a_refusal()
    {
        FormulaBuilder builder = Formula.Named("f").Base(b => b.Share(Pantry.Water, 60));
        builder.TryBuild(out _, out _).Should().BeFalse();
        builder.Base(b => b.Share(Pantry.PearJuice, 40));

        builder.Build().Base.Parts.Should().HaveCount(2);
    }

    [Fact]
    public void Builder_of_a_formula_builds_it_again()
        => s_blend.ToBuilder().Build().Should().Be(s_blend);

    [Theory]
    [InlineData(DoseReferenceKind.Base)]
    [InlineData(DoseReferenceKind.Total)]
    [InlineData(DoseReferenceKind.Water)]
    [InlineData(DoseReferenceKind.Preceding)]
    public void Reexpressed_dose_keeps_the_masses(DoseReferenceKind kind)
    {
        DoseReference reference = kind switch
        {
            DoseReferenceKind.Base => DoseReference.Base,
            DoseReferenceKind.Total => DoseReference.Total,
            DoseReferenceKind.Water => DoseReference.Water,
            _ => DoseReference.Preceding,
        };
        Formula before = Mixes.TwoStage();
        Formula after = before.Reexpress("agar", reference);

        after.Line("agar").Dose.Reference.Should().Be(reference);
        after.OfBase(1000).MassOf("agar").Grams.Should().BeApproximately(3.33, 1e-11);
    }

    [Fact]
    public void Dose_is_expressed_on_every_reference()
    {
        Formula formula = Mixes.TwoStage();

        formula.Express("agar", DoseReference.Base).PercentByMass.Should().BeApproximately(0.333, 1e-14);
        formula.Express("agar", DoseReference.Preceding).Should().Be(Dose.Percent(0.3).OfPreceding);
        formula.Express("agar", DoseReference.Total).PercentByMass.Should().BeApproximately(333 / 1114.44, 1e-12);
        formula.Express("agar", DoseReference.Line("sucrose")).PercentByMass.Should().BeApproximately(3.33, 1e-12);
        formula.Express("pear-juice", DoseReference.Total).PercentByMass.Should().BeApproximately(100_000 / 1114.44, 1e-10);
    }
}
