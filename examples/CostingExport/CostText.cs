using System.Globalization;
using System.Text;
using Hydrocolloid.Formulation;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Costing;

namespace CafeCosts;

/// <summary>The costs as plain text.</summary>
internal static class CostText
{
    /// <summary>A line a formula of the book: what a kilogram and what a portion costs, or why it has no cost.</summary>
    public static string OfBook(NestedFormulas formulas, BookCosts costs)
    {
        var text = new StringBuilder();
        text.Append($"{"formula",-32}{"per kg",14}{"per portion",16}\n");
        foreach (BookCost cost in costs)
        {
            Yield? made = formulas.Entries.First(e => e.Id == cost.Id).Yield;
            string portion = made is { Count: not null } ? Amount(cost.Of(made.Mass)) : "";
            text.Append($"{cost.Id,-32}{Amount(cost.PerKilogram),14}{portion,16}\n");
            foreach (CostingProblem problem in cost.Problems)
            {
                text.Append($"  {problem.Message}\n");
            }
        }

        return text.ToString();
    }

    /// <summary>What to make, and the cost sheet of each batch: the parts first.</summary>
    public static string OfPlan(MakingPlan plan, PlanCost cost, SellingPrice? selling)
    {
        var text = new StringBuilder();
        for (int i = 0; i < plan.Batches.Count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{plan.Batches[i]}\n");
            Sheet(text, cost.Sheets[i]);
        }

        CostSheet whole = cost.Whole;
        text.Append($"Per kg {Amount(whole.PerKilogram)}, per portion {Amount(whole.PerPortion)}.\n");
        if (selling is not null)
        {
            text.Append($"Sold at {selling}.\n");
        }

        foreach (CostingProblem missing in cost.Missing)
        {
            text.Append($"Not known: {missing}\n");
        }

        return text.ToString();
    }

    private static void Sheet(StringBuilder text, CostSheet sheet)
    {
        ValueList<Money> rounded = sheet.RoundedLines();
        for (int i = 0; i < sheet.Lines.Count; i++)
        {
            CostLine line = sheet.Lines[i];
            string share = line.SharePercent is { } percent ? percent.ToString("0.0", CultureInfo.InvariantCulture) + " %" : "";
            string grams = line.Line.Mass.Grams.ToString("0.0", CultureInfo.InvariantCulture) + " g";
            text.Append($"  {line.Line.Line.Ingredient.Name,-34}{grams,12}{(rounded.IsEmpty ? Amount(line.Cost) : rounded[i].ToString()),14}{share,10}\n");
        }

        text.Append($"  {"ingredients",-34}{"",12}{Amount(sheet.Ingredients),14}\n");
    }

    private static string Amount(Money? money) => money?.Rounded().ToString() ?? "not known";
}
