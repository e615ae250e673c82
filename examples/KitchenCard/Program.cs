// The main job as a console program: a formula file in; a weigh sheet, a method, findings, cautions and sources out.

using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Text;
using KitchenCard;
using UnitsNet;

const int Good = 0;
const int BadInput = 2;
const int ConflictFound = 3;
const int DefaultPortions = 60;

var file = new Argument<string?>("formula")
{
    Description = "A formula file (JSON). Without one, the bundled pear and elderflower jelly.",
    Arity = ArgumentArity.ZeroOrOne,
};
file.Validators.Add(given =>
{
    if (given.Tokens is [{ Value: ['-', ..] } token] && !File.Exists(token.Value))
    {
        given.AddError($"'{token.Value}' is neither an option nor a file.");
    }
});
var make = new Option<string?>("--make")
{
    Description = "How much to make: a mass (\"2.4 kg\") or portions (\"48 x 35 g\"). Without it, 60 portions of the formula's portion mass (40 g if it states none).",
};
var counted = new Option<string>("--counted")
{
    Description = "Which mass --make counts: finished (after losses), assembled (before losses) or base.",
    DefaultValueFactory = _ => "finished",
};
counted.AcceptOnlyFromAmong("finished", "assembled", "base");
var balance = new Option<string>("--balance") { Description = "The smallest step the balance shows.", DefaultValueFactory = _ => "0.1 g" };
var tolerance = new Option<double>("--tolerance") { Description = "Warn where rounding puts a dose off by more than this, % of the dose.", DefaultValueFactory = _ => 5 };
var layout = new Option<string>("--layout") { Description = "The form of the card: text, markdown or json.", DefaultValueFactory = _ => "text" };
layout.AcceptOnlyFromAmong("text", "markdown", "json");
var worked = new Option<string[]>("--worked") { Description = "Work out the mass of a line step by step; give its label. May be repeated.", DefaultValueFactory = _ => [] };
var mend = new Option<string?>("--mend")
{
    Description = "Apply a remedy and print the changed formula (JSON) in place of the card: the id of a finding for its first remedy, or finding/remedy.",
};
var altitude = new Option<string?>("--altitude") { Description = "Height of the kitchen above the sea (\"2240 m\"). Without it, that of the formula, or sea level." };
var equipment = new Option<string[]>("--equipment") { Description = "What the kitchen has; may be repeated. Without it, a pan and a hand blender.", DefaultValueFactory = _ => [] };
equipment.AcceptOnlyFromAmong("pan", "hand-blender", "jug-blender", "pressure-cooker", "thermal-mixer", "steam", "vacuum-chamber");
var failed = new Option<string?>("--failed") { Description = "Say why the batch failed, in place of the card: the symptom, such as did-not-set." };
failed.AcceptOnlyFromAmong([.. Enum.GetNames<Symptom>().Select(Text.Kebab)]);
var record = new Option<string?>("--record") { Description = "A process record (JSON) of what was actually done, for --failed." };
var with = new Option<string?>("--with")
{
    Description = "Print the card of the formula made with another agent or a known blend (\"agar\", \"agar+locust bean gum\") for the same texture, then what was done and what will differ.",
};
var insteadOf = new Option<string?>("--instead-of") { Description = "The agent that --with takes the place of. Without it, all that gels." };
var beside = new Option<string?>("--beside") { Description = "Compare the card's main agent with others, after the card: ids or names with commas between (\"gelatin-type-a,carrageenan-iota\")." };
var scales = new Option<string[]>("--scales") { Description = "Plan the weighing on these balances: the step of each, and what it carries if that is known (\"0.1 g\", \"1 g/6000 g\"). May be repeated.", DefaultValueFactory = _ => [] };
var batches = new Option<int>("--batches") { Description = "How many batches a stock or premix of the weighing plan is for.", DefaultValueFactory = _ => 1 };
var pan = new Option<string?>("--pan") { Description = "The gastronorm pan to fill, in place of the formula's mould: size and depth (\"1/4 65\")." };
var prices = new Option<string?>("--prices") { Description = "A price list (CSV): the cost is shown. Needs --on." };
var dialect = new Option<string>("--dialect") { Description = "How the price list is written: comma (with a decimal point) or semicolon (with a decimal comma).", DefaultValueFactory = _ => "comma" };
dialect.AcceptOnlyFromAmong("comma", "semicolon");
var currency = new Option<string>("--currency") { Description = "The currency of the price list.", DefaultValueFactory = _ => "EUR" };
var day = new Option<string?>("--on") { Description = "The day whose prices count (\"2026-03-02\")." };
var strict = new Option<bool>("--strict") { Description = "Exit with code 3 if a conflict is found." };

