namespace Hydrocolloid.Formulation;

/// <summary>What an ingredient is made from.</summary>
public enum OriginClass
{
    /// <summary>Minerals and water.</summary>
    Mineral,

    /// <summary>Land plants.</summary>
    Plant,

    /// <summary>Seaweed.</summary>
    Seaweed,

    /// <summary>Animals, milk and eggs included.</summary>
    Animal,

    /// <summary>Fermentation by microbes.</summary>
    Microbial,

    /// <summary>Chemical synthesis or modification.</summary>
    Synthetic,
}
