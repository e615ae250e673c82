using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A percentage by weight that does not yet say of what. It is not a dose until it does. The default value is 0 %.</summary>
public readonly record struct DosePercent
{
    internal DosePercent(double percent) => Value = percent;

    /// <summary>The percentage by weight.</summary>
    public double Value { get; }

    /// <summary>Of the base phase.</summary>
    public Dose OfBase => new(Value, DoseReference.Base);

    /// <summary>Of everything in the base and in the phases before the line's own phase.</summary>
    public Dose OfPreceding => new(Value, DoseReference.Preceding);

    /// <summary>Of all lines together; below 100 %.</summary>
    public Dose OfTotal => new(Value, DoseReference.Total);

    /// <summary>Of the water in everything in the base and in the phases before the line's own phase.</summary>
    public Dose OfWater => new(Value, DoseReference.Water);

    /// <summary>Of the line of an ingredient, earlier in the formula.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <returns>The dose.</returns>
    public Dose Of(Ingredient ingredient) => new(Value, DoseReference.Line(ingredient));

    /// <summary>Of a reference chosen at run time.</summary>
    /// <param name="reference">The reference.</param>
    /// <returns>The dose.</returns>
    public Dose Of(DoseReference reference) => new(Value, Guard.NotNull(reference));

    /// <summary>Of an earlier line, by its label.</summary>
    /// <param name="label">The label of that line.</param>
    /// <returns>The dose.</returns>
    public Dose OfLine(string label) => new(Value, DoseReference.Line(label));

    /// <summary>The percentage.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Numbers.Significant(Value, 6) + " %";
}
