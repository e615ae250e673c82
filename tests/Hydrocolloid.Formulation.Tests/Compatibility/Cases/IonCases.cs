namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about calcium, potassium, sodium and what binds them.</summary>
internal static class IonCases
{
    private static readonly Ingredient s_unknown = Ingredient.Own("house-broth", "House broth");

    public static IEnumerable<RuleCase> All =>
    [
        // 200 mg/L of calcium, a handbook, recalled: 5 mmol/kg
        new("low-acyl gellan with calcium lactate in the pot", "calcium-while-hydrating", Severity.Conflict,
            () => With(Pantry.WaterDistilled, Hydrocolloids.GellanLowAcyl, 0.3, Pantry.CalciumLactate, 0.16), () => With(Pantry.WaterDistilled, Hydrocolloids.GellanLowAcyl, 0.3, Pantry.CalciumLactate, 0.15),
            () => With(s_unknown, Hydrocolloids.GellanLowAcyl, 0.3)),
        new("low-acyl gellan in calcium-rich mineral water", "calcium-while-hydrating", Severity.Conflict,
            () => With(Pantry.WaterSparklingCalciumRich, Hydrocolloids.GellanLowAcyl, 0.3), () => With(Pantry.WaterHard, Hydrocolloids.GellanLowAcyl, 0.3), () => With(Pantry.WholeMilk, Hydrocolloids.GellanLowAcyl, 0.3)),
        new("alginate in milk (practitioner's case)", "calcium-while-hydrating", Severity.Conflict,
            () => With(Pantry.WholeMilk, Hydrocolloids.SodiumAlginate, 0.7), () => With(Pantry.WaterHard, Hydrocolloids.SodiumAlginate, 0.7), () => With(s_unknown, Hydrocolloids.SodiumAlginate, 0.7)),
        new("alginate in hard water", "calcium-while-hydrating", Severity.Caution,
            () => With(Pantry.WaterHard, Hydrocolloids.SodiumAlginate, 0.7), () => With(Pantry.Water, Hydrocolloids.SodiumAlginate, 0.7)),
        new("alginate in tap water over 20 mg/L of calcium", "calcium-while-hydrating", Severity.Information,
            () => With(Pantry.Water, Hydrocolloids.SodiumAlginate, 0.7), () => With(Pantry.WaterSoft, Hydrocolloids.SodiumAlginate, 0.7)),
        new("low methoxyl pectin with calcium lactate in the pot", "calcium-while-hydrating", Severity.Caution,
            () => With(Pantry.WaterDistilled, Hydrocolloids.PectinLowMethoxyl, 1, Pantry.CalciumLactate, 0.17), () => With(Pantry.WaterDistilled, Hydrocolloids.PectinLowMethoxyl, 1, Pantry.CalciumLactate, 0.15)),

        // 1 % of salt
        new("alginate in brine", "salt-while-hydrating", Severity.Caution,
            () => With(Pantry.WaterDistilled, Hydrocolloids.SodiumAlginate, 0.7, Pantry.Salt, 1.1), () => With(Pantry.WaterDistilled, Hydrocolloids.SodiumAlginate, 0.7, Pantry.Salt, 1),
            () => With(s_unknown, Hydrocolloids.SodiumAlginate, 0.7)),

        new("low-acyl gellan in deionised water (practitioner's case)", "gelling-ions-missing", Severity.Conflict,
            () => With(Pantry.WaterDistilled, Hydrocolloids.GellanLowAcyl, 0.4), () => With(Pantry.Water, Hydrocolloids.GellanLowAcyl, 0.4), () => With(s_unknown, Hydrocolloids.GellanLowAcyl, 0.4)),
        new("low-acyl gellan in tap water, under 3 mmol/kg", "gelling-ions-missing", Severity.Caution,
            () => With(Pantry.Water, Hydrocolloids.GellanLowAcyl, 0.4), () => With(Pantry.WaterHard, Hydrocolloids.GellanLowAcyl, 0.4)),
        new("low methoxyl pectin in distilled water", "calcium-missing", Severity.Conflict,
            () => With(Pantry.WaterDistilled, Hydrocolloids.PectinLowMethoxyl, 0.8), () => Later(Pantry.WaterDistilled, Hydrocolloids.PectinLowMethoxyl, 0.8, Pantry.CalciumLactate, 0.13),
            () => With(s_unknown, Hydrocolloids.PectinLowMethoxyl, 0.8)),
        new("low methoxyl pectin with little calcium", "calcium-missing", Severity.Caution,
            () => Later(Pantry.WaterDistilled, Hydrocolloids.PectinLowMethoxyl, 0.8, Pantry.CalciumLactate, 0.12), () => Later(Pantry.WaterDistilled, Hydrocolloids.PectinLowMethoxyl, 0.8, Pantry.CalciumLactate, 0.125)),
        new("alginate set from inside with little calcium", "calcium-missing", Severity.Caution,
            () => With(Pantry.WaterDistilled, Hydrocolloids.SodiumAlginate, 1, Pantry.CalciumCarbonate, 0.07), () => With(Pantry.WaterDistilled, Hydrocolloids.SodiumAlginate, 1, Pantry.CalciumCarbonate, 0.08)),
        new("kappa carrageenan in tap water", "potassium-missing", Severity.Caution,
            () => With(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6), () => With(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Pantry.PotassiumChloride, 0.038), () => With(s_unknown, Hydrocolloids.CarrageenanKappa, 0.6)),
        new("iota carrageenan in distilled water", "salts-missing", Severity.Caution,
            () => With(Pantry.WaterDistilled, Hydrocolloids.CarrageenanIota, 0.6), () => With(Pantry.Water, Hydrocolloids.CarrageenanIota, 0.6), () => With(s_unknown, Hydrocolloids.CarrageenanIota, 0.6)),

        new("low-acyl gellan with more than 10 mmol/kg of calcium", "too-much-calcium", Severity.Caution,
            () => Later(Pantry.WaterDistilled, Hydrocolloids.GellanLowAcyl, 0.3, Pantry.CalciumChloride, 0.15), () => Later(Pantry.WaterDistilled, Hydrocolloids.GellanLowAcyl, 0.3, Pantry.CalciumChloride, 0.146),
            () => With(Pantry.WholeMilk, Hydrocolloids.GellanLowAcyl, 0.3)),
        new("low methoxyl pectin with more than 40 mg of calcium per gram", "too-much-calcium-for-dose", Severity.Caution,
            () => Later(Pantry.WaterDistilled, Hydrocolloids.PectinLowMethoxyl, 0.8, Pantry.CalciumLactate, 0.26), () => Later(Pantry.WaterDistilled, Hydrocolloids.PectinLowMethoxyl, 0.8, Pantry.CalciumLactate, 0.24),
            () => With(Pantry.WholeMilk, Hydrocolloids.PectinLowMethoxyl, 0.8)),
        new("kappa carrageenan over 0.3 mol/kg of potassium", "too-much-potassium", Severity.Caution,
            () => With(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Pantry.PotassiumChloride, 2.35), () => With(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Pantry.PotassiumChloride, 2.25),
            () => With(s_unknown, Hydrocolloids.CarrageenanKappa, 0.6)),
    ];

    /// <summary>A hydrocolloid with something beside it in the pot.</summary>
    internal static Formula With(Ingredient liquid, Ingredient agent, double percent, Ingredient? also = null, double alsoPercent = 0) => Formula.Named("test")
        .Base(b => b.Share(liquid, 100))
        .Then("gel", p =>
        {
            p.Add(agent, Dose.Percent(percent).OfBase);
            if (also is not null)
            {
                p.Add(also, Dose.Percent(alsoPercent).OfBase);
            }
        }).Build();

    /// <summary>A hydrocolloid with something stirred in later.</summary>
    internal static Formula Later(Ingredient liquid, Ingredient agent, double percent, Ingredient also, double alsoPercent) => Formula.Named("test")
        .Base(b => b.Share(liquid, 100))
        .Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase))
        .Then("finish", p => p.Add(also, Dose.Percent(alsoPercent).OfBase)).Build();
}
