namespace Hydrocolloid.Formulation;

/// <summary>The pH a gel stands.</summary>
/// <param name="Range">pH of the finished gel, with competing published values; null if not stated.</param>
/// <param name="Facts">What acid and heat do to it.</param>
public sealed record PhLimits(Cited<NumberRange>? Range, ValueList<Cited<string>> Facts);
