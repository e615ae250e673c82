using System.Globalization;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Text;

public class QuantityParseTests
{
    private static readonly CultureInfo s_german = CultureInfo.GetCultureInfo("de-DE");

    [Theory]
    [InlineData("3.33 g", 3.33)]
    [InlineData("3.33g", 3.33)]
    [InlineData("3.33\u00A0g", 3.33)]
    [InlineData("3.33\u202Fg", 3.33)]
    [InlineData("  3.33 g ", 3.33)]
    [InlineData("+3.33 g", 3.33)]
    [InlineData(".5 g", 0.5)]
    [InlineData("5. g", 5)]
    [InlineData("0 g", 0)]
    [InlineData("-0 g", 0)]
    [InlineData("1e3 g", 1000)]
    [InlineData("1.5E-3 kg", 1.5)]
    [InlineData("1e-400 g", 0)]
    [InlineData("1.005 kg", 1005)]
    [InlineData("450 mg", 0.45)]
    [InlineData("25 ug", 25e-6)]
    [InlineData("25 \u00B5g", 25e-6)]
    [InlineData("25 \u03BCg", 25e-6)]
    [InlineData("0.002 t", 2000)]
    [InlineData("1 oz", 28.349523125)]
    [InlineData("1 [oz_av]", 28.349523125)]
    [InlineData("2 lb", 907.18474)]
    public void Mass_is_read(string text, double grams)
    {
        QuantityText.TryParseMass(text, out Mass mass, out string error).Should().BeTrue(error);

        mass.Grams.Should().Be(grams);
        error.Should().BeEmpty();
        QuantityText.ParseMass(text).Grams.Should().Be(grams);
    }

    [Theory]
    [InlineData(null, "nothing to read")]
    [InlineData("", "nothing to read")]
    [InlineData("  ", "nothing to read")]
    [InlineData("g", "does not have a number")]
    [InlineData("NaN g", "does not have a number")]
    [InlineData("∞ g", "does not have a number")]
    [InlineData("Infinity g", "does not have a number")]
    [InlineData(". g", "does not have a number")]
    [InlineData("- g", "does not have a number")]
    [InlineData("--1 g", "does not have a number")]
    [InlineData("1,5 g", "ambiguous")]
    [InlineData("1,500 g", "ambiguous")]
    [InlineData("1.500,5 g", "ambiguous")]
    [InlineData("1 500 g", "ambiguous")]
    [InlineData("1\u00A0500 g", "ambiguous")]
    [InlineData("1'500 g", "ambiguous")]
    [InlineData("1_500 g", "ambiguous")]
    [InlineData("1.5.5 g", "ambiguous")]
    [InlineData("1, g", "ambiguous")]
    [InlineData("1٫5 g", "ambiguous")]
    [InlineData("١٥ g", "only the digits 0 to 9")]
    [InlineData("1٥ g", "only the digits 0 to 9")]
    [InlineData("１ g", "only the digits 0 to 9")]
    [InlineData("½ g", "only the digits 0 to 9")]
    [InlineData("1½ g", "only the digits 0 to 9")]
    [InlineData("1e400 g", "too large")]
    [InlineData("-1 g", "out of range: a mass is between 0 g and 1000000000 g")]
    [InlineData("\u22121 g", "out of range")]
    [InlineData("1e10 g", "out of range")]
    [InlineData("1e308 t", "out of range")]
    [InlineData("3.33", "The unit is missing. Known units of mass: g, kg, mg, µg, t, oz, lb.")]
    [InlineData("3 MassUnit.-1", "\"MassUnit.-1\" is not known")] // PC-032
    [InlineData("3 1", "ambiguous")]
    [InlineData("1 g g", "\"g g\" is not known")]
    [InlineData("1e g", "\"e g\" is not known")]
    [InlineData("0x1 g", "\"x1 g\" is not known")]
    [InlineData("1/2 oz", "\"/2 oz\" is not known")]
    [InlineData("1\tg", "is not known")]
    [InlineData("1 cup", "measures volume, not mass")]
    public void Mass_text_is_refused_with_the_reason(string? text, string reason)
    {
        QuantityText.TryParseMass(text, out Mass mass, out string error).Should().BeFalse();

        error.Should().Contain(reason);
        mass.Grams.Should().Be(0);
        if (text is not null)
        {
            FluentActions.Invoking(() => QuantityText.ParseMass(text)).Should().Throw<FormatException>().WithMessage(error);
        }
    }

