using System.Globalization;
using System.Text;
using Hydrocolloid.Formulation.Choosing;

namespace KitchenCard;

/// <summary>The card as plain text, 78 columns wide, for a terminal and a printer.</summary>
internal sealed class TextCard
{
    private const int Width = 78;
    private readonly StringBuilder _text = new();
    private readonly Card _card;

    private TextCard(Card card) => _card = card;

    public static string Render(Card card) => new TextCard(card).Render();

    /// <summary>A comparison of agents, to follow a card; it has its own numbered sources.</summary>
    public static string Render(AgentComparison comparison)
    {
        var text = new StringBuilder("\n");
        foreach (string line in comparison.ToText().Split('\n'))
        {
            string indent = line.StartsWith("  ", StringComparison.Ordinal) ? "  " : "";
            text.AppendJoin('\n', Text.Wrap(line, Width, indent, indent + indent).Select(l => l.TrimEnd())).Append('\n');
        }

        return text.ToString().TrimEnd('\n') + "\n";
    }

    private string Render()
    {
        Line(_card.Name.ToUpperInvariant());
        Line(new string('=', Width));
        Yield();
        WeighSheet();
        Weighing();
        Moulds();
        Cost();
        Concentrations();
        Contents();
        Method();
        Cooling();
        Findings();
        Cautions();
        Recorded();
        Worked();
        Sources();
        return _text.ToString();
    }

    private void Yield()
    {
        CardYield yield = _card.Yield;
        double d = _card.BalanceDivisionGrams;
        Line($"To make    {yield.Asked}");
        Line($"Base       {Text.Grams(yield.BaseGrams, d),12}     Assembled  {Text.Grams(yield.AssembledGrams, d),12}");
        Line($"Boils off  {Text.Grams(yield.EvaporatedWaterGrams, d),12}     Put back   {Text.Grams(yield.TopUpWaterGrams, d),12}");
        Line($"Finished   {Text.Grams(yield.FinishedGrams, d),12}     Losses: {yield.Losses}");
    }

    private void WeighSheet()
    {
        Heading($"WEIGH SHEET (balance shows {Text.Number(_card.BalanceDivisionGrams)} g)");
        Line($"{"",-2}{"ingredient",-26}{"dose",-28}{"weigh",12}{"dose off",10}");
        foreach (IGrouping<string, CardLine> phase in _card.Lines.GroupBy(l => l.Phase, StringComparer.Ordinal))
        {
            Line(phase.Key);
            foreach (CardLine line in phase)
            {
                string name = line.Name + (line.Form == "pieces" ? " (pieces)" : "");
                string dose = $"{Text.Percent(line.Percent)} of {line.Of}";
                string off = line.DoseErrorPercent is { } error ? Text.SignedPercent(error) + (line.ExceedsTolerance ? " !" : "") : "";
                string figures = $"{Text.Grams(line.WeighGrams, _card.BalanceDivisionGrams),12}{off,10}";
                Line(name.Length <= 25 && dose.Length <= 27 ? $"  {name,-26}{dose,-28}{figures}" : $"  {name}\n    {dose,-52}{figures}");
            }
        }

        if (_card.Lines.Any(l => l.ExceedsTolerance))
        {
            Wrapped($"! This balance is too coarse for the lines marked: rounding puts their dose off by more than {Text.Number(_card.ToleranceOfDosePercent)} %. Use a finer balance or make a larger batch.", "", "  ");
        }
    }

