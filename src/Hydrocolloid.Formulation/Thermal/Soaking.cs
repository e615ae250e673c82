using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// A gel that soaks or cures in a stirred bath: what diffuses in (or out) against time, by Crank's solutions (The Mathematics of Diffusion, 1975; recalled, the slab's uptake read in an example).
/// A large bath keeps its strength; a limited one, <c>bathPerGel</c> times the gel, loses what the gel takes up. The gel takes the same strength as the bath in the end (partition 1), neither
/// swells nor shrinks, and the diffusivity is constant; the two densities count as equal. Finite cylinders and blocks are products and so only for a large bath. Immutable.
/// </summary>
public sealed class Soaking
{
    private readonly UnitResponse[] _large = [];
    private readonly double[] _roots = [];
    private readonly double[] _missing = [];
    private readonly double[] _missingAtCentre = [];
    private readonly Places _leftOut;
    private readonly double _perSecond;
    private readonly double _slowestPerSecond;

    /// <summary>Sets up the soaking.</summary>
    /// <param name="body">The piece of gel. An insulated face lets nothing through.</param>
    /// <param name="squareMetresPerSecond">Diffusivity in the gel in m²/s, 1e-14 to 1e-6: see <see cref="Diffusivities"/>.</param>
    /// <param name="bathPerGel">Mass of the bath per mass of the gel, per unit, 0.001–1e6; null for a large bath.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="ArgumentException">A limited bath with a finite cylinder or a block.</exception>
    public Soaking(GelBody body, double squareMetresPerSecond, double? bathPerGel = null)
    {
        Body = Guard.NotNull(body);
        SquareMetresPerSecond = Guard.InRange(squareMetresPerSecond, 1e-14, 1e-6, "m²/s");
        BathPerGel = bathPerGel is { } ratio ? Guard.InRange(ratio, 0.001, 1e6, "", nameof(bathPerGel)) : null;
        if (BathPerGel is { } alpha)
        {
            if (body.Directions.Count > 1)
            {
                throw new ArgumentException("A limited bath is solved for a slab, a long cylinder and a sphere only.", nameof(body));
            }

            GelBody.Direction direction = body.Directions[0];
            _perSecond = PerSecond(direction);
            _roots = LimitedBathRoots(direction.Shape, alpha);
            _missing = new double[ConductionSeries.Terms];
            _missingAtCentre = new double[ConductionSeries.Terms];
            double d = ConductionSeries.DimensionOf(direction.Shape), sum = 0, centreSum = 0;
            for (int n = 0; n < ConductionSeries.Terms; n++)
            {
                // Crank's 4.37, 5.33 and 6.30 in one line, d = 1, 2, 3.
                _missing[n] = 2 * d * alpha * (1 + alpha) / ((d * d * (1 + alpha)) + (alpha * alpha * _roots[n] * _roots[n]));
                _missingAtCentre[n] = _missing[n] / ConductionSeries.MeanOf(direction.Shape, _roots[n]);
                sum += _missing[n];
                centreSum += _missingAtCentre[n];
            }

            _leftOut = new(1 - centreSum, 0, 1 - sum);
            _slowestPerSecond = _roots[0] * _roots[0] * _perSecond;
            return;
        }

        _large = new UnitResponse[body.Directions.Count];
        for (int i = 0; i < _large.Length; i++)
        {
            GelBody.Direction direction = body.Directions[i];
            var series = new ConductionSeries(direction.Shape, double.PositiveInfinity);
            _large[i] = new();
            _large[i].Add(series, PerSecond(direction));
            _slowestPerSecond += series.Roots[0] * series.Roots[0] * PerSecond(direction);
        }
    }

    /// <summary>The piece of gel.</summary>
    public GelBody Body { get; }

    /// <summary>Diffusivity in the gel, m²/s.</summary>
    public double SquareMetresPerSecond { get; }

    /// <summary>Mass of the bath per mass of the gel, per unit; null for a large bath.</summary>
    public double? BathPerGel { get; }

    /// <summary>What the whole piece has taken up (or lost) after a time.</summary>
    /// <param name="time">The time.</param>
    /// <returns>% of what it will have in the end, 0–100.</returns>
    public double UptakePercent(Duration time) => 100 * Share(Missing(Guard.Seconds(time)).Mean);

