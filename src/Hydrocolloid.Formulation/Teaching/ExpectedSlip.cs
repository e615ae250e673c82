namespace Hydrocolloid.Formulation.Teaching;

/// <summary>A wrong answer that a known mistake, or two together, would give. Immutable, equal by content.</summary>
public sealed record ExpectedSlip
{
    internal ExpectedSlip(ValueList<Misconception> misconceptions, double? value, ValueList<string> keys, int partsAtStep, int keptSteps)
    {
        Misconceptions = misconceptions;
        Value = value;
        Keys = keys;
        PartsAtStep = partsAtStep;
        KeptSteps = keptSteps;
    }

    /// <summary>The mistake; two if they were made together.</summary>
    public ValueList<Misconception> Misconceptions { get; }

    /// <summary>The number it gives, in the unit of the answer; null if the answer is options.</summary>
    public double? Value { get; }

    /// <summary>The options it gives; empty if the answer is a number.</summary>
    public ValueList<string> Keys { get; }

    /// <summary>The number, from 1, of the step of the right solution where the wrong way parts from it; 0 if it is not known.</summary>
    public int PartsAtStep { get; }

    /// <summary>How many of the worked steps of the right solution are in the wrong way too.</summary>
    public int KeptSteps { get; }

    /// <summary>The mistakes in words.</summary>
    public string Name => string.Join(" and ", Misconceptions.Select(m => m.Name));
}
