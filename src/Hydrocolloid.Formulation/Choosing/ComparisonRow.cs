namespace Hydrocolloid.Formulation.Choosing;

/// <summary>One property of all the agents of a comparison. Immutable, equal by content.</summary>
/// <param name="Property">The property.</param>
/// <param name="Cells">A cell an agent, in the order of the agents.</param>
public sealed record ComparisonRow(AgentProperty Property, ValueList<ComparisonCell> Cells);
