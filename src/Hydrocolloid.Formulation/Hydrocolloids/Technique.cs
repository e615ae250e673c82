using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A way of working that several hydrocolloids share, such as a calcium bath, with its figures. Immutable, equal by content.</summary>
/// <param name="Id">Kebab-case id, such as <c>direct-calcium-bath</c>.</param>
/// <param name="Agents">Ids of the catalogue's hydrocolloids it is for.</param>
/// <param name="Figures">Its figures.</param>
/// <param name="Facts">Its facts by topic.</param>
public sealed record Technique(string Id, ValueList<string> Agents, ValueList<TechniqueFigure> Figures, ValueList<AgentFact> Facts)
{
    /// <summary>Whether it is for a hydrocolloid. An own ingredient counts as the entry it was made from.</summary>
    /// <param name="agent">The hydrocolloid.</param>
    /// <returns>Whether it is.</returns>
    /// <exception cref="ArgumentNullException">The hydrocolloid is null.</exception>
    public bool IsFor(Ingredient agent) => Agents.Contains(Guard.NotNull(agent).Id) || (agent.BasedOn is { } entry && IsFor(entry));

    internal IEnumerable<string> AgentNames => Agents.Select(id => Catalogue.BuiltIn.Get(id).Name);

    internal TechniqueFigure Figure(string what) => Figures.First(f => f.What == what);

    internal Cited<string>? Fact(string topic) => Facts.FirstOrDefault(f => f.Topic == topic)?.Text;
}
