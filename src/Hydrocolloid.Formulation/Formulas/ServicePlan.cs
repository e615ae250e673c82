using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>How the gel is to be served, as far as it is fixed. Immutable, equal by content.</summary>
public sealed record ServicePlan
{
    private readonly double? _serveAtCelsius;
    private readonly double? _heldSeconds;
    private readonly double? _storedSeconds;
    private readonly double? _portionGrams;
    private readonly Texture? _texture;

    /// <summary>Nothing fixed.</summary>
    public static ServicePlan None { get; } = new();

    /// <summary>The texture it should have; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public Texture? Texture
    {
        get => _texture;
        init => _texture = value is { } v ? (Texture)Guard.Defined((int)v, (int)Hydrocolloid.Formulation.Texture.Modifier, nameof(Texture)) : null;
    }

    /// <summary>The temperature on the plate; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Temperature? ServedAt
    {
        get => _serveAtCelsius is { } c ? Temperature.FromDegreesCelsius(c) : null;
        init => _serveAtCelsius = value is { } v ? Guard.Celsius(v, nameof(ServedAt)) : null;
    }

    /// <summary>How long it is held at that temperature; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or over 1e9 s.</exception>
    public Duration? HeldFor
    {
        get => _heldSeconds is { } s ? Duration.FromSeconds(s) : null;
        init => _heldSeconds = value is { } v ? Guard.Seconds(v, nameof(HeldFor)) : null;
    }

    /// <summary>How long it is stored cold before service; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or over 1e9 s.</exception>
    public Duration? StoredFor
    {
        get => _storedSeconds is { } s ? Duration.FromSeconds(s) : null;
        init => _storedSeconds = value is { } v ? Guard.Seconds(v, nameof(StoredFor)) : null;
    }

    /// <summary>Whether it is stored covered; null if not stated.</summary>
    public bool? Covered { get; init; }

    /// <summary>Whether it is frozen and thawed; null if not stated.</summary>
    public bool? Frozen { get; init; }

    /// <summary>The mass of one portion; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 g.</exception>
    public Mass? Portion
    {
        get => _portionGrams is { } g ? Mass.FromGrams(g) : null;
        init => _portionGrams = value is { } v ? Guard.PositiveGrams(v, nameof(Portion)) : null;
    }

    internal double? ServedAtCelsius => _serveAtCelsius;

    internal double? HeldSeconds => _heldSeconds;

    internal double? StoredSeconds => _storedSeconds;

    internal double? PortionGrams => _portionGrams;

    internal bool IsEmpty => Equals(None);

    /// <summary>The texture aimed at.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Texture is { } t ? $"texture: {t}" : "nothing fixed";
}