    private void Weighing()
    {
        if (_card.Weighing is not { } plan)
        {
            return;
        }

        Heading($"WEIGHING PLAN (each dose within {Text.Number(plan.TolerancePercent)} %)");
        foreach (CardPreparation p in plan.Preparations)
        {
            Wrapped($"{p.Way} of {p.Name}: {Text.Number(p.SubstanceGrams)} g with {Text.Number(p.CarrierGrams)} g of {p.Carrier} ({Text.Percent(p.Percent)}), for {Text.Count(plan.Batches, "batch", "batches")}; {Text.Number(p.LeftGrams)} g left.", "  ", "    ");
            foreach (CardNote advice in p.Advice)
            {
                Wrapped(advice.Text + Text.SourceMarks([advice.Source]), "    - ", "      ");
            }
        }

        foreach (CardWeighed line in plan.Lines)
        {
            Line($"  {line.Name,-38}{Text.Weighed(line),-36}");
            foreach (string reason in line.Reasons)
            {
                Wrapped(reason, "    ! ", "      ");
            }
        }

        if (!plan.Possible)
        {
            Wrapped($"These balances weigh everything directly from {Text.Number(Math.Ceiling(plan.SmallestDirectBatchGrams))} g of base on.", "  ", "  ");
        }
    }

    private void Moulds()
    {
        if (_card.Moulds is { } moulds)
        {
            Heading("MOULDS");
            Wrapped(Text.Moulds(moulds), "  ", "  ");
        }
    }

    private void Cost()
    {
        if (_card.Cost is not { } cost)
        {
            return;
        }

        Heading($"COST ({cost.Currency}, prices of {cost.PricedOn}, before tax)");
        foreach (CardCostLine line in cost.Lines)
        {
            Line($"  {line.Name,-38}{Text.Money(line.Cost),14}{(line.SharePercent is { } share ? Text.Tenths((double)share) + " %" : ""),12}");
            if (line.Gap is { } gap)
            {
                Wrapped(gap, "    ", "    ");
            }
        }

        Line($"  {"ingredients",-38}{Text.Money(cost.Ingredients),14}");
        Line($"  {"per kg",-38}{Text.Money(cost.PerKilogram),14}");
        if (_card.Yield.Portions is not null)
        {
            Line($"  {"per portion",-38}{Text.Money(cost.PerPortion),14}");
        }
    }

    private void Concentrations()
    {
        if (_card.Concentrations.Count == 0)
        {
            return;
        }

        Heading("WHAT COUNTS FOR THE GEL (% by weight)");
        Line($"  {"",-30}{"of the total",15}{"of what gels",15}{"of its water",15}");
        foreach (CardConcentration c in _card.Concentrations)
        {
            string water = c.PercentOfContinuousWater is { } percent ? Text.Percent(percent) : "unknown";
            Line($"  {c.Name,-30}{Text.Percent(c.PercentOfTotal),15}{Text.Percent(c.PercentOfContinuousMix),15}{water,15}");
        }

        if (_card.Yield.EvaporatedWaterGrams > 0 && _card.Yield.TopUpWaterGrams == 0)
        {
            Wrapped("The water that boils off is not put back, so what gels ends at: "
                + string.Join(", ", _card.Concentrations.Select(c => $"{c.Name} {Text.Percent(c.PercentOfContinuousMixAsSet)}")) + ".", "  ", "  ");
        }
    }

    private void Contents()
    {
        Heading("IN THE MIX THAT GELS");
        foreach (CardContent c in _card.Contents)
        {
            string unit = c.Unit == c.Quantity ? "" : c.Unit;
            Line($"  {c.Quantity,-18}{Text.Significant(c.Value),10} {unit,-18} {c.How}");
            if (c.Outside is not null || c.Without.Count > 0)
            {
                Wrapped(string.Join("; ", new[] { c.Outside, c.Without.Count > 0 ? "without " + string.Join(", ", c.Without) + ", of which it is not known" : null }
                    .Where(t => t is not null)) + ".", "    ", "    ");
            }
        }
    }

    private void Method()
    {
        Heading("METHOD");
        int number = 0;
        foreach (CardStep step in _card.Method)
        {
            number++;
            Wrapped(step.Instruction, $"{number.ToString(CultureInfo.InvariantCulture),2}. ", "    ");
            if (step.Amounts.Count > 0)
            {
                Wrapped(string.Join(", ", step.Amounts.Select(a => $"{Text.Grams(a.Grams, _card.BalanceDivisionGrams)} {a.Name}")), "      ", "      ");
            }

            Wrapped("Check: " + step.Check, "      ", "      ");
            Wrapped(step.Reason + Text.SourceMarks(step.Sources), "      ", "      ");
            foreach (CardNote note in step.Notes)
            {
                Wrapped(note.Text + Text.SourceMarks([note.Source]), "      - ", "        ");
            }
        }

        foreach (string conflict in _card.MethodConflicts)
        {
            Wrapped(conflict, "CONFLICT: ", "  ");
        }
    }

