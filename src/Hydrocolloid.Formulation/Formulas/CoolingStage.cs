using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>One stage of cooling as planned: where, at what temperature, for how long. Immutable, equal by content.</summary>
public sealed record CoolingStage
{
    /// <summary>Plans a stage.</summary>
    /// <param name="name">Where, such as <c>bench</c> or <c>refrigerator</c>.</param>
    /// <param name="temperature">Temperature of the surroundings.</param>
    /// <param name="duration">How long; null for the last stage, until needed.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public CoolingStage(string name, Temperature temperature, Duration? duration = null)
    {
        Name = Guard.NotBlank(name);
        Celsius = Guard.Celsius(temperature);
        Seconds = duration is { } d ? Guard.Seconds(d, nameof(duration)) : null;
    }

    /// <summary>Where.</summary>
    public string Name { get; }

    /// <summary>Temperature of the surroundings.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(Celsius);

    /// <summary>How long; null if until needed.</summary>
    public Duration? Duration => Seconds is { } s ? UnitsNet.Duration.FromSeconds(s) : null;

    /// <summary>What carries the heat away; null if not stated, which counts as still air, the slowest.</summary>
    public CoolingMedium? Medium { get; init; }

    internal double Celsius { get; }

    internal double? Seconds { get; }

    /// <summary>The stage as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => $"{Name}{(Medium is null ? "" : $" ({Medium.Name})")} at {Numbers.Significant(Celsius, 4)} °C" + (Seconds is { } s ? $" for {new DurationRange(NumberRange.Single(s))}" : "");
}
