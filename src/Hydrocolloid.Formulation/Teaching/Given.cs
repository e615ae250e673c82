using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>A number that an exercise states. Equal by content.</summary>
/// <param name="Key">A stable word for it, the same in every language, such as <c>base-mass</c>.</param>
/// <param name="Value">The value, in the unit of <paramref name="Unit"/>.</param>
/// <param name="Unit">Its unit as text; empty for a bare count.</param>
public sealed record Given(string Key, double Value, string Unit)
{
    /// <summary>Number and unit.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Unit.Length == 0 ? Numbers.Significant(Value, 6) : Numbers.Significant(Value, 6) + " " + Unit;
}
