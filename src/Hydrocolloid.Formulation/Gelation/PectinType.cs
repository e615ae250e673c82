using UnitsNet;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>A type of high-methoxyl pectin as the trade sorts them. Immutable, equal by content.</summary>
/// <param name="Name">Its name.</param>
/// <param name="EsterificationPercent">Degree of esterification, % of the galacturonic acid.</param>
/// <param name="SettingTime">How long it takes to set.</param>
/// <param name="Ph">The pH it is used at.</param>
public sealed record PectinType(string Name, NumberRange EsterificationPercent, DurationRange SettingTime, NumberRange Ph)
{
    internal PectinType(string name, double minPercent, double maxPercent, double minMinutes, double maxMinutes, double minPh, double maxPh)
        : this(name, new(minPercent, maxPercent), new DurationRange(Duration.FromMinutes(minMinutes), Duration.FromMinutes(maxMinutes)), new(minPh, maxPh))
    {
    }
}
