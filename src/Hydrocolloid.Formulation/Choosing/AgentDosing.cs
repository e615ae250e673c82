using Hydrocolloid.Formulation.Compatibility;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>The dose of an agent for a texture or a firmness in one formula, or the reason why there is none. Immutable.</summary>
public sealed class AgentDosing
{
    private readonly Formula _formula;

    internal AgentDosing(Formula formula, FormulaLine line, string explanation)
    {
        _formula = formula;
        Label = line.Label;
        Agent = line.Ingredient;
        NowPercent = formula.Proportions.PercentOfContinuousMix(line);
        Explanation = explanation;
    }

    /// <summary>The label of the agent's line.</summary>
    public string Label { get; }

    /// <summary>The agent; its <see cref="Ingredient.Grade"/> is the grade the dose is for.</summary>
    public Ingredient Agent { get; }

    /// <summary>What is in the formula now, % by weight of the continuous mix.</summary>
    public double NowPercent { get; }

    /// <summary>The dose, % by weight of the continuous mix: the middle of the window, or what a trial's curve gives; null if there is none.</summary>
    public double? Percent { get; internal init; }

    /// <summary>The doses that give the texture, corrected for the grade, or at which a trial's curve may reach the firmness; % by weight of the continuous mix. Null if none is known.</summary>
    public NumberRange? Window { get; internal init; }

    /// <summary>The window as the catalogue has it, % by weight of the continuous mix, with its note and the competing published values; null if there is none or a trial was used.</summary>
    public Cited<NumberRange>? Catalogued { get; internal init; }

    /// <summary>The dose on the reference that the line has in the formula, rounded up to four digits; null if there is none.</summary>
    public Dose? Dose { get; internal init; }

    /// <summary>What the dose rests on; null if there is none.</summary>
    public DoseStanding? Standing { get; internal init; }

    /// <summary>Where the window, or the reason for there being none, comes from; null if nothing is known.</summary>
    public Citation? Source { get; internal init; }

    /// <summary>What was corrected on the way from the source to the dose, a sentence each: the grade (or why not), and the reference of the dose.</summary>
    public ValueList<string> Corrections { get; internal init; }

    /// <summary>What the window does not reckon with and this formula has, such as a gum that makes the gel firmer.</summary>
    public ValueList<Cited<string>> Notes { get; internal init; }

    /// <summary>What lies outside the range of the relation that corrected the window, or of the trial; null if nothing does.</summary>
    public OutsideRange? Outside { get; internal init; }

    /// <summary>The change that brings the formula to the dose and, for a texture of a gel, makes it the one aimed at; null if there is no dose.</summary>
    public IFormulaChange? Change { get; internal init; }

    /// <summary>The formula with the dose; null if there is none.</summary>
    public Formula? Formula => Change?.ApplyTo(_formula);

    /// <summary>True if the formula has a dose within the window now, at the precision of the figures (5 %).</summary>
    public bool IsWithinNow => Window is { } window && AgentInMix.IsWithin(window, NowPercent);

    /// <summary>The result in a sentence.</summary>
    public string Explanation { get; }

    /// <summary>The explanation.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString() => Explanation;
}
