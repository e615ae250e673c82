using Hydrocolloid.Formulation.Serialization;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Moulds;

public sealed class MouldFillingTests
{
    private static readonly MouldPlan s_domes = new("silicone sheet") { Shape = MouldShape.Hemisphere(Length.FromMillimeters(60)), Cavities = 6 };

    private static Formula Jelly(ProcessPlan? process = null) => Formula.Named("Cucumber domes")
        .Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase))
        .Process(process ?? ProcessPlan.None).Build();

    [Fact]
    public void A_batch_for_a_count_of_cavities_fills_them_exactly()
    {
        Batch batch = Jelly().ScaleTo(Yield.Moulds(20, s_domes));

        MouldFilling filling = batch.Fill(s_domes);
        filling.Filled.Should().Be(20);
        filling.MouldsNeeded.Should().Be(4);
        filling.Left.Grams.Should().BeApproximately(0, 1e-6);
        // 56.55 mL of water and 0.5 % agar: 0.998 g/mL (density of water at 20 °C, CRC Handbook), agar counts within 0.3 %.
        filling.Each.Grams.Should().BeApproximately(56.55 * 0.998, 56.55 * 0.003);
        batch.AssembledMass.Grams.Should().BeApproximately(20 * filling.Each.Grams, 1e-9 * batch.AssembledMass.Grams);
    }

    [Fact]
    public void Losses_before_casting_are_made_up_for_and_trimming_is_not()
    {
        var losses = new Losses { Transfer = Loss.Percent(5), Trimming = Loss.Percent(20) };

        Batch batch = Jelly(new ProcessPlan { Losses = losses }).ScaleTo(Yield.Moulds(10, s_domes));

        batch.Fill(s_domes).Filled.Should().Be(10);
        batch.AssembledMass.Grams.Should().BeApproximately(10 * batch.Fill(s_domes).Each.Grams / 0.95, 1e-6);
    }

    [Fact]
    public void What_is_left_over_is_said()
    {
        Batch batch = Jelly().ScaleTo(Yield.Assembled(Mass.FromGrams(1000)));
        MouldFilling filling = batch.Fill(s_domes);

        filling.Filled.Should().Be((int)(1000 / filling.Each.Grams));
        (filling.Left.Grams + filling.Filled * filling.Each.Grams).Should().BeApproximately(1000, 1e-9);
    }

    [Fact]
    public void Hot_mix_weighs_less_in_the_same_mould()
    {
        Batch batch = Jelly().ScaleTo(Yield.Assembled(Mass.FromGrams(1000)));

        // Water at 60 °C against 20 °C: 983.2 / 998.2 (CRC Handbook, recalled); Choi and Okos hold the density of water to 0.5 % there.
        double ratio = batch.Fill(s_domes, Temperature.FromDegreesCelsius(60)).Each / batch.Fill(s_domes, Temperature.FromDegreesCelsius(20)).Each;
        ratio.Should().BeApproximately(983.2 / 998.2, 0.005);
    }

    [Fact]
    public void Headspace_and_a_measured_volume()
    {
        var tray = new MouldPlan("tray") { Shape = MouldShape.Block(Length.FromMillimeters(200), Length.FromMillimeters(100), Length.FromMillimeters(30)), Headspace = Length.FromMillimeters(10) };

        tray.FillVolume!.Value.Milliliters.Should().BeApproximately(400, 1e-9);
        new MouldPlan("tray", Volume.FromMilliliters(380)) { Shape = tray.Shape }.FillVolume!.Value.Milliliters.Should().Be(380, "what was measured goes before geometry");
        FluentActions.Invoking(() => tray with { Headspace = Length.FromMillimeters(30) }).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void A_mould_without_a_volume_and_a_mix_without_a_density_are_refused()
    {
        FluentActions.Invoking(() => Yield.Moulds(3, new MouldPlan("cup"))).Should().Throw<ArgumentException>();
        Formula unknown = Formula.Named("unknown").Base(b => b.Share(Ingredient.Own("mystery", "Mystery"), 100)).Build();

        unknown.TryScaleTo(Yield.Moulds(3, s_domes), Losses.None, out _, out ValueList<FormulaProblem> problems).Should().BeFalse();
        problems.Should().ContainSingle().Which.Id.Should().Be("density-unknown");
    }

    /// <summary>PC-019: 20 boxes of 50 mL need 1000 mL; 666 mL fill 13 and are 334 mL short.</summary>
    [Fact]
    public void PC_019_two_flasks_for_twenty_boxes()
    {
        var box = new MouldPlan("gel box", Volume.FromMilliliters(50));
        Formula gel = Formula.Named("gel").Base(b => b.Share(Pantry.WaterDistilled, 100)).Build();
        Batch have = gel.ScaleTo(Yield.Moulds(1, new MouldPlan("flasks", Volume.FromMilliliters(666))));

        have.Fill(box).Filled.Should().Be(13);
        Batch needed = gel.ScaleTo(Yield.Moulds(20, box));
        (needed.AssembledMass.Grams / have.AssembledMass.Grams * 666 - 666).Should().BeApproximately(334, 334 * 0.005);
    }

    [Fact]
    public void Moulds_go_through_documents_unchanged()
    {
        foreach (MouldShape shape in MouldShapeTests.Volumes.Select(v => (MouldShape)v[1]))
        {
            Formula formula = Jelly(new ProcessPlan { Mould = new MouldPlan("mould") { Shape = shape, Cavities = 3, Headspace = Length.FromMillimeters(2) } });
            FormulaJson.Read(FormulaJson.Write(formula)).Should().Be(formula);
        }
    }

    [Theory]
    [InlineData("""{"form":"sphere","diameter":{"value":60,"unit":"mm"},"height":{"value":60,"unit":"mm"}}""", "shape-unclear")]
    [InlineData("""{"form":"cylinder","diameter":{"value":60,"unit":"mm"}}""", "shape-unclear")]
    [InlineData("""{"form":"cylinder","diameter":{"value":0,"unit":"mm"},"height":{"value":60,"unit":"mm"}}""", "number-range")]
    [InlineData("""{"form":"heart","diameter":{"value":60,"unit":"mm"}}""", "word-unknown")]
    public void Documents_with_an_unclear_shape_are_refused(string shape, string problem)
    {
        string json = """{"format":"hydrocolloid-formula","version":1,"name":"x","base":[{"ingredient":"water","percent":100}],"process":{"mould":{"name":"m","shape":""" + shape + "}}}";

        FormulaJson.TryRead(System.Text.Encoding.UTF8.GetBytes(json), out _, out ValueList<FormulaJsonProblem> problems).Should().BeFalse();
        problems.Should().ContainSingle().Which.Id.Should().Be(problem);
    }
}
