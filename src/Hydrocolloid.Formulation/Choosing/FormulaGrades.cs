using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>Makes a formula over to another grade of an agent.</summary>
public static class FormulaGrades
{
    private const double BaseGrams = 100;

    /// <summary>
    /// The formula with another grade of an agent, as firm as before. For gelatin mass × √Bloom is constant by default, mass × Bloom by name; agar goes by its curve
    /// (screening), high-methoxyl pectin by the definition of °SAG; what depends mostly on ions is not converted.
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <param name="label">The label of the agent's line, an addition.</param>
    /// <param name="to">The grade to change to.</param>
    /// <param name="rule">The rule; the answer says which was used and what the other would give.</param>
    /// <param name="from">The grade the dose is for; null for the one the ingredient states.</param>
    /// <returns>The new formula with its derivation; or, without one, the reason.</returns>
    /// <exception cref="ArgumentNullException">The formula, the label or the grade is null.</exception>
    /// <exception cref="ArgumentException">The line is not there, is not a hydrocolloid, is a part of the base or is folded in as pieces; no grade is stated to change from; or a grade is on another scale than the agent's.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A grade is below 1, or the rule is not defined.</exception>
    /// <exception cref="FormulaException">The formula with so much of the agent cannot be.</exception>
    public static GradeAdjustment AdjustGrade(this Formula formula, string label, Grade to, GradeRule rule = GradeRule.StrengthCurve, Grade? from = null)
    {
        FormulaLine line = AgentLines.Of(formula, label);
        Guard.NotNull(to);
        Grade before = from ?? line.Ingredient.Grade
            ?? throw new ArgumentException($"'{label}' states no grade to change from: give it, or state it with WithGrade.", nameof(from));
        double grams = formula.Proportions.MassOf(line) * BaseGrams;
        GradeChange masses = StrengthModel.For(line.Ingredient).Substitute(Mass.FromGrams(grams), before, to, rule);
        if (masses is not { Result.Value: { } mass, ByOtherRule: { } other })
        {
            return new(formula, label, before, to, masses);
        }

        Dose dose = DoseOf(formula, line, mass.Grams);
        return new(formula, label, before, to, masses)
        {
            Dose = dose,
            DoseByOtherRule = DoseOf(formula, line, other.Grams),
            Derivation = new Derivation($"{label} of {to}", $"{Numbers.Significant(grams, 6)} g × {Factor(StrengthModel.For(line.Ingredient), before, to, rule)}", mass.Grams, "g", formula.Explain(label)),
            Change = new IngredientSwap(label, line.Ingredient.WithGrade(to), dose),
        };
    }

    /// <summary>The formula with gelatin of the sheets' grade, and how many sheets a batch takes.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="label">The label of the gelatin's line, an addition.</param>
    /// <param name="piece">The sheet (or packet): <see cref="GelatinPiece.Gold"/>, or one's own.</param>
    /// <param name="baseMass">The mass of the base of the batch; above 0.</param>
    /// <param name="rule">The rule; the answer says which was used and what the other would give.</param>
    /// <param name="from">The grade the dose is for; null for the one the ingredient states.</param>
    /// <returns>The new formula and the sheets.</returns>
    /// <exception cref="ArgumentNullException">The formula, the label or the piece is null.</exception>
    /// <exception cref="ArgumentException">The line is not there, is not gelatin, is a part of the base or is folded in as pieces; its dose is 0; no grade is stated to change from; or a grade is not in Bloom.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The base mass is not above 0 and up to 1e9 g, a grade is below 1, or the rule is not defined.</exception>
    /// <exception cref="FormulaException">The formula with so much of the agent cannot be.</exception>
    public static SheetAdjustment AdjustSheets(this Formula formula, string label, GelatinPiece piece, Mass baseMass, GradeRule rule = GradeRule.StrengthCurve, Grade? from = null)
    {
        FormulaLine line = AgentLines.Of(formula, label);
        Guard.NotNull(piece);
        double perHundred = Guard.PositiveGrams(baseMass) / BaseGrams / piece.MassGrams;
        StrengthModel model = StrengthModel.For(line.Ingredient);
        if (model.Scale != GradeScale.Bloom || formula.Proportions.MassOf(line) <= 0)
        {
            throw new ArgumentException(model.Scale == GradeScale.Bloom ? $"'{label}' has a dose of 0, which makes no sheets." : $"'{label}' is not gelatin.", nameof(label));
        }

        GradeAdjustment adjustment = formula.AdjustGrade(label, piece.Grade, rule, from);
        return new(adjustment, piece, adjustment.Masses.Result.Value!.Value.Grams * perHundred, adjustment.Masses.ByOtherRule!.Value.Grams * perHundred, model.Exponent!.Value);
    }

    // On the total the line is part of its own reference: m = b T and T = (Σ fixed + m) / (1 - Σ shares of the others).
    private static Dose DoseOf(Formula formula, FormulaLine line, double gramsPerHundred)
    {
        double mass = gramsPerHundred / BaseGrams;
        Proportions proportions = formula.Proportions;
        DoseReference reference = line.Dose.Reference;
        double whole = reference.Kind == DoseReferenceKind.Total
            ? (proportions.FixedMasses.Sum() + mass) / (1 - proportions.ShareOfTotal.Sum() + proportions.ShareOfTotal[line.Index])
            : proportions.ReferenceMass(formula, reference, line.PhaseIndex);
        return new Dose(mass / whole * 100, reference);
    }

    private static string Factor(StrengthModel model, Grade from, Grade to, GradeRule rule)
    {
        string ratio = $"{Numbers.Significant(from.Value, 6)}/{Numbers.Significant(to.Value, 6)}";
        return rule == GradeRule.Proportional || model.Exponent == 1 ? ratio
            : model.Exponent == 2 ? $"√({ratio})" : $"({ratio})^(1/{Numbers.Significant(model.Exponent!.Value, 3)})";
    }
}
