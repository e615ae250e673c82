using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>
/// What practitioners ran into, as questions and answers in public show it: the finding that must come, with its severity, and those that must
/// not. Values of the cases stand in the tests of the rules and in the other classes of this folder.
/// </summary>
public sealed class PractitionerCompatibilityCaseTests
{
    private static readonly Case[] s_cases =
    [
        new("PC-001", "8 g of agar in half a litre, heated in part", () => One(Pantry.Water, Hydrocolloids.Agar, 1.6, new ProcessPlan { HydrateAt = C(85) }),
            ["hydration-temperature:conflict"], ["dose-under-gelling-minimum"]),
        new("PC-002", "raw pineapple in agar", () => One(Pantry.PineappleJuiceRaw, Hydrocolloids.Agar, 0.6), [], ["protease-with-protein-gel"]),
        new("PC-002", "raw pineapple in gelatin", () => One(Pantry.PineappleJuiceRaw, Hydrocolloids.GelatinTypeA, 1.8), ["protease-with-protein-gel:conflict"], []),
        new("PC-002", "agar boiled for long in sour juice", () => One(Pantry.PineappleJuiceRaw, Hydrocolloids.Agar, 0.6, new ProcessPlan { HydrateFor = Duration.FromMinutes(15) }),
            ["ph-while-heated:caution"], []),
        new("PC-003", "69 g of agar in 50 g", () => Formula.Named("copied").Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(50)))
            .Then("gel", p => p.Weigh(Hydrocolloids.Agar, Mass.FromGrams(69), DoseReference.Total)).Build(), ["decimal-slip:conflict"], []),
        new("PC-005", "raw kiwi in gelatin", () => One(Pantry.KiwiJuiceRaw, Hydrocolloids.GelatinTypeA, 1.8), ["protease-with-protein-gel:conflict"], []),
        new("PC-005", "canned pineapple in gelatin", () => One(Pantry.PineappleJuiceCanned, Hydrocolloids.GelatinTypeA, 1.8), [], ["protease-with-protein-gel"]),
        new("PC-006", "leaves soaked at 28 °C", () => One(Pantry.WholeMilk, Hydrocolloids.GelatinTypeB, 0.77, new ProcessPlan { SoakAt = C(28) }),
            ["soak-water-too-warm:caution"], ["dose-under-gelling-minimum"]),
        new("PC-008", "gellan in deionised water", () => One(Pantry.WaterDistilled, Hydrocolloids.GellanLowAcyl, 0.4), ["gelling-ions-missing:conflict"], ["dose-under-gelling-minimum"]),
        new("PC-008", "agar held in the pressure cooker in acid", () => Formula.Named("agar").Base(b => b.Share(Pantry.WaterDistilled, 100))
            .Then("sour", p => p.Add(Pantry.CitricAcid, Dose.Percent(0.3).OfBase)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.6).OfBase))
            .Process(new ProcessPlan { HydrateAt = C(121), HydrateFor = Duration.FromMinutes(30) }).Build(), ["ph-while-heated:caution"], []),
        new("PC-009", "cranberry juice with alginate", () => One(Pantry.CranberryJuice, Hydrocolloids.SodiumAlginate, 0.6), ["ph-of-the-gel:conflict"], []),
        new("PC-010", "alginate in milk", () => One(Pantry.WholeMilk, Hydrocolloids.SodiumAlginate, 0.6), ["calcium-while-hydrating:conflict"], []),
        new("PC-013", "half a percent of xanthan where a third is water", () => Formula.Named("dressing").Base(b => b.Share(Pantry.Water, 35).Share(Pantry.OliveOil, 65))
            .Then("thicken", p => p.Add(Hydrocolloids.XanthanGum, Dose.Percent(0.5).OfTotal)).Build(), ["dose-counts-on-water:caution"], []),
        new("PC-014", "a quarter of the methylcellulose", () => One(Pantry.Water, Hydrocolloids.Methylcellulose, 0.245, new ProcessPlan { HydrateAt = C(10) }, Texture.Firm),
            ["dose-under-gelling-minimum:conflict"], ["hydration-temperature"]),
        new("PC-018", "gelatin sweets that weep are not helped by locust bean gum", () => One(Pantry.Water, Hydrocolloids.GelatinTypeA, 1.8), [], ["thickeners-gel-together"]),
        new("PC-020", "a gelatin cream frozen", () => Formula.Named("cream").Base(b => b.Share(Pantry.Cream35, 60).Share(Pantry.WholeMilk, 40))
            .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeB, Dose.Percent(0.8).OfBase)).Serve(new ServicePlan { Frozen = true }).Build(), ["freezing-and-thawing:caution"], []),
        new("PC-025", "200 g of salt in half a litre", () => Formula.Named("plate").Base(b => b.Share(Pantry.Water, 100))
            .Then("salt", p => p.Add(Pantry.Salt, Dose.Percent(40).OfBase)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(3).OfBase)).Build(), ["beyond-solubility:conflict"], []),
        new("PC-026", "agar under a lamp at 32 °C", () => One(Pantry.Water, Hydrocolloids.Agar, 1.5, service: new ServicePlan { ServedAt = C(32.2) }), [], ["served-outside-its-temperature"]),
        new("PC-027", "hot agar into cold cream", () => Formula.Named("cream").Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(100), l => l.At(C(90))).Weigh(Pantry.Cream35, Mass.FromGrams(750), l => l.At(C(8))))
            .Then("gel", p => p.Weigh(Hydrocolloids.Agar, Mass.FromGrams(3), DoseReference.Base)).Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) }).Build(),
            ["joined-too-cold:conflict"], ["dose-under-gelling-minimum"]),
        new("PC-028", "five parts of spirit to three of water", () => One2(62.5), ["alcohol-in-the-gel:caution"], []),
        new("PC-028", "spirit with little water", () => One2(85), ["alcohol-in-the-gel:conflict"], []),
    ];

    public static TheoryData<string, string> Names { get; } = Data();

    [Theory, MemberData(nameof(Names))]
    public void The_finding_comes_and_the_false_alarm_does_not(string id, string what)
    {
        Case wanted = s_cases.Single(c => c.Id == id && c.What == what);

        ValueList<Finding> findings = wanted.Make().Review();

        string[] found = [.. findings.Select(f => $"{f.Id}:{f.Severity.ToString().ToLowerInvariant()}")];
        wanted.Expected.Except(found).Should().BeEmpty($"{id}: {what} gives {string.Join(", ", found)}");
        wanted.MustNot.Intersect(findings.Select(f => f.Id)).Should().BeEmpty($"{id}: {what}");
    }

    private static TheoryData<string, string> Data()
    {
        var data = new TheoryData<string, string>();
        foreach (Case one in s_cases)
        {
            data.Add(one.Id, one.What);
        }

        return data;
    }

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static Formula One(Ingredient liquid, Ingredient agent, double percent, ProcessPlan? process = null, Texture? texture = null, ServicePlan? service = null) => Formula.Named("case")
        .Base(b => b.Share(liquid, 100)).Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase))
        .Process(process ?? ProcessPlan.None).Serve(service ?? new ServicePlan { Texture = texture }).Build();

    /// <summary>Gelatin dissolved in water, spirit of 40 % vol stirred in afterwards, by volume as the case has it.</summary>
    private static Formula One2(double spiritByVolume)
    {
        double spirit = spiritByVolume * 0.948, water = (100 - spiritByVolume) * 0.998; // densities: OIML R 22, water
        return Formula.Named("shot").Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(water)).Weigh(Pantry.Spirit40, Mass.FromGrams(spirit)))
            .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(1.5).OfBase)).Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) }).Build();
    }

    private sealed record Case(string Id, string What, Func<Formula> Make, string[] Expected, string[] MustNot);
}
