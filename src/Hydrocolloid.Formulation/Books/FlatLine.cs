namespace Hydrocolloid.Formulation.Books;

/// <summary>What went into 1 g of a part.</summary>
/// <param name="Ingredient">The ingredient; no part.</param>
/// <param name="Form">Whether it is in pieces.</param>
/// <param name="Measured">What was measured on the lot.</param>
/// <param name="PerGram">g per g of the part.</param>
internal sealed record FlatLine(Ingredient Ingredient, LineForm Form, Measurements? Measured, double PerGram);
