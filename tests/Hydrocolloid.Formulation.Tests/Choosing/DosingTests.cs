using CsCheck;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Choosing;

public class DosingTests
{
    /// <summary>Pear juice and fruit pieces with one agent; the pieces take no part in the gel, so a dose on the base is not one on the mix.</summary>
    internal static Formula WithPieces(Ingredient agent, Dose dose) => Formula.Named("jelly with pieces")
        .Base(b => b.Share(Pantry.PearJuice, 70).Share(Pantry.Water, 30))
        .Then("gel", p => p.Add(Pantry.Sucrose, Dose.Percent(10).OfBase).Add(agent, dose, l => l.Labelled("agent")))
        .Then("fruit", p => p.Add(Pantry.CucumberJuice, Dose.Percent(25).OfTotal, l => l.Pieces()))
        .Build();

    [Fact]
    public void Dose_for_a_texture_is_the_middle_of_the_window_of_what_gels()
    {
        // firm agar in the catalogue: 0.4–0.7 % of the continuous mix
        AgentDosing firm = WithPieces(Hydrocolloids.Agar, Dose.Percent(0.2).OfTotal).DosedFor("agent", Texture.Firm);

        firm.Percent.Should().BeApproximately(0.55, 1e-12);
        firm.Window.Should().Be(new NumberRange(0.4, 0.7));
        firm.Standing.Should().Be(DoseStanding.Judged, "the window is the catalogue's judgement between published values");
        firm.Catalogued!.Citation.Should().Be(firm.Source);
        firm.Dose!.Reference.Should().Be(DoseReference.Total);
        firm.IsWithinNow.Should().BeFalse();
        Formula dosed = firm.Formula!;
        dosed.Proportions.PercentOfContinuousMix(dosed.Line("agent")).Should().BeApproximately(0.55, 0.55 * 1e-3);
        dosed.Service.Texture.Should().Be(Texture.Firm);
        firm.Corrections[1].Should().StartWith("0.55 % of the continuous mix is ");
    }

    [Fact]
    public void Any_window_of_any_agent_is_reached_on_any_reference()
        => Gen.Select(Gen.OneOf(Catalogue.BuiltIn.Hydrocolloids.ToArray()), Gen.Int[0, 3], Gen.Int[0, 5]).Sample((agent, reference, texture) =>
        {
            DosePercent percent = Dose.Percent(0.3);
            Dose dose = reference switch { 0 => percent.OfBase, 1 => percent.OfPreceding, 2 => percent.OfTotal, _ => percent.OfWater };
            AgentDosing answer = WithPieces(agent, dose).DosedFor("agent", (Texture)texture);
            if (answer.Formula is not { } formula)
            {
                return agent.Profile!.WindowFor((Texture)texture) is null;
            }

            return Math.Abs(formula.Proportions.PercentOfContinuousMix(formula.Line("agent")) / answer.Percent!.Value - 1) < 2e-3
                && formula.DosedFor("agent", (Texture)texture).IsWithinNow && answer.Source is not null;
        });

    [Fact]
    public void Weaker_gelatin_is_dosed_higher_and_says_that_it_was_corrected()
    {
        // 1.2–2.2 % of 225 g Bloom · √(225/160) = 1.42–2.61 %
        AgentDosing firm = WithPieces(Hydrocolloids.GelatinTypeA.WithGrade(new(GradeScale.Bloom, 160)), Dose.Percent(1).OfBase).DosedFor("agent", Texture.Firm);

        firm.Window!.Value.Min!.Value.Should().BeApproximately(1.42, 0.005);
        firm.Window.Value.Max!.Value.Should().BeApproximately(2.61, 0.005);
        firm.Corrections[0].Should().Contain("225 g Bloom").And.Contain("160 g Bloom");
        firm.Outside!.ToString().Should().Be("dose 1.423 % of the gel is outside 1.5–10");
        WithPieces(Hydrocolloids.GelatinTypeA, Dose.Percent(1).OfBase).DosedFor("agent", Texture.Firm).Corrections[0].Should().Contain("the grade at hand is not stated");
    }

