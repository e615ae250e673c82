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

    public static AcidBase Of(MixLine[] lines)
    {
        var liquids = new List<MixPart>();
        var reagents = new List<(Reagent Reagent, double Share)>();
        var without = new List<string>();
        bool estimated = false, measured = true;
        foreach (MixLine line in lines)
        {
            if (PureSubstances.Find(line.Ingredient) is { } reagent)
            {
                reagents.Add((reagent, line.Share));
                continue;
            }

            double water = line.Ingredient.WaterPercent ?? 0;
            if (water < LeastWaterPercent && line.Ingredient.WaterPercent is not null)
            {
                continue; // dry and inert: sugar, oil, a hydrocolloid
            }

            if (line.Ph is not { } ph || line.Ingredient.WaterPercent is null)
            {
                without.Add(line.Label);
                continue;
            }

            (AcidBaseSystem liquid, bool isBuffered) = Liquid(line, ph.Value, water);
            liquids.Add(new MixPart(liquid, line.Share));
            estimated |= !isBuffered && line.Share >= 0.01;
            measured &= ph.IsMeasured;
        }

        if (liquids.Count == 0)
        {
            return new AcidBase(null, null, null);
        }

        double mass = liquids.Sum(l => l.PartByMass);
        AcidBaseSystem mix = liquids.Count == 1 ? liquids[0].Liquid : Chemistry.AcidBaseSystem.Mix(liquids);
        foreach ((Reagent reagent, double share) in reagents)
        {
            mix = mix.Add(reagent, share / mass * 1000);
        }

        AcidBaseState state = mix.Solve();
        ValueList<string> left = ValueList<string>.From(without);
        ReckonedHow how = measured && liquids.Count == 1 && reagents.Count == 0 ? ReckonedHow.Measured : estimated ? ReckonedHow.Estimated : ReckonedHow.Computed;
        bool casein = lines.Any(l => l.Ingredient.MilkProtein?.Value.Casein == true);
        return new AcidBase(
            mix,
            new Reckoned(state.PH, "pH", how, "charge balance with activity correction, 25 °C", state.Outside, left),
            new Reckoned(state.FreeCalciumMmolPerKgWater, "mmol/kg water", casein || estimated ? ReckonedHow.Estimated : ReckonedHow.Computed,
                casein ? "complexes with the acids; what casein binds is not taken off" : "complexes with the acids", state.Outside, left));
    }

    private static (AcidBaseSystem Liquid, bool IsBuffered) Liquid(MixLine line, double ph, double water)
    {
        AcidBaseSystem? system = null;
        if (line.Ingredient.TitratableAcidity?.Value is { } acidity && PureSubstances.FindAcid(acidity.As) is { } acid && ph < Chemistry.AcidBaseSystem.DefaultEndPointPH)
        {
            system = Buffered(ph, acidity.Percent, acid, water);
        }

        StrongIons ions = Minerals(line.Ingredient.Composition?.Value);
        return system is null ? (Chemistry.AcidBaseSystem.Of([], ions, water).WithPH(ph), false)
            : (Chemistry.AcidBaseSystem.Of(system.AcidAmounts, ions, water).WithPH(ph), true);
    }

    private static AcidBaseSystem? Buffered(double ph, double acidityPercent, Acid acid, double water)
    {
        try
        {
            return Chemistry.AcidBaseSystem.FromMeasured(ph, acidityPercent, acid, water);
        }
        catch (ArgumentOutOfRangeException)
        {
            return null; // the record's pH and acidity do not fit together: the pH stands, without a buffer
        }
    }

    private static StrongIons Minerals(Composition? composition) => composition is null ? default : new StrongIons
    {
        SodiumMolPerKg = (composition.SodiumMg ?? 0) / 2299.0,
        PotassiumMolPerKg = (composition.PotassiumMg ?? 0) / 3909.8,
        CalciumMolPerKg = (composition.CalciumMg ?? 0) / 4007.8,
        MagnesiumMolPerKg = (composition.MagnesiumMg ?? 0) / 2430.5,
    };
}
