using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// How a body of gel cools (or warms) through steps in a row, by conduction inside and a film outside, from one temperature throughout. The equation is linear, so each change of the surroundings'
/// temperature sets off one answer of its own, and each answer is a product of one-dimensional series that stays a product whatever the film coefficients: the sum is exact for finite
/// cylinders and blocks too, over any number of steps. Series are cut at 40 terms; from Fo = 0.001 on (about 15 s for 5 cm of gel) that is below 0.01 K, before it the surface may be off by
/// 1 % of the difference. Not in it: evaporation from an uncovered surface (cools faster), flow in the still liquid gel (cools faster), changing properties. Immutable.
/// </summary>
public sealed class CoolingCourse
{
    // Points of the curve in a step; they lie closer at its start, where the curve is steepest.
    private const int PointsPerStep = 48;

    private readonly double[] _starts;
    private readonly double[] _ends;
    private readonly double[] _jumps;
    private readonly UnitResponse[][] _answers;
    private readonly CoolingPoint[] _curve;
    private readonly double _slowestPerSecond;

    /// <summary>Solves the cooling.</summary>
    /// <param name="body">The body.</param>
    /// <param name="properties">Its thermal properties.</param>
    /// <param name="start">Temperature of the whole body at the start.</param>
    /// <param name="steps">The steps in order; only the last may be without end.</param>
    /// <exception cref="ArgumentException">There are no steps, or a step before the last has no duration.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The start is no temperature.</exception>
    public CoolingCourse(GelBody body, ThermalProperties properties, Temperature start, params IEnumerable<CoolingStep> steps)
    {
        Body = Guard.NotNull(body);
        Properties = Guard.NotNull(properties);
        StartCelsius = Guard.Celsius(start);
        Steps = ValueList<CoolingStep>.From(Guard.NotNull(steps));
        if (Steps.IsEmpty)
        {
            throw new ArgumentException("There must be at least one step.", nameof(steps));
        }

        int count = Steps.Count;
        _starts = new double[count];
        _ends = new double[count];
        _jumps = new double[count];
        for (int k = 0; k < count; k++)
        {
            if (Guard.NotNull(Steps[k], nameof(steps)).Seconds is null && k < count - 1)
            {
                throw new ArgumentException("Only the last step may be without end.", nameof(steps));
            }

            _starts[k] = k == 0 ? 0 : _ends[k - 1];
            _ends[k] = _starts[k] + (Steps[k].Seconds ?? double.PositiveInfinity);
            _jumps[k] = (k == 0 ? StartCelsius : Steps[k - 1].Celsius) - Steps[k].Celsius;
        }

        _answers = Answers(out _slowestPerSecond);
        _curve = CurvePoints();
    }

    /// <summary>The body.</summary>
    public GelBody Body { get; }

    /// <summary>Its thermal properties.</summary>
    public ThermalProperties Properties { get; }

    /// <summary>Temperature of the whole body at the start.</summary>
    public Temperature Start => Temperature.FromDegreesCelsius(StartCelsius);

    /// <summary>The steps in order.</summary>
    public ValueList<CoolingStep> Steps { get; }

    /// <summary>The curve: 48 points a step, closer at its start. A last step without end is shown until 0.1 % of the difference is left.</summary>
    public ValueList<CoolingPoint> Curve => ValueList<CoolingPoint>.From(_curve);

    internal double StartCelsius { get; }

    internal double EndSeconds => _ends[_ends.Length - 1];

    /// <summary>The temperatures at a time.</summary>
    /// <param name="time">Time since the start, not after the end of the steps.</param>
    /// <returns>Centre, surface and mean.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or after the end of the steps.</exception>
    public CoolingPoint At(Duration time) => AtSeconds(Guard.InRange(Guard.Seconds(time), 0, Math.Min(EndSeconds, 1e9), "s", nameof(time)));

