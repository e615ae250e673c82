namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Finds the facts that name an ingredient, where every rule asks for every line. An own ingredient counts as the entry it was made from.</summary>
internal sealed class EntryIndex<T>
    where T : class
{
    private readonly ValueList<T> _all;
    private readonly Dictionary<string, T[]> _byId;

    /// <param name="all">All facts.</param>
    /// <param name="idsOf">The ids that a fact names.</param>
    public EntryIndex(ValueList<T> all, Func<T, IEnumerable<string>> idsOf)
    {
        _all = all;
        _byId = all.SelectMany(fact => idsOf(fact).Distinct(StringComparer.Ordinal).Select(id => (Id: id, Fact: fact)))
            .GroupBy(n => n.Id, n => n.Fact, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
    }

    /// <summary>The facts that name an ingredient, in the order of the catalogue.</summary>
    public T[] Of(Ingredient ingredient)
    {
        T[] found = ById(ingredient.Id);
        for (Ingredient? entry = ingredient.BasedOn; entry is not null; entry = entry.BasedOn)
        {
            T[] more = ById(entry.Id);
            found = found.Length == 0 ? more : more.Length == 0 ? found : [.. _all.Where(f => Array.IndexOf(found, f) >= 0 || Array.IndexOf(more, f) >= 0)];
        }

        return found;
    }

    private T[] ById(string id) => _byId.TryGetValue(id, out T[]? facts) ? facts : [];
}
