namespace Hydrocolloid.Formulation;

/// <summary>How a formula is worked, step by step, from the protocols of its hydrocolloids. Immutable, equal by content.</summary>
public sealed record Method
{
    internal Method(ValueList<MethodStep> steps, ValueList<string> conflicts, ValueList<Caution> cautions)
    {
        Steps = steps;
        Conflicts = conflicts;
        Cautions = cautions;
    }

    /// <summary>The steps, in order.</summary>
    public ValueList<MethodStep> Steps { get; }

    /// <summary>What the protocols ask for and no order of steps gives; empty if there is nothing.</summary>
    public ValueList<string> Conflicts { get; }

    /// <summary>The cautions.</summary>
    public ValueList<Caution> Cautions { get; }

    /// <summary>The steps, one numbered line each.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("\n", Steps.Select((s, i) => $"{Internal.Numbers.Exact(i + 1)}. {s}"));
}
