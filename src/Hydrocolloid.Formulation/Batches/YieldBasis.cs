namespace Hydrocolloid.Formulation;

/// <summary>Which mass of a batch a yield states.</summary>
public enum YieldBasis
{
    /// <summary>The finished gel, after all losses.</summary>
    Finished,

    /// <summary>All lines together, before any loss.</summary>
    Assembled,

    /// <summary>The base alone.</summary>
    Base,
}
