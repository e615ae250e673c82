using Hydrocolloid.Formulation.Gelation;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>How firm a formula is expected to come out, or the reasons why no number is given. Immutable.</summary>
public sealed class StrengthForecast
{
    internal StrengthForecast(FormulaLine line, double percent, string unit, Reliance reliance, string explanation, Citation source)
    {
        Label = line.Label;
        Agent = line.Ingredient;
        Percent = percent;
        Unit = unit;
        Reliance = reliance;
        Explanation = explanation;
        Source = source;
    }

    /// <summary>The label of the agent's line.</summary>
    public string Label { get; }

    /// <summary>The agent.</summary>
    public Ingredient Agent { get; }

    /// <summary>Its dose, % by weight of the continuous mix.</summary>
    public double Percent { get; }

    /// <summary>The firmness in <see cref="Unit"/>; null if no number is given.</summary>
    public double? Value { get; internal init; }

    /// <summary>Where it may lie, in <see cref="Unit"/>: what the range of the exponent leaves, or where the next gel lies by a trial; null if no number is given or a trial has two points.</summary>
    public NumberRange? Range { get; internal init; }

    /// <summary>The unit: <c>g</c> of load in the Bloom test, or that of the trial.</summary>
    public string Unit { get; }

    /// <summary>How far it can be relied on; <see cref="Reliance.QualitativeOnly"/> if no number is given.</summary>
    public Reliance Reliance { get; }

    /// <summary>Where the relation comes from, or why there is none.</summary>
    public Citation Source { get; }

    /// <summary>The result and its relation, or why there is no number.</summary>
    public string Explanation { get; }

    /// <summary>What lies outside the range of the relation; null if nothing does. Outside, the number is an extrapolation.</summary>
    public OutsideRange? Outside { get; internal init; }

    /// <summary>What else bears on it in this formula and is not in the number.</summary>
    public ValueList<Cited<string>> Notes { get; internal init; }

    /// <summary>The explanation, and what lies outside.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Outside is null ? Explanation : $"{Explanation} ({Outside})";
}
