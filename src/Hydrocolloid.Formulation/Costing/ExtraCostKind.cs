namespace Hydrocolloid.Formulation.Costing;

/// <summary>What a cost that is not an ingredient is for.</summary>
public enum ExtraCostKind
{
    /// <summary>Working time.</summary>
    Labour,

    /// <summary>Heat and cold.</summary>
    Energy,

    /// <summary>Anything else: jars, moulds, delivery.</summary>
    Other,
}
