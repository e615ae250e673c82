using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>One reason why something has no price or no cost. Immutable, equal by content.</summary>
public sealed record CostingProblem
{
    internal CostingProblem(string id, string? subject, string message, int lineNumber = 0)
    {
        Id = id;
        Subject = subject;
        Message = message;
        LineNumber = lineNumber;
    }

    /// <summary>Stable kebab-case id, such as <c>price-missing</c>; docs/costing.md lists them.</summary>
    public string Id { get; }

    /// <summary>What it is about: the id of an ingredient or of an entry of a book; null if that could not be read.</summary>
    public string? Subject { get; }

    /// <summary>The problem in words: the value and the limit.</summary>
    public string Message { get; }

    /// <summary>The line of the file, from 1, where a row of a CSV file begins; 0 otherwise.</summary>
    public int LineNumber { get; }

    /// <summary>The place and the message.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => (LineNumber > 0 ? $"line {Numbers.Exact(LineNumber)}: " : "") + (Subject is null ? "" : Subject + ": ") + Message;
}
