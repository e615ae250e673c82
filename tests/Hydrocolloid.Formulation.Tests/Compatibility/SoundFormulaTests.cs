using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility;

/// <summary>
/// False alarms count. These are formulas of the kinds that handbooks and producers' guides give, with doses from the middle of the
/// catalogue's working windows (each window cites its source); none may be called a conflict, and every caution has its reason here.
/// </summary>
public sealed class SoundFormulaTests
{
    private static readonly Sound[] s_formulas =
    [
        new("agar jelly of pear juice, simmered as the trade does", () => One(Pantry.PearJuice, Hydrocolloids.Agar, 0.5, Texture.Firm, b => b.Process(new ProcessPlan { HydrateFor = Duration.FromMinutes(4) }))),
        new("agar jelly of water and sugar, very firm", () => One(Pantry.Water, Hydrocolloids.Agar, 1, Texture.VeryFirm, b => b.Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(10).OfBase)))),
        new("agar with raw pineapple: enzymes cut proteins, not polysaccharides", () => One(Pantry.PineappleJuiceRaw, Hydrocolloids.Agar, 0.55, Texture.Firm)),
        new("agar and a tenth of a percent of locust bean gum", () => Two(Pantry.AppleJuice, Hydrocolloids.Agar, 0.5, Hydrocolloids.LocustBeanGum, 0.1)),
        new("agar in spirit, hydrated in water", () => Formula.Named("spirit sheet").Base(b => b.Share(Pantry.Water, 60).Share(Pantry.Spirit40, 40))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.6).OfBase)).Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) }).Build()),
        new("agar fluid gel of carrot juice", () => One(Pantry.CarrotJuice, Hydrocolloids.Agar, 0.5, Texture.FluidGel)),
        new("set cream with gelatin", () => Formula.Named("set cream").Base(b => b.Share(Pantry.Cream35, 60).Share(Pantry.WholeMilk, 40))
            .Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(10).OfBase)).Then("gel", p => p.Add(Hydrocolloids.GelatinTypeB, Dose.Percent(0.9).OfBase)).Serve(new ServicePlan { Texture = Texture.Soft, ServedAt = Celsius(8) }).Build()),
        new("gelatin jelly of strawberry juice", () => One(Pantry.StrawberryJuice, Hydrocolloids.GelatinTypeA, 1.8, Texture.Firm)),
        new("gelatin with canned pineapple: its enzyme is dead", () => One(Pantry.PineappleJuiceCanned, Hydrocolloids.GelatinTypeA, 1.8, Texture.Firm)),
        new("consommé jelly with gelatin", () => One(Pantry.BeefConsomme, Hydrocolloids.GelatinTypeB, 1.5, Texture.Firm)),
        new("kappa milk dessert: a fraction of the dose does in milk", () => One(Pantry.WholeMilk, Hydrocolloids.CarrageenanKappa, 0.25)),
        new("iota custard", () => One(Pantry.WholeMilk, Hydrocolloids.CarrageenanIota, 0.4, Texture.Soft)),
        new("kappa and locust bean gum dessert jelly", () => Two(Pantry.AppleJuice, Hydrocolloids.CarrageenanKappa, 0.5, Hydrocolloids.LocustBeanGum, 0.25))
        {
            Justified = new() { ["ph-while-heated"] = "apple juice is at pH 3.5, and kappa is cut under pH 4.3 while it is hot" },
        },
        new("low-acyl gellan with citrate before and calcium after", () => Formula.Named("tomato sheet").Base(b => b.Share(Pantry.TomatoWater, 100))
            .Then("bind", p => p.Add(Pantry.SodiumCitrate, Dose.Percent(0.15).OfBase)).Then("gel", p => p.Add(Hydrocolloids.GellanLowAcyl, Dose.Percent(0.35).OfBase))
            .Then("set", p => p.Add(Pantry.CalciumLactate, Dose.Percent(0.15).OfBase)).Serve(new ServicePlan { Texture = Texture.Firm }).Build()),
        new("high-acyl gellan in cream", () => One(Pantry.Cream35, Hydrocolloids.GellanHighAcyl, 0.3, Texture.Soft)),
        new("gellans together for an elastic gel", () => Two(Pantry.CucumberJuice, Hydrocolloids.GellanLowAcyl, 0.2, Hydrocolloids.GellanHighAcyl, 0.2)),
        new("fruit paste with high-methoxyl pectin, the acid last", () => Formula.Named("raspberry paste").Base(b => b.Share(Pantry.RaspberryJuice, 40).Share(Pantry.Sucrose, 60))
            .Then("gel", p => p.Add(Hydrocolloids.PectinHighMethoxylSlowSet, Dose.Percent(0.8).OfBase)).Then("acid", p => p.Add(Pantry.CitricAcid, Dose.Percent(0.5).OfBase))
            .Process(new ProcessPlan { Carriers = ValueList<string>.From(["raspberry-juice"]) }).Build()),
        new("low-sugar fruit preparation with amidated pectin and calcium", () => Formula.Named("strawberry preparation").Base(b => b.Share(Pantry.StrawberryJuice, 80).Share(Pantry.Sucrose, 20))
            .Then("gel", p => p.Add(Hydrocolloids.PectinAmidatedLowMethoxyl, Dose.Percent(0.9).OfBase)).Then("set", p => p.Add(Pantry.CalciumLactate, Dose.Percent(0.1).OfBase))
            .Process(new ProcessPlan { Carriers = ValueList<string>.From(["strawberry-juice"]) }).Build()),
        new("alginate for a calcium bath, in soft water", () => One(Pantry.WaterSoft, Hydrocolloids.SodiumAlginate, 0.6, Texture.Soft)),
        new("alginate for a calcium bath, in melon with citrate", () => Formula.Named("melon pearls").Base(b => b.Share(Pantry.CarrotJuice, 50).Share(Pantry.WaterDistilled, 50))
            .Then("bind", p => p.Add(Pantry.SodiumCitrate, Dose.Percent(0.2).OfBase)).Then("gel", p => p.Add(Hydrocolloids.SodiumAlginate, Dose.Percent(0.6).OfBase)).Build()),
        new("methylcellulose served hot", () => One(Pantry.VegetableStock, Hydrocolloids.Methylcellulose, 1.5, Texture.Firm, b => b.Serve(new ServicePlan { Texture = Texture.Firm, ServedAt = Celsius(65) }))),
        new("sauce with xanthan", () => One(Pantry.TomatoJuice, Hydrocolloids.XanthanGum, 0.25)),
        new("xanthan and locust bean gum gel", () => Two(Pantry.Water, Hydrocolloids.XanthanGum, 0.3, Hydrocolloids.LocustBeanGum, 0.3)),
        new("custard with maize starch", () => One(Pantry.WholeMilk, Hydrocolloids.StarchMaize, 4.5)),
        new("clear glaze with tapioca starch", () => One(Pantry.AppleJuice, Hydrocolloids.StarchTapioca, 4))
        {
            Justified = new() { ["ph-while-heated"] = "apple juice is at pH 3.5, and tapioca starch thins when it is cooked under pH 4.5" },
        },
        new("curdlan block, heated through", () => One(Pantry.DashiKombu, Hydrocolloids.Curdlan, 3, Texture.Firm)),
        new("guar in a dressing", () => One(Pantry.Water, Hydrocolloids.GuarGum, 0.4)),
        new("gelatin jelly of white wine", () => One(Pantry.WhiteWine, Hydrocolloids.GelatinTypeA, 1.8, Texture.Firm)),
    ];

    public static TheoryData<string> Names { get; } = new(s_formulas.Select(f => f.Name));

    [Fact]
    public void There_are_enough_of_them() => s_formulas.Should().HaveCountGreaterThanOrEqualTo(25);

    [Theory, MemberData(nameof(Names))]
    public void A_sound_formula_gives_no_conflict_and_only_cautions_with_a_reason(string name)
    {
        Sound sound = s_formulas.Single(f => f.Name == name);
        ValueList<Finding> findings = sound.Make().Review();

        findings.Where(f => f.Severity == Severity.Conflict).Should().BeEmpty();
        findings.Where(f => f.Severity == Severity.Caution).Select(f => f.Id).Should().BeSubsetOf(sound.Justified.Keys);
    }

    private static Formula One(Ingredient liquid, Ingredient agent, double percent, Texture? texture = null, Func<FormulaBuilder, FormulaBuilder>? more = null)
    {
        FormulaBuilder builder = Formula.Named("sound").Base(b => b.Share(liquid, 100))
            .Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase)).Serve(new ServicePlan { Texture = texture });
        return (more?.Invoke(builder) ?? builder).Build();
    }

    private static Formula Two(Ingredient liquid, Ingredient one, double percent, Ingredient other, double otherPercent) => Formula.Named("sound")
        .Base(b => b.Share(liquid, 100))
        .Then("gel", p => p.Add(one, Dose.Percent(percent).OfBase).Add(other, Dose.Percent(otherPercent).OfBase)).Build();

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    /// <param name="Name">What it is.</param>
    /// <param name="Make">Makes it.</param>
    private sealed record Sound(string Name, Func<Formula> Make)
    {
        /// <summary>Cautions that are right, and why.</summary>
        public Dictionary<string, string> Justified { get; init; } = [];
    }
}
