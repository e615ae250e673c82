using Hydrocolloid.Formulation.Chemistry;

namespace Hydrocolloid.Formulation.Analysis;

/// <summary>Water activity of a mix by the Ross equation, from the solutes that lower it.</summary>
internal static class WaterActivityEstimate
{
    // All sodium is counted as salt.
    private static readonly double SaltPerSodium = Reagents.SodiumChloride.MolarMassGramsPerMol / MixContents.GramsPerMolSodium;

    // A trace of water in dry sugar: far beyond the range of the relation, which it says.
    private const double MostGramsPer100GWater = 100_000;

    public static Reckoned Of(MixLine[] lines, Reckoned water, Reckoned ethanol, ValueList<string> without)
    {
        // Sugars of table sugar are sucrose; those of fruit, honey and syrups are taken as glucose and fructose, which share a constant.
        double sucrose = 0, hexose = 0, glycerol = 0, sorbitol = 0, sodium = 0;
        foreach (MixLine line in lines)
        {
            double sugars = line.Share * (line.Part(c => c.SugarsPercent) ?? 0);
            string id = (line.Ingredient.BasedOn ?? line.Ingredient).Id;
            if (id == "sucrose")
            {
                sucrose += sugars;
            }
            else if (id == "glycerol")
            {
                glycerol += line.Share * 100;
            }
            else if (id == "sorbitol")
            {
                sorbitol += line.Share * 100;
            }
            else
            {
                hexose += sugars;
            }

            sodium += line.Share * (line.Part(c => c.SodiumMg) ?? 0) / 1000;
        }

        if (!(water.Value > 0))
        {
            return new Reckoned(double.NaN, "water activity", ReckonedHow.Estimated, "no water", null, without);
        }

        double Per100GWater(double percent) => Math.Min(MostGramsPer100GWater, percent / water.Value * 100);
        Computed<double> activity = Chemistry.WaterActivity.Ross(
        [
            new SoluteAmount(Solute.Sucrose, Per100GWater(sucrose)),
            new SoluteAmount(Solute.Glucose, Per100GWater(hexose)),
            new SoluteAmount(Solute.Glycerol, Per100GWater(glycerol)),
            new SoluteAmount(Solute.Sorbitol, Per100GWater(sorbitol)),
            new SoluteAmount(Solute.SodiumChloride, Per100GWater(sodium * SaltPerSodium)),
        ]);
        return new Reckoned(activity.Value, "water activity", ReckonedHow.Estimated, "Ross equation over sugars, glycerol, sorbitol and salt, 25 °C",
            activity.Outside ?? OutsideRange.Check("ethanol", ethanol.Value, "% by weight", 0, 1), without);
    }
}
