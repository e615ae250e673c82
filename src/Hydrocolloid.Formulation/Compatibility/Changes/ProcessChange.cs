namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Another process plan.</summary>
/// <param name="Process">The plan.</param>
public sealed record ProcessChange(ProcessPlan Process) : IFormulaChange
{
    /// <inheritdoc/>
    public Formula ApplyTo(Formula formula) => formula.WithProcess(Process);
}
