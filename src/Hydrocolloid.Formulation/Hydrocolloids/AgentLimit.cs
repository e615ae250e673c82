namespace Hydrocolloid.Formulation;

/// <summary>A range that a hydrocolloid must be kept in, and what happens outside it. Immutable, equal by content.</summary>
/// <param name="Quantity">What the range is of; it decides the unit.</param>
/// <param name="Stage">When it counts.</param>
/// <param name="Range">The range, with its source.</param>
/// <param name="Harm">What happens outside.</param>
/// <param name="Consequence">The same in words: a sentence.</param>
/// <param name="StoodMinutes">How long it stands to be outside while hot, in min; null if not at all.</param>
/// <param name="FromCelsius">The heat from which it counts while hot, in °C; null for any.</param>
public sealed record AgentLimit(
    LimitedQuantity Quantity, LimitStage Stage, Cited<NumberRange> Range, Harm Harm, string Consequence, double? StoodMinutes = null,
    double? FromCelsius = null);
