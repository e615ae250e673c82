using CsCheck;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Thermal;

public class FoodPropertiesTests
{
    private static readonly FoodShares s_milk = new(87.5, proteinPercent: 3.3, fatPercent: 3.7, carbohydratePercent: 4.7, ashPercent: 0.8);

    private static readonly Gen<FoodShares> s_foods = Gen.Double[0, 100].Array[6]
        .Where(p => p.Sum() > 1e-3).Select(p => new FoodShares(p[0], p[1], p[2], p[3], p[4], p[5]));

    private static Temperature At(double celsius) => Temperature.FromDegreesCelsius(celsius);

    [Theory]
    [InlineData(0, true), InlineData(20, true), InlineData(150, true), InlineData(-0.001, false), InlineData(150.001, false), InlineData(-18, false), InlineData(400, false)]
    public void Outside_0_to_150_degrees_all_three_say_so_and_stay_finite(double celsius, bool inRange)
    {
        var density = FoodProperties.DensityOf(s_milk, At(celsius));
        var heat = FoodProperties.SpecificHeatOf(s_milk, At(celsius));
        var conductivity = FoodProperties.ConductivityOf(s_milk, At(celsius));

        new[] { density.InRange, heat.InRange, conductivity.InRange }.Should().AllBeEquivalentTo(inRange);
        new[] { density.Value.KilogramsPerCubicMeter, heat.Value.KilojoulesPerKilogramKelvin, conductivity.Value.WattsPerMeterKelvin }.Should().OnlyContain(v => v > 0 && v < 1e5);
        if (!inRange)
        {
            density.Outside!.Quantity.Should().Be("temperature");
            density.Outside.Value.Should().BeApproximately(celsius, 1e-9);
        }
    }

    [Theory]
    [InlineData(-1), InlineData(100.1), InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void Share_outside_0_to_100_percent_is_refused(double percent)
        => new Action[] { () => _ = new FoodShares(percent), () => _ = new FoodShares(50, percent), () => _ = new FoodShares(50, ashPercent: percent) }
            .Should().AllSatisfy(a => a.Should().Throw<ArgumentOutOfRangeException>());

    [Fact]
    public void Nothing_at_all_is_refused()
    {
        FluentActions.Invoking(() => new FoodShares(0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => FoodProperties.DensityOf(default, At(20))).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Theory]
    [InlineData(-274), InlineData(1001)]
    public void Impossible_temperature_is_refused(double celsius)
        => FluentActions.Invoking(() => FoodProperties.SpecificHeatOf(s_milk, At(celsius))).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void Shares_count_as_parts_of_their_sum() => Gen.Select(s_foods, Gen.Double[0.1, 1], Gen.Double[0, 150]).Sample((food, factor, celsius) =>
    {
        FoodShares scaled = new(food.WaterPercent * factor, food.ProteinPercent * factor, food.FatPercent * factor, food.CarbohydratePercent * factor, food.FibrePercent * factor, food.AshPercent * factor);
        FoodProperties.DensityOf(scaled, At(celsius)).Value.KilogramsPerCubicMeter.Should().BeApproximately(FoodProperties.DensityOf(food, At(celsius)).Value.KilogramsPerCubicMeter, 1e-6);
        FoodProperties.SpecificHeatOf(scaled, At(celsius)).Value.KilojoulesPerKilogramKelvin.Should().BeApproximately(FoodProperties.SpecificHeatOf(food, At(celsius)).Value.KilojoulesPerKilogramKelvin, 1e-9);
        FoodProperties.ConductivityOf(scaled, At(celsius)).Value.WattsPerMeterKelvin.Should().BeApproximately(FoodProperties.ConductivityOf(food, At(celsius)).Value.WattsPerMeterKelvin, 1e-9);
    });

    /// <summary>Density of a mixture by volume and its heat by mass lie between those of its components.</summary>
    [Fact]
    public void Mixture_lies_between_its_components() => Gen.Select(s_foods, Gen.Double[0, 150]).Sample((food, celsius) =>
    {
        FoodShares[] pure = [new(100), new(0, 100), new(0, fatPercent: 100), new(0, carbohydratePercent: 100), new(0, fibrePercent: 100), new(0, ashPercent: 100)];
        void Between(Func<FoodShares, double> of) => of(food).Should().BeInRange(pure.Min(of) * (1 - 1e-12), pure.Max(of) * (1 + 1e-12));
        Between(f => FoodProperties.DensityOf(f, At(celsius)).Value.KilogramsPerCubicMeter);
        Between(f => FoodProperties.SpecificHeatOf(f, At(celsius)).Value.KilojoulesPerKilogramKelvin);
        Between(f => FoodProperties.ConductivityOf(f, At(celsius)).Value.WattsPerMeterKelvin);
    });

    [Fact]
    public void Equal_by_content()
    {
        s_milk.Should().Be(new FoodShares(87.5, 3.3, 3.7, 4.7, 0, 0.8));
        s_milk.SumPercent.Should().BeApproximately(100, 1e-12);
    }
}
