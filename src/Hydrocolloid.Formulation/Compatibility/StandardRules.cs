using Hydrocolloid.Formulation.Compatibility.Rules;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>The rules that <see cref="FormulaReview.Review(Formula)"/> applies.</summary>
public static class StandardRules
{
    /// <summary>All of them.</summary>
    public static ValueList<ICompatibilityRule> All { get; } = ValueList<ICompatibilityRule>.From(
    [
        new UnknownIngredientRule(),
        new DecimalSlipRule(),
        new GellingMinimumRule(),
        new DoseWindowRule(),
    ]);
}
