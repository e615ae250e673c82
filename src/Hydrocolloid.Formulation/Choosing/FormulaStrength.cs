using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>The firmness to expect of a formula.</summary>
public static class FormulaStrength
{
    /// <summary>
    /// The firmness by the agent's published strength curve, where its sources call it predictive: gelatin of pork or beef alone, with its Bloom stated. For every other agent
    /// the answer has no number but the reason; a trial gives one.
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <param name="label">The label of the agent's line, an addition.</param>
    /// <returns>The firmness under the conditions of the grade's test, or why there is no number.</returns>
    /// <exception cref="ArgumentNullException">The formula or the label is null.</exception>
    /// <exception cref="ArgumentException">The line is not there, is not a hydrocolloid, is a part of the base or is folded in as pieces.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The grade is below 1.</exception>
    public static StrengthForecast PredictStrength(this Formula formula, string label)
    {
        FormulaLine line = AgentLines.Of(formula, label);
        var context = new ReviewContext(formula);
        AgentInMix agent = context.Agents.Find(a => a.Line == line)!;
        StrengthModel model = StrengthModel.For(line.Ingredient);
        Finding[] findings = [.. formula.Review().Where(f => f.Lines.Contains(label))];
        string[] reasons = [.. WhyNot(context, agent, model, findings)];
        if (reasons.Length > 0)
        {
            return new(line, agent.Percent, "", Reliance.QualitativeOnly, $"{line.Ingredient.Name}: no number. {string.Join(" ", reasons)}", model.Source);
        }

        Estimate<double> strength = model.StrengthAt(line.Ingredient.Grade!, agent.Percent);
        return new(line, agent.Percent, "g", strength.Reliance, $"{line.Ingredient.Name} of {line.Ingredient.Grade}, {Numbers.Significant(agent.Percent, 3)} % of the continuous mix: {strength.Explanation}", strength.Source)
        {
            Value = strength.Value,
            Range = new(strength.Low, strength.High),
            Outside = strength.Outside,
            Notes = ValueList<Cited<string>>.From(Notes(context, findings)),
        };
    }

    /// <summary>The firmness by a kitchen's own trial of the ingredient.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="label">The label of the ingredient's line, an addition.</param>
    /// <param name="trial">The trial.</param>
    /// <param name="confidencePercent">The level of the interval in which the next gel lies, 50–99.99. Unit: %.</param>
    /// <returns>The firmness, or why there is no number.</returns>
    /// <exception cref="ArgumentNullException">The formula, the label or the trial is null.</exception>
    /// <exception cref="ArgumentException">The line is not there, is not a hydrocolloid, is a part of the base or is folded in as pieces; or the trial was made with another ingredient or grade.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside its range.</exception>
    public static StrengthForecast PredictStrength(this Formula formula, string label, AgentTrial trial, double confidencePercent = 95)
    {
        FormulaLine line = AgentLines.Of(formula, label);
        Guard.NotNull(trial).CheckFor(line);
        Guard.InRange(confidencePercent, 50, 99.99, "%");
        double percent = formula.Proportions.PercentOfContinuousMix(line);
        if (AgentLines.Refusal(formula) is { } refusal)
        {
            return new(line, percent, trial.Unit, Reliance.QualitativeOnly, refusal, Citation.Measured);
        }

        string dose = $"{Numbers.Significant(percent, 3)} % of the continuous mix";
        if (percent <= (trial.Curve == TrialCurve.PowerLaw ? trial.CriticalPercent : 0))
        {
            return new(line, percent, trial.Unit, Reliance.QualitativeOnly, $"{line.Ingredient.Name}: no number. {dose} is not above the dose at which the trial begins to gel.", Citation.Measured);
        }

        TrialPrediction at = trial.Fit.StrengthAt(percent, confidencePercent);
        return new(line, percent, trial.Unit, trial.Fit.Issues.IsEmpty && at.InRange ? Reliance.Predictive : Reliance.Screening,
            $"{line.Ingredient.Name} by own trial, {dose}: {Numbers.Significant(at.Strength, 3)} {trial.Unit}"
                + (at.Prediction is { } next ? $", the next gel from {Numbers.Significant(next.Min!.Value, 3)} to {Numbers.Significant(next.Max!.Value, 3)} at {Numbers.Significant(confidencePercent, 4)} %" : ", without an interval"), Citation.Measured)
        {
            Value = at.Strength,
            Range = at.Prediction,
            Outside = at.Outside,
            Notes = trial.Conditions is null ? default : ValueList<Cited<string>>.Own([new($"Holds for the conditions of the trial: {trial.Conditions}", Citation.Measured)]),
        };
    }

    private static IEnumerable<string> WhyNot(ReviewContext context, AgentInMix agent, StrengthModel model, Finding[] findings)
    {
        if (AgentLines.Refusal(context.Formula) is { } refusal)
        {
            yield return refusal;
        }

        if (model.Reliance == Reliance.QualitativeOnly)
        {
            yield return Sentence(model.Explanation);
        }
        else if (model.Reliance == Reliance.Screening)
        {
            yield return $"Its published curve is good for a first guess only ({model.Explanation}): make a trial.";
        }
        else if (agent.Line.Ingredient.Grade is null)
        {
            yield return "Its grade is not stated: state it with WithGrade.";
        }
        else if (agent.Percent <= 0)
        {
            yield return "There is none in the mix.";
        }

        AgentInMix[] others = [.. context.Agents.Where(a => a.Line != agent.Line && (a.Profile.Role == HydrocolloidRole.GellingAgent || Synergies.Between(a.Line.Ingredient, agent.Line.Ingredient).Count > 0))];
        if (others.Length > 0)
        {
            yield return $"The curve is for it alone, and {Phrases.Names(others.Select(a => a.Line))} {(others.Length == 1 ? "is" : "are")} in the mix too: make a trial.";
        }

        foreach (Finding conflict in findings.Where(f => f.Severity == Severity.Conflict))
        {
            yield return $"Its gel is in question ({conflict.Id}): {conflict.Explanation}";
        }
    }

    private static IEnumerable<Cited<string>> Notes(ReviewContext context, Finding[] findings)
    {
        if (context.Mix.Fat.Value >= 1)
        {
            Estimate<double> fat = GelModifiers.GelatinWithFat(Math.Min(context.Mix.Fat.Value, 100));
            yield return new($"With {Numbers.Significant(context.Mix.Fat.Value, 3)} % of fat about {Numbers.Significant(fat.Value!.Value, 2)} % of that: {fat}", fat.Source);
        }

        foreach (Finding caution in findings.Where(f => f.Severity == Severity.Caution))
        {
            yield return new(caution.Explanation, caution.Citations.IsEmpty ? Citation.CommonPractice : caution.Citations[0]);
        }
    }

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text.Substring(1) + ".";
}
