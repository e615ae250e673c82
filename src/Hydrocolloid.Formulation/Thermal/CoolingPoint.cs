using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>A body at one time of its cooling. Immutable, equal by content.</summary>
public readonly record struct CoolingPoint
{
    internal CoolingPoint(double seconds, Places celsius)
    {
        Seconds = seconds;
        CentreCelsius = celsius.Centre;
        SurfaceCelsius = celsius.Surface;
        MeanCelsius = celsius.Mean;
    }

    /// <summary>Time since the start.</summary>
    public Duration Time => Duration.FromSeconds(Seconds);

    /// <summary>Temperature of the centre, or of the insulated face's middle: the part that follows last.</summary>
    public Temperature Centre => Temperature.FromDegreesCelsius(CentreCelsius);

    /// <summary>Temperature of the surface; of a cylinder with ends its rim, of a block its corner: the part that follows first.</summary>
    public Temperature Surface => Temperature.FromDegreesCelsius(SurfaceCelsius);

    /// <summary>Temperature averaged over the volume; the heat given off is ρ c V times its fall.</summary>
    public Temperature Mean => Temperature.FromDegreesCelsius(MeanCelsius);

    internal double Seconds { get; }

    internal double CentreCelsius { get; }

    internal double SurfaceCelsius { get; }

    internal double MeanCelsius { get; }

    internal double WarmestCelsius => Math.Max(CentreCelsius, SurfaceCelsius);

    /// <summary>The point as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => $"{Numbers.Significant(Seconds / 60, 4)} min: centre {Numbers.Fixed(CentreCelsius, 1)} °C, surface {Numbers.Fixed(SurfaceCelsius, 1)} °C, mean {Numbers.Fixed(MeanCelsius, 1)} °C";
}
