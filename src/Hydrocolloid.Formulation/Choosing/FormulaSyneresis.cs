using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Compatibility.Rules;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>Whether a formula will weep.</summary>
public static class FormulaSyneresis
{
    private const double LeastWeight = 0.6; // of the rules' troubles, those that explain weeping at least as well as a gel out of its pH

    /// <summary>
    /// The risk of weeping for each gelling agent of the mix. The catalogue's tendency of the agent is the class; too low a dose raises it a step; a helper at its amount makes it
    /// low and one that makes the gel more elastic lowers it a step; nothing stored and nothing cut lowers it a step; and what a rule finds that makes gels weep (freezing, too much
    /// calcium, acid) makes it high. The steps are this library's judgement, the figures the catalogue's.
    /// </summary>
    /// <param name="formula">The formula; <see cref="ServicePlan.StoredFor"/>, <see cref="ServicePlan.Shape"/> and <see cref="ServicePlan.Frozen"/> count.</param>
    /// <returns>The risks, in the order of the formula; empty if nothing gels.</returns>
    /// <exception cref="ArgumentNullException">The formula is null.</exception>
    public static ValueList<SyneresisRisk> SyneresisRisks(this Formula formula)
    {
        var context = new ReviewContext(Guard.NotNull(formula));
        ValueList<Finding> findings = formula.Review();
        return ValueList<SyneresisRisk>.From(context.Agents.Where(a => a.Profile.Role == HydrocolloidRole.GellingAgent).Select(a => RiskOf(context, a, findings)));
    }

    /// <summary>The class of an agent by itself: the catalogue's classification, else how its weeping is graded; with the fact behind it.</summary>
    internal static (SyneresisClass Class, Cited<string>? Fact) TendencyOf(HydrocolloidProfile profile)
    {
        foreach (AgentFact fact in profile.Facts.Where(f => f.Topic == "syneresis"))
        {
            foreach (SyneresisClass known in (SyneresisClass[])[SyneresisClass.Low, SyneresisClass.Moderate, SyneresisClass.High])
            {
                if (fact.Text.Value == $"Tendency to weep: {Words.Of(known)}.")
                {
                    return (known, fact.Text);
                }
            }
        }

        return profile.SensitivityTo(SensitiveTo.Weeping) is { } sensitivity
            ? (sensitivity.Harm switch { Harm.None => SyneresisClass.Low, Harm.Notable => SyneresisClass.Moderate, _ => SyneresisClass.High }, sensitivity.Consequence)
            : (SyneresisClass.Unknown, null);
    }

    private static SyneresisRisk RiskOf(ReviewContext context, AgentInMix agent, ValueList<Finding> findings)
    {
        var reasons = new List<Cited<string>>();
        var evidence = new List<Evidence>();
        (SyneresisClass risk, Cited<string>? fact) = agent.IsDosedForMilk ? (SyneresisClass.Unknown, null) : TendencyOf(agent.Profile);
        if (fact is null)
        {
            reasons.Add(new(agent.IsDosedForMilk ? "The tendency of the agent is known in water; half of this mix or more is milk." : "The catalogue says nothing of its weeping.", Citation.CommonPractice));
        }
        else
        {
            reasons.Add(fact);
            if (agent.Profile.SensitivityTo(SensitiveTo.Weeping) is { } sensitivity && sensitivity.Consequence != fact)
            {
                reasons.Add(sensitivity.Consequence);
            }

            risk = Concentration(agent, risk, reasons, evidence);
            risk = Helpers(context, agent, risk, reasons, evidence);
            risk = Service(context.Service, risk, reasons);
        }

        foreach (Finding finding in findings.Where(f => f.Id is not ("weeping" or "dose-outside-window") && f.Severity >= Severity.Caution && f.Lines.Contains(agent.Line.Label) && SymptomsOfRules.Weight(f.Id, Symptom.Weeping) >= LeastWeight))
        {
            risk = SyneresisClass.High;
            reasons.Add(new(finding.Explanation, finding.Citations.IsEmpty ? Citation.CommonPractice : finding.Citations[0]));
            evidence.AddRange(finding.Evidence);
        }

        return new(agent.Line, risk, ValueList<Cited<string>>.Own([.. reasons]), ValueList<Evidence>.Own([.. evidence]),
            ValueList<Remedy>.From(findings.Where(f => f.Lines.Contains(agent.Line.Label) && SymptomsOfRules.Weight(f.Id, Symptom.Weeping) >= LeastWeight).SelectMany(f => f.Remedies)));
    }

    private static SyneresisClass Concentration(AgentInMix agent, SyneresisClass risk, List<Cited<string>> reasons, List<Evidence> evidence)
    {
        Cited<NumberRange>? least = agent.IsUnderMinimum ? agent.Profile.MinimumGellingPercent
            : agent.ChosenWindow is { } window && !AgentInMix.IsWithin(new NumberRange(window.Percent.Value.Min, null), agent.Percent) ? window.Percent : null;
        if (least is null)
        {
            return risk;
        }

        var limit = new NumberRange(least.Value.Min, null);
        reasons.Add(new($"Its dose of {Numbers.Significant(agent.Percent, 3)} % of the continuous mix is under the {limit} % {(agent.IsUnderMinimum ? "that gels" : "of the texture")}: a loose network lets its water go.", least.Citation));
        evidence.Add(agent.Evidence(limit));
        return risk == SyneresisClass.High ? risk : risk + 1;
    }

    private static SyneresisClass Helpers(ReviewContext context, AgentInMix agent, SyneresisClass risk, List<Cited<string>> reasons, List<Evidence> evidence)
    {
        foreach (WeepingHelper helper in WeepingHelper.Of(context, agent).Where(h => h.Held > 0))
        {
            string name = Phrases.InSentence(helper.Ingredient.Name);
            evidence.Add(helper.Evidence);
            if (helper.IsEnough)
            {
                reasons.Add(new($"There is enough {name} in it to hold the water.", helper.Citation));
                return SyneresisClass.Low;
            }

            reasons.Add(new($"There is some {name} in it, but less than holds the water.", helper.Citation));
        }

        Synergy? elastic = context.Agents.Where(a => a.Line != agent.Line).SelectMany(a => Synergies.Between(agent.Line.Ingredient, a.Line.Ingredient)).FirstOrDefault(s => s.Has(SynergyEffect.MoreElastic));
        if (elastic is null || risk == SyneresisClass.Low)
        {
            return risk;
        }

        reasons.Add(new("Its partner in the mix makes the gel more elastic, and it weeps less.", elastic.Effects.Citation));
        return risk - 1;
    }

    private static SyneresisClass Service(ServicePlan service, SyneresisClass risk, List<Cited<string>> reasons)
    {
        bool cut = service.Shape is PortionShape.Slice or PortionShape.Cube;
        if (service.StoredSeconds is null)
        {
            reasons.Add(new("How long it is stored is not stated: judged as stored.", Citation.CommonPractice));
        }
        else if (service.StoredSeconds == 0 && !cut && service.Frozen != true && risk > SyneresisClass.Low)
        {
            reasons.Add(new("It is neither stored nor cut, so little comes off before it is eaten.", Citation.CommonPractice));
            return risk - 1;
        }

        return risk;
    }
}
