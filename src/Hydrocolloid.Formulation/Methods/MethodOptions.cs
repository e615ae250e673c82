using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>How a method is to be planned. Immutable, equal by content.</summary>
public sealed record MethodOptions
{
    private readonly Kitchen _kitchen = Kitchen.Plain;
    private readonly MethodPattern _pattern;

    /// <summary>A plain kitchen, the pattern from the formula.</summary>
    public static MethodOptions Default { get; } = new();

    /// <summary>Where it is worked.</summary>
    public Kitchen Kitchen
    {
        get => _kitchen;
        init => _kitchen = Guard.NotNull(value, nameof(Kitchen));
    }

    /// <summary>What kind of work it is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public MethodPattern Pattern
    {
        get => _pattern;
        init => _pattern = (MethodPattern)Guard.Defined((int)value, (int)MethodPattern.Clarify, nameof(Pattern));
    }

    /// <summary>The formula of the layer that this one is cast on; null if it is cast on none.</summary>
    public Formula? OnLayer { get; init; }
}
