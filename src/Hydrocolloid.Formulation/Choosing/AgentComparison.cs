using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>
/// Agents side by side, a row a property of the catalogue. The working value of each figure is shown; competing published values are with the figure itself. Where the catalogue has
/// nothing the cell says so: that is not the same as nothing happening. Immutable, equal by content.
/// </summary>
public sealed record AgentComparison
{
    private AgentComparison(ValueList<Ingredient> agents, ValueList<ComparisonRow> rows)
    {
        Agents = agents;
        Rows = rows;
    }

    /// <summary>The agents, in the order in which they were given.</summary>
    public ValueList<Ingredient> Agents { get; }

    /// <summary>The rows, in the order of <see cref="AgentProperty"/> or as they were chosen.</summary>
    public ValueList<ComparisonRow> Rows { get; }

    /// <summary>Every source of the cells, each once, in the order in which they first stand in the rows.</summary>
    public ValueList<Citation> Sources => ValueList<Citation>.From(Rows.SelectMany(r => r.Cells).SelectMany(c => c.Facts).Select(f => f.Citation).Distinct());

    /// <summary>Agents side by side over every property.</summary>
    /// <param name="agents">Two or more different hydrocolloids.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentNullException">The list or an agent is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two agents, one stands twice, or one is not a hydrocolloid; the message lists every fault.</exception>
    public static AgentComparison Of(params Ingredient[] agents)
    {
        var faults = new List<string>();
        Guard.NotNull(agents);
        foreach (Ingredient agent in agents)
        {
            if (Guard.NotNull(agent).Profile is null)
            {
                faults.Add($"'{agent.Id}' is not a hydrocolloid.");
            }
        }

        faults.AddRange(agents.GroupBy(a => a.Id, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"'{g.Key}' stands twice."));
        if (agents.Length < 2)
        {
            faults.Add($"A comparison needs two agents or more, but has {Numbers.Exact(agents.Length)}.");
        }

        return faults.Count > 0 ? throw new ArgumentException(string.Join(" ", faults), nameof(agents))
            : Over(ValueList<Ingredient>.From(agents), Enumerable.Range(0, (int)AgentProperty.Cautions + 1).Select(i => (AgentProperty)i));
    }

    /// <summary>The same agents over some properties only, in the order given; for a short table.</summary>
    /// <param name="properties">The properties.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined property.</exception>
    public AgentComparison Only(params AgentProperty[] properties)
        => Over(Agents, Guard.NotNull(properties).Select(p => (AgentProperty)Guard.Defined((int)p, (int)AgentProperty.Cautions, nameof(properties))).Distinct());

    /// <summary>The row of a property.</summary>
    /// <param name="property">The property.</param>
    /// <returns>The row; null if the comparison leaves it out.</returns>
    public ComparisonRow? Row(AgentProperty property) => Rows.FirstOrDefault(r => r.Property == property);

    /// <summary>The comparison as plain text: under each property a line an agent, numbered sources at the end with the mark of what is recalled, estimated or common practice.</summary>
    /// <returns>The text; lines end with a line feed.</returns>
    public string ToText() => ComparisonText.Plain(this);

    /// <summary>The comparison as a Markdown table, a column an agent, and the sources.</summary>
    /// <returns>The Markdown; lines end with a line feed.</returns>
    public string ToMarkdown() => ComparisonText.Markdown(this);

    /// <summary>The names of the agents.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(" beside ", Agents.Select(a => Phrases.InSentence(a.Name)));

    private static AgentComparison Over(ValueList<Ingredient> agents, IEnumerable<AgentProperty> properties)
        => new(agents, ValueList<ComparisonRow>.From(properties.Select(p => new ComparisonRow(p, ValueList<ComparisonCell>.From(agents.Select(a => new ComparisonCell(AgentFacts.Of(a, p))))))));
}
