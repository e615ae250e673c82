using System.Reflection;
using CsCheck;
using Hydrocolloid.Formulation.Chemistry;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Chemistry;

public class SolutionTests
{
    internal static Solute[] Solutes { get; } = [.. typeof(Solute).GetProperties(BindingFlags.Public | BindingFlags.Static).Select(p => (Solute)p.GetValue(null)!)];

    private static Temperature At(double celsius) => Temperature.FromDegreesCelsius(celsius);

    [Fact]
    public void Alcohol_by_volume_and_by_mass_are_inverse()
        => Gen.Double[0, 100].Sample(abv => Math.Abs(EthanolWater.PercentByVolume(EthanolWater.PercentByMass(abv)) - abv) < 1e-3);

    [Fact]
    public void Strength_comes_back_from_the_density()
        => Gen.Select(Gen.Double[0, 100], Gen.Double[10, 40]).Sample((percent, celsius) =>
        {
            Computed<double> found = EthanolWater.PercentByMass(EthanolWater.DensityOf(percent, At(celsius)).Value, At(celsius));
            return Math.Abs(found.Value - percent) < 1e-6;
        });

    [Fact]
    public void Brix_comes_back_from_the_density()
        => Gen.Double[0, 84].Sample(brix => Math.Abs(SucroseWater.BrixPercent(SucroseWater.DensityOf(brix).Value).Value - brix) < 1e-8);

    /// <summary>A litre of 96 % spirit holds 807.42 g of which 93.84 % is ethanol, so 33.30 % takes 1.468 kg of water, 1.470 L: by volume alone it would be 1.40 L.</summary>
    [Fact]
    public void Diluting_counts_the_contraction()
    {
        EthanolBlend blend = EthanolWater.ToStrength(EthanolWater.MassOf(Volume.FromLiters(1), 96), 96, 0, 40);

        blend.EthanolPercentByVolume.Should().BeApproximately(40, 1e-9);
        blend.Volume.Liters.Should().BeApproximately(2.4, 1e-6, "no ethanol is lost");
        (blend.Added.Kilograms / 0.9982).Should().BeApproximately(1.470, 0.002);
        blend.Contraction.Liters.Should().BeApproximately(1 + (blend.Added.Kilograms / 0.99820123) - 2.4, 1e-6).And.BeGreaterThan(0.05);
    }

    [Fact]
    public void Fortifying_and_diluting_back_is_the_identity()
        => Gen.Select(Gen.Double[5, 15], Gen.Double[16, 40]).Sample((wine, target) =>
        {
            EthanolBlend strong = EthanolWater.ToStrength(Mass.FromGrams(1000), wine, 96, target);
            EthanolBlend back = EthanolWater.ToStrength(strong.Mass, target, 0, wine);
            return Math.Abs(strong.EthanolPercentByVolume - target) < 1e-7 && Math.Abs(back.EthanolPercentByVolume - wine) < 1e-7;
        });

    [Fact]
    public void The_Pearson_square_and_the_balance_agree()
        => Gen.Select(Gen.Double[0, 40], Gen.Double[50, 100], Gen.Double[41, 49]).Sample((brix, syrup, target) =>
        {
            double added = SucroseWater.ToBrix(Mass.FromGrams(1000), brix, syrup, target).Grams;
            double first = SucroseWater.PearsonSquareFirstPercent(brix, syrup, target);
            return Math.Abs(100_000 / (1000 + added) - first) < 1e-9 && Math.Abs(((1000 * brix) + (added * syrup)) / (1000 + added) - target) < 1e-9;
        });

    [Fact]
    public void Outside_its_range_every_relation_says_so()
    {
        EthanolWater.DensityOf(40, At(60)).Outside!.ToString().Should().Be("temperature 60 °C is outside -20–40");
        EthanolWater.DensityOf(40, At(20)).InRange.Should().BeTrue();
        EthanolWater.PercentByMass(Density.FromKilogramsPerCubicMeter(1010), At(20)).InRange.Should().BeFalse();
        SucroseWater.DensityOf(90).InRange.Should().BeFalse();
        SucroseWater.BrixPercent(Density.FromKilogramsPerCubicMeter(990)).Should().Match<Computed<double>>(b => !b.InRange && b.Value == 0);
        WaterDensity.At(At(-5)).InRange.Should().BeFalse();
        WaterActivity.Norrish([new SoluteAmount(Solute.Glycerol, 400)]).InRange.Should().BeFalse();
        WaterActivity.Ross([new SoluteAmount(Solute.SodiumChloride, 40)]).InRange.Should().BeFalse();
        WaterActivity.Ross([new SoluteAmount(Solute.Sucrose, 100)]).InRange.Should().BeTrue();
    }

    [Fact]
    public void Water_activity_falls_with_every_solute()
        => Gen.Select(Gen.Int[0, Solutes.Length - 1].Select(i => Solutes[i]), Gen.Double[0.1, 40], Gen.Double[0.1, 40]).Sample((solute, grams, sucrose) =>
            WaterActivity.Ross([new(solute, grams), new(Solute.Sucrose, sucrose)]).Value < WaterActivity.Ross([new(solute, grams)]).Value
            && (solute == Solute.SodiumChloride
                || WaterActivity.Norrish([new(solute, grams), new(Solute.Sucrose, sucrose)]).Value < WaterActivity.Norrish([new(Solute.Sucrose, sucrose)]).Value));

    [Fact]
    public void Impossible_numbers_are_refused()
    {
        FluentActions.Invoking(() => EthanolWater.PercentByMass(101)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => EthanolWater.DensityOf(double.NaN, At(20))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => EthanolWater.ToStrength(Mass.FromGrams(100), 12, 0, 40)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*between 12 and 0 % by volume*");
        FluentActions.Invoking(() => EthanolWater.Blend(Mass.Zero, 12, Mass.Zero, 0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => SucroseWater.ToBrix(Mass.FromGrams(100), 10, 100, 100)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => SucroseWater.PearsonSquareFirstPercent(10, 20, 30)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new SoluteAmount(Solute.Sucrose, -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => WaterActivity.Norrish([new SoluteAmount(Solute.SodiumChloride, 1)])).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void The_same_solute_twice_adds_up_and_no_solute_is_refused()
    {
        SoluteAmount fifty = new(Solute.Sucrose, 50), hundred = new(Solute.Sucrose, 100);

        WaterActivity.Ross([fifty, fifty]).Value.Should().BeApproximately(WaterActivity.Ross([hundred]).Value, 1e-12);
        WaterActivity.Norrish([fifty, fifty]).Value.Should().BeApproximately(WaterActivity.Norrish([hundred]).Value, 1e-12);
        FluentActions.Invoking(() => WaterActivity.Ross([default])).Should().Throw<ArgumentException>().WithMessage("*names no solute*");
        FluentActions.Invoking(() => WaterActivity.Norrish([default])).Should().Throw<ArgumentException>();
    }
}
