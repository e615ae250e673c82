using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about temperatures.</summary>
internal static class TemperatureCases
{
    public static IEnumerable<RuleCase> All =>
    [
        new("a deep pan in still air, US Food Code's two stages", "cools-too-slowly", Severity.Caution, () => InPan(60), () => InPan(12), () => InPan(60, isCast: false)),
        new("PC-006, leaves soaked at 28 °C", "soak-water-too-warm", Severity.Caution,
            () => Of(Hydrocolloids.GelatinTypeA, 1, new() { SoakAt = C(28) }), () => Of(Hydrocolloids.GelatinTypeA, 1, new() { SoakAt = C(15) }), () => Of(Hydrocolloids.GelatinTypeA, 1, new())),
        new("agar under 90 °C", "hydration-temperature", Severity.Conflict, () => Of(Hydrocolloids.Agar, 0.5, new() { HydrateAt = C(85) }), () => Of(Hydrocolloids.Agar, 0.5, new() { HydrateAt = C(90) })),
        new("methylcellulose over 20 °C", "hydration-temperature", Severity.Conflict, () => Of(Hydrocolloids.Methylcellulose, 1.5, new() { HydrateAt = C(25) }), () => Of(Hydrocolloids.Methylcellulose, 1.5, new() { HydrateAt = C(20) })),
        new("curdlan under 55 °C", "hydration-temperature", Severity.Conflict, () => Of(Hydrocolloids.Curdlan, 3, new() { HydrateAt = C(50) }), () => Of(Hydrocolloids.Curdlan, 3, new() { HydrateAt = C(55) })),
        new("locust bean gum under its protocol", "hydration-temperature", Severity.Caution, () => Of(Hydrocolloids.LocustBeanGum, 0.5, new() { HydrateAt = C(60) }), () => Of(Hydrocolloids.LocustBeanGum, 0.5, new() { HydrateAt = C(80) })),
        new("agar at 3600 m, where water boils at 88 °C; at 2800 m it boils at 90.6 °C", "boils-too-cool", Severity.Conflict,
            () => Of(Hydrocolloids.Agar, 0.5, new() { Altitude = Length.FromMeters(3600) }), () => Of(Hydrocolloids.Agar, 0.5, new() { Altitude = Length.FromMeters(2800) })),
        new("agar kept hot over 120 min", "held-hot-too-long", Severity.Caution,
            () => Of(Hydrocolloids.Agar, 0.5, new() { HydrateFor = Duration.FromMinutes(121) }), () => Of(Hydrocolloids.Agar, 0.5, new() { HydrateFor = Duration.FromMinutes(120) })),
        new("PC-027, hot agar into cold cream; the cream at 36 °C leaves the mix in the window, which is a caution", "joined-too-cold", Severity.Conflict, () => HotIntoCold(8), () => HotIntoCold(36), () => HotIntoCold(null)),
        new("hot agar with cold pieces, within its setting window", "joined-too-cold", Severity.Caution, () => WithPieces(4, 60), () => WithPieces(20, 50), () => WithPieces(null, 60)),
        new("high-acyl gellan under 80 °C", "cast-too-cool", Severity.Caution,
            () => Of(Hydrocolloids.GellanHighAcyl, 0.5, new() { CastAt = C(78) }), () => Of(Hydrocolloids.GellanHighAcyl, 0.5, new() { CastAt = C(81) }), () => Of(Hydrocolloids.GellanHighAcyl, 0.5, new())),
        new("agar cast at 30 °C", "cast-too-cool", Severity.Conflict, () => Of(Hydrocolloids.Agar, 0.5, new() { CastAt = C(30) }), () => Of(Hydrocolloids.Agar, 0.5, new() { CastAt = C(32) })),
        new("gelatin over 25 °C", "served-outside-its-temperature", Severity.Caution,
            () => Served(Hydrocolloids.GelatinTypeA, 1.5, 26), () => Served(Hydrocolloids.GelatinTypeA, 1.5, 25), () => Of(Hydrocolloids.GelatinTypeA, 1.5, new())),
        new("gelatin served hot", "served-outside-its-temperature", Severity.Conflict, () => Served(Hydrocolloids.GelatinTypeA, 1.5, 40), () => Served(Hydrocolloids.GelatinTypeA, 1.5, 34)),
        new("methylcellulose under 35 °C", "served-outside-its-temperature", Severity.Caution, () => Served(Hydrocolloids.Methylcellulose, 1.5, 30), () => Served(Hydrocolloids.Methylcellulose, 1.5, 35)),
        new("kappa-carrageenan in its melting window", "served-outside-its-temperature", Severity.Caution, () => Served(Hydrocolloids.CarrageenanKappa, 0.7, 60), () => Served(Hydrocolloids.CarrageenanKappa, 0.7, 50)),
    ];

    /// <summary>PC-027 (a cookery forum; masses and temperatures chosen in the case): 3 g of agar boiled in 100 g of water, stirred into 750 g of cream.</summary>
    /// <param name="creamCelsius">Temperature of the cream, °C; null if not stated.</param>
    public static Formula HotIntoCold(double? creamCelsius) => Formula.Named("PC-027")
        .Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(100)).Weigh(Pantry.Cream35, Mass.FromGrams(750), l => At(l, creamCelsius)))
        .Then("gel", p => p.Weigh(Hydrocolloids.Agar, Mass.FromGrams(3), DoseReference.Base))
        .Process(new ProcessPlan { Carriers = ValueList<string>.From([Pantry.Water.Id]), HydrateAt = C(90) }).Build();

    private static Formula WithPieces(double? celsius, double percent) => Formula.Named("test")
        .Base(b => b.Share(Pantry.PearJuice, 100 - percent).Share(Pantry.Pear, percent, l => At(l.Pieces(), celsius)))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.3).OfBase)).Build();

    private static void At(LineBuilder line, double? celsius)
    {
        if (celsius is { } c)
        {
            line.At(C(c));
        }
    }

    private static Formula Served(Ingredient agent, double percent, double celsius) => Of(agent, percent, new()).WithService(new ServicePlan { ServedAt = C(celsius) });

    private static Formula Of(Ingredient agent, double percent, ProcessPlan process) => Formula.Named("test")
        .Base(b => b.Share(Pantry.Water, 100)).Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase)).Process(process).Build();

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static Formula InPan(double millimetres, bool isCast = true) => Formula.Named("pan").Base(b => b.Share(Pantry.BeetrootJuice, 100))
        .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(1.8).OfBase))
        .Process(new ProcessPlan
        {
            CastAt = isCast ? UnitsNet.Temperature.FromDegreesCelsius(60) : null,
            Mould = new MouldPlan("pan") { Shape = MouldShape.Block(UnitsNet.Length.FromMillimeters(300), UnitsNet.Length.FromMillimeters(200), UnitsNet.Length.FromMillimeters(millimetres)) },
            Cooling = ValueList<CoolingStage>.From([new CoolingStage("refrigerator", UnitsNet.Temperature.FromDegreesCelsius(2)) { Medium = Hydrocolloid.Formulation.Thermal.CoolingMedium.FanRefrigerator }]),
        }).Build();
}
