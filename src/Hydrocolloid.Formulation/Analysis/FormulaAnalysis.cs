using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Analyses a formula.</summary>
public static class FormulaAnalysis
{
    /// <summary>What the mix contains. Nothing is worked out until it is asked for.</summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The analysis.</returns>
    public static MixAnalysis Analyse(this Formula formula) => new(Guard.NotNull(formula));
}
