using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A cause of what went wrong, with what speaks for it. Immutable, equal by content.</summary>
public sealed record LikelyCause
{
    internal LikelyCause(string id, CauseStanding standing, string explanation)
    {
        Id = Ids.Check(id, nameof(id));
        Standing = standing;
        Explanation = Guard.NotBlank(explanation);
    }

    /// <summary>Kebab-case id: of the rule that found it, or of the failure in the catalogue.</summary>
    public string Id { get; }

    /// <summary>How it stands.</summary>
    public CauseStanding Standing { get; }

    /// <summary>What happened, in plain words.</summary>
    public string Explanation { get; }

    /// <summary>The labels of the lines it is about.</summary>
    public ValueList<string> Lines { get; internal init; }

    /// <summary>The values that were looked at, against their limits.</summary>
    public ValueList<Evidence> Evidence { get; internal init; }

    /// <summary>What to measure or look at to be sure; null if it is shown already.</summary>
    public string? ToBeSure { get; internal init; }

    /// <summary>What to do next time, in words.</summary>
    public string? NextTime { get; internal init; }

    /// <summary>Changes to the formula for next time, the best first.</summary>
    public ValueList<Remedy> Remedies { get; internal init; }

    /// <summary>Where it comes from.</summary>
    public ValueList<Citation> Citations { get; internal init; }

    internal double Weight { get; init; }

    /// <summary>The cause in one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Words.Of(Standing)}: {Explanation}";
}
