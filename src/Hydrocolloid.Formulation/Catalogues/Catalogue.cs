using System.Diagnostics.CodeAnalysis;
using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Ingredients by id, with the sources of their figures. Immutable, safe to share between threads.</summary>
public sealed class Catalogue
{
    private readonly List<CatalogueEntry> _entries;
    private readonly Dictionary<string, CatalogueEntry> _byId;
    private readonly Lazy<SourceList> _sources;
    private Ingredient[]? _all;

    internal Catalogue(List<CatalogueEntry> entries, Lazy<SourceList> sources)
    {
        _entries = entries;
        _sources = sources;
        _byId = new Dictionary<string, CatalogueEntry>(entries.Count, StringComparer.Ordinal);
        foreach (CatalogueEntry entry in entries)
        {
            _byId.Add(entry.Id, entry);
        }
    }

    /// <summary>The built-in catalogue. It is read when it is first asked for.</summary>
    public static Catalogue BuiltIn => BuiltInCatalogue.Value;

    /// <summary>All ingredients: the built-in hydrocolloids, the built-in pantry, then own ones.</summary>
    public ValueList<Ingredient> All => ValueList<Ingredient>.Own(_all ??= Open());

    /// <summary>All hydrocolloids.</summary>
    public IEnumerable<Ingredient> Hydrocolloids => All.Where(i => i.Profile is not null);

    /// <summary>The ingredients of a category, such as <c>juice</c> or <c>hydrocolloid</c>.</summary>
    /// <param name="category">The category.</param>
    /// <returns>The ingredients, in catalogue order.</returns>
    public IEnumerable<Ingredient> OfCategory(string category)
    {
        Guard.NotNull(category);
        return All.Where(i => i.Category == category);
    }

    /// <summary>The ingredients made from one class of origin; those of which the origin is not stated are left out.</summary>
    /// <param name="origin">The class of origin.</param>
    /// <returns>The ingredients, in catalogue order.</returns>
    public IEnumerable<Ingredient> OfOrigin(OriginClass origin) => All.Where(i => i.Origin?.Class == origin);

    /// <summary>The ingredients known to be free of anything from animals. What is not known is left out: ask the supplier.</summary>
    /// <returns>The ingredients, in catalogue order.</returns>
    public IEnumerable<Ingredient> Vegan() => All.Where(i => i.Diet?.Vegan == true);

    /// <summary>The ingredients known to be free of anything from slaughtered animals. What is not known is left out: ask the supplier.</summary>
    /// <returns>The ingredients, in catalogue order.</returns>
    public IEnumerable<Ingredient> Vegetarian() => All.Where(i => i.Diet?.Vegetarian == true);

    /// <summary>The hydrocolloids that do one thing alone in water: gel, or thicken.</summary>
    /// <param name="role">The role.</param>
    /// <returns>The ingredients, in catalogue order.</returns>
    public IEnumerable<Ingredient> OfRole(HydrocolloidRole role) => Hydrocolloids.Where(i => i.Profile!.Role == role);

    /// <summary>The works the figures are taken from.</summary>
    public ValueList<Source> Sources => _sources.Value.All;

    /// <summary>An ingredient by its id.</summary>
    /// <param name="id">The id.</param>
    /// <returns>The ingredient.</returns>
    /// <exception cref="KeyNotFoundException">There is none with that id; the message names those that answer to it or share its first letters.</exception>
    public Ingredient Get(string id) => TryGet(id, out Ingredient? ingredient) ? ingredient
        : throw new KeyNotFoundException($"No ingredient has the id '{id}'." + Suggestion(id));

    /// <summary>An ingredient by its id, without throwing.</summary>
    /// <param name="id">The id.</param>
    /// <param name="ingredient">The ingredient; null if there is none.</param>
    /// <returns>Whether there is one.</returns>
    public bool TryGet(string id, [NotNullWhen(true)] out Ingredient? ingredient)
    {
        ingredient = _byId.TryGetValue(Guard.NotNull(id), out CatalogueEntry? entry) ? entry.Ingredient : null;
        return ingredient is not null;
    }

