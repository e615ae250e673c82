using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>What moves the boiling point of a liquid: % by weight of the whole. What is not named (protein, fat, fibre, hydrocolloids) hardly moves it. Immutable, equal by content.</summary>
public readonly record struct LiquidShares
{
    /// <summary>States the shares.</summary>
    /// <param name="waterPercent">Water, % by weight; 0.1–100.</param>
    /// <param name="sucrosePercent">Sucrose, % by weight; 0–100. Maltose and lactose, of the same molar mass, may be counted here.</param>
    /// <param name="monosaccharidesPercent">Glucose and fructose, % by weight; 0–100.</param>
    /// <param name="saltPercent">Sodium chloride, % by weight; 0–100.</param>
    /// <param name="ethanolPercent">Ethanol, % by weight (not by volume); 0–100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range, or all together are more than 100.001 %.</exception>
    public LiquidShares(double waterPercent, double sucrosePercent = 0, double monosaccharidesPercent = 0, double saltPercent = 0, double ethanolPercent = 0)
    {
        WaterPercent = Guard.InRange(waterPercent, 0.1, 100, "%");
        SucrosePercent = Guard.InRange(sucrosePercent, 0, 100, "%");
        MonosaccharidesPercent = Guard.InRange(monosaccharidesPercent, 0, 100, "%");
        SaltPercent = Guard.InRange(saltPercent, 0, 100, "%");
        EthanolPercent = Guard.InRange(ethanolPercent, 0, 100, "%");
        Guard.InRange(waterPercent + sucrosePercent + monosaccharidesPercent + saltPercent + ethanolPercent, 0.1, 100.001, "%", nameof(waterPercent));
    }

    /// <summary>Water, % by weight.</summary>
    public double WaterPercent { get; }

    /// <summary>Sucrose, % by weight.</summary>
    public double SucrosePercent { get; }

    /// <summary>Glucose and fructose, % by weight.</summary>
    public double MonosaccharidesPercent { get; }

    /// <summary>Sodium chloride, % by weight.</summary>
    public double SaltPercent { get; }

    /// <summary>Ethanol, % by weight.</summary>
    public double EthanolPercent { get; }
}
