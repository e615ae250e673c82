using System.Globalization;
using Hydrocolloid.Formulation.Text;
using UnitsNet;
using UnitsNet.Units;

namespace Hydrocolloid.Formulation.Tests.Text;

public class QuantityFormatTests
{
    [Theory]
    [InlineData(3.3333, "3.33 g")]
    [InlineData(1200, "1.2 kg")]
    [InlineData(0.45, "450 mg")]
    [InlineData(0, "0 g")]
    [InlineData(1, "1 g")]
    [InlineData(0.9996, "1 g")]
    [InlineData(999.4, "999 g")]
    [InlineData(999.6, "1 kg")]
    [InlineData(1e9, "1000000 kg")]
    [InlineData(0.00005, "0.05 mg")]
    public void Mass_is_written_in_mg_g_or_kg(double grams, string text) => QuantityText.Format(Mass.FromGrams(grams)).Should().Be(text);

    [Theory]
    [InlineData(250, "250 mL")]
    [InlineData(0.45, "0.45 mL")]
    [InlineData(1234, "1.23 L")]
    [InlineData(0, "0 mL")]
    public void Volume_is_written_in_mL_or_L(double millilitres, string text)
        => QuantityText.Format(Volume.FromMilliliters(millilitres)).Should().Be(text);

    [Theory]
    [InlineData(35, "35 °C")]
    [InlineData(29.444, "29.4 °C")]
    [InlineData(-18, "-18 °C")]
    [InlineData(-0.0, "0 °C")]
    public void Temperature_is_written_in_degrees_Celsius(double celsius, string text)
        => QuantityText.Format(Temperature.FromDegreesCelsius(celsius)).Should().Be(text);

    [Theory]
    [InlineData(240, "4 min")]
    [InlineData(5400, "1 h 30 min")]
    [InlineData(45, "45 s")]
    [InlineData(1.5, "1.5 s")]
    [InlineData(0, "0 s")]
    [InlineData(59.96, "1 min")]
    [InlineData(59.94, "59.9 s")]
    [InlineData(90.5, "1 min 31 s")]
    [InlineData(3661, "1 h 1 min 1 s")]
    [InlineData(86400, "24 h")]
    [InlineData(172800, "2 d")]
    [InlineData(270000, "3 d 3 h")]
    public void Duration_is_written_in_parts(double seconds, string text) => QuantityText.Format(Duration.FromSeconds(seconds)).Should().Be(text);

    [Theory]
    [InlineData(2240, "2240 m")]
    [InlineData(0.035, "35 mm")]
    [InlineData(0.9999, "1 m")]
    [InlineData(-400, "-400 m")]
    [InlineData(0, "0 m")]
    public void Length_is_written_in_mm_or_m(double metres, string text) => QuantityText.Format(Length.FromMeters(metres)).Should().Be(text);

    [Fact]
    public void Other_kinds_are_written_in_their_kitchen_unit()
    {
        QuantityText.Format(TemperatureDelta.FromKelvins(5.0 / 6)).Should().Be("0.833 K");
        QuantityText.Format(Pressure.FromPascals(101325)).Should().Be("101 kPa");
        QuantityText.Format(Pressure.FromPascals(15)).Should().Be("15 Pa");
        QuantityText.Format(Density.FromKilogramsPerCubicMeter(1040)).Should().Be("1040 kg/m³");
        QuantityText.FormatPercent(0.9, 3).Should().Be("0.9 %");
    }

    [Theory]
    [InlineData("kg", 3, "0.1 kg")]
    [InlineData("[oz_av]", 3, "3.53 oz")]
    [InlineData("oz", QuantityText.AllDigits, "3.5273961949580412 oz")]
    [InlineData("lb", 2, "0.22 lb")]
    [InlineData("mg", 1, "100000 mg")]
    [InlineData("ug", QuantityText.AllDigits, "100000000 µg")]
    public void Named_unit_is_written_with_its_symbol(string unit, int digits, string text)
        => QuantityText.Format(Mass.FromGrams(100), unit, digits).Should().Be(text);

