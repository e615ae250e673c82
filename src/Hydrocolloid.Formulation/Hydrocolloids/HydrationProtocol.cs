namespace Hydrocolloid.Formulation;

/// <summary>What a hydrocolloid needs to dissolve: temperature, time, shear.</summary>
/// <param name="Window">The temperature to reach: at least the lower limit.</param>
/// <param name="Hold">How long to hold it there.</param>
/// <param name="NotAbove">More heat than this harms it; null if no such limit is known.</param>
/// <param name="NeedsHighShear">Whether dispersing it needs high shear.</param>
/// <param name="Shear">How to stir while and after heating.</param>
/// <param name="HoldingLimit">What long hot holding does.</param>
public sealed record HydrationProtocol(
    Cited<TemperatureRange> Window,
    Cited<DurationRange> Hold,
    Cited<TemperatureRange>? NotAbove,
    bool NeedsHighShear,
    ValueList<Cited<string>> Shear,
    ValueList<Cited<string>> HoldingLimit);
