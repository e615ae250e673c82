using CsCheck;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Moulds;

/// <summary>The volumes of shapes: plain geometry; the check values (vol-…) are worked out by hand from the formulas of solids.</summary>
public sealed class MouldShapeTests
{
    public static TheoryData<string, MouldShape, double, double> Volumes => new()
    {
        { "vol-hemisphere-60", MouldShape.Hemisphere(Mm(60)), 56.55, 0.01 },
        { "vol-sphere-25", MouldShape.Sphere(Mm(25)), 8.181, 0.001 },
        { "vol-cylinder", MouldShape.Cylinder(Mm(70), Mm(40)), 153.94, 0.01 },
        { "vol-pyramid-frustum", MouldShape.TaperedBlock(Mm(70), Mm(70), Mm(50), Mm(50), Mm(40)), 145.33, 0.01 },
        { "vol-cone-frustum", MouldShape.Frustum(Mm(70), Mm(50), Mm(45)), 128.41, 0.01 },
        { "half a log is half a cylinder", MouldShape.HalfCylinder(Mm(70), Mm(40)), 153.94 / 2, 0.01 },
        { "block", MouldShape.Block(Mm(200), Mm(100), Mm(30)), 600, 1e-9 },
    };

    [Theory, MemberData(nameof(Volumes))]
    public void Volume_to_the_brim(string id, MouldShape shape, double millilitres, double tolerance)
        => shape.Volume.Milliliters.Should().BeApproximately(millilitres, tolerance, id);

    [Fact]
    public void A_cap_of_a_ball() // vol-cap: r 30 mm, h 10 mm, 8.378 mL ± 0.001
        => MouldShape.Sphere(Mm(60)).VolumeTo(Mm(10)).Milliliters.Should().BeApproximately(8.378, 0.001);

    [Theory, MemberData(nameof(Volumes))]
    public void Depth_is_the_inverse_of_volume_and_layers_add_up(string id, MouldShape shape, double millilitres, double tolerance)
    {
        _ = (id, millilitres, tolerance);
        Gen.Double[0, 1].Sample(part =>
        {
            Length depth = shape.Height * part;
            Volume below = shape.VolumeTo(depth);
            shape.DepthOf(below).Millimeters.Should().BeApproximately(depth.Millimeters, 1e-4 * shape.Height.Millimeters);
            (below + shape.VolumeBetween(depth, shape.Height)).Milliliters.Should().BeApproximately(shape.Volume.Milliliters, 1e-9 * shape.Volume.Milliliters);
        }, iter: 200);
    }

    [Fact]
    public void Lengths_out_of_range_are_refused()
    {
        FluentActions.Invoking(() => MouldShape.Sphere(Mm(0))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => MouldShape.Cylinder(Mm(-1), Mm(10))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => MouldShape.Cylinder(Mm(10), Length.FromMeters(double.NaN))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => MouldShape.Cylinder(Mm(10), Mm(10)).VolumeTo(Mm(11))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => MouldShape.Cylinder(Mm(10), Mm(10)).DepthOf(Volume.FromLiters(1))).Should().Throw<ArgumentOutOfRangeException>();
    }

    /// <summary>gn-11-65-volume: a supplier's bulletin, 7.4 L ± 0.1; pan-scale: half the plan area, 0.5 by design.</summary>
    [Fact]
    public void Gastronorm_pans()
    {
        Gastronorm.Pan("1/1", 65).UsableLitres.Value.Should().BeApproximately(7.4, 0.1);
        GastronormPan whole = Gastronorm.Pan("1/1", 65), half = Gastronorm.Pan("1/2", 65);
        (half.Length.Millimeters * half.Width.Millimeters / (whole.Length.Millimeters * whole.Width.Millimeters)).Should().BeApproximately(0.5, 1e-4);
        Gastronorm.Pans.Should().OnlyContain(p => p.UsableLitres.Value < p.ToMould().Shape!.Volume.Liters, "the walls take something of the outer measures");
        FluentActions.Invoking(() => Gastronorm.Pan("1/1", 66)).Should().Throw<KeyNotFoundException>().WithMessage("*1/1*65*");
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
