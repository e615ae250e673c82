namespace Hydrocolloid.Formulation;

/// <summary>Whether a set gel melts on heating and sets again on cooling.</summary>
public enum Reversibility
{
    /// <summary>It does.</summary>
    Reversible,

    /// <summary>It does not.</summary>
    Irreversible,

    /// <summary>It depends on ions, grade or dose.</summary>
    Conditional,
}
