namespace Hydrocolloid.Formulation;

/// <summary>The doses that give a texture.</summary>
/// <param name="Texture">The texture.</param>
/// <param name="Percent">The window in % by weight of the continuous mix (all that takes part in the gel), with competing published values.</param>
public sealed record DoseWindow(Texture Texture, Cited<NumberRange> Percent);
