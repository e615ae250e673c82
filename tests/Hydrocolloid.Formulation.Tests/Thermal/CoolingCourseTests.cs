using CsCheck;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Thermal;

public class CoolingCourseTests
{
    private static readonly ThermalProperties s_gel = new(Density.FromKilogramsPerCubicMeter(1040), SpecificEntropy.FromJoulesPerKilogramKelvin(4000), ThermalConductivity.FromWattsPerMeterKelvin(0.57));

    private static readonly (double Celsius, double Film, double Seconds)[] s_threeStages = [(22, 8, 1800), (0, 800, 1200), (3, 15, 3600)];

    private static readonly Gen<GelBody> s_bodies =
        from kind in Gen.Int[0, 5]
        from a in Gen.Double[4, 80]
        from b in Gen.Double[4, 80]
        select kind switch
        {
            0 => GelBody.Slab(Length.FromMillimeters(a), ExposedFaces.One),
            1 => GelBody.Slab(Length.FromMillimeters(a), ExposedFaces.Both),
            2 => GelBody.LongCylinder(Length.FromMillimeters(a)),
            3 => GelBody.Cylinder(Length.FromMillimeters(a), Length.FromMillimeters(b), ExposedFaces.One),
            4 => GelBody.Sphere(Length.FromMillimeters(a)),
            _ => GelBody.Block(Length.FromMillimeters(a), Length.FromMillimeters(b), Length.FromMillimeters(a)),
        };

    private static readonly Gen<CoolingStep> s_steps =
        from celsius in Gen.Double[-20, 60]
        from film in Gen.Double[0, 3.2]
        from minutes in Gen.Double[2, 120]
        select Step(celsius, Math.Pow(10, film), minutes * 60);

    public static TheoryData<string> Shapes => ["Slab", "Cylinder", "Sphere"];

    [Theory, MemberData(nameof(Shapes))]
    public void Series_carried_through_stages_agrees_with_finite_volumes(string name)
    {
        ConductionShape shape = Enum.Parse<ConductionShape>(name);
        CoolingCourse course = new(Body(shape), s_gel, Celsius(70), s_threeStages.Select(s => Step(s.Celsius, s.Film, s.Seconds)));
        for (int stages = 1; stages <= 3; stages++)
        {
            Places expected = new FiniteVolumes(shape, 0.025, s_gel, 200).Run(70, 2000, s_threeStages[..stages]);
            CoolingPoint point = course.At(Duration.FromSeconds(s_threeStages[..stages].Sum(s => s.Seconds) - 1e-6));
            point.Centre.DegreesCelsius.Should().BeApproximately(expected.Centre, 0.01);
            point.Surface.DegreesCelsius.Should().BeApproximately(expected.Surface, 0.01);
            point.Mean.DegreesCelsius.Should().BeApproximately(expected.Mean, 0.01);
        }
    }

    [Theory, MemberData(nameof(Shapes))]
    public void Finite_volumes_come_to_the_series_at_second_order(string name)
    {
        ConductionShape shape = Enum.Parse<ConductionShape>(name);
        double exact = new CoolingCourse(Body(shape), s_gel, Celsius(70), Step(3, 15, 3600)).At(Duration.FromSeconds(3600)).Mean.DegreesCelsius;
        double Error(int cells) => Math.Abs(new FiniteVolumes(shape, 0.025, s_gel, cells).Run(70, 8000, (3, 15, 3600)).Mean - exact);

        (Error(10) / Error(20)).Should().BeInRange(3.4, 4.6, "half the width gives a quarter of the error");
    }

