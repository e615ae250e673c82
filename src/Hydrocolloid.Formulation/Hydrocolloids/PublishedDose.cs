namespace Hydrocolloid.Formulation;

/// <summary>A published dose that belongs to none of the working windows.</summary>
/// <param name="Purpose">What the source gives it for, such as <c>any-set</c> or <c>confectionery</c>.</param>
/// <param name="Percent">The dose in % by weight; the note says of what where the source differs from the continuous mix.</param>
public sealed record PublishedDose(string Purpose, Cited<NumberRange> Percent);
