using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>Stocks in water of what is too little to weigh, as the weighing plan makes them.</summary>
internal static class StockKinds
{
    public static ExerciseKind[] All =>
    [
        new("stock", "A stock of what is too little to weigh", 2, OfStock, needsCalculator: true),
    ];

    private const double MostStockGrams = 1500;

    private static readonly Ingredient[] s_salts = [Pantry.CitricAcid, Pantry.SodiumCitrate, Pantry.CalciumLactate];

    private static string G(double grams) => Numbers.Significant(grams, 6) + " g";

    // 1: how much of the stock a batch takes; 2: how much water is left to weigh.
    private static ExerciseDraft? OfStock(ExerciseDraw draw)
    {
        Ingredient small = draw.Pick([.. s_salts, .. draw.Allowed(Hydrocolloids.XanthanGum)]);
        draw.Name("substance", small.Id);
        double waterPercent = draw.Number("water", 40, 80, 10, "%"), dose = draw.Number("dose", 0.03, 0.12, 0.01, "%"), division = draw.Pick(0.1, 0.2, 0.5);
        draw.State("division", division, "g");
        double baseGrams = draw.Number("base-mass", 600, 3000, 100, "g"), batches = draw.Number("batches", 3, 10, 1, "");
        Formula formula = Formula.Named("Exercise").Base(b => b.Share(Pantry.Water, waterPercent).Share(Pantry.PearJuice, 100 - waterPercent)).Then("season", p => p.Add(small, Dose.Percent(dose).OfBase)).Build();
        Batch batch = formula.ScaleTo(Yield.OfBase(UnitsNet.Mass.FromGrams(baseGrams)), Losses.None);
        var balance = Balance.WithDivision(UnitsNet.Mass.FromGrams(division));
        WeighingPlan plan = batch.PlanWeighing(new WeighingSetup(balance) { TolerancePercent = 5, Batches = (int)batches });
        if (plan.Line(small.Id).Preparation is not { Way: WeighingWay.Stock } stock || plan.Line(Pantry.Water.Id).Reading is not { } left)
        {
            return null;
        }

        double substance = draw.State("stock-substance", stock.Substance.Shown.Grams, "g"), water = draw.State("stock-water", stock.Carrier.Shown.Grams, "g"), total = substance + water;
        double wanted = batch.MassOf(small.Id).Grams, aliquot = stock.Aliquot.Shown.Grams, waterGrams = batch.MassOf(Pantry.Water.Id).Grams;
        // The answer must not stand in the question, and a stock fits a jug.
        if (Math.Abs(aliquot - substance) < 2 * division || Math.Abs(aliquot - water) < 2 * division || total > MostStockGrams)
        {
            return null;
        }

        double Shown(double grams) => balance.Round(UnitsNet.Mass.FromGrams(grams)).Grams;
        string start = $"The {KitchenMix.InText(small)} is {Numbers.Exact(dose)} % of a base of {G(baseGrams)}, too little for a balance with a division of {G(division)}. A stock was made of {G(substance)} of it and {G(water)} of water.";
        AnswerForm form = AnswerForm.Reading(QuantityKind.Mass, "g", 1);
        if (draw.Level == 1)
        {
            return new ExerciseDraft(
                start + " How much of the stock does a batch take, to the nearest step of the balance?", form,
                made =>
                {
                    if (made(StockAsPure) && made(PartsOfWater))
                    {
                        return null;
                    }

                    double pure = wanted / (made(DecimalPlace) ? 10 : 1), whole = made(PartsOfWater) ? water : total;
                    double exact = made(StockAsPure) ? pure : pure / substance * whole;
                    bool isRight = !made(DecimalPlace) && !made(PartsOfWater) && !made(StockAsPure);
                    double shown = isRight ? aliquot : Shown(exact);
                    return shown == 0 ? null : WorkedSolution.Of(
                        new SolutionStep("The mass of a dose is its percentage over 100, times what it is a percentage of.", small.Id, $"{Numbers.Exact(dose)}/100 × {G(baseGrams)}", pure, "g"),
                        new SolutionStep("The whole stock is the substance and its water.", "whole stock", made(PartsOfWater) ? G(water) : $"{G(substance)} + {G(water)}", whole, "g"),
                        new SolutionStep("Of the stock so much is taken as holds that mass, shown to the nearest step.", "stock", made(StockAsPure) ? G(pure) : $"{G(pure)} / {G(substance)} × {G(whole)}", shown, "g"));
                }, StockAsPure, PartsOfWater, DecimalPlace);
        }

        // The plan may move a step to keep the total of all lines; that is not for the board.
        double carried = aliquot * water / total;
        draw.State("stock-mass", aliquot, "g");
        return Shown(waterGrams - carried) != left.Shown.Grams ? null : new ExerciseDraft(
            start + $" A batch takes {G(aliquot)} of the stock. The base is {Numbers.Exact(waterPercent)} % water. How much water is still to be weighed, to the nearest step of the balance?", form,
            made =>
            {
                if (made(CarrierCountedTwice) && made(WholeStockTakenOff))
                {
                    return null;
                }

                double off = made(WholeStockTakenOff) ? aliquot : made(CarrierCountedTwice) ? 0 : carried;
                bool isRight = off == carried;
                return WorkedSolution.Of(
                    new SolutionStep("The mass of a dose is its percentage over 100, times what it is a percentage of.", "water", $"{Numbers.Exact(waterPercent)}/100 × {G(baseGrams)}", waterGrams, "g"),
                    new SolutionStep("The stock brings its share of water.", "water in the stock", made(WholeStockTakenOff) ? G(aliquot) : made(CarrierCountedTwice) ? "nothing" : $"{G(aliquot)} × {G(water)} / {G(total)}", off, "g"),
                    new SolutionStep("Take it off, and round to the nearest step.", "still to weigh", $"{G(waterGrams)} - {G(off)}", isRight ? left.Shown.Grams : Shown(waterGrams - off), "g"));
            }, CarrierCountedTwice, WholeStockTakenOff);
    }
}
