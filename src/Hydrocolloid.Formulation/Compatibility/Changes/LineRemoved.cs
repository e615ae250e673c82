namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>One line less.</summary>
/// <param name="Label">The label of the line.</param>
public sealed record LineRemoved(string Label) : IFormulaChange
{
    /// <inheritdoc/>
    public Formula ApplyTo(Formula formula) => formula.Without(Label);
}
