using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>Fills the base phase: shares that add up to 100 %, or weights. Mutable, not thread-safe.</summary>
public sealed class BaseBuilder
{
    private readonly List<DraftLine> _parts;

    internal BaseBuilder(List<DraftLine> parts) => _parts = parts;

    /// <summary>Adds a part by its share.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="percent">Its share, % by weight of the base; all shares must add up to 100 %, checked when the formula is built.</param>
    /// <param name="line">Says more about the line; null if there is nothing to add.</param>
    /// <returns>This builder.</returns>
    public BaseBuilder Share(Ingredient ingredient, double percent, Action<LineBuilder>? line = null)
    {
        _parts.Add(new DraftLine(Guard.NotNull(ingredient), percent, null, DoseReference.Base, LineBuilder.Run(line)));
        return this;
    }

    /// <summary>Adds a part by its weight; then every part of the base must be weighed, and the shares are worked out.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="mass">Its weight; not negative.</param>
    /// <param name="line">Says more about the line; null if there is nothing to add.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The weight is negative or not finite.</exception>
    public BaseBuilder Weigh(Ingredient ingredient, Mass mass, Action<LineBuilder>? line = null)
    {
        _parts.Add(new DraftLine(Guard.NotNull(ingredient), double.NaN, Guard.Grams(mass), DoseReference.Base, LineBuilder.Run(line)));
        return this;
    }
}
