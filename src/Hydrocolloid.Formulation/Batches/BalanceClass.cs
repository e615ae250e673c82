namespace Hydrocolloid.Formulation;

/// <summary>The accuracy classes of OIML R 76 for balances and scales.</summary>
public enum BalanceClass
{
    /// <summary>Class I, special accuracy: analytical balances.</summary>
    Special,

    /// <summary>Class II, high accuracy: laboratory and precision balances.</summary>
    High,

    /// <summary>Class III, medium accuracy: trade scales.</summary>
    Medium,

    /// <summary>Class IIII, ordinary accuracy.</summary>
    Ordinary,
}
