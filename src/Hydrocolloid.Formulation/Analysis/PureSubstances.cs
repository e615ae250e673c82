using Hydrocolloid.Formulation.Chemistry;

namespace Hydrocolloid.Formulation.Analysis;

/// <summary>The catalogue's salts and acids as the chemistry knows them.</summary>
internal static class PureSubstances
{
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
    };

    public static Reagent? Find(Ingredient ingredient) => ById.TryGetValue((ingredient.BasedOn ?? ingredient).Id, out Reagent? reagent) ? reagent : null;

    public static Acid? FindAcid(string name) => AcidByName.TryGetValue(name, out Acid? acid) ? acid : null;
}
