using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Formulas;

/// <summary>What process, service and line details accept.</summary>
public class PlanTests
{
    [Fact]
    public void Quantities_outside_their_range_are_refused()
    {
        Action[] acts =
        [
            () => _ = new ProcessPlan { Altitude = Length.FromMeters(9001) },
            () => _ = new ProcessPlan { CastAt = Temperature.FromDegreesCelsius(-274) },
            () => _ = new ProcessPlan { Losses = null! },
            () => _ = new ServicePlan { ServedAt = Temperature.FromDegreesCelsius(1001) },
            () => _ = new ServicePlan { HeldFor = Duration.FromSeconds(-1) },
            () => _ = new ServicePlan { StoredFor = Duration.FromSeconds(-1) },
            () => _ = new ServicePlan { Portion = Mass.Zero },
            () => _ = new CoolingStage(" ", Temperature.FromDegreesCelsius(5)),
            () => _ = new CoolingStage("bench", Temperature.FromDegreesCelsius(5), Duration.FromSeconds(-1)),
            () => _ = new MouldPlan("", null),
            () => _ = new MouldPlan("m", Volume.FromMilliliters(-1)),
            () => _ = new Measurements { Ph = 15 },
            () => _ = new Measurements { Brix = double.NaN },
            () => _ = new Measurements { Density = Density.FromKilogramsPerCubicMeter(99) },
            () => _ = new LineDetails { Label = " " },
            () => _ = new LineDetails { Temperature = Temperature.FromKelvins(-1) },
        ];

        foreach (Action act in acts)
        {
            act.Should().Throw<ArgumentException>();
        }
    }

    [Fact]
    public void Line_holds_what_was_said_of_it()
    {
        Formula formula = Formula.Named("f").Base(b => b.Share(Pantry.Water, 100, l => l
            .Labelled("liquid").At(Temperature.FromDegreesFahrenheit(50)).Measured(new Measurements { Ph = 6.5 }).WithExtensions(ExtensionData.Parse("{\"lot\":7}")))).Build();
        LineDetails details = formula.Line("liquid").Details;

        details.Temperature!.Value.DegreesCelsius.Should().BeApproximately(10, 1e-10);
        details.Measured!.Ph.Should().Be(6.5);
        details.Extensions!.ToString().Should().Be("{\"lot\":7}");
        details.Form.Should().Be(LineForm.Mix);
        formula.Line("liquid").IsContinuous.Should().BeTrue();
    }

    [Fact]
    public void Plans_of_nothing_are_empty()
    {
        new ProcessPlan().Should().Be(ProcessPlan.None);
        new ServicePlan().Should().Be(ServicePlan.None);
        ProcessPlan.None.ToString().Should().Be("losses: none");
        ServicePlan.None.ToString().Should().Be("nothing fixed");
    }

    [Fact]
    public void Plans_are_written_in_words_and_units()
    {
        new CoolingStage("bench", Temperature.FromDegreesCelsius(20), Duration.FromMinutes(45)).ToString().Should().Be("bench at 20 °C for 45 min");
        new CoolingStage("refrigerator", Temperature.FromDegreesCelsius(4)).ToString().Should().Be("refrigerator at 4 °C");
        new MouldPlan("terrine mould", Volume.FromLiters(1.2)).ToString().Should().Be("terrine mould of 1200 mL");
        new Measurements { Ph = 3.4, Brix = 12 }.ToString().Should().Be("pH 3.4, 12 °Brix");
    }
}
