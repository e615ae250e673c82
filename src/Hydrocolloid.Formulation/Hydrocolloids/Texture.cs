namespace Hydrocolloid.Formulation;

/// <summary>The texture a dose is meant to give.</summary>
public enum Texture
{
    /// <summary>Set, then sheared: pours and holds its shape at rest.</summary>
    FluidGel,

    /// <summary>Soft: trembles, for the spoon.</summary>
    Soft,

    /// <summary>Firm: unmoulds and slices.</summary>
    Firm,

    /// <summary>Very firm: dice and thin sheets.</summary>
    VeryFirm,

    /// <summary>Thickened, not set.</summary>
    Thickened,

    /// <summary>A small dose that changes the gel of another agent.</summary>
    Modifier,
}
