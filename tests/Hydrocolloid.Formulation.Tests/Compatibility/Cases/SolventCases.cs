namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about alcohol and dissolved solids.</summary>
internal static class SolventCases
{
    private static readonly Ingredient s_unknown = Ingredient.Own("house-punch", "House punch");

    public static IEnumerable<RuleCase> All =>
    [
        new("agar boiled in port", "alcohol-boils-too-low", Severity.Conflict,
            () => Blend(Pantry.Port, 95, Hydrocolloids.Agar, 0.5), () => Blend(Pantry.Port, 95, Hydrocolloids.Agar, 0.5, "water"), () => Blend(s_unknown, 50, Hydrocolloids.Agar, 0.5)),
        new("spirit stirred in before the agar", "alcohol-boils-too-low", Severity.Caution,
            () => Spirited(22), () => Spirited(20)),

        new("curdlan dissolved in more than 20 % vol", "alcohol-while-hydrating", Severity.Caution,
            () => Blend(Pantry.Spirit40, 55, Hydrocolloids.Curdlan, 2), () => Blend(Pantry.Spirit40, 48, Hydrocolloids.Curdlan, 2), () => Blend(s_unknown, 50, Hydrocolloids.Curdlan, 2)),

        // a practitioner's case and a handbook of kitchen science: precipitation begins at 30–50 %
        new("gelatin over 30 % vol", "alcohol-in-the-gel", Severity.Conflict,
            () => Blend(Pantry.Spirit40, 80, Hydrocolloids.GelatinTypeA, 1.5), () => Blend(Pantry.Spirit40, 70, Hydrocolloids.GelatinTypeA, 1.5), () => Blend(s_unknown, 50, Hydrocolloids.GelatinTypeA, 1.5)),
        new("gelatin at about 25 % vol", "alcohol-in-the-gel", Severity.Caution,
            () => Blend(Pantry.Spirit40, 65, Hydrocolloids.GelatinTypeA, 1.5), () => Blend(Pantry.Spirit40, 58, Hydrocolloids.GelatinTypeA, 1.5)),
        new("alginate at more than 20 % by weight (a study of 2016)", "ethanol-in-the-gel", Severity.Caution,
            () => Blend(Pantry.Spirit40, 65, Hydrocolloids.SodiumAlginate, 1), () => Blend(Pantry.Spirit40, 58, Hydrocolloids.SodiumAlginate, 1), () => Blend(s_unknown, 50, Hydrocolloids.SodiumAlginate, 1)),

        new("pectin dissolved in a syrup", "solids-while-hydrating", Severity.Caution,
            () => IonCases.With(Pantry.AppleJuice, Hydrocolloids.PectinHighMethoxyl, 0.8, Pantry.Sucrose, 20), () => IonCases.With(Pantry.AppleJuice, Hydrocolloids.PectinHighMethoxyl, 0.8, Pantry.Sucrose, 15),
            () => IonCases.With(s_unknown, Hydrocolloids.PectinHighMethoxyl, 0.8)),
        new("high methoxyl pectin under 55 °Brix", "solids-of-the-gel", Severity.Conflict,
            () => IonCases.Later(Pantry.AppleJuice, Hydrocolloids.PectinHighMethoxyl, 0.8, Pantry.Sucrose, 85), () => IonCases.Later(Pantry.AppleJuice, Hydrocolloids.PectinHighMethoxyl, 0.8, Pantry.Sucrose, 105),
            () => IonCases.With(s_unknown, Hydrocolloids.PectinHighMethoxyl, 0.8)),
        new("low methoxyl pectin over 60 °Brix", "solids-of-the-gel", Severity.Caution,
            () => IonCases.Later(Pantry.WaterHard, Hydrocolloids.PectinLowMethoxyl, 0.8, Pantry.Sucrose, 160), () => IonCases.Later(Pantry.WaterHard, Hydrocolloids.PectinLowMethoxyl, 0.8, Pantry.Sucrose, 145)),
        new("kappa carrageenan at more than 30 °Brix", "solids-of-the-gel", Severity.Information,
            () => IonCases.Later(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Pantry.Sucrose, 45), () => IonCases.Later(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Pantry.Sucrose, 42)),

        // 35.9 g in 100 g of water at 25 °C, recalled
        new("salt beyond what dissolves (practitioner's case)", "beyond-solubility", Severity.Conflict,
            () => IonCases.With(Pantry.WaterDistilled, Hydrocolloids.Agar, 3, Pantry.Salt, 40), () => IonCases.With(Pantry.WaterDistilled, Hydrocolloids.Agar, 3, Pantry.Salt, 35.5),
            () => IonCases.With(s_unknown, Hydrocolloids.Agar, 3, Pantry.Salt, 40)),
    ];

    /// <summary>A liquid and water, and a hydrocolloid.</summary>
    internal static Formula Blend(Ingredient liquid, double percent, Ingredient agent, double dose, params string[] carriers) => Formula.Named("test")
        .Base(b => b.Share(liquid, percent).Share(Pantry.Water, 100 - percent))
        .Then("gel", p => p.Add(agent, Dose.Percent(dose).OfBase))
        .Process(new ProcessPlan { Carriers = ValueList<string>.From(carriers) }).Build();

    private static Formula Spirited(double percent) => Formula.Named("test")
        .Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(Pantry.Spirit40, Dose.Percent(percent).OfBase).Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase)).Build();
}
