using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>The inside of a mould's cavity, and what it holds to any depth, by plain geometry. Immutable, equal by content.</summary>
public sealed record MouldShape
{
    private const double MaxMetres = 10;

    private MouldShape(MouldForm form, double topLength, double topWidth, double bottomLength, double bottomWidth, double height)
    {
        Form = form;
        TopLengthMetres = topLength;
        TopWidthMetres = topWidth;
        BottomLengthMetres = bottomLength;
        BottomWidthMetres = bottomWidth;
        HeightMetres = height;
    }

    /// <summary>The form.</summary>
    public MouldForm Form { get; }

    /// <summary>How deep it is.</summary>
    public Length Height => Length.FromMeters(HeightMetres);

    /// <summary>What it holds to the brim.</summary>
    public Volume Volume => Volume.FromCubicMeters(CubicMetresTo(HeightMetres));

    internal double TopLengthMetres { get; }

    internal double TopWidthMetres { get; }

    internal double BottomLengthMetres { get; }

    internal double BottomWidthMetres { get; }

    internal double HeightMetres { get; }

    /// <summary>A ball.</summary>
    /// <param name="diameter">Above 0 and up to 10 m.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static MouldShape Sphere(Length diameter) => Round(MouldForm.Sphere, Checked(diameter, nameof(diameter)), 1);

    /// <summary>Half a ball.</summary>
    /// <param name="diameter">Above 0 and up to 10 m.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static MouldShape Hemisphere(Length diameter) => Round(MouldForm.Hemisphere, Checked(diameter, nameof(diameter)), 0.5);

    /// <summary>A round cavity with upright wall.</summary>
    /// <param name="diameter">Above 0 and up to 10 m.</param>
    /// <param name="height">Above 0 and up to 10 m.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static MouldShape Cylinder(Length diameter, Length height)
    {
        double d = Checked(diameter, nameof(diameter));
        return new MouldShape(MouldForm.Cylinder, d, d, d, d, Checked(height, nameof(height)));
    }

    /// <summary>A round cavity with sloping wall.</summary>
    /// <param name="top">Diameter at the brim; above 0 and up to 10 m.</param>
    /// <param name="bottom">Diameter at the bottom; above 0 and up to 10 m.</param>
    /// <param name="height">Above 0 and up to 10 m.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static MouldShape Frustum(Length top, Length bottom, Length height)
    {
        double wide = Checked(top, nameof(top)), narrow = Checked(bottom, nameof(bottom));
        return new MouldShape(MouldForm.Frustum, wide, wide, narrow, narrow, Checked(height, nameof(height)));
    }

    /// <summary>A rectangular cavity with upright walls.</summary>
    /// <param name="length">Above 0 and up to 10 m.</param>
    /// <param name="width">Above 0 and up to 10 m.</param>
    /// <param name="height">Above 0 and up to 10 m.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static MouldShape Block(Length length, Length width, Length height)
    {
        double l = Checked(length, nameof(length)), w = Checked(width, nameof(width));
        return new MouldShape(MouldForm.Block, l, w, l, w, Checked(height, nameof(height)));
    }

