namespace Hydrocolloid.Formulation;

/// <summary>What something does to a gel.</summary>
public enum Harm
{
    /// <summary>Nothing, although it is often said to.</summary>
    None,

    /// <summary>Something worth knowing, that may be wanted.</summary>
    Notable,

    /// <summary>It weakens or spoils the gel.</summary>
    Weakens,

    /// <summary>There is no gel, or not the one meant.</summary>
    Fails,
}
