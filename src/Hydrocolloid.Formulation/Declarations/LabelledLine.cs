using Hydrocolloid.Formulation.Analysis;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>A line of a batch with what the label says of it.</summary>
internal sealed class LabelledLine(BatchLine line, LineLabel label, double foodGrams)
{
    private readonly MixLine _mix = new(line.Line, 1);

    public string Id => line.Line.Label;

    public Ingredient Ingredient => line.Line.Ingredient;

    public LineLabel Label { get; } = label;

    public double Grams => line.Grams;

    /// <summary>Its part of the food after evaporation, 0 to 1 and more.</summary>
    public double Share => line.Grams / foodGrams;

    public bool IsAddedWater => Ingredient.Category == "water";

    /// <summary>A hydrocolloid of which nobody has stated what its powder holds.</summary>
    public bool IsPlainPowder => Ingredient.Profile is not null && Ingredient.Composition is null;

    /// <summary>All the words that may name an allergen of it.</summary>
    public string Wording => string.Join(", ", new[] { Label.Name ?? Ingredient.Name }.Concat(Label.MadeOf));

    /// <summary>A part of its composition, per 100 g; null if it is not known.</summary>
    public double? Part(Func<Composition, double?> part) => _mix.Part(part);

    /// <summary>The ingredient and those it was made from.</summary>
    public IEnumerable<string> Ids()
    {
        for (Ingredient? i = Ingredient; i is not null; i = i.BasedOn)
        {
            yield return i.Id;
        }
    }
}
