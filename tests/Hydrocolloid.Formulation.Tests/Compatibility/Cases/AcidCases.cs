namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about pH.</summary>
internal static class AcidCases
{
    public static IEnumerable<RuleCase> All =>
    [
        new("agar simmered in sour juice for ten minutes", "ph-while-heated", Severity.Caution, () => Simmered(10), () => Simmered(4), () => Simmered(10, Ingredient.Own("house-juice", "House juice"))),
        new("agar simmered with citric acid in water", "ph-while-heated", Severity.Caution, () => Simmered(10, Pantry.Water), () => Simmered(4, Pantry.Water)),
        new("kappa carrageenan with acid in the pot", "ph-while-heated", Severity.Caution,
            () => IonCases.With(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Pantry.CitricAcid, 0.1), () => AtPh(4.31, Hydrocolloids.CarrageenanKappa, 0.6)),
        new("gelatin with lemon juice at 85 °C", "ph-while-heated", Severity.Conflict, () => HotGelatin(85), () => HotGelatin(79)),
        new("low methoxyl pectin held hot in milk", "ph-while-heated", Severity.Caution, () => HeldPectin(30), () => HeldPectin(10)),
        new("gellan with the acid in the pot", "ph-while-hydrating", Severity.Caution,
            () => IonCases.With(Pantry.WaterHard, Hydrocolloids.GellanLowAcyl, 0.3, Pantry.CitricAcid, 0.15), () => AtPh(4.01, Hydrocolloids.GellanLowAcyl, 0.3),
            () => IonCases.With(s_unknown, Hydrocolloids.GellanLowAcyl, 0.3, Pantry.CitricAcid, 0.15)),
        new("alginate in cranberry juice (practitioner's case)", "ph-of-the-gel", Severity.Conflict,
            () => IonCases.With(Pantry.CranberryJuice, Hydrocolloids.SodiumAlginate, 0.7), () => IonCases.With(Pantry.TomatoJuice, Hydrocolloids.SodiumAlginate, 0.7), () => IonCases.With(s_unknown, Hydrocolloids.SodiumAlginate, 0.7)),
        new("gelatin in lemonade", "ph-of-the-gel", Severity.Information,
            () => IonCases.With(Pantry.Water, Hydrocolloids.GelatinTypeA, 1.5, Pantry.CitricAcid, 0.05), () => AtPh(4.01, Hydrocolloids.GelatinTypeA, 1.5)),
        new("high methoxyl pectin without acid", "ph-of-the-gel", Severity.Conflict,
            () => IonCases.With(Pantry.PearJuice, Hydrocolloids.PectinHighMethoxyl, 0.8), () => IonCases.With(Pantry.LemonJuice, Hydrocolloids.PectinHighMethoxyl, 0.8)),
        new("konjac alone without alkali", "ph-of-the-gel", Severity.Conflict,
            () => IonCases.With(Pantry.Water, Hydrocolloids.KonjacGlucomannan, 2.5), () => IonCases.With(Pantry.Water, Hydrocolloids.KonjacGlucomannan, 2.5, Hydrocolloids.XanthanGum, 0.3)),
        new("gelatin type B at pH 5.1 (a producer)", "gelatin-at-isoelectric-point", Severity.Caution,
            () => AtPh(5.1, Hydrocolloids.GelatinTypeB, 1.5), () => AtPh(4.79, Hydrocolloids.GelatinTypeB, 1.5), () => IonCases.With(s_unknown, Hydrocolloids.GelatinTypeB, 1.5)),
    ];

    private static readonly Ingredient s_unknown = Ingredient.Own("house-juice", "House juice");

    private static Formula HotGelatin(double celsius) => Formula.Named("test")
        .Base(b => b.Share(Pantry.LemonJuice, 30).Share(Pantry.Water, 70))
        .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(1.5).OfBase))
        .Process(new ProcessPlan { HydrateAt = UnitsNet.Temperature.FromDegreesCelsius(celsius) }).Build();

    private static Formula HeldPectin(double minutes) => Formula.Named("test")
        .Base(b => b.Share(Pantry.WholeMilk, 100))
        .Then("gel", p => p.Add(Hydrocolloids.PectinLowMethoxyl, Dose.Percent(0.8).OfBase))
        .Process(new ProcessPlan { HydrateFor = UnitsNet.Duration.FromMinutes(minutes) }).Build();

    private static Formula AtPh(double ph, Ingredient agent, double percent) => Formula.Named("test")
        .Base(b => b.Share(Pantry.VegetableStock, 100, l => l.Measured(new Measurements { Ph = ph })))
        .Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase)).Build();

    private static Formula Simmered(double minutes, Ingredient? liquid = null) => Formula.Named("test")
        .Base(b => b.Share(liquid ?? Pantry.PearJuice, 100))
        .Then("season", p => p.Add(Pantry.CitricAcid, Dose.Percent(0.5).OfBase))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase))
        .Process(new ProcessPlan { HydrateFor = UnitsNet.Duration.FromMinutes(minutes) }).Build();
}