    [Fact]
    public void A_finite_cylinder_through_changing_surroundings_agrees_with_finite_volumes_in_two_dimensions()
    {
        // The plain product rule does not hold here: the surroundings and the film change from stage to stage.
        GelBody glass = GelBody.Cylinder(Length.FromMillimeters(50), Length.FromMillimeters(40), ExposedFaces.One);
        CoolingCourse course = new(glass, s_gel, Celsius(70), s_threeStages.Select(s => Step(s.Celsius, s.Film, s.Seconds)));
        for (int stages = 1; stages <= 3; stages++)
        {
            (double inner, double mean) = new FiniteVolumes(ConductionShape.Cylinder, 0.025, s_gel, 50).RunCylinder(0.04, 70, 300, s_threeStages[..stages]);
            CoolingPoint point = course.At(Duration.FromSeconds(s_threeStages[..stages].Sum(s => s.Seconds) - 1e-6));
            point.Centre.DegreesCelsius.Should().BeApproximately(inner, 0.1);
            point.Mean.DegreesCelsius.Should().BeApproximately(mean, 0.1);
        }
    }

    [Fact]
    public void Roots_ascend_and_solve_their_equation_at_every_Biot_number()
        => Gen.Select(Gen.Enum<ConductionShape>(), Gen.Double[-9, 7]).Sample((shape, power) =>
        {
            ConductionSeries series = new(shape, Math.Pow(10, power));
            series.Roots.Should().BeInAscendingOrder().And.OnlyHaveUniqueItems();
            // A uniform start is 1 on average: Σ cₙ mₙ comes to it from below.
            series.Uniform().Zip(series.Mean, (c, m) => c * m).Sum().Should().BeInRange(0.98, 1 + 1e-8);
            for (int n = 0; n < ConductionSeries.Terms; n++)
            {
                // -φ' = Bi φ at the surface, seen through the mean, d (-φ')/z².
                double slope = series.Mean[n] * series.Roots[n] * series.Roots[n] / series.Dimension;
                (slope / (1 + series.Biot)).Should().BeApproximately(series.Biot / (1 + series.Biot) * series.Surface[n], 1e-10);
            }
        }, iter: 300);

    [Fact]
    public void Temperatures_stay_between_the_extremes()
        => Gen.Select(s_bodies, s_steps.List[1, 3], Gen.Double[0, 100]).Sample((body, steps, start) =>
        {
            double low = Math.Min(start, steps.Min(s => s.Medium.DegreesCelsius)), high = Math.Max(start, steps.Max(s => s.Medium.DegreesCelsius));
            // The surface may be off by 1 % of the difference in the first moments; the class says so.
            double slack = 0.01 * (high - low);
            foreach (CoolingPoint p in new CoolingCourse(body, s_gel, Celsius(start), steps).Curve)
            {
                p.Centre.DegreesCelsius.Should().BeInRange(low - slack, high + slack);
                p.Surface.DegreesCelsius.Should().BeInRange(low - slack, high + slack);
                p.Mean.DegreesCelsius.Should().BeInRange(low - slack, high + slack);
            }
        }, iter: 200);

    [Fact]
    public void In_one_cold_step_every_place_cools_all_the_way_and_the_centre_is_warmest()
        => Gen.Select(s_bodies, Gen.Double[0, 3.2]).Sample((body, film) =>
        {
            ValueList<CoolingPoint> curve = new CoolingCourse(body, s_gel, Celsius(80), Step(3, Math.Pow(10, film))).Curve;
            for (int i = 1; i < curve.Count; i++)
            {
                curve[i].Centre.DegreesCelsius.Should().BeLessThanOrEqualTo(curve[i - 1].Centre.DegreesCelsius + 0.01);
                curve[i].Surface.DegreesCelsius.Should().BeLessThanOrEqualTo(curve[i - 1].Surface.DegreesCelsius + 1e-9);
                curve[i].Mean.DegreesCelsius.Should().BeInRange(curve[i].Surface.DegreesCelsius - 1e-9, curve[i].Centre.DegreesCelsius + 0.01);
            }
        }, iter: 200);

