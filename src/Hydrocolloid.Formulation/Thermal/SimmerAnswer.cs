using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Whether a pot gets hot enough before it boils, and what would make it so. Immutable, equal by content.</summary>
/// <param name="IsEnough">True if the liquid reaches the lower end of the temperatures needed.</param>
/// <param name="Needed">The temperatures needed.</param>
/// <param name="BoilsAt">Where the liquid boils: the hottest it gets.</param>
/// <param name="Missing">How much the boiling point falls short; 0 if it is enough.</param>
/// <param name="GaugeNeeded">What a pressure cooker must hold over the air, in all; null if the pot is enough as it is.</param>
/// <param name="Outside">What lies outside the range of a relation; null if nothing does.</param>
public sealed record SimmerAnswer(bool IsEnough, TemperatureRange Needed, BoilingPoint BoilsAt, TemperatureDelta Missing, Pressure? GaugeNeeded, OutsideRange? Outside)
{
    /// <summary>The answer in one sentence.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString()
    {
        string boils = $"It boils at {Celsius(BoilsAt.Temperature)}";
        return IsEnough
            ? $"{boils}, enough for {Needed}."
            : $"{boils}, {Numbers.Significant(Missing.Kelvins, 2)} K short of {Celsius(Needed.Min!.Value)}; a pressure cooker reaches it with {Numbers.Significant(GaugeNeeded!.Value.Kilopascals, 2)} kPa over the air.";
    }

    private static string Celsius(Temperature temperature) => Numbers.Fixed(temperature.DegreesCelsius, 1) + " °C";
}
