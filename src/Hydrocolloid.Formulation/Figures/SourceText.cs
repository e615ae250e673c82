namespace Hydrocolloid.Formulation;

/// <summary>What a source is called.</summary>
internal sealed record SourceText(string Title, string? Authors, string? Year, string? Place, string? Locator);
