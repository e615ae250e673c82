using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>How the formula is to be worked, as far as it is fixed. Immutable, equal by content.</summary>
public sealed record ProcessPlan
{
    private readonly double? _altitudeMetres;
    private readonly double? _castAtCelsius;
    private readonly double? _soakAtCelsius;
    private readonly double? _hydrateAtCelsius;
    private readonly double? _hydrateSeconds;
    private readonly Losses _losses = Losses.None;

    /// <summary>Nothing fixed.</summary>
    public static ProcessPlan None { get; } = new();

    /// <summary>Labels of the liquids in which the hydrocolloids are dispersed and heated; empty for the whole base.</summary>
    public ValueList<string> Carriers { get; init; }

    /// <summary>Altitude of the kitchen; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -500 m to 9000 m.</exception>
    public Length? Altitude
    {
        get => _altitudeMetres is { } m ? Length.FromMeters(m) : null;
        init => _altitudeMetres = value is { } v ? Guard.InRange(Guard.Metres(v, nameof(Altitude)), -500, 9000, "m", nameof(Altitude)) : null;
    }

    /// <summary>The temperature of the liquid in which leaves or powder are soaked; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Temperature? SoakAt
    {
        get => _soakAtCelsius is { } c ? Temperature.FromDegreesCelsius(c) : null;
        init => _soakAtCelsius = value is { } v ? Guard.Celsius(v, nameof(SoakAt)) : null;
    }

    /// <summary>The temperature at which the hydrocolloids are held to dissolve; null for what their protocols ask.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Temperature? HydrateAt
    {
        get => _hydrateAtCelsius is { } c ? Temperature.FromDegreesCelsius(c) : null;
        init => _hydrateAtCelsius = value is { } v ? Guard.Celsius(v, nameof(HydrateAt)) : null;
    }

    /// <summary>How long they are held there; null for what their protocols ask.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or over 1e9 s.</exception>
    public Duration? HydrateFor
    {
        get => _hydrateSeconds is { } s ? Duration.FromSeconds(s) : null;
        init => _hydrateSeconds = value is { } v ? Guard.Seconds(v, nameof(HydrateFor)) : null;
    }

    /// <summary>The losses between pan and plate.</summary>
    public Losses Losses
    {
        get => _losses;
        init => _losses = Guard.NotNull(value, nameof(Losses));
    }

    /// <summary>The mould; null if not stated.</summary>
    public MouldPlan? Mould { get; init; }

    /// <summary>The temperature at which the mix is cast; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Temperature? CastAt
    {
        get => _castAtCelsius is { } c ? Temperature.FromDegreesCelsius(c) : null;
        init => _castAtCelsius = value is { } v ? Guard.Celsius(v, nameof(CastAt)) : null;
    }

    /// <summary>The stages of cooling, in order.</summary>
    public ValueList<CoolingStage> Cooling { get; init; }

    internal double? AltitudeMetres => _altitudeMetres;

    internal double? SoakAtCelsius => _soakAtCelsius;

    internal double? HydrateAtCelsius => _hydrateAtCelsius;

    internal double? HydrateSeconds => _hydrateSeconds;

    internal double? CastAtCelsius => _castAtCelsius;

    internal bool IsEmpty => Equals(None);

    /// <summary>The losses.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"losses: {_losses}";
}
