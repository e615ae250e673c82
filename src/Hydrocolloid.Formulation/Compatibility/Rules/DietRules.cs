using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about diets and allergens.</summary>
internal static class DietRules
{
    public static IDescribedRule[] All => [new DietRule(), new CertificationRule(), new AllergenRule(), new UnexpectedAllergenRule()];

    /// <summary>A plant or seaweed gum for the same texture, with everything of its line's trouble gone.</summary>
    public static ValueList<Remedy> PlantAgent(ReviewContext context, FormulaLine line, string effect)
        => AgentSwap.For(context, line, effect, Hydrocolloids.Agar, Hydrocolloids.GellanHighAcyl) is { } swap ? ValueList<Remedy>.Own([swap]) : default;

    public static ValueList<Citation> CitationOf(Citation? citation) => citation is null ? default : ValueList<Citation>.Own([citation]);
}

/// <summary>A line that a vegan or vegetarian diet forbids.</summary>
internal sealed class DietRule : IDescribedRule
{
    public string Id => "diet-not-met";

    public RuleCard Card => new(
        "diet", "A line does not suit the vegan or vegetarian diet that is stated: a conflict. What is not known of a line is asked for.", "For a gelling agent, a plant or seaweed one.", default);

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        bool vegan = context.Service.Diets.Contains(Diet.Vegan), vegetarian = context.Service.Diets.Contains(Diet.Vegetarian);
        if (!vegan && !vegetarian)
        {
            yield break;
        }

        foreach (FormulaLine line in context.Formula.Lines)
        {
            DietaryFacts? facts = line.Ingredient.Diet;
            bool? suits = vegan ? facts?.Vegan : facts?.Vegetarian;
            if (suits is null)
            {
                context.Needs(Id, $"whether the {Phrases.InSentence(line)} is {(vegan ? "vegan" : "vegetarian")}", line.Label);
            }
            else if (suits == false)
            {
                string diet = vegan && vegetarian && facts!.Vegetarian == false ? "vegan nor vegetarian" : vegan ? "vegan" : "vegetarian";
                yield return new Finding(
                    Id, Severity.Conflict, $"{line.Ingredient.Name} is {(diet.Contains(" nor ") ? "neither" : "not")} {diet}{Source(facts!)}.",
                    ValueList<string>.Own([line.Label]), citations: DietRules.CitationOf(line.Ingredient.DietCitation),
                    remedies: DietRules.PlantAgent(context, line, "It comes from a plant, a seaweed or a microbe; the bite is less elastic and does not melt in the mouth."));
            }
        }
    }

    private static string Source(DietaryFacts facts) => facts.AnimalSource is { } animal ? $" (from {animal})" : "";
}

/// <summary>Halal or kosher: questions for the certifier, never decided here.</summary>
internal sealed class CertificationRule : IDescribedRule
{
    public string Id => "ask-the-certifier";

    public RuleCard Card => new(
        "diet", "A halal or kosher dish holds something from slaughtered animals, or, for halal, alcohol: a caution with the question for the certifier. Nothing is decided here.",
        "For a gelling agent, a plant or seaweed one.", default);

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        bool halal = context.Service.Diets.Contains(Diet.Halal), kosher = context.Service.Diets.Contains(Diet.Kosher);
        if (!halal && !kosher)
        {
            yield break;
        }

        string wanted = halal && kosher ? "halal and kosher" : halal ? "halal" : "kosher";
        foreach (FormulaLine line in context.Formula.Lines)
        {
            DietaryFacts? facts = line.Ingredient.Diet;
            if (facts?.Vegetarian == false)
            {
                yield return new Finding(
                    Id, Severity.Caution,
                    $"{line.Ingredient.Name} comes from {facts.AnimalSource ?? "an animal"}. Ask the certifier whether this product, of this maker, is certified {wanted}: it is not decided here.",
                    ValueList<string>.Own([line.Label]), citations: DietRules.CitationOf(line.Ingredient.DietCitation),
                    remedies: DietRules.PlantAgent(context, line, "Nothing in this line is then from a slaughtered animal; its certificate is still to be asked for."));
            }
            else if (halal && line.Ingredient.Composition is { Value.EthanolPercent: > 0 } composition)
            {
                yield return new Finding(
                    Id, Severity.Caution, $"{line.Ingredient.Name} holds alcohol. Ask the certifier whether the dish can be halal: it is not decided here.",
                    ValueList<string>.Own([line.Label]), citations: ValueList<Citation>.Own([composition.Citation]));
            }
        }
    }
}

/// <summary>A line with an allergen that the dish must be free from.</summary>
internal sealed class AllergenRule : IDescribedRule
{
    public string Id => "allergen-present";

    public RuleCard Card => new(
        "diet", "A line contains an allergen that the dish must be free from: a conflict. What is not known of a line is asked for.", "For a gelling agent, another one.", default);

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        ValueList<Allergen> freeFrom = context.Service.FreeFrom;
        if (freeFrom.IsEmpty)
        {
            yield break;
        }

        foreach (FormulaLine line in context.Formula.Lines)
        {
            if (line.Ingredient.Allergens is not { } known)
            {
                context.Needs(Id, $"the allergens of the {Phrases.InSentence(line)}", line.Label);
                continue;
            }

            string[] present = [.. known.Value.Where(a => freeFrom.Contains(a)).Select(Words.Of)];
            if (present.Length > 0)
            {
                yield return new Finding(
                    Id, Severity.Conflict,
                    $"{line.Ingredient.Name} contains {Phrases.And(present)}, and the dish must be free from it. Read the label of the product that you use; traces by contact are not known here. {SafetyRules.Defers}",
                    ValueList<string>.Own([line.Label]), citations: ValueList<Citation>.Own([known.Citation]),
                    remedies: DietRules.PlantAgent(context, line, "This line then holds none of the listed allergens."));
            }
        }
    }
}

/// <summary>A gelling agent or thickener that brings an allergen that guests do not expect.</summary>
internal sealed class UnexpectedAllergenRule : IDescribedRule
{
    public string Id => "unexpected-allergen";

    public RuleCard Card => new("diet", "A gelling agent or thickener contains an allergen, such as fish gelatin: information, to be declared.", null, default);

    public IEnumerable<Finding> Check(ReviewContext context) => context.Formula.Lines
        .Where(l => l.Ingredient is { Profile: not null, Allergens.Value.IsEmpty: false } && !l.Ingredient.Allergens.Value.Any(a => context.Service.FreeFrom.Contains(a)))
        .Select(l => new Finding(
            Id, Severity.Information,
            $"{l.Ingredient.Name} contains {Phrases.And(l.Ingredient.Allergens!.Value.Select(Words.Of))}, which guests do not expect in such a dish: declare it. {SafetyRules.Defers}",
            ValueList<string>.Own([l.Label]), citations: ValueList<Citation>.Own([l.Ingredient.Allergens.Citation])));
}
