using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>The mould the gel is cast in. Immutable, equal by content.</summary>
public sealed record MouldPlan
{
    /// <summary>Names a mould.</summary>
    /// <param name="name">What it is, such as <c>terrine mould</c>.</param>
    /// <param name="volume">What one holds to the fill line; null if not measured.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public MouldPlan(string name, Volume? volume = null)
    {
        Name = Guard.NotBlank(name);
        Millilitres = volume is { } v ? Guard.Millilitres(v, nameof(volume)) : null;
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>What one holds to the fill line; null if not measured.</summary>
    public Volume? Volume => Millilitres is { } ml ? UnitsNet.Volume.FromMilliliters(ml) : null;

    internal double? Millilitres { get; }

    /// <summary>The mould as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Name + (Millilitres is { } ml ? $" of {Numbers.Significant(ml, 5)} mL" : "");
}
