using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>
/// Strength against dose fitted to a kitchen's own measurements by least squares; a plain value that can be kept. For <see cref="TrialCurve.PowerLaw"/> the
/// straight line is in logarithms (x = ln(c - c₀), y = ln S), for <see cref="TrialCurve.Line"/> in the measurements themselves. Immutable, equal by content.
/// </summary>
public sealed record TrialFit
{
    internal TrialFit(TrialCurve curve, double intercept, double slope, double interceptVariance, double slopeVariance, double covariance, double residualDeviation,
        int degreesOfFreedom, double rSquared, NumberRange doses, double criticalDose, ValueList<TrialPoint> outliers)
    {
        const double Largest = 1e300;
        Curve = (TrialCurve)Guard.Defined((int)curve, (int)TrialCurve.Line, nameof(curve));
        Intercept = Guard.InRange(intercept, -Largest, Largest, "");
        Slope = Guard.InRange(slope, -Largest, Largest, "");
        InterceptVariance = Guard.InRange(interceptVariance, 0, Largest, "");
        SlopeVariance = Guard.InRange(slopeVariance, 0, Largest, "");
        Covariance = Guard.InRange(covariance, -Largest, Largest, "");
        ResidualDeviation = Guard.InRange(residualDeviation, 0, Largest, "");
        DegreesOfFreedom = Guard.Defined(degreesOfFreedom, int.MaxValue);
        RSquared = Guard.InRange(rSquared, 0, 1, "");
        Doses = doses is { Min: >= 0, Max: <= 1e6 } ? doses : throw new ArgumentException("Must have two limits from 0 to 1e6.", nameof(doses));
        CriticalDose = Guard.InRange(criticalDose, 0, 1e6, "");
        Outliers = outliers;
    }

    /// <summary>The curve.</summary>
    public TrialCurve Curve { get; }

    /// <summary>Where the straight line meets x = 0: ln A, or a in the unit of the strength.</summary>
    public double Intercept { get; }

    /// <summary>The slope of the straight line: the exponent n, which has no unit, or b in strength per unit of dose.</summary>
    public double Slope { get; }

    /// <summary>Variance of the intercept, in its unit squared.</summary>
    public double InterceptVariance { get; }

    /// <summary>Variance of the slope, in its unit squared.</summary>
    public double SlopeVariance { get; }

    /// <summary>Covariance of intercept and slope, in the unit of one times the unit of the other.</summary>
    public double Covariance { get; }

    /// <summary>Standard deviation of a point about the straight line: in ln S, or in the unit of the strength.</summary>
    public double ResidualDeviation { get; }

    /// <summary>Points less two.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>Share of the scatter that the straight line explains, 0–1, without unit.</summary>
    public double RSquared { get; }

    /// <summary>The doses of the trial, in its unit of dose.</summary>
    public NumberRange Doses { get; }

    /// <summary>The dose c₀ below which nothing gels, in the unit of dose; 0 if none was given.</summary>
    public double CriticalDose { get; }

    /// <summary>Points further off than chance explains: externally studentised residual beyond Student's t at 5 % shared over all points.</summary>
    public ValueList<TrialPoint> Outliers { get; }

    /// <summary>What to know before relying on the fit; empty if nothing.</summary>
    public ValueList<TrialIssue> Issues => ValueList<TrialIssue>.From(FindIssues());

    /// <summary>Fits S = A · (c - c₀)ⁿ. Points with a standard deviation weigh (S/sd)², which is 1/variance of ln S; give it for all or for none.</summary>
    /// <param name="points">At least two points at two doses, each dose above the critical dose and each strength above 0.</param>
    /// <param name="criticalDose">The dose c₀ below which nothing gels, 0 to 1e6, in the unit of dose; leave it 0 unless it was measured.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentNullException">The points are null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two doses, a dose or strength that has no logarithm, or standard deviations for some points only.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The critical dose is not from 0 to 1e6.</exception>
    public static TrialFit PowerLaw(IEnumerable<TrialPoint> points, double criticalDose = 0)
    {
        TrialPoint[] trial = [.. Guard.NotNull(points)];
        Guard.InRange(criticalDose, 0, 1e6, "");
        foreach (TrialPoint point in trial)
        {
            if (point.Dose - criticalDose <= 0 || point.Strength <= 0)
            {
                throw new ArgumentException($"Doses must be above the critical dose and strengths above 0 for a fit in logarithms, but one point is {point}.", nameof(points));
            }
        }

        return Fit(TrialCurve.PowerLaw, trial, criticalDose, p => Math.Log(p.Dose - criticalDose), p => Math.Log(p.Strength), p => p.Strength / p.StandardDeviation);
    }

