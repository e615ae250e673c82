using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Reads the shape of a mould: the form decides which measures must stand there, and no others may.</summary>
internal static class MouldShapeReader
{
    public static MouldShape? Read(FormulaDto.ShapePart part, DocumentChecks checks, string path)
    {
        if (!Words.TryMouldForm(part.Form, out MouldForm form))
        {
            checks.Unknown(part.Form, Words.MouldFormList, DocumentPlace.Whole, path + "/form");
            return null;
        }

        (string Name, FormulaDto.Quantity? Given)[] all =
        [
            ("diameter", part.Diameter), ("bottomDiameter", part.BottomDiameter), ("length", part.Length), ("width", part.Width),
            ("bottomLength", part.BottomLength), ("bottomWidth", part.BottomWidth), ("height", part.Height),
        ];
        string[] needed = Measures(form);
        if (all.Any(m => m.Given is not null != needed.Contains(m.Name)))
        {
            checks.Report("shape-unclear", DocumentPlace.Whole, path, $"A {Words.Of(form)} has these measures and no others: {string.Join(", ", needed)}.");
            return null;
        }

        double?[] metres = [.. needed.Select(n => checks.Quantity(all.First(m => m.Name == n).Given, QuantityKind.Length, 1e-6, 10, DocumentPlace.Whole, path + "/" + n))];
        return metres.All(m => m is not null) ? Make(form, [.. metres.Select(m => Length.FromMeters(m!.Value))]) : null;
    }

    /// <summary>The measures of a form, in the order of its factory.</summary>
    public static string[] Measures(MouldForm form) => form switch
    {
        MouldForm.Sphere or MouldForm.Hemisphere => ["diameter"],
        MouldForm.Cylinder => ["diameter", "height"],
        MouldForm.Frustum => ["diameter", "bottomDiameter", "height"],
        MouldForm.Block => ["length", "width", "height"],
        MouldForm.TaperedBlock => ["length", "width", "bottomLength", "bottomWidth", "height"],
        _ => ["diameter", "length"],
    };

    /// <summary>The measures of a shape in m, in the order of <see cref="Measures"/>.</summary>
    public static double[] MetresOf(MouldShape shape) => shape.Form switch
    {
        MouldForm.Sphere or MouldForm.Hemisphere => [shape.TopLengthMetres],
        MouldForm.Cylinder => [shape.TopLengthMetres, shape.HeightMetres],
        MouldForm.Frustum => [shape.TopLengthMetres, shape.BottomLengthMetres, shape.HeightMetres],
        MouldForm.Block => [shape.TopLengthMetres, shape.TopWidthMetres, shape.HeightMetres],
        MouldForm.TaperedBlock => [shape.TopLengthMetres, shape.TopWidthMetres, shape.BottomLengthMetres, shape.BottomWidthMetres, shape.HeightMetres],
        _ => [shape.TopWidthMetres, shape.TopLengthMetres],
    };

    private static MouldShape Make(MouldForm form, Length[] m) => form switch
    {
        MouldForm.Sphere => MouldShape.Sphere(m[0]),
        MouldForm.Hemisphere => MouldShape.Hemisphere(m[0]),
        MouldForm.Cylinder => MouldShape.Cylinder(m[0], m[1]),
        MouldForm.Frustum => MouldShape.Frustum(m[0], m[1], m[2]),
        MouldForm.Block => MouldShape.Block(m[0], m[1], m[2]),
        MouldForm.TaperedBlock => MouldShape.TaperedBlock(m[0], m[1], m[2], m[3], m[4]),
        _ => MouldShape.HalfCylinder(m[0], m[1]),
    };
}
