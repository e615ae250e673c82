namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about doses.</summary>
internal static class DoseCases
{
    public static IEnumerable<RuleCase> All =>
    [
        new("a slip of the finger", "unknown-ingredient", Severity.Caution, () => In(Pantry.Water, Ingredient.Unknown("agarr"), 0.5), () => In(Pantry.Water, Hydrocolloids.Agar, 0.5)),
        new("agar ten times too little", "decimal-slip", Severity.Conflict, () => In(Pantry.Water, Hydrocolloids.Agar, 0.05, Texture.Firm), () => In(Pantry.Water, Hydrocolloids.Agar, 0.5, Texture.Firm)),
        new("agar ten times too much", "decimal-slip", Severity.Caution, () => In(Pantry.Water, Hydrocolloids.Agar, 5, Texture.Firm), () => In(Pantry.Water, Hydrocolloids.Agar, 0.5, Texture.Firm)),
        new("agar under 0.15 %", "dose-under-gelling-minimum", Severity.Conflict, () => In(Pantry.Water, Hydrocolloids.Agar, 0.12), () => In(Pantry.Water, Hydrocolloids.Agar, 0.152)),
        new("agar under the firm window", "dose-outside-window", Severity.Caution, () => In(Pantry.Water, Hydrocolloids.Agar, 0.3, Texture.Firm), () => In(Pantry.Water, Hydrocolloids.Agar, 0.402, Texture.Firm)),
        new("agar over the firm window", "dose-outside-window", Severity.Caution, () => In(Pantry.Water, Hydrocolloids.Agar, 1, Texture.Firm), () => In(Pantry.Water, Hydrocolloids.Agar, 0.7, Texture.Firm)),

        // 5 % in one step, a handbook, recalled
        new("agar in a fifth of the liquid", "too-thick-to-hydrate", Severity.Caution, () => Carried(25), () => Carried(35)),
        new("a third of the water boiled off", "concentrated-by-evaporation", Severity.Caution, () => Boiled(Loss.Percent(33)), () => Boiled(Loss.Percent(10)), () => Boiled(Loss.Of(UnitsNet.Mass.FromGrams(50)))),
        new("xanthan in an oily dressing (practitioner's case)", "dose-counts-on-water", Severity.Caution, () => Dressing(0.5), () => Dressing(0.175), () => In(Ingredient.Own("house-dressing", "House dressing"), Hydrocolloids.XanthanGum, 0.5)),
        new("soaked leaves with a fifth to spare (practitioner's case)", "low-dose-margin", Severity.Information, () => Soaked(0.77), () => Soaked(0.9)),
    ];

    private static Formula Carried(double percent) => Formula.Named("test")
        .Base(b => b.Share(Pantry.Water, percent).Share(Pantry.PearJuice, 100 - percent))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1.5).OfBase))
        .Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) }).Build();

    private static Formula Boiled(Loss evaporation) => Formula.Named("test")
        .Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.6).OfBase))
        .Serve(new ServicePlan { Texture = Texture.Firm })
        .Process(new ProcessPlan { Losses = new Losses { Evaporation = evaporation } }).Build();

    private static Formula Dressing(double percent) => Formula.Named("test")
        .Base(b => b.Share(Pantry.OliveOil, 65).Share(Pantry.Water, 35))
        .Then("thicken", p => p.Add(Hydrocolloids.XanthanGum, Dose.Percent(percent).OfBase)).Build();

    private static Formula Soaked(double percent) => Formula.Named("test")
        .Base(b => b.Share(Pantry.WholeMilk, 100))
        .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(percent).OfBase))
        .Process(new ProcessPlan { SoakAt = UnitsNet.Temperature.FromDegreesCelsius(28) }).Build();

    /// <summary>One hydrocolloid in one liquid.</summary>
    /// <param name="liquid">The liquid.</param>
    /// <param name="agent">The hydrocolloid.</param>
    /// <param name="percent">Its dose, % by weight of the liquid.</param>
    /// <param name="texture">The texture aimed at.</param>
    public static Formula In(Ingredient liquid, Ingredient agent, double percent, Texture? texture = null) => Formula.Named("test")
        .Base(b => b.Share(liquid, 100))
        .Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase))
        .Serve(new ServicePlan { Texture = texture }).Build();
}