    /// <summary>The time until no part of the body is above a temperature: until it is set everywhere, if that is its setting temperature.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>The time since the start, or that it is not reached.</returns>
    public CoolingTime TimeUntilBelow(Temperature temperature)
    {
        double target = Guard.Celsius(temperature);
        for (int i = 0; i < _curve.Length; i++)
        {
            if (_curve[i].WarmestCelsius <= target)
            {
                return CoolingTime.After(i == 0 ? 0 : Brent.FindRoot(Excess, _curve[i - 1].Seconds, _curve[i].Seconds, 1e-11, 200));
            }
        }

        CoolingStep last = Steps[Steps.Count - 1];
        if (last.Seconds is not null)
        {
            return CoolingTime.Not(CoolingTimeOutcome.StepsEndBefore);
        }

        if (target <= last.Celsius)
        {
            return CoolingTime.Not(CoolingTimeOutcome.Never);
        }

        // Past the curve only the slowest term is left, and it says how much longer; with a margin for the bracket.
        CoolingPoint end = _curve[_curve.Length - 1];
        double longest = end.Seconds + ((Math.Log((end.WarmestCelsius - last.Celsius) / (target - last.Celsius)) + 0.1) / _slowestPerSecond);
        return CoolingTime.After(Brent.FindRoot(Excess, end.Seconds, longest, 1e-11, 200));

        double Excess(double seconds) => AtSeconds(seconds).WarmestCelsius - target;
    }

    /// <summary>Body, start and steps.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Body} from {Numbers.Significant(StartCelsius, 4)} °C: {string.Join("; ", Steps)}";

    internal CoolingPoint AtSeconds(double seconds)
    {
        int stage = 0;
        while (stage < _starts.Length - 1 && seconds >= _ends[stage])
        {
            stage++;
        }

        double medium = Steps[stage].Celsius;
        Places celsius = medium * Places.One;
        for (int j = 0; j <= stage; j++)
        {
            if (_jumps[j] == 0)
            {
                continue;
            }

            Places answer = Places.One;
            foreach (UnitResponse direction in _answers[j])
            {
                answer *= direction.At(stage - j, seconds - _starts[stage]);
            }

            celsius += _jumps[j] * answer;
        }

        return new(seconds, celsius);
    }

    // For each step, the body's answer to the change at its start: one response a direction, carried through the later steps.
    private UnitResponse[][] Answers(out double slowestPerSecond)
    {
        var cache = new Dictionary<(GelBody.Direction, double), ConductionSeries>();
        ValueList<GelBody.Direction> directions = Body.Directions;
        var answers = new UnitResponse[Steps.Count][];
        slowestPerSecond = 0;
        for (int j = 0; j < Steps.Count; j++)
        {
            answers[j] = new UnitResponse[directions.Count];
            for (int i = 0; i < directions.Count; i++)
            {
                GelBody.Direction direction = directions[i];
                double perSecond = Properties.DiffusivitySquareMetresPerSecond / (direction.Metres * direction.Metres);
                var response = new UnitResponse();
                for (int k = j; k < Steps.Count; k++)
                {
                    double film = Steps[k].WattsPerSquareMetreKelvin;
                    if (!cache.TryGetValue((direction, film), out ConductionSeries? series))
                    {
                        cache[(direction, film)] = series = new(direction.Shape, film * direction.Metres / Properties.WattsPerMetreKelvin);
                    }

                    response.Add(series, perSecond, k == j ? 0 : _ends[k - 1] - _starts[k - 1]);
                    if (j == Steps.Count - 1)
                    {
                        slowestPerSecond += series.Roots[0] * series.Roots[0] * perSecond;
                    }
                }

                answers[j][i] = response;
            }
        }

        return answers;
    }

    private CoolingPoint[] CurvePoints()
    {
        var curve = new CoolingPoint[(Steps.Count * PointsPerStep) + 1];
        curve[0] = AtSeconds(0);
        for (int k = 0; k < Steps.Count; k++)
        {
            double seconds = Steps[k].Seconds ?? (Math.Log(1000) / _slowestPerSecond);
            for (int i = 1; i <= PointsPerStep; i++)
            {
                double part = (double)i / PointsPerStep;
                curve[(k * PointsPerStep) + i] = AtSeconds(_starts[k] + (seconds * part * part));
            }
        }

        return curve;
    }
}
