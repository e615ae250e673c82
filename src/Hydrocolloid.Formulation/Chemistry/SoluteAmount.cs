using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>A solute with its amount against the water. Equal by content.</summary>
public readonly record struct SoluteAmount
{
    /// <summary>Makes an amount.</summary>
    /// <param name="solute">The solute.</param>
    /// <param name="gramsPer100GWater">Amount in g per 100 g of water, 0 to 100 000. Unit: g per 100 g.</param>
    /// <exception cref="ArgumentOutOfRangeException">The amount is not in its range.</exception>
    public SoluteAmount(Solute solute, double gramsPer100GWater)
    {
        Solute = Guard.NotNull(solute);
        GramsPer100GWater = Guard.InRange(gramsPer100GWater, 0, 100_000, "g per 100 g of water");
    }

    /// <summary>The solute.</summary>
    public Solute Solute { get; }

    /// <summary>Amount in g per 100 g of water.</summary>
    public double GramsPer100GWater { get; }

    internal double MolPerKgWater => GramsPer100GWater * 10 / Solute.MolarMassGramsPerMol;
}