    /// <summary>The ingredients that answer to a word: an id, a name, a synonym, an E number or an INS number, whatever its case and spacing.</summary>
    /// <param name="word">The word, such as <c>agar-agar</c>, <c>E 406</c> or <c>ins 406</c>.</param>
    /// <returns>The ingredients, in catalogue order; empty if none answers. A family name such as <c>gelatin</c> may give several.</returns>
    public IReadOnlyList<Ingredient> Find(string word)
    {
        string wanted = Folded(Guard.NotNull(word));
        return wanted.Length == 0 ? [] : [.. All.Where(i => AnswersTo(i, wanted))];
    }

    /// <summary>This catalogue with own ingredients beside its own; one with an id that is already there takes its place.</summary>
    /// <param name="ingredients">The ingredients.</param>
    /// <returns>The new catalogue.</returns>
    /// <exception cref="ArgumentException">Two of the ingredients have the same id.</exception>
    public Catalogue With(params Ingredient[] ingredients) => With(ingredients, _sources);

    internal SourceList SourceList => _sources.Value;

    internal Catalogue With(Ingredient[] ingredients, Lazy<SourceList> sources)
    {
        var own = new Dictionary<string, CatalogueEntry>(StringComparer.Ordinal);
        foreach (Ingredient ingredient in Guard.NotNull(ingredients))
        {
            if (own.ContainsKey(Guard.NotNull(ingredient, nameof(ingredients)).Id))
            {
                throw new ArgumentException($"'{ingredient.Id}' is there twice.", nameof(ingredients));
            }

            own.Add(ingredient.Id, new CatalogueEntry(ingredient));
        }

        IEnumerable<CatalogueEntry> kept = _entries.Select(e => own.TryGetValue(e.Id, out CatalogueEntry? mine) ? mine : e);
        return new Catalogue([.. kept, .. ingredients.Where(i => !_byId.ContainsKey(i.Id)).Select(i => own[i.Id])], sources);
    }

    private Ingredient[] Open()
    {
        var all = new Ingredient[_entries.Count];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = _entries[i].Ingredient;
        }

        return all;
    }

    private static bool AnswersTo(Ingredient ingredient, string wanted)
        => IsFoldOf(wanted, ingredient.Id) || IsFoldOf(wanted, ingredient.Name) || IsFoldOfAny(wanted, ingredient.Synonyms)
            || (ingredient.Additive is { } numbers && (IsFoldOfAny(wanted, numbers.ENumbers) || IsFoldOfAny(wanted, numbers.InsNumbers)
                || (wanted.StartsWith("ins", StringComparison.Ordinal) && IsFoldOfAny(wanted.Substring(3), numbers.InsNumbers))));

    private static bool IsFoldOfAny(string folded, ValueList<string> words)
    {
        foreach (string word in words.Span)
        {
            if (IsFoldOf(folded, word))
            {
                return true;
            }
        }

        return false;
    }

    // Whether Folded(word) is the folded text, without making it.
    private static bool IsFoldOf(string folded, string word)
    {
        int matched = 0;
        foreach (char c in word)
        {
            if (!IsSeparator(c) && (matched == folded.Length || char.ToLowerInvariant(c) != folded[matched++]))
            {
                return false;
            }
        }

        return matched == folded.Length;
    }

    private static bool IsSeparator(char c) => c is ' ' or '-' or '_' or '\u00A0';

    private static string Folded(string word)
        => new([.. word.Where(c => !IsSeparator(c)).Select(char.ToLowerInvariant)]);

    private string Suggestion(string id)
    {
        IReadOnlyList<Ingredient> answering = Find(id);
        if (answering.Count > 0)
        {
            return " Did you mean " + string.Join(" or ", answering.Select(i => $"'{i.Id}'")) + "?";
        }

        // A slip of the finger rarely spoils the first letters.
        string start = id.Length <= 4 ? id : id.Substring(0, 4);
        string[] near = [.. _entries.Where(e => start.Length > 1 && e.Id.Contains(start)).Select(e => $"'{e.Id}'")];
        return near.Length == 0 ? "" : " Near it: " + string.Join(", ", near) + ".";
    }
}
