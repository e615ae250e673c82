using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>How warm a body must be for a mix to come to its target. Immutable, equal by content.</summary>
/// <param name="Outcome">Whether there is such a temperature.</param>
/// <param name="Temperature">The temperature of the body; if there is none, the limit that was met: boiling or freezing.</param>
/// <param name="Target">Temperature that the mix should have.</param>
/// <param name="Mix">The mix with the body at that temperature.</param>
public sealed record NeededTemperature(NeededOutcome Outcome, Temperature Temperature, Temperature Target, JoinedMix Mix)
{
    /// <summary>The answer in one sentence.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString()
    {
        string at = Numbers.Fixed(Temperature.DegreesCelsius, 1) + " °C", mix = Numbers.Fixed(Mix.Celsius, 1) + " °C", target = Numbers.Fixed(Target.DegreesCelsius, 1) + " °C";
        return Outcome switch
        {
            NeededOutcome.Possible => $"At {at} the mix comes to {target}.",
            NeededOutcome.NeedsAboveBoiling => $"Not even at {at}, the boil, does the mix reach {target}: it comes to {mix}.",
            _ => $"Even at {at} the mix stays above {target}: it comes to {mix}.",
        };
    }
}