var root = new RootCommand("Prints the kitchen card of a gel formula: weigh sheet, method, findings, cautions, sources.")
{
    file, make, counted, balance, tolerance, layout, worked, mend, with, insteadOf, failed, record, altitude, equipment, beside, scales, batches, pan, prices, dialect, currency, day, strict,
};
root.SetAction(Run);

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
ParseResult arguments = root.Parse(args);
if (arguments.Errors.Count > 0)
{
    return Refuse([.. arguments.Errors.Select(e => e.Message), "--help shows the options."]);
}

return arguments.Invoke();

int Run(ParseResult given)
{
    string path = given.GetValue(file) ?? Path.Combine(AppContext.BaseDirectory, "data", "pear-elderflower-jelly.json");
    try
    {
        Formula formula = FormulaJson.Read(File.ReadAllBytes(path));
        var problems = new List<string>();
        Yield yield = YieldOf(given, formula, problems);
        Balance scale = BalanceOf(given.GetValue(balance)!, problems);
        double off = given.GetValue(tolerance);
        if (!(off is > 0 and <= 100))
        {
            problems.Add("--tolerance: must be above 0 % and up to 100 %.");
        }

        Kitchen kitchen = KitchenOf(given, problems);
        Substitution? other = SubstitutionOf(given, formula, kitchen, problems);
        formula = other?.Formula ?? formula;
        CardExtras extras = ExtrasOf(given, off, problems);
        string[] lines = given.GetValue(worked)!;
        problems.AddRange(lines.Where(l => formula.Lines.All(f => f.Label != l))
            .Select(l => $"--worked: the formula has no line '{l}'. Its lines: {string.Join(", ", formula.Lines.Select(f => f.Label))}."));
        AgentComparison? comparison = given.GetValue(beside) is { } others ? ComparisonOf(formula, others, problems) : other?.Differences;
        if (problems.Count > 0)
        {
            return Refuse(problems);
        }

        if (given.GetValue(failed) is { } symptom)
        {
            ProcessRecord done = given.GetValue(record) is { } recordFile ? ProcessRecordJson.Read(File.ReadAllBytes(recordFile)) : ProcessRecord.Nothing;
            Console.Out.Write(DiagnosisText.Render(formula, formula.Diagnose(Enum.GetValues<Symptom>().Single(s => Text.Kebab(s.ToString()) == symptom), done)));
            return Good;
        }

        if (given.GetValue(mend) is { } choice)
        {
            return Mend(formula, choice);
        }

        Card card = CardWriter.Write(formula, yield, scale, off, lines, kitchen, extras, comparison);
        Console.Out.Write(given.GetValue(layout) switch
        {
            "json" => JsonSerializer.Serialize(card, CardJson.Default.Card) + "\n",
            "markdown" => MarkdownCard.Render(card) + SubstitutionText.Render(other, markdown: true) + (comparison is null ? "" : $"\n## {comparison}\n\n{comparison.ToMarkdown()}"),
            _ => TextCard.Render(card) + SubstitutionText.Render(other, markdown: false) + (comparison is null ? "" : TextCard.Render(comparison)),
        });
        bool conflict = card.MethodConflicts.Count > 0 || card.Findings.Any(f => f.Severity == "conflict");
        return conflict && given.GetValue(strict) ? ConflictFound : Good;
    }
    catch (FormulaJsonException e)
    {
        return Refuse([$"{path}: not a formula that can be worked.", .. e.Problems.Select(p => "  " + p)]);
    }
    catch (FormulaException e)
    {
        return Refuse([e.Message]);
    }
    catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
    {
        return Refuse([$"{path}: {e.Message}"]);
    }
}

