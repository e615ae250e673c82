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
    private readonly Audience? _audience;
    private readonly Market? _market;
    private readonly PortionShape? _shape;
    private readonly string? _foodCategory;
    private readonly ValueList<Diet> _diets;
    private readonly ValueList<Allergen> _freeFrom;

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

    /// <summary>How one portion is shaped; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public PortionShape? Shape
    {
        get => _shape;
        init => _shape = value is { } v ? (PortionShape)Guard.Defined((int)v, (int)PortionShape.MiniCup, nameof(Shape)) : null;
    }

    /// <summary>Whether it should be clear; null if not stated.</summary>
    public bool? Clear { get; init; }

    /// <summary>Whether it is packed closed after heating, so that nothing gets at it; null if not stated.</summary>
    public bool? Packaged { get; init; }

    /// <summary>Who eats it; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public Audience? Audience
    {
        get => _audience;
        init => _audience = value is { } v ? (Audience)Guard.Defined((int)v, (int)Hydrocolloid.Formulation.Audience.Dysphagia, nameof(Audience)) : null;
    }

    /// <summary>Where it is sold; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public Market? Market
    {
        get => _market;
        init => _market = value is { } v ? (Market)Guard.Defined((int)v, (int)Hydrocolloid.Formulation.Market.UnitedStates, nameof(Market)) : null;
    }

    /// <summary>The category of food that the law of the market sets its limits for, as kebab-case words such as <c>gelatins-and-puddings</c>; null if not stated.</summary>
    /// <exception cref="ArgumentException">Not kebab-case.</exception>
    public string? FoodCategory
    {
        get => _foodCategory;
        init => _foodCategory = value is null ? null : Ids.Check(value, nameof(FoodCategory));
    }

    /// <summary>The diets it must suit, each once.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public ValueList<Diet> Diets
    {
        get => _diets;
        init => _diets = ValueList<Diet>.From(value.Select(d => (Diet)Guard.Defined((int)d, (int)Diet.Kosher, nameof(Diets))).Distinct().OrderBy(d => d));
    }

    /// <summary>The allergens it must not contain, each once.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public ValueList<Allergen> FreeFrom
    {
        get => _freeFrom;
        init => _freeFrom = ValueList<Allergen>.From(value.Select(a => (Allergen)Guard.Defined((int)a, (int)Allergen.Molluscs, nameof(FreeFrom))).Distinct().OrderBy(a => a));
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
