using Hydrocolloid.Formulation.Chemistry;

namespace Hydrocolloid.Formulation.Analysis;

/// <summary>The catalogue's salts and acids as the chemistry knows them.</summary>
internal static class PureSubstances
{
    /// <summary>What an acidity is counted as that is the sum of several acids; one of them stands for all, which is an estimate.</summary>
    public const string Mixed = "mixed";

    // Analyses of a lot stray so far from the formula.
    private const double MostOver = 1.1;

    private static readonly Func<Composition, double?>[] Marks = [c => c.CalciumMg, c => c.SodiumMg, c => c.PotassiumMg, c => c.OrganicAcidsPercent];

    private static readonly Dictionary<string, Reagent> ById = new(StringComparer.Ordinal)
    {
        ["citric-acid"] = Reagents.CitricAcid,
        ["salt"] = Reagents.SodiumChloride,
        ["potassium-chloride"] = Reagents.PotassiumChloride,
        ["sodium-citrate"] = Reagents.TrisodiumCitrateDihydrate,
        ["tetrasodium-pyrophosphate"] = Reagents.TetrasodiumPyrophosphate,
        ["calcium-chloride"] = Reagents.CalciumChlorideDihydrate,
        ["calcium-chloride-anhydrous"] = Reagents.CalciumChloride,
        ["calcium-lactate"] = Reagents.CalciumLactatePentahydrate,
        ["calcium-gluconate"] = Reagents.CalciumGluconateMonohydrate,
        ["calcium-lactate-gluconate"] = Reagents.CalciumLactateGluconate,
        ["calcium-carbonate"] = Reagents.CalciumCarbonate,
        ["calcium-sulphate"] = Reagents.CalciumSulphateDihydrate,
    };

    private static readonly Dictionary<string, Acid> AcidByName = new(StringComparer.Ordinal)
    {
        ["citric"] = Acids.Citric,
        ["malic"] = Acids.Malic,
        ["tartaric"] = Acids.Tartaric,
        ["lactic"] = Acids.Lactic,
        ["acetic"] = Acids.Acetic,
        ["oxalic"] = Acids.Oxalic,
        ["succinic"] = Acids.Succinic,
        ["gluconic"] = Acids.Gluconic,
        [Mixed] = Acids.Malic, // of the acids of fruit and of fermentation it is the one in the middle, by its constants and by its equivalent mass
    };

    public static Reagent? Find(Ingredient ingredient) => ById.TryGetValue((ingredient.BasedOn ?? ingredient).Id, out Reagent? reagent) ? reagent : null;

    /// <summary>
    /// How much of an ingredient is the pure substance it was made from, and how much is water beside it, each 0 to 1: a solution of a salt holds as much of it as its
    /// calcium, sodium, potassium or acid says. Null if its composition does not tell.
    /// </summary>
    public static (double Pure, double Water)? PartsOf(Ingredient ingredient)
    {
        if (ingredient.BasedOn is not { Composition.Value: var pure } || ingredient.Composition?.Value is not { } own || ReferenceEquals(own, pure))
        {
            return (1, 0);
        }

        foreach (Func<Composition, double?> mark in Marks)
        {
            if (mark(pure) is > 0 and { } whole)
            {
                return mark(own) is { } part && part <= whole * MostOver && own.WaterPercent is { } water
                    ? (Math.Min(1, part / whole), Math.Max(0, water - (part / whole * (pure.WaterPercent ?? 0))) / 100) : null;
            }
        }

        return null;
    }

    public static Acid? FindAcid(string name) => AcidByName.TryGetValue(name, out Acid? acid) ? acid : null;
}
