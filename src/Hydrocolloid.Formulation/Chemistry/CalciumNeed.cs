using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>Calcium that a gelling agent's carboxyl groups take up by stoichiometry: an amount to aim at, not a gel strength.</summary>
public static class CalciumNeed
{
    /// <summary>Molar mass of calcium, standard atomic weight [recalled]. Unit: g/mol.</summary>
    public const double CalciumGramsPerMol = 40.078;

    // Carboxyl per gram of gellan: one a repeat unit of 646.55 g/mol, which is what the calcium of Tang, Tung and Zeng 1996 (0.5 Ca per carboxyl) rests on.
    private const double GellanRepeatGramsPerMol = 646.55;
    private const double SodiumAlginateRepeatGramsPerMol = 198.106;
    private const double GalacturonicUnitGramsPerMol = 176.124;

    /// <summary>Calcium that replaces all sodium of sodium alginate: half a mole per repeat unit of 198.106 g/mol [recalled].</summary>
    /// <param name="alginateGrams">Sodium alginate in g, dry, 0 to 1e9. Unit: g.</param>
    /// <returns>Calcium in g.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is not from 0 to 1e9 g.</exception>
    public static double AlginateCalciumGrams(double alginateGrams)
        => Guard.InRange(alginateGrams, 0, Guard.MaxMassGrams, "g") * CalciumGramsPerMol / 2 / SodiumAlginateRepeatGramsPerMol;

    /// <summary>Calcium at which low acyl gellan gels are strongest: half a mole per carboxyl (Tang, Tung, Zeng: Carbohydrate Polymers 29:11, 1996, 2–10 g/L).</summary>
    /// <param name="gellanGramsPerLitre">Gellan in g/L, 0–100. Unit: g/L.</param>
    /// <returns>Calcium in mmol/L; outside 2–10 g/L it is an extrapolation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is not from 0 to 100 g/L.</exception>
    public static Computed<double> GellanCalciumMmolPerLitre(double gellanGramsPerLitre)
    {
        double gellan = Guard.InRange(gellanGramsPerLitre, 0, 100, "g/L");
        return new(500 * gellan / GellanRepeatGramsPerMol, OutsideRange.Check("gellan", gellan, "g/L", 2, 10));
    }

    /// <summary>
    /// Calcium that low methoxyl pectin takes up: mg/g = GA/176.124 · 1000 · (1 - DE) · R/2 · 40.078, with the stoichiometric ratio R = 2 Ca/COO of 0.4 to 0.5
    /// (Mechanism of gel formation by low methoxyl pectins, abstract). A screening value.
    /// </summary>
    /// <param name="galacturonicAcidPercent">Galacturonic acid in % of the pectin's mass, 0–100.</param>
    /// <param name="esterificationPercent">Degree of esterification in % of the galacturonic acid, 0–100.</param>
    /// <param name="ratio">R, 2 Ca per carboxyl, 0–2; it has no unit.</param>
    /// <returns>Calcium in mg per g of pectin; outside R 0.4–0.5 or above 50 % esterification it is an extrapolation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Computed<double> PectinCalciumMilligramsPerGram(double galacturonicAcidPercent, double esterificationPercent, double ratio)
    {
        double acid = Guard.InRange(galacturonicAcidPercent, 0, 100, "%"), ester = Guard.InRange(esterificationPercent, 0, 100, "%");
        double r = Guard.InRange(ratio, 0, 2, "");
        return new(acid / 100 / GalacturonicUnitGramsPerMol * 1000 * (1 - (ester / 100)) * r / 2 * CalciumGramsPerMol,
            OutsideRange.Check("degree of esterification", ester, "%", 0, 50) ?? OutsideRange.Check("ratio of calcium to carboxyl", r, "", 0.4, 0.5));
    }
}
