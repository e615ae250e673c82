namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Several changes, one after another.</summary>
/// <param name="Changes">The changes, in order.</param>
public sealed record ChangeSequence(ValueList<IFormulaChange> Changes) : IFormulaChange
{
    /// <inheritdoc/>
    public Formula ApplyTo(Formula formula) => Changes.Aggregate(formula, (f, change) => change.ApplyTo(f));
}
