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
    {
        DoseReference asked = draw.Level switch { 1 => DoseReference.Base, 2 => DoseReference.Preceding, _ => DoseReference.Total };
        if (KitchenMix.Draw(draw, DoseReference.Base) is not { } mix)
        {
            return null;
        }

        // The masses are what is given, in whole tenths of a gram; the percentages follow from them.
        double baseGrams = draw.Number("base-mass", 500, 3000, draw.Settings.WithCalculator ? 20 : 500, "g");
        FormulaLine[] additions = [.. mix.Formula.Lines.Where(l => !l.IsBase && l.PhaseIndex <= mix.Line.PhaseIndex)];
        var weighed = new (FormulaLine Line, double Grams)[additions.Length];
        for (int i = 0; i < additions.Length; i++)
        {
            double grams = Numbers.RoundHalfAway(mix.Formula.Proportions.MassOf(additions[i]) * baseGrams, 1);
            if (grams <= 0)
            {
                return null;
            }

            weighed[i] = (additions[i], draw.State(additions[i].Label + "-mass", grams, "g"));
        }

        Formula formula = mix.Formula;
        FormulaBuilder builder = Formula.Named("Weighed").Base(b =>
        {
            foreach (BasePart part in formula.Base.Parts)
            {
                b.Weigh(part.Ingredient, UnitsNet.Mass.FromGrams(part.PercentOfBase / 100 * baseGrams), l => l.Labelled(part.Label));
            }
        });
        foreach (IGrouping<int, (FormulaLine Line, double Grams)> phase in weighed.GroupBy(w => w.Line.PhaseIndex))
        {
            builder = builder.Then(formula.Phases[phase.Key].Name, p =>
            {
                foreach ((FormulaLine line, double grams) in phase)
                {
                    p.Weigh(line.Ingredient, UnitsNet.Mass.FromGrams(grams), DoseReference.Base, l => l.Labelled(line.Label));
                }
            });
        }

        Formula weighedFormula = builder.Build();
        string label = mix.Label;
        double part = weighed.First(w => w.Line.Label == label).Grams;
        WorkedSolution? Solve(Func<Misconception, bool> made)
        {
            DoseReference[] wrong = [.. new[] { (PercentOfBase, DoseReference.Base), (PercentOfPreceding, DoseReference.Preceding), (PercentOfTotal, DoseReference.Total) }
                .Where(r => made(r.Item1)).Select(r => r.Item2)];
            if (wrong.Length > 1)
            {
                return null;
            }

            DoseReference reference = wrong.Length > 0 ? wrong[0] : asked;
            double percent = weighedFormula.Express(label, reference).PercentByMass;
            double whole = part / percent * 100;
            (double Grams, string Name)[] parts =
                [(baseGrams, "base"), .. weighed.Where(w => reference.Kind == DoseReferenceKind.Total || (reference.Kind == DoseReferenceKind.Preceding && w.Line.PhaseIndex < mix.Line.PhaseIndex)).Select(w => (w.Grams, w.Line.Label))];
            var steps = new List<SolutionStep> { new("", label, "", part, "g") };
            if (parts.Length > 1)
            {
                steps.Add(new("Add up everything that counts.", reference.ToString(), string.Join(" + ", parts.Select(p => $"{Numbers.Significant(p.Grams, 6)} g ({p.Name})")), whole, "g"));
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

        Misconception[] wrongReferences = asked.Kind switch
        {
            DoseReferenceKind.Base => [PercentOfPreceding, PercentOfTotal],
            DoseReferenceKind.Preceding => [PercentOfBase, PercentOfTotal],
            _ => [PercentOfBase, PercentOfPreceding],
        };
        return new ExerciseDraft(
            $"The base is {Numbers.Significant(baseGrams, 6)} g of {mix.BaseName}. Added to it: {string.Join("; ", weighed.Select(w => $"{Numbers.Significant(w.Grams, 6)} g of {KitchenMix.InText(w.Line.Ingredient)}"))}."
                + $" What percentage of {asked} is the {mix.Name}?",
            AnswerForm.Number(QuantityKind.Percent, "%"), Solve, [DecimalPlace, NotPerHundred, .. wrongReferences]);
    }
}
