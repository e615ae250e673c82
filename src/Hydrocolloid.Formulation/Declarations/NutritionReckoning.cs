using Hydrocolloid.Formulation.Catalogues;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>The nutrition declaration: sums over the lines by what each counts for.</summary>
internal static class NutritionReckoning
{
    // Regulation (EU) No 1169/2011, Annex I: salt = sodium × 2.5.
    private const double SaltPerSodium = 2.5;

    private static readonly Nutrient[] s_european =
    [
        Nutrient.Kilojoules, Nutrient.Kilocalories, Nutrient.Fat, Nutrient.Saturates, Nutrient.Carbohydrate, Nutrient.Sugars, Nutrient.Polyols, Nutrient.Fibre,
        Nutrient.Protein, Nutrient.Salt,
    ];

    private static readonly Nutrient[] s_american =
    [
        Nutrient.Kilocalories, Nutrient.Fat, Nutrient.Saturates, Nutrient.Sodium, Nutrient.Carbohydrate, Nutrient.Fibre, Nutrient.Sugars, Nutrient.Polyols, Nutrient.Protein,
    ];

    public static ValueList<DeclaredNutrient> Of(LabelledLine[] lines, LabelMarket market, double? portionGrams)
    {
        bool american = market == LabelMarket.UnitedStates;
        (LabelledLine Line, LineNutrients Holds)[] parts = [.. lines.Where(l => l.Grams > 0).Select(l => (l, LineNutrients.Of(l)))];
        return ValueList<DeclaredNutrient>.From((american ? s_american : s_european)
            .Select(kind => Row(kind, parts, american, portionGrams))
            .Where(row => row.Kind != Nutrient.Polyols || row.Per100Grams > 0));
    }

    private static DeclaredNutrient Row(Nutrient kind, (LabelledLine Line, LineNutrients Holds)[] parts, bool american, double? portionGrams)
    {
        double per100 = 0;
        bool estimated = false;
        var without = new List<string>();
        foreach ((LabelledLine line, LineNutrients holds) in parts)
        {
            if (Amount(kind, holds, american) is not { } amount)
            {
                without.Add(line.Id);
                continue;
            }

            per100 += line.Share * amount;
            estimated |= holds.Estimated && amount > 0;
        }

        double? perPortion = per100 * portionGrams / 100;
        string Text(double value)
        {
            string rounded = american ? LabelRounding.Us(kind, value) : LabelRounding.Eu(kind, value);
            // "At least next to nothing" would read as nothing.
            return without.Count == 0 ? rounded : (rounded[0] is '0' or '<' or 'l') && !rounded.StartsWith("0.", StringComparison.Ordinal) ? "not known" : "at least " + rounded;
        }

        return new DeclaredNutrient(kind, UnitOf(kind), per100, perPortion, Text(per100), perPortion is { } p ? Text(p) : null, ValueList<string>.From(without), estimated);
    }

    private static double? Amount(Nutrient kind, LineNutrients holds, bool american) => kind switch
    {
        Nutrient.Kilojoules => EuEnergy(holds, f => f.KilojoulesPerGram),
        Nutrient.Kilocalories => american ? UsEnergy(holds) : EuEnergy(holds, f => f.KilocaloriesPerGram),
        Nutrient.Fat => holds.Fat,
        Nutrient.Saturates => holds.Saturates,
        Nutrient.Carbohydrate => american ? holds.Carbohydrate + holds.Fibre + holds.OrganicAcids : holds.Carbohydrate,
        Nutrient.Sugars => holds.Sugars,
        Nutrient.Polyols => holds.Polyols + holds.Erythritol,
        Nutrient.Fibre => holds.Fibre,
        Nutrient.Protein => holds.Protein,
        Nutrient.Salt => holds.SodiumMg * SaltPerSodium / 1000,
        _ => holds.SodiumMg,
    };

    private static string UnitOf(Nutrient kind) => kind switch
    {
        Nutrient.Kilojoules => "kJ",
        Nutrient.Kilocalories => "kcal",
        Nutrient.Sodium => "mg",
        _ => "g",
    };

    // Regulation (EU) No 1169/2011, Annex XIV.
    private static double? EuEnergy(LineNutrients holds, Func<EnergyFactor, double> unit)
    {
        double Factor(string part) => unit(BuiltInCatalogue.Labelling.EuEnergy[part].Value);
        return (holds.Carbohydrate - holds.Polyols - holds.Erythritol) * Factor("carbohydrate") + holds.Polyols * Factor("polyols") + holds.Erythritol * Factor("erythritol")
            + holds.Fibre * Factor("fibre") + holds.Protein * Factor("protein") + holds.Fat * Factor("fat")
            + holds.OrganicAcids * Factor("organic-acids") + holds.Ethanol * Factor("ethanol");
    }

    // 21 CFR 101.9(c)(1)(i): carbohydrate by difference holds the organic acids; erythritol counts nothing.
    private static double? UsEnergy(LineNutrients holds)
    {
        double Factor(string part) => BuiltInCatalogue.Labelling.UsEnergy[part].Value.KilocaloriesPerGram;
        return (holds.Carbohydrate + holds.OrganicAcids - holds.Polyols - holds.Erythritol) * Factor("carbohydrate") + holds.Polyols * holds.UsPolyolKilocalories
            + holds.Fibre * Factor("fibre") + holds.Protein * Factor("protein") + holds.Fat * Factor("fat") + holds.Ethanol * Factor("ethanol");
    }
}
