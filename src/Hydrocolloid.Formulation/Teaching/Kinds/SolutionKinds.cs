using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>°Brix and alcohol of a mix.</summary>
internal static class SolutionKinds
{
    public static ExerciseKind[] All =>
    [
        new("brix", "To a Brix", 2, Brix),
        new("abv", "To an alcohol by volume", 2, Abv, needsCalculator: true),
    ];

    private static string N(double value) => Numbers.Significant(value, 6);

    // 1: with sugar; 2: with syrup.
    private static ExerciseDraft? Brix(ExerciseDraw draw)
    {
        double brix = draw.Number("brix", 8, 16, draw.Settings.WithCalculator ? 1 : 2, "°Brix");
        double target = draw.Number("brix-target", 20, 40, draw.Settings.WithCalculator ? 1 : 10, "°Brix");
        double added = draw.Level == 1 ? 100 : draw.Number("brix-added", 60, 70, draw.Settings.WithCalculator ? 1 : 5, "°Brix");
        var (mass, text, conversion) = draw.BulkMass("juice-mass", 500, 3000, draw.Settings.WithCalculator ? 50 : 500);
        string what = added == 100 ? "sugar" : $"syrup of {N(added)} °Brix";
        double grams = mass.Grams;
        return new ExerciseDraft(
            $"{text} of juice has {N(brix)} °Brix. How many grams of {what} bring it to {N(target)} °Brix?",
            AnswerForm.Number(QuantityKind.Mass, "g"),
            made =>
            {
                bool forgot = made(ForgotSugar);
                double missing = grams * (target - brix) / 100;
                double spare = forgot ? added : added - target;
                // Forgetting that what is added makes the mix larger: the missing sugar over the added strength alone.
                double result = forgot ? missing / added * 100 : SucroseWater.ToBrix(mass, brix, added, target).Grams;
                return WorkedSolution.Of(
                    new SolutionStep("So much sugar is missing in the juice itself.", "missing", $"{N(grams)} g × ({N(target)} - {N(brix)})/100", missing, "g"),
                    new SolutionStep("What is added needs its own share: only what it has above the target makes up for what is missing.", "to spare", forgot ? N(added) : $"{N(added)} - {N(target)}", spare, "%"),
                    new SolutionStep("Divide what is missing by what each gram has to spare.", "added", $"{N(missing)} g / ({N(spare)}/100)", result, "g")).After(conversion);
            }, ForgotSugar);
    }

    // 1: spirit and water; 2: the strength of a blend.
    private static ExerciseDraft? Abv(ExerciseDraw draw)
    {
        double strong = draw.Number("abv", 36, 60, 2, "% vol");
        double strongByMass = draw.State("by-mass", Numbers.RoundHalfAway(EthanolWater.PercentByMass(strong), 3), "%");
        var (mass, text, conversion) = draw.BulkMass("spirit-mass", 100, 1000, 50);
        double grams = mass.Grams;
        if (draw.Level == 1)
        {
            double target = draw.Number("abv-target", 8, 24, 2, "% vol");
            double targetByMass = draw.State("target-by-mass", Numbers.RoundHalfAway(EthanolWater.PercentByMass(target), 3), "%");
            // The board counts with the strengths as they are stated; the blend of the library must agree.
            double water = EthanolWater.ToStrength(mass, strong, 0, target).Added.Grams;
            return Math.Abs(grams * (strongByMass - targetByMass) / targetByMass / water - 1) > 3e-4 ? null : new ExerciseDraft(
                $"{text} of spirit has {N(strong)} % alcohol by volume, which is {N(strongByMass)} % by mass. How many grams of water bring it to {N(target)} % by volume ({N(targetByMass)} % by mass)?",
                AnswerForm.Number(QuantityKind.Mass, "g"),
                made =>
                {
                    double from = made(VolumeForMass) ? strong : strongByMass, to = made(VolumeForMass) ? target : targetByMass;
                    double result = grams * (from - to) / to;
                    return WorkedSolution.Of(
                        new SolutionStep("The alcohol weighs the same before and after; work with % by mass.", "alcohol", $"{N(grams)} g × {N(from)}/100", grams * from / 100, "g"),
                        new SolutionStep("Divide by the share that it shall have.", "blend", $"{N(grams * from / 100)} g / ({N(to)}/100)", grams + result, "g"),
                        new SolutionStep("The rest is water.", "water", $"{N(grams + result)} g - {N(grams)} g", result, "g")).After(conversion);
                }, VolumeForMass);
        }

        double juice = Math.Round(grams * draw.Number("juice-parts", 1, 6, 1, ""));
        EthanolBlend blend = EthanolWater.Blend(mass, strong, UnitsNet.Mass.FromGrams(juice), 0);
        draw.State("juice-mass", juice, "g");
        return Math.Abs(grams * strongByMass / (grams + juice) / blend.EthanolPercentByMass - 1) > 1e-4 ? null : new ExerciseDraft(
            $"{text} of spirit of {N(strong)} % alcohol by volume ({N(strongByMass)} % by mass) is mixed with {N(juice)} g of water. What percentage of alcohol by mass has the blend?",
            AnswerForm.Number(QuantityKind.Percent, "%"),
            made =>
            {
                double share = made(VolumeForMass) ? strong : strongByMass;
                return WorkedSolution.Of(
                    new SolutionStep("The mass of the alcohol.", "alcohol", $"{N(grams)} g × {N(share)}/100", grams * share / 100, "g"),
                    new SolutionStep("Over everything.", "by mass", $"{N(grams * share / 100)} g / ({N(grams)} g + {N(juice)} g) × 100 %",
                        made(PlainAverage) ? share / 2 : grams * share / (grams + juice), "%")).After(conversion);
            }, VolumeForMass, PlainAverage);
    }
}