    /// <summary>How far the centre has come after a time.</summary>
    /// <param name="time">The time.</param>
    /// <returns>% of the way from its strength at the start to that in the end, 0–100.</returns>
    public double CentrePercent(Duration time) => 100 * Share(Missing(Guard.Seconds(time)).Centre);

    /// <summary>The time until the piece has taken up a part of what it will.</summary>
    /// <param name="uptakePercent">% of the uptake in the end, 0–99.9999.</param>
    /// <returns>The time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is outside its range; 100 % takes for ever.</exception>
    public Duration TimeUntil(double uptakePercent)
    {
        double share = Guard.InRange(uptakePercent, 0, 99.9999, "%") / 100;
        if (share == 0)
        {
            return Duration.Zero;
        }

        // No term fades slower than the first, and together they are 1 at the start.
        double longest = -Math.Log(1 - share) / _slowestPerSecond;
        return Duration.FromSeconds(Brent.FindRoot(seconds => 1 - Missing(seconds).Mean - share, 0, longest * 1.0001, 1e-13 * longest, 500));
    }

    /// <summary>What the gel holds in the end, by the mass balance with partition 1: (gel + r bath)/(1 + r).</summary>
    /// <param name="gelPercent">Solute in the gel at the start, % by mass, 0–100.</param>
    /// <param name="bathPercent">Solute in the bath at the start, % by mass, 0–100.</param>
    /// <returns>Solute in gel and bath, % by mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A percentage is outside its range.</exception>
    public double FinalPercent(double gelPercent, double bathPercent)
    {
        Guard.InRange(gelPercent, 0, 100, "%");
        Guard.InRange(bathPercent, 0, 100, "%");
        return BathPerGel is { } ratio ? (gelPercent + (ratio * bathPercent)) / (1 + ratio) : bathPercent;
    }

    /// <summary>What the gel holds on average after a time.</summary>
    /// <param name="gelPercent">Solute in the gel at the start, % by mass, 0–100.</param>
    /// <param name="bathPercent">Solute in the bath at the start, % by mass, 0–100.</param>
    /// <param name="time">The time.</param>
    /// <returns>Solute in the gel, % by mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A percentage is outside its range.</exception>
    public double GelPercent(double gelPercent, double bathPercent, Duration time)
        => gelPercent + ((FinalPercent(gelPercent, bathPercent) - gelPercent) * UptakePercent(time) / 100);

    internal static double[] LimitedBathRoots(ConductionShape shape, double alpha) => shape switch
    {
        ConductionShape.Slab => ConductionSeries.Zeros(n => (n - 0.5) * Math.PI, n => n * Math.PI, q => Math.Sin(q) + (alpha * q * Math.Cos(q))), // tan q = -αq
        ConductionShape.Cylinder => ConductionSeries.Zeros(ConductionSeries.ZeroOfJ0, ConductionSeries.ZeroOfJ1,
            q => (alpha * q * MathNet.Numerics.SpecialFunctions.BesselJ(0, q)) + (2 * MathNet.Numerics.SpecialFunctions.BesselJ(1, q))),
        _ => ConductionSeries.Zeros(n => n * Math.PI, n => (n + 0.5) * Math.PI, q => ((3 + (alpha * q * q)) * Math.Sin(q)) - (3 * q * Math.Cos(q))), // tan q = 3q/(3 + αq²)
    };

    // The left-out terms may put the first moments a hair outside.
    private static double Share(double missing) => Math.Min(Math.Max(1 - missing, 0), 1);

    private double PerSecond(GelBody.Direction direction) => SquareMetresPerSecond / (direction.Metres * direction.Metres);

    private Places Missing(double seconds)
    {
        if (BathPerGel is null)
        {
            Places product = Places.One;
            foreach (UnitResponse direction in _large)
            {
                product *= direction.At(0, seconds);
            }

            return product;
        }

        double fourier = _perSecond * seconds, mean = 0, centre = 0;
        for (int n = 0; n < ConductionSeries.Terms; n++)
        {
            double term = Math.Exp(-_roots[n] * _roots[n] * fourier);
            mean += term * _missing[n];
            centre += term * _missingAtCentre[n];
        }

        return new Places(centre, 0, mean) + UnitResponse.LeftOutAfter(_leftOut, _roots, fourier);
    }
}
