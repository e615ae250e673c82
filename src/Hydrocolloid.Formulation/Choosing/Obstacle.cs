namespace Hydrocolloid.Formulation.Choosing;

/// <summary>Why something cannot be used. Immutable, equal by content.</summary>
/// <param name="Id">Stable kebab-case id: of the finding, the kind of the method's conflict, or of the reason itself, such as <c>no-dose-for-texture</c>.</param>
/// <param name="Text">The reason, in plain words with its figures.</param>
/// <param name="Citations">Where the figures come from; empty where the reason is the brief's own.</param>
public sealed record Obstacle(string Id, string Text, ValueList<Citation> Citations)
{
    internal static Obstacle Of(Finding finding) => new(finding.Id, finding.Explanation, finding.Citations);

    internal static Obstacle Of(MethodConflict conflict) => new("method-" + Words.Kebab(conflict.Kind.ToString()), conflict.ToString(), conflict.Citations);

    /// <summary>The id and the text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Id}: {Text}";
}
