namespace Hydrocolloid.Formulation.Text;

/// <summary>One record of a CSV file.</summary>
/// <param name="LineNumber">The line of the file, from 1, on which it begins.</param>
/// <param name="Fields">Its fields, quotes taken off.</param>
/// <param name="Fault">Why it cannot be read; null if it can.</param>
internal sealed record CsvRow(int LineNumber, string[] Fields, string? Fault);
