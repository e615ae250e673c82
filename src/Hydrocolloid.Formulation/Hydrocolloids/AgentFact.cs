namespace Hydrocolloid.Formulation;

/// <summary>A fact in words about a hydrocolloid.</summary>
/// <param name="Topic">What it is about, such as <c>alcohol</c>, <c>tannins</c> or <c>syneresis</c>.</param>
/// <param name="Text">The fact, with its source.</param>
public sealed record AgentFact(string Topic, Cited<string> Text);
