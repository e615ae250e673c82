using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// What carries the heat away, with its film coefficient as a range. The ranges are engineering practice, recalled, not measured on gels: one medium gives a slow and a fast
/// answer, and a thermometer in the first batch says which. Immutable, equal by content.
/// </summary>
public sealed record CoolingMedium
{
    private CoolingMedium(string id, string name, double low, double typical, double high, string? note = null)
    {
        Id = id;
        Name = name;
        TypicalWattsPerSquareMetreKelvin = typical;
        WattsPerSquareMetreKelvin = new(new(low, high), CoolingSources.FilmRecalled, note);
    }

    /// <summary>Still air: a bench, or a refrigerator without a fan. Radiation counted in.</summary>
    public static CoolingMedium StillAir { get; } = new("still-air", "still air", 5, 8, 12, "Radiation counted in; published food examples in still air that were read use 6 to 8.5.");

    /// <summary>A refrigerator with a fan.</summary>
    public static CoolingMedium FanRefrigerator { get; } = new("fan-refrigerator", "refrigerator with a fan", 10, 15, 25);

    /// <summary>A blast chiller, air at 2–5 m/s.</summary>
    public static CoolingMedium BlastChiller { get; } = new("blast-chiller", "blast chiller", 25, 40, 70, "The lower end of the 25 to 250 given for gases in forced flow (Çengel, companion notes 2003).");

    /// <summary>Ice and water that are not stirred.</summary>
    public static CoolingMedium IceBath { get; } = new("ice-bath", "ice bath, not stirred", 100, 200, 400);

    /// <summary>Ice and water, stirred.</summary>
    public static CoolingMedium StirredIceBath { get; } = new("stirred-ice-bath", "ice bath, stirred", 400, 800, 1500);

    /// <summary>A circulated bath of cold or hot water.</summary>
    public static CoolingMedium CirculatedWater { get; } = new("circulated-water", "circulated water", 500, 1000, 3000);

    /// <summary>A chilled metal plate or shelf in good contact.</summary>
    public static CoolingMedium MetalPlate { get; } = new("metal-plate", "metal plate, good contact", 100, 250, 500, "The resistance of the contact decides.");

    /// <summary>All of them.</summary>
    public static ValueList<CoolingMedium> All { get; } = ValueList<CoolingMedium>.From([StillAir, FanRefrigerator, BlastChiller, IceBath, StirredIceBath, CirculatedWater, MetalPlate]);

    /// <summary>Kebab-case id, as documents write it.</summary>
    public string Id { get; }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Range of the film coefficient in W/(m²·K), with its source.</summary>
    public Cited<NumberRange> WattsPerSquareMetreKelvin { get; }

    /// <summary>The film coefficient at the slow end of the range.</summary>
    public HeatTransferCoefficient Slowest => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(WattsPerSquareMetreKelvin.Value.Min!.Value);

    /// <summary>The usual film coefficient.</summary>
    public HeatTransferCoefficient Typical => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(TypicalWattsPerSquareMetreKelvin);

    /// <summary>The film coefficient at the fast end of the range.</summary>
    public HeatTransferCoefficient Fastest => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(WattsPerSquareMetreKelvin.Value.Max!.Value);

    internal double TypicalWattsPerSquareMetreKelvin { get; }

    /// <summary>A medium by its id.</summary>
    /// <param name="id">The id.</param>
    /// <param name="medium">The medium; null if there is none of that id.</param>
    /// <returns>Whether there is one.</returns>
    public static bool TryGet(string? id, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out CoolingMedium? medium)
    {
        medium = All.FirstOrDefault(m => m.Id == id);
        return medium is not null;
    }

    /// <summary>Name, range and source.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {WattsPerSquareMetreKelvin.Value} W/(m²·K) ({WattsPerSquareMetreKelvin.Citation})";
}
