using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A quantity that lies outside the range a relation was made for. The result is still given, but it is an extrapolation. Immutable, equal by content.</summary>
/// <param name="Quantity">What lies outside, such as <c>ionic strength</c>.</param>
/// <param name="Value">Its value, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Range">The range of the relation, in the same unit.</param>
public sealed record OutsideRange(string Quantity, double Value, string Unit, NumberRange Range)
{
    internal static OutsideRange? Check(string quantity, double value, string unit, double min, double max)
        => value >= min && value <= max ? null : new(quantity, value, unit, new NumberRange(min, max));

    /// <summary>The quantity against its range.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Quantity} {Numbers.Significant(Value, 4)} {Unit} is outside {Range}";
}
