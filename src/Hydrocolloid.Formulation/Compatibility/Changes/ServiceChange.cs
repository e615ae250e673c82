namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Another service plan.</summary>
/// <param name="Service">The plan.</param>
public sealed record ServiceChange(ServicePlan Service) : IFormulaChange
{
    /// <inheritdoc/>
    public Formula ApplyTo(Formula formula) => formula.WithService(Service);
}
