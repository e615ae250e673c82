using System.Text.RegularExpressions;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Serialization;

/// <summary>Documents the tests share, and the files of the docs folder.</summary>
internal static class Documents
{
    public const string Layers = """
        {
          "format": "hydrocolloid-formula",
          "version": 1,
          "name": "Cucumber and mint layer",
          "base": [
            {
              "ingredient": "cucumber-juice",
              "percent": 90
            },
            {
              "ingredient": "mint-infusion",
              "percent": 10
            }
          ],
          "phases": [
            {
              "name": "season",
              "add": [
                {
                  "ingredient": "sucrose",
                  "percent": 4,
                  "of": "base"
                }
              ]
            },
            {
              "name": "gel",
              "add": [
                {
                  "ingredient": "gellan-low-acyl",
                  "percent": 0.25,
                  "of": "preceding"
                },
                {
                  "ingredient": "sodium-citrate",
                  "percent": 30,
                  "of": {
                    "ingredient": "gellan-low-acyl"
                  }
                }
              ]
            }
          ]
        }
        """;

    /// <summary>A document with one base part and one phase; the texts go where their names say.</summary>
    public static string With(string line = "", string of = "\"base\"", string percent = "1", string members = "", string part = "")
        => $$"""
            {"format":"hydrocolloid-formula","version":1,"name":"Beetroot consommé sheet",
            "base":[{"ingredient":"beetroot-juice","percent":100{{part}}}],
            "phases":[{"name":"gel","add":[{"ingredient":"agar","percent":{{percent}},"of":{{of}}{{line}}}]}]{{members}}}
            """;

    public static string File(string name)
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !System.IO.File.Exists(Path.Combine(folder.FullName, "Hydrocolloid.Formulation.sln")))
        {
            folder = folder.Parent;
        }

        return System.IO.File.ReadAllText(Path.Combine(folder!.FullName, "docs", name));
    }

    public static IReadOnlyList<string> BlocksOfThePage()
        => [.. Regex.Matches(File("formula-json.md"), "^```json\n(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline, TimeSpan.FromSeconds(5)).Select(m => m.Groups[1].Value)];

    public static IReadOnlyList<FormulaJsonProblem> ProblemsOf(string json)
    {
        FormulaJson.TryRead(json, out Formula? formula, out ValueList<FormulaJsonProblem> problems).Should().BeFalse(json);
        formula.Should().BeNull();
        problems.Should().NotBeEmpty();
        return [.. problems];
    }
}
