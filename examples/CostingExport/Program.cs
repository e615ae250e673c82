// A book of formulas and a price list in; what each formula costs, one cost sheet, and the files for other systems out.

using System.CommandLine;
using System.Globalization;
using System.Text;
using CafeCosts;
using Hydrocolloid.Formulation;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Declarations;
using Hydrocolloid.Formulation.Exchange;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

const int Good = 0;
const int BadInput = 2;
const int CostUnknown = 3;

string bundled = Path.Combine(AppContext.BaseDirectory, "data");
var book = new Option<string>("--book") { Description = "A book of formulas (JSON). Without it, the bundled one of the café.", DefaultValueFactory = _ => Path.Combine(bundled, "cafe-book.json") };
var prices = new Option<string>("--prices") { Description = "A price list (CSV). Without it, the bundled one.", DefaultValueFactory = _ => Path.Combine(bundled, "cafe-prices.csv") };
var dialect = new Option<string?>("--dialect") { Description = "How CSV is written, and read if --prices is given: comma (with a decimal point) or semicolon (with a decimal comma)." };
dialect.AcceptOnlyFromAmong("comma", "semicolon");
var currency = new Option<string>("--currency") { Description = "The currency of the price list.", DefaultValueFactory = _ => "EUR" };
var day = new Option<string>("--on") { Description = "The day whose prices count.", DefaultValueFactory = _ => "2026-03-02" };
var chosen = new Option<string>("--formula") { Description = "The formula of the book whose cost sheet is printed.", DefaultValueFactory = _ => "pear-elderflower-jelly" };
var make = new Option<string?>("--make") { Description = "How much of it: a mass (\"2.4 kg\") or portions (\"48 x 35 g\"). Without it, what the book says." };
var packs = new Option<bool>("--whole-packs") { Description = "Charge whole packs where only packs are sold." };
var foodCost = new Option<decimal?>("--food-cost") { Description = "Work out a selling price at this food cost, % of the net price." };
var tax = new Option<decimal>("--tax") { Description = "Tax on the selling price, %." };
var to = new Option<string?>("--to") { Description = "The folder for the files. Without it, a new one for temporary files." };
var strict = new Option<bool>("--strict") { Description = "Exit with code 3 if the cost of a formula is not known." };

var root = new RootCommand("Costs a book of formulas under a price list and writes the files for other systems.")
{
    book, prices, dialect, currency, day, chosen, make, packs, foodCost, tax, to, strict,
};
root.SetAction(Run);
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
ParseResult arguments = root.Parse(args);
return arguments.Errors.Count > 0 ? Refuse([.. arguments.Errors.Select(e => e.Message), "--help shows the options."]) : arguments.Invoke();

int Run(ParseResult given)
{
    try
    {
        CsvDialect written = given.GetValue(dialect) == "semicolon" ? CsvDialect.Semicolon : CsvDialect.Comma;
        bool isOwnList = given.GetResult(prices) is { Implicit: false };
        NestedFormulas formulas = NestedFormulas.From(BookJson.Read(File.ReadAllBytes(given.GetValue(book)!)));
        PriceListCsv.TryRead(File.ReadAllBytes(given.GetValue(prices)!), Currency.Of(given.GetValue(currency)!), isOwnList ? written : CsvDialect.Comma, out PriceList list, out ValueList<CostingProblem> faults);
        if (list.Prices.IsEmpty)
        {
            return Refuse([$"{given.GetValue(prices)}: no price can be read.", .. faults.Select(f => "  " + f)]);
        }

        if (!DateTime.TryParseExact(given.GetValue(day), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime on))
        {
            return Refuse([$"--on: '{given.GetValue(day)}' is no day such as 2026-03-31."]);
        }

        string id = given.GetValue(chosen)!;
        Yield? yield = formulas.Entries.FirstOrDefault(e => e.Id == id)?.Yield;
        if (given.GetValue(make) is { } size && !Yield.TryParse(size, YieldBasis.Finished, out yield, out string error))
        {
            return Refuse(["--make: " + error]);
        }

        // What cannot be read or used is said, and the rest is costed.
        foreach (string problem in faults.Select(f => f.ToString()).Concat(formulas.Problems.Select(p => p.ToString())))
        {
            Console.Error.WriteLine(problem);
        }

        BookCosts costs = FormulaBook.From(formulas.Entries).Cost(list, on);
        Console.Write(CostText.OfBook(formulas, costs) + "\n");

        PackCharge charge = given.GetValue(packs) ? PackCharge.WholePacks : PackCharge.UsedPart;
        MakingPlan plan = formulas.Plan(id, yield ?? OneKilogram());
        PlanCost cost = plan.Cost(list, on, charge);
        SellingPrice? selling = given.GetValue(foodCost) is { } percent && (cost.Whole.IngredientsPerPortion ?? cost.Whole.Ingredients) is { } ingredients
            ? SellingPrice.AtFoodCost(ingredients, percent, given.GetValue(tax)) : null;
        string sheet = CostText.OfPlan(plan, cost, selling);
        Console.Write(sheet + "\n");

        string folder = given.GetValue(to) ?? Directory.CreateTempSubdirectory("costing-export-").FullName;
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "cost-sheet.txt"), sheet);
        File.WriteAllBytes(Path.Combine(folder, "prices.json"), PriceListJson.Write(list));
        Export(formulas, list, on, written, folder);
        Console.WriteLine($"In {folder}: {string.Join(", ", Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal))}");

        bool isKnown = faults.IsEmpty && costs.All(c => c.IsCosted);
        return given.GetValue(strict) && !isKnown ? CostUnknown : Good;
    }
    catch (FormulaJsonException e)
    {
        return Refuse([$"{given.GetValue(book)}: not a book of formulas.", .. e.Problems.Select(p => "  " + p)]);
    }
    catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or FormulaException)
    {
        return Refuse([e.Message]);
    }
}

// Every formula that can be used, at the size of the book: a weigh list, a recipe, and the lines of all of them for a costing system.
static void Export(NestedFormulas formulas, PriceList list, DateTime on, CsvDialect dialect, string folder)
{
    using FileStream lines = File.Create(Path.Combine(folder, "costing.jsonl"));
    HashSet<string> unusable = [.. formulas.Problems.Select(p => p.Entry)];
    foreach (BookEntry entry in formulas.Entries.Where(e => !unusable.Contains(e.Id)))
    {
        MakingPlan plan = formulas.Plan(entry.Id, entry.Yield ?? OneKilogram());
        File.WriteAllBytes(Path.Combine(folder, entry.Id + ".csv"), BatchCsv.Write(plan.Batch, dialect));
        File.WriteAllBytes(Path.Combine(folder, entry.Id + ".jsonld"), RecipeJsonLd.Write(plan.Batch, plan.Batch.PlanMethod(), plan.Flatten().Declare(), "en-GB"));
        lines.Write(CostingLines.Write(plan.Batch, new CostingExport(entry.Id) { Costs = plan.Cost(list, on).Whole }));
    }
}

static Yield OneKilogram() => Yield.Finished(Mass.FromGrams(1000));

static int Refuse(string[] problems)
{
    foreach (string problem in problems)
    {
        Console.Error.WriteLine(problem);
    }

    return BadInput;
}
