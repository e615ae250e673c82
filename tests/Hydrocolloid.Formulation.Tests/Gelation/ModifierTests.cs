using CsCheck;
using Hydrocolloid.Formulation.Gelation;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Gelation;

public class ModifierTests
{
    [Fact]
    public void Steps_of_heat_add_up_in_any_order_and_any_cut()
        => Gen.Select(Gen.Double[80, 120], Gen.Double[3, 6], Gen.Double[0, 30], Gen.Double[0, 1]).Sample((celsius, ph, minutes, share) =>
        {
            double whole = Left(Step(celsius, ph, minutes), Step(90, 5, 10));
            double cut = Left(Step(90, 5, 10), Step(celsius, ph, minutes * share), Step(celsius, ph, minutes * (1 - share)));
            return Math.Abs(whole - cut) <= 1e-9 && whole is >= 0 and <= 100;
        });

    [Fact]
    public void Heat_outside_the_table_and_large_losses_say_so()
    {
        StrengthLoss.CarrageenanQuarterLoss(Celsius(70), 4).Outside!.Quantity.Should().Be("temperature");
        StrengthLoss.CarrageenanQuarterLoss(Celsius(90), 2.5).Outside!.Quantity.Should().Be("pH");
        StrengthLoss.CarrageenanScissionPerHour(Celsius(120)).InRange.Should().BeFalse();
        Estimate<double> half = StrengthLoss.Remaining(Hydrocolloids.CarrageenanIota, [Step(100, 4, 10)]);
        half.Outside!.Quantity.Should().Be("remaining strength");
        half.Low.Should().BeLessThan(half.Value!.Value).And.BeLessThan(half.High!.Value);
        StrengthLoss.Remaining(Hydrocolloids.CarrageenanKappa, []).Value.Should().Be(100);
    }

    [Theory]
    [InlineData("gelatin-type-a")]
    [InlineData("agar")]
    [InlineData("curdlan")]
    public void Without_a_published_rate_no_loss_is_given(string id)
    {
        Estimate<double> left = StrengthLoss.Remaining(Catalogue.BuiltIn.Get(id).As("house", "House"), [Step(90, 4, 10)]);
        left.Value.Should().BeNull();
        left.Reliance.Should().Be(Reliance.QualitativeOnly);
    }

    [Fact]
    public void Activation_energy_gives_back_the_ratio_it_came_from()
        => Gen.Select(Gen.Double[1.1, 10], Gen.Double[0, 60], Gen.Double[5, 50]).Sample((ratio, celsius, rise) =>
            Math.Abs(Kinetics.RateRatio(Kinetics.ActivationEnergy(ratio, Celsius(celsius), Celsius(celsius + rise)), Celsius(celsius), Celsius(celsius + rise)) - ratio) < 1e-9 * ratio);

    [Fact]
    public void First_order_halves_in_its_half_life()
    {
        Kinetics.RemainingPercent(Math.Log(2), Duration.FromHours(1)).Should().BeApproximately(50, 1e-12);
        FluentActions.Invoking(() => Kinetics.ActivationEnergy(2, Celsius(5), Celsius(5))).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Gelatin_sets_and_melts_within_the_scatter_of_the_table()
    {
        // Chori to riron, table [recalled]: percent, setting °C, melting °C
        (double, double, double)[] table = [(2, 3.2, 20), (3, 8, 23.5), (4, 10.5, 25), (5, 13.5, 26.5), (6, 14.5, 27), (10, 18.5, 28.5)];
        foreach ((double percent, double sets, double melts) in table)
        {
            Holds(SetAndMelt.SettingOf(Hydrocolloids.GelatinTypeA, percent), sets);
            Holds(SetAndMelt.MeltingOf(Hydrocolloids.GelatinTypeA, percent), melts);
        }

        SetAndMelt.MeltingOf(Hydrocolloids.GelatinTypeB, 1).InRange.Should().BeFalse();

        static void Holds(Estimate<Temperature> estimate, double celsius)
        {
            celsius.Should().BeInRange(estimate.Low!.Value.DegreesCelsius, estimate.High!.Value.DegreesCelsius);
            estimate.InRange.Should().BeTrue();
        }
    }

    [Fact]
    public void Other_agents_have_the_catalogues_window_or_nothing()
    {
        Estimate<Temperature> kappa = SetAndMelt.SettingOf(Hydrocolloids.CarrageenanKappa, 0.5);
        kappa.Value.Should().BeNull();
        kappa.Low!.Value.DegreesCelsius.Should().Be(Hydrocolloids.CarrageenanKappa.Profile!.Setting.Window!.Value.Celsius.Min);
        SetAndMelt.KappaMelting(Celsius(40)).High!.Value.DegreesCelsius.Should().Be(55);
        SetAndMelt.SettingOf(Pantry.Water, 1).Reliance.Should().Be(Reliance.QualitativeOnly);
        SetAndMelt.SettingOf(Hydrocolloids.Agar, 0.5).InRange.Should().BeFalse("the range was stated for 1.5 %");
    }

    [Fact]
    public void Gelatin_matures_sooner_when_colder()
    {
        GelModifiers.GelatinMaturation(Celsius(5)).High!.Value.Hours.Should().BeApproximately(8, 1e-12);
        GelModifiers.GelatinMaturation(Celsius(10)).Low!.Value.Hours.Should().BeApproximately(15, 1e-12);
        GelModifiers.GelatinMaturation(Celsius(2)).InRange.Should().BeFalse();
    }

    [Fact]
    public void Fat_and_sugar_have_figures_where_they_were_measured()
    {
        GelModifiers.GelatinWithFat(0).Value.Should().Be(100);
        GelModifiers.GelatinWithFat(60).InRange.Should().BeFalse();
        GelModifiers.AgarWithSugar(30).High.Should().Be(180);
        GelModifiers.AgarWithSugar(20).Reliance.Should().Be(Reliance.QualitativeOnly);
    }

    [Fact]
    public void Ions_outside_the_measured_doses_say_so()
    {
        IonDemand.GellanMonovalentMmolPerLitre(1).InRange.Should().BeFalse();
        IonDemand.KappaPotassium(3).InRange.Should().BeFalse();
        IonDemand.KappaPotassium(1.5).Value.Should().Be(new NumberRange(0.1, 0.4));
        IonDemand.AlginateCalcium(Mass.FromGrams(10)).Value!.Value.Grams.Should().BeApproximately(0.72, 1e-12);
    }

    [Fact]
    public void Pectin_of_a_degree_between_the_types_has_none_and_at_a_shared_limit_two()
    {
        PectinGel.TypesOf(70).Should().BeEmpty();
        PectinGel.TypesOf(74).Select(t => t.Name).Should().Equal("ultra rapid set", "rapid set");
        FluentActions.Invoking(() => PectinGel.PectinFor(Mass.FromGrams(1), new(GradeScale.Bloom, 200))).Should().Throw<ArgumentException>();
    }

    private static double Left(params HeatStep[] steps) => StrengthLoss.Remaining(Hydrocolloids.CarrageenanKappa, steps).Value!.Value;

    private static HeatStep Step(double celsius, double ph, double minutes) => new(Celsius(celsius), ph, Duration.FromMinutes(minutes));

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);
}
