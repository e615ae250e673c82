using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Text;

/// <summary>The noun of a kind, and the range <see cref="Guard"/> lets through, in the base unit.</summary>
internal sealed class KindFacts(QuantityKind kind, string noun, string baseSymbol, double min, double max)
{
    private static readonly KindFacts[] s_all =
    [
        new(QuantityKind.Mass, "mass", "g", 0, 1e9),
        new(QuantityKind.Volume, "volume", "mL", 0, 1e9),
        new(QuantityKind.Temperature, "temperature", "°C", Guard.AbsoluteZeroCelsius, 1000),
        new(QuantityKind.TemperatureDifference, "temperature difference", "K", -1000, 1000),
        new(QuantityKind.Duration, "duration", "s", 0, 1e9),
        new(QuantityKind.Length, "length", "m", -1e6, 1e6),
        new(QuantityKind.Pressure, "pressure", "Pa", 0, 1e9),
        new(QuantityKind.Density, "density", "kg/m³", 0, 30_000),
        new(QuantityKind.Percent, "percentage", "%", 0, 1e6),
    ];

    public QuantityKind Kind { get; } = kind;

    public string Noun { get; } = noun;

    public string BaseSymbol { get; } = baseSymbol;

    public double Min { get; } = min;

    public double Max { get; } = max;

    public static KindFacts Of(QuantityKind kind)
        => (uint)kind < (uint)s_all.Length ? s_all[(int)kind] : throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a defined kind.");
}
