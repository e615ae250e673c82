namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about pH.</summary>
internal static class AcidCases
{
    public static IEnumerable<RuleCase> All =>
    [
        new("agar simmered in sour juice for ten minutes", "ph-while-heated", Severity.Caution, () => Simmered(10), () => Simmered(4), () => Simmered(10, Ingredient.Own("house-juice", "House juice"))),
        new("agar simmered with citric acid in water", "ph-while-heated", Severity.Caution, () => Simmered(10, Pantry.Water), () => Simmered(4, Pantry.Water)),
    ];

    private static Formula Simmered(double minutes, Ingredient? liquid = null) => Formula.Named("test")
        .Base(b => b.Share(liquid ?? Pantry.PearJuice, 100))
        .Then("season", p => p.Add(Pantry.CitricAcid, Dose.Percent(0.5).OfBase))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase))
        .Process(new ProcessPlan { HydrateFor = UnitsNet.Duration.FromMinutes(minutes) }).Build();
}
