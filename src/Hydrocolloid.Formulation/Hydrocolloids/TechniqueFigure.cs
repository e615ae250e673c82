namespace Hydrocolloid.Formulation;

/// <summary>A figure of a technique.</summary>
/// <param name="What">What it is and in which unit, such as <c>bath-percent</c> (% by weight of the bath) or <c>boil-minutes</c>.</param>
/// <param name="Of">Of which substance, as a catalogue id where the catalogue has it; null if it is of none.</param>
/// <param name="Range">The figure, with its source.</param>
public sealed record TechniqueFigure(string What, string? Of, Cited<NumberRange> Range);
