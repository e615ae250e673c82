using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Explains the numbers of a formula, with a base of 100 g. Nothing is worked out until it is asked for.</summary>
public static class FormulaDerivations
{
    private const double BaseGrams = 100;

    /// <summary>How a line follows from a base of 100 g.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="label">The label of the line.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    public static Derivation Explain(this Formula formula, string label)
        => new Explainer(Guard.NotNull(formula), BaseGrams).Line(formula.Line(label));

    /// <summary>How the total follows from a base of 100 g.</summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The derivation.</returns>
    public static Derivation ExplainTotal(this Formula formula) => new Explainer(Guard.NotNull(formula), BaseGrams).Total();

    /// <summary>How the amount of a line becomes a percentage of a reference, with a base of 100 g.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="label">The label of the line.</param>
    /// <param name="reference">The reference.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    /// <exception cref="FormulaException">The reference is a later line, is unknown, or weighs nothing.</exception>
    public static Derivation ExplainDose(this Formula formula, string label, DoseReference reference)
        => new Explainer(Guard.NotNull(formula), BaseGrams).Share(formula.Line(label), Guard.NotNull(reference));
}
