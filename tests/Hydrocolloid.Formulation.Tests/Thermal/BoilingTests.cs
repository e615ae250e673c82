using CsCheck;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Thermal;

public class BoilingTests
{
    private static readonly LiquidShares s_water = new(100);

    private static Temperature At(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static PotPressure High(double metres) => PotPressure.AtAltitude(Length.FromMeters(metres));

    private static double Boils(LiquidShares liquid, PotPressure pressure = default) => Boiling.PointOf(liquid, pressure).Temperature.DegreesCelsius;

    [Fact]
    public void Boiling_point_falls_with_altitude()
        => Gen.Select(Gen.Double[0, 8000], Gen.Double[1, 3000], Gen.Double[0, 80], Gen.Double[0, 5]).Sample((metres, more, sucrose, salt) =>
        {
            LiquidShares liquid = new(100 - sucrose - salt, sucrose, saltPercent: salt);
            return Boils(liquid, High(metres + more)) < Boils(liquid, High(metres));
        });

    [Fact]
    public void Temperature_and_pressure_of_boiling_water_are_inverse()
        => Gen.Double[0.1, 370].Sample(t => Math.Abs(SaturatedWater.TemperatureAt(SaturatedWater.PressureAt(At(t)).Value).Value.DegreesCelsius - t) < 1e-6);

    [Fact]
    public void Sugar_and_salt_raise_and_ethanol_lowers()
    {
        BoilingPoint point = Boiling.PointOf(new LiquidShares(80, 5, 5, 2, 8), High(1500));

        point.BySugars.Kelvins.Should().BeGreaterThan(0);
        point.BySalt.Kelvins.Should().BeGreaterThan(0);
        point.ByEthanol.Kelvins.Should().BeLessThan(0);
        (point.OfWater.DegreesCelsius + point.BySugars.Kelvins + point.BySalt.Kelvins + point.ByEthanol.Kelvins).Should().BeApproximately(point.Temperature.DegreesCelsius, 1e-9);
        point.IsEstimate.Should().BeTrue();
        point.Outside!.ToString().Should().StartWith("pressure", "the table of ethanol is of 1 atm");
        point.By.Should().ContainAll("IAPWS", "Starzak", "Norrish", "Pitzer", "Perry");
    }

    [Fact]
    public void Syrup_says_how_much_higher_the_kitchens_table_is()
    {
        BoilingPoint syrup = Boiling.PointOf(new LiquidShares(30, 70));

        (syrup.Published.Max!.Value.DegreesCelsius - syrup.OfWater.DegreesCelsius).Should().BeApproximately(6.5, 0.01, "Browne 1912");
        syrup.Published.Min.Should().Be(syrup.Temperature);
        Boiling.PointOf(s_water).Published.Celsius.IsSingle.Should().BeTrue();
    }

    /// <summary>Glucose has half the molar mass, so it raises the boiling point about twice as much as sucrose does while the liquid is dilute.</summary>
    [Fact]
    public void Glucose_raises_it_about_twice_as_much_as_sucrose()
        => (Boils(new LiquidShares(90, 0, 10)) - Boils(s_water)).Should().BeInRange(1.7 * (Boils(new LiquidShares(90, 10)) - Boils(s_water)), 2 * (Boils(new LiquidShares(90, 10)) - Boils(s_water)));

    [Fact]
    public void Outside_its_range_every_relation_says_so()
    {
        Boiling.PointOf(new LiquidShares(4, 96)).Outside!.Quantity.Should().Be("sucrose");
        Boiling.PointOf(new LiquidShares(70, saltPercent: 30)).Outside!.Quantity.Should().Be("salt");
        Boiling.PointOf(new LiquidShares(20, 0, 80)).Outside!.Quantity.Should().Be("water activity of glucose and fructose");
        Boiling.PointOf(s_water, High(11_001)).Outside!.Quantity.Should().Be("altitude");
        Boiling.PointOf(s_water, High(-100)).InRange.Should().BeFalse();
        Boiling.PointOf(s_water, High(11_000)).InRange.Should().BeTrue();
        SaturatedWater.PressureAt(At(-1)).InRange.Should().BeFalse();
        SaturatedWater.TemperatureAt(Pressure.FromMegapascals(23)).InRange.Should().BeFalse();
        SaturatedWater.HeatOfVaporization(At(130)).InRange.Should().BeFalse();
    }

    /// <summary>A cooker at 100 kPa over the air of sea level boils at the temperature of saturation of 201.3 kPa, 120.4 °C.</summary>
    [Fact]
    public void Pressure_cooker_adds_its_pressure_to_that_of_the_air()
        => Boils(s_water, default(PotPressure).WithCooker(Pressure.FromKilopascals(100)))
            .Should().BeApproximately(SaturatedWater.TemperatureAt(Pressure.FromPascals(201_325)).Value.DegreesCelsius, 1e-9).And.BeApproximately(120.4, 0.1);

    [Fact]
    public void Simmer_that_is_not_enough_says_what_cooker_is()
        => Gen.Select(Gen.Double[0, 5000], Gen.Double[0, 60], Gen.Double[0, 10], Gen.Double[0, 20], Gen.Double[1, 30]).Sample((metres, sucrose, salt, ethanol, more) =>
        {
            LiquidShares liquid = new(100 - sucrose - salt - ethanol, sucrose, saltPercent: salt, ethanolPercent: ethanol);
            TemperatureRange needed = new(At(Boils(liquid, High(metres)) + more), null);
            SimmerAnswer answer = Boiling.Reaches(needed, liquid, High(metres));

            answer.IsEnough.Should().BeFalse();
            answer.Missing.Kelvins.Should().BeApproximately(more, 1e-6);
            Boils(liquid, High(metres).WithCooker(answer.GaugeNeeded!.Value)).Should().BeApproximately(needed.Celsius.Min!.Value, 1e-6);
        });

    [Fact]
    public void Simmer_that_is_enough_needs_no_cooker()
    {
        SimmerAnswer answer = Boiling.Reaches(new TemperatureRange(At(90), At(100)), s_water, High(2240));

        answer.Should().Match<SimmerAnswer>(a => a.IsEnough && !a.GaugeNeeded.HasValue && a.Missing.Kelvins == 0);
        Boiling.Reaches(new TemperatureRange(null, At(60)), s_water).IsEnough.Should().BeTrue();
    }

    [Fact]
    public void Any_liquid_has_a_finite_boiling_point()
        => Gen.Select(Gen.Double[0.1, 100], Gen.Double[0, 1].Array[4], Gen.Double[1e3, 1e6]).Sample((water, parts, pascals) =>
        {
            double sum = Math.Max(parts.Sum(), 1e-9), rest = 100 - water;
            double[] p = [.. parts.Select(v => v / sum * rest * 0.999999)];
            BoilingPoint point = Boiling.PointOf(new LiquidShares(water, p[0], p[1], p[2], p[3]), PotPressure.Measured(Pressure.FromPascals(pascals)));
            return point.Temperature.DegreesCelsius is > -30 and < 400;
        });

    [Fact]
    public void Impossible_numbers_are_refused()
    {
        FluentActions.Invoking(() => new LiquidShares(0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new LiquidShares(60, 50)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Boiling.PointOf(default)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => High(30_000)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("altitude");
        FluentActions.Invoking(() => PotPressure.Measured(Pressure.FromPascals(0))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Boiling.Reaches(new TemperatureRange(At(201), null), s_water)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
