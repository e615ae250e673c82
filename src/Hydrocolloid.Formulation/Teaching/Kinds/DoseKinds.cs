using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>Percentages and what they are taken of.</summary>
internal static class DoseKinds
{
    public static ExerciseKind[] All =>
    [
        new("dose", "The mass of a dose", 2, MassOfDose, usesFormula: true),
        new("two-stage", "A dose of everything so far", 3, TwoStage, usesFormula: true),
        new("percentage", "A percentage from weights", 3, Percentage, usesFormula: true),
        new("of-water", "A percentage of the water", 3, OfWater, needsCalculator: true, usesFormula: true),
    ];

    private static readonly AnswerForm s_grams = AnswerForm.Number(QuantityKind.Mass, "g");

    // 1: of the base alone; 2: of the total.
    private static ExerciseDraft? MassOfDose(ExerciseDraw draw)
    {
        if (KitchenMix.Draw(draw, draw.Level == 1 ? DoseReference.Base : DoseReference.Total, sugar: draw.Level > 1) is not { } mix)
        {
            return null;
        }

        var (mass, text, conversion) = draw.BulkMass("base-mass", 500, 3000, draw.Settings.WithCalculator ? 50 : 500);
        return new ExerciseDraft(
            $"The base is {text} of {mix.BaseName}. Added to it: {mix.Additions}. How many grams of {mix.Name} is that?",
            s_grams, made => mix.Mass(Yield.OfBase(mass), Losses.None, made, conversion), mix.DoseMistakes());
    }

    // 1: sugar, then the gel; 2: sugar and salt; 3: worked back from the assembled mass.
    private static ExerciseDraft? TwoStage(ExerciseDraw draw)
    {
        if (KitchenMix.Draw(draw, DoseReference.Preceding, salt: draw.Level > 1) is not { } mix)
        {
            return null;
        }

        bool back = draw.Level == 3;
        var (mass, text, conversion) = draw.BulkMass(back ? "assembled-mass" : "base-mass", 500, 4000, draw.Settings.WithCalculator ? 50 : 500);
        return new ExerciseDraft(
            (back ? $"Everything together shall weigh {text}. The base is {mix.BaseName}." : $"The base is {text} of {mix.BaseName}.")
                + $" First comes the seasoning, then the gelling agent: {mix.Additions}. How many grams of {mix.Name} do you weigh?",
            s_grams, made => mix.Mass(back ? Yield.Assembled(mass) : Yield.OfBase(mass), Losses.None, made, conversion), mix.DoseMistakes(RoundedEarly));
    }

    // 1: of the base; 2: of everything so far; 3: of the total.
    private static ExerciseDraft? Percentage(ExerciseDraw draw)
        => FromWeights(draw, draw.Level switch { 1 => DoseReference.Base, 2 => DoseReference.Preceding, _ => DoseReference.Total });

    // 1: of the water of a juice; 2: with sugar in it, which has none; 3: a percentage from weights.
    private static ExerciseDraft? OfWater(ExerciseDraw draw)
    {
        if (draw.Level == 3)
        {
            return FromWeights(draw, DoseReference.Water);
        }

        if (KitchenMix.Draw(draw, DoseReference.Water, sugar: draw.Level > 1) is not { } mix || mix.WaterText(draw) is not { Length: > 0 } water)
        {
            return null;
        }

        var (mass, text, conversion) = draw.BulkMass("base-mass", 500, 3000, 50);
        // What is all water is no exercise.
        return mix.Formula.Base.Parts.All(p => p.Ingredient.WaterPercent > 99) ? null : new ExerciseDraft(
            $"The base is {text} of {mix.BaseName}. Added to it: {mix.Additions}. Water in each: {water}. How many grams of {mix.Name} is that?",
            s_grams, made => mix.Mass(Yield.OfBase(mass), Losses.None, made, conversion), mix.DoseMistakes());
    }

