using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>
/// A kitchen's own measurements of one ingredient: firmness against dose, as that ingredient's own model. It holds for the liquid, the process and the test it was
/// made with, and for no other. Immutable, equal by content.
/// </summary>
public sealed record AgentTrial
{
    /// <summary>Keeps a trial.</summary>
    /// <param name="agent">The id of the ingredient, such as <c>agar</c> or that of an own ingredient.</param>
    /// <param name="unit">The unit of the firmness, such as <c>g/cm²</c> or <c>kPa</c>.</param>
    /// <param name="points">What was measured: doses in % by weight of the continuous mix, above 0 and under 100; at least two different ones.</param>
    /// <param name="curve">The curve to fit.</param>
    /// <param name="criticalPercent">The dose below which nothing gels, 0 to 100, % by weight of the continuous mix; leave it 0 unless it was measured. For a power law only.</param>
    /// <param name="grade">The grade of the lot; null if not known.</param>
    /// <param name="conditions">The liquid, the process, the test and its temperature, in words; null if not stated.</param>
    /// <exception cref="ArgumentException">The id is not kebab-case, a text is blank, or the points cannot be fitted; the message lists every reason.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The curve is not defined, or the critical dose is outside its range.</exception>
    public AgentTrial(
        string agent, string unit, IEnumerable<TrialPoint> points, TrialCurve curve = TrialCurve.PowerLaw, double criticalPercent = 0, Grade? grade = null, string? conditions = null)
    {
        Agent = Ids.Check(agent, nameof(agent));
        Unit = Guard.NotBlank(unit);
        Points = ValueList<TrialPoint>.From(Guard.NotNull(points));
        Curve = (TrialCurve)Guard.Defined((int)curve, (int)TrialCurve.Line, nameof(curve));
        CriticalPercent = Guard.InRange(criticalPercent, 0, 100, "%");
        Grade = grade;
        Conditions = conditions is null ? null : Guard.NotBlank(conditions);
        string[] faults = [.. Faults(Points, Curve, CriticalPercent).Select(f => f.Message)];
        if (faults.Length > 0)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(points));
        }

        Fit = curve == TrialCurve.Line ? TrialFit.Line(Points) : TrialFit.PowerLaw(Points, CriticalPercent);
    }

    /// <summary>The id of the ingredient.</summary>
    public string Agent { get; }

    /// <summary>The unit of the firmness.</summary>
    public string Unit { get; }

    /// <summary>What was measured; doses in % by weight of the continuous mix, strengths in <see cref="Unit"/>.</summary>
    public ValueList<TrialPoint> Points { get; }

    /// <summary>The curve.</summary>
    public TrialCurve Curve { get; }

    /// <summary>The dose below which nothing gels, % by weight of the continuous mix; 0 if none was given.</summary>
    public double CriticalPercent { get; }

    /// <summary>The grade of the lot; null if not known.</summary>
    public Grade? Grade { get; }

    /// <summary>The liquid, the process, the test and its temperature, in words; null if not stated.</summary>
    public string? Conditions { get; }

    /// <summary>The fit to the points.</summary>
    public TrialFit Fit { get; }

    /// <summary>The agent and the curve.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Agent}: {Fit} {Unit}";

    /// <summary>Everything that keeps the points from being fitted; the index of the point, or -1 for all of them.</summary>
    internal static IEnumerable<(int Point, string Id, string Message)> Faults(ValueList<TrialPoint> points, TrialCurve curve, double criticalPercent)
    {
        if (curve == TrialCurve.Line && criticalPercent != 0)
        {
            yield return (-1, "trial-unfit", "A straight line has no critical dose.");
        }

        for (int i = 0; i < points.Count; i++)
        {
            TrialPoint point = points[i];
            if (!(point.Dose > 0 && point.Dose < 100))
            {
                yield return (i, "number-range", $"Doses must be above 0 % and under 100 % of the continuous mix, but one is {Numbers.Exact(point.Dose)} %.");
            }
            else if (curve == TrialCurve.PowerLaw && point.Dose <= criticalPercent)
            {
                yield return (i, "trial-unfit", $"Doses must be above the critical {Numbers.Exact(criticalPercent)} %, but one is {Numbers.Exact(point.Dose)} %.");
            }

            if (curve == TrialCurve.PowerLaw && point.Strength <= 0)
            {
                yield return (i, "trial-unfit", $"Strengths must be above 0 for a power law, but that at {Numbers.Exact(point.Dose)} % is {Numbers.Exact(point.Strength)}.");
            }
        }

        // As the fit asks: doses apart by more than rounding.
        if (points.IsEmpty || points.Max(p => p.Dose) - points.Min(p => p.Dose) <= 1e-6)
        {
            yield return (-1, "trial-unfit", "There must be at least two different doses.");
        }

        if (points.Any(p => p.StandardDeviation is null) && points.Any(p => p.StandardDeviation is not null))
        {
            yield return (-1, "trial-unfit", "The standard deviation must be given for every point or for none.");
        }
    }

    /// <summary>Refuses a line of another ingredient or another grade.</summary>
    internal void CheckFor(FormulaLine line)
    {
        string? fault = line.Ingredient.Id != Agent ? $"is '{line.Ingredient.Id}', but the trial was made with '{Agent}'"
            : line.Ingredient.Grade is { } grade && Grade is not null && grade != Grade ? $"has a grade of {grade}, but the trial was made with {Grade}" : null;
        if (fault is not null)
        {
            throw new ArgumentException($"'{line.Label}' {fault}.", nameof(line));
        }
    }
}
