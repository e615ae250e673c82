using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>An acid with its total amount, all its forms taken together. Equal by content.</summary>
public readonly record struct AcidAmount
{
    /// <summary>Makes an amount.</summary>
    /// <param name="acid">The acid.</param>
    /// <param name="molPerKg">Amount in mol/kg, 0 to 100. The unit is mol per kg of liquid.</param>
    /// <exception cref="ArgumentOutOfRangeException">The amount is not a number from 0 to 100 mol/kg.</exception>
    public AcidAmount(Acid acid, double molPerKg)
    {
        Acid = Guard.NotNull(acid);
        MolPerKg = Guard.InRange(molPerKg, 0, 100, "mol/kg");
    }

    /// <summary>The acid.</summary>
    public Acid Acid { get; }

    /// <summary>Amount; the unit is mol per kg of liquid.</summary>
    public double MolPerKg { get; }

    /// <summary>An amount from a mass percentage.</summary>
    /// <param name="acid">The acid.</param>
    /// <param name="percentByMass">Anhydrous acid in % of the liquid's mass, 0–100.</param>
    /// <returns>The amount.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is not from 0 to 100 %.</exception>
    public static AcidAmount FromPercent(Acid acid, double percentByMass)
        => new(acid, Guard.InRange(percentByMass, 0, 100, "%") * 10 / Guard.NotNull(acid).MolarMassGramsPerMol);
}
