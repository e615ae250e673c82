namespace Hydrocolloid.Formulation;

/// <summary>What a method cannot give, and the way out. Immutable, equal by content.</summary>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Text">What is in the way: a sentence with its figures.</param>
/// <param name="WayOut">What can be done: a sentence.</param>
/// <param name="Lines">The labels of the lines it is about.</param>
/// <param name="Citations">Where the figures come from.</param>
public sealed record MethodConflict(ConflictKind Kind, string Text, string WayOut, ValueList<string> Lines, ValueList<Citation> Citations)
{
    /// <summary>The conflict and the way out.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text + " " + WayOut;
}
