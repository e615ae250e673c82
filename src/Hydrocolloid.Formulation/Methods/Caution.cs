namespace Hydrocolloid.Formulation;

/// <summary>Something that can hurt someone. It never replaces the local food code or a licensed person's advice. Immutable, equal by content.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Text">The caution in words, with its source.</param>
/// <param name="Lines">The labels of the lines it comes from; empty if it comes from the work itself.</param>
public sealed record Caution(CautionKind Kind, Cited<string> Text, ValueList<string> Lines = default);
