using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>Cases of the rules about safety and the law of the market.</summary>
internal static class SafetyCases
{
    public static IEnumerable<RuleCase> All =>
    [
        new("a swallowing disorder", "clinical-audience", Severity.Conflict, () => Agar(0.5, new() { Audience = Audience.Dysphagia }), () => Agar(0.5, new() { Audience = Audience.General })),
        new("infants", "clinical-audience", Severity.Conflict, () => Agar(0.5, new() { Audience = Audience.Infants }), () => Agar(0.5, new() { Audience = Audience.YoungChildren })),
        new("firm cubes for young children", "choking-shape", Severity.Conflict, () => Agar(0.5, Shaped(PortionShape.Cube, Audience.YoungChildren)),
            () => Agar(0.3, Shaped(PortionShape.Cube, Audience.YoungChildren)), () => Agar(0.5, Shaped(PortionShape.Cube, null))),
        new("balls of set konjac for anyone", "choking-shape", Severity.Caution, () => Of(Hydrocolloids.KonjacGlucomannan, 3, Shaped(PortionShape.Sphere, Audience.General)), () => Of(Hydrocolloids.KonjacGlucomannan, 3, Shaped(PortionShape.Slice, Audience.General))),
        new("agar in an EU mini-cup", "eu-jelly-mini-cup", Severity.Conflict, () => Agar(0.5, Sold(Market.EuropeanUnion, null, PortionShape.MiniCup)),
            () => Of(Hydrocolloids.GelatinTypeA, 1.5, Sold(Market.EuropeanUnion, null, PortionShape.MiniCup)), () => Agar(0.5, new() { Shape = PortionShape.MiniCup })),
        new("pectin in an EU mini-cup", "eu-jelly-mini-cup", Severity.Conflict, () => Of(Hydrocolloids.PectinLowMethoxyl, 0.8, Sold(Market.EuropeanUnion, null, PortionShape.MiniCup)),
            () => Of(Hydrocolloids.PectinLowMethoxyl, 0.8, Sold(Market.EuropeanUnion, null, PortionShape.Spooned))),
        new("konjac in EU jelly sweets", "konjac-in-jelly-sweets", Severity.Conflict, () => Konjac(0.9, Sold(Market.EuropeanUnion, "jelly-confectionery")), () => Konjac(0.9, Sold(Market.EuropeanUnion, "soups")), () => Konjac(0.9, Sold(Market.EuropeanUnion))),
        new("konjac in a US mini-cup", "konjac-in-jelly-sweets", Severity.Conflict, () => Konjac(3, Sold(Market.UnitedStates, null, PortionShape.MiniCup)), () => Agar(0.5, Sold(Market.UnitedStates, null, PortionShape.MiniCup))),
        new("konjac over 10 g/kg in the EU", "eu-konjac-maximum", Severity.Conflict, () => Konjac(2.5, Sold(Market.EuropeanUnion, "soups")), () => Konjac(1.01, Sold(Market.EuropeanUnion, "soups")), () => Konjac(2.5, new())),
        new("curdlan in the EU", "eu-not-listed", Severity.Conflict, () => Of(Hydrocolloids.Curdlan, 3, Sold(Market.EuropeanUnion)), () => Of(Hydrocolloids.Curdlan, 3, Sold(Market.UnitedStates)), () => Of(Hydrocolloids.Curdlan, 3, new())),
        new("agar over 1.2 % in US soft candy", "us-maximum-use", Severity.Caution, () => Agar(1.32, Sold(Market.UnitedStates, "soft-candy")), () => Agar(1.21, Sold(Market.UnitedStates, "soft-candy")), () => Agar(1.32, Sold(Market.UnitedStates))),
        new("agar heated in wine of 12 % vol", "flammable-vapour", Severity.Caution, () => Boozy(100), () => Boozy(50)),
        new("a vegetable juice gel kept a day", "perishable", Severity.Information, () => Stored(Pantry.CucumberJuice), () => Stored(Pantry.LemonJuice), () => Stored(Ingredient.Own("house-juice", "House juice"))),
        new("a perishable gel at 20 °C for over 6 h", "warm-holding", Severity.Caution, () => Held(6.5, Pantry.CucumberJuice), () => Held(6, Pantry.CucumberJuice), () => Held(6.5, Ingredient.Own("house-juice", "House juice"))),
    ];

    public static Formula Of(Ingredient agent, double percent, ServicePlan service, Ingredient? liquid = null) => Formula.Named("test")
        .Base(b => b.Share(liquid ?? Pantry.Water, 100)).Then("gel", p => p.Add(agent, Dose.Percent(percent).OfBase)).Serve(service).Build();

    public static ServicePlan Sold(Market market, string? category = null, PortionShape? shape = null) => new() { Market = market, FoodCategory = category, Shape = shape };

    private static Formula Agar(double percent, ServicePlan service) => Of(Hydrocolloids.Agar, percent, service);

    private static Formula Konjac(double percent, ServicePlan service) => Of(Hydrocolloids.KonjacGlucomannan, percent, service);

    private static ServicePlan Shaped(PortionShape shape, Audience? audience) => new() { Shape = shape, Audience = audience };

    private static Formula Stored(Ingredient liquid) => Of(Hydrocolloids.Agar, 0.5, new() { StoredFor = Duration.FromHours(24), Covered = true }, liquid);

    private static Formula Held(double hours, Ingredient liquid)
        => Of(Hydrocolloids.Agar, 0.5, new() { ServedAt = Temperature.FromDegreesCelsius(20), HeldFor = Duration.FromHours(hours) }, liquid);

    private static Formula Boozy(double winePercent) => Formula.Named("test")
        .Base(b =>
        {
            b.Share(Pantry.RedWine, winePercent == 100 ? 90 : winePercent);
            b.Share(Pantry.Water, winePercent == 100 ? 10 : 100 - winePercent);
        })
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase)).Build();
}
