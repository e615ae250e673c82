using System.Globalization;
using System.Text.Json;
using Hydrocolloid.Formulation;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace KitchenCard;

/// <summary>Fills a card from the library's answers.</summary>
internal sealed class CardWriter
{
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly List<CardSource> _sources = [];

    public static Card Write(Formula formula, Yield yield, Balance balance, double tolerancePercent, IReadOnlyList<string> explain, Kitchen kitchen, CardExtras extras, AgentComparison? comparison)
        => new CardWriter().Fill(formula, yield, balance, tolerancePercent, explain, kitchen, extras, comparison);

    private Card Fill(Formula formula, Yield yield, Balance balance, double tolerancePercent, IReadOnlyList<string> explain, Kitchen kitchen, CardExtras extras, AgentComparison? comparison)
    {
        Batch batch = formula.ScaleTo(yield);
        WeighSheet sheet = batch.WeighOn(balance, tolerancePercent);
        Method method = batch.PlanMethod(kitchen);
        return new Card(
            "hydrocolloid-card",
            1,
            formula.Name,
            new CardYield(
                yield.ToString(), batch.BaseMass.Grams, batch.AssembledMass.Grams, batch.EvaporatedWater.Grams, batch.TopUpWater.Grams, batch.FinishedMass.Grams,
                batch.Losses.ToString(), yield.Count, yield.Count is null ? null : yield.Mass.Grams),
            balance.Division.Grams,
            tolerancePercent,
            [.. sheet.Lines.Select(Line)],
            [.. formula.Lines.Where(l => l.Ingredient.Profile is not null && l.IsContinuous).Select(l => Concentration(formula, batch, l))],
            [.. Contents(formula.Analyse().Continuous)],
            [.. method.Steps.Select(Step)],
            [.. method.Conflicts.Select(c => c.ToString())],
            Heat(formula),
            MouldOf(formula, extras) is { } mould && IsDensityKnown(formula) ? Moulds(batch.Fill(mould)) : null,
            extras.Weighing is { } setup ? Weighing(batch.PlanWeighing(setup)) : null,
            extras.Prices is { } prices ? Cost(batch.Cost(prices, extras.On)) : null,
            [.. formula.Review().Select(Finding)],
            [.. method.Cautions.Select(c => new CardCaution(Text.Kebab(c.Kind.ToString()), c.Text.Value, [.. c.Lines], Number(c.Text.Citation)))],
            [.. Recorded(formula, extras)],
            [.. explain.Select(l => new CardDerivation(l, batch.Explain(l).ToText()))],
            _sources,
            comparison is null ? null : Parsed(ComparisonJson.Write(comparison)));
    }

    private static JsonElement Parsed(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return document.RootElement.Clone();
    }

    private static CardLine Line(WeighLine line) => new(
        line.Line.Phase, line.Line.Label, line.Line.Ingredient.Id, line.Line.Ingredient.Name, line.Line.IsContinuous ? "mix" : "pieces",
        line.Line.Dose.PercentByMass, line.Line.Dose.Reference.ToString(), line.Exact.Grams, line.Rounded.Grams, line.ErrorPercent, line.ExceedsTolerance);

    private static CardConcentration Concentration(Formula formula, Batch batch, FormulaLine line) => new(
        line.Label, line.Ingredient.Name, formula.Proportions.PercentOfTotal(line), formula.Proportions.PercentOfContinuousMix(line),
        formula.Proportions.PercentOfContinuousWater(line), batch.PercentOfContinuousMixAsSet(line.Label));

