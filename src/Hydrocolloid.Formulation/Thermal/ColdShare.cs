using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>The largest share of a base that may be kept back cold. Immutable, equal by content.</summary>
/// <param name="Outcome">Whether some, all or none of it may.</param>
/// <param name="ColdPercent">The share, in % of the mass of the base, hot and cold together; 0 if there is not enough heat.</param>
/// <param name="Cold">Mass of the cold part.</param>
/// <param name="Target">Temperature that the mix must keep.</param>
/// <param name="Mix">The mix with this share.</param>
public sealed record ColdShare(ColdShareOutcome Outcome, double ColdPercent, Mass Cold, Temperature Target, JoinedMix Mix)
{
    /// <summary>The answer in one sentence.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString()
    {
        string mix = Numbers.Fixed(Mix.Celsius, 1) + " °C", target = Numbers.Fixed(Target.DegreesCelsius, 1) + " °C";
        return Outcome switch
        {
            ColdShareOutcome.UpToShare => $"Up to {Numbers.Significant(ColdPercent, 3)} % of the base may be kept back cold for {target}.",
            ColdShareOutcome.All => $"All of the base may be cold: the mix comes to {mix}, above {target}.",
            _ => $"Even with all of the base hot the mix comes to {mix}, under {target}.",
        };
    }
}
