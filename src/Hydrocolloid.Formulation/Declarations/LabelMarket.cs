namespace Hydrocolloid.Formulation.Declarations;

/// <summary>Whose rules a label follows.</summary>
public enum LabelMarket
{
    /// <summary>Regulation (EU) No 1169/2011.</summary>
    EuropeanUnion,

    /// <summary>Title 21 of the Code of Federal Regulations of the United States.</summary>
    UnitedStates,

    /// <summary>The General Standard of the Codex Alimentarius, CXS 1-1985.</summary>
    Codex,
}
