namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>One line less.</summary>
/// <param name="Label">The label of the line.</param>
public sealed record LineRemoved(string Label) : FormulaChange
{
    /// <inheritdoc/>
    public override Formula ApplyTo(Formula formula) => formula.Without(Label);
}
