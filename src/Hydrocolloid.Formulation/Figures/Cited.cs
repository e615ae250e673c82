using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A figure or a fact with its source. Immutable, equal by content.</summary>
/// <typeparam name="T">The type of the value: a range, a number whose unit the property's name states, or a sentence.</typeparam>
public sealed record Cited<T>
    where T : notnull
{
    /// <summary>Pairs a value with its source.</summary>
    /// <param name="value">The value.</param>
    /// <param name="citation">Where it comes from.</param>
    /// <param name="note">Conditions, or why this value was chosen; null if there is nothing to add.</param>
    /// <param name="restsOn">The sources an estimate rests on.</param>
    /// <param name="alternatives">Competing published values.</param>
    public Cited(T value, Citation citation, string? note = null, ValueList<Source> restsOn = default, ValueList<Cited<T>> alternatives = default)
    {
        Value = value;
        Citation = Guard.NotNull(citation);
        Note = note;
        RestsOn = restsOn;
        Alternatives = alternatives;
    }

    /// <summary>The value.</summary>
    public T Value { get; }

    /// <summary>Where the value comes from.</summary>
    public Citation Citation { get; }

    /// <summary>Conditions, or why this value was chosen; null if there is nothing to add.</summary>
    public string? Note { get; }

    /// <summary>The sources an estimate rests on.</summary>
    public ValueList<Source> RestsOn { get; }

    /// <summary>Competing published values, each with its own source.</summary>
    public ValueList<Cited<T>> Alternatives { get; }

    /// <summary>The value and its source.</summary>
    /// <returns>The line.</returns>
    public override string ToString() => $"{Value} ({Citation})";
}
