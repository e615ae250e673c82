using Hydrocolloid.Formulation.Methods;

namespace Hydrocolloid.Formulation;

/// <summary>How a formula is worked, step by step, from the protocols of its hydrocolloids. Immutable, equal by content.</summary>
public sealed record Method
{
    internal Method(string name, MethodPattern pattern, ValueList<StepAmount> toWeigh, ValueList<MethodStep> steps, ValueList<MethodConflict> conflicts, ValueList<Caution> cautions)
    {
        Name = name;
        Pattern = pattern;
        ToWeigh = toWeigh;
        Steps = steps;
        Conflicts = conflicts;
        Cautions = cautions;
    }

    /// <summary>The name of the formula.</summary>
    public string Name { get; }

    /// <summary>What kind of work it is; never <see cref="MethodPattern.FromFormula"/> where the formula decided for another.</summary>
    public MethodPattern Pattern { get; }

    /// <summary>What is weighed out before the work begins: each line, in the order in which it goes in.</summary>
    public ValueList<StepAmount> ToWeigh { get; }

    /// <summary>The steps, in order.</summary>
    public ValueList<MethodStep> Steps { get; }

    /// <summary>What the protocols ask for and no order of steps, or not this kitchen, gives; empty if there is nothing.</summary>
    public ValueList<MethodConflict> Conflicts { get; }

    /// <summary>The cautions.</summary>
    public ValueList<Caution> Cautions { get; }

    /// <summary>What the work is done with.</summary>
    public Equipment Equipment => Steps.Aggregate(Equipment.None, (all, s) => all | s.Equipment);

    /// <summary>The steps after which it can stand, so that the work up to them can be done ahead.</summary>
    public ValueList<MethodStep> Ahead => ValueList<MethodStep>.From(Steps.Where(s => s.Ahead is not null));

    /// <summary>The known times of the steps at which someone stands by, added up: at least so long, because steps without a published time (weighing, heating up) count nothing. The upper end is open if a step that has a time has none.</summary>
    public DurationRange ActiveTime => Sum(Steps.Where(s => s.IsActive));

    /// <summary>The known times of the steps that wait, added up: at least so long, as with <see cref="ActiveTime"/>.</summary>
    public DurationRange WaitingTime => Sum(Steps.Where(s => !s.IsActive));

    /// <summary>All known times, added up: at least so long, as with <see cref="ActiveTime"/>.</summary>
    public DurationRange TotalTime => Sum(Steps);

    /// <summary>The method as plain text.</summary>
    /// <returns>The text; lines end with a line feed.</returns>
    public string ToText() => MethodText.Plain(this);

    /// <summary>The method as Markdown.</summary>
    /// <returns>The text; lines end with a line feed.</returns>
    public string ToMarkdown() => MethodText.Markdown(this);

    /// <summary>The method as JSON: format <c>hydrocolloid-method</c>, version 1 (docs/method.md).</summary>
    /// <returns>The JSON text, indented.</returns>
    public string ToJson() => MethodJson.Write(this);

    /// <summary>The steps, one numbered line each.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("\n", Steps);

    private static DurationRange Sum(IEnumerable<MethodStep> steps)
    {
        double min = 0;
        double? max = 0;
        foreach (MethodStep step in steps)
        {
            min += step.Duration?.Seconds.Min ?? 0;
            max += step.Duration?.Seconds.Max;
        }

        return new DurationRange(new NumberRange(min, max));
    }
}
