using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>One row of a nutrition declaration: the figures as reckoned and as a label writes them. Immutable, equal by content.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Unit">kJ, kcal, g or mg.</param>
/// <param name="Per100Grams">The figure per 100 g of the finished food as reckoned, in <paramref name="Unit"/>, without the lines of <paramref name="Without"/>.</param>
/// <param name="PerPortion">The figure per portion as reckoned, in <paramref name="Unit"/>; null if no portion is known.</param>
/// <param name="Per100GramsText">The figure per 100 g as the market rounds it; where lines are missing <c>at least</c> that much, or <c>not known</c>.</param>
/// <param name="PerPortionText">The figure per portion as the market rounds it; null if no portion is known.</param>
/// <param name="Without">The labels of lines of which it is not known: they are not counted, and they are not zero.</param>
/// <param name="Estimated">True if the powder of a hydrocolloid was counted wholly as fibre, starch or protein.</param>
public sealed record DeclaredNutrient(
    Nutrient Kind,
    string Unit,
    double Per100Grams,
    double? PerPortion,
    string Per100GramsText,
    string? PerPortionText,
    ValueList<string> Without,
    bool Estimated)
{
    /// <summary>True if no line is missing.</summary>
    public bool IsComplete => Without.IsEmpty;

    /// <summary>The row.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Kind}: {Per100GramsText} per 100 g" + (PerPortionText is null ? "" : $", {PerPortionText} per portion")
        + (Estimated ? " (estimated)" : "") + (IsComplete ? "" : $"; not known of {Without}");
}
