using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>How fast an open pot loses water: measured, from the heat that reaches it, or estimated from its surface. Immutable, equal by content.</summary>
public readonly record struct EvaporationRate
{
    private const double VapourJoulesPerKgK = 461.5, AirJoulesPerKgK = 287, Gravity = 9.81, StandardPascals = 101_325;

    private EvaporationRate(double kilogramsPerSecond, bool isEstimate, OutsideRange? outside)
    {
        KilogramsPerSecond = kilogramsPerSecond;
        IsEstimate = isEstimate;
        Outside = outside;
    }

    /// <summary>Mass of water lost in a time.</summary>
    public MassFlow Rate => MassFlow.FromKilogramsPerSecond(KilogramsPerSecond);

    /// <summary>True if the rate is an estimate.</summary>
    public bool IsEstimate { get; }

    /// <summary>What lies outside the range of the relation; null if nothing does.</summary>
    public OutsideRange? Outside { get; }

    /// <summary>True if the relation holds here.</summary>
    public bool InRange => Outside is null;

    internal double KilogramsPerSecond { get; }

    /// <summary>A measured rate.</summary>
    /// <param name="rate">Mass of water lost in a time.</param>
    /// <returns>The rate.</returns>
    public static EvaporationRate Measured(MassFlow rate) => new(Guard.KilogramsPerSecond(rate), false, null);

    /// <summary>A boil under a known heater: all heat that does not go elsewhere evaporates water, ṁ = (P - losses)/h. A pot still on its way to the boil loses less.</summary>
    /// <param name="heater">Power of the heater that reaches the pot.</param>
    /// <param name="losses">Power that the pot loses through its walls and by radiation.</param>
    /// <param name="boilsAt">Where the liquid boils; the heat of vaporization is known from 5 to 120 °C.</param>
    /// <param name="isEstimate">Whether the two powers are guesses rather than measured.</param>
    /// <returns>The rate; 0 if the losses take all.</returns>
    public static EvaporationRate ByHeater(Power heater, Power losses, Temperature boilsAt, bool isEstimate = true)
    {
        Computed<SpecificEnergy> heat = SaturatedWater.HeatOfVaporization(boilsAt);
        return new(Math.Max(0, Guard.Watts(heater) - Guard.Watts(losses)) / heat.Value.JoulesPerKilogram, isEstimate, heat.Outside);
    }

    /// <summary>
    /// An estimate, good to 40 %, for a hot open surface in still air, without a lid: ṁ = h·A·(ρ vapour at the surface - ρ vapour in the room), h = Sh·D/L, L = area/rim,
    /// Sh = 0.15 (Gr·Sc)^⅓ above 1e7 (Çengel 2006, example 14-13) and 0.54 (Gr·Sc)^¼ below (recalled). Range: surface of water at 40–90 °C.
    /// A closed lid keeps back about 80–95 % (recalled, an estimate); a boil follows the heater, not this.
    /// </summary>
    /// <param name="surface">Area of the liquid's surface.</param>
    /// <param name="rim">Length of its rim, above 0 m.</param>
    /// <param name="liquid">Temperature of the surface, above 0 and below 100 °C; the estimate is for 40–90 °C.</param>
    /// <param name="room">Temperature of the room, 0–60 °C.</param>
    /// <param name="humidityPercent">Relative humidity of the room, in % of saturation, 0–100.</param>
    /// <param name="pressure">The pressure of the air; the standard atmosphere at sea level unless stated.</param>
    /// <returns>The rate, marked as an estimate; 0 if the air gives water to the surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static EvaporationRate FromSurface(Area surface, Length rim, Temperature liquid, Temperature room, double humidityPercent, PotPressure pressure = default)
    {
        double area = Guard.SquareMetres(surface), length = area / Guard.InRange(Guard.Metres(rim), 1e-3, 1e6, "m", nameof(rim));
        double hot = Guard.InRange(Guard.Celsius(liquid), 0, 100, "°C", nameof(liquid)), cool = Guard.InRange(Guard.Celsius(room), 0, 60, "°C", nameof(room));
        double humidity = Guard.InRange(humidityPercent, 0, 100, "%") / 100;
        double film = ((hot + cool) / 2) - Guard.AbsoluteZeroCelsius;

        // Air at the mean temperature of the film: viscosity by Sutherland (recalled), diffusivity of vapour by Marrero and Mason 1972 (recalled).
        double kinematicViscosity = 1.458e-6 * Math.Pow(film, 1.5) / (film + 110.4) / (pressure.AbsolutePascals / (AirJoulesPerKgK * film));
        double diffusivity = 1.87e-10 * Math.Pow(film, 2.072) / (pressure.AbsolutePascals / StandardPascals);
        double grashof = Grashof(hot, cool, humidity, pressure.AbsolutePascals, length, kinematicViscosity);
        return new(FilmRate(area, length, grashof, kinematicViscosity, diffusivity, VapourDensity(hot, 1) - VapourDensity(cool, humidity)), true,
            pressure.Outside ?? OutsideRange.Check("temperature of the surface", hot, "°C", 40, 90));
    }

    /// <summary>How long it takes to lose a mass of water.</summary>
    /// <param name="water">Mass to lose.</param>
    /// <returns>The time; null if nothing evaporates.</returns>
    public Duration? TimeToLose(Mass water)
    {
        double kilograms = Guard.Grams(water) / 1000;
        return KilogramsPerSecond > 0 ? Duration.FromSeconds(kilograms / KilogramsPerSecond) : null;
    }

    /// <summary>The water lost in a time, which is the water that tops it back up.</summary>
    /// <param name="time">The time.</param>
    /// <param name="water">Mass of water there is: no more than that is lost.</param>
    /// <returns>Mass of water.</returns>
    public Mass LostIn(Duration time, Mass water) => Mass.FromKilograms(Math.Min(KilogramsPerSecond * Guard.Seconds(time), Guard.Grams(water) / 1000));

    /// <summary>The rate in kg/h.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Numbers.Significant(KilogramsPerSecond * 3600, 3)} kg/h{(IsEstimate ? " (estimate)" : "")}{(Outside is null ? "" : $" ({Outside})")}";

    // Gr = g·Δρ·L³/(ρ·ν²), moist air at the surface against that of the room.
    internal static double Grashof(double surfaceCelsius, double roomCelsius, double humidity, double pascals, double lengthMetres, double kinematicViscosity)
    {
        double surface = AirDensity(surfaceCelsius, 1, pascals), room = AirDensity(roomCelsius, humidity, pascals);
        return Gravity * Math.Abs(room - surface) * Math.Pow(lengthMetres, 3) / ((room + surface) / 2 * kinematicViscosity * kinematicViscosity);
    }

    internal static double FilmRate(double squareMetres, double lengthMetres, double grashof, double kinematicViscosity, double diffusivity, double vapourDensityDifference)
    {
        double rayleigh = grashof * kinematicViscosity / diffusivity;
        double sherwood = rayleigh > 1e7 ? 0.15 * Math.Pow(rayleigh, 1.0 / 3) : 0.54 * Math.Pow(rayleigh, 0.25);
        return squareMetres == 0 ? 0 : Math.Max(0, sherwood * diffusivity / lengthMetres * squareMetres * vapourDensityDifference);
    }

    internal static double VapourDensity(double celsius, double humidity)
        => humidity * SaturatedWater.Pascals(celsius) / (VapourJoulesPerKgK * (celsius - Guard.AbsoluteZeroCelsius));

    private static double AirDensity(double celsius, double humidity, double pascals)
        => VapourDensity(celsius, humidity) + (Math.Max(0, pascals - (humidity * SaturatedWater.Pascals(celsius))) / (AirJoulesPerKgK * (celsius - Guard.AbsoluteZeroCelsius)));
}
