using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>What a liquid is gelled with: one agent, or a known blend of two. Immutable, equal by content.</summary>
public sealed record GelSystem
{
    private GelSystem(string id, string name, ValueList<Ingredient> agents, Synergy? pair)
    {
        Id = id;
        Name = name;
        Agents = agents;
        Pair = pair;
    }

    /// <summary>The blends that the catalogue has working doses for, each at its best ratio, in the order of their ids.</summary>
    public static ValueList<GelSystem> KnownBlends => ValueList<GelSystem>.From(
        Synergies.All.Where(s => !s.Doses.IsEmpty).OrderBy(s => s.Id, StringComparer.Ordinal)
            .Select(s => Of(s, Catalogue.BuiltIn.Get(s.First[0]), Catalogue.BuiltIn.Get(s.Second[0]))));

    /// <summary>The id: the agent's, or the blend's, such as <c>agar-and-locust-bean-gum</c>.</summary>
    public string Id { get; }

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>The agent, or the two of the blend, that with the larger effect first.</summary>
    public ValueList<Ingredient> Agents { get; }

    /// <summary>What is known of the two together: ratios, conditions, working doses; null for one agent.</summary>
    public Synergy? Pair { get; }

    /// <summary>One agent.</summary>
    /// <param name="agent">The agent; its grade counts for the dose.</param>
    /// <returns>The system.</returns>
    /// <exception cref="ArgumentNullException">The agent is null.</exception>
    /// <exception cref="ArgumentException">It is not a gelling agent.</exception>
    public static GelSystem Of(Ingredient agent) => Guard.NotNull(agent).Profile?.Role == HydrocolloidRole.GellingAgent
        ? new(agent.Id, agent.Name, ValueList<Ingredient>.Own([agent]), null)
        : throw new ArgumentException($"'{agent.Id}' does not gel by itself.", nameof(agent));

    /// <summary>A blend of two agents.</summary>
    /// <param name="one">One.</param>
    /// <param name="other">The other.</param>
    /// <returns>The system, in the order of the catalogue's pair.</returns>
    /// <exception cref="ArgumentNullException">An agent is null.</exception>
    /// <exception cref="ArgumentException">The catalogue has no working doses for the two together; the message lists the blends it has.</exception>
    public static GelSystem Of(Ingredient one, Ingredient other) => Between(one, other)
        ?? throw new ArgumentException($"'{one.Id}' and '{other.Id}' are no known blend. The known ones: {string.Join(", ", KnownBlends.Select(b => b.Id))}.", nameof(other));

    /// <summary>The systems that answer to a word: a blend by its id or as <c>agar+locust-bean-gum</c>, an agent by all that <see cref="Catalogue.Find"/> knows, or the agents of a family, such as <c>gelatin</c>.</summary>
    /// <param name="word">The word.</param>
    /// <param name="catalogue">Where agents are looked up; null for the built-in catalogue.</param>
    /// <returns>The systems; empty if none answers.</returns>
    /// <exception cref="ArgumentException">The word is blank.</exception>
    public static ValueList<GelSystem> Find(string word, Catalogue? catalogue = null)
    {
        string wanted = Guard.NotBlank(word).Trim();
        Catalogue known = catalogue ?? Catalogue.BuiltIn;
        string[] parts = wanted.Split('+');
        if (parts.Length == 2 && parts.All(p => p.Trim().Length > 0))
        {
            return ValueList<GelSystem>.From(
                (from one in Answering(parts[0], known) from other in Answering(parts[1], known) let blend = Between(one, other) where blend is not null select blend).Distinct());
        }

        GelSystem[] blends = [.. KnownBlends.Where(b => b.Id.Equals(wanted, StringComparison.OrdinalIgnoreCase))];
        return ValueList<GelSystem>.From(blends.Length > 0 ? blends : Answering(wanted, known).Where(i => i.Profile!.Role == HydrocolloidRole.GellingAgent).Select(Of));
    }

    /// <summary>The known blend of two agents, in the order of the pair; null if there is none.</summary>
    internal static GelSystem? Between(Ingredient one, Ingredient other)
        => Synergies.Between(Guard.NotNull(one), Guard.NotNull(other)).FirstOrDefault(s => !s.Doses.IsEmpty) is { } pair
            ? pair.IsFirst(one) ? Of(pair, one, other) : Of(pair, other, one) : null;

    /// <summary>The hydrocolloids that answer to a word, or whose id begins with it, in the order of their ids.</summary>
    internal static IEnumerable<Ingredient> Answering(string word, Catalogue catalogue)
    {
        string start = word.Trim().ToLowerInvariant().Replace(' ', '-') + "-";
        IReadOnlyList<Ingredient> found = catalogue.Find(word);
        return found.Where(i => i.Profile is not null)
            .Concat(found.Any(i => i.Id + "-" == start) ? [] : catalogue.Hydrocolloids.Where(i => i.Id.StartsWith(start, StringComparison.Ordinal))).Distinct().OrderBy(i => i.Id, StringComparer.Ordinal);
    }

    /// <summary>The name.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Name;

    private static GelSystem Of(Synergy pair, Ingredient first, Ingredient second)
        => new(pair.Id, $"{first.Name} with {Phrases.InSentence(second.Name)}", ValueList<Ingredient>.Own([first, second]), pair);
}
