using Hydrocolloid.Formulation.Analysis;
using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>A line of the formula that may carry a small one, and how much of it the carrier takes.</summary>
internal sealed class WeighingCarrier
{
    /// <summary>The most of a substance whose solubility is not at hand: common practice, no source.</summary>
    private const double CautiousShare = 0.1;

    // Below about 40 °C a liquid counts as cold: what must be heated beyond it has not dissolved in a cold stock.
    private const double ColdCelsius = 40;

    private WeighingCarrier(WeighingWay way, FormulaLine line, double mostShare, params Cited<string>[] advice)
    {
        Way = way;
        Line = line;
        MostShare = mostShare;
        Advice = ValueList<Cited<string>>.Own(advice);
    }

    public WeighingWay Way { get; }

    public FormulaLine Line { get; }

    /// <summary>The largest mass fraction of the substance in stock or premix.</summary>
    public double MostShare { get; }

    public ValueList<Cited<string>> Advice { get; }

    /// <summary>What may carry a line, best first, and the reasons why not otherwise.</summary>
    public static IEnumerable<WeighingCarrier> For(Formula formula, FormulaLine small, List<string> reasons)
    {
        List<WeighingCarrier> stocks = [.. Stocks(formula, small, reasons)];
        List<WeighingCarrier> premixes = [.. Premixes(formula, small, reasons)];

        // Powders that swell go better between dry grains; what dissolves is spread more evenly by water.
        return small.Ingredient.Profile is null ? stocks.Concat(premixes) : premixes.Concat(stocks);
    }

    private static IEnumerable<WeighingCarrier> Stocks(Formula formula, FormulaLine small, List<string> reasons)
    {
        (double share, Cited<string>[] advice) = InWater(small.Ingredient, out string reason);
        FormulaLine[] waters = [.. Others(formula, small).Where(l => l.Ingredient.IsPlainWater)];
        if (waters.Length == 0)
        {
            reasons.Add("the formula holds no water to make a stock with");
        }
        else if (share == 0)
        {
            reasons.Add(reason);
        }

        return waters.Where(_ => share > 0).Select(l => new WeighingCarrier(WeighingWay.Stock, l, share, advice));
    }

    private static IEnumerable<WeighingCarrier> Premixes(Formula formula, FormulaLine small, List<string> reasons)
    {
        FormulaLine[] dry = [.. Others(formula, small).Where(l => MayBlend(small, l)).OrderByDescending(l => l.Ingredient.IsDrySugar)];
        if (!IsDryPowder(small.Ingredient))
        {
            reasons.Add($"{small.Ingredient} is not known as a dry powder to blend");
            return [];
        }

        if (dry.Length == 0)
        {
            reasons.Add("the formula holds no dry sugar or salt to blend it with");
        }

        Cited<NumberRange>? parts = small.Ingredient.Profile?.Dispersal.SugarPartsPerPart;
        double least = parts?.Value.Min ?? 1;
        return dry.Select(l => new WeighingCarrier(WeighingWay.Premix, l, 1 / (1 + least),
        [
            .. parts is null ? [] : new[] { new Cited<string>($"At least {Numbers.Significant(least, 4)} parts of {l.Ingredient} to one, so that the grains wet one by one.", parts.Citation) },
            new($"Work the {l.Ingredient} in a little at a time, each time about as much as is there, and sieve it twice.", Citation.CommonPractice),
            new("Keep it dry and closed, with both names, the share and the date on it, no longer than either powder keeps; turn the jar over before each use, for fine and coarse grains part.", Citation.CommonPractice),
        ]));
    }

    private static IEnumerable<FormulaLine> Others(Formula formula, FormulaLine small)
        => small.IsContinuous ? formula.Lines.Where(l => l.Index != small.Index && l.IsContinuous && formula.Proportions.MassOf(l) > 0) : [];

