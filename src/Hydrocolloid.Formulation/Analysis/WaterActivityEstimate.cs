using Hydrocolloid.Formulation.Chemistry;

namespace Hydrocolloid.Formulation.Analysis;

/// <summary>Water activity of a mix by the Ross equation, from the solutes that lower it.</summary>
internal static class WaterActivityEstimate
{
    // All sodium is counted as salt.
    private static readonly double SaltPerSodium = Reagents.SodiumChloride.MolarMassGramsPerMol / MixContents.GramsPerMolSodium;

    // A trace of water in dry sugar: far beyond the range of the relation, which it says.
    private const double MostGramsPer100GWater = 100_000;

    // What is dissolved and not counted lowers water activity by less than the error of the relation, up to so much per 100 g of water.
    private const double MostSaltUncounted = 1;
    private const double MostElseUncounted = 3;

    /// <summary>Sweetened with table sugar, by their nature.</summary>
    private static readonly HashSet<string> SweetenedWithSucrose = new(StringComparer.Ordinal)
    {
        "sucrose", "elderflower-cordial", "lime-cordial", "cranberry-juice-cocktail", "almond-drink-sweetened", "coffee-liqueur", "liqueur-25", "plum-liqueur", "chocolate-dark",
    };

    private static readonly HashSet<string> DrySugarsOfHexose = new(StringComparer.Ordinal) { "dextrose", "fructose" };

    public static Reckoned Of(MixLine[] lines, Reckoned water, Reckoned ethanol, ValueList<string> without)
    {
        double sucrose = 0, hexose = 0, glycerol = 0, sorbitol = 0, sodium = 0;
        List<string>? uncounted = null;
        foreach (MixLine line in lines)
        {
            double sugars = line.Share * (line.Part(c => c.SugarsPercent) ?? 0);
            string id = (line.Ingredient.BasedOn ?? line.Ingredient).Id;
            if (id == "glycerol")
            {
                glycerol += line.Share * 100;
            }
            else if (id == "sorbitol")
            {
                sorbitol += line.Share * 100;
            }
            else if (IsDisaccharide(line, id))
            {
                sucrose += sugars;
            }
            else
            {
                hexose += sugars;
            }

            sodium += line.Share * (line.Part(c => c.SodiumMg) ?? 0) / 1000;
            (double grams, double most) = Uncounted(line, id);
            if (grams * line.Share > most * water.Value / 100)
            {
                (uncounted ??= []).Add(line.Label);
            }
        }

        if (uncounted is not null)
        {
            without = ValueList<string>.From(without.Concat(uncounted).Distinct(StringComparer.Ordinal));
        }

        if (!(water.Value > 0))
        {
            return new Reckoned(double.NaN, "water activity", ReckonedHow.Estimated, "no water", null, without);
        }

        double Per100GWater(double percent) => Math.Min(MostGramsPer100GWater, percent / water.Value * 100);
        Computed<double> activity = Chemistry.WaterActivity.Ross(
        [
            new SoluteAmount(Solute.Sucrose, Per100GWater(sucrose)),
            new SoluteAmount(Solute.Glucose, Per100GWater(hexose)),
            new SoluteAmount(Solute.Glycerol, Per100GWater(glycerol)),
            new SoluteAmount(Solute.Sorbitol, Per100GWater(sorbitol)),
            new SoluteAmount(Solute.SodiumChloride, Per100GWater(sodium * SaltPerSodium)),
        ]);
        return new Reckoned(activity.Value, "water activity", ReckonedHow.Estimated, "Ross equation over sugars, glycerol, sorbitol and salt, 25 °C",
            activity.Outside ?? OutsideRange.Check("ethanol", ethanol.Value, "% by weight", 0, 1), without);
    }

    /// <summary>
    /// Table sugar, what is sweetened with it, an own dry sugar that says no more of itself, and the lactose of milk, which is as large; the sugars of fruit, honey and syrups are
    /// taken as glucose and fructose, which share a constant.
    /// </summary>
    private static bool IsDisaccharide(MixLine line, string id) => SweetenedWithSucrose.Contains(id) || line.Ingredient.MilkProtein?.Value is { Casein: true } or { Whey: true }
        || (line.Ingredient.Composition?.Value is { WaterPercent: < 5, SugarsPercent: > 90 } && !DrySugarsOfHexose.Contains(id));

    /// <summary>Dissolved in the line and without a constant, per 100 g of it, and how much of that does not matter.</summary>
    private static (double Grams, double Most) Uncounted(MixLine line, string id)
    {
        Composition? c = line.Ingredient.Composition?.Value;
        return line.Ingredient.Category is "salt" or "acid" or "mineral"
            ? (id == "salt" ? 0 : 100 - (c?.WaterPercent ?? 0), MostSaltUncounted)
            : ((c?.OrganicAcidsPercent ?? 0) + (line.Ingredient.Category == "sweetener" && id is not ("glycerol" or "sorbitol") ? c?.OtherCarbohydratePercent ?? 0 : 0), MostElseUncounted);
    }
}
