using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Finds out why a batch failed.</summary>
public static class FormulaDiagnosis
{
    // Of all rules only those that can say something of the symptom: those that explain it, and those that see one of its known failures coming.
    private static readonly Lazy<RuleSet>[] s_rules = [.. Enumerable.Range(0, (int)Symptom.SpheresBurst + 1).Select(s => new Lazy<RuleSet>(() => RulesFor((Symptom)s)))];

    /// <summary>
    /// Ranks the causes of a symptom. The formula as it was made goes through the rules; what they find and what explains the symptom is
    /// shown, what a failure known of a hydrocolloid would take and nobody knows is open, what was looked at and is in order is unlikely.
    /// </summary>
    /// <param name="formula">The formula as planned.</param>
    /// <param name="symptom">What is wrong.</param>
    /// <param name="record">What was actually done; null if nothing is known.</param>
    /// <returns>The diagnosis.</returns>
    /// <exception cref="ArgumentException">The record does not fit the formula (<see cref="ProcessRecord.AsMade"/>).</exception>
    /// <exception cref="FormulaException">What was weighed makes no formula.</exception>
    public static Diagnosis Diagnose(this Formula formula, Symptom symptom, ProcessRecord? record = null)
    {
        Guard.NotNull(formula);
        Guard.Defined((int)symptom, (int)Symptom.SpheresBurst, nameof(symptom));
        record ??= ProcessRecord.Nothing;
        Formula made = record.AsMade(formula);
        ValueList<Finding> findings = made.Review(s_rules[(int)symptom].Value);
        FormulaLine[] agents = [.. made.Lines.Where(l => l.IsContinuous && l.Ingredient.Profile is not null)];

        var causes = new List<LikelyCause>();
        causes.AddRange(FromFindings(findings, symptom));
        causes.AddRange(FromRecord(formula, made, record, symptom, agents));
        causes.AddRange(FromKnownFailures(findings, causes, symptom, agents, record));
        LikelyCause[] ranked = [.. causes.OrderBy(c => c.Standing).ThenByDescending(c => c.Weight)];
        return new Diagnosis(
            symptom, ValueList<LikelyCause>.Own(ranked), ValueList<Cited<string>>.From(agents.SelectMany(a => Rescue(a, symptom))),
            ValueList<string>.From(ranked.Where(c => c.Standing == CauseStanding.Open && c.ToBeSure is not null).Select(c => c.ToBeSure!).Distinct()));
    }

    private static RuleSet RulesFor(Symptom symptom)
    {
        IEnumerable<string> foreseen = KnownFailure.All.Where(f => f.Symptoms.Contains(symptom)).SelectMany(f => f.Rules);
        return RuleSet.Standard.Only([.. RuleSet.Standard.Select(r => r.Id).Where(id => SymptomsOfRules.Weight(id, symptom) > 0 || foreseen.Contains(id))]).ReportingUnchecked();
    }

    private static IEnumerable<LikelyCause> FromFindings(ValueList<Finding> findings, Symptom symptom)
    {
        foreach (Finding finding in findings)
        {
            double weight = finding.IsUnchecked || finding.Severity == Severity.Information ? 0 : SymptomsOfRules.Weight(finding.Id, symptom);
            if (weight > 0 && Fits(finding, symptom))
            {
                yield return new LikelyCause(finding.Id, CauseStanding.Shown, finding.Explanation)
                {
                    Lines = finding.Lines,
                    Evidence = finding.Evidence,
                    Remedies = finding.Remedies,
                    NextTime = finding.Remedies.IsEmpty ? null : finding.Remedies[0].Advice,
                    Citations = finding.Citations,
                    Weight = weight * (finding.Severity == Severity.Conflict ? 2 : 1),
                };
            }
        }
    }

    /// <summary>Too much explains what is too firm, too little what is too soft: the evidence says which it is.</summary>
    private static bool Fits(Finding finding, Symptom symptom)
    {
        if (finding.Evidence.IsEmpty || finding.Id is not ("decimal-slip" or "dose-outside-window"))
        {
            return true;
        }

        Evidence dose = finding.Evidence[0];
        bool tooMuch = dose.Value > dose.Limit.Max;
        return symptom switch
        {
            Symptom.TooFirm or Symptom.Lumps => tooMuch,
            Symptom.DidNotSet or Symptom.TooSoft or Symptom.Weeping => !tooMuch,
            _ => true,
        };
    }

