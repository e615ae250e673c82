using System.Text.Json;
using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Docs;

/// <summary>
/// README and docs are code: each C# block is a region of <see cref="Snippets"/>, each output block is what it writes, each JSON block
/// is a document that the library reads, each link leads somewhere. With the environment variable UPDATE_DOCS=1 the output blocks
/// and the generated pages are written instead of compared.
/// </summary>
public sealed class DocsTests
{
    private static readonly bool Update = Environment.GetEnvironmentVariable("UPDATE_DOCS") == "1";

    public static TheoryData<string> Pages => [.. Repository.MarkdownFiles.Select(f => Path.GetRelativePath(Repository.Root, f))];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_csharp_block_is_a_compiled_snippet(string page)
    {
        string source = Repository.Read("tests/Hydrocolloid.Formulation.Tests/Docs/Snippets.cs");
        foreach (MarkdownBlock block in Blocks(page).Where(b => b.Language == "csharp"))
        {
            block.Marker.Should().StartWith("snippet: ", $"{block} must name its snippet on the line above");
            string name = block.Marker!["snippet: ".Length..];
            Snippets.All.Should().ContainKey(name, $"{block} names it");
            WithoutUsings(block.Text).Should().Be(Region(source, name), $"{block} must be the compiled text");
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_output_block_is_what_its_snippet_writes(string page)
    {
        string text = Repository.Read(page);
        foreach (MarkdownBlock block in Blocks(page).Where(b => b.Marker?.StartsWith("output: ", StringComparison.Ordinal) == true))
        {
            string written = Snippets.Console.Capture(Snippets.All[block.Marker!["output: ".Length..]]);
            if (Update)
            {
                string head = $"<!-- {block.Marker} -->\n```text\n";
                text = text.Replace(head + block.Text + "```", head + written + "```", StringComparison.Ordinal);
                File.WriteAllText(Path.Combine(Repository.Root, page), text);
                continue;
            }

            block.Text.Should().Be(written, $"{block} shows the output");
        }
    }

    [Fact]
    public void Every_snippet_runs_and_is_shown_somewhere()
    {
        string[] shown = [.. Repository.MarkdownFiles.SelectMany(MarkdownBlock.In).Select(b => b.Marker)
            .Where(m => m?.StartsWith("snippet: ", StringComparison.Ordinal) == true).Select(m => m!["snippet: ".Length..])];
        foreach ((string name, Action snippet) in Snippets.All)
        {
            Snippets.Console.Capture(snippet);
            shown.Should().Contain(name);
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_json_block_is_a_document_of_ours(string page)
    {
        foreach (MarkdownBlock block in Blocks(page).Where(b => b.Language == "json"))
        {
            using var json = JsonDocument.Parse(block.Text);
            string? format = json.RootElement.GetProperty("format").GetString();
            format.Should().BeOneOf(["hydrocolloid-formula", "hydrocolloid-prices", "hydrocolloid-book"], $"{block} must be a whole document; fragments are marked jsonc");
            Action read = format switch
            {
                "hydrocolloid-prices" => () => PriceListJson.Read(block.Text),
                "hydrocolloid-book" => () => NestedFormulas.From(BookJson.Read(block.Text)).Problems.Should().BeEmpty(),
                _ => () => FormulaJson.Read(block.Text),
            };
            read.Should().NotThrow($"{block} is shown to readers");
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_relative_link_leads_to_a_file(string page)
    {
        string folder = Path.GetDirectoryName(Path.Combine(Repository.Root, page))!;
        foreach (System.Text.RegularExpressions.Match link in System.Text.RegularExpressions.Regex.Matches(Repository.Read(page), @"\]\(([^)#:]+)\)"))
        {
            string target = Path.Combine(folder, link.Groups[1].Value);
            (File.Exists(target) || Directory.Exists(target)).Should().BeTrue($"{page} links to {link.Groups[1].Value}");
        }
    }

    [Fact]
    public void The_sources_page_lists_every_source_of_the_catalogue()
    {
        string generated = string.Concat(Catalogue.BuiltIn.Sources.OrderBy(s => s.Kind).ThenBy(s => s.Id, StringComparer.Ordinal).GroupBy(s => s.Kind).Select(kind =>
            $"\n### {kind.Key}\n\n" + string.Concat(kind.Select(s =>
                $"- `{s.Id}`: {s}{(s.Place is null ? "" : ", " + s.Place)}{(s.Locator is null ? "" : ". " + s.Locator)}\n"))));
        IsGenerated("docs/sources.md", generated);
    }

    [Fact]
    public void The_catalogue_page_lists_every_entry_of_the_catalogue()
    {
        static string Table(string title, string group, IEnumerable<Ingredient> entries, Func<Ingredient, string> groupOf)
            => $"\n## {title}\n\n| id | name | {group} | made from |\n|---|---|---|---|\n"
                + string.Concat(entries.Select(i => $"| `{i.Id}` | {i.Name} | {groupOf(i)} | {i.Provenance} |\n"));

        ILookup<bool, Ingredient> entries = Catalogue.BuiltIn.All.ToLookup(i => i.Profile is not null);
        IsGenerated("docs/catalogue.md",
            $"\n{entries[true].Count()} hydrocolloids and {entries[false].Count()} pantry items.\n"
            + Table("Hydrocolloids", "role, origin", entries[true],
                i => $"{(i.Profile!.Role == HydrocolloidRole.GellingAgent ? "gelling agent" : "thickener")}, {i.Origin!.Class.ToString().ToLowerInvariant()}")
            + Table("Pantry", "category", entries[false], i => i.Category!));
    }

    [Fact]
    public void The_problems_page_lists_every_problem_id_of_the_code()
    {
        string page = Repository.Read("docs/problems.md");
        string[] ids = [.. new[] { "Formulas", "Batches" } // the problems of documents stand in docs/formula-json.md
            .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(Repository.Library, folder), "*.cs"))
            .SelectMany(f => System.Text.RegularExpressions.Regex.Matches(File.ReadAllText(f), @"(?:FormulaProblem|Report)\(\s*""([a-z]+(?:-[a-z]+)*)""").Select(m => m.Groups[1].Value))
            .Distinct(StringComparer.Ordinal)];

        ids.Should().NotBeEmpty();
        foreach (string id in ids)
        {
            page.Should().Contain($"| `{id}` |", "each problem is explained to readers");
        }
    }

    [Fact]
    public void The_rules_page_lists_every_rule()
    {
        static string Limits(RuleCard card) => card.Limits.IsEmpty ? "" : "\n" + string.Concat(card.Limits.Select(l => $"- {l.Value}: {l.Citation}\n"));

        IsGenerated("docs/rules.md", string.Concat(RuleSet.Standard.Cast<IDescribedRule>().GroupBy(r => r.Card.Family).Select(family =>
            $"\n### {char.ToUpperInvariant(family.Key[0])}{family.Key[1..]}\n" + string.Concat(family.Select(r =>
                $"\n#### `{r.Id}`\n\n{r.Card.Trigger}\n" + (r.Card.Remedy is null ? "" : $"\nRemedies: {r.Card.Remedy}\n") + Limits(r.Card))))));
    }

    /// <summary>The page is as generated below its mark, or is rewritten there.</summary>
    private static void IsGenerated(string page, string generated)
    {
        const string Mark = "<!-- generated from the catalogue -->\n";
        string text = Repository.Read(page);
        string head = text[..(text.IndexOf(Mark, StringComparison.Ordinal) + Mark.Length)];
        if (Update)
        {
            File.WriteAllText(Path.Combine(Repository.Root, page), head + generated);
            return;
        }

        text[head.Length..].Should().Be(generated, $"{page} is generated: run the docs tests with UPDATE_DOCS=1");
    }

    private static IEnumerable<MarkdownBlock> Blocks(string page) => MarkdownBlock.In(Path.Combine(Repository.Root, page));

    private static string WithoutUsings(string code)
        => string.Join("\n", code.Split('\n').SkipWhile(l => l.StartsWith("using ", StringComparison.Ordinal) || l.Length == 0));

    private static string Region(string source, string name)
    {
        string[] lines = source.Split('\n');
        int start = Array.FindIndex(lines, l => l.Trim() == "#region " + name);
        start.Should().BeGreaterThanOrEqualTo(0, $"Snippets.cs has the region {name}");
        int end = Array.FindIndex(lines, start, l => l.Trim() == "#endregion");
        int indent = lines[start].Length - lines[start].TrimStart().Length;
        return string.Concat(lines[(start + 1)..end].Select(l => (l.Length > indent ? l[indent..] : l.TrimStart()) + "\n"));
    }
}
