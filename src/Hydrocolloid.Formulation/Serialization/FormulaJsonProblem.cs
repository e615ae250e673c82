using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>One reason why a document is not a formula, or why a formula cannot be written as a document, and where. Immutable, equal by content.</summary>
public sealed record FormulaJsonProblem
{
    internal FormulaJsonProblem(string id, string pointer, string message, FormulaProblem? cause = null)
    {
        Id = id;
        Pointer = pointer;
        Message = message;
        Cause = cause;
    }

    /// <summary>Stable kebab-case id, such as <c>member-unknown</c> or <c>base-shares</c>; docs/formula-json.md lists those of the format.</summary>
    public string Id { get; }

    /// <summary>Where in the document, as a JSON Pointer (RFC 6901), such as <c>/phases/0/add/1/percent</c>; empty for the whole document.</summary>
    public string Pointer { get; }

    /// <summary>The line of the document, from 1; 0 if the problem was found while writing.</summary>
    public int LineNumber { get; internal init; }

    /// <summary>The byte in that line, from 0: the first byte of the value, or of the nearest value around it where the value itself is missing.</summary>
    public int BytePositionInLine { get; internal init; }

    /// <summary>The same place counted from the start of the document, in bytes of UTF-8, from 0.</summary>
    public int ByteOffset { get; internal init; }

    /// <summary>The problem in words: the value and the limit.</summary>
    public string Message { get; }

    /// <summary>The problem of the formula behind it, with its line, value and limit; null if the document itself is at fault.</summary>
    public FormulaProblem? Cause { get; }

    /// <summary>The place and the message.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => (Pointer.Length == 0 ? "/" : Pointer)
        + (LineNumber > 0 ? $" (line {Numbers.Exact(LineNumber)}, byte {Numbers.Exact(BytePositionInLine)})" : "") + ": " + Message;
}
