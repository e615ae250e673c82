using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>Bloom and grade.</summary>
internal static class StrengthKinds
{
    public static ExerciseKind[] All =>
    [
        new("bloom", "Another Bloom or grade", 3, Bloom),
    ];

    private static readonly double[] s_grades = [100, 120, 140, 150, 160, 180, 200, 220, 225, 240, 250, 280];

    // Ratios whose root is a short number.
    private static readonly (double From, double To)[] s_squares = [(160, 250), (250, 160), (144, 225), (225, 144), (100, 225), (225, 100), (180, 125), (125, 180), (288, 200), (200, 288)];

    // 1: a mass; 2: sheets; 3: agar by its gel strength.
    private static ExerciseDraft? Bloom(ExerciseDraw draw)
    {
        if (draw.Level == 3 && draw.Settings.WithCalculator && draw.Allowed(Hydrocolloids.Agar).Length > 0)
        {
            return AgarGrade(draw);
        }

        if (draw.Agent(Hydrocolloids.GelatinTypeA, Hydrocolloids.GelatinTypeB) is not { } gelatin)
        {
            return null;
        }

        (double from, double to) = draw.Settings.WithCalculator ? (draw.Pick(s_grades), draw.Pick(s_grades)) : draw.Pick(s_squares);
        GelatinPiece sheet = draw.Pick(GelatinPiece.Silver, GelatinPiece.Gold, GelatinPiece.Bronze, GelatinPiece.Platinum);
        bool inSheets = draw.Level == 2 && draw.Settings.WithCalculator;
        from = draw.State("bloom-from", from, "g");
        to = draw.State("bloom-to", inSheets ? sheet.Grade.Value : to, "g");
        double grams = draw.Number("mass", 4, 40, draw.Settings.WithCalculator ? 0.5 : 2, "g");
        if (inSheets)
        {
            draw.Name("sheet", sheet.Name.Replace(' ', '-'));
        }

        double each = inSheets ? draw.State("sheet-mass", sheet.MassGrams, "g") : 1;
        if (Math.Abs(from / to - 1) < 0.08)
        {
            return null;
        }

        StrengthModel model = StrengthModel.For(gelatin);
        string f = Numbers.Exact(from), t = Numbers.Exact(to), g = Numbers.Exact(grams);
        return new ExerciseDraft(
            $"A recipe takes {g} g of gelatin of {f} Bloom. " + (inSheets ? $"You have {sheet.Name}s of {t} Bloom that weigh {Numbers.Exact(each)} g each. How many make the gel as firm?" : $"How many grams of {t} Bloom make the gel as firm?"),
            inSheets ? AnswerForm.Number(null, "sheets") : AnswerForm.Number(QuantityKind.Mass, "g"),
            made =>
            {
                bool turned = made(RatioUpsideDown), straight = made(StraightRatio);
                GradeChange change = model.Substitute(UnitsNet.Mass.FromGrams(grams), new Grade(GradeScale.Bloom, turned ? to : from), new Grade(GradeScale.Bloom, turned ? from : to), straight ? GradeRule.Proportional : GradeRule.StrengthCurve);
                double result = change.Result.Value!.Value.Grams;
                string ratio = turned ? $"{t}/{f}" : $"{f}/{t}";
                var solution = WorkedSolution.Of(
                    new SolutionStep("The ratio of the grades: the recipe's over yours.", "ratio", ratio, turned ? to / from : from / to, ""),
                    new SolutionStep("Firmness goes with Bloom and the square of the dose: the mass goes with the square root of the ratio.", "factor", straight ? ratio : $"√({ratio})", result / grams, ""),
                    new SolutionStep("Multiply the recipe's mass by it.", "mass", $"{g} g × {Numbers.Significant(result / grams, 6)}", result, "g"));
                return inSheets ? solution.Then(new SolutionStep("Divide by the mass of a sheet.", "sheets", $"{Numbers.Significant(result, 6)} g / {Numbers.Exact(each)} g", result / each, "")) : solution;
            }, StraightRatio, RatioUpsideDown);
    }

    private static ExerciseDraft? AgarGrade(ExerciseDraw draw)
    {
        draw.Name("agent", Hydrocolloids.Agar.Id);
        StrengthModel model = StrengthModel.For(Hydrocolloids.Agar);
        double from = draw.Number("grade-from", 500, 1200, 50, "g/cm²"), to = draw.Number("grade-to", 500, 1200, 50, "g/cm²"), grams = draw.Number("mass", 4, 40, 0.5, "g");
        double exponent = draw.State("exponent", Numbers.RoundHalfAway(model.Exponent!.Value, 3), "");
        if (Math.Abs(from / to - 1) < 0.08)
        {
            return null;
        }

        string f = Numbers.Exact(from), t = Numbers.Exact(to), g = Numbers.Exact(grams), power = $"1/{Numbers.Exact(exponent)}";
        double Substitute(double old, double own, GradeRule rule) => model.Substitute(UnitsNet.Mass.FromGrams(grams), new Grade(model.Scale!.Value, old), new Grade(model.Scale.Value, own), rule).Result.Value!.Value.Grams;
        return new ExerciseDraft(
            $"A recipe takes {g} g of agar of {f} g/cm² gel strength. The strength of an agar gel goes with the dose to the power of {Numbers.Exact(exponent)}. How many grams of an agar of {t} g/cm² make the gel as firm?",
            AnswerForm.Number(QuantityKind.Mass, "g"),
            made =>
            {
                bool turned = made(RatioUpsideDown), straight = made(StraightRatio);
                double result = Substitute(turned ? to : from, turned ? from : to, straight ? GradeRule.Proportional : GradeRule.StrengthCurve);
                string ratio = turned ? $"{t}/{f}" : $"{f}/{t}";
                return WorkedSolution.Of(
                    new SolutionStep("The ratio of the grades: the recipe's over yours.", "ratio", ratio, turned ? to / from : from / to, ""),
                    new SolutionStep("The mass goes with the ratio to the inverse of that power.", "factor", straight ? ratio : $"({ratio}) to the power of {power}", result / grams, ""),
                    new SolutionStep("Multiply the recipe's mass by it.", "mass", $"{g} g × {Numbers.Significant(result / grams, 6)}", result, "g"));
            }, StraightRatio, RatioUpsideDown);
    }
}
