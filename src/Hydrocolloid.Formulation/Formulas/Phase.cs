namespace Hydrocolloid.Formulation;

/// <summary>A named group of additions made at one point; all its lines see the same preceding mix. Immutable, equal by content.</summary>
public sealed record Phase
{
    internal Phase(string name, ValueList<Addition> additions)
    {
        Name = name;
        Additions = additions;
    }

    /// <summary>The name, unique in the formula.</summary>
    public string Name { get; }

    /// <summary>The additions, in the order of the kitchen.</summary>
    public ValueList<Addition> Additions { get; }

    /// <summary>The name and the additions.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {Additions}";
}
