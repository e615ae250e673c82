namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Another process plan.</summary>
/// <param name="Process">The plan.</param>
public sealed record ProcessChange(ProcessPlan Process) : FormulaChange
{
    /// <inheritdoc/>
    public override Formula ApplyTo(Formula formula) => formula.WithProcess(Process);
}
