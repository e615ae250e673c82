using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about weeping, clarity and air. R numbers are reference rules, PC numbers practitioner cases.</summary>
internal static class WeepingCases
{
    private static readonly ServicePlan s_stored = new() { StoredFor = Duration.FromHours(24) };

    private static readonly ServicePlan s_cubes = s_stored with { Shape = PortionShape.Cube };

    private static readonly ServicePlan s_clear = new() { Clear = true };

    public static IEnumerable<RuleCase> All =>
    [
        new("agar, stored; 0.1 % of locust bean gum helps, by common practice", "weeping", Severity.Caution, () => Served(s_stored, Pantry.Water, Hydrocolloids.Agar, 0.5), () => Served(s_stored, Pantry.Water, Hydrocolloids.Agar, 0.5, Hydrocolloids.LocustBeanGum, 0.101)),
        new("agar, cut, not stored", "weeping", Severity.Information, () => Served(new ServicePlan { Shape = PortionShape.Slice }, Pantry.Water, Hydrocolloids.Agar, 0.5), () => Served(new ServicePlan { Shape = PortionShape.Spooned }, Pantry.Water, Hydrocolloids.Agar, 0.5)),
        new("agar, stored; none at 60 % sugar", "weeping", Severity.Caution, () => Syrup(56), () => Syrup(61)),
        new("R16, kappa-carrageenan, stored; with locust bean gum 7:3 not", "weeping", Severity.Caution, () => Served(s_stored, Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6), () => Served(s_stored, Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Hydrocolloids.LocustBeanGum, 0.26)),
        new("kappa-carrageenan with konjac, of which a paper found no effect", "weeping", Severity.Information, () => Served(s_stored, Pantry.Water, Hydrocolloids.CarrageenanKappa, 0.6, Hydrocolloids.KonjacGlucomannanThickener, 0.4), () => Served(s_stored, Pantry.WholeMilk, Hydrocolloids.CarrageenanKappa, 0.2)),
        new("low acyl gellan, stored and cut", "weeping", Severity.Information, () => Served(s_cubes, Pantry.Water, Hydrocolloids.GellanLowAcyl, 0.4), () => Served(s_stored, Pantry.Water, Hydrocolloids.GellanLowAcyl, 0.4)),
        new("low methoxyl pectin; 10 % of sugar helps", "weeping", Severity.Information, () => Served(s_cubes, Pantry.Water, Hydrocolloids.PectinLowMethoxyl, 0.8), () => Served(s_cubes, Pantry.Water, Hydrocolloids.PectinLowMethoxyl, 0.8, Pantry.Sucrose, 12)),
        new("PC-018, gelatin cubes from the cold", "weeping", Severity.Information, () => Served(s_cubes, Pantry.Water, Hydrocolloids.GelatinTypeB, 3), () => Served(s_cubes, Pantry.Water, Hydrocolloids.GelatinTypeB, 3, Hydrocolloids.XanthanGum, 0.105)),
        new("a clear gel of methylcellulose", "gel-not-clear", Severity.Caution, () => Served(s_clear, Pantry.Water, Hydrocolloids.Methylcellulose, 1.5), () => Served(s_clear, Pantry.Water, Hydrocolloids.GelatinTypeA, 1.5)),
        new("a clear gel of agar", "gel-not-clear", Severity.Information, () => Served(s_clear, Pantry.AppleJuice, Hydrocolloids.Agar, 0.5), () => Served(s_clear, Pantry.Water, Hydrocolloids.GellanLowAcyl, 0.3)),
        new("a clear gel with milk", "liquid-not-clear", Severity.Caution, () => Served(s_clear, Pantry.WholeMilk, Hydrocolloids.GelatinTypeA, 1.5), () => Served(s_clear, Pantry.AppleJuice, Hydrocolloids.GelatinTypeA, 1.5)),
        new("a clear gel under high shear", "air-in-clear-gel", Severity.Information, () => Served(s_clear, Pantry.Water, Hydrocolloids.XanthanGum, 0.3), () => Served(s_clear, Pantry.Water, Hydrocolloids.GelatinTypeA, 1.5)),
    ];

    private static Formula Served(ServicePlan service, Ingredient liquid, Ingredient agent, double percent, Ingredient? second = null, double secondPercent = 0) => Formula.Named("test")
        .Base(b => b.Share(liquid, 100))
        .Then("gel", p =>
        {
            p.Add(agent, Dose.Percent(percent).OfBase);
            if (second is not null)
            {
                p.Add(second, Dose.Percent(secondPercent).OfBase);
            }
        })
        .Serve(service).Build();

    private static Formula Syrup(double sugarPercent) => Formula.Named("test")
        .Base(b => b.Share(Pantry.Water, 100 - sugarPercent).Share(Pantry.Sucrose, sugarPercent))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase)).Serve(s_stored).Build();
}
