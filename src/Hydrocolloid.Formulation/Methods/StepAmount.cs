using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>How much of a line goes in with a step. All the amounts of a line in a method make up the line. Immutable, equal by content.</summary>
public sealed record StepAmount
{
    internal StepAmount(string label, string name, double percentOfBase, double? grams)
    {
        Label = label;
        Name = name;
        PercentOfBase = percentOfBase;
        Grams = grams;
    }

    /// <summary>The label of the line.</summary>
    public string Label { get; }

    /// <summary>The name of its ingredient.</summary>
    public string Name { get; }

    /// <summary>The amount, % by weight of the base.</summary>
    public double PercentOfBase { get; }

    /// <summary>The amount in the batch, unrounded; null if the method is not of a batch.</summary>
    public Mass? Mass => Grams is { } g ? UnitsNet.Mass.FromGrams(g) : null;

    internal double? Grams { get; }

    /// <summary>The amount and the name.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
        => (Grams is { } g ? Numbers.Significant(g, 4) + " g " : Numbers.Significant(PercentOfBase, 4) + " % of the base ") + Name;
}
