using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Analysis;

/// <summary>Analyses that several tests start from.</summary>
internal static class Contents
{
    public static MixContents Of(Ingredient ingredient) => Of((ingredient, 100));

    /// <summary>A base of shares by weight, brought to 100.</summary>
    public static MixContents Of(params (Ingredient Ingredient, double Parts)[] parts) => Base(parts).Analyse().Assembled;

    public static Formula Base(params (Ingredient Ingredient, double Parts)[] parts)
    {
        double sum = parts.Sum(p => p.Parts);
        return Formula.Named("mix").Base(b =>
        {
            foreach ((Ingredient ingredient, double share) in parts)
            {
                b.Share(ingredient, share / sum * 100);
            }
        }).Build();
    }

    public static Reckoned[] Parts(MixContents c)
        => [c.Water, c.Sugars, c.OtherCarbohydrate, c.Fibre, c.Protein, c.Fat, c.Ash, c.Ethanol, c.OrganicAcids];

    public static IonContent[] Minerals(MixContents c) => [c.Calcium, c.Potassium, c.Sodium, c.Magnesium];

    public static IEnumerable<(string Name, Reckoned Value)> All(MixContents c)
    {
        foreach (Reckoned part in Parts(c))
        {
            yield return ("part", part);
        }

        foreach (IonContent mineral in Minerals(c))
        {
            yield return (mineral.Name, mineral.MilligramsPerKg);
        }

        yield return ("Brix", c.Brix);
        yield return ("alcohol", c.AlcoholByVolume);
        yield return ("water activity", c.WaterActivity);
        if (c.Ph is { } ph)
        {
            yield return ("pH", ph);
            yield return ("free calcium", c.FreeCalcium!);
        }

        foreach (double celsius in new double[] { 4, 20, 80 })
        {
            Temperature at = Temperature.FromDegreesCelsius(celsius);
            yield return ("density", c.DensityAt(at));
            yield return ("specific heat", c.SpecificHeatAt(at));
            yield return ("conductivity", c.ConductivityAt(at));
        }
    }
}