    [Fact]
    public void Explicit_provider_gives_the_decimal_sign_and_nothing_else()
    {
        QuantityText.Format(Mass.FromGrams(3.333), CultureInfo.GetCultureInfo("de-DE")).Should().Be("3,33 g");
        QuantityText.Format(Temperature.FromDegreesCelsius(-18.5), CultureInfo.GetCultureInfo("sv-SE")).Should().Be("-18,5 °C");
        QuantityText.Format(Mass.FromGrams(1234567.5), "g", 12, CultureInfo.GetCultureInfo("de-DE")).Should().Be("1234567,5 g");
        QuantityText.FormatPercent(0.9, 2, CultureInfo.GetCultureInfo("de-DE")).Should().Be("0,9 %");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(16)]
    [InlineData(18)]
    [InlineData(-1)]
    public void Digits_out_of_range_are_refused(int digits)
        => FluentActions.Invoking(() => QuantityText.Format(Mass.FromGrams(1), "g", digits)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName(nameof(digits));

    [Theory]
    [InlineData("mL")]
    [InlineData("")]
    [InlineData("Gram")]
    public void Unit_of_another_kind_or_none_is_refused(string unit)
        => FluentActions.Invoking(() => QuantityText.Format(Mass.FromGrams(1), unit, 3)).Should().Throw<ArgumentException>().WithParameterName(nameof(unit));

    [Fact]
    public void Quantities_out_of_range_are_refused()
    {
        FluentActions.Invoking(() => QuantityText.Format(Mass.FromGrams(-1))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("mass");
        FluentActions.Invoking(() => QuantityText.Format(Temperature.FromDegreesCelsius(-300))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => QuantityText.Format(new Mass(1, (MassUnit)999))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => QuantityText.FormatPercent(double.NaN, 3)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("percent");
        FluentActions.Invoking(() => QuantityText.FormatPercent(-1, 3)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Every_culture_of_the_runtime_gives_the_same_text_and_the_same_reading()
    {
        string[] expected = Sample();
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo beforeUi = CultureInfo.CurrentUICulture;
        try
        {
            foreach (CultureInfo culture in CultureInfo.GetCultures(CultureTypes.AllCultures))
            {
                CultureInfo.CurrentCulture = culture;
                CultureInfo.CurrentUICulture = culture;
                Sample().Should().Equal(expected, culture.Name);
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.CurrentUICulture = beforeUi;
        }
    }

    private static string[] Sample()
    {
        _ = QuantityText.TryParseMass("1,5 g", out _, out string ambiguous);
        _ = QuantityText.TryParseMass("-1.5 g", out _, out string range);
        _ = QuantityText.TryParseVolume("1 tsp", out _, out string bare);
        _ = QuantityText.TryParseVolume("1 ML", out _, out string casing);
        return
        [
            QuantityText.Format(Mass.FromGrams(3.333)),
            QuantityText.Format(Mass.FromGrams(1234567.25), "g", QuantityText.AllDigits),
            QuantityText.Format(Mass.FromGrams(1.5e-7), "kg", QuantityText.AllDigits),
            QuantityText.Format(Volume.FromMilliliters(2.5), "US tsp", QuantityText.AllDigits),
            QuantityText.Format(Temperature.FromDegreesCelsius(-18.5)),
            QuantityText.Format(TemperatureDelta.FromKelvins(-1.5)),
            QuantityText.Format(Duration.FromSeconds(5400)),
            QuantityText.Format(Length.FromMeters(-400.5)),
            QuantityText.Format(Pressure.FromPascals(101325), "atm", 5),
            QuantityText.Format(Density.FromKilogramsPerCubicMeter(1040.5), "g/mL", 6),
            QuantityText.FormatPercent(0.9, 3),
            QuantityText.ParseMass("1.005 kg").Grams.ToString("R", CultureInfo.InvariantCulture),
            QuantityText.ParseTemperature("-18.5 °F").DegreesCelsius.ToString("R", CultureInfo.InvariantCulture),
            ambiguous, range, bare, casing,
        ];
    }
}