    /// <summary>What is in the mix that gels; a value that cannot be worked out is left out.</summary>
    private static IEnumerable<CardContent> Contents(MixContents mix)
    {
        (string Quantity, Reckoned? Value)[] values =
        [
            ("water", mix.Water), ("sugars", mix.Sugars), ("protein", mix.Protein), ("fat", mix.Fat), ("ethanol", mix.Ethanol),
            ("soluble solids", mix.Brix), ("alcohol", mix.AlcoholByVolume), ("density at 20 °C", mix.DensityAt(Temperature.FromDegreesCelsius(20))),
            ("pH", mix.Ph), ("calcium", mix.Calcium.MilligramsPerKg), ("free calcium", mix.FreeCalcium), ("potassium", mix.Potassium.MilligramsPerKg),
            ("sodium", mix.Sodium.MilligramsPerKg), ("water activity", mix.WaterActivity),
        ];
        foreach ((string quantity, Reckoned? value) in values)
        {
            if (value is not null && double.IsFinite(value.Value))
            {
                yield return new CardContent(quantity, value.Value, value.Unit, value.How.ToString().ToLowerInvariant(), value.By, value.Outside?.ToString(), [.. value.Without]);
            }
        }
    }

    /// <summary>What the document states and this version of the card does not reckon with: shown, so that nobody thinks it was.</summary>
    private static IEnumerable<string> Recorded(Formula formula, CardExtras extras)
    {
        ProcessPlan process = formula.Process;
        ServicePlan service = formula.Service;
        if (!process.Cooling.IsEmpty && !formula.TryCool(out _, out ValueList<string> missing))
        {
            yield return $"cooling: {process.Cooling} (to work it out, state {string.Join(" and ", missing)})";
        }

        if (MouldOf(formula, extras) is { } mould && !IsDensityKnown(formula))
        {
            yield return $"mould: {mould} (the density of no line is known, so what it takes is not)";
        }

        if (service.HeldFor is { } held)
        {
            yield return $"held for {Text.Number(held.Minutes)} min";
        }

        if (service.StoredFor is { } stored)
        {
            yield return $"stored for {Text.Number(stored.Hours)} h";
        }

        if (service.Covered is { } covered)
        {
            yield return covered ? "stored covered" : "stored uncovered";
        }

        if (service.Frozen is { } frozen)
        {
            yield return frozen ? "frozen and thawed" : "not frozen";
        }
    }

    private CardStep Step(MethodStep step) => new(
        Text.Kebab(step.Action.ToString()), step.Instruction, step.Reason, step.Check, step.IsActive, step.Ahead, [.. step.Lines],
        [.. step.Amounts.Select(a => new CardAmount(a.Label, a.Name, a.Mass!.Value.Grams))],
        step.Temperature is { } t ? Range(t.Celsius) : null, step.Duration is { } d ? Range(d.Seconds) : null,
        [.. step.Citations.Select(Number)], [.. step.Notes.Select(n => new CardNote(n.Value, Number(n.Citation)))]);

    private CardFinding Finding(Finding finding) => new(
        Text.Kebab(finding.Severity.ToString()), finding.Id, finding.Explanation, [.. finding.Lines],
        [.. finding.Evidence.Select(e => new CardEvidence(e.Quantity, e.Value, e.Unit, Range(e.Limit)))], [.. finding.Citations.Select(Number)],
        [.. finding.Remedies.Select(r => new CardRemedy(r.Id, r.Advice, r.Effect, [.. r.Citations.Select(Number)]))]);

    /// <summary>The heat of the formula, as far as the formula states what is needed for it.</summary>
    private CardHeat? Heat(Formula formula)
    {
        CardCooling? cooling = formula.TryCool(out CoolingOutlook? outlook, out _) ? Cooling(outlook) : null;
        return cooling is null ? null : new CardHeat(cooling);
    }

    /// <summary>The mould to fill, if it is known how much it holds.</summary>
    private static MouldPlan? MouldOf(Formula formula, CardExtras extras) => (extras.Mould ?? formula.Process.Mould) is { FillVolume: not null } mould ? mould : null;

    private static bool IsDensityKnown(Formula formula) => formula.Analyse().Assembled.DensityAt(Temperature.FromDegreesCelsius(20)).Value > 0;

    private static CardMoulds Moulds(MouldFilling filling) => new(
        filling.Mould.Name, filling.Mould.Cavities, filling.Mould.FillVolume!.Value.Milliliters, filling.CastAt.DegreesCelsius,
        filling.Density.Value, filling.Density.How.ToString().ToLowerInvariant(), filling.Each.Grams, filling.Filled, filling.MouldsNeeded, filling.Left.Grams);

