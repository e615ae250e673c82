namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>A catalogue document that breaks its format. The built-in documents are checked by the tests, so no user meets this.</summary>
internal sealed class CatalogueDocumentException(string pointer, string message) : Exception($"{pointer}: {message}");
