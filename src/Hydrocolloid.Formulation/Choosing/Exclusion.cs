namespace Hydrocolloid.Formulation.Choosing;

/// <summary>An agent or blend that is not proposed, and why. Immutable, equal by content.</summary>
/// <param name="System">The agent or blend.</param>
/// <param name="Reasons">The reasons, each enough by itself.</param>
public sealed record Exclusion(GelSystem System, ValueList<Obstacle> Reasons)
{
    /// <summary>The name and the reasons.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{System.Name}: {string.Join(" ", Reasons.Select(r => r.Text))}";
}
