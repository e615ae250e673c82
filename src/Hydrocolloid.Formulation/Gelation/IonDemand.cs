using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Gelation.GelationSources;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>Ions for the strongest gel, and how far calcium has come into alginate. Amounts in all: what the liquid brings counts. Calcium for gellan, alginate and low-methoxyl pectin by stoichiometry: <see cref="CalciumNeed"/>.</summary>
public static class IonDemand
{
    // Calcium in an alginate gel [recalled]: 5e-10 to 1.1e-9 m²/s, 7e-10 taken.
    private const double SquareMetresPerSecond = 7e-10;

    /// <summary>Sodium or potassium at which low-acyl gellan is strongest without calcium: 10–30 ions per carboxyl group; beyond, it turns brittle and weaker. 2–10 g/L.</summary>
    /// <param name="gellanGramsPerLitre">Gellan in g/L, 0–100.</param>
    /// <returns>The range in mmol/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is not from 0 to 100 g/L.</exception>
    public static Computed<NumberRange> GellanMonovalentMmolPerLitre(double gellanGramsPerLitre)
    {
        Computed<double> calcium = CalciumNeed.GellanCalciumMmolPerLitre(gellanGramsPerLitre);
        double carboxyl = 2 * calcium.Value; // the optimum is half a calcium per carboxyl
        return new(new(10 * carboxyl, 30 * carboxyl), calcium.Outside);
    }

    /// <summary>Potassium at which kappa-carrageenan is stiffest: 0.2–0.3 mol/L at 0.75 %, 0.1–0.4 mol/L at 1.5 %; above, modulus and hardness fall. Without any potassium it does not gel.</summary>
    /// <param name="kappaPercent">Kappa-carrageenan in % of the gel, 0–100.</param>
    /// <returns>The range in mol/L; between the two doses the wider one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The dose is not from 0 to 100 %.</exception>
    public static Estimate<NumberRange> KappaPotassium(double kappaPercent)
    {
        double percent = Guard.InRange(kappaPercent, 0, 100, "%");
        NumberRange range = percent <= 0.75 ? new(0.2, 0.3) : new(0.1, 0.4);
        return new(range, null, null, Reliance.Predictive, $"kappa-carrageenan is stiffest at {range} mol/L of potassium chloride", GelationSources.KappaPotassium,
            OutsideRange.Check("dose", percent, "% of the gel", 0.75, 1.5));
    }

    /// <summary>Calcium that sets sodium alginate through: 0.072 g/g as the trade has it [recalled]; the upper limit is full exchange of the sodium, 0.101 g/g.</summary>
    /// <param name="alginate">Sodium alginate.</param>
    /// <returns>The calcium.</returns>
    public static Estimate<Mass> AlginateCalcium(Mass alginate)
    {
        double grams = Guard.Grams(alginate);
        return new(Mass.FromGrams(0.072 * grams), null, Mass.FromGrams(CalciumNeed.AlginateCalciumGrams(grams)), Reliance.Screening,
            "0.072 g of calcium per g as a working figure; 0.101 g exchanges all sodium", GelationSources.Alginate);
    }

    /// <summary>
    /// How thick the skin of calcium alginate is that forms in a calcium bath: x = √(2 D c t/N), sharp front, with D the diffusivity of calcium in the gel, c the calcium of the bath and N
    /// the calcium the alginate binds in a volume [recalled]. Twice the thickness takes four times as long.
    /// </summary>
    /// <param name="bathCalciumMmolPerLitre">Calcium in the bath in mmol/L, 0 to 10 000.</param>
    /// <param name="alginateGramsPerLitre">Sodium alginate in the drop in g/L, above 0 (1e-3) and up to 1000.</param>
    /// <param name="time">How long it stays in the bath.</param>
    /// <returns>The thickness, good to a factor of 1.5.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Estimate<Length> AlginateSkin(double bathCalciumMmolPerLitre, double alginateGramsPerLitre, Duration time)
    {
        double bath = Guard.InRange(bathCalciumMmolPerLitre, 0, 10_000, "mmol/L"), seconds = Guard.Seconds(time); // 1 mmol/L is 1 mol/m³
        double bound = 1000 * CalciumNeed.AlginateCalciumGrams(Guard.InRange(alginateGramsPerLitre, 1e-3, 1000, "g/L")) / CalciumNeed.CalciumGramsPerMol;
        double metres = Math.Sqrt(2 * SquareMetresPerSecond * bath * seconds / bound);
        return new(Length.FromMillimeters(1000 * metres), Length.FromMillimeters(1000 * metres / 1.5), Length.FromMillimeters(1500 * metres), Reliance.Screening,
            $"about {Numbers.Significant(1000 * metres, 2)} mm of skin, good to a factor of 1.5", GelationSources.Alginate);
    }
}