    /// <summary>What the record itself shows: weighing errors, water boiled off, too little time.</summary>
    private static IEnumerable<LikelyCause> FromRecord(Formula planned, Formula made, ProcessRecord record, Symptom symptom, FormulaLine[] agents)
    {
        foreach (FormulaLine agent in agents)
        {
            if (planned.FindLine(agent.Label) is { } plan
                && planned.Proportions.PercentOfContinuousMix(plan) is var meant && made.Proportions.PercentOfContinuousMix(agent) is var got
                && Math.Abs(got / meant - 1) > 0.1 && (got < meant ? symptom is Symptom.DidNotSet or Symptom.TooSoft or Symptom.Weeping or Symptom.Broke : symptom is Symptom.TooFirm))
            {
                yield return new LikelyCause(
                    "weighed-otherwise", CauseStanding.Shown,
                    $"{agent.Ingredient.Name} was weighed at {Numbers.Significant(got, 3)} % of the mix in place of {Numbers.Significant(meant, 3)} %.")
                {
                    Lines = ValueList<string>.Own([agent.Label]),
                    Evidence = ValueList<Evidence>.Own([new Evidence($"{agent.Ingredient.Name} as weighed", got, "% by weight of the mix", new NumberRange(meant * 0.9, meant * 1.1))]),
                    NextTime = "Weigh it on a balance that shows a hundredth of it.",
                    Weight = 1.5,
                };
            }

            if (record.Ph is { } ph && agent.Ingredient.Profile!.Limits
                .Where(l => l is { Quantity: LimitedQuantity.Ph, Harm: >= Harm.Weakens } && l.Stage is LimitStage.Finished or LimitStage.Hydrating && !l.Range.Value.Contains(ph))
                .OrderByDescending(l => l.Harm).FirstOrDefault() is { } limit && SymptomsOfRules.Weight("ph-of-the-gel", symptom) is var strength and > 0)
            {
                yield return new LikelyCause("ph-measured", CauseStanding.Shown, $"The measured pH of {Numbers.Significant(ph, 3)} is outside what {agent.Ingredient.Name} stands. {limit.Consequence}")
                {
                    Lines = ValueList<string>.Own([agent.Label]),
                    Evidence = ValueList<Evidence>.Own([new Evidence("measured pH", ph, "pH", limit.Range.Value)]),
                    NextTime = "Bring the pH into that range, and measure it before the batch.",
                    Citations = ValueList<Citation>.Own([limit.Range.Citation]),
                    Weight = strength * (limit.Harm == Harm.Fails ? 2 : 1),
                };
            }

            if (record.LeftToSetSeconds is { } left && agent.Ingredient.Profile!.Setting.TimeToStable is { Value.Seconds.Min: { } needed } stable
                && left < needed && symptom is Symptom.DidNotSet or Symptom.TooSoft or Symptom.Broke)
            {
                yield return new LikelyCause(
                    "judged-too-soon", CauseStanding.Shown,
                    $"{agent.Ingredient.Name} was left for {new DurationRange(NumberRange.Single(left))}; its strength is stable after {stable.Value}.")
                {
                    Lines = ValueList<string>.Own([agent.Label]),
                    Evidence = ValueList<Evidence>.Own([new Evidence("time left to set", left / 3600, "h", new NumberRange(needed / 3600, null))]),
                    NextTime = "Leave it longer before it is judged or cut.",
                    Citations = ValueList<Citation>.Own([stable.Citation]),
                    Weight = 0.9,
                };
            }
        }

        if (record.CastGrams is { } cast && !record.Weighed.IsEmpty && symptom == Symptom.TooFirm)
        {
            double baseGrams = record.Weighed.Where(w => made.Line(w.Label).IsBase).Sum(w => w.Grams);
            double assembled = made.Proportions.Total * baseGrams;
            if (cast < assembled * 0.95)
            {
                yield return new LikelyCause(
                    "boiled-down", CauseStanding.Shown,
                    $"{Numbers.Significant(assembled, 4)} g went in and {Numbers.Significant(cast, 4)} g were cast: what boiled off made it stronger by {Numbers.Significant((assembled / cast - 1) * 100, 2)} %.")
                {
                    Evidence = ValueList<Evidence>.Own([new Evidence("cast of what went in", cast / assembled * 100, "%", new NumberRange(95, null))]),
                    NextTime = "Weigh the pan before and after, and put the lost water back.",
                    Citations = ValueList<Citation>.Own([Citation.CommonPractice]),
                    Weight = 1,
                };
            }
        }
    }

