using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>One step of a method. Immutable, equal by content.</summary>
public sealed record MethodStep
{
    internal MethodStep(int number, StepAction action, string instruction, string reason, string check)
    {
        Number = number;
        Action = action;
        Instruction = instruction;
        Reason = reason;
        Check = check;
    }

    /// <summary>Its number in the method, from 1.</summary>
    public int Number { get; }

    /// <summary>What is done.</summary>
    public StepAction Action { get; }

    /// <summary>The step in words, with its figures.</summary>
    public string Instruction { get; }

    /// <summary>Why.</summary>
    public string Reason { get; }

    /// <summary>How a cook sees that it is done: by eye, balance or thermometer.</summary>
    public string Check { get; }

    /// <summary>The labels of the lines it is about.</summary>
    public ValueList<string> Lines { get; internal init; }

    /// <summary>What goes in with this step.</summary>
    public ValueList<StepAmount> Amounts { get; internal init; }

    /// <summary>The temperature to reach, to keep above or below, or to expect, narrowed by what the thermometer may be off; null if it does not matter.</summary>
    public TemperatureRange? Temperature { get; internal init; }

    /// <summary>How far the temperature may be from the middle of a range closed at both ends; null for other ranges.</summary>
    public TemperatureDelta? Tolerance => Temperature?.Celsius is { Min: { } min, Max: { } max } ? TemperatureDelta.FromKelvins((max - min) / 2) : null;

    /// <summary>How long; null if the step takes as long as it takes.</summary>
    public DurationRange? Duration { get; internal init; }

    /// <summary>What it is done with; none if no more than bowl, scale and whisk.</summary>
    public Equipment Equipment { get; internal init; }

    /// <summary>True if someone stands by; false if it waits.</summary>
    public bool IsActive { get; internal init; }

    /// <summary>How it can stand after this step, so that the work up to here can be done ahead; null if the next step follows at once.</summary>
    public string? Ahead { get; internal init; }

    /// <summary>Where the figures and the reason come from.</summary>
    public ValueList<Citation> Citations { get; internal init; }

    /// <summary>What else is known of the step: what the trade does, what long heating does, what moves a temperature. Each with its source.</summary>
    public ValueList<Cited<string>> Notes { get; internal init; }

    /// <summary>What can hurt someone in this step.</summary>
    public ValueList<Caution> Cautions { get; internal init; }

    /// <summary>The number and the instruction.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Internal.Numbers.Exact(Number)}. {Instruction}";
}
