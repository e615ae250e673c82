using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about storage.</summary>
internal static class StorageCases
{
    private static readonly ServicePlan Frozen = new() { Frozen = true };
    private static readonly ServicePlan Chilled = new() { Frozen = false };

    public static IEnumerable<RuleCase> All =>
    [
        new("agar kept a day uncovered", "drying-uncovered", Severity.Caution,
            () => Of(Hydrocolloids.Agar, 0.5, Stored(24, false)), () => Of(Hydrocolloids.Agar, 0.5, Stored(24, true)), () => Of(Hydrocolloids.Agar, 0.5, Stored(24, null))),
        new("agar", "freezing-and-thawing", Severity.Conflict, () => Of(Hydrocolloids.Agar, 0.5, Frozen), () => Of(Hydrocolloids.Agar, 0.5, Chilled)),
        new("PC-020, gelatin: warned, not blocked", "freezing-and-thawing", Severity.Caution, () => Of(Hydrocolloids.GelatinTypeA, 0.8, Frozen), () => Of(Hydrocolloids.GelatinTypeA, 0.8, Chilled)),
        new("kappa-carrageenan without and with 3 parts of locust bean gum to 7", "freezing-and-thawing", Severity.Caution,
            () => Of(Hydrocolloids.CarrageenanKappa, 0.7, Frozen), () => Of(Hydrocolloids.CarrageenanKappa, 0.7, Frozen, Hydrocolloids.LocustBeanGum, 0.3)),
        new("low-acyl gellan, and high-acyl gellan", "freezing-and-thawing", Severity.Caution, () => Of(Hydrocolloids.GellanLowAcyl, 0.3, Frozen), () => Of(Hydrocolloids.GellanHighAcyl, 0.5, Frozen)),
        new("tapioca starch without and with 0.5 % xanthan", "freezing-and-thawing", Severity.Caution,
            () => Of(Hydrocolloids.StarchTapioca, 4, Frozen), () => Of(Hydrocolloids.StarchTapioca, 4, Frozen, Hydrocolloids.XanthanGum, 0.53)),
    ];

    private static ServicePlan Stored(double hours, bool? covered) => new() { StoredFor = Duration.FromHours(hours), Covered = covered };

    private static Formula Of(Ingredient agent, double percent, ServicePlan service, Ingredient? other = null, double otherPercent = 0) => Formula.Named("test")
        .Base(b => b.Share(Pantry.PearJuice, 100))
        .Then("gel", p =>
        {
            p.Add(agent, Dose.Percent(percent).OfBase);
            if (other is not null)
            {
                p.Add(other, Dose.Percent(otherPercent).OfBase);
            }
        })
        .Serve(service).Build();
}
