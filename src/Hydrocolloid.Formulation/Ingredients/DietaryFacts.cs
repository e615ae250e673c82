namespace Hydrocolloid.Formulation;

/// <summary>Facts about diets. Certification (religious or vegan) is for the certifier, never decided here.</summary>
/// <param name="Vegan">Whether it is free of anything from animals; null if not known.</param>
/// <param name="Vegetarian">Whether it is free of anything from slaughtered animals; null if not known.</param>
/// <param name="AnimalSource">The animal it comes from, such as <c>pig</c>; null if none.</param>
/// <param name="Notes">Further facts, each with its source.</param>
public sealed record DietaryFacts(bool? Vegan, bool? Vegetarian, string? AnimalSource = null, ValueList<Cited<string>> Notes = default);
