using System.Runtime.CompilerServices;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>Checks of decimal numbers, and the one place where a mass becomes a decimal.</summary>
internal static class Amounts
{
    public static decimal InRange(decimal value, decimal min, decimal max, string unit, bool excludingMin = false, [CallerArgumentExpression(nameof(value))] string name = "")
        => value <= max && (excludingMin ? value > min : value >= min) ? value
            : throw new ArgumentOutOfRangeException(name, value, $"Must be {(excludingMin ? "above" : "at least")} {Exactly.ToText(min)}{unit} and at most {Exactly.ToText(max)}{unit}.");

    /// <summary>A double as a decimal: to 15 significant digits, which is what the framework's conversion keeps; a mass is not known better.</summary>
    public static decimal Of(double value) => (decimal)value;
}
