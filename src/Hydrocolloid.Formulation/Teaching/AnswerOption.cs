namespace Hydrocolloid.Formulation.Teaching;

/// <summary>One option of a choice, an order or a list. Equal by content.</summary>
/// <param name="Key">A stable word for it, the same in every language.</param>
/// <param name="Text">What the student reads.</param>
public sealed record AnswerOption(string Key, string Text);
