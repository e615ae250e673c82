using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// The eigenfunctions of conduction along one direction with a film on the surface: θ(x, Fo) = Σ cₙ exp(-zₙ² Fo) φₙ(x), x from 0 (centre, or insulated face) to 1 (surface).
/// Slab: φ = cos zx, z tan z = Bi. Cylinder: φ = J₀(zx), z J₁(z) = Bi J₀(z). Sphere: φ = sin(zx)/(zx), 1 - z cot z = Bi. An infinite Bi fixes the surface. Recalled from the textbooks
/// on heat transfer; the first roots and coefficients meet the table of Çengel and Ghajar (2015), table 4-2. The eigenfunctions of one Bi can be written in those of another, which carries
/// a profile from one stage of cooling into the next without a grid.
/// </summary>
internal sealed class ConductionSeries
{
    // zₙ² Fo is above 15 from Fo = 0.001 on; what is left out before that is added by UnitResponse.
    internal const int Terms = 40;

    private static readonly Lazy<double[]> s_zerosOfJ0 = new(() => Zeros(n => (n - 0.5) * Math.PI, n => n * Math.PI, z => SpecialFunctions.BesselJ(0, z)));
    private static readonly Lazy<double[]> s_zerosOfJ1 = new(() => Zeros(n => n * Math.PI, n => (n + 0.5) * Math.PI, z => SpecialFunctions.BesselJ(1, z)));

    private readonly double[] _norms = new double[Terms];

    public ConductionSeries(ConductionShape shape, double biot)
    {
        Shape = shape;
        Biot = biot;
        Roots = RootsOf(shape, biot);
        if (biot < 1e-4)
        {
            // Too flat there to be found: z² = d Bi (1 - Bi/(d + 2)), the expansion to within 1e-9.
            Roots[0] = Math.Sqrt(Dimension * biot * (1 - (biot / (Dimension + 2))));
        }

        for (int n = 0; n < Terms; n++)
        {
            double z = Roots[n];
            (Surface[n], double slope, _norms[n]) = AtSurface(shape, z);
            if (biot < 1)
            {
                // The same by way of the film, -φ' = Bi φ: for a small first root the difference of sines would cancel.
                slope = biot * Surface[n];
                _norms[n] = 0.5 * Surface[n] * Surface[n] * (1 + (biot * (biot + 2 - Dimension) / (z * z)));
            }

            Mean[n] = MeanOf(shape, z, slope);
        }
    }

    public ConductionShape Shape { get; }

    public double Biot { get; }

    /// <summary>zₙ, ascending.</summary>
    public double[] Roots { get; }

    /// <summary>φₙ at the surface; at the centre it is 1.</summary>
    public double[] Surface { get; } = new double[Terms];

    /// <summary>The mean of φₙ over the volume.</summary>
    public double[] Mean { get; } = new double[Terms];

    /// <summary>1 for a slab, 2 for a cylinder, 3 for a sphere: the exponent in w = x^(d-1), and half-thickness over V/A.</summary>
    public int Dimension => DimensionOf(Shape);

    /// <summary>The mean over the volume of the eigenfunction with any z.</summary>
    public static double MeanOf(ConductionShape shape, double z) => MeanOf(shape, z, AtSurface(shape, z).Slope);

    public static int DimensionOf(ConductionShape shape) => (int)shape + 1;

    /// <summary>cₙ of a uniform start at 1.</summary>
    public double[] Uniform()
    {
        var coefficients = new double[Terms];
        for (int n = 0; n < Terms; n++)
        {
            coefficients[n] = Mean[n] / Dimension / _norms[n];
        }

        return coefficients;
    }

    /// <summary>cₙ here of a profile that is given in the eigenfunctions of another Bi: ∫ w φₘ φₙ = (φₙ gₘ - φₘ gₙ)/(zₘ² - zₙ²), g = -φ' at the surface (Green's identity).</summary>
    public double[] From(ConductionSeries other, double[] profile)
    {
        // So close, the roots nearly coincide and the quotient is all rounding.
        if (Math.Abs(Biot - other.Biot) <= 1e-7 * Biot)
        {
            return profile;
        }

        var coefficients = new double[Terms];
        for (int n = 0; n < Terms; n++)
        {
            double sum = 0;
            for (int m = 0; m < Terms && profile[m] != 0; m++)
            {
                // With g = Bi φ the bracket is (Biₘ - Biₙ) φₘ φₙ, without cancellation.
                sum += profile[m] * (other.Biot - Biot) * other.Surface[m] * Surface[n] / ((other.Roots[m] - Roots[n]) * (other.Roots[m] + Roots[n]));
            }

            coefficients[n] = sum / _norms[n];
        }

        return coefficients;
    }

