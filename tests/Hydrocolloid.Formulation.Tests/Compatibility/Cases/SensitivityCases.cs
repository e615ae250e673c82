namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about tannins, enzymes and proteins. PC numbers are practitioner cases, R numbers reference rules.</summary>
internal static class SensitivityCases
{
    private static Ingredient HouseYoghurt => Pantry.WholeMilk.As("house-soured-milk", "House soured milk").WithPh(4.4);

    public static IEnumerable<RuleCase> All =>
    [
        new("oil in konjac", "fat-of-the-gel", Severity.Information, () => WithOil(8), () => WithOil(4)),
        new("R06, raw pineapple juice with gelatin; canned it sets", "protease-with-protein-gel", Severity.Conflict, () => In(Pantry.PineappleJuiceRaw, Hydrocolloids.GelatinTypeB, 1.5), () => In(Pantry.PineappleJuiceCanned, Hydrocolloids.GelatinTypeB, 1.5)),
        new("PC-005, raw kiwi in a gelatin mould; heated it sets", "protease-with-protein-gel", Severity.Conflict, () => WithPieces(Pantry.KiwiRaw), () => WithPieces(Pantry.KiwiRaw.As("kiwi-stewed", "Kiwi, stewed").WithoutActiveProtease())),
        new("mango, disputed", "protease-with-protein-gel", Severity.Caution, () => In(Pantry.MangoJuice, Hydrocolloids.GelatinFish, 2.5), () => In(Pantry.MangoJuice, Hydrocolloids.Agar, 0.5)),
        new("R04, agar in red wine; under 500 mg/L nothing", "tannin-weakens-gel", Severity.Caution, () => Wine(40, Hydrocolloids.Agar, 0.5), () => Wine(28, Hydrocolloids.Agar, 0.5)),
        new("R42, gelatin in blackcurrant juice", "tannin-weakens-gel", Severity.Caution, () => In(Pantry.BlackcurrantJuice, Hydrocolloids.GelatinTypeA, 1.5, Texture.Firm), () => In(Pantry.AppleJuice, Hydrocolloids.GelatinTypeA, 1.5, Texture.Firm)),
        new("R04, agar in black tea", "tannin-weakens-gel", Severity.Information, () => In(Pantry.BlackTea, Hydrocolloids.Agar, 0.5, Texture.Firm), () => In(Pantry.MintInfusion, Hydrocolloids.Agar, 0.5, Texture.Firm)),
        new("kappa-carrageenan in milk at a dose for water", "dose-in-milk", Severity.Caution, () => In(Pantry.WholeMilk, Hydrocolloids.CarrageenanKappa, 0.6), () => In(Pantry.WholeMilk, Hydrocolloids.CarrageenanKappa, 0.25)),
        new("kappa-carrageenan in milk, too little for a gel", "dose-in-milk", Severity.Caution, () => In(Pantry.WholeMilk, Hydrocolloids.CarrageenanKappa, 0.1, Texture.Soft), () => In(Pantry.WholeMilk, Hydrocolloids.CarrageenanKappa, 0.151, Texture.Soft)),
        new("kappa-carrageenan in soured milk", "casein-curdles-with-gum", Severity.Caution, () => In(HouseYoghurt, Hydrocolloids.CarrageenanKappa, 0.2), () => In(HouseYoghurt.WithPh(4.65), Hydrocolloids.CarrageenanKappa, 0.2), () => Acidified()),
        new("a fluid gel of gelatin", "fluid-gel-sets-again", Severity.Caution, () => In(Pantry.Water, Hydrocolloids.GelatinTypeB, 1, Texture.FluidGel), () => In(Pantry.Water, Hydrocolloids.Agar, 0.5, Texture.FluidGel)),
    ];

    private static Formula In(Ingredient liquid, Ingredient agent, double percent, Texture? texture = null) => DoseCases.In(liquid, agent, percent, texture);

    private static Formula WithPieces(Ingredient fruit) => Formula.Named("mould").Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeB, Dose.Percent(1.5).OfBase))
        .Then("fruit", p => p.Add(fruit, Dose.Percent(20).OfBase, l => l.Pieces())).Build();

    private static Formula Wine(double percent, Ingredient agent, double dose) => Formula.Named("wine jelly")
        .Base(b => b.Share(Pantry.Water, 100 - percent).Share(Pantry.RedWine, percent))
        .Then("gel", p => p.Add(agent, Dose.Percent(dose).OfBase)).Build();

    // The computed pH of milk with acid is too low by up to 1.5, so it is asked for.
    private static Formula Acidified() => Formula.Named("test").Base(b => b.Share(Pantry.WholeMilk, 100))
        .Then("season", p => p.Add(Pantry.CitricAcid, Dose.Percent(0.5).OfBase))
        .Then("gel", p => p.Add(Hydrocolloids.CarrageenanKappa, Dose.Percent(0.2).OfBase)).Build();

    private static Formula WithOil(double percent) => Formula.Named("test").Base(b => b.Share(Pantry.Water, 100 - percent).Share(Pantry.OliveOil, percent))
        .Then("gel", p => p.Add(Hydrocolloids.KonjacGlucomannan, Dose.Percent(3).OfBase)).Build();
}
