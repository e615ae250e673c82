using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// A model of the gel that grows on alginate in a calcium bath (or the other way round): calcium diffuses through what has set and is bound at the front at once. Thickness X = 2 λ √(D t),
/// √π λ exp(λ²) erf(λ) = C/β, flat front (recalled). That it grows as the square root of time was measured (Potter et al. 1994); no published table of mm against time was found, so take the
/// order of magnitude only. A weaker calcium salt sets slower: a plateau of firmness after about 100 s in chloride, 500 s in lactate, 2000 s in gluconate (Lee and Rogers 2012).
/// </summary>
public static class AlginateMembrane
{
    // Calcium in alginate gel; uronate of sodium alginate and calcium bound per uronate. All recalled.
    private const double LowDiffusivity = 6e-10, HighDiffusivity = 13e-10, UronateMmolPerLitrePerPercent = 50, LeastBound = 0.25, MostBound = 0.5;

    private static readonly Citation s_model = CoolingSources.Judgement("alginate-membrane-model", "Moving boundary with instantaneous binding, constants recalled");

    /// <summary>Thickness of the membrane after a time.</summary>
    /// <param name="calciumMmolPerLitre">Free calcium in the bath, mmol/L; 1–5000. 0.5 % calcium chloride has 45.</param>
    /// <param name="alginatePercent">Sodium alginate in the sol, % by mass; 0.1–10.</param>
    /// <param name="time">The time in the bath.</param>
    /// <returns>An estimate as a range in mm: calcium diffuses at 6–13e-10 m²/s, and 0.25–0.5 calcium are bound per uronate, of which 1 % has 50 mmol/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Cited<NumberRange> ThicknessMillimetres(double calciumMmolPerLitre, double alginatePercent, Duration time)
    {
        double calcium = Guard.InRange(calciumMmolPerLitre, 1, 5000, "mmol/L");
        double uronate = UronateMmolPerLitrePerPercent * Guard.InRange(alginatePercent, 0.1, 10, "%");
        double seconds = Guard.Seconds(time);
        return new(new(Millimetres(LowDiffusivity, calcium / (MostBound * uronate), seconds), Millimetres(HighDiffusivity, calcium / (LeastBound * uronate), seconds)),
            s_model, "an order of magnitude", ValueList<Source>.From([CoolingSources.Potter]));
    }

    internal static double Millimetres(double squareMetresPerSecond, double bathOverBound, double seconds)
    {
        double lambda = Brent.FindRoot(l => (Math.Sqrt(Math.PI) * l * Math.Exp(l * l) * SpecialFunctions.Erf(l)) - bathOverBound, 0, 5, 1e-12, 200);
        return 1000 * 2 * lambda * Math.Sqrt(squareMetresPerSecond * seconds);
    }
}
