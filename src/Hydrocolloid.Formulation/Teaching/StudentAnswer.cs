namespace Hydrocolloid.Formulation.Teaching;

/// <summary>What a student wrote to one exercise. Equal by content.</summary>
/// <param name="Number">The number of the exercise in its set, from 1.</param>
/// <param name="Text">The answer, such as <c>3.33 g</c>, or letters of options such as <c>b, a, c</c>.</param>
/// <param name="Working">Results on the way, each with its unit; they earn credit for steps.</param>
public sealed record StudentAnswer(int Number, string Text, ValueList<string> Working = default);
