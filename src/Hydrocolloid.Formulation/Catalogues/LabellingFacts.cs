namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>What the law says of labels, as far as the library needs it: the document <c>labelling.json</c>.</summary>
/// <param name="Classes">The classes of additives that a label may name.</param>
/// <param name="Allergens">One a group, in the order of <see cref="Allergen"/>.</param>
/// <param name="EuEnergy">Factors of the European Union by part of the food.</param>
/// <param name="UsEnergy">Factors of the United States by part of the food, in kcal.</param>
/// <param name="Polyols">US factors of the entries that are polyols, kcal/g by id.</param>
/// <param name="DryAs">What the powder of a hydrocolloid counts as whose composition is not stated; one without entries is for all others.</param>
/// <param name="Notes">Rules in words, by id.</param>
internal sealed record LabellingFacts(
    Cited<ValueList<string>> Classes,
    ValueList<AllergenFacts> Allergens,
    Dictionary<string, Cited<EnergyFactor>> EuEnergy,
    Dictionary<string, Cited<EnergyFactor>> UsEnergy,
    Dictionary<string, Cited<EnergyFactor>> Polyols,
    ValueList<DryMatter> DryAs,
    Dictionary<string, Cited<string>> Notes);
