// A class of the training kitchen: a set of twelve exercises from a seed; the sheet, and answers marked with feedback and a summary of the class.

using System.CommandLine;
using System.Globalization;
using System.Text;
using Hydrocolloid.Formulation.Teaching;

const int Good = 0;
const int BadInput = 2;
const int Count = 12;

var seed = new Option<ulong>("--seed") { Description = "The seed of the set; the same seed gives the same set.", DefaultValueFactory = _ => 12 };
var layout = new Option<string>("--layout") { Description = "The form of the sheet: markdown, html, json (for students), key (for teachers, with answers) or qti (items, with answers).", DefaultValueFactory = _ => "markdown" };
layout.AcceptOnlyFromAmong("markdown", "html", "json", "key", "qti");
var solutions = new Option<bool>("--solutions") { Description = "Print the worked solutions, in markdown and html." };
var us = new Option<bool>("--us") { Description = "State masses in ounces and temperatures in °F." };
var board = new Option<bool>("--no-calculator") { Description = "Only exercises for the blackboard." };
var answers = new Option<string[]>("--answers") { Description = "Mark answer sheets (JSON) in place of printing the sheet; \"bundled\" for those of the example's class.", AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => [] };
var hints = new Option<int?>("--hints") { Description = "Print the hints of one exercise, in place of the sheet; give its number." };

var root = new RootCommand("Twelve exercises for a class: prints the sheet, or marks the answers.") { seed, layout, solutions, us, board, answers, hints };
root.SetAction(Run);
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
ParseResult arguments = root.Parse(args);
return arguments.Errors.Count > 0 ? Refuse([.. arguments.Errors.Select(e => e.Message), "--help shows the options."]) : arguments.Invoke();

int Run(ParseResult given)
{
    ExerciseSet set = ExerciseSet.Generate(given.GetValue(seed), Count, ExerciseSettings.Default with
    {
        Units = given.GetValue(us) ? UnitSystem.UsCustomary : UnitSystem.Metric,
        WithCalculator = !given.GetValue(board),
    });
    if (given.GetValue(hints) is { } number)
    {
        if (number is < 1 or > Count)
        {
            return Refuse([$"--hints: the exercises are numbered from 1 to {Count}."]);
        }

        Console.WriteLine(string.Join("\n", set.Exercises[number - 1].Hints));
        return Good;
    }

    string[] files = given.GetValue(answers)!;
    if (files.Length == 0)
    {
        Console.Write(Page(set, given.GetValue(layout)!, given.GetValue(solutions)));
        return Good;
    }

    if (files is ["bundled"])
    {
        files = [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "answers"), "*.json").Order(StringComparer.Ordinal)];
    }

    try
    {
        MarkedSheet[] marked = [.. files.Select(f => Marking.Mark(set, ExerciseJson.ReadAnswers(File.ReadAllText(f))))];
        Report(marked);
        return Good;
    }
    catch (Exception problem) when (problem is FormatException or IOException or UnauthorizedAccessException)
    {
        return Refuse([problem.Message]);
    }
}

static string Page(ExerciseSet set, string layout, bool withSolutions) => layout switch
{
    "html" => ExerciseSheet.ToHtml(set, "Training kitchen: gels by proportion", withSolutions),
    "json" => ExerciseJson.WriteForStudents(set),
    "key" => ExerciseJson.WriteKey(set),
    "qti" => string.Concat(set.Exercises.Select((e, i) => ExerciseQti.ToItem(e, string.Create(CultureInfo.InvariantCulture, $"exercise-{i + 1}")))),
    _ => ExerciseSheet.ToMarkdown(set, "Training kitchen: gels by proportion", withSolutions),
};

static void Report(MarkedSheet[] sheets)
{
    foreach (MarkedSheet sheet in sheets)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{sheet.Student}: {sheet.CreditPercent:0} %"));
        foreach ((MarkedAnswer answer, int i) in sheet.Answers.Select((a, i) => (a, i)))
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {i + 1,2}. {answer.CreditPercent,3:0} %  {answer}"));
        }

        Console.WriteLine();
    }

    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Class: {sheets.Average(s => s.CreditPercent):0} % on average. Commonest misconceptions:"));
    foreach ((Misconception misconception, int count) in MarkedSheet.Commonest(sheets))
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {count} × {misconception.Name}"));
    }
}

static int Refuse(string[] problems)
{
    foreach (string problem in problems)
    {
        Console.Error.WriteLine(problem);
    }

    return BadInput;
}
