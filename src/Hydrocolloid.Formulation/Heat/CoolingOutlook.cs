using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>
/// How a formula cools in its mould through the stages of its process plan: a usual course and a slow one, between which the kitchen's own
/// will mostly lie. Immutable, safe to share between threads.
/// </summary>
public sealed class CoolingOutlook
{
    internal CoolingOutlook(CoolingCourse usual, CoolingCourse slow, ValueList<string> assumptions, double? setsBelowCelsius, Citation? setting)
    {
        Usual = usual;
        Slow = slow;
        Assumptions = assumptions;
        SetsBelowCelsius = setsBelowCelsius;
        SettingCitation = setting;
    }

    /// <summary>The course with the usual film coefficients.</summary>
    public CoolingCourse Usual { get; }

    /// <summary>The course with the film coefficients at the slow end of their ranges.</summary>
    public CoolingCourse Slow { get; }

    /// <summary>What was assumed because it was not stated, or made simpler than it is.</summary>
    public ValueList<string> Assumptions { get; }

    /// <summary>Below this temperature everything that sets on cooling has set; null if nothing does.</summary>
    public Temperature? SetsBelow => SetsBelowCelsius is { } c ? Temperature.FromDegreesCelsius(c) : null;

    /// <summary>Where <see cref="SetsBelow"/> comes from; null if nothing sets on cooling.</summary>
    public Citation? SettingCitation { get; }

    internal double? SetsBelowCelsius { get; }

    /// <summary>The time until the warmest part has set, on the usual course; null if nothing sets on cooling.</summary>
    public CoolingTime? SetThrough => SetsBelow is { } t ? Usual.TimeUntilBelow(t) : null;

    /// <summary>The same on the slow course.</summary>
    public CoolingTime? SetThroughAtLatest => SetsBelow is { } t ? Slow.TimeUntilBelow(t) : null;

    /// <summary>Holds the slow course against a rule: what it meets, the usual course meets too.</summary>
    /// <param name="rule">The rule, one of <see cref="CoolingRules"/>.</param>
    /// <returns>The verdict, with its caution.</returns>
    public CoolingVerdict Check(CoolingRule rule) => Guard.NotNull(rule).Check(Slow);

    /// <summary>The usual course.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Usual.ToString();
}
