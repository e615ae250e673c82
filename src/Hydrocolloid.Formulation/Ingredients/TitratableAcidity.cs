namespace Hydrocolloid.Formulation;

/// <summary>The acid of an ingredient as titration finds it.</summary>
/// <param name="Percent">Acid, % by weight of the ingredient (g per 100 g).</param>
/// <param name="As">The acid it is expressed as, such as <c>citric</c>; <c>mixed</c> for the sum of several.</param>
public sealed record TitratableAcidity(double Percent, string As);
