using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>What bodies come to when they are joined and stirred to one temperature. Immutable, equal by content.</summary>
public sealed record JoinedMix
{
    internal JoinedMix(double celsius, Polynomial joulesPerK, double lostJoules, bool isEstimate, OutsideRange? outside)
    {
        Celsius = celsius;
        JoulesPerK = joulesPerK;
        LostJoules = lostJoules;
        IsEstimate = isEstimate;
        Outside = outside;
    }

    /// <summary>The temperature of all.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(Celsius);

    /// <summary>The heat lost while joining; below 0 if surroundings warmer than the mix gave heat to it.</summary>
    public Energy HeatLost => Energy.FromJoules(LostJoules);

    /// <summary>True if the heat loss is a guess rather than measured.</summary>
    public bool IsEstimate { get; }

    /// <summary>What lies outside the range of the specific heats, as below 0 °C, where the mix would begin to freeze; null if nothing does.</summary>
    public OutsideRange? Outside { get; }

    /// <summary>True if the relations hold here.</summary>
    public bool InRange => Outside is null;

    internal double Celsius { get; }

    internal Polynomial JoulesPerK { get; }

    internal double LostJoules { get; }

    /// <summary>Whether the mix sets before it is cast.</summary>
    /// <param name="highestSetting">The highest setting temperature of the agents in it.</param>
    /// <param name="margin">How far above it the mix has to stay, 0 K or more; stirring evens out what the coldest spot does not.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The margin is under 0 K.</exception>
    public SettingCheck Against(Temperature highestSetting, TemperatureDelta margin)
    {
        double limit = Guard.Celsius(highestSetting) + Guard.InRange(Guard.Kelvins(margin), 0, 1000, "K", nameof(margin));
        return new(Celsius < limit, Temperature, Temperature.FromDegreesCelsius(limit), TemperatureDelta.FromKelvins(Celsius - limit), IsEstimate);
    }

    /// <summary>How long the stirred bowl takes to cool to a temperature, by Newton's law. An estimate as good as the rate.</summary>
    /// <param name="to">The temperature, such as the setting temperature.</param>
    /// <param name="wattsPerKelvin">Heat-loss rate UA in W/K, 0 to 1e6.</param>
    /// <param name="surroundings">Temperature of the surroundings, -50 to 150 °C.</param>
    /// <returns>The time; 0 if the mix is there already, null if it never gets there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Duration? TimeToCool(Temperature to, double wattsPerKelvin, Temperature surroundings)
    {
        double end = Guard.Celsius(to), air = HeatLoss.Surroundings(surroundings);
        double rate = Guard.InRange(wattsPerKelvin, 0, 1e6, "W/K");
        return Celsius <= end ? Duration.FromSeconds(0)
            : end <= air || rate == 0 ? null
            : Duration.FromSeconds(new LumpedCooling(JoulesPerK, air).JoulesPerKelvin(Celsius, end) / rate);
    }

    /// <summary>The temperature.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Numbers.Significant(Celsius, 4)} °C{(IsEstimate ? " (estimated)" : "")}{(Outside is null ? "" : $" ({Outside})")}";
}
