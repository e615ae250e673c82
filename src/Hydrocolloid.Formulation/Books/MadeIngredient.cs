using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Books;

/// <summary>What a formula makes, as an ingredient of another one: what is known of every line is known of the whole.</summary>
internal static class MadeIngredient
{
    /// <param name="entry">The entry of the book.</param>
    /// <param name="batch">A batch of it, its own parts known.</param>
    public static Ingredient Of(BookEntry entry, Batch batch)
    {
        Formula formula = batch.Formula;
        string name = string.IsNullOrWhiteSpace(formula.Name) ? entry.Id : formula.Name;
        var worked = new Citation(new Source("worked-out", $"Worked out from the formula '{name}'", SourceKind.Judgement));
        MixContents mix = formula.Analyse().Assembled;
        Ingredient[] parts = [.. batch.Lines.Where(l => l.Grams > 0).Select(l => l.Line.Ingredient)];
        double evaporated = batch.Losses.ToppedUp ? 0 : batch.EvaporatedGrams;
        double concentration = batch.AssembledGrams / (batch.AssembledGrams - evaporated);
        bool isAsMixed = evaporated == 0; // pH and density of a mix that lost water are not worked out

        Cited<double>? Figure(double? measured, Reckoned? reckoned, double factor, double max)
            => measured is { } m ? new Cited<double>(m, Citation.Measured)
                : reckoned is { IsSound: true } r && !double.IsNaN(r.Value) ? new Cited<double>(Math.Min(max, r.Value * factor), worked) : null;

        var facts = new IngredientFacts(
            Category: "formula",
            Diet: Diet(parts),
            DietCitation: worked,
            Allergens: parts.All(p => p.Allergens is not null) ? new Cited<ValueList<Allergen>>(AllergensOf(parts), worked) : null,
            Composition: CompositionOf(mix, concentration) is { } composition ? new Cited<Composition>(composition, worked) : null,
            Ph: Figure(entry.Measured?.Ph, isAsMixed ? mix.Ph : null, 1, 14),
            Brix: Figure(entry.Measured?.Brix, mix.Brix, concentration, 100),
            DensityKgPerM3: Figure(entry.Measured?.DensityKgPerM3, isAsMixed ? mix.DensityAt(UnitsNet.Temperature.FromDegreesCelsius(20)) : null, 1, 30_000),
            Cautions: Cautions(parts, worked),
            Tannin: parts.Any(p => p.Tannin is not null) ? new Cited<TanninLevel>(mix.Tannin, worked) : null,
            Protease: parts.Select(p => p.Protease).Where(p => p is not null).OrderByDescending(p => p!.Value.IsActive).FirstOrDefault(),
            MilkProtein: parts.Any(p => p.MilkProtein is not null)
                ? new Cited<MilkProtein>(new MilkProtein(parts.Any(p => p.MilkProtein?.Value.Casein == true), parts.Any(p => p.MilkProtein?.Value.Whey == true)), worked) : null);
        return new Ingredient(entry.Id, name, new Lazy<IngredientFacts>(() => facts));
    }

    /// <summary>The parts by weight, after water has boiled off; what is not known of a line is not known.</summary>
    private static Composition? CompositionOf(MixContents mix, double concentration)
    {
        double? Known(Reckoned part, double factor) => part.Without.IsEmpty ? part.Value * factor : null;
        double? water = Known(mix.Water, concentration) is { } w ? Math.Max(0, w - 100 * (concentration - 1)) : null;
        double?[] solids =
        [
            .. new[] { mix.Sugars, mix.OtherCarbohydrate, mix.Fibre, mix.Protein, mix.Fat, mix.Ash, mix.Ethanol, mix.OrganicAcids }.Select(p => Known(p, concentration)),
        ];
        double?[] minerals = [.. new[] { mix.Calcium, mix.Potassium, mix.Sodium, mix.Magnesium }.Select(ion => Known(ion.MilligramsPerKg, concentration / 10))];
        // Ash holds the minerals: of the two the larger counts.
        double sum = (water ?? 0) + solids.Sum(s => s ?? 0) + Math.Max(0, minerals.Sum(mg => mg ?? 0) / 1000 - (solids[5] ?? 0));
        // Analyses add up to 100 g within their spread, and boiling off makes more of that spread.
        double fit = sum > Composition.MaxSumPercent ? Composition.MaxSumPercent / sum * (1 - 1e-12) : 1;
        double? Main(double? part) => part is { } p ? Math.Min(100, p * fit) : null;
        double? Milligrams(double? part) => part is { } p ? Math.Min(100_000, p * fit) : null;
        return water is null && solids.All(s => s is null) && minerals.All(s => s is null) ? null
            : Composition.Per100Grams(
                Main(water), Main(solids[0]), Main(solids[1]), Main(solids[2]), Main(solids[3]), Main(solids[4]), Main(solids[5]), Main(solids[6]), Main(solids[7]),
                Milligrams(minerals[0]), Milligrams(minerals[1]), Milligrams(minerals[2]), Milligrams(minerals[3]));
    }

    private static ValueList<Allergen> AllergensOf(Ingredient[] parts)
        => ValueList<Allergen>.From(parts.SelectMany(p => p.Allergens?.Value ?? default).Distinct().OrderBy(a => a));

    private static DietaryFacts Diet(Ingredient[] parts)
    {
        bool? All(Func<DietaryFacts, bool?> suits) => parts.Any(p => p.Diet is { } d && suits(d) == false) ? false
            : parts.All(p => p.Diet is { } d && suits(d) == true) ? true : null;
        return new DietaryFacts(All(d => d.Vegan), All(d => d.Vegetarian), parts.Select(p => p.Diet?.AnimalSource).FirstOrDefault(s => s is not null));
    }

    /// <summary>Those of the parts, and the allergens that are known where those of another part are not: they must not get lost.</summary>
    private static ValueList<Cited<string>> Cautions(Ingredient[] parts, Citation worked)
    {
        IEnumerable<Cited<string>> cautions = parts.SelectMany(p => p.Cautions).Distinct();
        string unknown = string.Join(", ", parts.Where(p => p.Allergens is null).Select(p => p.Name).Distinct());
        ValueList<Allergen> known = AllergensOf(parts);
        return ValueList<Cited<string>>.From(unknown.Length == 0 || known.IsEmpty ? cautions
            : cautions.Append(new Cited<string>($"Holds allergens ({string.Join(", ", known.Select(Words.Of))}); those of {unknown} are not stated.", worked)));
    }
}
