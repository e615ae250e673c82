using Hydrocolloid.Formulation.Costing;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Costing;

/// <summary>A café's formula and invented prices that several tests start from.</summary>
internal static class Kitchen
{
    public static readonly DateTime Today = new(2026, 3, 1);

    public static readonly Currency Euro = Currency.Of("EUR");

    public static Money Eur(decimal amount) => new(amount, Euro);

    public static Price PerKilo(string ingredient, decimal amount) => Price.PerMass(ingredient, Eur(amount), Mass.FromGrams(1000));

    public static PriceList Prices(params Price[] prices) => new(Euro, prices);

    public static Ingredient Of(string id) => Ingredient.Own(id, id);

    /// <summary>1000 g of juice and 100 g of sugar, then 11 g of agar: 1 % of both.</summary>
    public static Formula Jelly(string juice = "juice") => Formula.Named("jelly")
        .Base(b => b.Share(Of(juice), 100))
        .Then("sweeten", p => p.Add(Of("sugar"), Dose.Percent(10).OfBase))
        .Then("gel", p => p.Add(Of("agar-x"), Dose.Percent(1).OfPreceding))
        .Build();

    public static PriceList JellyPrices => Prices(PerKilo("juice", 2.40m), PerKilo("sugar", 1.10m), PerKilo("agar-x", 38.40m));

    public static Formula Mix(params (string Id, double Percent)[] parts) => Formula.Named("mix")
        .Base(b =>
        {
            foreach ((string id, double percent) in parts)
            {
                b.Share(Of(id), percent);
            }
        })
        .Build();
}
