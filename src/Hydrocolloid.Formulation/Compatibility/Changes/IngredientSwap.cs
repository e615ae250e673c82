namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Another ingredient in one line: another agent, or the same fruit heated.</summary>
/// <param name="Label">The label of the line.</param>
/// <param name="Ingredient">The new ingredient.</param>
/// <param name="Dose">Its dose; null to keep the dose of the line.</param>
public sealed record IngredientSwap(string Label, Ingredient Ingredient, Dose? Dose = null) : IFormulaChange
{
    /// <inheritdoc/>
    public Formula ApplyTo(Formula formula)
    {
        Formula swapped = formula.WithIngredient(Label, Ingredient);
        return Dose is null ? swapped : swapped.WithDose(swapped.Lines[formula.Line(Label).Index].Label, Dose);
    }
}