    private static IEnumerable<LikelyCause> FromKnownFailures(
        ValueList<Finding> findings, List<LikelyCause> shown, Symptom symptom, FormulaLine[] agents, ProcessRecord record)
    {
        foreach (KnownFailure failure in KnownFailure.All)
        {
            FormulaLine[] concerned = [.. agents.Where(a => failure.Concerns(a.Ingredient))];
            if (concerned.Length == 0 || !failure.Symptoms.Contains(symptom) || shown.Any(c => failure.Rules.Contains(c.Id)))
            {
                continue; // a rule that found it says it better
            }

            string[] judged = [.. failure.Rules.Where(r => !findings.Any(f => f.Id == r && f.IsUnchecked))];
            bool inOrder = failure.Rules.Count > 0 && judged.Length == failure.Rules.Count && RecordCovers(failure, record);
            yield return new LikelyCause(failure.Id, inOrder ? CauseStanding.Unlikely : CauseStanding.Open,
                inOrder ? $"{failure.Cause.Value} What is known of this batch is in order here." : failure.Cause.Value)
            {
                Lines = ValueList<string>.From(concerned.Select(l => l.Label)),
                ToBeSure = failure.ToBeSure,
                NextTime = failure.NextTime,
                Citations = ValueList<Citation>.Own([failure.Cause.Citation]),
                // The first symptom of a failure is what it mostly looks like.
                Weight = failure.Symptoms[0] == symptom ? 0.6 : 0.4,
            };
        }
    }

    /// <summary>Rules on the work judge the plan where nothing is recorded; then the work itself is still not known.</summary>
    private static bool RecordCovers(KnownFailure failure, ProcessRecord record) => failure.Rules.All(rule => rule switch
    {
        "hydration-temperature" or "boils-too-cool" => record.HydratedAt is not null,
        "held-hot-too-long" or "ph-while-heated" => record.HydratedFor is not null,
        "soak-water-too-warm" => record.SoakedAt is not null,
        "cast-too-cool" => record.CastAt is not null,
        "served-outside-its-temperature" or "warm-holding" => record.ServedAt is not null,
        "weeping" => record.StoredFor is not null,
        _ => true,
    });

    /// <summary>What the gel lets one do: melt it and cast it again, or not.</summary>
    private static IEnumerable<Cited<string>> Rescue(FormulaLine agent, Symptom symptom)
    {
        MeltingBehaviour melting = agent.Ingredient.Profile!.Melting;
        string name = agent.Ingredient.Name;
        if (symptom is Symptom.OffTasteOrColour || melting.ReversibilityFact is not { } fact)
        {
            yield break;
        }

        string text = melting.Reversibility switch
        {
            Reversibility.Reversible when melting.Window is { } window && agent.Ingredient.Profile.Setting.Triggers.All(t => t.Cause != SettingCause.Heating)
                => $"The {name} gel melts at {window.Value}: melt it, mend it, and cast it again.",
            Reversibility.Reversible => $"The {name} gel turns liquid again: mend it, and set it again.",
            Reversibility.Conditional => $"The {name} gel may melt again, depending on its ions: try a spoonful before the batch.",
            _ => $"The {name} gel does not melt again: this batch can be blended to a fluid gel or used as it is, not recast.",
        };
        yield return new Cited<string>(text, fact.Citation);
    }
}
