using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>The dose of an agent in a formula.</summary>
public static class FormulaDosing
{
    /// <summary>
    /// The dose of an agent for a texture: the middle of the catalogue's window, corrected for the grade that the ingredient states and for what gels in this formula
    /// (the figures are % by weight of the continuous mix, doses are stated on other references).
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <param name="label">The label of the agent's line, an addition: the ingredient's id unless the line has a label of its own.</param>
    /// <param name="texture">The texture. Sliceable is <see cref="Texture.Firm"/>; dice and thin sheets are <see cref="Texture.VeryFirm"/>.</param>
    /// <param name="windowGrade">The grade the catalogue's window is taken to hold for; null for the one the catalogue states (gelatin), if any.</param>
    /// <returns>The dose; or, without one, the reason: no window is published, the mix is mostly milk and the agent doses differently there, or the food is for infants or people with a swallowing disorder.</returns>
    /// <exception cref="ArgumentNullException">The formula or the label is null.</exception>
    /// <exception cref="ArgumentException">The line is not there, is not a hydrocolloid, is a part of the base or is folded in as pieces; or a grade is on another scale than the agent's.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined texture.</exception>
    /// <exception cref="FormulaException">The formula with so much of the agent cannot be.</exception>
    public static AgentDosing DosedFor(this Formula formula, string label, Texture texture, Grade? windowGrade = null)
    {
        FormulaLine line = AgentLines.Of(formula, label);
        Guard.Defined((int)texture, (int)Texture.Modifier, nameof(texture));
        var context = new ReviewContext(formula);
        AgentInMix agent = context.Agents.Find(a => a.Line == line)!;
        string name = line.Ingredient.Name, wanted = Words.Of(texture).Replace('-', ' ');
        if (AgentLines.Refusal(formula) is { } refusal)
        {
            return new(formula, line, refusal);
        }

        if (agent.IsDosedForMilk)
        {
            AgentLimit milk = agent.Profile.Limits.First(l => l is { Quantity: LimitedQuantity.Concentration, Stage: LimitStage.BesideCasein });
            return new(formula, line, $"Half of the mix or more is milk, where {Phrases.InSentence(name)} takes other doses than the windows for water. {milk.Consequence}") { Source = milk.Range.Citation };
        }

        if (WorkingDose.For(line.Ingredient, texture, windowGrade) is not { } corrected)
        {
            string known = Phrases.And(agent.Profile.DoseWindows.Select(w => Words.Of(w.Texture).Replace('-', ' ')));
            return new(formula, line, $"{name}: no dose window for the texture '{wanted}' is published here" + (known.Length == 0 ? "." : $"; there are windows for {known}."));
        }

        Cited<NumberRange> catalogued = agent.Profile.WindowFor(texture)!.Percent;
        NumberRange window = corrected.Value!.Value;
        if (Middle(window) is not { } percent || percent is not (> 0 and < 100) || AgentLines.DoseFor(formula, label, percent) is not { } dose)
        {
            return new(formula, line, $"{name}, {wanted}: {corrected.Explanation} There is no such dose in this formula.") { Catalogued = catalogued, Source = corrected.Source };
        }

        return new(formula, line, $"{name}, {wanted}: {Numbers.Significant(percent, 3)} % of the continuous mix, the middle of {Text(window)}; in this formula {dose}.")
        {
            Percent = percent,
            Window = window,
            Catalogued = catalogued,
            Dose = dose,
            Standing = catalogued.Citation.Quality is CitationQuality.Estimate or CitationQuality.CommonPractice ? DoseStanding.Judged
                : window == catalogued.Value ? DoseStanding.Published : DoseStanding.Derived,
            Source = catalogued.Citation,
            Corrections = ValueList<string>.Own([corrected.Explanation, OnItsReference(percent, dose)]),
            Notes = ValueList<Cited<string>>.From(Partners(context, agent)),
            Outside = corrected.Outside,
            Change = Change(formula, label, dose, texture),
        };
    }

