using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Finds a balance for every line, and a stock or premix for the lines that have none.</summary>
internal static class WeighingPlanner
{
    /// <summary>What is made more of a stock or premix than the batches take, for what stays in its vessel: common practice, no source.</summary>
    private const double Surplus = 0.05;

    private const int MostStepsForTotal = 1000;

    // The parts of the tolerance that the substance and the aliquot may each use up; the rest is for the carrier. The largest part gives the smallest stock.
    private static readonly double[] s_partsOfTolerance = [0.45, 0.4, 1.0 / 3, 0.25];

    public static WeighingPlan Plan(Batch batch, WeighingSetup setup)
    {
        double[] left = [.. batch.Lines.Select(l => l.Grams)];
        var preparations = new Preparation?[left.Length];
        var reasons = new List<string>?[left.Length];
        bool[] direct = [.. left.Select(grams => grams > 0 && setup.Read(grams, setup.Tolerance) is not null)];
        for (int i = 0; i < left.Length; i++)
        {
            if (left[i] > 0 && !direct[i])
            {
                reasons[i] = [TooSmall(setup, left[i])];
                preparations[i] = Prepare(batch, setup, batch.Lines[i], left, direct, reasons[i]!);
            }
        }

        var readings = new BalanceReading?[left.Length];
        for (int i = 0; i < left.Length; i++)
        {
            readings[i] = direct[i] ? setup.Read(left[i], setup.Tolerance) : null;
        }

        KeepTotal(setup, batch, readings, left, preparations);
        var lines = new PlannedLine[left.Length];
        for (int i = 0; i < lines.Length; i++)
        {
            lines[i] = Line(batch.Lines[i], readings[i], preparations[i], preparations, reasons[i]);
        }

        return new WeighingPlan(batch, setup, ValueList<PlannedLine>.Own(lines), ValueList<Preparation>.From(preparations.OfType<Preparation>()));
    }

    private static PlannedLine Line(BatchLine line, BalanceReading? reading, Preparation? preparation, Preparation?[] all, List<string>? reasons)
    {
        if (preparation is not null)
        {
            return new PlannedLine(line.Line, preparation.Way, line.Grams, null, preparation, preparation.SubstanceInAliquotGrams, preparation.UncertaintyPercent / 100 * line.Grams, default);
        }

        if (reasons is not null)
        {
            return new PlannedLine(line.Line, WeighingWay.NotPossible, line.Grams, null, null, null, null, ValueList<string>.From(reasons));
        }

        Preparation[] carries = [.. all.OfType<Preparation>().Where(p => p.CarrierLine == line.Line)];
        return new PlannedLine(line.Line, WeighingWay.Direct, line.Grams, reading, null, (reading?.Grams ?? 0) + carries.Sum(p => p.CarrierInAliquotGrams),
            (reading?.UncertaintyGrams ?? 0) + carries.Sum(p => p.Aliquot.UncertaintyGrams), default);
    }

    /// <summary>
    /// What the rounding of all lines leaves of the total is handed out step by step of the coarsest balance, each to the line that is then least off, as
    /// long as that line stays within the tolerance: in a formula with one large line, all of it to that one.
    /// </summary>
    private static void KeepTotal(WeighingSetup setup, Batch batch, BalanceReading?[] readings, double[] left, Preparation?[] preparations)
    {
        double coarsest = readings.Max(r => r?.Balance.DivisionGrams ?? 0);
        double rest = 0;
        for (int i = 0; i < readings.Length; i++)
        {
            rest += (readings[i] ?? preparations[i]?.Aliquot) is { } reading ? batch.Lines[i].Grams - reading.Grams : 0;
        }

        // Each reading leaves half a step; more steps than this are needed only where an aliquot's balance is far coarser than all others.
        for (int steps = 0; steps < MostStepsForTotal && coarsest > 0 && Math.Abs(rest) > coarsest / 2 * (1 + 1e-9); steps++)
        {
            double step = Math.Sign(rest) * coarsest;
            int best = -1;
            double least = setup.Tolerance;
            for (int i = 0; i < readings.Length; i++)
            {
                if (readings[i] is { } reading && reading.Balance.DivisionGrams == coarsest && Math.Abs(reading.Grams + step - left[i]) / batch.Lines[i].Grams is var off && off <= least)
                {
                    (best, least) = (i, off);
                }
            }

            if (best < 0)
            {
                return;
            }

            readings[best] = readings[best]!.At(readings[best]!.Balance.RoundGrams(readings[best]!.Grams + step));
            rest -= step;
        }
    }

