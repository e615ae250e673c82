namespace Hydrocolloid.Formulation;

/// <summary>One thing that a rule noticed. Immutable, equal by content.</summary>
public sealed record Finding
{
    /// <summary>Reports something.</summary>
    /// <param name="id">Stable kebab-case id.</param>
    /// <param name="severity">How serious it is.</param>
    /// <param name="explanation">What it means, in plain words.</param>
    /// <param name="lines">The labels of the lines it is about.</param>
    /// <param name="evidence">The values that were looked at.</param>
    /// <param name="citations">Where the limits come from.</param>
    /// <param name="remedies">What helps, the best first.</param>
    /// <exception cref="ArgumentException">The id is not kebab-case, or the explanation is blank.</exception>
    public Finding(
        string id,
        Severity severity,
        string explanation,
        ValueList<string> lines = default,
        ValueList<Evidence> evidence = default,
        ValueList<Citation> citations = default,
        ValueList<Remedy> remedies = default)
    {
        Id = Internal.Ids.Check(id, nameof(id));
        Severity = severity;
        Explanation = Internal.Guard.NotBlank(explanation);
        Lines = lines;
        Evidence = evidence;
        Citations = citations;
        Remedies = remedies;
    }

    /// <summary>Stable kebab-case id.</summary>
    public string Id { get; }

    /// <summary>How serious it is.</summary>
    public Severity Severity { get; internal init; }

    /// <summary>What it means, in plain words.</summary>
    public string Explanation { get; }

    /// <summary>The labels of the lines it is about; empty if it is about the whole formula.</summary>
    public ValueList<string> Lines { get; }

    /// <summary>The values that were looked at, against their limits.</summary>
    public ValueList<Evidence> Evidence { get; }

    /// <summary>Where the limits come from.</summary>
    public ValueList<Citation> Citations { get; }

    /// <summary>What helps, the best first; empty if nothing that could be applied.</summary>
    public ValueList<Remedy> Remedies { get; }

    /// <summary>True if the rule could not judge and says what it would need.</summary>
    public bool IsUnchecked { get; internal init; }

    /// <summary>The severity, the id and the explanation.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Words.Of(Severity)} {Id}: {Explanation}";
}
