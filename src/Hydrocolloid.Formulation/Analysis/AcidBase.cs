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
    private const double LeastAcidPercent = 0.5;
    private const double PureWaterPercent = 99.9;
    private const double MostAgent = 0.02;

    /// <summary>The least part of the mix of a liquid whose uncertainty is that of the mix.</summary>
    private const double LeastThatCounts = 0.01;

    /// <summary>The least part of the mix at which a measured pH is still that of the mix: a gel with a little agent and sugar, say.</summary>
    private const double LeastMeasured = 0.95;

    /// <summary>Juices hold less dissolved calcium, but for that which a salt brings: above it some is bound (egg yolk) or not dissolved (calcium carbonate of a plant drink, oxalate).</summary>
    private const double MostDissolvedCalciumMmolPerKg = 12;

    public static AcidBase Of(MixLine[] lines)
    {
        var liquids = new List<MixPart>();
        var reagents = new List<(Reagent Reagent, double Share, MixLine Line)>();
        var without = new List<string>();
        bool estimated = false, measured = true, isSoured = false;
        double waterMass = 0, mostCalcium = 0;
        foreach (MixLine line in lines)
        {
            if (PureSubstances.Find(line.Ingredient) is { } reagent)
            {
                if (PureSubstances.PartsOf(line.Ingredient) is not { } parts)
                {
                    without.Add(line.Label);
                    continue;
                }

                reagents.Add((reagent, line.Share * parts.Pure, line));
                if (parts.Water > 0)
                {
                    liquids.Add(new MixPart(Chemistry.AcidBaseSystem.Water, line.Share * parts.Water));
                    waterMass += line.Share * parts.Water;
                }

                continue;
            }

            double water = LiquidModel.WaterOf(line.Ingredient) ?? 0;
            if (IsInert(line, water))
            {
                continue;
            }

            if (line.Ph is null && water >= PureWaterPercent)
            {
                liquids.Add(new MixPart(Chemistry.AcidBaseSystem.Water, line.Share));
                waterMass += line.Share;
                measured = false;
                estimated |= line.Share >= LeastThatCounts;
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
            mostCalcium = Math.Max(mostCalcium, liquid.System.Ions.CalciumMolPerKg * 1000);
            estimated |= line.Share >= LeastThatCounts && (!liquid.IsBuffered || line.Ingredient.WaterPercent is null);
            measured &= ph.IsMeasured;
            isSoured |= line.Share >= LeastThatCounts && line.Ingredient.MilkProtein?.Value.Casein != true && liquid.HasAcids;
        }

        if (liquids.Count == 0)
        {
            return new AcidBase(null, null, null);
        }

        double mass = liquids.Sum(l => l.PartByMass);
        AcidBaseSystem mix = liquids.Count == 1 ? liquids[0].Liquid : Chemistry.AcidBaseSystem.Mix(liquids);
        foreach ((Reagent reagent, double share, MixLine line) in reagents)
        {
            if (share > waterMass)
            {
                without.Add(line.Label); // a wet salt is no solution
                continue;
            }

            mix = mix.Add(reagent, share / mass * 1000); // per kg of what is there already
            mass += share;
        }

        AcidBaseState state = mix.Solve();
        ValueList<string> left = ValueList<string>.From(without);
        ReckonedHow how = measured && liquids.Count == 1 && reagents.Count == 0 && without.Count == 0 && mass >= LeastMeasured ? ReckonedHow.Measured
            : estimated ? ReckonedHow.Estimated : ReckonedHow.Computed;
        int caseinLines = lines.Count(l => l.Ingredient.MilkProtein?.Value.Casein == true);
        bool casein = caseinLines > 0;
        isSoured |= reagents.Exists(r => r.Reagent.Acid is not null);
        return new AcidBase(
            mix,
            new Reckoned(state.PH, "pH", how, "charge balance with activity correction, 25 °C",
                OutsideRange.Check("lines with casein, whose buffering is not in the balance,", isSoured ? caseinLines : 0, "", 0, 0) ?? state.Outside, left),
            new Reckoned(state.FreeCalciumMmolPerKgWater, "mmol/kg water", casein || estimated || mostCalcium > MostDissolvedCalciumMmolPerKg ? ReckonedHow.Estimated : ReckonedHow.Computed,
                casein ? "complexes with the acids; what casein binds is not taken off" : "complexes with the acids",
                OutsideRange.Check("lines with casein", caseinLines, "", 0, 0)
                    ?? OutsideRange.Check("calcium of a line, not all of which may be dissolved,", mostCalcium, "mmol/kg", 0, MostDissolvedCalciumMmolPerKg) ?? state.Outside, left));
    }

    /// <summary>Sugar, oil, and a hydrocolloid in the dose of a gel; not cocoa, nor an acid or a salt whose chemistry is not known.</summary>
    private static bool IsInert(MixLine line, double water) => line.Ingredient.Profile is not null ? line.Share < MostAgent
        : water < LeastWaterPercent && line.Ingredient.Category is not ("salt" or "acid") && line.Ingredient.Composition?.Value is { WaterPercent: not null } composition
            && (composition.OrganicAcidsPercent ?? 0) < LeastAcidPercent && Math.Max(composition.AshPercent ?? 0, MineralsPercent(composition)) < LeastAshPercent;

    private static double MineralsPercent(Composition composition)
        => ((composition.SodiumMg ?? 0) + (composition.PotassiumMg ?? 0) + (composition.CalciumMg ?? 0) + (composition.MagnesiumMg ?? 0)) / 1000;
}
