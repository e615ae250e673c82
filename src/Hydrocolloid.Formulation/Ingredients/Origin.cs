namespace Hydrocolloid.Formulation;

/// <summary>What an ingredient is made from and how.</summary>
/// <param name="Class">The class of its origin.</param>
/// <param name="Description">The organism or material and the way of making, with its source.</param>
public sealed record Origin(OriginClass Class, Cited<string> Description);
