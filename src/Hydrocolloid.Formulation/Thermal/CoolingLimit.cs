using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>From one temperature to another within a time. Immutable, equal by content.</summary>
public sealed record CoolingLimit
{
    internal CoolingLimit(double? fromCelsius, double toCelsius, double maxHours)
    {
        FromCelsius = fromCelsius;
        ToCelsius = toCelsius;
        MaxSeconds = maxHours * 3600;
    }

    /// <summary>The clock starts when the food has come down to this temperature; null if at the first reading. Food that starts colder starts the clock at once.</summary>
    public Temperature? From => FromCelsius is { } c ? Temperature.FromDegreesCelsius(c) : null;

    /// <summary>The clock stops when the food has come down to this temperature.</summary>
    public Temperature To => Temperature.FromDegreesCelsius(ToCelsius);

    /// <summary>The longest time allowed, itself included.</summary>
    public Duration Max => Duration.FromSeconds(MaxSeconds);

    internal double? FromCelsius { get; }

    internal double ToCelsius { get; }

    internal double MaxSeconds { get; }

    /// <summary>The limit as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => (FromCelsius is { } from ? Numbers.Significant(from, 4) + " °C to " : "to ") + $"{Numbers.Significant(ToCelsius, 4)} °C within {Numbers.Significant(MaxSeconds / 3600, 4)} h";
}
