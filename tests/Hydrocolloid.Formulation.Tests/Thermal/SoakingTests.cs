using CsCheck;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Thermal;

public class SoakingTests
{
    private const double D = 5e-10;

    private static readonly Gen<Soaking> s_soakings =
        from kind in Gen.Int[0, 3]
        from mm in Gen.Double[1, 30]
        from ratio in Gen.Double[-1, 2]
        from limited in Gen.Bool
        let size = Length.FromMillimeters(mm)
        select new Soaking(kind switch
        {
            0 => GelBody.Slab(size, ExposedFaces.One),
            1 => GelBody.Slab(size, ExposedFaces.Both),
            2 => GelBody.LongCylinder(size),
            _ => GelBody.Sphere(size),
        }, D, limited ? Math.Pow(10, ratio) : null);

    [Fact]
    public void Uptake_runs_from_nothing_to_all_and_never_back()
        => s_soakings.Sample(soaking =>
        {
            double nearlyAll = soaking.TimeUntil(99.9).Seconds, before = 0;
            for (int i = 0; i <= 60; i++)
            {
                double now = soaking.UptakePercent(Duration.FromSeconds(nearlyAll * i * i / 3600));
                now.Should().BeInRange(before - 1e-9, 100);
                before = now;
            }

            before.Should().BeApproximately(99.9, 1e-4);
            soaking.UptakePercent(Duration.Zero).Should().Be(0);
        }, iter: 200);

    [Fact]
    public void Time_and_uptake_are_inverse()
        => Gen.Select(s_soakings, Gen.Double[0.5, 99.5]).Sample((soaking, percent)
            => soaking.UptakePercent(soaking.TimeUntil(percent)).Should().BeApproximately(percent, 1e-4), iter: 200);

    [Theory, InlineData("Slab"), InlineData("Cylinder"), InlineData("Sphere")]
    public void What_the_gel_takes_up_is_what_the_limited_bath_loses(string name)
    {
        // Finite volumes with a bath of its own: an independent check of the three limited-bath series, of which only the slab's roots are checked against a table.
        ConductionShape shape = Enum.Parse<ConductionShape>(name);
        const int Cells = 100;
        const double Ratio = 1.5;
        int d = ConductionSeries.DimensionOf(shape);
        double[] gel = new double[Cells];
        double bath = 1, dx = 1.0 / Cells, dt = 0.2 * dx * dx, fourier = 0;
        Soaking soaking = new(Body(shape), 1e-10, Ratio);
        while (fourier < 0.1)
        {
            double inward = 0;
            for (int i = Cells; i >= 1; i--)
            {
                // The flux through face i, from the outside in, with the cells' old values.
                double outer = i == Cells ? (bath - gel[i - 1]) / (dx / 2) : (gel[i] - gel[i - 1]) / dx;
                double through = outer * Math.Pow(i * dx, d - 1) * dt;
                if (i < Cells)
                {
                    gel[i] += (inward - through) / Volume(i);
                }
                else
                {
                    bath -= d * through / Ratio;
                }

                inward = through;
            }

            gel[0] += inward / Volume(0);
            fourier += dt;
        }

        double uptake = Ratio * (1 - bath), final = Ratio / (1 + Ratio);
        Duration time = Duration.FromSeconds(fourier * 0.005 * 0.005 / 1e-10);
        soaking.UptakePercent(time).Should().BeApproximately(100 * uptake / final, 0.3);
        soaking.CentrePercent(time).Should().BeApproximately(100 * gel[0] / final, 0.3);

        double Volume(int i) => (Math.Pow((i + 1) * dx, d) - Math.Pow(i * dx, d)) / d;
    }

    [Fact]
    public void A_huge_bath_is_a_large_bath()
    {
        foreach (ConductionShape shape in Enum.GetValues<ConductionShape>())
        {
            Soaking large = new(Body(shape), D), huge = new(Body(shape), D, 1e6);
            huge.UptakePercent(Duration.FromHours(2)).Should().BeApproximately(large.UptakePercent(Duration.FromHours(2)), 0.001);
            huge.CentrePercent(Duration.FromHours(2)).Should().BeApproximately(large.CentrePercent(Duration.FromHours(2)), 0.001);
        }
    }

    [Fact]
    public void A_wide_block_soaks_as_a_slab_and_four_times_as_long_through_one_face()
    {
        Length thin = Length.FromMillimeters(10), wide = Length.FromMeters(5);
        Soaking slab = new(GelBody.Slab(thin, ExposedFaces.Both), D), one = new(GelBody.Slab(thin, ExposedFaces.One), D);
        new Soaking(GelBody.Block(wide, wide, thin), D).TimeUntil(50).Seconds.Should().BeApproximately(slab.TimeUntil(50).Seconds, 0.01 * slab.TimeUntil(50).Seconds);
        one.TimeUntil(50).Seconds.Should().BeApproximately(4 * slab.TimeUntil(50).Seconds, 0.01);
    }

    [Fact]
    public void The_mass_balance_says_what_the_gel_holds()
    {
        Soaking soaking = new(GelBody.Slab(Length.FromMillimeters(10), ExposedFaces.Both), D, bathPerGel: 4);
        // 1 kg of gel at 5 % and 4 kg of syrup at 40 %: (0.05 + 1.6)/5 kg = 33 %.
        soaking.FinalPercent(5, 40).Should().BeApproximately(33, 1e-12);
        soaking.GelPercent(5, 40, Duration.Zero).Should().Be(5);
        soaking.GelPercent(5, 40, soaking.TimeUntil(50)).Should().BeApproximately(19, 1e-4);
        new Soaking(soaking.Body, D).FinalPercent(5, 40).Should().Be(40);
    }

