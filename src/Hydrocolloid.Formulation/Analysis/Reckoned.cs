using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A value of an analysis: the number, how it was come by, and what it leaves out. Immutable, equal by content.</summary>
/// <param name="Value">The value, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit; for a percentage it says of what.</param>
/// <param name="How">Measured, computed or estimated.</param>
/// <param name="By">The relation, in words.</param>
/// <param name="Outside">What lies outside the range of the relation; null if nothing does.</param>
/// <param name="Without">Labels of lines that could not be counted, because the figure is not known of them.</param>
public sealed record Reckoned(double Value, string Unit, ReckonedHow How, string By, OutsideRange? Outside = null, ValueList<string> Without = default)
{
    /// <summary>True if the relation holds where it was used and no line was left out.</summary>
    public bool IsSound => Outside is null && Without.IsEmpty;

    /// <summary>The value, its unit and how it was come by.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Numbers.Significant(Value, 4)} {Unit} ({Words.Of(How)}: {By}"
        + (Outside is null ? "" : $"; {Outside}") + (Without.IsEmpty ? "" : $"; without {Without}") + ")";
}
