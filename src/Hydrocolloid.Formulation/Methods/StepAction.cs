namespace Hydrocolloid.Formulation;

/// <summary>What is done in a step of a method.</summary>
public enum StepAction
{
    /// <summary>Heat raw fruit so that its enzymes stop.</summary>
    StopEnzymes,

    /// <summary>Soak in cold liquid until swollen.</summary>
    Soak,

    /// <summary>Put liquids together.</summary>
    Combine,

    /// <summary>Add and dissolve.</summary>
    Add,

    /// <summary>Blend dry with a separating powder.</summary>
    DryBlend,

    /// <summary>Disperse without lumps.</summary>
    Disperse,

    /// <summary>Bring to a temperature.</summary>
    Heat,

    /// <summary>Keep at a temperature.</summary>
    Hold,

    /// <summary>Stir or shear.</summary>
    Shear,

    /// <summary>Let cool, or chill, to a temperature.</summary>
    Cool,

    /// <summary>Warm what joins the mix.</summary>
    Warm,

    /// <summary>Join with what was kept back.</summary>
    Join,

    /// <summary>Strain.</summary>
    Strain,

    /// <summary>Let the air out.</summary>
    Deaerate,

    /// <summary>Fold pieces in.</summary>
    FoldIn,

    /// <summary>Pour into moulds or trays, or portion.</summary>
    Cast,

    /// <summary>Make up a setting bath.</summary>
    MakeBath,

    /// <summary>Drop into a setting bath.</summary>
    Bathe,

    /// <summary>Lift out and rinse.</summary>
    Rinse,

    /// <summary>Whip air in.</summary>
    Whip,

    /// <summary>Let set.</summary>
    Set,

    /// <summary>Freeze through.</summary>
    Freeze,

    /// <summary>Let drain through a cloth.</summary>
    Drain,

    /// <summary>Cover and store.</summary>
    Cover,

    /// <summary>Take out of the mould.</summary>
    Unmould,

    /// <summary>Slice or cut.</summary>
    Slice,

    /// <summary>Serve.</summary>
    Serve,
}