    [Fact]
    public void Ambiguity_error_quotes_the_text_and_the_decimal_sign_in_force()
    {
        _ = QuantityText.TryParseMass("1,5 g", out _, out string invariant);
        _ = QuantityText.TryParseMass("1.5 g", s_german, out _, out string german);

        invariant.Should().Be("\"1,5 g\" is ambiguous and refused: the decimal sign read here is \".\", once, and digits are never grouped.");
        german.Should().Be("\"1.5 g\" is ambiguous and refused: the decimal sign read here is \",\", once, and digits are never grouped.");
    }

    [Fact]
    public void Comma_is_the_decimal_sign_under_an_explicit_German_provider()
        => QuantityText.ParseMass("1,5 g", s_german).Grams.Should().Be(1.5);

    [Theory] // PC-035
    [InlineData("0,9 %")]
    [InlineData("0,9%")]
    public void Decimal_comma_is_an_error_under_invariant_and_never_nine(string text)
    {
        QuantityText.TryParsePercent(text, out double invariant, out string error).Should().BeFalse();

        invariant.Should().Be(0);
        error.Should().Contain("ambiguous");
        QuantityText.ParsePercent(text, s_german).Should().Be(0.9);
    }

    [Fact] // PC-035
    public void Bare_number_with_a_decimal_comma_is_an_error_under_invariant_and_read_under_German()
    {
        QuantityText.TryParseNumber("0,9", out double value, out string error).Should().BeFalse();
        value.Should().Be(0);
        error.Should().Contain("ambiguous");
        QuantityText.ParseNumber("0,9", s_german).Should().Be(0.9);
        QuantityText.ParseNumber("0.9").Should().Be(0.9);
        FluentActions.Invoking(() => QuantityText.ParseNumber("0,9")).Should().Throw<FormatException>();
    }

    [Theory]
    [InlineData("5 g", "is not a bare number")]
    [InlineData("", "nothing to read")]
    [InlineData("1e400", "too large")]
    public void Text_that_is_not_a_bare_number_is_refused(string text, string reason)
    {
        QuantityText.TryParseNumber(text, out double value, out string error).Should().BeFalse();
        error.Should().Contain(reason);
        value.Should().Be(0);
    }

    [Theory]
    [InlineData("250 mL", 250)]
    [InlineData("250 ml", 250)]
    [InlineData("1 L", 1000)]
    [InlineData("1 l", 1000)]
    [InlineData("2.5 dL", 250)]
    [InlineData("2 cL", 20)]
    [InlineData("0.001 m3", 1000)]
    [InlineData("15 cm3", 15)]
    [InlineData("1 US tsp", 4.92892159375)]
    [InlineData("2 metric cups", 500)]
    [InlineData("1 Australian tbsp", 20)]
    [InlineData("1 tbs-au", 20)]
    [InlineData("1 [cup_m]", 240)]
    [InlineData("1 imperial pint", 568.26125)]
    public void Volume_is_read(string text, double millilitres) => QuantityText.ParseVolume(text).Milliliters.Should().Be(millilitres);

    [Theory]
    [InlineData("35 °C", 35)]
    [InlineData("35 Cel", 35)]
    [InlineData("35 C", 35)]
    [InlineData("-18 °C", -18)]
    [InlineData("\u221218 °C", -18)]
    [InlineData("212 °F", 100)]
    [InlineData("32 [degF]", 0)]
    [InlineData("-40 F", -40)]
    [InlineData("373.15 K", 100)]
    [InlineData("0 K", -273.15)]
    [InlineData("-459.67 °F", -273.15)]
    public void Temperature_reading_is_read(string text, double celsius) => QuantityText.ParseTemperature(text).DegreesCelsius.Should().Be(celsius);

