using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>A joined mix against the temperature it must stay above until it is cast. Immutable, equal by content.</summary>
/// <param name="SetsTooEarly">True if the mix is below the limit: it may set in the bowl, or in lumps around cold pieces.</param>
/// <param name="Temperature">Temperature of the mix.</param>
/// <param name="Limit">Highest setting temperature plus the margin.</param>
/// <param name="Spare">How far the mix is above the limit; below 0 if it is under it.</param>
/// <param name="IsEstimate">True if the heat loss in it is a guess.</param>
public sealed record SettingCheck(bool SetsTooEarly, Temperature Temperature, Temperature Limit, TemperatureDelta Spare, bool IsEstimate)
{
    /// <summary>The check in one sentence.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString()
    {
        string mix = $"{Numbers.Fixed(Temperature.DegreesCelsius, 1)} °C{(IsEstimate ? " (estimated)" : "")} is {Numbers.Fixed(Math.Abs(Spare.Kelvins), 1)} K";
        return SetsTooEarly ? $"{mix} under {Numbers.Fixed(Limit.DegreesCelsius, 1)} °C: it sets too early." : $"{mix} above {Numbers.Fixed(Limit.DegreesCelsius, 1)} °C: it stays fluid.";
    }
}
