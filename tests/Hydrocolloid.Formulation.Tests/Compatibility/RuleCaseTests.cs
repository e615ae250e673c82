using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Tests.Compatibility.Cases;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>Every standard rule: a case that triggers it, one just inside the limit, one without data; and every remedy, applied.</summary>
public sealed class RuleCaseTests
{
    public static TheoryData<string> Names { get; } = new(RuleCases.All.Select(c => c.ToString()));

    [Fact]
    public void Every_standard_rule_has_a_case()
        => RuleSet.Standard.Select(r => r.Id).Should().BeSubsetOf(RuleCases.All.Select(c => c.RuleId));

    [Fact]
    public void Cases_have_names_of_their_own() => RuleCases.All.Select(c => c.ToString()).Should().OnlyHaveUniqueItems();

    [Theory]
    [MemberData(nameof(Names))]
    public void It_triggers(string name)
    {
        RuleCase rule = Case(name);

        Finding finding = rule.Triggers().Review().Should().Contain(f => f.Id == rule.RuleId, "the formula is made to trigger it").Which;

        finding.Severity.Should().Be(rule.Severity, finding.Explanation);
        finding.IsUnchecked.Should().BeFalse();
        (finding.Citations.IsEmpty && rule.RuleId != "unknown-ingredient").Should().BeFalse("every limit has a source");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Just_inside_the_limit_it_keeps_silent(string name)
    {
        RuleCase rule = Case(name);

        rule.Inside().Review().Where(f => f.Id == rule.RuleId && f.Severity >= rule.Severity).Should().BeEmpty();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Without_data_it_keeps_silent_unless_asked(string name)
    {
        RuleCase rule = Case(name);
        if (rule.Missing is null)
        {
            return;
        }

        rule.Missing().Review().Should().NotContain(f => f.Id == rule.RuleId);
        rule.Missing().Review(RuleSet.Standard.ReportingUnchecked()).Should()
            .Contain(f => f.Id == rule.RuleId && f.IsUnchecked && f.Severity == Severity.Information);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_remedy_helps_and_brings_nothing_worse(string name)
    {
        RuleCase rule = Case(name);
        Formula formula = rule.Triggers();
        ValueList<Finding> before = formula.Review();
        foreach (Finding finding in before.Where(f => f.Id == rule.RuleId))
        {
            foreach (Remedy remedy in finding.Remedies)
            {
                ValueList<Finding> after = remedy.Apply(formula).Review();

                Weight(after, rule.RuleId).Should().BeLessThan(Weight(before, rule.RuleId), $"{remedy} should help");
                after.Where(f => f.Id != rule.RuleId && f.Severity > Severity.Information && before.All(b => b.Id != f.Id || b.Severity < f.Severity))
                    .Should().NotContain(f => f.Severity >= finding.Severity, $"{remedy} should bring nothing worse");
            }
        }
    }

    /// <summary>How much of a rule's trouble there is: the most serious finding decides, then how many there are.</summary>
    private static int Weight(ValueList<Finding> findings, string id)
        => findings.Where(f => f.Id == id).Sum(f => f.Severity switch { Severity.Conflict => 10_000, Severity.Caution => 100, _ => 1 });

    private static RuleCase Case(string name) => RuleCases.All.Single(c => c.ToString() == name);
}
