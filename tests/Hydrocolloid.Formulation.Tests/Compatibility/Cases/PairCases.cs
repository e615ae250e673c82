namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about hydrocolloids together. R numbers are reference rules.</summary>
internal static class PairCases
{
    public static IEnumerable<RuleCase> All =>
    [
        new("R17, agar with kappa-carrageenan", "agents-weaken-each-other", Severity.Caution, () => Blend(Pantry.Water, Hydrocolloids.Agar, 0.4, Hydrocolloids.CarrageenanKappa, 0.3), () => Blend(Pantry.Water, Hydrocolloids.Agar, 0.4, Hydrocolloids.LocustBeanGum, 0.1)),
        new("R12, gelatin type B with xanthan gum under pH 4.8", "gelatin-clouds-with-gum", Severity.Caution, () => AtPh(4.7, Hydrocolloids.GelatinTypeB), () => AtPh(4.9, Hydrocolloids.GelatinTypeB), () => Blend(Ingredient.Own("house-juice", "House juice"), Hydrocolloids.GelatinTypeB, 1.5, Hydrocolloids.XanthanGum, 0.1)),
        new("R12, gelatin type A with xanthan gum at pH 6", "gelatin-clouds-with-gum", Severity.Caution, () => AtPh(6, Hydrocolloids.GelatinTypeA), () => AtPh(8.1, Hydrocolloids.GelatinTypeA)),
        new("gelatin in the pot in which agar boils", "agents-hydrated-together", Severity.Caution, () => Blend(Pantry.Water, Hydrocolloids.Agar, 0.4, Hydrocolloids.GelatinTypeB, 1), () => OneAfterTheOther()),
        new("xanthan gum with locust bean gum gels from 0.03 %", "thickeners-gel-together", Severity.Caution, () => Blend(Pantry.Water, Hydrocolloids.XanthanGum, 0.1, Hydrocolloids.LocustBeanGum, 0.1, Texture.Thickened), () => Blend(Pantry.Water, Hydrocolloids.XanthanGum, 0.014, Hydrocolloids.LocustBeanGum, 0.015, Texture.Thickened)),
        new("guar gum with kappa-carrageenan", "gum-does-not-help", Severity.Information, () => Blend(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Hydrocolloids.GuarGum, 0.25), () => Blend(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Hydrocolloids.LocustBeanGum, 0.25)),
        new("xanthan gum with agar, more than to keep bits in suspension", "gum-does-not-help", Severity.Information, () => Blend(Pantry.Water, Hydrocolloids.Agar, 0.5, Hydrocolloids.XanthanGum, 0.2), () => Blend(Pantry.Water, Hydrocolloids.Agar, 0.5, Hydrocolloids.XanthanGum, 0.1)),
        new("kappa-carrageenan with locust bean gum 9:1, best at 7:3 to 6:4", "blend-ratio", Severity.Information, () => Blend(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.63, Hydrocolloids.LocustBeanGum, 0.07), () => Blend(Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.63, Hydrocolloids.LocustBeanGum, 0.27)),
        new("low with high acyl gellan 9:1", "blend-ratio", Severity.Information, () => Blend(Pantry.Water, Hydrocolloids.GellanLowAcyl, 0.36, Hydrocolloids.GellanHighAcyl, 0.04), () => Blend(Pantry.Water, Hydrocolloids.GellanLowAcyl, 0.3, Hydrocolloids.GellanHighAcyl, 0.1)),
        new("PC-017, agar with half of the locust bean gum that keeps it from weeping", "blend-ratio", Severity.Information, () => Blend(Pantry.Water, Hydrocolloids.Agar, 0.9, Hydrocolloids.LocustBeanGum, 0.05), () => Blend(Pantry.Water, Hydrocolloids.Agar, 0.9, Hydrocolloids.LocustBeanGum, 0.1)),
    ];

    /// <summary>Two hydrocolloids in one liquid.</summary>
    /// <param name="liquid">The liquid.</param>
    /// <param name="one">One.</param>
    /// <param name="onePercent">Its dose, % by weight of the liquid.</param>
    /// <param name="other">The other.</param>
    /// <param name="otherPercent">Its dose, % by weight of the liquid.</param>
    /// <param name="texture">The texture aimed at.</param>
    public static Formula Blend(Ingredient liquid, Ingredient one, double onePercent, Ingredient other, double otherPercent, Texture? texture = null) => Formula.Named("blend")
        .Base(b => b.Share(liquid, 100))
        .Then("gel", p => p.Add(one, Dose.Percent(onePercent).OfBase).Add(other, Dose.Percent(otherPercent).OfBase))
        .Serve(new ServicePlan { Texture = texture }).Build();

    private static Formula AtPh(double ph, Ingredient gelatin)
        => Blend(Pantry.AppleJuice.As("house-juice", "House juice").WithPh(ph), gelatin, 1.5, Hydrocolloids.XanthanGum, 0.1);

    private static Formula OneAfterTheOther() => Formula.Named("blend").Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.4).OfBase))
        .Then("after", p => p.Add(Hydrocolloids.GelatinTypeB, Dose.Percent(1).OfBase)).Build();
}
