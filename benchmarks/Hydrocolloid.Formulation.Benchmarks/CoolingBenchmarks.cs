using BenchmarkDotNet.Attributes;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>The curve of a cooling, against the one-term formula with its constants from a table evaluated at as many points.</summary>
[MemoryDiagnoser]
public class CoolingBenchmarks
{
    private static readonly ThermalProperties s_gel = new(Density.FromKilogramsPerCubicMeter(1040), SpecificEntropy.FromJoulesPerKilogramKelvin(4000), ThermalConductivity.FromWattsPerMeterKelvin(0.57));
    private static readonly GelBody s_layer = GelBody.Slab(Length.FromMillimeters(25), ExposedFaces.One);
    private static readonly GelBody s_glass = GelBody.Cylinder(Length.FromMillimeters(60), Length.FromMillimeters(50), ExposedFaces.One);
    private static readonly CoolingStep s_refrigerator = CoolingStep.In(CoolingMedium.FanRefrigerator, Temperature.FromDegreesCelsius(3));
    private static readonly CoolingStep[] s_threeSteps =
    [
        CoolingStep.In(CoolingMedium.StillAir, Temperature.FromDegreesCelsius(22), Duration.FromMinutes(30)),
        CoolingStep.In(CoolingMedium.StirredIceBath, Temperature.FromDegreesCelsius(1), Duration.FromMinutes(20)),
        s_refrigerator,
    ];

    /// <summary>49 points of a slab, centre and surface.</summary>
    [Benchmark(Baseline = true)]
    public double OneTerm_Slab()
    {
        // z₁ and C₁ for Bi = 0.66.
        const double Root = 0.7321, Coefficient = 1.0875;
        double sum = 0;
        for (int i = 0; i < 49; i++)
        {
            double theta = Coefficient * Math.Exp(-Root * Root * 0.1 * i);
            sum += 3 + (67 * theta) + (67 * theta * Math.Cos(Root));
        }

        return sum;
    }

    [Benchmark]
    public int Slab_OneStep() => new CoolingCourse(s_layer, s_gel, Temperature.FromDegreesCelsius(70), s_refrigerator).Curve.Count;

    [Benchmark]
    public int Slab_ThreeSteps() => new CoolingCourse(s_layer, s_gel, Temperature.FromDegreesCelsius(70), s_threeSteps).Curve.Count;

    [Benchmark]
    public int Cylinder_ThreeSteps() => new CoolingCourse(s_glass, s_gel, Temperature.FromDegreesCelsius(70), s_threeSteps).Curve.Count;
}
