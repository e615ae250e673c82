namespace Hydrocolloid.Formulation.Costing;

/// <summary>What a price is stated for.</summary>
public enum PriceBasis
{
    /// <summary>A mass.</summary>
    Mass,

    /// <summary>A volume; needs a density to become a cost.</summary>
    Volume,

    /// <summary>A count of pieces of a stated mass, such as leaves of gelatin.</summary>
    Count,
}
