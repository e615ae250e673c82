using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Looks for trouble in a formula before anyone lights a burner.</summary>
public static class FormulaReview
{
    /// <summary>The id of the finding that reports a rule that failed.</summary>
    public const string RuleFailedId = "rule-failed";

    /// <summary>Applies the standard rules.</summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The findings, the most serious first, then in the order of the formula.</returns>
    public static ValueList<Finding> Review(this Formula formula) => formula.Review(RuleSet.Standard);

    /// <summary>Applies chosen rules.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="rules">The rules. One that fails is itself reported as a finding.</param>
    /// <returns>The findings, the most serious first, then in the order of the formula; each trouble once.</returns>
    public static ValueList<Finding> Review(this Formula formula, RuleSet rules)
    {
        Guard.NotNull(formula);
        var missing = Guard.NotNull(rules).ReportsUnchecked ? new List<Finding>() : null;
        var context = new ReviewContext(formula, missing);
        var findings = new List<Finding>();
        for (int i = 0; i < rules.Count; i++)
        {
            Check(rules[i], context, findings);
        }

        if (missing is not null)
        {
            findings.AddRange(missing);
        }

        return ValueList<Finding>.From(findings
            .Select(f => rules.GradeOf(f) is var grade && grade != f.Severity ? f with { Severity = grade } : f)
            .Distinct()
            .OrderByDescending(f => f.Severity).ThenBy(f => FirstLine(formula, f)));
    }

    private static void Check(ICompatibilityRule rule, ReviewContext context, List<Finding> findings)
    {
        int before = findings.Count;
        try
        {
            findings.AddRange(rule.Check(context));
        }
#pragma warning disable CA1031 // a rule of the user's may throw anything; the other findings must not be lost
        catch (Exception e)
#pragma warning restore CA1031
        {
            findings.RemoveRange(before, findings.Count - before);
            findings.Add(new Finding(RuleFailedId, Severity.Caution, $"The rule '{rule.Id}' failed and found nothing: {e.Message}"));
        }
    }

    private static int FirstLine(Formula formula, Finding finding)
        => finding.Lines.Count == 0 ? int.MaxValue : formula.FindLine(finding.Lines[0])?.Index ?? int.MaxValue;
}