    private static Preparation? Prepare(Batch batch, WeighingSetup setup, BatchLine small, double[] left, bool[] direct, List<string> reasons)
    {
        foreach (WeighingCarrier offer in WeighingCarrier.For(batch.Formula, small.Line, reasons))
        {
            if (direct[offer.Line.Index] && Size(setup, small, offer, left[offer.Line.Index]) is { } preparation)
            {
                left[offer.Line.Index] -= preparation.CarrierInAliquotGrams;
                return preparation;
            }

            reasons.Add($"a {(offer.Way == WeighingWay.Stock ? "stock in" : "premix with")} {offer.Line.Ingredient} of at most {Numbers.Significant(100 * offer.MostShare, 4)} % would need more of it than the formula has to spare, or is beyond the balances");
        }

        return null;
    }

    private static Preparation? Size(WeighingSetup setup, BatchLine small, WeighingCarrier offer, double carrierGrams)
    {
        foreach (double part in s_partsOfTolerance)
        {
            double tolerance = setup.Tolerance * part;
            double wanted = small.Grams;
            double least = setup.SmallestGrams(tolerance);

            // The aliquot is large enough to weigh and dilute enough; the substance is enough for every batch and large enough to weigh.
            double aliquotGrams = Math.Max(wanted / offer.MostShare, least);
            double needed = setup.Batches * wanted * (1 + Surplus);
            double substanceGrams = Math.Max(needed, least);
            if (setup.Read(substanceGrams, tolerance) is not { } substance || setup.Read(aliquotGrams, tolerance) is not { } aliquot)
            {
                continue;
            }

            substance = substance.At(substance.Balance.RoundUpGrams(substanceGrams));
            aliquotGrams = aliquot.Balance.RoundUpGrams(aliquotGrams);
            if (setup.Read(substance.Grams * (aliquotGrams - wanted) / wanted, tolerance) is not { } carried)
            {
                continue;
            }

            carried = carried.At(carried.Balance.RoundUpGrams(substance.Grams * (aliquotGrams - wanted) / wanted));
            aliquot = aliquot.At(aliquot.Balance.RoundGrams(wanted * (substance.Grams + carried.Grams) / substance.Grams));
            var made = new Preparation(offer.Way, small.Line, offer.Line, setup.Batches, wanted, substance, carried, aliquot, offer.Advice)
            {
                SubstanceSizing = needed >= least ? $"{Numbers.Exact(setup.Batches)} × {Derivation.Text(wanted, "g")} and {Numbers.Exact(Surplus * 100)} % more" : Least(tolerance),
                AliquotSizing = wanted / offer.MostShare >= least ? $"{Derivation.Text(wanted, "g")} in at most {Numbers.Significant(100 * offer.MostShare, 6)} %" : Least(tolerance),
                AliquotAimGrams = aliquotGrams,
            };
            double spare = carrierGrams - made.CarrierInAliquotGrams;
            if (made.UncertaintyPercent <= setup.TolerancePercent * (1 + 1e-9)
                && Math.Abs(made.SubstanceInAliquotGrams / wanted - 1) <= setup.Tolerance
                && made.TotalGrams <= Guard.MaxMassGrams
                && setup.Batches * aliquot.Grams <= made.TotalGrams
                && spare > 0 && setup.Read(spare, setup.Tolerance) is not null)
            {
                return made;
            }
        }

        return null;
    }

    private static string Least(double tolerance) => $"the least that is weighed within {Numbers.Significant(100 * tolerance, 4)} %";

    private static string TooSmall(WeighingSetup setup, double grams)
        => grams < setup.SmallestGrams(setup.Tolerance)
            ? $"the balances weigh {Numbers.Significant(setup.SmallestGrams(setup.Tolerance), 4)} g and more within {Numbers.Significant(setup.TolerancePercent, 4)} %"
            : "no balance that is fine enough carries it";
}
