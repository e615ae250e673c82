using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A value that was looked at, against its limit. Immutable, equal by content.</summary>
/// <param name="Quantity">What the value is, such as <c>agar in the continuous mix</c>.</param>
/// <param name="Value">The value, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit; for a percentage it says of what.</param>
/// <param name="Limit">The range it is held against, in the same unit.</param>
public sealed record Evidence(string Quantity, double Value, string Unit, NumberRange Limit)
{
    /// <summary>True if the value lies in the range.</summary>
    public bool IsWithin => Limit.Contains(Value);

    /// <summary>The value against its limit.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Quantity}: {Numbers.Significant(Value, 4)} {Unit} (limit: {Limit})";
}