    [Fact]
    public void Heat_lost_is_the_heat_through_the_surface()
        => Gen.Select(Gen.Int[0, 2], s_steps, s_steps).Sample((shape, first, second) =>
        {
            CoolingCourse course = new(Body((ConductionShape)shape), s_gel, Celsius(70), first, second);
            double seconds = first.Seconds!.Value + (second.Seconds!.Value / 2), width = second.Seconds.Value / 1000;
            double fall = (course.AtSeconds(seconds - width).MeanCelsius - course.AtSeconds(seconds + width).MeanCelsius) / (2 * width);
            double flux = second.WattsPerSquareMetreKelvin * (course.AtSeconds(seconds).SurfaceCelsius - second.Celsius);
            // -ρ c V dT/dt = h A (T - Tₘ)
            (1040.0 * 4000 * course.Body.VolumePerSurface.Meters * fall).Should().BeApproximately(flux, (0.002 * Math.Abs(flux)) + 0.05);
        }, iter: 200);

    [Fact]
    public void A_step_cut_in_two_changes_nothing()
        => Gen.Select(s_bodies, s_steps).Sample((body, step) =>
        {
            double seconds = step.Seconds!.Value;
            CoolingStep half = new(step.Medium, step.Film, Duration.FromSeconds(seconds / 2));
            double whole = new CoolingCourse(body, s_gel, Celsius(70), step).AtSeconds(seconds).CentreCelsius;
            new CoolingCourse(body, s_gel, Celsius(70), half, half).AtSeconds(seconds).CentreCelsius.Should().BeApproximately(whole, 1e-6);
        }, iter: 100);

    [Fact]
    public void Both_faces_are_one_face_at_half_the_thickness_and_warming_mirrors_cooling()
    {
        CoolingStep[] steps = [Step(22, 8, 900), Step(3, 40, 3600)];
        double both = new CoolingCourse(GelBody.Slab(Length.FromMillimeters(30), ExposedFaces.Both), s_gel, Celsius(60), steps).AtSeconds(4000).CentreCelsius;
        double one = new CoolingCourse(GelBody.Slab(Length.FromMillimeters(15), ExposedFaces.One), s_gel, Celsius(60), steps).AtSeconds(4000).CentreCelsius;
        double mirrored = new CoolingCourse(GelBody.Slab(Length.FromMillimeters(15), ExposedFaces.One), s_gel, Celsius(-60), Step(-22, 8, 900), Step(-3, 40, 3600)).AtSeconds(4000).CentreCelsius;
        both.Should().Be(one);
        mirrored.Should().BeApproximately(-one, 1e-9);
    }

    [Fact]
    public void A_block_that_is_wide_is_a_slab_and_a_cube_lies_near_a_sphere()
    {
        CoolingStep step = Step(3, 40, 3600);
        Length wide = Length.FromMeters(8), thin = Length.FromMillimeters(25);
        double slab = new CoolingCourse(GelBody.Slab(thin, ExposedFaces.One), s_gel, Celsius(60), step).AtSeconds(3600).CentreCelsius;
        new CoolingCourse(GelBody.Block(wide, wide, thin, ExposedFaces.One), s_gel, Celsius(60), step).AtSeconds(3600).CentreCelsius.Should().BeApproximately(slab, 0.01);

        Length side = Length.FromMillimeters(40);
        double cube = new CoolingCourse(GelBody.Block(side, side, side), s_gel, Celsius(60), step).AtSeconds(3600).CentreCelsius;
        double inscribed = new CoolingCourse(GelBody.Sphere(side), s_gel, Celsius(60), step).AtSeconds(3600).CentreCelsius;
        double around = new CoolingCourse(GelBody.Sphere(side * Math.Sqrt(3)), s_gel, Celsius(60), step).AtSeconds(3600).CentreCelsius;
        cube.Should().BeInRange(inscribed, around);
    }

    [Fact]
    public void In_the_first_moments_a_deep_body_is_a_semi_infinite_solid()
    {
        GelBody deep = GelBody.Slab(Length.FromMillimeters(100), ExposedFaces.One);
        CoolingStep step = Step(0, 200);
        CoolingCourse course = new(deep, s_gel, Celsius(60), step);
        foreach (double seconds in new[] { 80.0, 300, 1500 })
        {
            Temperature surface = SemiInfiniteSolid.TemperatureAt(Length.Zero, Duration.FromSeconds(seconds), s_gel, Celsius(60), step);
            course.AtSeconds(seconds).SurfaceCelsius.Should().BeApproximately(surface.DegreesCelsius, 0.05);
        }

        foreach (double seconds in new[] { 0.01, 1, 10 })
        {
            Temperature surface = SemiInfiniteSolid.TemperatureAt(Length.Zero, Duration.FromSeconds(seconds), s_gel, Celsius(60), step);
            course.AtSeconds(seconds).SurfaceCelsius.Should().BeApproximately(surface.DegreesCelsius, 0.6, "1 % of the difference");
        }
    }

