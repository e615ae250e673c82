namespace Hydrocolloid.Formulation.Choosing;

/// <summary>The dose that was chosen for one agent. Immutable, equal by content.</summary>
/// <param name="Label">The label of its line.</param>
/// <param name="Agent">The agent.</param>
/// <param name="Dose">The dose as it stands in the formula.</param>
/// <param name="PercentOfMix">The dose, % by weight of the continuous mix.</param>
/// <param name="Why">Where it comes from, in a sentence.</param>
/// <param name="Citation">The source of the window it is taken from.</param>
public sealed record ChosenDose(string Label, Ingredient Agent, Dose Dose, double PercentOfMix, string Why, Citation Citation)
{
    /// <summary>The agent and its dose.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Agent.Name}: {Dose}";
}
