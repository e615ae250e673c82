using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>Finds the base mass that gives a yield, and explains it.</summary>
internal static class BatchSizing
{
    public static (Batch? Batch, ValueList<FormulaProblem> Problems) Size(Formula formula, Yield yield, Losses losses)
    {
        var problems = new List<FormulaProblem>();
        string? limitedBy = null;
        double baseGrams;
        if (!yield.Stocks.IsEmpty)
        {
            (baseGrams, limitedBy) = FromStocks(formula, yield.Stocks, losses, problems);
        }
        else if (yield.Mould is { } mould)
        {
            // Only what a set gel is trimmed of is lost after casting, so it does not count here.
            Reckoned density = DensityForCasting(formula, yield.CastAt).Density;
            if (!(density.Value > 0))
            {
                problems.Add(DensityUnknown);
            }

            baseGrams = losses.AssembledForCast(yield.Count!.Value * mould.FillVolume!.Value.Milliliters * density.Value / 1000) / formula.Proportions.Total;
        }
        else
        {
            double assembled = yield.Basis == YieldBasis.Finished ? losses.AssembledGrams(yield.TotalGrams) : yield.TotalGrams;
            baseGrams = yield.Basis == YieldBasis.Base ? yield.TotalGrams : assembled / formula.Proportions.Total;
        }

        if (problems.Count == 0)
        {
            Check(formula, losses, baseGrams, problems);
        }

        return problems.Count > 0 ? (null, ValueList<FormulaProblem>.From(problems)) : (new Batch(formula, yield, losses, baseGrams, limitedBy), default);
    }

    public static Derivation? ExplainBase(Batch batch)
    {
        Yield yield = batch.Yield;
        if (batch.LimitedBy is { } label)
        {
            Stock stock = yield.Stocks.First(s => s.Label == label);
            (double perBase, double topUp) = Use(batch.Formula, yield.Stocks, stock, batch.Losses);
            string grams = Derivation.Text(stock.Grams, "g");
            string available = topUp > 0 ? $"({grams} - {Derivation.Text(topUp, "g")} to top up)" : grams;
            string with = perBase > batch.Formula.Proportions.MassOf(batch.Formula.Line(label)) ? ", topping up included" : "";
            return new Derivation("base", $"{available} of {label}, in shortest supply, / {Numbers.Significant(perBase, 6)} per unit of base{with}", batch.BaseGrams, "g");
        }

        if (yield.Basis == YieldBasis.Base)
        {
            return null;
        }

        string total = Numbers.Significant(batch.Formula.Proportions.Total, 8);
        if (yield.Mould is { } mould)
        {
            MouldFilling filling = batch.Fill(mould, yield.CastAt);
            return new Derivation("base", $"{Derivation.Text(batch.AssembledGrams, "g")} assembled / {total} per unit of base", batch.BaseGrams, "g",
                new Derivation("assembled", $"{Derivation.Text(filling.CastGrams, "g")} cast, before losses ({batch.Losses})", batch.AssembledGrams, "g",
                    new Derivation("cast", $"{Numbers.Exact(yield.Count!.Value)} × {Numbers.Significant(mould.FillVolume!.Value.Milliliters, 6)} mL × {Numbers.Significant(filling.Density.Value, 5)} kg/m³ / 1000", filling.CastGrams, "g")));
        }

        return yield.Basis == YieldBasis.Assembled || batch.Losses.IsNone
            ? new Derivation("base", $"{Derivation.Text(yield.TotalGrams, "g")} / {total} per unit of base", batch.BaseGrams, "g")
            : new Derivation("base", $"{Derivation.Text(batch.AssembledGrams, "g")} assembled / {total} per unit of base", batch.BaseGrams, "g",
                new Derivation("assembled", $"{Derivation.Text(yield.TotalGrams, "g")} finished, before losses ({batch.Losses})", batch.AssembledGrams, "g"));
    }

    public static Derivation ExplainFinished(Batch batch, Derivation total)
    {
        Losses losses = batch.Losses;
        Derivation current = total;
        if (!losses.ToppedUp)
        {
            current = Step("after evaporation", current, losses.Evaporation);
        }

        current = Step("after straining", current, losses.Straining);
        current = Step("after transfer", current, losses.Transfer);
        current = Step("after trimming", current, losses.Trimming);
        return current;
    }

    public static FormulaProblem DensityUnknown { get; }
        = new("density-unknown", "", "The density of no line is known, so no volume can be turned into a mass.");