    /// <summary>Dry sugar or salt; with a hydrocolloid only if it is in by then anyway, and salt only if the catalogue sets no limit to it while that hydrates.</summary>
    private static bool MayBlend(FormulaLine small, FormulaLine carrier)
    {
        bool isSalt = PureSubstances.Find(carrier.Ingredient) == Reagents.SodiumChloride;
        return (carrier.Ingredient.IsDrySugar || isSalt) && (small.Ingredient.Profile is not { } profile
            || (carrier.PhaseIndex <= small.PhaseIndex && !(isSalt && profile.Limits.Any(l => l is { Stage: LimitStage.Hydrating, Quantity: LimitedQuantity.Sodium or LimitedQuantity.Cations }))));
    }

    // A soaked hydrocolloid (gelatin) is not: it comes in leaves too, and swells in its own water first.
    private static bool IsDryPowder(Ingredient ingredient) => ingredient.Profile is { } profile
        ? profile.Dispersal.SoakWaterPartsPerPart is null
        : ingredient.IsDrySugar || ingredient.Category is "salt" or "acid";

    /// <summary>The largest mass fraction that a stock in cold water holds, with advice; 0 and the reason if there is none.</summary>
    private static (double Share, Cited<string>[] Advice) InWater(Ingredient ingredient, out string reason)
    {
        reason = "";
        var keep = new Cited<string>("Keep it covered in the cold and use it the same day; stir before each part is taken.", Citation.CommonPractice);
        if (ingredient.Profile is { } profile)
        {
            return OfHydrocolloid(ingredient, profile, keep, out reason);
        }

        if (PureSubstances.Find(ingredient) is { } reagent)
        {
            if (reagent.Solid is not null)
            {
                reason = $"{ingredient} dissolves too little for a stock";
                return (0, []);
            }

            if (reagent.SolubilityGramsPer100GWater is { } solubility)
            {
                return (solubility.Value / (100 + solubility.Value), [new($"At most {Numbers.Significant(solubility.Value, 3)} g dissolve in 100 g of water at 25 °C: stir until clear.", solubility.Citation), keep]);
            }
        }

        if ((ingredient.BasedOn ?? ingredient).Id == "sucrose")
        {
            return (SucroseWater.SolubilityPercent(Temperature.FromDegreesCelsius(20)).Value / 100, [new("Stir until clear.", Citation.CommonPractice), keep]);
        }

        if (ingredient.IsDrySugar || ingredient.Category is "salt" or "acid")
        {
            return (CautiousShare, [new("How much of it dissolves is not known here: stir until clear, and do not use a stock with a sediment.", Citation.CommonPractice), keep]);
        }

        // A watery liquid without fat mixes with water in any proportion.
        if (ingredient is { WaterPercent: >= 50, Composition.Value.FatPercent: <= 1 })
        {
            return (0.5, [keep]);
        }

        reason = $"it is not known how {ingredient} goes into water";
        return (0, []);
    }

    private static (double Share, Cited<string>[] Advice) OfHydrocolloid(Ingredient ingredient, HydrocolloidProfile profile, Cited<string> keep, out string reason)
    {
        Cited<NumberRange>? limit = profile.Limits.FirstOrDefault(l => l is { Quantity: LimitedQuantity.Concentration, Stage: LimitStage.Hydrating, Range.Value.Max: not null })?.Range;
        Cited<NumberRange>? most = limit ?? profile.WindowFor(Texture.Thickened)?.Percent;
        if (most?.Value.Max is not { } percent || profile.Dispersal.SoakWaterPartsPerPart is not null)
        {
            reason = $"the catalogue knows no strength at which {ingredient} still pours as a cold stock";
            return (0, []);
        }

        reason = "";
        var advice = new List<Cited<string>>(profile.Dispersal.Medium.Take(1))
        {
            new($"At most {Numbers.Significant(percent, 4)} %: {(limit is null ? "the upper end of the doses that thicken" : "the most that hydrates")}.", most.Citation),
        };
        if (profile.Hydration.Window.Value.Celsius.Min is { } hot && hot > ColdCelsius)
        {
            advice.Add(new($"Cold it is only spread, not dissolved: it settles, so stir while taking parts, and it still has to reach {Numbers.Significant(hot, 4)} °C in the mix.", profile.Hydration.Window.Citation));
        }

        advice.Add(keep);
        return (percent / 100, [.. advice]);
    }
}
