using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>The list of ingredients.</summary>
internal static class IngredientListing
{
    private const double LittleWaterPercent = 5;

    public static ValueList<string> Classes => BuiltInCatalogue.Labelling.Classes.Value;

    public static ValueList<DeclaredIngredient> Of(LabelledLine[] lines, double evaporatedGrams, LabelPlan plan, ValueList<DeclaredAllergen> allergens, List<LabelGap> gaps)
    {
        // Added water counts by what is left of it in the finished food (Regulation (EU) No 1169/2011, Annex VII part A).
        double water = lines.Where(l => l.IsAddedWater).Sum(l => l.Grams);
        double waterKept = water > 0 ? Math.Max(0, water - evaporatedGrams) / water : 0;
        IEnumerable<(DeclaredIngredient Entry, int Order)> entries = lines
            .Where(l => l.Grams > 0)
            .GroupBy(l => NameOf(l, plan, gaps), StringComparer.Ordinal)
            .Select((same, order) =>
            {
                double percent = same.Sum(l => l.Share * 100 * (l.IsAddedWater ? waterKept : 1));
                return (Entry(same.Key, percent, [.. same], plan.Market, allergens), order, IsWater: same.All(l => l.IsAddedWater));
            })
            .Where(e => !e.IsWater || e.Item1.PercentOfFood > (plan.OmitLittleWater ? LittleWaterPercent : 0))
            .Select(e => (e.Item1, e.order));
        return ValueList<DeclaredIngredient>.From(entries.OrderByDescending(e => e.Entry.PercentOfFood).ThenBy(e => e.Order).Select(e => e.Entry));
    }

    private static DeclaredIngredient Entry(string name, double percent, LabelledLine[] lines, LabelMarket market, ValueList<DeclaredAllergen> allergens)
    {
        string text = name;
        var emphasised = new List<string>();
        if (market != LabelMarket.UnitedStates)
        {
            foreach (DeclaredAllergen allergen in allergens.Where(a => lines.Any(l => a.Lines.Contains(l.Id))))
            {
                string[] kinds = [.. lines.SelectMany(l => l.Label.AllergenNames).Where(n => n.Allergen == allergen.Allergen).Select(n => n.Name).Distinct(StringComparer.Ordinal)];
                AllergenFacts facts = AllergenListing.FactsOf(allergen.Allergen);
                string[] missing = [.. kinds.Where(k => !WholeWords.In(text, k))];
                if (kinds.Length == 0 && !facts.Words.Any(w => WholeWords.In(text, w)))
                {
                    missing = [facts.Name.Value];
                }

                text += missing.Length == 0 ? "" : $" ({string.Join(", ", missing)})";
                emphasised.AddRange(kinds.Concat(facts.Words).Append(facts.Name.Value).Where(w => WholeWords.In(text, w)));
            }
        }

        if (lines.Any(l => l.Label.Quantify))
        {
            // What is used for 100 g of a food that lost water may weigh more than 100 g (Annex VIII).
            text += percent > 100 ? $" {Numbers.Significant(percent, 3)} g per 100 g" : $" {Numbers.Significant(percent, 2)} %";
        }

        return new DeclaredIngredient(text, percent, ValueList<string>.From(lines.Select(l => l.Id)), ValueList<string>.From(emphasised.Distinct(StringComparer.Ordinal)));
    }

    private static string NameOf(LabelledLine line, LabelPlan plan, List<LabelGap> gaps)
    {
        Ingredient ingredient = line.Ingredient;
        if (ingredient.Additive is { ENumbers.Count: > 0 } numbers && plan.Market != LabelMarket.UnitedStates)
        {
            return AdditiveText(line, numbers, plan, gaps);
        }

        string name = line.Label.Name ?? (line.IsAddedWater ? "Water" : ingredient.Name);
        return line.Label.MadeOf.IsEmpty ? name : $"{name} ({line.Label.MadeOf})";
    }

    private static string AdditiveText(LabelledLine line, AdditiveNumbers numbers, LabelPlan plan, List<LabelGap> gaps)
    {
        Additive[] additives = [.. Additives.Of(line.Ingredient)];
        string name = line.Label.Name ?? (additives.Length == 1 ? Short(additives[0].Name) : line.Ingredient.Name);
        if (line.Label.Name is null && plan.Additives == AdditiveNaming.Number)
        {
            ValueList<string> choices = plan.Market == LabelMarket.Codex ? numbers.InsNumbers : numbers.ENumbers;
            if (choices.Count == 1)
            {
                name = plan.Market == LabelMarket.Codex ? "INS " + choices[0] : choices[0];
            }
            else
            {
                gaps.Add(new LabelGap("number-open", line.Id, $"{line.Ingredient.Name} may be {string.Join(" or ", choices)}: the supplier knows which. It stands with its name."));
            }
        }

        string? functional = line.Label.FunctionalClass;
        if (functional is null)
        {
            functional = Suggested(line.Ingredient, additives);
            gaps.Add(functional is null
                ? new LabelGap("class-unknown", line.Id, $"What {line.Ingredient.Name} does in this food is not stated: give its class in LineLabel.FunctionalClass.")
                : new LabelGap("class-assumed", line.Id, $"{line.Ingredient.Name} is taken as {functional}: the class is what it does in this food. State it in LineLabel.FunctionalClass."));
        }

        return functional is null ? name : functional == "modified starch" ? functional : $"{functional} ({name})";
    }

    private static string? Suggested(Ingredient ingredient, Additive[] additives)
    {
        if (ingredient.Profile is { } profile)
        {
            return profile.Role == HydrocolloidRole.GellingAgent ? "gelling agent" : "thickener";
        }

        string[] classes = [.. additives.SelectMany(a => a.FunctionalClasses.Value).Where(c => Classes.Contains(c))];
        return classes.Contains("firming agent") ? "firming agent" : classes.FirstOrDefault(); // a salt of calcium firms a gel
    }

    /// <summary>The name of an additive without what stands in brackets, as within a sentence.</summary>
    private static string Short(string name)
    {
        int end = name.IndexOf(" (", StringComparison.Ordinal);
        string shorter = end < 0 ? name : name.Substring(0, end);
        return shorter.Length > 1 && char.IsLower(shorter[1]) ? char.ToLowerInvariant(shorter[0]) + shorter.Substring(1) : shorter;
    }
}
