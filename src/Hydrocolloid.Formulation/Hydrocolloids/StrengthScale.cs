namespace Hydrocolloid.Formulation;

/// <summary>How producers state the strength of an agent.</summary>
/// <param name="Name">The name of the scale.</param>
/// <param name="Unit">Its unit; empty if none.</param>
/// <param name="Definition">How it is measured.</param>
/// <param name="Typical">What is on the market.</param>
public sealed record StrengthScale(string Name, string Unit, ValueList<Cited<string>> Definition, ValueList<Cited<NumberRange>> Typical);