    /// <summary>The masses are what is given, in whole tenths of a gram; the percentages follow from them.</summary>
    private static ExerciseDraft? FromWeights(ExerciseDraw draw, DoseReference asked)
    {
        bool isOfWater = asked.Kind == DoseReferenceKind.Water;
        if (KitchenMix.Draw(draw, DoseReference.Base) is not { } mix)
        {
            return null;
        }

        double baseGrams = draw.Number("base-mass", 500, 3000, draw.Settings.WithCalculator ? 20 : 500, "g");
        string water = isOfWater ? mix.WaterText(draw) : "";
        if (mix.Weighed(draw, baseGrams, l => l.PhaseIndex <= mix.Line.PhaseIndex) is not { } weighed
            || (isOfWater && (water.Length == 0 || mix.Formula.Base.Parts.All(p => p.Ingredient.WaterPercent > 99))))
        {
            return null;
        }

        Formula formula = mix.FromWeights(baseGrams, weighed);
        string label = mix.Label;
        double part = weighed.First(w => w.Line.Label == label).Grams;
        WorkedSolution? Solve(Func<Misconception, bool> made)
        {
            DoseReference[] wrong = [.. s_references.Where(r => made(r.Mistake)).Select(r => r.Reference)];
            if (wrong.Length > 1)
            {
                return null;
            }

            DoseReference reference = wrong.Length > 0 ? wrong[0] : asked;
            double percent = formula.Express(label, reference).PercentByMass;
            double whole = part / percent * 100;
            var steps = new List<SolutionStep> { new("", label, "", part, "g") };
            string[] parts = [.. Parts(formula, formula.Line(label), reference, baseGrams)];
            if (parts.Length > 1 || reference.Kind == DoseReferenceKind.Water)
            {
                steps.Add(new("Add up everything that counts.", reference.ToString(), string.Join(" + ", parts), whole, "g"));
            }

            steps.Add(new("A percentage is the part over the whole it is taken of, times 100.", "percentage",
                $"{Numbers.Significant(part, 6)} g / {Numbers.Significant(whole, 6)} g × 100 %", percent, "%"));
            if (made(DecimalPlace))
            {
                steps.Add(new("The decimal point one place off.", "percentage", "a tenth of it", percent / 10, "%"));
            }

            if (made(NotPerHundred))
            {
                steps.Add(new("Not multiplied by 100.", "percentage", "a hundredth of it", steps[steps.Count - 1].Value / 100, "%"));
            }

            return WorkedSolution.Of([.. steps]);
        }

        return new ExerciseDraft(
            $"The base is {Numbers.Significant(baseGrams, 6)} g of {mix.BaseName}. Added to it: {string.Join("; ", weighed.Select(w => $"{Numbers.Significant(w.Grams, 6)} g of {KitchenMix.InText(w.Line.Ingredient)}"))}."
                + (isOfWater ? $" Water in each: {water}." : "") + $" What percentage of {asked} is the {mix.Name}?",
            AnswerForm.Number(QuantityKind.Percent, "%"), Solve, [DecimalPlace, NotPerHundred, .. s_references.Where(r => r.Reference != asked && (isOfWater || r.Reference.Kind != DoseReferenceKind.Water)).Select(r => r.Mistake)]);
    }

    private static readonly (DoseReference Reference, Misconception Mistake)[] s_references =
        [(DoseReference.Base, PercentOfBase), (DoseReference.Preceding, PercentOfPreceding), (DoseReference.Total, PercentOfTotal), (DoseReference.Water, PercentOfWater)];

    /// <summary>What a percentage is taken of, as the sum on the board.</summary>
    private static IEnumerable<string> Parts(Formula formula, FormulaLine asked, DoseReference reference, double baseGrams)
    {
        if (reference.Kind != DoseReferenceKind.Water)
        {
            yield return $"{Numbers.Significant(baseGrams, 6)} g (base)";
        }

        foreach (FormulaLine line in formula.Lines)
        {
            double grams = formula.Proportions.MassOf(line) * baseGrams;
            if (reference.Kind == DoseReferenceKind.Water ? line.PhaseIndex < asked.PhaseIndex && line.Ingredient.WaterPercent > 0
                : !line.IsBase && (reference.Kind == DoseReferenceKind.Total || (reference.Kind == DoseReferenceKind.Preceding && line.PhaseIndex < asked.PhaseIndex)))
            {
                yield return (reference.Kind == DoseReferenceKind.Water ? Numbers.Significant(line.Ingredient.WaterPercent!.Value, 6) + "/100 × " : "") + $"{Numbers.Significant(grams, 6)} g ({line.Label})";
            }
        }
    }
}
