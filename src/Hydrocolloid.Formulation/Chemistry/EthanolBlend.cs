using UnitsNet;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>Two strengths mixed. Volumes are at 20 °C. Equal by content.</summary>
/// <param name="Mass">Mass of the blend.</param>
/// <param name="Volume">Volume of the blend at 20 °C.</param>
/// <param name="EthanolPercentByMass">Ethanol in % of the mass.</param>
/// <param name="EthanolPercentByVolume">Ethanol in % of the volume at 20 °C.</param>
/// <param name="Contraction">How much less volume the blend has than its parts had; below 0 if it has more.</param>
/// <param name="Added">Mass of the second part.</param>
public sealed record EthanolBlend(Mass Mass, Volume Volume, double EthanolPercentByMass, double EthanolPercentByVolume, Volume Contraction, Mass Added)
{
    /// <summary>The strength.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Internal.Numbers.Significant(EthanolPercentByVolume, 4) + " % by volume";
}
