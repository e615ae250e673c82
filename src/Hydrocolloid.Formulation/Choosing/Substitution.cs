using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>A formula with another gelling agent, and what it takes; or the reasons why there is none. Immutable.</summary>
public sealed class Substitution
{
    private static readonly AgentProperty[] s_noticed =
    [
        AgentProperty.Texture, AgentProperty.Melting, AgentProperty.HeatStability, AgentProperty.Clarity, AgentProperty.Flavour, AgentProperty.Syneresis, AgentProperty.FreezeThaw,
        AgentProperty.Dispersal, AgentProperty.Hydration, AgentProperty.Setting, AgentProperty.SettingTime, AgentProperty.Diets, AgentProperty.Allergens,
    ];

    internal Substitution(Formula original, ValueList<Ingredient> from, GelSystem to, Texture? texture, ValueList<Obstacle> obstacles)
    {
        Original = original;
        From = from;
        To = to;
        Texture = texture;
        Obstacles = obstacles;
    }

    /// <summary>The formula as it was.</summary>
    public Formula Original { get; }

    /// <summary>The agents that were taken out.</summary>
    public ValueList<Ingredient> From { get; }

    /// <summary>What took their place.</summary>
    public GelSystem To { get; }

    /// <summary>The texture that both are to have: that of the service plan, else the one in whose window the old dose lies; null if neither says one.</summary>
    public Texture? Texture { get; }

    /// <summary>The new formula; null if there are <see cref="Obstacles"/>.</summary>
    public Formula? Formula { get; internal init; }

    /// <summary>The doses of the new agents.</summary>
    public ValueList<ChosenDose> Doses { get; internal init; }

    /// <summary>What was done, in order, and what was left for the cook to judge.</summary>
    public ValueList<SubstitutionStep> Steps { get; internal init; }

    /// <summary>Why there is no formula; empty if there is one.</summary>
    public ValueList<Obstacle> Obstacles { get; }

    /// <summary>What the review finds in the new formula.</summary>
    public ValueList<Finding> Findings { get; internal init; }

    /// <summary>How the new formula is worked; null if there is none.</summary>
    public Method? Method { get; internal init; }

    /// <summary>
    /// What will differ: the old agents and the new ones side by side, over what a guest and a cook notice; null if they are the same agent. Every property:
    /// <see cref="AgentComparison.Of"/>.
    /// </summary>
    public AgentComparison? Differences
    {
        get
        {
            Ingredient[] agents = [.. From.Concat(To.Agents).GroupBy(a => a.Id, StringComparer.Ordinal).Select(g => g.First())];
            return agents.Length < 2 ? null : AgentComparison.Of(agents).Only(s_noticed);
        }
    }

    /// <summary>True if there is a formula, and neither its review nor its method has a conflict.</summary>
    public bool IsSound => Formula is not null && Findings.All(f => f.Severity != Severity.Conflict) && Method!.Conflicts.IsEmpty;

    internal string FromInWords => Phrases.And(From.Select(i => Phrases.InSentence(i.Name)));

    /// <summary>What became of it, in a sentence.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Formula is null
        ? $"{To.Name} instead of {FromInWords}: not possible. {string.Join(" ", Obstacles.Select(o => o.Text))}"
        : $"{To.Name} instead of {FromInWords}: {string.Join("; ", Doses)}";
}