    /// <summary>The density of everything at the temperature of casting: the one given, the plan's, or 20 °C.</summary>
    public static (double Celsius, Reckoned Density) DensityForCasting(Formula formula, Temperature? castAt)
    {
        double celsius = castAt is { } given ? Guard.Celsius(given, nameof(castAt)) : formula.Process.CastAtCelsius ?? 20;
        return (celsius, formula.Analyse().Assembled.DensityAt(Temperature.FromDegreesCelsius(celsius)));
    }

    private static Derivation Step(string quantity, Derivation before, Loss loss)
    {
        if (loss.IsNone)
        {
            return before;
        }

        string lost = loss.PercentOfStep > 0 ? $"{Numbers.Significant(loss.PercentOfStep, 6)}/100 × {before.ValueText}" : Derivation.Text(loss.Grams, "g");
        return new Derivation(quantity, $"{before.ValueText} - {lost}", before.Value - loss.LostFrom(before.Value), "g", before);
    }

    private static (double BaseGrams, string? LimitedBy) FromStocks(Formula formula, ValueList<Stock> stocks, Losses losses, List<FormulaProblem> problems)
    {
        double least = double.PositiveInfinity;
        string? limitedBy = null;
        foreach (Stock stock in stocks)
        {
            if (formula.FindLine(stock.Label) is not { } line)
            {
                problems.Add(new FormulaProblem("stock-unknown", "", $"'{stock.Label}' is not a line of the formula.", stock.Label, stock.Grams));
                continue;
            }

            (double perBase, double topUp) = Use(formula, stocks, stock, losses);
            if (!(stock.Grams > topUp))
            {
                problems.Add(new FormulaProblem("stock-too-small", "",
                    $"The {Derivation.Text(stock.Grams, "g")} of {stock.Label} are gone with the {Derivation.Text(topUp, "g")} that top up what boils off.", stock.Label, stock.Grams, topUp));
                continue;
            }

            double grams = (stock.Grams - topUp) / perBase;
            if (grams < least)
            {
                (least, limitedBy) = (grams, stock.Label);
            }
        }

        if (problems.Count == 0 && limitedBy is null)
        {
            problems.Add(new FormulaProblem("stock-unlimited", "", "None of the stocks is used by the formula, so none limits it."));
        }

        return (least, limitedBy);
    }

    /// <summary>What a batch takes of a stock, per unit of base and whatever its size. The first stock of plain water also tops up what boils off.</summary>
    private static (double PerBase, double Fixed) Use(Formula formula, ValueList<Stock> stocks, Stock stock, Losses losses)
    {
        double mass = formula.Proportions.MassOf(formula.Line(stock.Label));
        bool topsUp = losses.ToppedUp && stocks.FirstOrDefault(s => formula.FindLine(s.Label) is { Ingredient.IsPlainWater: true }) == stock;
        return topsUp ? (mass + losses.Evaporation.PercentOfStep / 100 * formula.Proportions.Total, losses.Evaporation.Grams) : (mass, 0);
    }

    /// <summary>The most water a formula can hold, per unit of base mass: a line whose water content is unknown counts as all water.</summary>
    private static double MostWater(Formula formula)
    {
        double water = 0;
        foreach (FormulaLine line in formula.Lines)
        {
            water += formula.Proportions.MassOf(line) * (line.Ingredient.WaterPercent ?? 100) / 100;
        }

        return water;
    }

    private static void Check(Formula formula, Losses losses, double baseGrams, List<FormulaProblem> problems)
    {
        double assembled = formula.Proportions.Total * baseGrams;
        if (!(assembled <= Guard.MaxMassGrams))
        {
            problems.Add(new FormulaProblem("batch-too-large", "",
                $"The batch would be {Numbers.Significant(assembled, 6)} g; at most {Numbers.Exact(Guard.MaxMassGrams)} g are possible.", null, assembled, Guard.MaxMassGrams));
            return;
        }

        double evaporated = losses.EvaporatedGrams(assembled);
        double water = MostWater(formula) * baseGrams;
        if (evaporated > water)
        {
            problems.Add(new FormulaProblem("evaporation-too-large", "/process/losses/evaporation",
                $"{Numbers.Significant(evaporated, 6)} g shall boil off, but the mix holds at most {Numbers.Significant(water, 6)} g of water.", null, evaporated, water));
        }

        double finished = losses.FinishedGrams(assembled);
        if (!(finished > 0))
        {
            problems.Add(new FormulaProblem("nothing-left", "/process/losses",
                $"The losses ({losses}) leave {Numbers.Significant(finished, 6)} g of {Numbers.Significant(assembled, 6)} g.", null, finished, 0));
        }
    }
}
