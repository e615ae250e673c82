using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>A way from the numbers given to an answer, step by step. Immutable, equal by content.</summary>
public sealed record WorkedSolution
{
    private WorkedSolution(ValueList<SolutionStep> steps, ValueList<string> keys)
    {
        Steps = steps;
        Keys = keys;
    }

    /// <summary>The steps: what goes in first, the result last.</summary>
    public ValueList<SolutionStep> Steps { get; }

    /// <summary>The options answered, in order; empty if the answer is a number.</summary>
    public ValueList<string> Keys { get; }

    /// <summary>The number answered: the value of the last step, in its unit; not a number if that step is a verdict.</summary>
    public double Value => Steps[Steps.Count - 1].Value ?? double.NaN;

    /// <summary>The steps of a derivation, each once, with the law that each one applies.</summary>
    /// <param name="derivation">The derivation.</param>
    /// <returns>The solution.</returns>
    public static WorkedSolution From(Derivation derivation)
    {
        var steps = new List<SolutionStep>();
        Collect(Guard.NotNull(derivation), steps);
        return new WorkedSolution(ValueList<SolutionStep>.Own([.. steps]), default);
    }

    /// <summary>Steps that lead to a number.</summary>
    /// <param name="steps">The steps, at least one; the last one's value is the answer.</param>
    /// <returns>The solution.</returns>
    /// <exception cref="ArgumentException">There is no step.</exception>
    public static WorkedSolution Of(params SolutionStep[] steps)
        => Guard.NotNull(steps).Length > 0 ? new(ValueList<SolutionStep>.From(steps), default) : throw new ArgumentException("There must be a step.", nameof(steps));

    /// <summary>The same, and more steps after it.</summary>
    /// <param name="steps">The steps.</param>
    /// <returns>The longer solution.</returns>
    public WorkedSolution Then(params SolutionStep[] steps) => new(ValueList<SolutionStep>.Own([.. Steps, .. Guard.NotNull(steps)]), Keys);

    /// <summary>The same, with a step before it.</summary>
    /// <param name="steps">The steps.</param>
    /// <returns>The longer solution.</returns>
    public WorkedSolution After(params SolutionStep[] steps) => new(ValueList<SolutionStep>.Own([.. Guard.NotNull(steps), .. Steps]), Keys);

    /// <summary>The same, answering with options.</summary>
    /// <param name="keys">The keys of the options, in order.</param>
    /// <returns>The solution.</returns>
    public WorkedSolution Choosing(params string[] keys) => new(Steps, ValueList<string>.From(keys));

    /// <summary>The steps as numbered lines.</summary>
    /// <returns>The text; lines end with a line feed.</returns>
    public override string ToString() => string.Concat(Steps.Select((s, i) => $"{Numbers.Exact(i + 1)}. {s}\n"));

    internal static WorkedSolution Restored(ValueList<SolutionStep> steps, ValueList<string> keys) => new(steps, keys);

    private static void Collect(Derivation derivation, List<SolutionStep> steps)
    {
        if (steps.Any(s => s.Quantity == derivation.Quantity && s.Expression == derivation.Expression))
        {
            return;
        }

        // "100 % of the base" of a base of one part says nothing new on a board.
        if (derivation.Inputs.Count == 1 && derivation.Inputs[0].Value == derivation.Value && derivation.Inputs[0].Unit == derivation.Unit)
        {
            Collect(derivation.Inputs[0], steps);
            return;
        }

        foreach (Derivation input in derivation.Inputs)
        {
            Collect(input, steps);
        }

        steps.Add(new SolutionStep(LawOf(derivation), derivation.Quantity, derivation.Expression, derivation.Value, derivation.Unit));
    }

    private static string LawOf(Derivation step) => step switch
    {
        { Expression.Length: 0 } => "",
        { Unit: "%" } => "A percentage is the part over the whole it is taken of, times 100.",
        _ when step.Expression.Contains(" % of ") => "The mass of a dose is its percentage over 100, times what it is a percentage of.",
        _ when step.Expression.Contains("/ (1 - ") => "What is left is 1 less the shares taken: divide by it.",
        _ when step.Expression.Contains("per unit of base") => "Divide what is to be made by what one part of base makes.",
        { Quantity: "the water so far" } => "Of each ingredient only its water counts.",
        _ when step.Expression.Contains(" + ") => "Add up everything that counts.",
        _ when step.Expression.Contains(" - ") => "Take off what is lost.",
        _ => "Work it out from the numbers before.",
    };
}
