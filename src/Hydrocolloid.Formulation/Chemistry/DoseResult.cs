namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>What a dose does, or why none does. Immutable.</summary>
public sealed class DoseResult
{
    internal DoseResult(Reagent reagent, DoseOutcome outcome, double gramsPerKg, AcidBaseSystem mix, AcidBaseState state, string explanation)
    {
        Reagent = reagent;
        Outcome = outcome;
        GramsPerKg = gramsPerKg;
        Mix = mix;
        State = state;
        Explanation = explanation;
    }

    /// <summary>The acid or salt.</summary>
    public Reagent Reagent { get; }

    /// <summary>Whether the dose reaches what was asked.</summary>
    public DoseOutcome Outcome { get; }

    /// <summary>The dose in g per kg of the liquid it goes into; if none reaches, the one that comes nearest, of those that dissolve. Unit: g/kg.</summary>
    public double GramsPerKg { get; }

    /// <summary>The liquid with this dose in it, as if all of it dissolved.</summary>
    public AcidBaseSystem Mix { get; }

    /// <summary>The equilibrium of <see cref="Mix"/>: what the dose comes to, or the limit that was met.</summary>
    public AcidBaseState State { get; }

    /// <summary>True if the model holds at this dose; false if the dose is an extrapolation.</summary>
    public bool InRange => State.InRange;

    /// <summary>The result in one sentence; it names the limit if the dose does not reach.</summary>
    public string Explanation { get; }

    /// <summary>The explanation.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString() => Explanation;
}
