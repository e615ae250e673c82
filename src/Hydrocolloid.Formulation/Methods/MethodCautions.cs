using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>The usual cautions of a formula's work. They defer to the local food code and to licensed people.</summary>
internal static class MethodCautions
{
    // Common practice, no source: from here on a splash is treated as a scald.
    private const double ScaldsAboveCelsius = 60;

    public static ValueList<Caution> For(Formula formula, double hottestCelsius)
    {
        var cautions = new List<Caution>();
        if (hottestCelsius >= ScaldsAboveCelsius)
        {
            cautions.Add(Practice(CautionKind.HotLiquid,
                $"The mix is heated to {Numbers.Significant(hottestCelsius, 4)} °C: hot sols and syrups stick to the skin and burn. Do not fill a closed jug blender with them."));
        }

        FormulaLine[] alcohol = [.. formula.Lines.Where(l => l.Ingredient.Composition?.Value.EthanolPercent > 0)];
        if (alcohol.Length > 0)
        {
            cautions.Add(Practice(CautionKind.Flammable,
                "Contains alcohol: its vapour can catch fire when it is heated. Keep flames away, ventilate, and tell guests.", alcohol));
        }

        AddAllergens(formula, cautions);
        cautions.Add(Practice(CautionKind.Perishable,
            "A water-rich gel spoils like the food it is made from: cool it quickly, keep it cold and covered, and follow the local food code; this plan is no safety assessment."));

        foreach (IGrouping<Cited<string>, FormulaLine> caution in formula.Lines
            .SelectMany(l => l.Ingredient.Cautions.Select(c => (Line: l, Caution: c))).GroupBy(x => x.Caution, x => x.Line))
        {
            cautions.Add(new Caution(CautionKind.Ingredient, caution.Key, Labels(caution)));
        }

        return ValueList<Caution>.From(cautions);
    }

    private static void AddAllergens(Formula formula, List<Caution> cautions)
    {
        foreach (IGrouping<Allergen, FormulaLine> allergen in formula.Lines
            .SelectMany(l => (l.Ingredient.Allergens?.Value ?? default).Select(a => (Line: l, Allergen: a)))
            .GroupBy(x => x.Allergen, x => x.Line).OrderBy(g => g.Key))
        {
            cautions.Add(new Caution(CautionKind.Allergens,
                new Cited<string>($"Contains {Words.Of(allergen.Key)} ({string.Join(", ", allergen.Select(l => l.Ingredient.Name))}).", allergen.First().Ingredient.Allergens!.Citation),
                Labels(allergen)));
        }

        FormulaLine[] unknown = [.. formula.Lines.Where(l => l.Ingredient.Allergens is null)];
        if (unknown.Length > 0)
        {
            cautions.Add(Practice(CautionKind.Allergens,
                $"Allergens not known, ask the supplier: {string.Join(", ", unknown.Select(l => l.Ingredient.Name))}.", unknown));
        }
    }

    private static Caution Practice(CautionKind kind, string text, params FormulaLine[] lines)
        => new(kind, new Cited<string>(text, Citation.CommonPractice), Labels(lines));

    private static ValueList<string> Labels(IEnumerable<FormulaLine> lines) => ValueList<string>.From(lines.Select(l => l.Label));
}
