namespace Hydrocolloid.Formulation.Books;

/// <summary>One batch of a making plan. Immutable, equal by content.</summary>
/// <param name="Id">The id of the entry.</param>
/// <param name="Batch">The batch; of a part as much as its users take, before its own losses.</param>
/// <param name="UsedBy">The ids of the entries of the plan that it goes into; empty for what was asked for.</param>
public sealed record PlannedBatch(string Id, Batch Batch, ValueList<string> UsedBy)
{
    /// <summary>The id and how much.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => UsedBy.IsEmpty ? $"{Id}: {Batch.Yield}" : $"{Id}: {Internal.Numbers.Significant(Batch.FinishedGrams, 6)} g for {UsedBy}";
}
