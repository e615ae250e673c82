using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Formulas;

/// <summary>Formulas that several tests start from.</summary>
internal static class Mixes
{
    /// <summary>A base, two seasonings of 10 % and 1 % of it, then two hydrocolloids of 0.3 % and 0.1 % of a reference.</summary>
    public static Formula TwoStage(Func<DosePercent, Dose>? of = null)
    {
        of ??= percent => percent.OfPreceding;
        return Formula.Named("two stages")
            .Base(b => b.Share(Pantry.PearJuice, 100))
            .Then("season", p => p
                .Add(Pantry.Sucrose, Dose.Percent(10).OfBase)
                .Add(Pantry.CitricAcid, Dose.Percent(1).OfBase))
            .Then("gel", p => p
                .Add(Hydrocolloids.Agar, of(Dose.Percent(0.3)))
                .Add(Hydrocolloids.LocustBeanGum, of(Dose.Percent(0.1))))
            .Build();
    }

    /// <summary>Water with one hydrocolloid.</summary>
    public static Formula Simple(double percent = 0.5, Ingredient? agent = null) => Formula.Named("simple")
        .Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(agent ?? Hydrocolloids.Agar, Dose.Percent(percent).OfBase))
        .Build();

    public static Batch OfBase(this Formula formula, double grams) => formula.ScaleTo(Yield.OfBase(Mass.FromGrams(grams)));

    public static Ingredient Dry(string id) => Ingredient.Own(id, id);
}
