namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads an item of a list.</summary>
/// <param name="json">Stands on the item.</param>
/// <param name="pointer">Where the item stands.</param>
internal delegate T ItemReader<out T>(ref JsonCursor json, string pointer);
