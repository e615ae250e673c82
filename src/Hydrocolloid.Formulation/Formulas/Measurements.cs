using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>What was measured on the very lot that a line weighs in. A measured value replaces the catalogue's. Immutable, equal by content.</summary>
public sealed record Measurements
{
    private readonly double? _ph;
    private readonly double? _brix;
    private readonly double? _densityKgPerM3;

    /// <summary>pH, 0 to 14; null if not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not between 0 and 14.</exception>
    public double? Ph
    {
        get => _ph;
        init => _ph = value is { } v ? Guard.InRange(v, 0, 14, "pH", nameof(Ph)) : null;
    }

    /// <summary>Soluble solids in °Brix, 0 to 100; null if not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not between 0 and 100.</exception>
    public double? Brix
    {
        get => _brix;
        init => _brix = value is { } v ? Guard.InRange(v, 0, 100, "°Brix", nameof(Brix)) : null;
    }

    /// <summary>Density, 100 to 30 000 kg/m³; null if not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Density? Density
    {
        get => _densityKgPerM3 is { } v ? UnitsNet.Density.FromKilogramsPerCubicMeter(v) : null;
        init => _densityKgPerM3 = value is { } v ? Guard.InRange(Guard.KilogramsPerCubicMetre(v, nameof(Density)), 100, 30_000, "kg/m³", nameof(Density)) : null;
    }

    internal bool IsEmpty => _ph is null && _brix is null && _densityKgPerM3 is null;

    internal double? DensityKgPerM3 => _densityKgPerM3;

    /// <summary>The measured values as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(", ", new[]
    {
        _ph is { } ph ? "pH " + Numbers.Significant(ph, 4) : null,
        _brix is { } brix ? Numbers.Significant(brix, 4) + " °Brix" : null,
        _densityKgPerM3 is { } density ? Numbers.Significant(density, 6) + " kg/m³" : null,
    }.Where(t => t is not null));
}
