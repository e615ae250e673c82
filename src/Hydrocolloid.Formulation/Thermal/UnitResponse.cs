using MathNet.Numerics;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// One direction of a body that starts at 1 throughout and goes to 0, through stages that may differ in Bi. Exact but for the terms left out; of those the sum at the start of a stage is
/// known, because the temperature is, and is let decay as the terms do.
/// </summary>
internal sealed class UnitResponse
{
    private readonly List<Stage> _stages = [];

    /// <summary>Adds a stage to the end.</summary>
    /// <param name="series">Its eigenfunctions.</param>
    /// <param name="perSecond">α/L², so that Fo is this times the seconds of the stage.</param>
    /// <param name="previousSeconds">How long the stage before it lasted.</param>
    public void Add(ConductionSeries series, double perSecond, double previousSeconds = 0)
    {
        double[] coefficients;
        Places start = Places.One;
        if (_stages.Count == 0)
        {
            coefficients = series.Uniform();
        }
        else
        {
            Stage last = _stages[_stages.Count - 1];
            start = At(_stages.Count - 1, previousSeconds);
            coefficients = series.From(last.Series, Decayed(last, last.PerSecond * previousSeconds));
        }

        _stages.Add(new(series, perSecond, coefficients, start - Sum(series, coefficients, 0)));
    }

    public Places At(int stage, double seconds)
    {
        Stage s = _stages[stage];
        double fourier = s.PerSecond * seconds;
        Places sum = Sum(s.Series, s.Coefficients, fourier);

        return sum + LeftOutAfter(s.LeftOut, s.Series.Roots, fourier);
    }

    /// <summary>What the left-out terms, known at the start, come to later: from half way between the last root and the next on. At the surface and in the mean they fall as 1/z², and
    /// are the integral of exp(-z² Fo)/z²; at the centre they alternate, and the first of them leads.</summary>
    public static Places LeftOutAfter(Places atStart, double[] roots, double fourier)
    {
        double next = roots[roots.Length - 1] + (Math.PI / 2);
        double exponent = next * next * fourier;
        if (exponent > 40)
        {
            return default;
        }

        double first = Math.Exp(-exponent);
        double integral = first - (Math.Sqrt(Math.PI * exponent) * SpecialFunctions.Erfc(Math.Sqrt(exponent)));
        return new(atStart.Centre * first, atStart.Surface * integral, atStart.Mean * integral);
    }

    private static double[] Decayed(Stage stage, double fourier)
    {
        var decayed = new double[ConductionSeries.Terms];
        for (int n = 0; n < ConductionSeries.Terms; n++)
        {
            decayed[n] = stage.Coefficients[n] * Math.Exp(-stage.Series.Roots[n] * stage.Series.Roots[n] * fourier);
        }

        return decayed;
    }

    private static Places Sum(ConductionSeries series, double[] coefficients, double fourier)
    {
        double centre = 0, surface = 0, mean = 0;
        for (int n = 0; n < ConductionSeries.Terms; n++)
        {
            double exponent = series.Roots[n] * series.Roots[n] * fourier;
            if (exponent > 700 || (n > 0 && exponent > 45 + (series.Roots[0] * series.Roots[0] * fourier)))
            {
                break;
            }

            double term = coefficients[n] * Math.Exp(-exponent);
            centre += term;
            surface += term * series.Surface[n];
            mean += term * series.Mean[n];
        }

        return new(centre, surface, mean);
    }

    private sealed record Stage(ConductionSeries Series, double PerSecond, double[] Coefficients, Places LeftOut);
}
