using System.Diagnostics;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>A formula at a size. Immutable, safe to share between threads.</summary>
[DebuggerDisplay("{Formula.Name}: {Yield}")]
public sealed class Batch
{
    internal Batch(Formula formula, Yield yield, Losses losses, double baseGrams, string? limitedBy)
    {
        Formula = formula;
        Yield = yield;
        Losses = losses;
        BaseGrams = baseGrams;
        LimitedBy = limitedBy;
        AssembledGrams = formula.Proportions.Total * baseGrams;
        Lines = Scale(formula, baseGrams);
    }

    /// <summary>The formula.</summary>
    public Formula Formula { get; }

    /// <summary>What was asked for.</summary>
    public Yield Yield { get; }

    /// <summary>The losses reckoned with.</summary>
    public Losses Losses { get; }

    /// <summary>The lines in the order of the formula.</summary>
    public ValueList<BatchLine> Lines { get; }

    /// <summary>The label of the line in shortest supply; null unless stocks decided.</summary>
    public string? LimitedBy { get; }

    /// <summary>The base.</summary>
    public Mass BaseMass => Mass.FromGrams(BaseGrams);

    /// <summary>All lines together, before any loss.</summary>
    public Mass AssembledMass => Mass.FromGrams(AssembledGrams);

    /// <summary>The water that boils off.</summary>
    public Mass EvaporatedWater => Mass.FromGrams(EvaporatedGrams);

    /// <summary>The water to put back by weight; zero unless the losses are topped up.</summary>
    public Mass TopUpWater => Mass.FromGrams(Losses.ToppedUp ? EvaporatedGrams : 0);

    /// <summary>The finished gel, after all losses.</summary>
    public Mass FinishedMass => Mass.FromGrams(FinishedGrams);

    internal double BaseGrams { get; }

    internal double AssembledGrams { get; }

    internal double EvaporatedGrams => Losses.EvaporatedGrams(AssembledGrams);

    internal double FinishedGrams => Losses.FinishedGrams(AssembledGrams);

    /// <summary>The mass of a line.</summary>
    /// <param name="label">The label of the line.</param>
    /// <returns>The mass, unrounded.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    public Mass MassOf(string label) => Lines[Formula.Line(label).Index].Mass;

    /// <summary>The mass of an ingredient, where its line has no label of its own.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <returns>The mass, unrounded.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    public Mass MassOf(Ingredient ingredient) => Lines[Formula.Line(ingredient).Index].Mass;

    /// <summary>How many cavities of a mould the batch fills, and what is left.</summary>
    /// <param name="mould">The mould; null for that of the formula's process plan. Its volume must be known.</param>
    /// <param name="castAt">The temperature at which it is cast; null for that of the plan, or 20 °C if it states none.</param>
    /// <returns>The filling.</returns>
    /// <exception cref="ArgumentException">There is no mould, or its volume is not known.</exception>
    /// <exception cref="FormulaException">The density of the mix is not known.</exception>
    public MouldFilling Fill(MouldPlan? mould = null, Temperature? castAt = null)
    {
        MouldPlan plan = mould ?? Formula.Process.Mould ?? throw new ArgumentException("The formula's process plan names no mould: name one.", nameof(mould));
        if (plan.FillVolume is null)
        {
            throw new ArgumentException($"The volume of '{plan.Name}' is not known: measure it, or state its shape.", nameof(mould));
        }

        (double celsius, Reckoned density) = BatchSizing.DensityForCasting(Formula, castAt);
        return density.Value > 0 ? new MouldFilling(plan, Losses.CastGrams(AssembledGrams), celsius, density)
            : throw new FormulaException($"The moulds of '{Formula.Name}'", ValueList<FormulaProblem>.Own([BatchSizing.DensityUnknown]));
    }

    /// <summary>Rounds the masses to what a balance can show and works out what that does to each dose.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="tolerancePercent">The largest error of a dose that needs no warning, % of the dose; 5 % unless stated.</param>
    /// <returns>The weigh sheet.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not above 0 and up to 100 %.</exception>
    public WeighSheet WeighOn(Balance balance, double tolerancePercent = WeighSheet.DefaultTolerancePercent)
        => new(this, Guard.NotNull(balance), Guard.InRange(tolerancePercent, double.Epsilon, 100, "%"));

    /// <summary>Finds a balance for every line, and a stock or dry premix for what is too small to weigh.</summary>
    /// <param name="setup">The balances at hand and the tolerance.</param>
    /// <returns>The plan; it says of each line that cannot be weighed why not.</returns>
    public WeighingPlan PlanWeighing(WeighingSetup setup) => WeighingPlanner.Plan(this, Guard.NotNull(setup));

    /// <summary>
    /// The concentration of a line in the continuous mix as it sets, % by weight: higher than in the formula if water boils off and is not
    /// put back.
    /// </summary>
    /// <param name="label">The label of the line.</param>
    /// <returns>The percentage.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    public double PercentOfContinuousMixAsSet(string label)
    {
        FormulaLine line = Formula.Line(label);
        double mix = Formula.Proportions.ContinuousMix * BaseGrams - (Losses.ToppedUp ? 0 : EvaporatedGrams);
        return Lines[line.Index].Grams / mix * 100;
    }

    /// <summary>How the mass of a line was worked out.</summary>
    /// <param name="label">The label of the line.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentException">There is no such line.</exception>
    public Derivation Explain(string label)
    {
        FormulaLine line = Formula.Line(label);
        return Explainer().Line(line);
    }

    /// <summary>How the assembled mass was worked out.</summary>
    /// <returns>The derivation.</returns>
    public Derivation ExplainTotal() => Explainer().Total();

    /// <summary>How the finished mass follows from the assembled mass, loss by loss.</summary>
    /// <returns>The derivation.</returns>
    public Derivation ExplainFinished() => BatchSizing.ExplainFinished(this, Explainer().Total());

    /// <summary>The yield and the lines, one a line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Formula.Name}, {Yield}\n" + string.Join("\n", Lines.Select(l => "  " + l));

    private static ValueList<BatchLine> Scale(Formula formula, double baseGrams)
    {
        ReadOnlySpan<double> masses = formula.Proportions.Masses;
        ReadOnlySpan<FormulaLine> lines = formula.Lines.Span;
        var scaled = new BatchLine[masses.Length];
        for (int i = 0; i < scaled.Length; i++)
        {
            scaled[i] = new BatchLine(lines[i], masses[i] * baseGrams);
        }

        return ValueList<BatchLine>.Own(scaled);
    }

    private Explainer Explainer() => new(Formula, BaseGrams, BatchSizing.ExplainBase(this));
}