    [Theory]
    [InlineData("-1 K")]
    [InlineData("-273.16 °C")]
    [InlineData("-459.68 °F")]
    [InlineData("1001 °C")]
    [InlineData("1e300 K")]
    public void Temperature_reading_out_of_range_is_refused(string text)
    {
        QuantityText.TryParseTemperature(text, out _, out string error).Should().BeFalse();
        error.Should().Contain("out of range: a temperature is between -273.15 °C and 1000 °C");
    }

    [Theory]
    [InlineData("1.5 K", 1.5)]
    [InlineData("1.5 Cel", 1.5)]
    [InlineData("18 [degF]", 10)]
    [InlineData("-9 °F", -5)]
    public void Temperature_difference_is_read(string text, double kelvins) => QuantityText.ParseTemperatureDifference(text).Kelvins.Should().Be(kelvins);

    [Theory]
    [InlineData("45 s", 45)]
    [InlineData("4 min", 240)]
    [InlineData("1.5 h", 5400)]
    [InlineData("2 d", 172800)]
    [InlineData("1 h 30 min", 5400)]
    [InlineData("1h30min", 5400)]
    [InlineData("2 d 1 h 1 min 1.5 s", 176461.5)]
    public void Duration_is_read(string text, double seconds) => QuantityText.ParseDuration(text).Seconds.Should().Be(seconds);

    [Theory]
    [InlineData("30 min 1 h")]
    [InlineData("1 h 1 h")]
    [InlineData("-1 h 30 min")]
    [InlineData("1 h -30 min")]
    [InlineData("1 h 30")]
    [InlineData("1:30 h")]
    [InlineData("5 m")]
    [InlineData("-4 min")]
    public void Duration_text_is_refused(string text)
    {
        QuantityText.TryParseDuration(text, out Duration duration, out string error).Should().BeFalse();
        error.Should().NotBeEmpty();
        duration.Seconds.Should().Be(0);
    }

    [Theory]
    [InlineData("35 mm", 0.035)]
    [InlineData("2.5 cm", 0.025)]
    [InlineData("2240 m", 2240)]
    [InlineData("2.24 km", 2240)]
    [InlineData("1 in", 0.0254)]
    [InlineData("5280 ft", 1609.344)]
    [InlineData("-400 m", -400)]
    public void Length_is_read(string text, double metres) => QuantityText.ParseLength(text).Meters.Should().Be(metres);

    [Theory]
    [InlineData("101325 Pa", 101325)]
    [InlineData("1013.25 hPa", 101325)]
    [InlineData("1013.25 mbar", 101325)]
    [InlineData("1 atm", 101325)]
    [InlineData("1.01325 bar", 101325)]
    [InlineData("80 kPa", 80000)]
    [InlineData("760 mm[Hg]", 101324.72)]
    [InlineData("760 mmHg", 101324.72)]
    public void Pressure_is_read(string text, double pascals) => QuantityText.ParsePressure(text).Pascals.Should().Be(pascals);

    [Theory]
    [InlineData("1040 kg/m3", 1040)]
    [InlineData("1.04 g/mL", 1040)]
    [InlineData("1.04 g/cm3", 1040)]
    public void Density_is_read(string text, double kilogramsPerCubicMetre)
        => QuantityText.ParseDensity(text).KilogramsPerCubicMeter.Should().Be(kilogramsPerCubicMetre);

    [Fact]
    public void Null_arguments_are_refused()
    {
        FluentActions.Invoking(() => QuantityText.ParseMass(null!)).Should().Throw<ArgumentNullException>().WithParameterName("text");
        FluentActions.Invoking(() => QuantityText.ParseMass("1 g", null!)).Should().Throw<ArgumentNullException>().WithParameterName("provider");
        FluentActions.Invoking(() => QuantityText.Format(Mass.FromGrams(1), null!)).Should().Throw<ArgumentNullException>().WithParameterName("provider");
        FluentActions.Invoking(() => QuantityText.Format(Mass.FromGrams(1), null!, 3)).Should().Throw<ArgumentNullException>().WithParameterName("unit");
    }
}
