namespace Hydrocolloid.Formulation;

/// <summary>How a hydrocolloid sets.</summary>
/// <param name="Triggers">The ways in which it sets; the first one is the usual one.</param>
/// <param name="Window">The temperature at which it sets on cooling (or heating); null if temperature does not decide.</param>
/// <param name="TimeToStable">How long until the gel has its strength; null if not stated.</param>
/// <param name="Dependence">What moves the setting temperature.</param>
public sealed record SettingBehaviour(
    ValueList<SettingTrigger> Triggers,
    Cited<TemperatureRange>? Window,
    Cited<DurationRange>? TimeToStable,
    ValueList<Cited<string>> Dependence);
