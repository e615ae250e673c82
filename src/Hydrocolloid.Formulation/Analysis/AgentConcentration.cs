namespace Hydrocolloid.Formulation;

/// <summary>A hydrocolloid of the formula and the three concentrations that matter. Immutable, equal by content.</summary>
/// <param name="Line">The line.</param>
/// <param name="PercentOfTotal">% by weight of the assembled mix.</param>
/// <param name="PercentOfContinuousMix">% by weight of the continuous mix.</param>
/// <param name="PercentOfContinuousWater">% by weight of the water in the continuous mix; null if that water is unknown.</param>
public sealed record AgentConcentration(FormulaLine Line, double PercentOfTotal, double PercentOfContinuousMix, double? PercentOfContinuousWater);
