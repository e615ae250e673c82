using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>
/// A gastronorm pan. EN 631-1 fixes the outer length and width; what a pan of a depth holds differs by maker, so a measured volume is
/// better than the published one. Immutable, equal by content.
/// </summary>
public sealed record GastronormPan
{
    internal GastronormPan(string size, double lengthMillimetres, double widthMillimetres, double depthMillimetres, Cited<double> usableLitres)
    {
        Size = size;
        LengthMetres = lengthMillimetres / 1000;
        WidthMetres = widthMillimetres / 1000;
        DepthMetres = depthMillimetres / 1000;
        UsableLitres = usableLitres;
    }

    /// <summary>The size, such as <c>1/2</c>.</summary>
    public string Size { get; }

    /// <summary>Outer length.</summary>
    public Length Length => Length.FromMeters(LengthMetres);

    /// <summary>Outer width.</summary>
    public Length Width => Length.FromMeters(WidthMetres);

    /// <summary>Depth.</summary>
    public Length Depth => Length.FromMeters(DepthMetres);

    /// <summary>What it holds in use, in L, as one supplier publishes it.</summary>
    public Cited<double> UsableLitres { get; }

    internal double LengthMetres { get; }

    internal double WidthMetres { get; }

    internal double DepthMetres { get; }

    /// <summary>The pan as the mould of a formula, of its usable volume.</summary>
    /// <returns>The mould.</returns>
    public MouldPlan ToMould() => new($"gastronorm {Size}, {Numbers.Significant(DepthMetres * 1000, 3)} mm", Volume.FromLiters(UsableLitres.Value))
    {
        Shape = MouldShape.Block(Length, Width, Depth),
    };

    /// <summary>The size and the depth.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"gastronorm {Size}, {Numbers.Significant(DepthMetres * 1000, 3)} mm deep";
}
