namespace Hydrocolloid.Formulation;

/// <summary>What is wrong with a batch.</summary>
public enum Symptom
{
    /// <summary>It did not set.</summary>
    DidNotSet,

    /// <summary>It is softer than meant.</summary>
    TooSoft,

    /// <summary>It is firmer than meant, or rubbery.</summary>
    TooFirm,

    /// <summary>It weeps.</summary>
    Weeping,

    /// <summary>It is cloudy and should be clear.</summary>
    Cloudy,

    /// <summary>It holds lumps of undissolved gum.</summary>
    Lumps,

    /// <summary>It is grainy, stringy or curdled.</summary>
    Grainy,

    /// <summary>It holds bubbles.</summary>
    Bubbles,

    /// <summary>It set too early: in the pan, on cold pieces, in threads or layers.</summary>
    SetTooEarly,

    /// <summary>It melted or ran at service.</summary>
    MeltedAtService,

    /// <summary>It has a tough skin or shrank.</summary>
    ToughSkin,

    /// <summary>The pieces in it sank or floated.</summary>
    PiecesMoved,

    /// <summary>It broke or tore when it was unmoulded or sliced.</summary>
    Broke,

    /// <summary>It tastes or looks of something it should not.</summary>
    OffTasteOrColour,

    /// <summary>Spheres of a calcium bath set through.</summary>
    SpheresSolid,

    /// <summary>Spheres of a calcium bath burst, dissolved or lost their shape.</summary>
    SpheresBurst,
}
