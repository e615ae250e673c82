using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>
/// The catalogue's dose windows for a texture, corrected for the grade at hand: c · (S₁/S₂)^(1/n). The windows of mammalian gelatin are for 200–250 g Bloom;
/// those of other agents state no grade, so theirs must be given. Just set is the lowest dose that gels; sliceable is <see cref="Texture.Firm"/>; dice and thin
/// sheets are <see cref="Texture.VeryFirm"/>.
/// </summary>
public static class WorkingDose
{
    private static readonly Grade GelatinOfTheWindows = new(GradeScale.Bloom, 225);

    /// <summary>The working doses for a texture, % by weight of the continuous mix.</summary>
    /// <param name="agent">The agent; its <see cref="Ingredient.Grade"/> is the grade at hand.</param>
    /// <param name="texture">The texture.</param>
    /// <param name="windowGrade">The grade the catalogue's window is taken to hold for; null for the one the catalogue states, if any.</param>
    /// <returns>The window; null if the catalogue has none for this texture. If the grade, the window's grade or the relation is not known the window is as catalogued, and the explanation says so.</returns>
    /// <exception cref="ArgumentNullException">The agent is null.</exception>
    /// <exception cref="ArgumentException">A grade is on another scale than the agent's.</exception>
    public static Estimate<NumberRange>? For(Ingredient agent, Texture texture, Grade? windowGrade = null)
        => Guard.NotNull(agent).Profile?.WindowFor(texture) is { } window ? Corrected(agent, window.Percent, windowGrade) : null;

    /// <summary>The lowest dose that gels, % by weight of the continuous mix.</summary>
    /// <param name="agent">The agent; its <see cref="Ingredient.Grade"/> is the grade at hand.</param>
    /// <param name="windowGrade">The grade the catalogue's figure is taken to hold for; null for the one the catalogue states, if any.</param>
    /// <returns>The dose; null if the agent does not gel alone.</returns>
    /// <exception cref="ArgumentNullException">The agent is null.</exception>
    /// <exception cref="ArgumentException">A grade is on another scale than the agent's.</exception>
    public static Estimate<NumberRange>? JustSet(Ingredient agent, Grade? windowGrade = null)
        => Guard.NotNull(agent).Profile?.MinimumGellingPercent is { } minimum ? Corrected(agent, minimum, windowGrade) : null;

    private static Estimate<NumberRange> Corrected(Ingredient agent, Cited<NumberRange> window, Grade? windowGrade)
    {
        StrengthModel model = StrengthModel.For(agent);
        Grade? from = windowGrade ?? (model.Scale == GradeScale.Bloom && model.Reliance == Reliance.Predictive ? GelatinOfTheWindows : null);
        if (model.ReferencePercent is null || agent.Grade is null || from is null)
        {
            string why = model.ReferencePercent is null ? model.Explanation : agent.Grade is null ? "the grade at hand is not stated" : "the grade the window holds for is not stated";
            return new(window.Value, null, null, Reliance.Screening, $"The catalogue's window {window.Value} %, not corrected for the grade: {why}.", window.Citation);
        }

        if (agent.Grade.Scale != model.Scale || from.Scale != model.Scale)
        {
            throw new ArgumentException($"Grades must be on the scale of the agent, but are {from} and {agent.Grade}.", nameof(windowGrade));
        }

        double? At(double? percent) => percent is { } dose ? model.Corrected(dose, from.Value, agent.Grade!.Value) : null;
        var corrected = new NumberRange(At(window.Value.Min), At(window.Value.Max));
        return new(corrected, null, null, Reliance.Screening, $"The catalogue's window {window.Value} % of {from} is {Text(corrected)} % of {agent.Grade}.", window.Citation,
            Outside(corrected.Min, model) ?? Outside(corrected.Max, model));
    }

    // To a hundredth of a per cent.
    private static string Text(NumberRange range) => new NumberRange(Round(range.Min), Round(range.Max)).ToString();

    private static double? Round(double? percent) => percent is { } dose ? Numbers.RoundHalfAway(dose, 2) : null;

    private static OutsideRange? Outside(double? percent, StrengthModel model)
        => percent is { } dose ? OutsideRange.Check("dose", dose, "% of the gel", model.ValidPercent.Min!.Value, model.ValidPercent.Max!.Value) : null;
}
