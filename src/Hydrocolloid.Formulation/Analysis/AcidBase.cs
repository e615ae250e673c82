using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Analysis;

/// <summary>
/// The acids and ions of a mix. Each liquid is represented by its pH and titratable acidity and its minerals, pure salts and acids by their
/// formulas; liquids are mixed conservatively, and the pH of the mix is solved.
/// </summary>
internal sealed record AcidBase(AcidBaseSystem? System, Reckoned? Ph, Reckoned? FreeCalcium)
{
    private const double LeastWaterPercent = 5;
    private const double LeastAshPercent = 1;
    private const double MostAgent = 0.02;

    public static AcidBase Of(MixLine[] lines)
    {
        var liquids = new List<MixPart>();
        var reagents = new List<(Reagent Reagent, MixLine Line)>();
        var without = new List<string>();
        bool estimated = false, measured = true;
        double waterMass = 0;
        foreach (MixLine line in lines)
        {
            if (PureSubstances.Find(line.Ingredient) is { } reagent)
            {
                reagents.Add((reagent, line));
                continue;
            }

            double water = line.Ingredient.WaterPercent ?? 0;
            if (IsInert(line, water))
            {
                continue;
            }

            if (line.Ph is not { } ph || water < LeastWaterPercent)
            {
                without.Add(line.Label);
                continue;
            }

            LiquidModel liquid = LiquidModel.Of(line.Ingredient, line.Line.Details.Measured?.Ph);
            liquids.Add(new MixPart(liquid.System, line.Share));
            waterMass += line.Share * water / 100;
            estimated |= !liquid.IsBuffered && line.Share >= 0.01;
            measured &= ph.IsMeasured;
        }

        if (liquids.Count == 0)
        {
            return new AcidBase(null, null, null);
        }

        double mass = liquids.Sum(l => l.PartByMass);
        AcidBaseSystem mix = liquids.Count == 1 ? liquids[0].Liquid : Chemistry.AcidBaseSystem.Mix(liquids);
        foreach ((Reagent reagent, MixLine line) in reagents)
        {
            if (line.Share > waterMass)
            {
                without.Add(line.Label); // a wet salt is no solution
                continue;
            }

            mix = mix.Add(reagent, line.Share / mass * 1000); // per kg of what is there already
            mass += line.Share;
        }

        AcidBaseState state = mix.Solve();
        ValueList<string> left = ValueList<string>.From(without);
        ReckonedHow how = measured && liquids.Count == 1 && reagents.Count == 0 ? ReckonedHow.Measured : estimated ? ReckonedHow.Estimated : ReckonedHow.Computed;
        int caseinLines = lines.Count(l => l.Ingredient.MilkProtein?.Value.Casein == true);
        bool casein = caseinLines > 0;
        return new AcidBase(
            mix,
            new Reckoned(state.PH, "pH", how, "charge balance with activity correction, 25 °C", state.Outside, left),
            new Reckoned(state.FreeCalciumMmolPerKgWater, "mmol/kg water", casein || estimated ? ReckonedHow.Estimated : ReckonedHow.Computed,
                casein ? "complexes with the acids; what casein binds is not taken off" : "complexes with the acids",
                OutsideRange.Check("lines with casein", caseinLines, "", 0, 0) ?? state.Outside, left));
    }

    /// <summary>Sugar, oil, and a hydrocolloid in the dose of a gel; not cocoa, nor a salt whose chemistry is not known.</summary>
    private static bool IsInert(MixLine line, double water) => line.Ingredient.Profile is not null ? line.Share < MostAgent
        : line.Ingredient.WaterPercent is not null && water < LeastWaterPercent && line.Ingredient.Category is not ("salt" or "acid")
            && line.Ingredient.Composition?.Value.AshPercent is null or < LeastAshPercent;
}
