using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>Scores a proposal, criterion by criterion. The facts are the catalogue's; what they are worth is a judgement.</summary>
internal sealed class Scoring(Brief brief, GelSystem system, Placing.Placed placed, ValueList<Finding> ofLiquid)
{
    private const double MouthCelsius = 37; // the temperature of the body (common knowledge, no source)
    private const double FullMarginKelvins = 15; // a judgement: a plate and its sauce differ by as much

    public ValueList<CriterionScore> Criteria()
    {
        CriterionScore?[] all = [FewCautions(), Clarity(), HeatMargin(), MeltInMouth(), LittleWeeping(), Freezing(), LittleWork(), SmallDose(), KnownDose()];
        return ValueList<CriterionScore>.From(all.Where(c => c is { Weight: > 0 }).Select(c => c!));
    }

    private CriterionScore Score(Criterion criterion, double score, string why, params Citation[] citations)
        => new(criterion, score, brief.Weights[criterion], why, ValueList<Citation>.From(citations.Distinct()));

    private CriterionScore FewCautions()
    {
        Finding[] cautions =
        [
            .. placed.Findings.Where(f => f.Severity == Severity.Caution && ofLiquid.All(l => l.Id != f.Id || l.Explanation != f.Explanation))
                .GroupBy(f => f.Id, StringComparer.Ordinal).Select(g => g.First()),
        ];
        return Score(
            Criterion.FewCautions, 1.0 / (1 + cautions.Length),
            cautions.Length == 0 ? "No caution beyond those of the liquid." : $"Cautions: {string.Join(", ", cautions.Select(c => c.Id))}.", [.. cautions.SelectMany(c => c.Citations)]);
    }

    private CriterionScore? Clarity() => brief.Service.Clear != true ? null : OfSensitivity(Criterion.Clarity, SensitiveTo.Cloudiness);

    /// <summary>By the agent that is likeliest to weep; a blend of two thickeners has none that is known.</summary>
    private CriterionScore LittleWeeping()
    {
        SyneresisRisk? risk = placed.Formula.SyneresisRisks().OrderByDescending(r => r.Class).FirstOrDefault();
        double score = risk?.Class switch { SyneresisClass.Low => 1, SyneresisClass.High => 0, _ => 0.5 };
        return risk is null ? Score(Criterion.LittleWeeping, score, "The catalogue says nothing of its weeping.")
            : Score(Criterion.LittleWeeping, score, $"{risk.Agent.Name}, risk of weeping: {Words.Of(risk.Class)}.", [.. risk.Reasons.Select(r => r.Citation)]);
    }

    private CriterionScore? Freezing() => brief.Service.Frozen != true ? null : OfSensitivity(Criterion.Freezing, SensitiveTo.Freezing);

    /// <summary>By the agent that does worst; what is not known is in the middle.</summary>
    private CriterionScore OfSensitivity(Criterion criterion, SensitiveTo to)
    {
        (double Score, string Why, Citation? Citation)[] each =
        [
            .. system.Agents.Where(a => a.Profile!.Role == HydrocolloidRole.GellingAgent || system.Agents.All(o => o.Profile!.Role != HydrocolloidRole.GellingAgent))
                .Select(a => a.Profile!.SensitivityTo(to) is { } known
                    ? (known.Harm switch { Harm.None => 1.0, Harm.Notable => 0.5, _ => 0.0 }, $"{a.Name}: {known.Consequence.Value}", known.Consequence.Citation)
                    : (0.5, $"{a.Name}: nothing is typed in the catalogue.", (Citation?)null)),
        ];
        double worst = each.Min(e => e.Score);
        return Score(criterion, worst, string.Join(" ", each.Where(e => e.Score == worst).Select(e => e.Why)), [.. each.Where(e => e.Citation is not null).Select(e => e.Citation!)]);
    }

    private CriterionScore? HeatMargin()
    {
        if (brief.Service.ServedAtCelsius is not { } served)
        {
            return null;
        }

        (double? melts, string? window, Citation? citation) = Melting();
        return melts is { } celsius
            ? Score(Criterion.HeatMargin, Math.Max(0, Math.Min(1, (celsius - served) / FullMarginKelvins)), $"Melts at {window}, served at {Numbers.Significant(served, 3)} °C.", citation!)
            : Score(Criterion.HeatMargin, 1, "No melting temperature: as far as is known it does not melt.");
    }

    private CriterionScore? MeltInMouth()
    {
        if (brief.MeltsInMouth is not { } wanted)
        {
            return null;
        }

        (double? melts, string? window, Citation? citation) = Melting();
        bool does = melts < MouthCelsius;
        return Score(Criterion.MeltInMouth, does == wanted ? 1 : 0, window is null ? "It does not melt as far as is known." : $"Melts at {window}; a mouth is at {Numbers.Significant(MouthCelsius, 2)} °C.", citation is null ? [] : [citation]);
    }

    /// <summary>Where it begins to melt: the blend's own figure, else the lowest of its agents.</summary>
    private (double? Celsius, string? Window, Citation? Citation) Melting()
    {
        Cited<TemperatureRange>? window = system.Pair?.Melts
            ?? system.Agents.Select(a => a.Profile!.Melting.Window).Where(w => w?.Value.Celsius.Min is not null).OrderBy(w => w!.Value.Celsius.Min).FirstOrDefault();
        return window is null ? default : (window.Value.Celsius.Min, window.Value.ToString(), window.Citation);
    }

    private CriterionScore LittleWork()
    {
        FormulaLine[] added = [.. placed.Formula.Lines.Where(l => brief.Liquid.FindLine(l.Label) is null)];
        return Score(Criterion.LittleWork, 1.0 / added.Length, $"To weigh beside the liquid: {Phrases.Names(added)}.");
    }

    private CriterionScore SmallDose()
    {
        double percent = placed.Doses.Sum(d => d.PercentOfMix);
        return Score(Criterion.SmallDose, 1 / (1 + percent), $"{Numbers.Significant(percent, 2)} % of the continuous mix.");
    }

    private CriterionScore KnownDose()
    {
        (double score, string words) = placed.Doses.Select(d => d.Citation.Quality switch
        {
            CitationQuality.Recalled => (0.75, "recalled"),
            CitationQuality.Estimate or CitationQuality.CommonPractice => (0.5, "a judgement on published doses, or a rule of the trade"),
            _ => (1.0, "read in its source"),
        }).OrderBy(d => d.Item1).First();
        return Score(Criterion.KnownDose, score, $"The dose is {words}.", [.. placed.Doses.Select(d => d.Citation)]);
    }
}