    /// <summary>Fits S = a + b · c. Points with a standard deviation weigh 1/sd²; give it for all or for none.</summary>
    /// <param name="points">At least two points at two doses.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentNullException">The points are null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two doses, or standard deviations for some points only.</exception>
    public static TrialFit Line(IEnumerable<TrialPoint> points)
        => Fit(TrialCurve.Line, [.. Guard.NotNull(points)], 0, p => p.Dose, p => p.Strength, p => 1 / p.StandardDeviation);

    /// <summary>The strength at a dose: the curve, the interval it lies in, and the interval the next measured gel lies in, by Student's t.</summary>
    /// <param name="dose">The dose in the unit of the trial, 0 to 1e6; above the critical dose for a power law.</param>
    /// <param name="confidencePercent">The level of both intervals, 50–99.99. Unit: %.</param>
    /// <returns>The strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public TrialPrediction StrengthAt(double dose, double confidencePercent = 95)
    {
        Guard.InRange(dose, 0, 1e6, "");
        if (Curve == TrialCurve.PowerLaw && dose <= CriticalDose)
        {
            throw new ArgumentOutOfRangeException(nameof(dose), dose, $"Must be more than the critical dose {Numbers.Exact(CriticalDose)}.");
        }

        double x = Curve == TrialCurve.PowerLaw ? Math.Log(dose - CriticalDose) : dose;
        double y = Intercept + (Slope * x);
        double ofCurve = Math.Max(InterceptVariance + (x * ((2 * Covariance) + (x * SlopeVariance))), 0);
        return new(Strength(y), Around(y, ofCurve, confidencePercent), Around(y, ofCurve + (ResidualDeviation * ResidualDeviation), confidencePercent), OutsideDoses(dose));
    }

    /// <summary>The dose for a strength, with the interval of doses at which the curve may reach it (Fieller's theorem).</summary>
    /// <param name="strength">The strength in the unit of the trial, above 0 and up to 1e12.</param>
    /// <param name="confidencePercent">The level of the interval, 50–99.99. Unit: %.</param>
    /// <returns>The dose, or why there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public TrialDose DoseFor(double strength, double confidencePercent = 95)
    {
        double target = Guard.InRange(strength, 1e-12, 1e12, "");
        double t = StudentT(confidencePercent);
        if (Slope <= 0)
        {
            return new(null, null, null, "Strength does not rise with the dose in this trial, so no dose follows from it.");
        }

        double y = Curve == TrialCurve.PowerLaw ? Math.Log(target) : target;
        double dose = Dose((y - Intercept) / Slope);
        if (dose < 0 || dose > 1e6)
        {
            return new(null, null, null, $"The curve does not come to {Numbers.Significant(target, 4)} at any dose from 0 to 1e6.");
        }

        NumberRange? interval = DegreesOfFreedom > 0 ? Fieller(y, t) : null;
        string text = $"{Numbers.Significant(target, 4)} at a dose of {Numbers.Significant(dose, 4)}"
            + (interval is { } range ? $", between {Numbers.Significant(range.Min!.Value, 4)} and {Numbers.Significant(range.Max!.Value, 4)} at {Numbers.Significant(confidencePercent, 4)} % confidence"
                : DegreesOfFreedom > 0 ? "; the slope is too uncertain for an interval" : "; two points give no interval");
        return new(dose, interval, OutsideDoses(dose), text);
    }

    /// <summary>The equation of the fit.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Curve == TrialCurve.Line
        ? $"S = {Numbers.Significant(Intercept, 4)} + {Numbers.Significant(Slope, 4)} c"
        : $"S = {Numbers.Significant(Math.Exp(Intercept), 4)} {(CriticalDose > 0 ? "(c - " + Numbers.Significant(CriticalDose, 4) + ")" : "c")}^{Numbers.Significant(Slope, 4)}";

