using System.Globalization;
using CsCheck;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Text;

public class QuantityRoundTripTests
{
    private static readonly CultureInfo[] s_cultures =
        [CultureInfo.InvariantCulture, .. CultureInfo.GetCultures(CultureTypes.AllCultures)];

    private static readonly Gen<CultureInfo> s_culture = Gen.Int[0, s_cultures.Length - 1].Select(i => s_cultures[i]);

    /// <summary>Amounts spread over the orders of magnitude, so that small ones are as frequent as large ones.</summary>
    private static Gen<double> Amount(double lowestPower, double highestPower)
        => Gen.Double[lowestPower, highestPower].Select(power => Math.Pow(10, power));

    private static Gen<KitchenUnit> UnitOf(QuantityKind kind)
    {
        KitchenUnit[] units = KitchenUnit.All.Where(u => u.Kind == kind).ToArray();
        return Gen.Int[0, units.Length - 1].Select(i => units[i]);
    }

    [Fact]
    public void Mass_with_all_digits_reads_back_exactly_in_every_unit_and_culture()
        => Gen.Select(Amount(-3, 9), UnitOf(QuantityKind.Mass), s_culture).Sample((grams, unit, culture) =>
            QuantityText.ParseMass(QuantityText.Format(Mass.FromGrams(grams), unit.Code, QuantityText.AllDigits, culture), culture).Grams.Equals(grams));

    [Fact]
    public void Volume_with_all_digits_reads_back_exactly_in_every_unit_and_culture()
        => Gen.Select(Amount(-3, 9), UnitOf(QuantityKind.Volume), s_culture).Sample((millilitres, unit, culture) =>
            QuantityText.ParseVolume(QuantityText.Format(Volume.FromMilliliters(millilitres), unit.Code, QuantityText.AllDigits, culture), culture)
                .Milliliters.Equals(millilitres));

    [Fact]
    public void Temperature_with_all_digits_reads_back_exactly_in_every_unit_and_culture()
        => Gen.Select(Gen.Double[-273.15, 1000], UnitOf(QuantityKind.Temperature), s_culture).Sample((celsius, unit, culture) =>
            Math.Abs(celsius) < 1e-9
            || QuantityText.ParseTemperature(QuantityText.Format(Temperature.FromDegreesCelsius(celsius), unit.Code, QuantityText.AllDigits, culture), culture)
                .DegreesCelsius.Equals(celsius));

    [Fact]
    public void Temperature_near_freezing_reads_back_exactly()
        => Gen.Select(Amount(-9, 0), Gen.Bool, UnitOf(QuantityKind.Temperature)).Sample((size, negative, unit) =>
        {
            double celsius = negative ? -size : size;
            return QuantityText.ParseTemperature(QuantityText.Format(Temperature.FromDegreesCelsius(celsius), unit.Code, QuantityText.AllDigits))
                .DegreesCelsius.Equals(celsius);
        });

    [Fact]
    public void Temperature_difference_with_all_digits_reads_back_exactly_in_every_unit_and_culture()
        => Gen.Select(Amount(-6, 3), Gen.Bool, UnitOf(QuantityKind.TemperatureDifference), s_culture).Sample((size, negative, unit, culture) =>
        {
            double kelvins = negative ? -size : size;
            string text = QuantityText.Format(TemperatureDelta.FromKelvins(kelvins), unit.Code, QuantityText.AllDigits, culture);
            return QuantityText.ParseTemperatureDifference(text, culture).Kelvins.Equals(kelvins);
        });

    [Fact]
    public void Duration_with_all_digits_reads_back_exactly_in_every_unit_and_culture()
        => Gen.Select(Amount(-3, 9), UnitOf(QuantityKind.Duration), s_culture).Sample((seconds, unit, culture) =>
            QuantityText.ParseDuration(QuantityText.Format(Duration.FromSeconds(seconds), unit.Code, QuantityText.AllDigits, culture), culture)
                .Seconds.Equals(seconds));

    [Fact]
    public void Whole_seconds_read_back_from_the_text_in_parts()
        => Gen.Int[0, 1_000_000_000].Sample(seconds =>
            QuantityText.ParseDuration(QuantityText.Format(Duration.FromSeconds(seconds))).Seconds.Equals((double)seconds));

    [Fact]
    public void Length_with_all_digits_reads_back_exactly_in_every_unit_and_culture()
        => Gen.Select(Amount(-6, 6), UnitOf(QuantityKind.Length), s_culture).Sample((metres, unit, culture) =>
            QuantityText.ParseLength(QuantityText.Format(Length.FromMeters(metres), unit.Code, QuantityText.AllDigits, culture), culture).Meters.Equals(metres));

    [Fact]
    public void Pressure_with_all_digits_reads_back_exactly_in_every_unit_and_culture()
        => Gen.Select(Amount(-3, 9), UnitOf(QuantityKind.Pressure), s_culture).Sample((pascals, unit, culture) =>
            QuantityText.ParsePressure(QuantityText.Format(Pressure.FromPascals(pascals), unit.Code, QuantityText.AllDigits, culture), culture)
                .Pascals.Equals(pascals));

    [Fact]
    public void Density_with_all_digits_reads_back_exactly_in_every_unit_and_culture()
        => Gen.Select(Amount(-3, 4.4), UnitOf(QuantityKind.Density), s_culture).Sample((density, unit, culture) =>
            QuantityText.ParseDensity(
                QuantityText.Format(Density.FromKilogramsPerCubicMeter(density), unit.Code, QuantityText.AllDigits, culture), culture)
                .KilogramsPerCubicMeter.Equals(density));

    [Fact]
    public void Base_unit_reads_back_exactly_at_every_size()
        => Gen.Double[0, 1e9].Select(Gen.Int[0, 330], (value, power) => value * Math.Pow(10, -power)).Sample(grams =>
            QuantityText.ParseMass(QuantityText.Format(Mass.FromGrams(grams), "g", QuantityText.AllDigits)).Grams.Equals(grams)
            && QuantityText.ParsePercent(QuantityText.FormatPercent(grams / 1000, QuantityText.AllDigits)).Equals(grams / 1000));

    [Fact]
    public void Arbitrary_text_is_read_or_refused_with_an_error_but_never_throws()
        => Gen.String[Gen.Char["0123456789.,eE+- \u00A0gkmLtspoz%°CF\u0665\uD800½²\t'"], 0, 12].Sample(text =>
            QuantityText.TryParseMass(text, out _, out string mass) == (mass.Length == 0)
            && QuantityText.TryParseVolume(text, out _, out string volume) == (volume.Length == 0)
            && QuantityText.TryParseTemperature(text, out _, out string temperature) == (temperature.Length == 0)
            && QuantityText.TryParseDuration(text, out _, out string duration) == (duration.Length == 0)
            && QuantityText.TryParsePercent(text, out _, out string percent) == (percent.Length == 0)
            && QuantityText.TryParseNumber(text, out _, out string number) == (number.Length == 0));
}
