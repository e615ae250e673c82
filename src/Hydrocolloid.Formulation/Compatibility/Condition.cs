using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>
/// Something that a formula may or may not fulfil, to compose own rules from: <c>Condition.Contains(id) &amp; Condition.PhBelow(3.5)</c>.
/// What cannot be judged is not fulfilled. Immutable.
/// </summary>
public sealed class Condition
{
    private readonly Func<ReviewContext, Verdict> _judge;

    private Condition(Func<ReviewContext, Verdict> judge) => _judge = judge;

    /// <summary>A line of the ingredient, or of one that was made from it, is in the gelling mix.</summary>
    /// <param name="ingredientId">Id of the ingredient.</param>
    /// <returns>The condition.</returns>
    public static Condition Contains(string ingredientId)
    {
        Ids.Check(ingredientId, nameof(ingredientId));
        return Having(i => i.Id == ingredientId || i.BasedOn?.Id == ingredientId);
    }

    /// <summary>A line of the category, such as <c>juice</c>, is in the gelling mix.</summary>
    /// <param name="category">The category.</param>
    /// <returns>The condition.</returns>
    public static Condition ContainsCategory(string category)
    {
        Guard.NotBlank(category);
        return Having(i => i.Category == category);
    }

    /// <summary>An ingredient that fulfils a test of your own is in the gelling mix.</summary>
    /// <param name="test">The test; stateless.</param>
    /// <returns>The condition.</returns>
    public static Condition Having(Func<Ingredient, bool> test)
    {
        Guard.NotNull(test);
        return new Condition(c =>
        {
            string[] lines = [.. c.Formula.Lines.Where(l => l.IsContinuous && test(l.Ingredient)).Select(l => l.Label)];
            return new Verdict(lines.Length > 0, [], lines);
        });
    }

    /// <summary>The pH of the gelling mix is under a limit.</summary>
    /// <param name="limit">The limit, pH 0 to 14.</param>
    /// <returns>The condition.</returns>
    public static Condition PhBelow(double limit) => Value("pH of the mix", c => c.Mix.Ph, new NumberRange(Guard.InRange(limit, 0, 14, "pH"), null));

    /// <summary>The pH of the gelling mix is over a limit.</summary>
    /// <param name="limit">The limit, pH 0 to 14.</param>
    /// <returns>The condition.</returns>
    public static Condition PhAbove(double limit) => Value("pH of the mix", c => c.Mix.Ph, new NumberRange(null, Guard.InRange(limit, 0, 14, "pH")));

    /// <summary>The alcohol of the gelling mix is over a limit.</summary>
    /// <param name="limit">The limit, % by volume, 0 to 100.</param>
    /// <returns>The condition.</returns>
    public static Condition AlcoholAbove(double limit) => Value("alcohol of the mix", c => c.Mix.AlcoholByVolume, new NumberRange(null, Guard.InRange(limit, 0, 100, "% vol")));

    /// <summary>The soluble solids of the gelling mix are under a limit.</summary>
    /// <param name="limit">The limit, °Brix, 0 to 100.</param>
    /// <returns>The condition.</returns>
    public static Condition BrixBelow(double limit) => Value("soluble solids of the mix", c => c.Mix.Brix, new NumberRange(Guard.InRange(limit, 0, 100, "°Brix"), null));

    /// <summary>The soluble solids of the gelling mix are over a limit.</summary>
    /// <param name="limit">The limit, °Brix, 0 to 100.</param>
    /// <returns>The condition.</returns>
    public static Condition BrixAbove(double limit) => Value("soluble solids of the mix", c => c.Mix.Brix, new NumberRange(null, Guard.InRange(limit, 0, 100, "°Brix")));

