using MathNet.Numerics.RootFinding;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>How much of something a formula needs for a value of it to reach a target.</summary>
internal static class AddedAmount
{
    private const double LeastPercent = 1e-4;
    private const double Margin = 1.002; // doses are rounded, and the target must be reached

    /// <summary>The change that adds it, or null if no amount up to a limit is enough. The value must move one way only.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="mostPercent">The most that may be added, % by weight of the continuous mix.</param>
    /// <param name="add">Makes the change that adds a percentage of the continuous mix.</param>
    /// <param name="value">The value of the changed formula; null if it is not known.</param>
    /// <param name="target">The value to reach.</param>
    public static IFormulaChange? Find(Formula formula, double mostPercent, Func<double, IFormulaChange> add, Func<ReviewContext, double?> value, double target)
    {
        double Miss(double percent) => value(new ReviewContext(add(percent).ApplyTo(formula))) - target ?? double.NaN;
        return Miss(LeastPercent) * Miss(mostPercent / Margin) < 0 && Brent.TryFindRoot(Miss, LeastPercent, mostPercent / Margin, 1e-6, 100, out double percent)
            ? add(percent * Margin) : null;
    }

    /// <summary>The same hydrocolloid in a changed formula.</summary>
    public static AgentInMix? Same(ReviewContext changed, AgentInMix agent) => changed.Agents.Find(a => a.Line.Label == agent.Line.Label);

    /// <summary>The dose that a change adds, in words.</summary>
    public static string Stated(IFormulaChange change) => change switch
    {
        LineAdded added => added.Dose.ToString(),
        DoseChange dose => $"{dose.Dose} in all",
        _ => "",
    };
}
