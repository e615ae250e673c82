using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Gelation.GelationSources;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>Grades and types of pectin. °SAG is the sugar that one part of pectin sets in the standard gel: 65 % solids, pH 2.2–2.4, a sag of 23.5 % after 24 h.</summary>
public static class PectinGel
{
    private const double StandardSagPercent = 23.5;
    private const double StandardSugarGrams = 650;

    /// <summary>Shear modulus of a gel of 150 °SAG at 23.5 % sag: 379 Pa where the gel sticks to its support, 429 Pa where it slips. Unit: Pa.</summary>
    public static Cited<NumberRange> StandardModulus { get; } = new(new NumberRange(379, 429), SagModulus, "without and with slip at the support");

    /// <summary>Exponent of the modulus just above the gel point of pectin, G ∝ ((p - pc)/pc)^t: 1.93 ± 0.08. It says why n = 2 is a sensible first guess, and gives no firmness. It has no unit.</summary>
    public static Cited<NumberRange> PercolationExponent { get; } = new(new NumberRange(1.93 - 0.08, 1.93 + 0.08), PectinPercolation, "1.93, standard error 0.08");

    /// <summary>The types of high-methoxyl pectin.</summary>
    public static Cited<ValueList<PectinType>> Types { get; } = new(ValueList<PectinType>.From(
    [
        new PectinType("ultra rapid set", 74, 77, 1, 3, 3.1, 3.4),
        new PectinType("rapid set", 71, 74, 3, 7, 3.0, 3.3),
        new PectinType("medium rapid set", 66, 69, 15, 25, 2.8, 3.1),
        new PectinType("slow set", 58, 65, 30, 120, 2.6, 2.9),
    ]), PectinTypes, "suppliers differ");

    /// <summary>The types that a degree of esterification falls in: one, two at a shared limit, or none between the types.</summary>
    /// <param name="esterificationPercent">Degree of esterification in % of the galacturonic acid, 0–100.</param>
    /// <returns>The types.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The degree is not from 0 to 100 %.</exception>
    public static ValueList<PectinType> TypesOf(double esterificationPercent)
    {
        double degree = Guard.InRange(esterificationPercent, 0, 100, "%");
        return ValueList<PectinType>.From(Types.Value.Where(t => t.EsterificationPercent.Contains(degree)));
    }

    /// <summary>The grade from the sag of a test gel with 650 g of sugar: 650/pectin · (2 - sag/23.5 %) [recalled].</summary>
    /// <param name="pectin">Pectin in the test gel, above 0.01 g.</param>
    /// <param name="sagPercent">The sag in % of the height in the glass, 10–40.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Grade GradeOf(Mass pectin, double sagPercent)
        => new(GradeScale.Sag, StandardSugarGrams / Guard.InRange(Guard.Grams(pectin), 0.01, Guard.MaxMassGrams, "g", nameof(pectin)) * (2 - (Guard.InRange(sagPercent, 10, 40, "%") / StandardSagPercent)));

    /// <summary>The pectin that sets so much sugar in the standard gel: sugar/grade. Another amount of solids or acid is another gel.</summary>
    /// <param name="sugar">The sugar.</param>
    /// <param name="grade">The grade in °SAG.</param>
    /// <returns>The pectin.</returns>
    /// <exception cref="ArgumentNullException">The grade is null.</exception>
    /// <exception cref="ArgumentException">The grade is not in °SAG.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The grade is below 1.</exception>
    public static Mass PectinFor(Mass sugar, Grade grade)
    {
        double grams = Guard.Grams(sugar);
        return Guard.NotNull(grade).Scale == GradeScale.Sag ? Mass.FromGrams(grams / Guard.InRange(grade.Value, 1, 100_000, "°SAG", nameof(grade)))
            : throw new ArgumentException($"Must be in °SAG, but is {grade}.", nameof(grade));
    }

    /// <summary>The share of pectin's free acid groups that is charged: 1/(1 + 10^(pK - pH)). The apparent pK is 3.55 at 65 % esterification and 4.1 at none (chapter on pectin).</summary>
    /// <param name="ph">The pH, 0–14.</param>
    /// <param name="apparentPK">The apparent pK, on the scale of pH, 0–14.</param>
    /// <returns>The share in %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static double IonisedPercent(double ph, double apparentPK)
        => 100 / (1 + Math.Pow(10, Guard.InRange(apparentPK, 0, 14, "pH") - Guard.InRange(ph, 0, 14, "pH")));
}
