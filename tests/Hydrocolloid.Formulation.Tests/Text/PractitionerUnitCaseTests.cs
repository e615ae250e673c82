using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Text;

/// <summary>Unit cases met in kitchens; the trait holds the case's id.</summary>
public class PractitionerUnitCaseTests
{
    [Fact, Trait("Case", "PC-021")]
    public void Two_Australian_tablespoons_hold_a_third_more_than_two_US_ones()
    {
        double us = QuantityText.ParseVolume("2 US tbsp").Milliliters;
        double australian = QuantityText.ParseVolume("2 Australian tbsp").Milliliters;

        us.Should().BeApproximately(29.57, 0.005);
        australian.Should().Be(40);
        (100 * (australian / us - 1)).Should().BeApproximately(35.3, 0.05);
        QuantityText.Format(Volume.FromMilliliters(us), "tbs-au", 3).Should().Be("1.48 Australian tbsp");
    }

    [Fact, Trait("Case", "PC-033")]
    public void Fahrenheit_offset_is_a_difference_and_does_not_move_the_zero()
    {
        double reading = QuantityText.ParseTemperature("50 °F").DegreesCelsius;
        double offset = QuantityText.ParseTemperatureDifference("1.5 °F").Kelvins;

        reading.Should().Be(10);
        offset.Should().BeApproximately(0.8333, 0.00005);
        (reading + offset).Should().BeApproximately(10.833, 0.0005);
    }

    [Fact, Trait("Case", "PC-034")]
    public void Fifty_three_Fahrenheit_is_one_thing_as_a_reading_and_another_as_a_difference()
    {
        QuantityText.ParseTemperature("53 °F").DegreesCelsius.Should().BeApproximately(11.6667, 0.00005);
        QuantityText.ParseTemperatureDifference("53 °F").Kelvins.Should().BeApproximately(29.4444, 0.00005);
    }

    [Fact, Trait("Case", "PC-034")]
    public void Two_temperature_readings_cannot_be_added()
        => typeof(Temperature).GetMethods().Where(m => m.Name == "op_Addition")
            .Should().NotContain(m => m.GetParameters().All(p => p.ParameterType == typeof(Temperature)));

    [Fact, Trait("Case", "PC-043")]
    public void Spoons_and_pints_differ_by_standard_as_published()
    {
        double usTeaspoon = QuantityText.ParseVolume("1 US tsp").Milliliters;
        double usPint = QuantityText.ParseVolume("1 US pt").Milliliters;
        double imperialPint = QuantityText.ParseVolume("1 imperial pt").Milliliters;

        usTeaspoon.Should().BeApproximately(4.92892, 0.000005);
        usPint.Should().BeApproximately(473.176, 0.0005);
        imperialPint.Should().BeApproximately(568.261, 0.0005);
        QuantityText.ParseVolume("1 [pt_br]").Milliliters.Should().Be(imperialPint);
        (100 * (imperialPint / usPint - 1)).Should().BeApproximately(20.09, 0.01);
        (100 * (QuantityText.ParseVolume("1 metric tsp").Milliliters / usTeaspoon - 1)).Should().BeApproximately(1.44, 0.005);
    }

    [Fact, Trait("Case", "PC-043")]
    public void Bare_teaspoon_is_refused_and_the_standards_are_named()
    {
        QuantityText.TryParseVolume("1 teaspoon", out _, out string error).Should().BeFalse();
        error.Should().Be("Unit \"teaspoon\" is refused because it does not say whose measure it is. Write one of: US tsp (4.92892 mL), metric tsp (5 mL).");
    }

    [Fact, Trait("Case", "PC-022")]
    public void Quarter_ounce_packet_is_7_087_g()
        => QuantityText.ParseMass("0.25 oz").Grams.Should().BeApproximately(7.087, 0.0005);

    [Theory, Trait("Case", "PC-003"), Trait("Case", "PC-026")]
    [InlineData("85 °F", 29.44)]
    [InlineData("90 °F", 32.22)]
    public void Fahrenheit_reading_is_converted(string text, double celsius)
        => QuantityText.ParseTemperature(text).DegreesCelsius.Should().BeApproximately(celsius, 0.005);
}
