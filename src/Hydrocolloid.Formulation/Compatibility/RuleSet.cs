using System.Collections;
using Hydrocolloid.Formulation.Compatibility.Rules;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Rules to review a formula by, with each id once. Immutable, safe to share between threads.</summary>
public sealed class RuleSet : IReadOnlyList<ICompatibilityRule>
{
    private readonly ICompatibilityRule[] _rules;
    private readonly Dictionary<string, Severity> _grades;

    private RuleSet(ICompatibilityRule[] rules, Dictionary<string, Severity> grades, bool reportsUnchecked)
    {
        _rules = rules;
        _grades = grades;
        ReportsUnchecked = reportsUnchecked;
    }

    /// <summary>The rules of the library, by family.</summary>
    public static RuleSet Standard { get; } = Of([.. StandardRules.All]);

    /// <summary>Whether a rule that lacks what it needs says so, as information.</summary>
    public bool ReportsUnchecked { get; }

    /// <summary>How many rules there are.</summary>
    public int Count => _rules.Length;

    /// <summary>A rule by its position.</summary>
    /// <param name="index">The position, from 0.</param>
    public ICompatibilityRule this[int index] => _rules[index];

    /// <summary>Only these rules.</summary>
    /// <param name="rules">The rules.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentException">An id is not kebab-case or stands twice.</exception>
    public static RuleSet Of(params ICompatibilityRule[] rules)
    {
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (ICompatibilityRule rule in Guard.NotNull(rules))
        {
            if (!ids.Add(Ids.Check(Guard.NotNull(rule, nameof(rules)).Id, nameof(rules))))
            {
                throw new ArgumentException($"Two rules have the id '{rule.Id}'.", nameof(rules));
            }
        }

        return new RuleSet([.. rules], [], reportsUnchecked: false);
    }

    /// <summary>These rules and more.</summary>
    /// <param name="rules">The rules to add; one with the id of a rule that is there takes its place.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentException">An id is not kebab-case or stands twice among the added.</exception>
    public RuleSet With(params ICompatibilityRule[] rules)
    {
        RuleSet added = Of(rules);
        return new RuleSet([.. _rules.Where(r => added.All(a => a.Id != r.Id)), .. added], _grades, ReportsUnchecked);
    }

    /// <summary>These rules without some.</summary>
    /// <param name="ids">The ids to leave out.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentException">There is no rule with an id; the message lists those there are.</exception>
    public RuleSet Without(params string[] ids)
    {
        CheckKnown(ids);
        return new RuleSet([.. _rules.Where(r => !ids.Contains(r.Id))], _grades, ReportsUnchecked);
    }

    /// <summary>Some of these rules.</summary>
    /// <param name="ids">The ids to keep.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentException">There is no rule with an id; the message lists those there are.</exception>
    public RuleSet Only(params string[] ids)
    {
        CheckKnown(ids);
        return new RuleSet([.. _rules.Where(r => ids.Contains(r.Id))], _grades, ReportsUnchecked);
    }

    /// <summary>These rules with the findings of one at another severity.</summary>
    /// <param name="id">The id of the rule.</param>
    /// <param name="severity">The severity of all its findings.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentException">There is no rule with that id; the message lists those there are.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined severity.</exception>
    public RuleSet Regraded(string id, Severity severity)
    {
        CheckKnown([id]);
        var grades = new Dictionary<string, Severity>(_grades, StringComparer.Ordinal)
        {
            [id] = (Severity)Guard.Defined((int)severity, (int)Severity.Conflict, nameof(severity)),
        };
        return new RuleSet(_rules, grades, ReportsUnchecked);
    }

    /// <summary>These rules, saying as information what they could not check and what they would need.</summary>
    /// <returns>The set.</returns>
    public RuleSet ReportingUnchecked() => new(_rules, _grades, reportsUnchecked: true);

    /// <inheritdoc/>
    public IEnumerator<ICompatibilityRule> GetEnumerator() => ((IEnumerable<ICompatibilityRule>)_rules).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => _rules.GetEnumerator();

    internal Severity GradeOf(Finding finding)
        => _grades.Count > 0 && !finding.IsUnchecked && _grades.TryGetValue(finding.Id, out Severity grade) ? grade : finding.Severity;

    private void CheckKnown(string[] ids)
    {
        foreach (string id in Guard.NotNull(ids))
        {
            if (_rules.All(r => r.Id != id))
            {
                throw new ArgumentException($"There is no rule '{id}'. The rules: {string.Join(", ", _rules.Select(r => r.Id))}.", nameof(ids));
            }
        }
    }
}
