namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>An id and the ingredient that stands behind it, opened when it is first asked for.</summary>
internal sealed class CatalogueEntry
{
    private readonly Lazy<Ingredient> _ingredient;

    public CatalogueEntry(string id, Func<Ingredient> open)
    {
        Id = id;
        _ingredient = new Lazy<Ingredient>(open);
    }

    public CatalogueEntry(Ingredient ingredient)
        : this(ingredient.Id, () => ingredient)
    {
    }

    public string Id { get; }

    public Ingredient Ingredient => _ingredient.Value;
}