    [Fact]
    public void A_small_piece_in_still_air_follows_Newton()
    {
        GelBody pea = GelBody.Sphere(Length.FromMillimeters(8));
        Computed<Duration> constant = NewtonCooling.TimeConstant(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(8), pea.VolumePerSurface, s_gel.Density, s_gel.SpecificHeat, s_gel.Conductivity);
        constant.InRange.Should().BeTrue();
        CoolingTime lumped = NewtonCooling.TimeUntil(Celsius(60), Celsius(20), Celsius(4), constant.Value);
        CoolingTime exact = new CoolingCourse(pea, s_gel, Celsius(60), Step(4, 8)).TimeUntilBelow(Celsius(20));
        exact.Time!.Value.Seconds.Should().BeApproximately(lumped.Time!.Value.Seconds, 0.05 * lumped.Time.Value.Seconds);
        NewtonCooling.TimeConstant(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(800), Length.FromMillimeters(10), s_gel.Density, s_gel.SpecificHeat, s_gel.Conductivity).InRange.Should().BeFalse();
    }

    [Fact]
    public void A_temperature_is_reached_or_the_answer_says_why_not()
    {
        GelBody layer = GelBody.Slab(Length.FromMillimeters(25), ExposedFaces.One);
        CoolingCourse endless = new(layer, s_gel, Celsius(60), Step(22, 8, 1800), Step(4, 8));
        endless.TimeUntilBelow(Celsius(60)).Time!.Value.Seconds.Should().Be(0);
        endless.TimeUntilBelow(Celsius(4)).Outcome.Should().Be(CoolingTimeOutcome.Never);
        endless.TimeUntilBelow(Celsius(-10)).Time.Should().BeNull();
        // Past the end of the curve the time still grows by the logarithm of what is left.
        double hundredth = endless.TimeUntilBelow(Celsius(4.0001)).Time!.Value.Seconds, thousandth = endless.TimeUntilBelow(Celsius(4.00001)).Time!.Value.Seconds;
        double tenth = endless.TimeUntilBelow(Celsius(4.001)).Time!.Value.Seconds;
        (thousandth - hundredth).Should().BeApproximately(hundredth - tenth, 1);

        new CoolingCourse(layer, s_gel, Celsius(60), Step(4, 8, 600)).TimeUntilBelow(Celsius(20)).Outcome.Should().Be(CoolingTimeOutcome.StepsEndBefore);
        new CoolingCourse(layer, s_gel, Celsius(20), Step(60, 8)).TimeUntilBelow(Celsius(10)).Outcome.Should().Be(CoolingTimeOutcome.Never);
    }

    [Fact]
    public void The_time_is_that_at_which_the_curve_has_the_temperature()
        => Gen.Select(s_bodies, s_steps, Gen.Double[5, 55]).Sample((body, first, target) =>
        {
            CoolingCourse course = new(body, s_gel, Celsius(70), first, Step(3, 20));
            CoolingPoint point = course.At(course.TimeUntilBelow(Celsius(target)).Time!.Value);
            Math.Max(point.Centre.DegreesCelsius, point.Surface.DegreesCelsius).Should().BeApproximately(target, 0.001);
        }, iter: 100);

