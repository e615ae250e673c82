using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>What each criterion counts; weights have no unit. Immutable, equal by content.</summary>
public sealed record CriterionWeights
{
    // In the order of Criterion. What the brief asks for by name counts most; trouble that the review sees next; the rest tips the scale.
    private static readonly double[] s_defaults = [3, 3, 2, 3, 1, 2, 1, 1, 1];

    private readonly ValueList<double> _weights;

    private CriterionWeights(ValueList<double> weights) => _weights = weights;

    /// <summary>
    /// The library's judgement: 3 for few cautions, for clarity and for melting in the mouth (the last two count only where they are asked for), 2 for the margin to
    /// melting and for the freezer (where they matter), 1 for little weeping, little work, a small dose and one that is well known.
    /// </summary>
    public static CriterionWeights Default { get; } = new(ValueList<double>.Own([.. s_defaults]));

    /// <summary>The weight of a criterion.</summary>
    /// <param name="criterion">The criterion.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public double this[Criterion criterion] => _weights[Guard.Defined((int)criterion, s_defaults.Length - 1, nameof(criterion))];

    /// <summary>The weights with another one for a criterion; 0 leaves it out.</summary>
    /// <param name="criterion">The criterion.</param>
    /// <param name="weight">The weight, 0 to 1000, no unit.</param>
    /// <returns>The weights.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined criterion, or a weight outside its range.</exception>
    public CriterionWeights With(Criterion criterion, double weight)
    {
        double[] changed = [.. _weights];
        changed[Guard.Defined((int)criterion, s_defaults.Length - 1, nameof(criterion))] = Guard.InRange(weight, 0, 1000, "");
        return new CriterionWeights(ValueList<double>.Own(changed));
    }

    /// <summary>The criteria and their weights.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(", ", _weights.Select((w, i) => $"{Words.Kebab(((Criterion)i).ToString())} {Numbers.Significant(w, 3)}"));
}
