namespace Hydrocolloid.Formulation;

/// <summary>Where the food is sold, as far as the catalogue knows rules of it.</summary>
public enum Market
{
    /// <summary>The European Union.</summary>
    EuropeanUnion,

    /// <summary>The United States.</summary>
    UnitedStates,
}
