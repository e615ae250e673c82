using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>Where a method is worked: the air, the equipment, the instruments. Immutable, equal by content.</summary>
public sealed record Kitchen
{
    private const Equipment AllEquipment = Equipment.Pan | Equipment.HandBlender | Equipment.JugBlender | Equipment.PressureCooker
        | Equipment.ThermalMixer | Equipment.Steam | Equipment.VacuumChamber;

    private readonly double? _altitudeMetres;
    private readonly double? _airPascals;
    private readonly double _cookerPascals = 100_000;
    private readonly double _thermometerKelvins;
    private readonly double _marginKelvins = 5;
    private readonly double _roomCelsius = 20;
    private readonly Equipment _equipment = Equipment.Pan | Equipment.HandBlender;

    /// <summary>A pan and a hand blender at sea level, or at the altitude of the formula's process plan.</summary>
    public static Kitchen Plain { get; } = new();

    /// <summary>Height above the sea; null for that of the formula's process plan, or sea level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -500 m to 9000 m.</exception>
    public Length? Altitude
    {
        get => _altitudeMetres is { } m ? Length.FromMeters(m) : null;
        init => _altitudeMetres = value is { } v ? Guard.InRange(Guard.Metres(v, nameof(Altitude)), -500, 9000, "m", nameof(Altitude)) : null;
    }

    /// <summary>Measured pressure of the air (station pressure, not reduced to sea level); null if not measured. It goes before the altitude.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 20 kPa to 120 kPa.</exception>
    public Pressure? AirPressure
    {
        get => _airPascals is { } p ? Pressure.FromPascals(p) : null;
        init => _airPascals = value is { } v ? Guard.InRange(Guard.Pascals(v, nameof(AirPressure)), 20_000, 120_000, "Pa", nameof(AirPressure)) : null;
    }

    /// <summary>What there is to work with; a pan and a hand blender unless stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a set of defined values.</exception>
    public Equipment Equipment
    {
        get => _equipment;
        init => _equipment = (value & ~AllEquipment) == Equipment.None ? value
            : throw new ArgumentOutOfRangeException(nameof(value), (int)value, "Equipment must be a set of defined values.");
    }

    /// <summary>What the valve of the pressure cooker holds over the air; 100 kPa unless stated, the usual high setting (common practice, no source).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 300 kPa.</exception>
    public Pressure CookerGauge
    {
        get => Pressure.FromPascals(_cookerPascals);
        init => _cookerPascals = Guard.InRange(Guard.Pascals(value, nameof(CookerGauge)), 0, 300_000, "Pa", nameof(CookerGauge));
    }

    /// <summary>By how much the thermometer may be off either way; the targets of the steps are narrowed by it. 0 K unless stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 20 K.</exception>
    public TemperatureDelta ThermometerAccuracy
    {
        get => TemperatureDelta.FromKelvins(_thermometerKelvins);
        init => _thermometerKelvins = Guard.InRange(Guard.Kelvins(value, nameof(ThermometerAccuracy)), 0, 20, "K", nameof(ThermometerAccuracy));
    }

    /// <summary>The balance; null if not stated.</summary>
    public Balance? Balance { get; init; }

    /// <summary>How far above the highest setting temperature the mix is kept until it is cast; 5 K unless stated, a choice of this library: the coldest spot of a bowl is colder than its thermometer.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 30 K.</exception>
    public TemperatureDelta SettingMargin
    {
        get => TemperatureDelta.FromKelvins(_marginKelvins);
        init => _marginKelvins = Guard.InRange(Guard.Kelvins(value, nameof(SettingMargin)), 0, 30, "K", nameof(SettingMargin));
    }

    /// <summary>The temperature that lines have whose own is not stated; 20 °C unless stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 50 °C.</exception>
    public Temperature RoomTemperature
    {
        get => Temperature.FromDegreesCelsius(_roomCelsius);
        init => _roomCelsius = Guard.InRange(Guard.Celsius(value, nameof(RoomTemperature)), 0, 50, "°C", nameof(RoomTemperature));
    }

    internal double ThermometerKelvins => _thermometerKelvins;

    internal double MarginKelvins => _marginKelvins;

    internal double RoomCelsius => _roomCelsius;

    internal bool Has(Equipment equipment) => (_equipment & equipment) != Equipment.None;

    /// <summary>The air over the pot.</summary>
    internal PotPressure Air(ProcessPlan plan) => _airPascals is { } p ? PotPressure.Measured(Pressure.FromPascals(p))
        : (_altitudeMetres ?? plan.AltitudeMetres) is { } m ? PotPressure.AtAltitude(Length.FromMeters(m)) : default;

    /// <summary>The equipment.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"kitchen with {_equipment}";
}
