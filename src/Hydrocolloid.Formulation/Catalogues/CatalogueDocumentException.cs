namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>A catalogue document that breaks its format, and where. The reader of own documents turns it into a problem.</summary>
internal sealed class CatalogueDocumentException(string pointer, string message) : Exception($"{pointer}: {message}")
{
    public string Pointer { get; } = pointer;

    public string Reason { get; } = message;
}
