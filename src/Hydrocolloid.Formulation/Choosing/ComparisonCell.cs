namespace Hydrocolloid.Formulation.Choosing;

/// <summary>What the catalogue says of one property of one agent. Immutable, equal by content.</summary>
/// <param name="Facts">The facts, each with its source and, in <see cref="Citation.Quality"/>, how good it is; empty if the catalogue has none.</param>
public sealed record ComparisonCell(ValueList<Cited<string>> Facts)
{
    /// <summary>The words that stand where the catalogue has no figure.</summary>
    public const string Nothing = "no figure in the catalogue";

    /// <summary>The facts in one line, or that there is none.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Facts.IsEmpty ? Nothing : string.Join(" ", Facts.Select(f => f.Value));
}
