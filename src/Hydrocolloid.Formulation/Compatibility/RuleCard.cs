namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>What a rule does, for people. Immutable, equal by content.</summary>
/// <param name="Family">The family it belongs to, such as <c>dose</c> or <c>acid</c>.</param>
/// <param name="Trigger">When it reports something, and how serious that is.</param>
/// <param name="Remedy">What it offers; null if nothing that could be applied.</param>
/// <param name="Limits">The limits it holds to, each with its source.</param>
public sealed record RuleCard(string Family, string Trigger, string? Remedy, ValueList<Cited<string>> Limits);
