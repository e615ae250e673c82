namespace Hydrocolloid.Formulation.Teaching;

/// <summary>An answer, marked. Immutable, equal by content.</summary>
public sealed record MarkedAnswer
{
    internal MarkedAnswer(MarkOutcome outcome, double creditPercent, ValueList<string> feedback, ValueList<Misconception> misconceptions = default, SolutionStep? partsAt = null)
    {
        Outcome = outcome;
        CreditPercent = creditPercent;
        Feedback = feedback;
        Misconceptions = misconceptions;
        PartsAt = partsAt;
    }

    /// <summary>Whether it is right, wrong, or to be asked again.</summary>
    public MarkOutcome Outcome { get; }

    /// <summary>The credit, % of the full mark: 100 if right, else the share of the worked steps that are right.</summary>
    public double CreditPercent { get; }

    /// <summary>What to tell the student, a sentence or two each.</summary>
    public ValueList<string> Feedback { get; }

    /// <summary>The likely mistakes; empty if none is recognised.</summary>
    public ValueList<Misconception> Misconceptions { get; }

    /// <summary>The step of the right way where the answer parts from it; null if it is not known.</summary>
    public SolutionStep? PartsAt { get; }

    /// <summary>The feedback.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(" ", Feedback);
}
