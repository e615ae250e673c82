using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>The strength a trial's curve gives at a dose. Immutable, equal by content.</summary>
/// <param name="Strength">The strength in the unit of the trial.</param>
/// <param name="Confidence">Where the curve lies, in the unit of the strength; null if there are too few points.</param>
/// <param name="Prediction">Where the next measured gel lies, in the unit of the strength; null if there are too few points.</param>
/// <param name="Outside">The dose, if it lies outside the doses of the trial; null if it does not. Outside, the result is an extrapolation.</param>
public sealed record TrialPrediction(double Strength, NumberRange? Confidence, NumberRange? Prediction, OutsideRange? Outside)
{
    /// <summary>True if the dose lies within the doses of the trial.</summary>
    public bool InRange => Outside is null;

    /// <summary>The strength with its intervals, to three digits.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => Numbers.Significant(Strength, 3)
            + (Confidence is { } curve && Prediction is { } next ? $"; the curve {Text(curve)}, the next gel {Text(next)}" : "; two points give no interval")
            + (Outside is null ? "" : $" ({Outside})");

    private static string Text(NumberRange range) => $"{Numbers.Significant(range.Min!.Value, 3)}–{Numbers.Significant(range.Max!.Value, 3)}";
}
