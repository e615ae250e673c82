namespace Hydrocolloid.Formulation.Exchange;

/// <summary>One thing in a CSV file that could not be read, and where. Immutable, equal by content.</summary>
/// <param name="Id">Stable kebab-case id, such as <c>unit-unknown</c>; docs/exchange.md lists them.</param>
/// <param name="Line">The line of the file in which the record begins, from 1; 0 for the file as a whole.</param>
/// <param name="Column">The name of the column; null for the whole record.</param>
/// <param name="Message">What is wrong, with the value.</param>
public sealed record CsvProblem(string Id, int Line, string? Column, string Message)
{
    /// <summary>The place and the message.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => (Line == 0 ? "" : $"line {Internal.Numbers.Exact(Line)}{(Column is null ? "" : ", " + Column)}: ") + Message;
}
