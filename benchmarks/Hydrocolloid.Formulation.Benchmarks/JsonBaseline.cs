using System.Text.Json.Serialization;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>The formula document as plain classes, for a serializer that checks nothing.</summary>
internal static class JsonBaseline
{
    /// <summary>The twelve lines with every reference one of the words, which is the shape a plain class can hold.</summary>
    public static Formula TwelveLinesWithWordsOnly()
    {
        Formula formula = TwelveLines.Build();
        foreach (FormulaLine line in formula.Lines.Where(l => l.Dose.Reference.Kind == DoseReferenceKind.Line))
        {
            formula = formula.Reexpress(line.Label, DoseReference.Base);
        }

        return formula;
    }

    public static PlainDocument From(Formula formula) => new(
        "hydrocolloid-formula",
        1,
        formula.Name,
        [.. formula.Base.Parts.Select(p => new PlainPart(p.Ingredient.Id, p.PercentOfBase))],
        [.. formula.Phases.Select(p => new PlainPhase(p.Name,
            [.. p.Additions.Select(a => new PlainAddition(a.Ingredient.Id, a.Dose.PercentByMass, Word(a.Dose.Reference.Kind)))]))]);

    private static string Word(DoseReferenceKind kind) => kind switch
    {
        DoseReferenceKind.Base => "base",
        DoseReferenceKind.Preceding => "preceding",
        DoseReferenceKind.Total => "total",
        _ => "water",
    };

    internal sealed record PlainDocument(string Format, int Version, string Name, PlainPart[] Base, PlainPhase[] Phases);

    internal sealed record PlainPart(string Ingredient, double Percent);

    internal sealed record PlainPhase(string Name, PlainAddition[] Add);

    internal sealed record PlainAddition(string Ingredient, double Percent, string Of);
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(JsonBaseline.PlainDocument))]
internal sealed partial class PlainContext : JsonSerializerContext;
