namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>What a powder of unstated composition counts as: <c>carbohydrate</c>, <c>protein</c> or <c>fibre</c>.</summary>
internal sealed record DryMatter(Cited<string> Part, ValueList<string> Entries);
