using System.Runtime.CompilerServices;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>The balance of two liquids: exact by mass, whatever the percentage by mass is of.</summary>
internal static class Shares
{
    /// <summary>Mass to add: m (p - target)/(target - added).</summary>
    public static double Added(double mass, double percent, double added, double target)
        => percent == target ? 0 : Math.Max(0, mass * (percent - target) / (target - added));

    public static void RequireBetween(double target, double start, double added, string unit, [CallerArgumentExpression(nameof(target))] string name = "")
    {
        bool between = target == start || (target > Math.Min(start, added) && target < Math.Max(start, added));
        if (!between)
        {
            throw new ArgumentOutOfRangeException(name, target,
                $"Must lie between {Numbers.Exact(start)} and {Numbers.Exact(added)} {unit}, short of what is added.");
        }
    }
}
