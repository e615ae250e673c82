namespace Hydrocolloid.Formulation.Teaching;

/// <summary>A thing that an exercise names, so that the question can be put in another language. Equal by content.</summary>
/// <param name="Key">A stable word for what it is here, such as <c>agent</c>.</param>
/// <param name="Id">Its kebab-case id: of an ingredient of the catalogue, of a rule, or of something that the kind knows.</param>
public sealed record GivenThing(string Key, string Id);
