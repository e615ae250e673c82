using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// Finds the smallest dose of an acid or a salt that brings a liquid to a level. The way there may turn: a phosphate in pure water first raises the pH and then, by its
/// own ionic strength, lowers it. So doses of every size are tried, six a decade over six decades, and the one that is first enough is refined.
/// </summary>
/// <param name="liquid">The liquid.</param>
/// <param name="reagent">What goes in.</param>
/// <param name="heldPH">pH that is held; null if it moves.</param>
/// <param name="read">The level, of a state.</param>
/// <param name="target">The level to reach.</param>
internal sealed class DoseSearch(AcidBaseSystem liquid, Reagent reagent, double? heldPH, Func<AcidBaseState, double> read, double target)
{
    private const int StepsPerDecade = 6, Steps = 6 * StepsPerDecade;
    private const double Dissolved = 1e-6; // of a saturation index or of a part of the solubility, to each side of the limit

    /// <summary>How far the level is from the target without any dose.</summary>
    public double Start { get; } = read(liquid.Solve(heldPH)) - target;

    /// <summary>The smallest dose that reaches, up to a limit; null if none does.</summary>
    /// <param name="most">The most that is tried, g/kg.</param>
    /// <param name="tolerance">How near is reached.</param>
    /// <param name="nearest">The dose that comes nearest.</param>
    public double? Smallest(double most, double tolerance, out double nearest)
    {
        nearest = 0;
        if (Math.Abs(Start) <= tolerance)
        {
            return 0;
        }

        double[] grams = new double[Steps + 2], miss = new double[Steps + 2];
        miss[0] = Start;
        int best = 0;
        for (int i = 1; i < grams.Length; i++)
        {
            grams[i] = most * Math.Pow(10, (i - 1 - Steps) / (double)StepsPerDecade);
            miss[i] = Miss(grams[i]);
            if (miss[i] * Start <= 0)
            {
                return Root(grams[i - 1], grams[i]);
            }

            best = Math.Abs(miss[i]) < Math.Abs(miss[best]) ? i : best;
        }

        nearest = grams[best];
        if (best > 0 && best < grams.Length - 1)
        {
            // The turn lies between the steps, and may be just enough.
            nearest = FindMinimum.OfScalarFunctionConstrained(g => Math.Abs(Miss(g)), grams[best - 1], grams[best + 1], grams[best] * 1e-6);
            if (Miss(nearest) * Start <= 0)
            {
                return Root(grams[best - 1], nearest);
            }
        }

        return null;
    }

    /// <summary>The most of a dose that dissolves; null if all of it does.</summary>
    /// <param name="grams">The dose, g/kg.</param>
    public double? MostDissolved(double grams)
    {
        double Excess(double g) => Math.Max(-1, liquid.ExcessOver(reagent, g, heldPH));
        return Excess(grams) <= Dissolved ? null
            : Excess(0) > Dissolved ? 0
            : Bisection.TryFindRoot(Excess, 0, grams, grams * 1e-9, 200, out double root) ? root : 0;
    }

    private double Miss(double grams) => read(liquid.Add(reagent, grams).Solve(heldPH)) - target;

    private double Root(double low, double high) => Brent.TryFindRoot(Miss, low, high, 1e-12, 300, out double root) ? root : high;
}
