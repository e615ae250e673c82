namespace Hydrocolloid.Formulation.Costing;

/// <summary>What one phase of a batch costs. Immutable, equal by content.</summary>
public sealed record PhaseCost
{
    internal PhaseCost(string name, Money? cost)
    {
        Name = name;
        Cost = cost;
    }

    /// <summary>The name of the phase; <c>base</c> for the base.</summary>
    public string Name { get; }

    /// <summary>The cost of its lines, not rounded; null if a line has none.</summary>
    public Money? Cost { get; }

    /// <summary>The name and the cost.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {(object?)Cost ?? "not known"}";
}
