using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>Fills one phase with additions. Mutable, not thread-safe.</summary>
public sealed class PhaseBuilder
{
    private readonly DraftPhase _phase;

    internal PhaseBuilder(DraftPhase phase) => _phase = phase;

    /// <summary>Adds an ingredient by its dose.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="dose">Its dose; what cannot be is reported when the formula is built.</param>
    /// <param name="line">Says more about the line; null if there is nothing to add.</param>
    /// <returns>This builder.</returns>
    public PhaseBuilder Add(Ingredient ingredient, Dose dose, Action<LineBuilder>? line = null)
    {
        Guard.NotNull(dose);
        _phase.Lines.Add(new DraftLine(Guard.NotNull(ingredient), dose.PercentByMass, null, dose.Reference, LineBuilder.Run(line)));
        return this;
    }

    /// <summary>Adds an ingredient by its weight, in a formula whose base is weighed too; the dose on the reference is worked out.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="mass">Its weight; not negative.</param>
    /// <param name="reference">What the dose shall be a percentage of.</param>
    /// <param name="line">Says more about the line; null if there is nothing to add.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The weight is negative or not finite.</exception>
    public PhaseBuilder Weigh(Ingredient ingredient, Mass mass, DoseReference reference, Action<LineBuilder>? line = null)
    {
        _phase.Lines.Add(new DraftLine(Guard.NotNull(ingredient), double.NaN, Guard.Grams(mass), Guard.NotNull(reference), LineBuilder.Run(line)));
        return this;
    }
}
