using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Where a liquid boils, and what moves it there. Immutable, equal by content.</summary>
/// <param name="Temperature">The boiling point.</param>
/// <param name="OfWater">The boiling point of water under the same pressure.</param>
/// <param name="BySugars">How much the sugars raise it.</param>
/// <param name="BySalt">How much the salt raises it further.</param>
/// <param name="ByEthanol">How much the ethanol lowers it; 0 or less.</param>
/// <param name="Published">From the library's relation to the kitchen's table of sucrose syrups (Browne 1912), which lies higher; one temperature if there is no sucrose.</param>
/// <param name="IsEstimate">True if effects of several solutes are added up, each known alone, or salt or glucose is counted by its activity at 25 °C.</param>
/// <param name="By">The relations used, in words.</param>
/// <param name="Outside">What lies outside the range of a relation; null if nothing does.</param>
public sealed record BoilingPoint(
    Temperature Temperature, Temperature OfWater, TemperatureDelta BySugars, TemperatureDelta BySalt, TemperatureDelta ByEthanol, TemperatureRange Published, bool IsEstimate, string By, OutsideRange? Outside)
{
    /// <summary>True if every relation holds here; false if the value is an extrapolation.</summary>
    public bool InRange => Outside is null;

    /// <summary>The boiling point and how it was come by.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Numbers.Significant(Temperature.DegreesCelsius, 4)} °C ({(IsEstimate ? "estimated" : "computed")}: {By}{(Outside is null ? "" : "; " + Outside)})";
}
