namespace Hydrocolloid.Formulation.Gelation;

/// <summary>The dose that reaches a strength by a trial's curve, or why there is none. Immutable, equal by content.</summary>
/// <param name="Dose">The dose in the unit of the trial; null if the curve does not reach the strength.</param>
/// <param name="Confidence">The doses at which the curve may reach it, in the unit of the dose; null if no bounded interval follows from the trial.</param>
/// <param name="Outside">The dose, if it lies outside the doses of the trial; null if it does not. Outside, the result is an extrapolation.</param>
/// <param name="Explanation">The result in a sentence.</param>
public sealed record TrialDose(double? Dose, NumberRange? Confidence, OutsideRange? Outside, string Explanation)
{
    /// <summary>True if there is a dose and it lies within the doses of the trial.</summary>
    public bool InRange => Dose is not null && Outside is null;

    /// <summary>The explanation.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString() => Explanation;
}
