namespace Hydrocolloid.Formulation.Declarations;

/// <summary>Something that a label needs and nobody has stated. Immutable, equal by content.</summary>
/// <param name="Id">Stable kebab-case id, such as <c>allergens-unknown</c>; docs/declaration.md lists them.</param>
/// <param name="Line">The label of the line; null if it is of the whole food.</param>
/// <param name="Message">What is missing, and how to state it.</param>
public sealed record LabelGap(string Id, string? Line, string Message)
{
    /// <summary>The message.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Message;
}
