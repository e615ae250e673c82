using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;
using UnitsNet.Units;

namespace Hydrocolloid.Formulation.Tests.Internal;

public class GuardTests
{
    /// <summary>Every kind that comes in as a UnitsNet quantity.</summary>
    public static TheoryData<QuantityKind> Kinds => new(Enum.GetValues<QuantityKind>().Where(k => k != QuantityKind.Percent));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Not_a_number_is_refused(QuantityKind kind)
        => FluentActions.Invoking(() => Read(kind, double.NaN)).Should().Throw<ArgumentException>();

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Infinities_are_refused(QuantityKind kind)
    {
        FluentActions.Invoking(() => Read(kind, double.PositiveInfinity)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Read(kind, double.NegativeInfinity)).Should().Throw<ArgumentException>();
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Range_ends_are_allowed_and_just_beyond_them_is_refused(QuantityKind kind)
    {
        KindFacts facts = KindFacts.Of(kind);

        Read(kind, facts.Min).Should().Be(facts.Min);
        Read(kind, facts.Max).Should().Be(facts.Max);
        FluentActions.Invoking(() => Read(kind, Math.BitDecrement(facts.Min))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("quantity");
        FluentActions.Invoking(() => Read(kind, Math.BitIncrement(facts.Max))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("quantity");
    }

    [Fact]
    public void Negative_amounts_are_refused()
    {
        FluentActions.Invoking(() => Read(QuantityKind.Mass, -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Read(QuantityKind.Volume, -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Read(QuantityKind.Duration, -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Read(QuantityKind.Density, -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Read(QuantityKind.Pressure, -1)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Negative_zero_comes_in_as_zero()
        => double.IsNegative(Read(QuantityKind.Mass, -0.0)).Should().BeFalse();

    [Fact]
    public void Below_absolute_zero_is_refused_in_every_scale()
    {
        Invoking(Temperature.FromKelvins(-1)).Should().Throw<ArgumentOutOfRangeException>();
        Invoking(Temperature.FromDegreesCelsius(-274)).Should().Throw<ArgumentOutOfRangeException>();
        Invoking(Temperature.FromDegreesFahrenheit(-460)).Should().Throw<ArgumentOutOfRangeException>();

        static Action Invoking(Temperature quantity) => () => Guard.Celsius(quantity);
    }

    [Theory]
    [InlineData(999)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(65)]
    public void Undefined_unit_is_refused_before_it_is_converted(int unit)
    {
        FluentActions.Invoking(() => Guard.Grams(new Mass(1, (MassUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.Millilitres(new Volume(1, (VolumeUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.Celsius(new Temperature(1, (TemperatureUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.Kelvins(new TemperatureDelta(1, (TemperatureDeltaUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.Seconds(new Duration(1, (DurationUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.Metres(new Length(1, (LengthUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.KilogramsPerCubicMetre(new Density(1, (DensityUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.Pascals(new Pressure(1, (PressureUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.Newtons(new Force(1, (ForceUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.JoulesPerKilogramKelvin(new SpecificEntropy(1, (SpecificEntropyUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.Joules(new Energy(1, (EnergyUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.Watts(new Power(1, (PowerUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.KilogramsPerSecond(new MassFlow(1, (MassFlowUnit)unit))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Guard.SquareMetres(new Area(1, (AreaUnit)unit))).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Unit_masks_are_the_defined_values_of_the_UnitsNet_enums()
    {
        Mask<MassUnit>().Should().Be(Guard.MassUnits);
        Mask<VolumeUnit>().Should().Be(Guard.VolumeUnits);
        Mask<TemperatureUnit>().Should().Be(Guard.TemperatureUnits);
        Mask<TemperatureDeltaUnit>().Should().Be(Guard.TemperatureDeltaUnits);
        Mask<DurationUnit>().Should().Be(Guard.DurationUnits);
        Mask<LengthUnit>().Should().Be(Guard.LengthUnits);
        Mask<DensityUnit>().Should().Be(Guard.DensityUnits);
        Mask<PressureUnit>().Should().Be(Guard.PressureUnits);
        Mask<ForceUnit>().Should().Be(Guard.ForceUnits);
        Mask<SpecificEntropyUnit>().Should().Be(Guard.SpecificEntropyUnits);
        Mask<EnergyUnit>().Should().Be(Guard.EnergyUnits);
        Mask<PowerUnit>().Should().Be(Guard.PowerUnits);
        Mask<MassFlowUnit>().Should().Be(Guard.MassFlowUnits);
        Mask<AreaUnit>().Should().Be(Guard.AreaUnits);
        Mask<HeatTransferCoefficientUnit>().Should().Be(Guard.HeatTransferCoefficientUnits);
        Mask<ThermalConductivityUnit>().Should().Be(Guard.ThermalConductivityUnits);
    }

    [Fact]
    public void Power_too_great_to_be_converted_is_refused()
        => FluentActions.Invoking(() => Guard.Watts(new Power(decimal.MaxValue, PowerUnit.Petawatt))).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void Every_defined_unit_is_read()
    {
        foreach (MassUnit unit in System.Enum.GetValues<MassUnit>())
        {
            Guard.Grams(new Mass(1e-30, unit)).Should().BeGreaterThan(0, unit.ToString());
        }

        foreach (VolumeUnit unit in System.Enum.GetValues<VolumeUnit>())
        {
            Guard.Millilitres(new Volume(1e-12, unit)).Should().BeGreaterThan(0, unit.ToString());
        }
    }

    [Fact]
    public void Positive_mass_is_more_than_zero()
    {
        Guard.PositiveGrams(Mass.FromKilograms(2)).Should().Be(2000);
        FluentActions.Invoking(() => Guard.PositiveGrams(Mass.FromGrams(0))).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void Blank_text_is_refused(string text)
        => FluentActions.Invoking(() => Guard.NotBlank(text)).Should().Throw<ArgumentException>().WithParameterName(nameof(text));

    [Fact]
    public void Null_is_refused_by_name()
    {
        string? text = null;
        FluentActions.Invoking(() => Guard.NotNull(text)).Should().Throw<ArgumentNullException>().WithParameterName(nameof(text));
        FluentActions.Invoking(() => Guard.NotBlank(text)).Should().Throw<ArgumentNullException>().WithParameterName(nameof(text));
    }

    [Fact]
    public void Range_error_names_the_argument_the_limits_and_the_value()
    {
        double share = 1.5;
        FluentActions.Invoking(() => Guard.InRange(share, 0, 1, "of the total")).Should().Throw<ArgumentOutOfRangeException>()
            .WithParameterName(nameof(share)).WithMessage("Must be between 0 of the total and 1 of the total inclusive, but is 1.5 of the total.*");
    }

    private static ulong Mask<TUnit>()
        where TUnit : struct, System.Enum
        => System.Enum.GetValues<TUnit>().Select(u => Convert.ToInt32(u, System.Globalization.CultureInfo.InvariantCulture)).Distinct()
            .Aggregate(0UL, (mask, value) => mask | 1UL << checked(value - 1));

    private static double Read(QuantityKind kind, double value)
    {
        switch (kind)
        {
            case QuantityKind.Mass:
                {
                    var quantity = Mass.FromGrams(value);
                    return Guard.Grams(quantity);
                }

            case QuantityKind.Volume:
                {
                    var quantity = Volume.FromMilliliters(value);
                    return Guard.Millilitres(quantity);
                }

            case QuantityKind.Temperature:
                {
                    var quantity = Temperature.FromDegreesCelsius(value);
                    return Guard.Celsius(quantity);
                }

            case QuantityKind.TemperatureDifference:
                {
                    var quantity = TemperatureDelta.FromKelvins(value);
                    return Guard.Kelvins(quantity);
                }

            case QuantityKind.Duration:
                {
                    var quantity = Duration.FromSeconds(value);
                    return Guard.Seconds(quantity);
                }

            case QuantityKind.Length:
                {
                    var quantity = Length.FromMeters(value);
                    return Guard.Metres(quantity);
                }

            case QuantityKind.Pressure:
                {
                    var quantity = Pressure.FromPascals(value);
                    return Guard.Pascals(quantity);
                }

            case QuantityKind.Density:
                {
                    var quantity = Density.FromKilogramsPerCubicMeter(value);
                    return Guard.KilogramsPerCubicMetre(quantity);
                }

            default:
                throw new ArgumentOutOfRangeException(nameof(kind));
        }
    }

    [Fact]
    public void What_must_be_above_nothing_is_told_so()
        => FluentActions.Invoking(() => Guard.InRange(0, double.Epsilon, 100, "%", "dose")).Should().Throw<ArgumentOutOfRangeException>().WithMessage("Must be above 0 % and at most 100 %, but is 0 %.*");
}
