namespace Hydrocolloid.Formulation;

/// <summary>The form of a mould's cavity. All are filled from above.</summary>
public enum MouldForm
{
    /// <summary>A ball, filled through a hole.</summary>
    Sphere,

    /// <summary>Half a ball, flat side up.</summary>
    Hemisphere,

    /// <summary>A round cavity with upright wall.</summary>
    Cylinder,

    /// <summary>A round cavity with sloping wall.</summary>
    Frustum,

    /// <summary>A rectangular cavity with upright walls: a block, a tray, a terrine.</summary>
    Block,

    /// <summary>A rectangular cavity with sloping walls: a loaf tin.</summary>
    TaperedBlock,

    /// <summary>Half a log, flat side up.</summary>
    HalfCylinder,
}