    [Fact]
    public void Window_read_in_its_source_is_published_and_one_without_a_window_says_what_there_is()
    {
        WithPieces(Hydrocolloids.CarrageenanLambda, Dose.Percent(1).OfBase).DosedFor("agent", Texture.Thickened).Standing.Should().Be(DoseStanding.Published);

        AgentDosing none = WithPieces(Hydrocolloids.LocustBeanGum, Dose.Percent(1).OfBase).DosedFor("agent", Texture.Firm);
        none.Dose.Should().BeNull();
        none.Formula.Should().BeNull();
        none.ToString().Should().Be("Locust bean gum: no dose window for the texture 'firm' is published here; there are windows for thickened and modifier.");
    }

    [Fact]
    public void Dose_of_nothing_can_be_replaced_and_a_line_dosed_on_the_agent_follows()
    {
        Formula formula = Formula.Named("jelly").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.1).OfPreceding))
            .Then("gum", p => p.Add(Hydrocolloids.LocustBeanGum, Dose.Percent(30).Of(Hydrocolloids.Agar))).Build();

        AgentDosing firm = formula.DosedFor("agar", Texture.Firm);
        Formula dosed = firm.Formula!;
        dosed.Proportions.PercentOfContinuousMix(dosed.Line("agar")).Should().BeApproximately(0.55, 0.55 * 1e-3);
        firm.Notes.Should().Contain(n => n.Value.StartsWith("Locust bean gum beside agar", StringComparison.Ordinal));
        formula.WithDose("agar", Dose.Percent(0).OfPreceding).DosedFor("agar", Texture.Firm).Dose!.PercentByMass.Should().BeApproximately(firm.Dose!.PercentByMass, 0.002);
    }

    [Fact]
    public void Milk_and_clinical_food_get_no_dose_of_water()
    {
        Formula milk = Formula.Named("flan").Base(b => b.Share(Pantry.WholeMilk, 100)).Then("gel", p => p.Add(Hydrocolloids.CarrageenanKappa, Dose.Percent(0.1).OfBase)).Build();
        AgentDosing inMilk = milk.DosedFor("carrageenan-kappa", Texture.Soft);
        inMilk.Dose.Should().BeNull();
        inMilk.Source.Should().NotBeNull();

        Formula clinical = Mixes.Simple().WithService(ServicePlan.None with { Audience = Audience.Dysphagia });
        clinical.DosedFor("agar", Texture.Soft).ToString().Should().Contain("clinician");
        clinical.DosedForStrength("agar", new AgentTrial("agar", "kPa", [new(0.4, 4), new(0.8, 9)]), 5).Formula.Should().BeNull();
    }

    [Fact]
    public void Where_lines_dosed_on_the_agent_leave_no_room_there_is_no_dose()
    {
        // 50 parts of sugar to one of agar: agar is never more than 1/51 of the mix, and 5 % cannot be.
        Formula formula = Formula.Named("blend").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.3).OfBase))
            .Then("sugar", p => p.Add(Pantry.Sucrose, Dose.Percent(5000).Of(Hydrocolloids.Agar))).Build();
        AgentDosing none = formula.DosedForStrength("agar", new AgentTrial("agar", "kPa", [new(0.4, 4), new(0.8, 8)], TrialCurve.Line), 50);

        none.Formula.Should().BeNull();
        none.ToString().Should().EndWith("There is no such dose in this formula.");
        formula.DosedFor("agar", Texture.Firm).Formula.Should().NotBeNull();
    }

    [Fact]
    public void What_has_no_dose_is_refused()
    {
        Formula formula = WithPieces(Hydrocolloids.Agar, Dose.Percent(0.2).OfBase);
        FluentActions.Invoking(() => formula.DosedFor("gelatin", Texture.Firm)).Should().Throw<ArgumentException>().WithMessage("*has no line 'gelatin'*");
        FluentActions.Invoking(() => formula.DosedFor("sucrose", Texture.Firm)).Should().Throw<ArgumentException>().WithMessage("'sucrose' is not a hydrocolloid.*");
        FluentActions.Invoking(() => formula.DosedFor("agent", (Texture)6)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => formula.DosedFor("agent", Texture.Firm, new Grade(GradeScale.Sag, 150))).Should().NotThrow("the agar states no grade, so none is compared");
    }
}
