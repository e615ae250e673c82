using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>Declares a batch.</summary>
public static class BatchDeclaration
{
    // Regulation (EU) No 1169/2011, Annex III.
    private const double LaxativePolyolsPercent = 10;

    /// <summary>Drafts the label of a batch: of its food after evaporation, from what is known of its ingredients.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="plan">How to declare it; null for the rules of the European Union and nothing more.</param>
    /// <returns>The draft, with everything that is not known.</returns>
    /// <exception cref="ArgumentException">The plan speaks of a line that the formula does not have.</exception>
    public static Declaration Declare(this Batch batch, LabelPlan? plan = null)
    {
        Guard.NotNull(batch);
        plan ??= new LabelPlan();
        var labels = plan.Lines.ToDictionary(l => batch.Formula.Line(l.Line).Label, StringComparer.Ordinal);
        double evaporated = batch.Losses.ToppedUp ? 0 : batch.EvaporatedGrams;
        double food = batch.AssembledGrams - evaporated;
        LabelledLine[] lines = [.. batch.Lines.Select(l => new LabelledLine(l, labels.TryGetValue(l.Line.Label, out LineLabel? label) ? label : new LineLabel(l.Line.Label), food))];
        double? portion = plan.PortionGrams ?? batch.Formula.Service.PortionGrams ?? (batch.Yield.Count is null || batch.Yield.Mould is not null ? null : batch.Yield.Grams);

        var gaps = new List<LabelGap>();
        var notes = new List<Cited<string>>();
        ValueList<DeclaredAllergen> allergens = AllergenListing.Of(lines, plan.Market, gaps, notes);
        ValueList<DeclaredIngredient> ingredients = IngredientListing.Of(lines, evaporated, plan, allergens, gaps);
        ValueList<DeclaredNutrient> nutrition = NutritionReckoning.Of(lines, plan.Market, portion);
        Reckoned alcohol = Alcohol(batch.Formula, batch.AssembledGrams / food);
        gaps.AddRange(nutrition.Where(n => !n.IsComplete).Select(n => new LabelGap("nutrient-unknown", null,
            $"{n.Kind} is not known of {n.Without}: state the composition of the ingredient{(n.Kind == Nutrient.Saturates ? ", or LineLabel.SaturatesPercent" : "")}.")));
        notes.AddRange(RulesFor(plan, nutrition, alcohol).Select(id => BuiltInCatalogue.Labelling.Notes[id]));
        notes.Add(new Cited<string>("Rounding of the nutrition declaration; a half is rounded away from zero.", plan.Market == LabelMarket.UnitedStates ? LabelRounding.UsSource : LabelRounding.EuSource));
        return new Declaration(plan.Market)
        {
            Ingredients = ingredients,
            Allergens = allergens,
            Nutrition = nutrition,
            PortionGrams = portion,
            AlcoholByVolume = alcohol,
            SulphurDioxideMgPerKg = AllergenListing.SulphurDioxide(lines),
            Gaps = ValueList<LabelGap>.From(gaps),
            Notes = ValueList<Cited<string>>.From(notes),
        };
    }

    /// <summary>Alcohol by volume of the assembled mix, moved to the food: only water is taken to boil off.</summary>
    private static Reckoned Alcohol(Formula formula, double concentration)
    {
        MixContents mix = formula.Analyse().Assembled;
        return mix.Ethanol.Value == 0 ? mix.Ethanol with { Unit = "% vol" }
            : concentration == 1 ? mix.AlcoholByVolume
            : mix.AlcoholByVolume with { Value = mix.AlcoholByVolume.Value * concentration, How = ReckonedHow.Estimated, By = "ethanol by weight × density, with only water boiling off" };
    }

    private static IEnumerable<string> RulesFor(LabelPlan plan, ValueList<DeclaredNutrient> nutrition, Reckoned alcohol)
    {
        bool american = plan.Market == LabelMarket.UnitedStates;
        yield return "order";
        yield return plan.OmitLittleWater ? "little-water" : "small-amounts";
        yield return "quantity";
        yield return american ? "us-contains" : "emphasis";
        if (!american)
        {
            yield return plan.Market == LabelMarket.Codex ? "additive-names-codex" : "additive-names";
        }

        yield return "polyols-fruit";
        if (american)
        {
            yield return "fibre-us";
            yield return "us-panel";
        }
        else if (plan.Market == LabelMarket.Codex)
        {
            yield return "codex-nutrition";
        }

        if (nutrition.Any(n => n.Kind == Nutrient.Polyols && n.Per100Grams > LaxativePolyolsPercent))
        {
            yield return "polyols";
        }

        if (alcohol.Value > 0)
        {
            yield return american ? "alcohol-us" : "alcohol";
        }
    }
}
