using CsCheck;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Thermal;

public class EvaporationRateTests
{
    private static Temperature At(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static EvaporationRate Pan(double celsius)
        => EvaporationRate.FromSurface(Area.FromSquareMeters(0.0707), Length.FromMeters(0.942), At(celsius), At(22), 50);

    [Fact]
    public void Time_to_lose_and_what_is_lost_in_that_time_are_inverse()
        => Gen.Select(Gen.Double[0.01, 10], Gen.Double[1, 5000]).Sample((rate, grams) =>
        {
            var measured = EvaporationRate.Measured(MassFlow.FromKilogramsPerHour(rate));
            return Math.Abs(measured.LostIn(measured.TimeToLose(Mass.FromGrams(grams))!.Value, Mass.FromKilograms(10)).Grams - grams) < 1e-6;
        });

    [Fact]
    public void No_more_is_lost_than_there_is()
        => EvaporationRate.Measured(MassFlow.FromKilogramsPerHour(2)).LostIn(Duration.FromHours(3), Mass.FromKilograms(1)).Kilograms.Should().BeApproximately(1, 1e-12);

    [Fact]
    public void Losses_come_off_the_heater()
    {
        EvaporationRate.ByHeater(Power.FromWatts(1500), Power.FromWatts(500), At(100)).Rate.KilogramsPerHour.Should().BeApproximately(1.595, 0.001);
        EvaporationRate weak = EvaporationRate.ByHeater(Power.FromWatts(400), Power.FromWatts(500), At(100));
        weak.Rate.KilogramsPerHour.Should().Be(0);
        weak.TimeToLose(Mass.FromGrams(1)).Should().BeNull();
        EvaporationRate.ByHeater(Power.FromWatts(1500), Power.FromWatts(500), At(125)).InRange.Should().BeFalse();
    }

    [Fact]
    public void Surface_estimate_is_marked_grows_with_heat_and_has_its_range()
    {
        double[] rates = [.. new[] { 40, 50, 60, 70, 80, 90 }.Select(t => Pan(t).Rate.KilogramsPerHour)];

        rates.Should().BeInAscendingOrder().And.OnlyContain(r => r > 0);
        Pan(60).Should().Match<EvaporationRate>(r => r.IsEstimate && r.InRange);
        Pan(95).InRange.Should().BeFalse();
        EvaporationRate.FromSurface(Area.FromSquareMeters(0.07), Length.FromMeters(1), At(10), At(40), 100).Rate.KilogramsPerHour.Should().Be(0);
    }

    /// <summary>Rough rates of an estimate scaled from the bath of 3.5 m², good to 40 %: kg/(h·m²) in a room at 25 °C and 52 %, 92 kPa.</summary>
    [Theory]
    [InlineData(40, 0.7), InlineData(60, 2.8), InlineData(70, 4.9), InlineData(80, 8.1), InlineData(90, 12.9)]
    public void Rough_rates(double celsius, double rate)
        => (EvaporationRate.FromSurface(Area.FromSquareMeters(3.5), Length.FromMeters(9), At(celsius), At(25), 52, PotPressure.Measured(Pressure.FromKilopascals(92))).Rate.KilogramsPerHour / 3.5)
            .Should().BeInRange(rate * 0.6, rate * 1.4);

    [Fact]
    public void Impossible_numbers_are_refused()
    {
        FluentActions.Invoking(() => EvaporationRate.FromSurface(Area.FromSquareMeters(1), Length.Zero, At(50), At(20), 50)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("rim");
        FluentActions.Invoking(() => EvaporationRate.FromSurface(Area.FromSquareMeters(1), Length.FromMeters(4), At(101), At(20), 50)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => EvaporationRate.Measured(MassFlow.FromKilogramsPerHour(-1))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => EvaporationRate.ByHeater(Power.FromWatts(-1), Power.FromWatts(0), At(100))).Should().Throw<ArgumentOutOfRangeException>();
    }
}
