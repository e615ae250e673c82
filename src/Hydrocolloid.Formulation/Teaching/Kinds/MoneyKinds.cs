using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>What a portion costs, and what it must be sold at.</summary>
internal static class MoneyKinds
{
    public static ExerciseKind[] All =>
    [
        new("cost", "Cost of a portion and selling price", 3, Cost, needsCalculator: true, usesFormula: true),
    ];

    private const double GramsPerPound = 453.59237; // exact, international yard and pound agreement

    // Prices need a day, and these hold on every one.
    private static readonly DateTime s_day = new(2000, 1, 1);

    private static string N(double value) => Numbers.Significant(value, 6);

    // 1: the cost of a portion; 2: with what is lost in preparing; 3: the selling price.
    private static ExerciseDraft? Cost(ExerciseDraw draw)
    {
        if (KitchenMix.Draw(draw, DoseReference.Base) is not { } mix || mix.Formula.Lines.Count > 6)
        {
            return null;
        }

        double baseGrams = draw.Number("base-mass", 800, 3000, 100, "g");
        if (mix.Weighed(draw, baseGrams, _ => true) is not { } weighed)
        {
            return null;
        }

        double portions = draw.Number("portions", 8, 40, 2, ""), yield = draw.Level == 2 ? draw.Number("yield", 60, 90, 5, "%") : 100, target = draw.Level == 3 ? draw.Number("food-cost", 20, 40, 5, "%") : 0;
        Formula formula = mix.FromWeights(baseGrams, weighed);
        (string currency, string unit, double gramsPerUnit) = draw.IsUs ? ("USD", "lb", GramsPerPound) : ("EUR", "kg", 1000);
        // Invented for practice, in round numbers: a liquid, a powder of bulk, a gelling agent.
        double[] prices = new double[formula.Lines.Count];
        for (int i = 0; i < prices.Length; i++)
        {
            Ingredient ingredient = formula.Lines[i].Ingredient;
            double scale = draw.IsUs ? 0.5 : 1;
            (double min, double max, double step) = ingredient.Profile is not null ? (24, 96, 4) : formula.Lines[i].IsBase ? (2.0, 8, 0.2) : (1.0, 3, 0.2);
            prices[i] = draw.Number(formula.Lines[i].Label + "-price", min * scale, max * scale, step * scale, $"{currency}/{unit}");
        }

        double grams = formula.Proportions.Total * baseGrams;
        Batch batch = formula.ScaleTo(Yield.Portions((int)portions, Mass.FromGrams(grams / portions)), Losses.None);
        string dear = formula.Lines[0].Ingredient.Id, dearName = KitchenMix.InText(formula.Lines[0].Ingredient);
        CostSheet Sheet(decimal yieldPercent, decimal times) => batch.Cost(new PriceList(Currency.Of(currency), formula.Lines.Select((l, i) => (Line: l, Price: prices[i])).GroupBy(p => p.Line.Ingredient.Id).Select(g =>
        {
            var price = Price.PerMass(g.Key, new Money((decimal)g.First().Price, currency), Mass.FromGrams(gramsPerUnit));
            return g.Key == dear ? price.WithYield(yieldPercent).Changed(100 * (times - 1)) : price;
        })), s_day);

        if (formula.Lines.Select(l => l.Ingredient.Id).Distinct(StringComparer.Ordinal).Count() < formula.Lines.Count)
        {
            return null; // a price each
        }

        WorkedSolution? Solve(Func<Misconception, bool> made)
        {
            if ((made(TargetMultiplied) && made(MarkUpForMargin)) || (made(YieldForgotten) && made(YieldMultiplied)))
            {
                return null;
            }

            decimal kept = (decimal)yield;
            CostSheet sheet = made(YieldForgotten) ? Sheet(100, 1) : made(YieldMultiplied) ? Sheet(100, kept / 100) : Sheet(kept, 1);
            string Cost(CostLine line, int i) => $"{N(line.Line.Mass.Grams)} g / {N(gramsPerUnit)} × {N(prices[i])} {currency}"
                + (i > 0 || yield == 100 || made(YieldForgotten) ? "" : made(YieldMultiplied) ? $" × ({N(yield)}/100)" : $" / ({N(yield)}/100)");
            WorkedSolution solution = WorkedSolution.Of([.. sheet.Lines.Select((l, i) =>
                new SolutionStep(i == 0 && yield < 100 ? "What is thrown away is paid for too: divide by the share that is left." : "Mass times price.", l.Line.Line.Label, Cost(l, i), (double)l.Cost!.Amount, currency))]);
            double all = (double)sheet.Ingredients!.Amount;
            solution = solution.Then(
                new SolutionStep("Add up everything that counts.", "batch", string.Join(" + ", sheet.Lines.Select(l => $"{N((double)l.Cost!.Amount)} {currency}")), all, currency));
            Money portion = made(WholeBatch) ? sheet.Ingredients : sheet.IngredientsPerPortion!;
            string each = $"{N((double)portion.Amount)} {currency}";
            solution = solution.Then(new SolutionStep("Divide by the number of portions.", "portion", made(WholeBatch) ? "the whole batch" : $"{N(all)} {currency} / {N(portions)}", (double)portion.Amount, currency));
            return draw.Level < 3 ? solution : solution.Then(new SolutionStep("The cost is that share of the price: divide by it, and round to whole cents.", "price",
                made(TargetMultiplied) ? $"{each} × {N(target)}/100" : made(MarkUpForMargin) ? $"{each} × (1 + (100 - {N(target)})/100)" : $"{each} / ({N(target)}/100)",
                made(TargetMultiplied) ? (double)portion.Amount * target / 100 : made(MarkUpForMargin) ? (double)portion.Amount * (2 - target / 100)
                    : (double)SellingPrice.AtFoodCost(portion, (decimal)target).Net.Amount, currency));
        }

        Misconception[] mistakes = draw.Level switch { 1 => [WholeBatch], 2 => [YieldForgotten, YieldMultiplied, WholeBatch], _ => [TargetMultiplied, MarkUpForMargin, WholeBatch] };
        string lines = string.Join("; ", formula.Lines.Select((l, i) => $"{N(batch.Lines[i].Mass.Grams)} g of {KitchenMix.InText(l.Ingredient)} at {N(prices[i])} {currency} a {unit}"));
        return new ExerciseDraft(
            $"A batch of {N(portions)} portions takes {lines}." + (draw.Level == 2 ? $" Of the {dearName} {N(yield)} % of what is bought goes into the pot." : "")
                + (draw.Level == 3 ? $" The ingredients shall be {N(target)} % of the price before tax. At what price is a portion sold?" : " What do the ingredients of a portion cost?"),
            AnswerForm.Reading(null, currency, 2), Solve, mistakes);
    }
}
