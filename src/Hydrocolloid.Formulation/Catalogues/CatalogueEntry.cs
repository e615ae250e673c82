namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>An id and the ingredient that stands behind it; a built-in one is opened when it is first asked for.</summary>
internal sealed class CatalogueEntry
{
    private readonly string? _document;
    private Ingredient? _ingredient;

    public CatalogueEntry(string id, string document)
    {
        Id = id;
        _document = document;
    }

    public CatalogueEntry(Ingredient ingredient)
    {
        Id = ingredient.Id;
        _ingredient = ingredient;
    }

    public string Id { get; }

    public Ingredient Ingredient => Volatile.Read(ref _ingredient) ?? Open();

    // Two threads may open it at once; the first to finish decides for both.
    private Ingredient Open()
    {
        Ingredient opened = BuiltInCatalogue.Open(Id, _document!);
        return Interlocked.CompareExchange(ref _ingredient, opened, null) ?? opened;
    }
}