    [Fact]
    public void A_wall_slows_and_every_named_medium_has_a_range_around_its_usual_value()
    {
        CoolingStep bath = CoolingStep.In(CoolingMedium.StirredIceBath, Celsius(0));
        CoolingStep mould = bath.Through(Length.FromMillimeters(2), ThermalConductivity.FromWattsPerMeterKelvin(0.2));
        mould.Film.WattsPerSquareMeterKelvin.Should().BeApproximately(1 / ((1 / 800.0) + 0.01), 1e-9);
        foreach (CoolingMedium medium in CoolingMedium.All)
        {
            medium.WattsPerSquareMetreKelvin.Value.Contains(medium.Typical.WattsPerSquareMeterKelvin).Should().BeTrue();
            medium.Slowest.WattsPerSquareMeterKelvin.Should().BeLessThan(medium.Fastest.WattsPerSquareMeterKelvin);
            medium.WattsPerSquareMetreKelvin.Citation.IsRecalled.Should().BeTrue();
        }
    }

    [Fact]
    public void Properties_of_a_gel_lie_where_gels_lie()
    {
        // Gels of 85–99 % water: α = 1.35–1.46e-7 m²/s, worked out from the component equations.
        Computed<ThermalProperties> gel = ThermalProperties.Of(new FoodShares(waterPercent: 88, carbohydratePercent: 12), Celsius(30));
        gel.InRange.Should().BeTrue();
        gel.Value.DiffusivitySquareMetresPerSecond.Should().BeInRange(1.35e-7, 1.5e-7);
    }

    [Fact]
    public void Bad_input_is_refused_with_its_limit()
    {
        GelBody layer = GelBody.Slab(Length.FromMillimeters(25), ExposedFaces.One);
        CoolingCourse course = new(layer, s_gel, Celsius(60), Step(4, 8, 600));
        Refused(() => GelBody.Slab(Length.Zero, ExposedFaces.One)).WithMessage("*10 m*");
        Refused(() => GelBody.Sphere(Length.FromMillimeters(-1)));
        Refused(() => GelBody.Slab(Length.FromMeters(1), (ExposedFaces)7));
        Refused(() => Step(4, 0)).WithMessage("*W/(m²·K)*");
        Refused(() => Step(4, -1));
        Refused(() => Step(4, 8, 0)).WithMessage("*more than 0 s*");
        Refused(() => Step(-300, 8));
        Refused(() => course.At(Duration.FromSeconds(601))).WithMessage("*600 s*");
        Refused(() => course.At(Duration.FromSeconds(-1)));
        Refused(() => course.TimeUntilBelow(Celsius(-300)));
        Refused(() => new ThermalProperties(Density.Zero, s_gel.SpecificHeat, s_gel.Conductivity));
        Refused(() => new ThermalProperties(s_gel.Density, s_gel.SpecificHeat, ThermalConductivity.Zero));
        Refused(() => NewtonCooling.TimeConstant(Celsius(60), Celsius(70), Duration.FromMinutes(1), Celsius(4)));
        Refused(() => NewtonCooling.TemperatureAfter(Celsius(60), Celsius(4), Duration.Zero, Duration.Zero));
        FluentActions.Invoking(() => new CoolingCourse(layer, s_gel, Celsius(60))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new CoolingCourse(layer, s_gel, Celsius(60), Step(4, 8), Step(3, 8))).Should().Throw<ArgumentException>();
        NewtonCooling.TimeUntil(Celsius(60), Celsius(3), Celsius(4), Duration.FromHours(1)).Outcome.Should().Be(CoolingTimeOutcome.Never);
    }

    private static FluentAssertions.Specialized.ExceptionAssertions<ArgumentOutOfRangeException> Refused(Func<object> act)
        => FluentActions.Invoking(act).Should().Throw<ArgumentOutOfRangeException>();

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static CoolingStep Step(double celsius, double film, double? seconds = null)
        => new(Celsius(celsius), HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(film), seconds is { } s ? Duration.FromSeconds(s) : null);

    private static GelBody Body(ConductionShape shape) => shape switch
    {
        ConductionShape.Slab => GelBody.Slab(Length.FromMillimeters(25), ExposedFaces.One),
        ConductionShape.Cylinder => GelBody.LongCylinder(Length.FromMillimeters(50)),
        _ => GelBody.Sphere(Length.FromMillimeters(50)),
    };
}
