namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>The energy that a gram counts for.</summary>
internal sealed record EnergyFactor(double KilojoulesPerGram, double KilocaloriesPerGram);
