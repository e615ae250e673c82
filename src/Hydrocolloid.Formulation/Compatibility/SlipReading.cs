namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>A dose read with its decimal sign moved.</summary>
/// <param name="Factor">10, 100, 0.1 or 0.01.</param>
/// <param name="Percent">What the dose then is, % by weight of the continuous mix.</param>
/// <param name="Window">The working window it then falls into.</param>
internal sealed record SlipReading(double Factor, double Percent, DoseWindow Window);