    private void Cooling()
    {
        if (_card.Heat?.Cooling is not { } cooling)
        {
            return;
        }

        Heading("COOLING IN THE MOULD (°C; an estimate: measure the warmest part)");
        Line($"  {"after",8}{"centre",10}{"surface",10}{"mean",10}{"centre at slowest",20}");
        foreach (CardCoolingPoint p in cooling.Curve)
        {
            Line($"  {Text.Number(p.Seconds / 3600) + " h",8}{Text.Tenths(p.CentreCelsius),10}{Text.Tenths(p.SurfaceCelsius),10}{Text.Tenths(p.MeanCelsius),10}{Text.Tenths(p.CentreAtSlowestCelsius),20}");
        }

        if (cooling.SetsBelowCelsius is { } sets)
        {
            Wrapped($"Set through (centre under {Text.Number(sets)} °C){Text.SourceMarks(cooling.SettingSource is { } n ? [n] : [])}: {Text.Hours(cooling.SetThroughSeconds)}, at the slowest {Text.Hours(cooling.SetThroughAtLatestSeconds)}.", "  ", "  ");
        }

        foreach (CardVerdict verdict in cooling.Verdicts)
        {
            Wrapped($"{verdict.Rule}, at the slowest: {verdict.Outcome.Replace('-', ' ')} ({verdict.Text}){Text.SourceMarks([verdict.Source])}.", "  ", "  ");
        }

        Wrapped(cooling.Caution, "  ", "  ");
        Wrapped($"Assumed: {string.Join("; ", cooling.Assumptions)}.", "  ", "  ");
    }

    private void Findings()
    {
        Heading("FINDINGS");
        if (_card.Findings.Count == 0)
        {
            Line("Nothing found by the rules. What they do not look at is not judged.");
        }

        foreach (CardFinding finding in _card.Findings)
        {
            Wrapped($"{finding.Severity.ToUpperInvariant()} {finding.Id}: {finding.Explanation}{Text.SourceMarks(finding.Sources)}", "", "  ");
            foreach (CardRemedy remedy in finding.Remedies)
            {
                Wrapped($"{remedy.Id}: {remedy.Advice} {remedy.Effect}{Text.SourceMarks(remedy.Sources)}", "  + ", "    ");
            }
        }
    }

    private void Cautions()
    {
        Heading("CAUTIONS");
        foreach (CardCaution caution in _card.Cautions)
        {
            Wrapped(caution.Text + Text.SourceMarks([caution.Source]), "* ", "  ");
        }
    }

    private void Recorded()
    {
        if (_card.Recorded.Count > 0)
        {
            Heading("STATED IN THE FORMULA, NOT RECKONED WITH HERE");
            Wrapped(string.Join("; ", _card.Recorded) + ".", "", "");
        }
    }

    private void Worked()
    {
        foreach (CardDerivation derivation in _card.Worked)
        {
            Heading($"WORKED: {derivation.Label}");
            foreach (string step in derivation.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries))
            {
                Wrapped(step, "", "   ");
            }
        }
    }

    private void Sources()
    {
        Heading("SOURCES");
        foreach (CardSource source in _card.Sources)
        {
            Wrapped(source.Text, $"{"[" + source.Number.ToString(CultureInfo.InvariantCulture) + "]",-5}", "     ");
        }
    }

    private void Heading(string heading)
    {
        Line("");
        Line(heading);
        Line(new string('-', Width));
    }

    private void Wrapped(string text, string indent, string hanging)
    {
        foreach (string line in Text.Wrap(text, Width, indent, hanging))
        {
            Line(line);
        }
    }

    private void Line(string line) => _text.Append(line.TrimEnd()).Append('\n');
}
