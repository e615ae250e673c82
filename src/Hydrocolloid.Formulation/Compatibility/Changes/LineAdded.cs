namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>A new line. If a phase of that name is there, the line goes into it; else the phase is made.</summary>
/// <param name="Ingredient">The ingredient; not one that stands in the formula without a label of its own.</param>
/// <param name="Dose">Its dose.</param>
/// <param name="Phase">The name of the phase.</param>
/// <param name="BeforePhase">If the phase is new, the phase it comes before; null to put it last.</param>
public sealed record LineAdded(Ingredient Ingredient, Dose Dose, string Phase, string? BeforePhase = null) : IFormulaChange
{
    /// <inheritdoc/>
    public Formula ApplyTo(Formula formula)
    {
        FormulaBuilder builder = formula.ToBuilder();
        PhasePlace.Of(builder, Phase, BeforePhase).Lines.Add(new DraftLine(Ingredient, Dose.PercentByMass, null, Dose.Reference, LineDetails.None));
        return builder.Build();
    }
}