    [Fact]
    public void Diffusivities_outside_their_temperatures_say_so()
    {
        Diffusivities.Sucrose.InWater(Temperature.FromDegreesCelsius(5)).InRange.Should().BeFalse();
        Diffusivities.Ethanol.InWater(Temperature.FromDegreesCelsius(40)).InRange.Should().BeFalse();
        Diffusivities.Ethanol.InWater(Temperature.FromDegreesCelsius(25)).Value.Should().BeApproximately(1.28e-9, 1e-18);
        // Recalled: sucrose at 5 °C in water is 0.285e-9; the line from 25–45 °C comes to within 6 % of it.
        Diffusivities.Sucrose.InWater(Temperature.FromDegreesCelsius(5)).Value.Should().BeApproximately(0.285e-9, 0.02e-9);
        // Arrhenius fits of the same rows, worked out elsewhere: 22.4, 19.6, 17.3 and 16.6 kJ/mol.
        new[] { Diffusivities.Sucrose, Diffusivities.Glucose, Diffusivities.Fructose, Diffusivities.Lactose }.Select(d => Math.Round(d.ActivationEnergyJoulesPerMole / 1000, 1))
            .Should().Equal(22.4, 19.6, 17.3, 16.6);
        Diffusivities.RatioInGelatin.Citation.Quality.Should().Be(CitationQuality.Estimate);
    }

    [Fact]
    public void A_membrane_grows_as_the_root_of_time_with_calcium_and_against_alginate()
    {
        double Middle(double calcium, double alginate, double seconds)
        {
            NumberRange range = AlginateMembrane.ThicknessMillimetres(calcium, alginate, Duration.FromSeconds(seconds)).Value;
            return (range.Min!.Value + range.Max!.Value) / 2;
        }

        Middle(45, 1, 240).Should().BeApproximately(2 * Middle(45, 1, 60), 1e-9);
        Middle(90, 1, 60).Should().BeGreaterThan(Middle(45, 1, 60));
        Middle(45, 2, 60).Should().BeLessThan(Middle(45, 1, 60));
        // With little calcium in the bath the front is quasi-steady, X = √(2 D t C/β).
        AlginateMembrane.Millimetres(7.5e-10, 0.01, 60).Should().BeApproximately(1000 * Math.Sqrt(2 * 7.5e-10 * 60 * 0.01), 1e-4);
        Cited<NumberRange> estimate = AlginateMembrane.ThicknessMillimetres(45, 1, Duration.FromSeconds(60));
        estimate.Value.Contains(0.353).Should().BeTrue();
        estimate.Citation.Quality.Should().Be(CitationQuality.Estimate);
    }

    [Fact]
    public void An_uncovered_gel_dries_in_proportion_to_what_the_air_can_take()
    {
        double Most(double humidity, double activity = 1) => StorageDrying.LossGrams(Area.FromSquareMeters(0.1), Temperature.FromDegreesCelsius(4), humidity,
            HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(4), Duration.FromHours(24), activity).Value.Max!.Value;

        Most(60).Should().BeApproximately(2 * Most(80), 1e-9);
        Most(100).Should().Be(0);
        Most(95, activity: 0.9).Should().Be(0);
        // By hand: ρ of saturated vapour at 4 °C is 6.4 g/m³, hₘ = 4/(1.275 · 1007 · 0.918) = 3.39 mm/s: 24 h over 0.1 m² at 80 % is 37.4 g, ±40 %.
        Most(80).Should().BeApproximately(1.4 * 37.4, 0.5);
    }

    [Fact]
    public void Bad_input_is_refused_with_its_limit()
    {
        GelBody slice = Body(ConductionShape.Slab);
        Refused(() => new Soaking(slice, 0));
        Refused(() => new Soaking(slice, double.NaN));
        Refused(() => new Soaking(slice, D, 0));
        Refused(() => new Soaking(slice, D).TimeUntil(100));
        Refused(() => new Soaking(slice, D).TimeUntil(-1));
        Refused(() => new Soaking(slice, D).UptakePercent(Duration.FromSeconds(-1)));
        Refused(() => new Soaking(slice, D).FinalPercent(5, 101));
        Refused(() => Diffusivities.ObstructionRatio(61));
        Refused(() => AlginateMembrane.ThicknessMillimetres(0, 1, Duration.FromSeconds(1)));
        Refused(() => StorageDrying.LossGrams(Area.FromSquareMeters(-1), Temperature.FromDegreesCelsius(4), 80, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(4), Duration.FromHours(1)));
        Refused(() => StorageDrying.LossGrams(Area.FromSquareMeters(1), Temperature.FromDegreesCelsius(40), 80, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(4), Duration.FromHours(1)));
        FluentActions.Invoking(() => new Soaking(GelBody.Cylinder(Length.FromMillimeters(10), Length.FromMillimeters(10)), D, 4)).Should().Throw<ArgumentException>().WithMessage("*limited bath*");
    }

    private static void Refused(Func<object> act) => FluentActions.Invoking(act).Should().Throw<ArgumentOutOfRangeException>();

    private static GelBody Body(ConductionShape shape) => shape switch
    {
        ConductionShape.Slab => GelBody.Slab(Length.FromMillimeters(10), ExposedFaces.Both),
        ConductionShape.Cylinder => GelBody.LongCylinder(Length.FromMillimeters(10)),
        _ => GelBody.Sphere(Length.FromMillimeters(10)),
    };
}