    /// <summary>A value of one's own lies outside a range.</summary>
    /// <param name="quantity">What it is.</param>
    /// <param name="value">Gives the value, or null if it is not known; stateless.</param>
    /// <param name="range">The range that is in order.</param>
    /// <returns>The condition.</returns>
    public static Condition Value(string quantity, Func<ReviewContext, Reckoned?> value, NumberRange range)
    {
        Guard.NotBlank(quantity);
        Guard.NotNull(value);
        return new Condition(c => value(c) is { } v ? new Verdict(!range.Contains(v.Value), [new Evidence(quantity, v.Value, v.Unit, range)], []) : Verdict.No);
    }

    /// <summary>It is served over a temperature; not fulfilled if no temperature is stated.</summary>
    /// <param name="limit">The temperature.</param>
    /// <returns>The condition.</returns>
    public static Condition ServedAbove(Temperature limit)
    {
        double celsius = Guard.Celsius(limit);
        return new Condition(c => c.Service.ServedAtCelsius is { } served
            ? new Verdict(served > celsius, [new Evidence("temperature at service", served, "°C", new NumberRange(null, celsius))], []) : Verdict.No);
    }

    /// <summary>Both are fulfilled.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>The condition.</returns>
    public static Condition operator &(Condition left, Condition right) => Guard.NotNull(left).And(right);

    /// <summary>At least one is fulfilled.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>The condition.</returns>
    public static Condition operator |(Condition left, Condition right) => Guard.NotNull(left).Or(right);

    /// <summary>It is not fulfilled.</summary>
    /// <param name="condition">The condition.</param>
    /// <returns>The opposite.</returns>
    public static Condition operator !(Condition condition) => Guard.NotNull(condition).Not();

    /// <summary>Both are fulfilled.</summary>
    /// <param name="other">The other.</param>
    /// <returns>The condition.</returns>
    public Condition And(Condition other)
    {
        Guard.NotNull(other);
        return new Condition(c => _judge(c) is { Holds: true } mine && other._judge(c) is { Holds: true } theirs ? mine.Join(theirs) : Verdict.No);
    }

    /// <summary>At least one is fulfilled.</summary>
    /// <param name="other">The other.</param>
    /// <returns>The condition.</returns>
    public Condition Or(Condition other)
    {
        Guard.NotNull(other);
        return new Condition(c => (_judge(c), other._judge(c)) switch
        {
            ({ Holds: true } mine, { Holds: true } theirs) => mine.Join(theirs),
            ({ Holds: true } mine, _) => mine,
            var (_, theirs) => theirs,
        });
    }

    /// <summary>It is not fulfilled.</summary>
    /// <returns>The opposite.</returns>
    public Condition Not() => new(c => new Verdict(!_judge(c).Holds, [], []));

    /// <summary>A rule that reports when this is fulfilled, with the values that were looked at.</summary>
    /// <param name="id">Kebab-case id of the rule.</param>
    /// <param name="severity">How serious it is.</param>
    /// <param name="explanation">What it means, in plain words.</param>
    /// <param name="citations">Where the limits come from.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="ArgumentException">The id is not kebab-case, or the explanation is blank.</exception>
    public ICompatibilityRule Report(string id, Severity severity, string explanation, params Citation[] citations)
    {
        var finding = new Finding(id, (Severity)Guard.Defined((int)severity, (int)Severity.Conflict, nameof(severity)), explanation, citations: ValueList<Citation>.From(Guard.NotNull(citations)));
        return new Composed(finding, _judge);
    }

    private sealed record Verdict(bool Holds, Evidence[] Evidence, string[] Lines)
    {
        public static Verdict No { get; } = new(false, [], []);

        public Verdict Join(Verdict other) => new(true, [.. Evidence, .. other.Evidence], [.. Lines.Union(other.Lines)]);
    }

    private sealed class Composed(Finding finding, Func<ReviewContext, Verdict> judge) : ICompatibilityRule
    {
        public string Id => finding.Id;

        public IEnumerable<Finding> Check(ReviewContext context) => judge(context) is { Holds: true } verdict
            ? [new Finding(finding.Id, finding.Severity, finding.Explanation, ValueList<string>.From(verdict.Lines), ValueList<Evidence>.From(verdict.Evidence), finding.Citations)]
            : [];
    }
}
