namespace Hydrocolloid.Formulation.Text;

/// <summary>One record: its fields as they stand, the line it begins in, and why it breaks RFC 4180, if it does.</summary>
internal sealed record CsvRecord(List<string> Fields, int Line, string? Error);