    private CardWeighing Weighing(WeighingPlan plan) => new(
        [.. plan.Setup.Balances.Select(b => new CardBalance(b.Division.Grams, b.Capacity?.Grams))],
        plan.Setup.TolerancePercent, plan.Setup.Batches, plan.IsPossible, plan.SmallestDirectBatch.Grams,
        [.. plan.Preparations.Select(p => new CardPreparation(
            Text.Kebab(p.Way.ToString()), p.Line.Label, p.Line.Ingredient.Name, p.Substance.Shown.Grams, p.CarrierLine.Label, p.Carrier.Shown.Grams, p.Percent,
            p.Aliquot.Shown.Grams, p.Left.Grams, [.. p.Advice.Select(a => new CardNote(a.Value, Number(a.Citation)))]))],
        [.. plan.Lines.Select(Weighed)]);

    private static CardWeighed Weighed(PlannedLine line)
    {
        BalanceReading? reading = line.Reading ?? line.Preparation?.Aliquot;
        return new CardWeighed(
            line.Line.Label, line.Line.Ingredient.Name, Text.Kebab(line.Way.ToString()), reading?.Shown.Grams, reading?.Balance.Division.Grams, reading?.Goes, line.ErrorPercent, [.. line.Reasons]);
    }

    /// <summary>Rounded amounts; the lines add up to the rounded ingredients.</summary>
    private static CardCost Cost(CostSheet sheet)
    {
        ValueList<Money> rounded = sheet.RoundedLines();
        return new CardCost(
            sheet.Prices.Currency.Code, sheet.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            [.. sheet.Lines.Select((l, i) => new CardCostLine(l.Line.Line.Label, l.Line.Line.Ingredient.Name, (rounded.IsEmpty ? l.Cost?.Rounded() : rounded[i])?.Amount, l.SharePercent, l.Gap?.Message))],
            sheet.Ingredients?.Rounded().Amount, sheet.PerKilogram?.Rounded().Amount, sheet.PerPortion?.Rounded().Amount);
    }

    private CardCooling Cooling(CoolingOutlook outlook)
    {
        CoolingVerdict[] verdicts = [outlook.Check(CoolingRules.UsFoodCode), outlook.Check(CoolingRules.UkGuidance)];
        return new CardCooling(
            [.. Moments(outlook).Select(t => Point(outlook, t))],
            outlook.SetsBelow?.DegreesCelsius, outlook.SetThrough?.Time?.Seconds, outlook.SetThroughAtLatest?.Time?.Seconds,
            outlook.SettingCitation is { } setting ? Number(setting) : null,
            [.. verdicts.Select(v => new CardVerdict(v.Rule.Name, Text.Kebab(v.Outcome.ToString()), string.Join("; ", v.Checks), Number(v.Rule.Citation)))],
            verdicts[0].Caution, [.. outlook.Assumptions]);
    }

    private static CardCoolingPoint Point(CoolingOutlook outlook, Duration time)
    {
        CoolingPoint usual = outlook.Usual.At(time);
        return new CardCoolingPoint(
            time.Seconds, usual.Centre.DegreesCelsius, usual.Surface.DegreesCelsius, usual.Mean.DegreesCelsius, outlook.Slow.At(time).Centre.DegreesCelsius);
    }

    /// <summary>Half-hours until the slow course is at 5 °C or for eight hours, at most.</summary>
    private static IEnumerable<Duration> Moments(CoolingOutlook outlook)
    {
        double end = outlook.Slow.TimeUntilBelow(Temperature.FromDegreesCelsius(5)).Time?.Hours ?? 8;
        int halves = (int)Math.Ceiling(Math.Min(end, 8) * 2);
        return Enumerable.Range(0, halves + 1).Select(i => Duration.FromMinutes(30 * i));
    }

    private static CardRange Range(NumberRange range) => new(range.Min, range.Max);

    private int Number(Citation citation)
    {
        string text = citation.ToString();
        if (!_numbers.TryGetValue(text, out int number))
        {
            number = _numbers.Count + 1;
            _numbers.Add(text, number);
            _sources.Add(new CardSource(number, Text.Kebab(citation.Quality.ToString()), text));
        }

        return number;
    }
}
