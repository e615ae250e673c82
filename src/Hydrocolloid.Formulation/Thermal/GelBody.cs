using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>A body of gel of a simple shape, for cooling and for soaking. Lengths from 1 µm to 10 m. Immutable, equal by content.</summary>
public sealed record GelBody
{
    private readonly string _name;

    private GelBody(string name, params Direction[] directions)
    {
        _name = name;
        Directions = ValueList<Direction>.Own(directions);
    }

    /// <summary>Volume over exposed surface: the length of the lumped solution.</summary>
    public Length VolumePerSurface
    {
        get
        {
            double perMetre = 0;
            foreach (Direction direction in Directions)
            {
                perMetre += ConductionSeries.DimensionOf(direction.Shape) / direction.Metres;
            }

            return Length.FromMeters(1 / perMetre);
        }
    }

    internal ValueList<Direction> Directions { get; }

    /// <summary>A layer or slice that is wide against its thickness; its edges do not count.</summary>
    /// <param name="thickness">Thickness.</param>
    /// <param name="faces">Through which faces.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is outside 1 µm to 10 m.</exception>
    public static GelBody Slab(Length thickness, ExposedFaces faces) => new("slab", Across(thickness, faces, nameof(thickness)));

    /// <summary>A roll or noodle that is long against its diameter; its ends do not count.</summary>
    /// <param name="diameter">Diameter.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside 1 µm to 10 m.</exception>
    public static GelBody LongCylinder(Length diameter) => new("long cylinder", Round(ConductionShape.Cylinder, diameter, nameof(diameter)));

    /// <summary>A cylinder with its ends: a glass, a timbale, a disc.</summary>
    /// <param name="diameter">Diameter.</param>
    /// <param name="height">Height.</param>
    /// <param name="ends">Through one end or both; the side is always exposed.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside 1 µm to 10 m.</exception>
    public static GelBody Cylinder(Length diameter, Length height, ExposedFaces ends = ExposedFaces.Both)
        => new("cylinder", Round(ConductionShape.Cylinder, diameter, nameof(diameter)), Across(height, ends, nameof(height)));

    /// <summary>A sphere.</summary>
    /// <param name="diameter">Diameter.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside 1 µm to 10 m.</exception>
    public static GelBody Sphere(Length diameter) => new("sphere", Round(ConductionShape.Sphere, diameter, nameof(diameter)));

    /// <summary>A rectangular block: a tray of gel, a cube, a terrine.</summary>
    /// <param name="length">Length; both faces exposed.</param>
    /// <param name="width">Width; both faces exposed.</param>
    /// <param name="height">Height.</param>
    /// <param name="topAndBottom">Through the top only or through the bottom too.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside 1 µm to 10 m.</exception>
    public static GelBody Block(Length length, Length width, Length height, ExposedFaces topAndBottom = ExposedFaces.Both)
        => new("block", Across(length, ExposedFaces.Both, nameof(length)), Across(width, ExposedFaces.Both, nameof(width)), Across(height, topAndBottom, nameof(height)));

    /// <summary>Shape and conducting lengths, such as <c>slab, 25 mm to the farthest point</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{_name}, {string.Join(" × ", Directions.Select(d => Numbers.Significant(1000 * d.Metres, 4)))} mm to the warmest point";

    private static Direction Across(Length thickness, ExposedFaces faces, string name)
    {
        double metres = BodyMetres(thickness, name);
        return new(ConductionShape.Slab, Guard.Defined((int)faces, (int)ExposedFaces.Both, nameof(faces)) == (int)ExposedFaces.One ? metres : metres / 2);
    }

    private static Direction Round(ConductionShape shape, Length diameter, string name) => new(shape, BodyMetres(diameter, name) / 2);

    private static double BodyMetres(Length length, string name) => Guard.InRange(Guard.Metres(length, name), 1e-6, 10, "m", name);

    /// <summary>A shape and the way from its centre or insulated face to the surface.</summary>
    internal readonly record struct Direction(ConductionShape Shape, double Metres);
}
