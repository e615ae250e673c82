using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>The lines that a dose can be chosen for, and how a formula comes to a dose.</summary>
internal static class AgentLines
{
    private const double Precision = 1e-3; // four digits of a dose

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
        Dose dose = Amounts.ForPercentOfMix(formula, formula.Line(label), percent);
        for (int i = 0; i < 20; i++)
        {
            Formula changed = formula.WithDose(label, dose);
            FormulaLine line = changed.Line(label);
            if (Math.Abs(changed.Proportions.PercentOfContinuousMix(line) / percent - 1) < Precision)
            {
                return dose;
            }

            dose = Amounts.ForPercentOfMix(changed, line, percent);
        }

        return null;
    }
}
