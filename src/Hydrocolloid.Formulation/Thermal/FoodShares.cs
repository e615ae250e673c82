using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>What a food is made of, as the component equations of Choi and Okos see it: % by weight. Immutable, equal by content.</summary>
public readonly record struct FoodShares
{
    /// <summary>States the shares.</summary>
    /// <param name="waterPercent">Water, % by weight; 0–100.</param>
    /// <param name="proteinPercent">Protein, % by weight; 0–100.</param>
    /// <param name="fatPercent">Fat, % by weight; 0–100.</param>
    /// <param name="carbohydratePercent">Carbohydrate without fibre, % by weight; 0–100.</param>
    /// <param name="fibrePercent">Fibre, % by weight; 0–100.</param>
    /// <param name="ashPercent">Ash, % by weight; 0–100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range, or there is nothing at all.</exception>
    public FoodShares(double waterPercent, double proteinPercent = 0, double fatPercent = 0, double carbohydratePercent = 0, double fibrePercent = 0, double ashPercent = 0)
    {
        WaterPercent = Guard.InRange(waterPercent, 0, 100, "%");
        ProteinPercent = Guard.InRange(proteinPercent, 0, 100, "%");
        FatPercent = Guard.InRange(fatPercent, 0, 100, "%");
        CarbohydratePercent = Guard.InRange(carbohydratePercent, 0, 100, "%");
        FibrePercent = Guard.InRange(fibrePercent, 0, 100, "%");
        AshPercent = Guard.InRange(ashPercent, 0, 100, "%");
        Guard.InRange(SumPercent, double.Epsilon, 600, "%", nameof(waterPercent));
    }

    /// <summary>Water, % by weight.</summary>
    public double WaterPercent { get; }

    /// <summary>Protein, % by weight.</summary>
    public double ProteinPercent { get; }

    /// <summary>Fat, % by weight.</summary>
    public double FatPercent { get; }

    /// <summary>Carbohydrate without fibre, % by weight.</summary>
    public double CarbohydratePercent { get; }

    /// <summary>Fibre, % by weight.</summary>
    public double FibrePercent { get; }

    /// <summary>Ash, % by weight.</summary>
    public double AshPercent { get; }

    /// <summary>All shares together, % by weight; the equations count each as its part of this sum.</summary>
    public double SumPercent => WaterPercent + ProteinPercent + FatPercent + CarbohydratePercent + FibrePercent + AshPercent;
}
