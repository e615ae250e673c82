using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>The allergens of a food by market.</summary>
internal static class AllergenListing
{
    /// <summary>Sulphur dioxide of the finished food from which it is declared: above it in the European Union, from it on elsewhere.</summary>
    private const double SulphurDioxideLimitMgPerKg = 10;

    public static AllergenFacts FactsOf(Allergen allergen) => BuiltInCatalogue.Labelling.Allergens[(int)allergen];

    public static ValueList<DeclaredAllergen> Of(LabelledLine[] lines, LabelMarket market, List<LabelGap> gaps, List<Cited<string>> notes)
    {
        foreach (LabelledLine line in lines.Where(l => l.Ingredient.Allergens is null && l.Grams > 0))
        {
            gaps.Add(new LabelGap("allergens-unknown", line.Id, $"Nobody has stated the allergens of {line.Ingredient.Name}, which is not the same as none: ask the supplier."));
        }

        var declared = new List<DeclaredAllergen>();
        foreach (AllergenFacts facts in BuiltInCatalogue.Labelling.Allergens)
        {
            LabelledLine[] holding = [.. lines.Where(l => l.Grams > 0 && l.Ingredient.Allergens?.Value.Contains(facts.Allergen) == true)];
            bool isPresent = facts.Allergen == Allergen.Sulphites ? Sulphites(lines, ref holding, market, gaps) : holding.Length > 0;
            if (isPresent && Declared(facts, holding, market, gaps, notes) is { } allergen)
            {
                declared.Add(allergen);
            }
        }

        return ValueList<DeclaredAllergen>.From(declared);
    }

    /// <summary>Total sulphur dioxide of the food, over the lines that state it. Unit: mg/kg.</summary>
    public static double SulphurDioxide(LabelledLine[] lines) => lines.Sum(l => l.Share * (l.Label.SulphurDioxideMgPerKg ?? 0));

    private static bool Sulphites(LabelledLine[] lines, ref LabelledLine[] holding, LabelMarket market, List<LabelGap> gaps)
    {
        LabelledLine[] open = [.. holding.Where(l => l.Label.SulphurDioxideMgPerKg is null)];
        foreach (LabelledLine line in open)
        {
            gaps.Add(new LabelGap("sulphites-unmeasured", line.Id,
                $"How much sulphur dioxide {line.Ingredient.Name} holds is not stated, so sulphites are declared; state it in LineLabel.SulphurDioxide."));
        }

        double content = SulphurDioxide(lines);
        holding = [.. holding.Concat(lines.Where(l => l.Label.SulphurDioxideMgPerKg > 0)).Distinct()];
        return open.Length > 0 || (market == LabelMarket.EuropeanUnion ? content > SulphurDioxideLimitMgPerKg : content >= SulphurDioxideLimitMgPerKg);
    }

    private static DeclaredAllergen? Declared(AllergenFacts facts, LabelledLine[] holding, LabelMarket market, List<LabelGap> gaps, List<Cited<string>> notes)
    {
        if (market == LabelMarket.UnitedStates && facts.Allergen == Allergen.Sulphites)
        {
            notes.Add(BuiltInCatalogue.Labelling.Notes["us-sulphites"]);
            return null;
        }

        if (market == LabelMarket.Codex && facts.Codex.Value == "regional")
        {
            Cited<string> rule = BuiltInCatalogue.Labelling.Notes["codex-regional"];
            notes.Add(new Cited<string>($"{facts.Name.Value}: {rule.Value}", rule.Citation));
        }

        Cited<string>? name = market switch
        {
            LabelMarket.UnitedStates => facts.UsName,
            LabelMarket.Codex when facts.Codex.Value != "always" => null,
            _ => facts.Name,
        };
        if (name is null)
        {
            return null;
        }

        string[] kinds = Kinds(facts, holding);
        if (market == LabelMarket.UnitedStates && !facts.UsWords.IsEmpty && kinds.Length > 0)
        {
            kinds = [.. kinds.Where(k => facts.UsWords.Contains(k))];
            if (kinds.Length == 0)
            {
                notes.Add(BuiltInCatalogue.Labelling.Notes["us-cereals"]);
                return null;
            }
        }

        string code = market switch { LabelMarket.EuropeanUnion => "eu", LabelMarket.UnitedStates => "us", _ => "codex" };
        if (kinds.Length == 0 && facts.Specify.Contains(code))
        {
            gaps.Add(new LabelGap("allergen-unnamed", holding[0].Id,
                $"Which {facts.Name.Value} {holding[0].Ingredient.Name} holds must be named: state it in LineLabel.AllergenNames."));
        }

        kinds = [.. kinds.Where(k => k != name.Value)];
        return new DeclaredAllergen(facts.Allergen, kinds.Length == 0 ? name.Value : $"{name.Value} ({string.Join(", ", kinds)})",
            ValueList<string>.From(holding.Select(l => l.Id)), market == LabelMarket.Codex ? facts.Codex.Citation : name.Citation);
    }

    /// <summary>The kinds that are named: those stated, and those that the wording of the lines names, but not the name of the whole group.</summary>
    private static string[] Kinds(AllergenFacts facts, LabelledLine[] holding)
    {
        IEnumerable<string> stated = holding.SelectMany(l => l.Label.AllergenNames).Where(n => n.Allergen == facts.Allergen).Select(n => n.Name);
        IEnumerable<string> worded = facts.Specify.IsEmpty ? [] : facts.Words.Where(w => !facts.Name.Value.Contains(w) && holding.Any(l => WholeWords.In(l.Wording, w)));
        return [.. stated.Concat(worded).Distinct(StringComparer.OrdinalIgnoreCase)];
    }
}
