namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>The formula that all benchmarks work on: two base lines and ten additions in three phases.</summary>
internal static class TwelveLines
{
    public static Formula Build() => Formula.Named("Twelve lines")
        .Base(b => b
            .Share(Pantry.PearJuice, 80)
            .Share(Pantry.Water, 20))
        .Then("season", p => p
            .Add(Pantry.Sucrose, Dose.Percent(8).OfBase)
            .Add(Pantry.Glycerol, Dose.Percent(2).OfBase)
            .Add(Pantry.CitricAcid, Dose.Percent(0.2).OfBase)
            .Add(Pantry.Salt, Dose.Percent(0.1).OfBase))
        .Then("gel", p => p
            .Add(Hydrocolloids.Agar, Dose.Percent(0.4).OfPreceding)
            .Add(Hydrocolloids.LocustBeanGum, Dose.Percent(0.1).OfPreceding)
            .Add(Hydrocolloids.XanthanGum, Dose.Percent(0.05).OfPreceding)
            .Add(Pantry.SodiumCitrate, Dose.Percent(10).Of(Pantry.CitricAcid)))
        .Then("finish", p => p
            .Add(Pantry.LemonJuice, Dose.Percent(3).OfPreceding)
            .Add(Pantry.Spirit40, Dose.Percent(2).OfTotal))
        .Build();
}
