namespace Hydrocolloid.Formulation;

/// <summary>The working dose of two hydrocolloids together for one texture. Immutable, equal by content.</summary>
/// <param name="Texture">The texture.</param>
/// <param name="Percent">Both together, % by weight of the continuous mix.</param>
/// <param name="FirstPercent">The share of the first that it is made with, % by weight of the two together.</param>
public sealed record BlendDose(Texture Texture, Cited<NumberRange> Percent, double FirstPercent);
