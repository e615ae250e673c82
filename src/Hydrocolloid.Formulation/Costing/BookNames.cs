namespace Hydrocolloid.Formulation.Costing;

/// <summary>The ids that lines of a book name, each with a slot: ingredients with a price, and entries that others are made with.</summary>
internal sealed class BookNames
{
    private readonly Dictionary<string, int> _slots;
    private readonly List<string> _ids;
    private readonly List<double?> _densities;
    private readonly List<int> _entries;

    public BookNames()
        => (_slots, _ids, _densities, _entries) = (new(StringComparer.Ordinal), [], [], []);

    public BookNames(BookNames other)
        => (_slots, _ids, _densities, _entries) = (new(other._slots, StringComparer.Ordinal), [.. other._ids], [.. other._densities], [.. other._entries]);

    public int Count => _ids.Count;

    public string this[int slot] => _ids[slot];

    /// <summary>The density of the first line that states one, kg/m³; null if none does.</summary>
    public double? DensityKgPerM3(int slot) => _densities[slot];

    /// <summary>The position of the entry of that id; -1 for an ingredient.</summary>
    public int EntryOf(int slot) => _entries[slot];

    public void SetEntry(int slot, int entry) => _entries[slot] = entry;

    public int SlotOf(Ingredient ingredient)
    {
        if (!_slots.TryGetValue(ingredient.Id, out int slot))
        {
            slot = _ids.Count;
            _slots.Add(ingredient.Id, slot);
            _ids.Add(ingredient.Id);
            _densities.Add(null);
            _entries.Add(-1);
        }

        _densities[slot] ??= ingredient.DensityKgPerM3?.Value;
        return slot;
    }
}
