using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// One of the things that are joined: a hot sol, the rest of the base, pieces, ice, the vessel. Its heat is counted from the liquid at 0 °C. Immutable, equal by content.
/// </summary>
public readonly record struct JoiningBody
{
    private const double MinCelsius = -50, MaxCelsius = 500;

    // Heat of fusion and specific heat of ice, recalled from textbooks; J/kg and J/(kg·K).
    private const double FusionJoules = 334_000, IceJoules = 2090;

    private readonly double _kilograms;
    private readonly double _celsius;
    private readonly Kind _kind;

    private JoiningBody(double kilograms, double celsius, Polynomial joulesPerKgK, Kind kind)
    {
        _kilograms = kilograms;
        _celsius = celsius;
        _kind = kind;
        JoulesPerKgK = joulesPerKgK;
    }

    private enum Kind
    {
        Constant,
        Food,
        Ice,
    }

    /// <summary>Mass.</summary>
    public Mass Mass => Mass.FromGrams(_kilograms * 1000);

    /// <summary>Temperature before joining.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(_celsius);

    internal Polynomial JoulesPerKgK { get; }

    internal double Kilograms => _kilograms;

    internal double Celsius => _celsius;

    internal bool IsFood => _kind != Kind.Constant;

    internal bool IsIce => _kind == Kind.Ice;

    /// <summary>Heat above that of the body, thawed, at 0 °C.</summary>
    internal double Joules => _kilograms * (IsIce ? (IceJoules * _celsius) - FusionJoules : JoulesPerKgK.Integral(_celsius));

    /// <summary>An unfrozen food whose specific heat follows from what it is made of and changes with the temperature.</summary>
    /// <param name="mass">Its mass.</param>
    /// <param name="temperature">Its temperature, 0–150 °C.</param>
    /// <param name="shares">What it is made of.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not from 0 to 150 °C: the equations hold for unfrozen food only.</exception>
    public static JoiningBody Food(Mass mass, Temperature temperature, FoodShares shares)
        => new(Guard.Grams(mass) / 1000, FoodCelsius(temperature), FoodProperties.HeatKilojoulesPerKgK(shares).Times(1000), Kind.Food);

    /// <summary>A body of one specific heat: a vessel of <see cref="VesselMaterials"/>, or a food whose specific heat is known.</summary>
    /// <param name="mass">Its mass.</param>
    /// <param name="temperature">Its temperature, -50 to 500 °C.</param>
    /// <param name="specificHeat">Its specific heat.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public static JoiningBody OfSpecificHeat(Mass mass, Temperature temperature, SpecificEntropy specificHeat)
        => new(Guard.Grams(mass) / 1000, Guard.InRange(Guard.Celsius(temperature), MinCelsius, MaxCelsius, "°C", nameof(temperature)),
            new Polynomial(Guard.JoulesPerKilogramKelvin(specificHeat), 0, 0), Kind.Constant);

    /// <summary>Ice that melts in the mix: 2.09 kJ/(kg·K) and 334 kJ/kg (recalled), then water.</summary>
    /// <param name="mass">Its mass.</param>
    /// <param name="temperature">Its temperature, -50 to 0 °C.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not from -50 to 0 °C.</exception>
    public static JoiningBody Ice(Mass mass, Temperature temperature)
        => new(Guard.Grams(mass) / 1000, IceCelsius(temperature), FoodProperties.HeatKilojoulesPerKgK(new FoodShares(100)).Times(1000), Kind.Ice);

    /// <summary>The same body at another temperature.</summary>
    /// <param name="temperature">The temperature, in the range of the kind of body.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range of the kind of body.</exception>
    public JoiningBody At(Temperature temperature) => new(_kilograms, _kind switch
    {
        Kind.Food => FoodCelsius(temperature),
        Kind.Ice => IceCelsius(temperature),
        _ => Guard.InRange(Guard.Celsius(temperature), MinCelsius, MaxCelsius, "°C", nameof(temperature)),
    }, JoulesPerKgK, _kind);

    /// <summary>Another mass of the same.</summary>
    /// <param name="mass">The mass.</param>
    /// <returns>The body.</returns>
    public JoiningBody OfMass(Mass mass) => new(Guard.Grams(mass) / 1000, _celsius, JoulesPerKgK, _kind);

    /// <summary>Mass and temperature.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Numbers.Significant(_kilograms * 1000, 6)} g at {Numbers.Significant(_celsius, 4)} °C";

    private static double FoodCelsius(Temperature temperature)
        => Guard.InRange(Guard.Celsius(temperature), FoodProperties.MinCelsius, FoodProperties.MaxCelsius, "°C", nameof(temperature));

    private static double IceCelsius(Temperature temperature) => Guard.InRange(Guard.Celsius(temperature), MinCelsius, 0, "°C", nameof(temperature));
}
