using System.Globalization;
using System.Text;

namespace KitchenCard;

/// <summary>The card as Markdown.</summary>
internal static class MarkdownCard
{
    public static string Render(Card card)
    {
        var text = new StringBuilder();
        double d = card.BalanceDivisionGrams;
        void Line(string line = "") => text.Append(line).Append('\n');

        Line($"# {Escaped(card.Name)}");
        Line();
        Line($"To make: {Escaped(card.Yield.Asked)}. Base {Text.Grams(card.Yield.BaseGrams, d)}, assembled {Text.Grams(card.Yield.AssembledGrams, d)}, "
            + $"boils off {Text.Grams(card.Yield.EvaporatedWaterGrams, d)}, put back {Text.Grams(card.Yield.TopUpWaterGrams, d)}, finished {Text.Grams(card.Yield.FinishedGrams, d)}. Losses: {card.Yield.Losses}.");
        Line();
        Line($"## Weigh sheet (balance shows {Text.Number(d)} g)");
        Line();
        Line("| phase | ingredient | dose | weigh | dose off |");
        Line("|---|---|---|---:|---:|");
        foreach (CardLine line in card.Lines)
        {
            string off = line.DoseErrorPercent is { } error ? Text.SignedPercent(error) + (line.ExceedsTolerance ? " **!**" : "") : "";
            Line($"| {Escaped(line.Phase)} | {Escaped(line.Name)}{(line.Form == "pieces" ? " (pieces)" : "")} | {Text.Percent(line.Percent)} of {Escaped(line.Of)} | {Text.Grams(line.WeighGrams, d)} | {off} |");
        }

        if (card.Lines.Any(l => l.ExceedsTolerance))
        {
            Line();
            Line($"**!** This balance is too coarse for the lines marked: rounding puts their dose off by more than {Text.Number(card.ToleranceOfDosePercent)} %.");
        }

        if (card.Weighing is { } plan)
        {
            Line();
            Line($"## Weighing plan (each dose within {Text.Number(plan.TolerancePercent)} %)");
            Line();
            foreach (CardPreparation p in plan.Preparations)
            {
                Line($"- {p.Way} of {Escaped(p.Name)}: {Text.Number(p.SubstanceGrams)} g with {Text.Number(p.CarrierGrams)} g of {Escaped(p.Carrier)} ({Text.Percent(p.Percent)}), for {Text.Count(plan.Batches, "batch", "batches")}; {Text.Number(p.LeftGrams)} g left");
                foreach (CardNote advice in p.Advice)
                {
                    Line($"    - {Escaped(advice.Text)}{Text.SourceMarks([advice.Source])}");
                }
            }

            Line();
            Line("| ingredient | weigh |");
            Line("|---|---|");
            foreach (CardWeighed line in plan.Lines)
            {
                Line($"| {Escaped(line.Name)} | {Text.Weighed(line)}{(line.Reasons.Count == 0 ? "" : ": " + Escaped(string.Join("; ", line.Reasons)))} |");
            }

            if (!plan.Possible)
            {
                Line();
                Line($"These balances weigh everything directly from {Text.Number(Math.Ceiling(plan.SmallestDirectBatchGrams))} g of base on.");
            }
        }

        if (card.Moulds is { } moulds)
        {
            Line();
            Line("## Moulds");
            Line();
            Line(Escaped(Text.Moulds(moulds)));
        }

        if (card.Cost is { } cost)
        {
            Line();
            Line($"## Cost ({cost.Currency}, prices of {cost.PricedOn}, before tax)");
            Line();
            Line("| | cost | share |");
            Line("|---|---:|---:|");
            foreach (CardCostLine line in cost.Lines)
            {
                Line($"| {Escaped(line.Name)} | {(line.Gap is { } gap ? Escaped(gap) : Text.Money(line.Cost))} | {(line.SharePercent is { } share ? Text.Tenths((double)share) + " %" : "")} |");
            }

            Line($"| ingredients | {Text.Money(cost.Ingredients)} | |");
            Line($"| per kg | {Text.Money(cost.PerKilogram)} | |");
            if (card.Yield.Portions is not null)
            {
                Line($"| per portion | {Text.Money(cost.PerPortion)} | |");
            }
        }

        if (card.Concentrations.Count > 0)
        {
            Line();
            Line("## What counts for the gel (% by weight)");
            Line();
            Line("| | of the total | of what gels | of its water | as it sets |");
            Line("|---|---:|---:|---:|---:|");
            foreach (CardConcentration c in card.Concentrations)
            {
                Line($"| {Escaped(c.Name)} | {Text.Percent(c.PercentOfTotal)} | {Text.Percent(c.PercentOfContinuousMix)} | {(c.PercentOfContinuousWater is { } water ? Text.Percent(water) : "unknown")} | {Text.Percent(c.PercentOfContinuousMixAsSet)} |");
            }
        }

        Line();
        Line("## In the mix that gels");
        Line();
        Line("| | | | how |");
        Line("|---|---:|---|---|");
        foreach (CardContent c in card.Contents)
        {
            string remark = (c.Outside is null ? "" : "; " + c.Outside) + (c.Without.Count == 0 ? "" : "; without " + string.Join(", ", c.Without));
            Line($"| {c.Quantity} | {Text.Significant(c.Value)} | {(c.Unit == c.Quantity ? "" : c.Unit)} | {c.How}: {Escaped(c.By + remark)} |");
        }

        Line();
        Line("## Method");
        Line();
        int number = 0;
        foreach (CardStep step in card.Method)
        {
            number++;
            Line($"{number.ToString(CultureInfo.InvariantCulture)}. **{Escaped(step.Instruction)}** {Escaped(step.Reason)}{Text.SourceMarks(step.Sources)}");
            if (step.Amounts.Count > 0)
            {
                Line("    - " + string.Join(", ", step.Amounts.Select(a => $"{Text.Grams(a.Grams, d)} {Escaped(a.Name)}")));
            }

            Line($"    - Check: {Escaped(step.Check)}");
            foreach (CardNote note in step.Notes)
            {
                Line($"    - {Escaped(note.Text)}{Text.SourceMarks([note.Source])}");
            }
        }

        foreach (string conflict in card.MethodConflicts)
        {
            Line();
            Line($"**Conflict:** {Escaped(conflict)}");
        }

        if (card.Heat?.Cooling is { } cooling)
        {
            Line();
            Line("## Cooling in the mould");
            Line();
            Line("| after | centre | surface | mean | centre at slowest |");
            Line("|--:|--:|--:|--:|--:|");
            foreach (CardCoolingPoint p in cooling.Curve)
            {
                Line($"| {Text.Number(p.Seconds / 3600)} h | {Text.Tenths(p.CentreCelsius)} °C | {Text.Tenths(p.SurfaceCelsius)} °C | {Text.Tenths(p.MeanCelsius)} °C | {Text.Tenths(p.CentreAtSlowestCelsius)} °C |");
            }

            Line();
            if (cooling.SetsBelowCelsius is { } sets)
            {
                Line($"- Set through (centre under {Text.Number(sets)} °C): {Text.Hours(cooling.SetThroughSeconds)}, at the slowest {Text.Hours(cooling.SetThroughAtLatestSeconds)}.{Text.SourceMarks(cooling.SettingSource is { } n ? [n] : [])}");
            }

            foreach (CardVerdict verdict in cooling.Verdicts)
            {
                Line($"- {Escaped(verdict.Rule)}, at the slowest: **{verdict.Outcome.Replace('-', ' ')}** ({Escaped(verdict.Text)}){Text.SourceMarks([verdict.Source])}");
            }

            Line();
            Line(Escaped(cooling.Caution));
            Line();
            Line($"Assumed: {Escaped(string.Join("; ", cooling.Assumptions))}.");
        }

        Line();
        Line("## Findings");
        Line();
        if (card.Findings.Count == 0)
        {
            Line("Nothing found by the rules. What they do not look at is not judged.");
        }

        foreach (CardFinding finding in card.Findings)
        {
            Line($"- **{finding.Severity}** `{finding.Id}`: {Escaped(finding.Explanation)}{Text.SourceMarks(finding.Sources)}");
            foreach (CardRemedy remedy in finding.Remedies)
            {
                Line($"    - `{remedy.Id}`: {Escaped(remedy.Advice)} {Escaped(remedy.Effect)}{Text.SourceMarks(remedy.Sources)}");
            }
        }

        Line();
        Line("## Cautions");
        Line();
        foreach (CardCaution caution in card.Cautions)
        {
            Line($"- {Escaped(caution.Text)}{Text.SourceMarks([caution.Source])}");
        }

        if (card.Recorded.Count > 0)
        {
            Line();
            Line($"Stated in the formula, not reckoned with here: {Escaped(string.Join("; ", card.Recorded))}.");
        }

        foreach (CardDerivation derivation in card.Worked)
        {
            Line();
            Line($"## Worked: {Escaped(derivation.Label)}");
            Line();
            Line("```text");
            text.Append(derivation.Text);
            Line("```");
        }

        Line();
        Line("## Sources");
        Line();
        foreach (CardSource source in card.Sources)
        {
            Line($"- [{source.Number.ToString(CultureInfo.InvariantCulture)}] {Escaped(source.Text)}");
        }

        return text.ToString();
    }

    private static string Escaped(string text)
        => text.Replace("\\", "\\\\").Replace("|", "\\|").Replace("*", "\\*").Replace("_", "\\_").Replace("<", "\\<").Replace("[", "\\[").Replace("\n", " ");
}
