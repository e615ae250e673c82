using System.Text.Json;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Choosing;

public class ComparisonTests
{
    private static readonly AgentComparison s_pair = AgentComparison.Of(Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA);

    [Fact]
    public void Agar_beside_gelatin_differs_where_cooks_know_it_to()
    {
        Cell(AgentProperty.Diets, 0).Should().StartWith("vegan");
        Cell(AgentProperty.Diets, 1).Should().StartWith("neither vegan nor vegetarian, from pig");
        Cell(AgentProperty.Melting, 0).Should().Contain("melts at 8"); // over 80 °C
        Cell(AgentProperty.Melting, 1).Should().Contain("melts at 24–34 °C");
        Cell(AgentProperty.Hysteresis, 0).Should().Contain("Melts 45–55 °C above");
        Cell(AgentProperty.Enzymes, 0).Should().Contain("no effect");
        Cell(AgentProperty.Synergies, 0).Should().Contain("agar and locust bean gum: firmer gel");

        string Cell(AgentProperty property, int agent) => s_pair.Row(property)!.Cells[agent].ToString();
    }

    [Fact]
    public void Every_property_has_a_row_and_every_fact_a_source_for_all_agents_of_the_catalogue()
    {
        AgentComparison all = AgentComparison.Of([.. Catalogue.BuiltIn.Hydrocolloids]);

        all.Rows.Select(r => r.Property).Should().Equal(Enum.GetValues<AgentProperty>());
        all.Rows.Should().OnlyContain(r => r.Cells.Count == all.Agents.Count && r.Cells.Any(c => !c.Facts.IsEmpty));
        all.Rows.SelectMany(r => r.Cells).SelectMany(c => c.Facts).Should().OnlyContain(f => f.Citation != null && f.Value.Length > 0);
        // Nothing of the catalogue is left out: every topic of its facts belongs to a row.
        var shown = new HashSet<Cited<string>>(all.Rows.SelectMany(r => r.Cells).SelectMany(c => c.Facts));
        all.Agents.SelectMany(a => a.Profile!.Facts).Select(f => f.Text).Should().OnlyContain(t => shown.Contains(t));
    }

    [Fact]
    public void A_cell_without_a_figure_says_so()
    {
        AgentComparison pair = AgentComparison.Of(Hydrocolloids.Agar, Hydrocolloids.XanthanGum).Only(AgentProperty.LowestDose);
        pair.Rows.Single().Cells[1].ToString().Should().Be("no figure in the catalogue");
        pair.ToText().Should().Contain("  Xanthan gum: no figure in the catalogue\n");
        pair.ToMarkdown().Should().Contain("| no figure in the catalogue |");
    }

    [Fact]
    public void Markdown_is_a_table_of_one_column_an_agent()
    {
        string[] lines = s_pair.ToMarkdown().Split('\n');
        int rows = Array.IndexOf(lines, "");
        rows.Should().Be(s_pair.Rows.Count + 2);
        lines.Take(rows).Should().OnlyContain(l => l.Replace("\\|", "").Count(c => c == '|') == 4);
        lines[0].Should().Be("| | Agar | Gelatin, type A |");
    }

    [Fact]
    public void Json_holds_what_the_cells_hold()
    {
        using JsonDocument json = JsonDocument.Parse(ComparisonJson.Write(s_pair));
        JsonElement root = json.RootElement;
        root.GetProperty("format").GetString().Should().Be("hydrocolloid-comparison");
        root.GetProperty("rows").GetArrayLength().Should().Be(s_pair.Rows.Count);
        JsonElement melting = root.GetProperty("rows")[(int)AgentProperty.Melting];
        melting.GetProperty("property").GetString().Should().Be("melting");
        JsonElement fact = melting.GetProperty("cells")[1][0];
        fact.GetProperty("text").GetString().Should().Be("melts at 24–34 °C");
        fact.GetProperty("quality").GetString().Should().Be("estimate");
        root.GetProperty("sources")[fact.GetProperty("source").GetInt32() - 1].GetProperty("text").GetString().Should().Contain("[estimate]");
    }

    [Fact]
    public void Comparison_is_equal_by_content_and_its_faults_are_told_at_once()
    {
        AgentComparison.Of(Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA).Should().Be(s_pair);
        FluentActions.Invoking(() => AgentComparison.Of(Pantry.Water)).Should().Throw<ArgumentException>().WithMessage("'water' is not a hydrocolloid. A comparison needs two agents or more, but has 1.*");
        FluentActions.Invoking(() => AgentComparison.Of(Hydrocolloids.Agar, Hydrocolloids.Agar)).Should().Throw<ArgumentException>().WithMessage("'agar' stands twice.*");
        FluentActions.Invoking(() => s_pair.Only((AgentProperty)99)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
