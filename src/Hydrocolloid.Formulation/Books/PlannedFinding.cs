namespace Hydrocolloid.Formulation.Books;

/// <summary>A finding about one of the formulas of a making plan. Immutable, equal by content.</summary>
/// <param name="Id">The id of the entry.</param>
/// <param name="Finding">The finding.</param>
public sealed record PlannedFinding(string Id, Finding Finding)
{
    /// <summary>The id and the finding.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Id}: {Finding}";
}
