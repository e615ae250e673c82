using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>The lines that a dose can be chosen for, and how a formula comes to a dose.</summary>
internal static class AgentLines
{
    /// <summary>An addition of a hydrocolloid that takes part in the gel.</summary>
    public static FormulaLine Of(Formula formula, string label)
    {
        FormulaLine line = Guard.NotNull(formula).Line(label);
        string? fault = line.Ingredient.Profile is null ? "is not a hydrocolloid"
            : line.IsBase ? "is a part of the base, so it has a share and no dose: change it with WithShares"
            : !line.IsContinuous ? "is folded in as pieces and takes no part in the gel" : null;
        return fault is null ? line : throw new ArgumentException($"'{label}' {fault}.", nameof(label));
    }

    /// <summary>Why no dose and no firmness is given for whom the food is meant; null if they are.</summary>
    public static string? Refusal(Formula formula) => formula.Service.Audience is Audience.Dysphagia or Audience.Infants
        ? "Nothing is given for infants or for people with a swallowing disorder: a licensed clinician sets their food." : null;

    /// <summary>
    /// The dose on the line's own reference that makes it a percentage of the continuous mix, the lines dosed on it or on the total following; null if these leave no room
    /// for so much.
    /// </summary>
    public static Dose? DoseFor(Formula formula, string label, double percent)
    {
        // Every mass is a + b m in the mass m of this line, so the mix is too: p = 100 m / (a + b m).
        const double trial = 0.01;
        Formula With(double mass) => formula.WithDose(label, new Dose(mass * 100, DoseReference.Base));
        double rest = With(0).Proportions.ContinuousMix;
        double slope = (With(trial).Proportions.ContinuousMix - rest) / trial;
        double room = 100 - (percent * slope);
        if (room <= 0)
        {
            return null;
        }

        DoseReference reference = formula.Line(label).Dose.Reference;
        return new Dose(Amounts.Rounded(With(percent * rest / room).Express(label, reference).PercentByMass), reference);
    }
}
