using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>A liquid with its part in a mix.</summary>
public readonly record struct MixPart
{
    /// <summary>Makes a part.</summary>
    /// <param name="system">The liquid.</param>
    /// <param name="partByMass">Its part by mass, 0 to 1e9, in a unit that all parts share.</param>
    /// <exception cref="ArgumentOutOfRangeException">The part is not from 0 to 1e9.</exception>
    public MixPart(AcidBaseSystem system, double partByMass)
    {
        Liquid = Guard.NotNull(system);
        PartByMass = Guard.InRange(partByMass, 0, 1e9, "");
    }

    /// <summary>The liquid.</summary>
    public AcidBaseSystem Liquid { get; }

    /// <summary>Its part by mass, in a unit that all parts share.</summary>
    public double PartByMass { get; }
}
