namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Another dose in one line.</summary>
/// <param name="Label">The label of the line, an addition.</param>
/// <param name="Dose">The new dose.</param>
public sealed record DoseChange(string Label, Dose Dose) : IFormulaChange
{
    /// <inheritdoc/>
    public Formula ApplyTo(Formula formula) => formula.WithDose(Label, Dose);
}
