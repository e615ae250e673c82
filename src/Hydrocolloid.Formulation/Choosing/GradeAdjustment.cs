using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Gelation;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>A formula made over to another grade of one agent, as firm as before; or the reason why it cannot be worked out. Immutable.</summary>
public sealed class GradeAdjustment
{
    private readonly Formula _formula;

    internal GradeAdjustment(Formula formula, string label, Grade from, Grade to, GradeChange masses)
    {
        _formula = formula;
        Label = label;
        From = from;
        To = to;
        Masses = masses;
    }

    /// <summary>The label of the agent's line.</summary>
    public string Label { get; }

    /// <summary>The grade the dose was for.</summary>
    public Grade From { get; }

    /// <summary>The grade it is now for.</summary>
    public Grade To { get; }

    /// <summary>The rule used.</summary>
    public GradeRule Rule => Masses.Rule;

    /// <summary>The masses behind it, on 100 g of base: by the rule with its range, by the other rule, the source and how far it can be relied on.</summary>
    public GradeChange Masses { get; }

    /// <summary>The new dose on the line's own reference, unrounded, so that adjusting back returns the formula; null if no relation holds for the agent.</summary>
    public Dose? Dose { get; internal init; }

    /// <summary>What the other rule would give; null if no relation holds for the agent.</summary>
    public Dose? DoseByOtherRule { get; internal init; }

    /// <summary>How the new mass follows, on 100 g of base; null if no relation holds for the agent.</summary>
    public Derivation? Derivation { get; internal init; }

    /// <summary>The change: the other grade, at its dose; null if no relation holds for the agent.</summary>
    public IFormulaChange? Change { get; internal init; }

    /// <summary>The formula with the other grade; null if no relation holds for the agent.</summary>
    public Formula? Formula => Change?.ApplyTo(_formula);

    /// <summary>What was done, by which rule, and what the other rule would give; or why nothing was.</summary>
    public string Explanation => Masses.ToString();

    /// <summary>The explanation.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString() => Explanation;
}
