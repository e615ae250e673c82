namespace Hydrocolloid.Formulation;

/// <summary>How a set gel melts.</summary>
/// <param name="Window">The temperature at which it melts; null if it does not melt or none is stated.</param>
/// <param name="Reversibility">Whether it melts and sets again; null if not stated.</param>
/// <param name="ReversibilityFact">The fact behind it, with its source; null if not stated.</param>
/// <param name="Dependence">What moves the melting temperature.</param>
public sealed record MeltingBehaviour(
    Cited<TemperatureRange>? Window,
    Reversibility? Reversibility,
    Cited<string>? ReversibilityFact,
    ValueList<Cited<string>> Dependence);
