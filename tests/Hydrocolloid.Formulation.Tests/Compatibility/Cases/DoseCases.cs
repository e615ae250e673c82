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
    ];

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
