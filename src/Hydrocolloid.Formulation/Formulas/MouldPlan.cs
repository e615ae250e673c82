using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>The mould the gel is cast in. Immutable, equal by content.</summary>
public sealed record MouldPlan
{
    private readonly int _cavities = 1;
    private readonly double _headspaceMetres;
    private readonly MouldShape? _shape;

    /// <summary>Names a mould.</summary>
    /// <param name="name">What it is, such as <c>terrine mould</c>.</param>
    /// <param name="volume">What one cavity holds to the fill line, as measured; null if not measured.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public MouldPlan(string name, Volume? volume = null)
    {
        Name = Guard.NotBlank(name);
        Millilitres = volume is { } v ? Guard.Millilitres(v, nameof(volume)) : null;
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>What one cavity holds to the fill line, as measured; null if not measured.</summary>
    public Volume? Volume => Millilitres is { } ml ? UnitsNet.Volume.FromMilliliters(ml) : null;

    /// <summary>The inside of one cavity; null if not stated. It gives the volume where none was measured, and how fast the gel cools.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The headspace leaves nothing of it.</exception>
    public MouldShape? Shape
    {
        get => _shape;
        init
        {
            _shape = value;
            CheckHeadspace(nameof(Shape));
        }
    }

    /// <summary>How many cavities it has; 1 unless stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 1 to 10 000.</exception>
    public int Cavities
    {
        get => _cavities;
        init => _cavities = (int)Guard.InRange(value, 1, 10_000, "cavities", nameof(Cavities));
    }

    /// <summary>How far below the brim the fill line is; 0 unless stated. It counts where the shape gives the volume.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or it leaves nothing of the shape.</exception>
    public Length Headspace
    {
        get => Length.FromMeters(_headspaceMetres);
        init
        {
            _headspaceMetres = Guard.InRange(Guard.Metres(value, nameof(Headspace)), 0, 10, "m", nameof(Headspace));
            CheckHeadspace(nameof(Headspace));
        }
    }

    /// <summary>What one cavity holds to the fill line: the measured volume, else what the shape holds under the headspace; null if neither is stated.</summary>
    public Volume? FillVolume => Volume ?? Shape?.VolumeTo(FillDepth!.Value);

    /// <summary>How deep one cavity is filled; null if the shape is not stated.</summary>
    public Length? FillDepth => Shape is { } shape ? Length.FromMeters(shape.HeightMetres - _headspaceMetres) : null;

    internal double? Millilitres { get; }

    internal double HeadspaceMetres => _headspaceMetres;

    /// <summary>The mould as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Name
        + (Cavities > 1 ? $" with {Numbers.Exact(Cavities)} cavities" : "")
        + (FillVolume is { } volume ? $" of {Numbers.Significant(volume.Milliliters, 5)} mL" : "")
        + (Shape is null ? "" : $" ({Shape})");

    private void CheckHeadspace(string name)
    {
        if (_shape is not null && _headspaceMetres >= _shape.HeightMetres)
        {
            throw new ArgumentOutOfRangeException(name, $"A headspace of {Numbers.Significant(_headspaceMetres * 1000, 4)} mm leaves nothing of the depth of {Numbers.Significant(_shape.HeightMetres * 1000, 4)} mm.");
        }
    }
}
