using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// The pressure over a pot: that of the air, from the altitude or measured, and what a pressure cooker puts on top. The default value is the standard atmosphere at sea level.
/// Immutable, equal by content.
/// </summary>
public readonly record struct PotPressure
{
    private const double SeaLevelPascals = 101_325;

    private readonly double _overStandardPascals;
    private readonly double _gaugePascals;

    private PotPressure(double airPascals, double gaugePascals, OutsideRange? outside)
    {
        _overStandardPascals = airPascals - SeaLevelPascals;
        _gaugePascals = gaugePascals;
        Outside = outside;
    }

    /// <summary>Pressure of the air.</summary>
    public Pressure Air => Pressure.FromPascals(SeaLevelPascals + _overStandardPascals);

    /// <summary>Pressure of the cooker over that of the air.</summary>
    public Pressure Gauge => Pressure.FromPascals(_gaugePascals);

    /// <summary>Absolute pressure over the liquid.</summary>
    public Pressure Absolute => Pressure.FromPascals(AbsolutePascals);

    /// <summary>What lies outside the range of the standard atmosphere; null if nothing does.</summary>
    public OutsideRange? Outside { get; }

    internal double AbsolutePascals => SeaLevelPascals + _overStandardPascals + _gaugePascals;

    internal double AirPascals => SeaLevelPascals + _overStandardPascals;

    /// <summary>
    /// The air of the US Standard Atmosphere 1976: p = 101325 (1 - 0.0065 h/288.15)^5.255876 Pa. Weather changes the true pressure by up to 4 %, which is 1 °C of boiling point.
    /// </summary>
    /// <param name="altitude">Height above the sea; the equation holds from 0 to 11 000 m.</param>
    /// <returns>The pressure; above or below that range, from -1000 to 20 000 m, the equation's value, marked as out of range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is not from -1000 to 20 000 m.</exception>
    public static PotPressure AtAltitude(Length altitude)
    {
        double metres = Guard.InRange(Guard.Metres(altitude), -1000, 20_000, "m", nameof(altitude));
        return new(SeaLevelPascals * Math.Pow(1 - (0.0065 * metres / 288.15), 5.255876), 0, OutsideRange.Check("altitude", metres, "m", 0, 11_000));
    }

    /// <summary>A measured pressure of the air: the station pressure, not one reduced to sea level.</summary>
    /// <param name="absolute">The absolute pressure, 1 kPa to 1 MPa.</param>
    /// <returns>The pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not from 1 kPa to 1 MPa.</exception>
    public static PotPressure Measured(Pressure absolute) => new(Guard.InRange(Guard.Pascals(absolute), 1e3, 1e6, "Pa", nameof(absolute)), 0, null);

    /// <summary>The same air with a pressure cooker.</summary>
    /// <param name="gauge">What the cooker's valve holds over the air, 0 to 1 MPa.</param>
    /// <returns>The pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not from 0 to 1 MPa.</exception>
    public PotPressure WithCooker(Pressure gauge) => new(AirPascals, Guard.InRange(Guard.Pascals(gauge), 0, 1e6, "Pa", nameof(gauge)), Outside);

    /// <summary>The absolute pressure.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Numbers.Significant(AbsolutePascals / 1000, 4) + " kPa";
}