Substitution? SubstitutionOf(ParseResult given, Formula formula, Kitchen kitchen, List<string> problems)
{
    if (given.GetValue(with) is not { } agent)
    {
        return null;
    }

    try
    {
        var options = new MethodOptions { Kitchen = kitchen };
        Substitution made = given.GetValue(insteadOf) is { } from ? formula.Substitute(from, agent, options) : formula.SubstituteAll(agent, options);
        if (made.Formula is null)
        {
            problems.Add($"--with: {made}");
        }

        return made;
    }
    catch (ArgumentException e)
    {
        problems.Add("--with: " + e.Message);
        return null;
    }
}

int Mend(Formula formula, string choice)
{
    string[] ids = choice.Split('/');
    ValueList<Finding> findings = formula.Review();
    Finding? finding = findings.FirstOrDefault(f => f.Id == ids[0] && !f.Remedies.IsEmpty);
    Remedy? remedy = finding?.Remedies.FirstOrDefault(r => ids.Length < 2 || r.Id == ids[1]);
    if (finding is null || remedy is null || ids.Length > 2)
    {
        string[] known = [.. findings.SelectMany(f => f.Remedies.Select(r => $"{f.Id}/{r.Id}")).Distinct()];
        return Refuse([$"--mend: '{choice}' is no remedy of this formula. {(known.Length == 0 ? "It has none." : "Its remedies: " + string.Join(", ", known) + ".")}"]);
    }

    Console.Error.WriteLine($"{finding.Id}/{remedy.Id}: {remedy.Advice} {remedy.Effect}");
    Console.Out.Write(FormulaJson.Write(remedy.Apply(formula)) + "\n");
    return Good;
}

static AgentComparison? ComparisonOf(Formula formula, string others, List<string> problems)
{
    FormulaLine? main = formula.Lines.Where(l => l.IsContinuous && l.Ingredient.Profile?.Role == HydrocolloidRole.GellingAgent).MaxBy(l => formula.Proportions.MassOf(l));
    if (main is null)
    {
        problems.Add("--beside: the formula has no gelling agent.");
        return null;
    }

    var agents = new List<Ingredient> { main.Ingredient };
    foreach (string word in others.Split(',', StringSplitOptions.TrimEntries))
    {
        Ingredient[] found = Catalogue.BuiltIn.TryGet(word, out Ingredient? known) ? [known] : [.. Catalogue.BuiltIn.Find(word).Where(i => i.Profile is not null)];
        if (found.Length == 1)
        {
            agents.Add(found[0]);
        }
        else
        {
            problems.Add($"--beside: '{word}' is {(found.Length == 0 ? "no agent of the catalogue" : "one of several: " + string.Join(", ", found.Select(i => i.Id)))}.");
        }
    }

    try
    {
        return problems.Count > 0 ? null : AgentComparison.Of([.. agents]);
    }
    catch (ArgumentException e)
    {
        problems.Add("--beside: " + e.Message);
        return null;
    }
}

Yield YieldOf(ParseResult given, Formula formula, List<string> problems)
{
    YieldBasis basis = given.GetValue(counted) switch
    {
        "base" => YieldBasis.Base,
        "assembled" => YieldBasis.Assembled,
        _ => YieldBasis.Finished,
    };
    if (given.GetValue(make) is not { } text)
    {
        return Yield.Portions(DefaultPortions, formula.Service.Portion ?? Mass.FromGrams(40), basis);
    }

    if (Yield.TryParse(text, basis, out Yield? yield, out string error))
    {
        return yield;
    }

    problems.Add("--make: " + error);
    return Yield.Portions(1, Mass.FromGrams(1));
}

