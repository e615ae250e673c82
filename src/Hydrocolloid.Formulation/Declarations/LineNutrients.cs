using Hydrocolloid.Formulation.Catalogues;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>What 100 g of a line count for in a nutrition declaration, in g; a part that is null is unknown, not zero.</summary>
internal sealed record LineNutrients
{
    /// <summary>Sugars and other carbohydrate, polyols included, without the organic acids that are known.</summary>
    public double? Carbohydrate => Sugars + OtherCarbohydrate;

    public double? Sugars { get; private init; }

    public double? OtherCarbohydrate { get; private init; }

    public double Polyols { get; private init; }

    public double Erythritol { get; private init; }

    public double? Fibre { get; private init; }

    public double? Protein { get; private init; }

    public double? Fat { get; private init; }

    public double? Saturates { get; private init; }

    public double? OrganicAcids { get; private init; }

    public double? Ethanol { get; private init; }

    public double? SodiumMg { get; private init; }

    /// <summary>What the polyols count in the United States, kcal/g.</summary>
    public double UsPolyolKilocalories { get; private init; }

    public bool Estimated { get; private init; }

    public static LineNutrients Of(LabelledLine line)
    {
        if (line.IsPlainPowder)
        {
            string part = DryAs(line);
            return new LineNutrients
            {
                Sugars = 0,
                OtherCarbohydrate = part == "carbohydrate" ? 100 : 0,
                Fibre = part == "fibre" ? 100 : 0,
                Protein = part == "protein" ? 100 : 0,
                Fat = 0,
                Saturates = 0,
                OrganicAcids = 0,
                Ethanol = 0,
                Estimated = true,
            };
        }

        double? other = line.Part(c => c.OtherCarbohydratePercent);
        double? acids = line.Part(c => c.OrganicAcidsPercent);
        if (acids is null && other is { } withAcids)
        {
            // Carbohydrate by difference holds the acids; what titration finds of them is moved over.
            acids = Math.Min(line.Ingredient.TitratableAcidity?.Value.Percent ?? 0, withAcids);
            other = withAcids - acids;
        }

        Cited<EnergyFactor>? polyol = line.Ids().Select(id => BuiltInCatalogue.Labelling.Polyols.TryGetValue(id, out Cited<EnergyFactor>? f) ? f : null).FirstOrDefault(f => f is not null);
        double? fat = line.Part(c => c.FatPercent);
        return new LineNutrients
        {
            Sugars = line.Part(c => c.SugarsPercent),
            OtherCarbohydrate = other,
            Polyols = line.Label.PolyolsPercent ?? (polyol is null ? 0 : other ?? 0),
            Erythritol = line.Label.ErythritolPercent ?? 0,
            Fibre = line.Part(c => c.FibrePercent),
            Protein = line.Part(c => c.ProteinPercent),
            Fat = fat,
            Saturates = line.Label.SaturatesPercent ?? (fat == 0 ? 0 : null),
            OrganicAcids = acids,
            Ethanol = line.Part(c => c.EthanolPercent),
            SodiumMg = line.Part(c => c.SodiumMg),
            UsPolyolKilocalories = (polyol ?? BuiltInCatalogue.Labelling.UsEnergy["carbohydrate"]).Value.KilocaloriesPerGram,
        };
    }

    private static string DryAs(LabelledLine line)
        => (BuiltInCatalogue.Labelling.DryAs.FirstOrDefault(d => line.Ids().Any(d.Entries.Contains)) ?? BuiltInCatalogue.Labelling.DryAs.First(d => d.Entries.IsEmpty)).Part.Value;
}
