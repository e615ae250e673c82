namespace Hydrocolloid.Formulation;

/// <summary>What is done in a step of a method.</summary>
public enum StepAction
{
    /// <summary>Put liquids together.</summary>
    Combine,

    /// <summary>Add and dissolve.</summary>
    Add,

    /// <summary>Blend dry with a separating powder.</summary>
    DryBlend,

    /// <summary>Soak in cold liquid until swollen.</summary>
    Soak,

    /// <summary>Disperse without lumps.</summary>
    Disperse,

    /// <summary>Bring to a temperature.</summary>
    Heat,

    /// <summary>Keep at a temperature.</summary>
    Hold,

    /// <summary>Stir or shear.</summary>
    Shear,

    /// <summary>Let cool to a temperature.</summary>
    Cool,

    /// <summary>Join with what was kept back.</summary>
    Join,

    /// <summary>Strain.</summary>
    Strain,

    /// <summary>Fold pieces in.</summary>
    FoldIn,

    /// <summary>Pour into moulds or trays.</summary>
    Cast,

    /// <summary>Let set.</summary>
    Set,

    /// <summary>Serve.</summary>
    Serve,
}
