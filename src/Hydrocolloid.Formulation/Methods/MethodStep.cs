namespace Hydrocolloid.Formulation;

/// <summary>One step of a method. Immutable, equal by content.</summary>
public sealed record MethodStep
{
    internal MethodStep(StepAction action, string instruction, string reason)
    {
        Action = action;
        Instruction = instruction;
        Reason = reason;
    }

    /// <summary>What is done.</summary>
    public StepAction Action { get; }

    /// <summary>The step in words, with its figures.</summary>
    public string Instruction { get; }

    /// <summary>Why.</summary>
    public string Reason { get; }

    /// <summary>The labels of the lines it handles.</summary>
    public ValueList<string> Lines { get; internal init; }

    /// <summary>The temperature to reach, to keep above or to expect; null if it does not matter.</summary>
    public TemperatureRange? Temperature { get; internal init; }

    /// <summary>How long; null if it does not matter.</summary>
    public DurationRange? Duration { get; internal init; }

    /// <summary>Where the figures and the reason come from.</summary>
    public ValueList<Citation> Citations { get; internal init; }

    /// <summary>What else is known of the step: what the trade does, what long heating does, what moves a temperature. Each with its source.</summary>
    public ValueList<Cited<string>> Notes { get; internal init; }

    /// <summary>The instruction.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Instruction;
}
