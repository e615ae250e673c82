namespace Hydrocolloid.Formulation.Books;

/// <summary>The method of one of the batches of a making plan. Immutable.</summary>
/// <param name="Id">The id of the entry.</param>
/// <param name="Method">The method, with the masses of the plan.</param>
public sealed record PlannedMethod(string Id, Method Method);
