namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Works out the doses that remedies carry.</summary>
internal static class Amounts
{
    /// <summary>The dose of a line, on its own reference, that makes it a percentage by weight of the continuous mix. All other masses stay.</summary>
    public static Dose ForPercentOfMix(Formula formula, FormulaLine line, double percent)
    {
        double now = formula.Proportions.MassOf(line);
        double rest = formula.Proportions.ContinuousMix - now;
        double wanted = percent / (100 - percent) * rest;
        // On the total the line is part of its own reference; on any other it is not.
        double scaled = line.Dose.Reference.Kind == DoseReferenceKind.Total
            ? wanted / (formula.Proportions.Total - now + wanted) * 100
            : wanted / formula.Proportions.ReferenceMass(formula, line.Dose.Reference, line.PhaseIndex) * 100;
        return new Dose(Rounded(scaled), line.Dose.Reference);
    }

    /// <summary>A change that adds a percentage by weight of the continuous mix of an ingredient: more of its line if it is there, else a new line.</summary>
    public static IFormulaChange Add(Formula formula, Ingredient ingredient, double percent, string phase, string? beforePhase = null)
    {
        if (formula.FindLine(ingredient.Id) is { IsBase: false } line)
        {
            double now = formula.Proportions.PercentOfContinuousMix(line);
            return new DoseChange(line.Label, ForPercentOfMix(formula, line, now + percent));
        }

        double mass = percent / (100 - percent) * formula.Proportions.ContinuousMix;
        return new LineAdded(ingredient, new Dose(Rounded(mass * 100), DoseReference.Base), phase, beforePhase);
    }

    /// <summary>Four significant digits, rounded up, so that a limit that was aimed at is reached.</summary>
    internal static double Rounded(double percent)
    {
        if (!(percent > 0))
        {
            return percent;
        }

        // Counted in whole steps and divided by a power of ten where there is one, so that the result is the nearest double to its decimal reading.
        int decimals = 3 - (int)Math.Floor(Math.Log10(percent));
        double power = Math.Pow(10, Math.Abs(decimals));
        return decimals >= 0 ? Math.Ceiling(percent * power * (1 - 1e-12)) / power : Math.Ceiling(percent / power * (1 - 1e-12)) * power;
    }
}