Kitchen KitchenOf(ParseResult given, List<string> problems)
{
    Kitchen kitchen = Kitchen.Plain;
    if (given.GetValue(equipment) is { Length: > 0 } words)
    {
        kitchen = kitchen with { Equipment = words.Aggregate(Equipment.None, (all, w) => all | Enum.Parse<Equipment>(w.Replace("-", ""), ignoreCase: true)) };
    }

    if (given.GetValue(altitude) is not { } text)
    {
        return kitchen;
    }

    if (!QuantityText.TryParseLength(text, out Length height, out string error))
    {
        problems.Add("--altitude: " + error);
        return kitchen;
    }

    try
    {
        return kitchen with { Altitude = height };
    }
    catch (ArgumentOutOfRangeException e)
    {
        problems.Add("--altitude: " + e.Message);
        return kitchen;
    }
}

CardExtras ExtrasOf(ParseResult given, double tolerancePercent, List<string> problems)
{
    MouldPlan? mould = null;
    if (given.GetValue(pan) is { } size)
    {
        GastronormPan? found = Gastronorm.Pans.FirstOrDefault(p => $"{p.Size} {Text.Number(p.Depth.Millimeters)}" == size);
        mould = found?.ToMould();
        if (found is null)
        {
            problems.Add($"--pan: '{size}' is not one of {string.Join(", ", Gastronorm.Pans.Select(p => $"\"{p.Size} {Text.Number(p.Depth.Millimeters)}\""))}.");
        }
    }

    WeighingSetup? weighing = null;
    if (given.GetValue(scales) is { Length: > 0 } words)
    {
        Balance[] balances = [.. words.Select(w => ScaleOf(w, problems))];
        int count = given.GetValue(batches);
        if (count is < 1 or > 10_000)
        {
            problems.Add("--batches: must be from 1 to 10000.");
        }
        else if (problems.Count == 0)
        {
            weighing = new WeighingSetup(balances) { TolerancePercent = tolerancePercent, Batches = count };
        }
    }

    if (given.GetValue(prices) is not { } file)
    {
        return new CardExtras(mould, weighing, null, default);
    }

    if (!DateTime.TryParseExact(given.GetValue(day), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime on))
    {
        problems.Add("--on: state the day whose prices count, such as 2026-03-02.");
    }

    if (!Currency.TryFind(given.GetValue(currency), out Currency? money))
    {
        problems.Add($"--currency: '{given.GetValue(currency)}' is not a currency of ISO 4217.");
        return new CardExtras(mould, weighing, null, on);
    }

    CsvDialect written = given.GetValue(dialect) == "semicolon" ? CsvDialect.Semicolon : CsvDialect.Comma;
    PriceListCsv.TryRead(File.ReadAllBytes(file), money, written, out PriceList list, out ValueList<CostingProblem> faults);
    problems.AddRange(faults.Select(f => $"--prices: {f}"));
    return new CardExtras(mould, weighing, list, on);
}

static Balance ScaleOf(string text, List<string> problems)
{
    string[] parts = text.Split('/');
    Balance balance = BalanceOf(parts[0], problems, "--scales");
    if (parts.Length == 1)
    {
        return balance;
    }

    if (parts.Length > 2 || !QuantityText.TryParseMass(parts[1], out Mass capacity, out _) || !(capacity > balance.Division && capacity.Grams <= 1e6))
    {
        problems.Add($"--scales: '{text}' is no balance: write its step and what it carries, such as 1 g/6000 g.");
        return balance;
    }

    return balance with { Capacity = capacity };
}

static Balance BalanceOf(string text, List<string> problems, string option = "--balance")
{
    if (!QuantityText.TryParseMass(text, out Mass division, out string error))
    {
        problems.Add($"{option}: {error}");
    }
    else if (division.Grams is >= 1e-6 and <= 1000)
    {
        return Balance.WithDivision(division);
    }
    else
    {
        problems.Add($"{option}: '{text}' is no division of a kitchen balance; it must be between 0.000001 g and 1000 g.");
    }

    return Balance.WithDivision(Mass.FromGrams(1));
}

static int Refuse(IEnumerable<string> problems)
{
    foreach (string problem in problems)
    {
        Console.Error.WriteLine(problem);
    }

    return BadInput;
}
