using UnitsNet;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>The mass of another grade that gives the same firmness in the same batch. Immutable.</summary>
public sealed class GradeChange
{
    internal GradeChange(GradeRule rule, Estimate<Mass> result, Mass? byOtherRule)
    {
        Rule = rule;
        Result = result;
        ByOtherRule = byOtherRule;
    }

    /// <summary>The rule used.</summary>
    public GradeRule Rule { get; }

    /// <summary>The mass of the new grade, with the range that the uncertainty of the exponent leaves (not by the straight ratio, which states none); no value if no relation holds for the agent.</summary>
    public Estimate<Mass> Result { get; }

    /// <summary>What the other rule would give; null if no relation holds for the agent.</summary>
    public Mass? ByOtherRule { get; }

    /// <summary>The explanation.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString() => Result.ToString();
}
