using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>How a proposal does on one criterion; its numbers have no unit. Immutable, equal by content.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Score">From 0 to 1, no unit.</param>
/// <param name="Weight">What it counts, no unit.</param>
/// <param name="Why">Why: a sentence.</param>
/// <param name="Citations">Where that comes from; empty where it follows from the formula.</param>
public sealed record CriterionScore(Criterion Criterion, double Score, double Weight, string Why, ValueList<Citation> Citations)
{
    /// <summary>The criterion, score times weight, and why.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Words.Kebab(Criterion.ToString())}: {Numbers.Significant(Score, 2)} × {Numbers.Significant(Weight, 3)}. {Why}";
}