    private static TrialFit Fit(TrialCurve curve, TrialPoint[] points, double criticalDose, Func<TrialPoint, double> x, Func<TrialPoint, double> y, Func<TrialPoint, double?> rootOfWeight)
    {
        if (points.Length == 0 || points.Max(p => p.Dose) - points.Min(p => p.Dose) <= 1e-9 * points.Max(p => p.Dose - criticalDose))
        {
            throw new ArgumentException("Must hold at least two different doses.", nameof(points));
        }

        int weighted = points.Count(p => p.StandardDeviation is not null);
        if (weighted > 0 && weighted < points.Length)
        {
            throw new ArgumentException("Must give the standard deviation of every point or of none.", nameof(points));
        }

        // Weights with a mean of 1, so that the residual deviation is that of an average point.
        double[] roots = [.. points.Select(p => rootOfWeight(p) ?? 1)];
        double meanWeight = roots.Average(r => r * r);
        roots = [.. roots.Select(r => r / Math.Sqrt(meanWeight))];
        Vector<double> observed = Vector<double>.Build.Dense(points.Length, i => roots[i] * y(points[i]));
        var fit = new LeastSquares(Matrix<double>.Build.Dense(points.Length, 2, (i, column) => roots[i] * (column == 0 ? 1 : x(points[i]))), observed);

        double mean = points.Select((p, i) => roots[i] * roots[i] * y(p)).Sum() / roots.Sum(r => r * r);
        double scatter = points.Select((p, i) => Math.Pow(roots[i] * (y(p) - mean), 2)).Sum();
        double rSquared = scatter > 0 ? Math.Max(1 - (fit.ResidualSumOfSquares / scatter), 0) : 0;
        return new(curve, fit.Coefficients[0], fit.Coefficients[1], fit.Covariance[0, 0], fit.Covariance[1, 1], fit.Covariance[0, 1], fit.ResidualDeviation, fit.DegreesOfFreedom, rSquared,
            new(points.Min(p => p.Dose), points.Max(p => p.Dose)), criticalDose, ValueList<TrialPoint>.From(points.Where((_, i) => IsOutlier(fit, observed, i))));
    }

    // Externally studentised residual against Student's t at 5 % shared over the points (Bonferroni); Weisberg, Applied Linear Regression [recalled].
    private static bool IsOutlier(LeastSquares fit, Vector<double> observed, int i)
    {
        double room = 1 - fit.Leverages[i];
        int df = fit.DegreesOfFreedom - 1;
        if (df < 1 || room < 1e-9 || fit.ResidualDeviation <= 1e-12 * observed.InfinityNorm())
        {
            return false;
        }

        double withoutIt = Math.Max(fit.ResidualSumOfSquares - (fit.Residuals[i] * fit.Residuals[i] / room), 0) / df;
        double limit = MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, df, 1 - (0.05 / (2 * fit.Residuals.Count)));
        return fit.Residuals[i] * fit.Residuals[i] / room > limit * limit * withoutIt;
    }

    private IEnumerable<TrialIssue> FindIssues()
    {
        if (DegreesOfFreedom < 3)
        {
            yield return DegreesOfFreedom == 0 ? TrialIssue.NoInterval : TrialIssue.FewPoints;
        }

        if (Slope <= 0)
        {
            yield return TrialIssue.NotRising;
        }

        if (DegreesOfFreedom > 0 && Math.Abs(Slope) <= StudentT(95) * Math.Sqrt(SlopeVariance))
        {
            yield return TrialIssue.SlopeUncertain;
        }

        if (!Outliers.IsEmpty)
        {
            yield return TrialIssue.Outlier;
        }
    }

    /// <summary>The quantile of Student's t that a two-sided interval of this level needs.</summary>
    internal double StudentT(double confidencePercent)
    {
        double level = Guard.InRange(confidencePercent, 50, 99.99, "%") / 100;
        return DegreesOfFreedom > 0 ? MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, DegreesOfFreedom, (1 + level) / 2) : 0;
    }

    private NumberRange? Around(double y, double variance, double confidencePercent)
    {
        double half = StudentT(confidencePercent) * Math.Sqrt(variance);
        return DegreesOfFreedom > 0 ? new(Strength(y - half), Strength(y + half)) : null;
    }

    // The x for which |y - a - b x| <= t · sd(a + b x): (b² - t² Vb) x² - 2 ((y - a) b + t² Cab) x + (y - a)² - t² Va <= 0.
    private NumberRange? Fieller(double y, double t)
    {
        double rise = y - Intercept;
        double square = (Slope * Slope) - (t * t * SlopeVariance);
        double half = (rise * Slope) + (t * t * Covariance);
        double constant = (rise * rise) - (t * t * InterceptVariance);
        if (square <= 1e-9 * Slope * Slope)
        {
            return null; // the slope may be zero, so the interval has no end
        }

        double root = Math.Sqrt(Math.Max((half * half) - (square * constant), 0));
        return new(Math.Max(Dose((half - root) / square), 0), Math.Max(Dose((half + root) / square), 0));
    }

    private double Strength(double y) => Curve == TrialCurve.PowerLaw ? Exp(y) : y;

    private double Dose(double x) => Curve == TrialCurve.PowerLaw ? CriticalDose + Exp(x) : x;

    // Bounded, so that a far extrapolation of a steep curve stays a number.
    private static double Exp(double power) => Math.Exp(Math.Min(Math.Max(power, -690), 690));

    private OutsideRange? OutsideDoses(double dose) => OutsideRange.Check("dose", dose, "in the unit of the trial", Doses.Min!.Value, Doses.Max!.Value);
}
