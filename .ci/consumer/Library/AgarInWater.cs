using Hydrocolloid.Formulation;
using UnitsNet;

namespace Consumer;

public static class AgarInWater
{
    public static double GramsOfAgar(double grams) => Formula.Named("Agar in water")
        .Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase))
        .Build()
        .ScaleTo(Yield.Assembled(Mass.FromGrams(grams)))
        .MassOf(Hydrocolloids.Agar).Grams;
}