    /// <summary>φₙ at a relative position, 0–1.</summary>
    public double Profile(int n, double x) => Shape switch
    {
        ConductionShape.Slab => Math.Cos(Roots[n] * x),
        ConductionShape.Cylinder => SpecialFunctions.BesselJ(0, Roots[n] * x),
        _ => Roots[n] * x < 1e-8 ? 1 : Math.Sin(Roots[n] * x) / (Roots[n] * x),
    };

    /// <summary>Zeros of J₀ and J₁ for the roots of other problems on a cylinder.</summary>
    internal static double ZeroOfJ0(int n) => s_zerosOfJ0.Value[n - 1];

    internal static double ZeroOfJ1(int n) => n == 0 ? 0 : s_zerosOfJ1.Value[n - 1];

    /// <summary>One root between each pair of limits, counted from 1.</summary>
    internal static double[] Zeros(Func<int, double> lower, Func<int, double> upper, Func<double, double> f)
    {
        var zeros = new double[Terms];
        for (int n = 1; n <= Terms; n++)
        {
            zeros[n - 1] = Brent.FindRoot(f, lower(n), upper(n), 1e-15, 200);
        }

        return zeros;
    }

    // From (w φ')' = -z² w φ, w = x^(d-1).
    private static double MeanOf(ConductionShape shape, double z, double slope) => DimensionOf(shape) * slope / (z * z);

    private static double[] RootsOf(ConductionShape shape, double biot)
    {
        bool fixedSurface = double.IsPositiveInfinity(biot);
        switch (shape)
        {
            case ConductionShape.Slab:
                return fixedSurface ? Multiples(-0.5) : Zeros(n => (n - 1) * Math.PI, n => (n - 0.5) * Math.PI, z => (z * Math.Sin(z)) - (biot * Math.Cos(z)));
            case ConductionShape.Sphere:
                return fixedSurface ? Multiples(0) : Zeros(n => n == 1 ? 1e-9 : (n - 1) * Math.PI, n => n * Math.PI, z => (biot * Math.Sin(z)) - (Math.Sin(z) - (z * Math.Cos(z))));
            default:
                return fixedSurface ? s_zerosOfJ0.Value : CylinderRoots(biot);
        }
    }

    private static double[] Multiples(double shift)
    {
        var roots = new double[Terms];
        for (int n = 0; n < Terms; n++)
        {
            roots[n] = (n + 1 + shift) * Math.PI;
        }

        return roots;
    }

    // Bessel functions are dear, and here the slope needs the same two as the value: Newton, kept between zeros of J₁ and J₀.
    private static double[] CylinderRoots(double biot)
    {
        double at = double.NaN, j0 = 0, j1 = 0;
        void Evaluate(double z)
        {
            if (z != at)
            {
                (at, j0, j1) = (z, SpecialFunctions.BesselJ(0, z), SpecialFunctions.BesselJ(1, z));
            }
        }

        var roots = new double[Terms];
        for (int n = 1; n <= Terms; n++)
        {
            double low = ZeroOfJ1(n - 1), high = ZeroOfJ0(n), scale = biot + high;
            roots[n - 1] = RobustNewtonRaphson.TryFindRoot(Value, Slope, low, high, 1e-12, 50, 20, out double root) ? root : Brent.FindRoot(Value, low, high, 1e-15, 200);

            double Value(double z)
            {
                Evaluate(z);
                return ((z * j1) - (biot * j0)) / scale;
            }

            double Slope(double z)
            {
                Evaluate(z);
                return ((z * j0) + (biot * j1)) / scale;
            }
        }

        return roots;
    }

    // φ, -φ' and ∫ w φ² dx up to x = 1.
    private static (double Value, double Slope, double Norm) AtSurface(ConductionShape shape, double z)
    {
        double sin = Math.Sin(z), cos = Math.Cos(z);
        switch (shape)
        {
            case ConductionShape.Slab:
                return (cos, z * sin, 0.5 * (1 + (sin * cos / z)));
            case ConductionShape.Sphere:
                return (sin / z, (sin / z) - cos, 0.5 / (z * z) * (1 - (sin * cos / z)));
            default:
                double j0 = SpecialFunctions.BesselJ(0, z), j1 = SpecialFunctions.BesselJ(1, z);
                return (j0, z * j1, 0.5 * ((j0 * j0) + (j1 * j1)));
        }
    }
}