    /// <summary>A rectangular cavity with sloping walls.</summary>
    /// <param name="topLength">Length at the brim; above 0 and up to 10 m.</param>
    /// <param name="topWidth">Width at the brim; above 0 and up to 10 m.</param>
    /// <param name="bottomLength">Length at the bottom; above 0 and up to 10 m.</param>
    /// <param name="bottomWidth">Width at the bottom; above 0 and up to 10 m.</param>
    /// <param name="height">Above 0 and up to 10 m.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static MouldShape TaperedBlock(Length topLength, Length topWidth, Length bottomLength, Length bottomWidth, Length height) => new(
        MouldForm.TaperedBlock, Checked(topLength, nameof(topLength)), Checked(topWidth, nameof(topWidth)),
        Checked(bottomLength, nameof(bottomLength)), Checked(bottomWidth, nameof(bottomWidth)), Checked(height, nameof(height)));

    /// <summary>Half a log.</summary>
    /// <param name="diameter">Above 0 and up to 10 m.</param>
    /// <param name="length">Above 0 and up to 10 m.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static MouldShape HalfCylinder(Length diameter, Length length)
    {
        double d = Checked(diameter, nameof(diameter)), l = Checked(length, nameof(length));
        return new MouldShape(MouldForm.HalfCylinder, l, d, l, d, d / 2);
    }

    /// <summary>What it holds when filled to a depth.</summary>
    /// <param name="depth">From the bottom; 0 to <see cref="Height"/>.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is outside its range.</exception>
    public Volume VolumeTo(Length depth) => Volume.FromCubicMeters(CubicMetresTo(Depth(depth, nameof(depth))));

    /// <summary>What a layer between two depths holds.</summary>
    /// <param name="from">Where the layer begins, from the bottom.</param>
    /// <param name="to">Where it ends; not below <paramref name="from"/>, at most <see cref="Height"/>.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A depth is outside its range.</exception>
    public Volume VolumeBetween(Length from, Length to)
    {
        double low = Depth(from, nameof(from));
        double high = Guard.InRange(Guard.Metres(to), low, HeightMetres, "m", nameof(to));
        return Volume.FromCubicMeters(CubicMetresTo(high) - CubicMetresTo(low));
    }

    /// <summary>How deep a volume stands in it.</summary>
    /// <param name="volume">0 to <see cref="Volume"/>.</param>
    /// <returns>The depth, from the bottom.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is outside its range.</exception>
    public Length DepthOf(Volume volume)
    {
        double full = CubicMetresTo(HeightMetres);
        double wanted = Guard.InRange(Guard.Millilitres(volume) / 1e6, 0, full * (1 + 1e-12), "m³", nameof(volume));
        return Length.FromMeters(wanted <= 0 ? 0 : wanted >= full ? HeightMetres
            : Brent.FindRoot(h => CubicMetresTo(h) - wanted, 0, HeightMetres, accuracy: 1e-12 * HeightMetres, maxIterations: 200));
    }

    /// <summary>The form and its measures in mm.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Form switch
    {
        MouldForm.Sphere => $"sphere of {Millimetres(TopLengthMetres)} mm",
        MouldForm.Hemisphere => $"hemisphere of {Millimetres(TopLengthMetres)} mm",
        MouldForm.Cylinder => $"cylinder of {Millimetres(TopLengthMetres)} mm, {Millimetres(HeightMetres)} mm deep",
        MouldForm.Frustum => $"frustum of {Millimetres(TopLengthMetres)} to {Millimetres(BottomLengthMetres)} mm, {Millimetres(HeightMetres)} mm deep",
        MouldForm.Block => $"block of {Millimetres(TopLengthMetres)} × {Millimetres(TopWidthMetres)} mm, {Millimetres(HeightMetres)} mm deep",
        MouldForm.TaperedBlock => $"tapered block of {Millimetres(TopLengthMetres)} × {Millimetres(TopWidthMetres)} to "
            + $"{Millimetres(BottomLengthMetres)} × {Millimetres(BottomWidthMetres)} mm, {Millimetres(HeightMetres)} mm deep",
        _ => $"half cylinder of {Millimetres(TopWidthMetres)} mm, {Millimetres(TopLengthMetres)} mm long",
    };

    private static string Millimetres(double metres) => Numbers.Significant(metres * 1000, 5);

    private static MouldShape Round(MouldForm form, double diameter, double heightPerDiameter)
        => new(form, diameter, diameter, diameter, diameter, diameter * heightPerDiameter);

    private static double Checked(Length length, string name) => Guard.InRange(Guard.Metres(length, name), 1e-6, MaxMetres, "m", name);

    private double Depth(Length depth, string name) => Guard.InRange(Guard.Metres(depth, name), 0, HeightMetres, "m", name);

    private double CubicMetresTo(double h)
    {
        double r = TopWidthMetres / 2;
        switch (Form)
        {
            case MouldForm.Sphere or MouldForm.Hemisphere:
                return Math.PI * h * h * (3 * r - h) / 3; // a cap of height h
            case MouldForm.HalfCylinder:
                // A segment of the circle, times the length.
                return TopLengthMetres * Math.Max(0, r * r * Math.Acos((r - h) / r) - (r - h) * Math.Sqrt(Math.Max(0, 2 * r * h - h * h)));
            default:
                // The prismatoid formula: V = h/6 (A₁ + 4 A½ + A₂), exact for straight walls.
                double part = h / HeightMetres;
                return h / 6 * (AreaAt(0) + 4 * AreaAt(part / 2) + AreaAt(part));
        }
    }

    private double AreaAt(double part)
    {
        double length = BottomLengthMetres + (TopLengthMetres - BottomLengthMetres) * part;
        double width = BottomWidthMetres + (TopWidthMetres - BottomWidthMetres) * part;
        return length * width * (Form is MouldForm.Cylinder or MouldForm.Frustum ? Math.PI / 4 : 1);
    }
}
