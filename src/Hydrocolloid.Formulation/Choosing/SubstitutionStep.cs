namespace Hydrocolloid.Formulation.Choosing;

/// <summary>One thing that was done, or left, to make a formula with another gelling agent. Immutable, equal by content.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Text">What, and why: a sentence.</param>
/// <param name="Lines">The labels of the lines it is about.</param>
/// <param name="Citations">Where it comes from; empty where it follows from the formula alone.</param>
public sealed record SubstitutionStep(SubstitutionStepKind Kind, string Text, ValueList<string> Lines, ValueList<Citation> Citations)
{
    /// <summary>The text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;
}