    /// <summary>The dose of an ingredient for a firmness, by a kitchen's own trial of it.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="label">The label of the ingredient's line, an addition.</param>
    /// <param name="trial">The trial.</param>
    /// <param name="strength">The firmness in the unit of the trial, above 0 and up to 1e12.</param>
    /// <param name="confidencePercent">The level of the interval of doses at which the curve may reach it, 50–99.99. Unit: %.</param>
    /// <returns>The dose with its interval; or, without one, the reason.</returns>
    /// <exception cref="ArgumentNullException">The formula, the label or the trial is null.</exception>
    /// <exception cref="ArgumentException">The line is not there, is not a hydrocolloid, is a part of the base or is folded in as pieces; or the trial was made with another ingredient or grade.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="FormulaException">The formula with so much of the ingredient cannot be.</exception>
    public static AgentDosing DosedForStrength(this Formula formula, string label, AgentTrial trial, double strength, double confidencePercent = 95)
    {
        FormulaLine line = AgentLines.Of(formula, label);
        Guard.NotNull(trial).CheckFor(line);
        if (AgentLines.Refusal(formula) is { } refusal)
        {
            return new(formula, line, refusal);
        }

        TrialDose found = trial.Fit.DoseFor(strength, confidencePercent);
        string told = $"{line.Ingredient.Name} by own trial, in {trial.Unit} and % of the continuous mix: {found}";
        if (found.Dose is not { } percent || percent is not (> 0 and < 100) || AgentLines.DoseFor(formula, label, percent) is not { } dose)
        {
            return new(formula, line, found.Dose is null ? told : told + ". There is no such dose in this formula.") { Source = Citation.Measured };
        }

        return new(formula, line, $"{told}; in this formula {dose}.")
        {
            Percent = percent,
            Window = found.Confidence,
            Dose = dose,
            Standing = DoseStanding.Measured,
            Source = Citation.Measured,
            Corrections = ValueList<string>.Own([OnItsReference(percent, dose)]),
            Notes = trial.Conditions is null ? default : ValueList<Cited<string>>.Own([new($"Holds for the conditions of the trial: {trial.Conditions}", Citation.Measured)]),
            Outside = found.Outside,
            Change = new DoseChange(label, dose),
        };
    }

    // A thickener or a helper in a gel does not say what texture the dish is.
    private static IFormulaChange Change(Formula formula, string label, Dose dose, Texture texture)
    {
        var change = new DoseChange(label, dose);
        return texture is Texture.Modifier or Texture.Thickened || formula.Service.Texture == texture ? change
            : new ChangeSequence(ValueList<IFormulaChange>.Own([change, new ServiceChange(formula.Service with { Texture = texture })]));
    }

    /// <summary>Other agents in the mix that are known to change what this one does: the windows are for it alone.</summary>
    internal static IEnumerable<Cited<string>> Partners(ReviewContext context, AgentInMix agent)
        => from other in context.Agents
           where other.Line != agent.Line
           from pair in Synergies.Between(agent.Line.Ingredient, other.Line.Ingredient)
           where !pair.Effects.Value.Contains(SynergyEffect.NoSynergy)
           select new Cited<string>($"{other.Name} beside {Phrases.InSentence(agent.Name)} changes the gel: {string.Join(", ", pair.Effects.Value.Select(e => Words.Of(e).Replace('-', ' ')))}. The window is for {Phrases.InSentence(agent.Name)} alone.", pair.Effects.Citation);

    private static string OnItsReference(double percent, Dose dose) => $"{Numbers.Significant(percent, 3)} % of the continuous mix is {dose}.";

    private static double? Middle(NumberRange window) => window is { Min: { } low, Max: { } high } ? (low + high) / 2 : window.Min ?? window.Max;

    private static string Text(NumberRange window) => new NumberRange(Rounded(window.Min), Rounded(window.Max)) + " %";

    private static double? Rounded(double? percent) => percent is { } p ? Numbers.RoundHalfAway(p, 2) : null;
}
