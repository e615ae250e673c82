using Hydrocolloid.Formulation.Declarations;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>Labels: which allergens must be named, and in what order the ingredients stand.</summary>
internal static class LabelKinds
{
    public static ExerciseKind[] All =>
    [
        new("allergens", "Allergens to declare", 3, Allergens),
        new("ingredient-list", "The order of a list of ingredients", 2, IngredientList),
    ];

    private const int AllergenOptions = 6;

    private static readonly Ingredient[] s_bases = [Pantry.PearJuice, Pantry.AppleJuice, Pantry.WholeMilk, Pantry.OatDrink, Pantry.SoyDrink, Pantry.AlmondDrinkSweetened, Pantry.CoconutMilk, Pantry.VegetableStock];

    private static readonly Ingredient[] s_more = [Pantry.Cream35, Pantry.Yoghurt, Pantry.EggYolk, Pantry.EggWhite, Pantry.SoySauce, Pantry.Tamari, Pantry.CeleryJuice, Pantry.FishStock, Pantry.DashiKatsuoKombu];

    private static readonly Ingredient[] s_agents = [Hydrocolloids.Agar, Hydrocolloids.GelatinFish, Hydrocolloids.GelatinTypeB, Hydrocolloids.CarrageenanKappa];

    private static readonly Ingredient[] s_sulphited = [Pantry.WhiteWine, Pantry.RedWine, Pantry.CiderDry];

    private static string NameOf(Allergen allergen) => AllergenListing.FactsOf(allergen).Name.Value;

    // 1: in the European Union; 2: there or in the United States; 3: with sulphites, which count in the food.
    private static ExerciseDraft? Allergens(ExerciseDraw draw)
    {
        if (draw.Agent(s_agents) is not { } agent)
        {
            return null;
        }

        Ingredient liquid = draw.Pick(s_bases), first = draw.Pick(s_more), second = draw.Level == 3 ? draw.Pick(s_sulphited) : draw.Pick(s_more);
        if (first == second || new[] { liquid, first, second, agent }.Any(i => i.Allergens is null))
        {
            return null;
        }

        draw.Name("base", liquid.Id);
        draw.Name("first", first.Id);
        draw.Name("second", second.Id);
        double baseGrams = draw.Number("base-mass", 500, 2000, 100, "g"), firstPercent = draw.Number("first", 2, 10, 1, "%"), secondPercent = draw.Number("second", draw.Level == 3 ? 4 : 2, draw.Level == 3 ? 25 : 10, 1, "%"), dose = draw.Dose("dose", agent);
        double sulphur = draw.Level == 3 ? draw.Number("sulphur-dioxide", 40, 160, 10, "mg/kg") : 0;
        LabelMarket market = draw.Level == 2 ? draw.Pick(LabelMarket.EuropeanUnion, LabelMarket.UnitedStates) : LabelMarket.EuropeanUnion;
        draw.Name("market", market == LabelMarket.UnitedStates ? "united-states" : "european-union");
        Batch batch = Formula.Named("Exercise").Base(b => b.Share(liquid, 100)).Then("season", p => p.Add(first, Dose.Percent(firstPercent).OfBase).Add(second, Dose.Percent(secondPercent).OfBase))
            .Then("gel", p => p.Add(agent, Dose.Percent(dose).OfPreceding)).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(baseGrams)), Losses.None);
        Allergen[] Declared(LabelMarket where, double mgPerKg) => [.. batch.Declare(new LabelPlan
        {
            Market = where,
            Lines = draw.Level == 3 ? ValueList<LineLabel>.From([new LineLabel(second.Id) { SulphurDioxide = MassFraction.FromMilligramsPerKilogram(mgPerKg) }]) : default,
        }).Allergens.Select(a => a.Allergen)];

        Allergen[] right = Declared(market, sulphur);
        Allergen[] other = draw.Level == 2 ? Declared(market == LabelMarket.UnitedStates ? LabelMarket.EuropeanUnion : LabelMarket.UnitedStates, sulphur) : right;
        Allergen[] asIngredient = draw.Level < 3 ? right : [.. right.Union([Allergen.Sulphites]).OrderBy(a => a)];
        Allergen[] obvious = [.. right.Where(a => new[] { liquid, first, second, agent }.Any(i => AllergenListing.FactsOf(a).Words.Append(NameOf(a)).Any(w => WholeWords.In(i.Name, w))))];
        double food = sulphur * batch.Lines[2].Mass.Grams / batch.AssembledMass.Grams;
        Allergen[] present = [.. right.Union(other).Union(asIngredient).OrderBy(a => a)];
        if (right.Length == 0 || present.Length > AllergenOptions - 1 || (draw.Level == 3 && Math.Abs(food - 10) < 1))
        {
            return null;
        }

        IEnumerable<Allergen> absent = Enumerable.Range((int)Allergen.Gluten, (int)Allergen.Molluscs + 1).Select(a => (Allergen)a).Except(present);
        AnswerOption[] options = draw.Shuffled([.. present.Select(Option), .. draw.Shuffled([.. absent.Select(Option)]).Take(AllergenOptions - present.Length)]);
        SolutionStep[] steps =
        [
            .. batch.Lines.Select(l => new SolutionStep("Read what each ingredient is made of.", l.Line.Label,
                l.Line.Ingredient.Allergens!.Value is { IsEmpty: false } holds ? string.Join(", ", holds.Select(NameOf)) : "none of them", null, "")),
            .. draw.Level == 3 ? [new SolutionStep("Sulphites count in the finished food: they are declared above 10 mg/kg.", "sulphur dioxide", $"{Numbers.Exact(sulphur)} mg/kg × {Numbers.Significant(batch.Lines[2].Mass.Grams, 4)} g / {Numbers.Significant(batch.AssembledMass.Grams, 4)} g", food, "mg/kg")] : Array.Empty<SolutionStep>(),
        ];
        string where = market == LabelMarket.UnitedStates ? "the United States" : "the European Union";
        return new ExerciseDraft(
            $"A gel is for sale in {where}. The base is {Numbers.Exact(baseGrams)} g of {KitchenMix.InText(liquid)}. Added to it: {string.Join("; ", batch.Lines.Skip(1).Select(l => $"{KitchenMix.InText(l.Line.Ingredient)}, {l.Line.Dose}"))}."
                + (draw.Level == 3 ? $" The {KitchenMix.InText(second)} has {Numbers.Exact(sulphur)} mg/kg of sulphur dioxide." : "") + " Which allergens must the label name?",
            AnswerForm.Of(AnswerShape.List, options),
            made =>
            {
                Allergen[] named = made(ObviousAllergens) ? obvious : made(OtherMarket) ? other : made(LimitOfIngredient) ? asIngredient : right;
                return named.Length == 0 ? null : WorkedSolution.Of(steps).Choosing([.. options.Select(o => o.Key).Where(k => named.Any(a => Option(a).Key == k))]);
            }, ObviousAllergens, OtherMarket, LimitOfIngredient);
    }

    private static AnswerOption Option(Allergen allergen) => new(Words.Of(allergen), NameOf(allergen));

    // 1: by weight; 2: of which water boils off.
    private static ExerciseDraft? IngredientList(ExerciseDraw draw)
    {
        if (draw.Agent(KitchenMix.UsualAgents) is not { } agent)
        {
            return null;
        }

        Ingredient juice = draw.Pick(Pantry.PearJuice, Pantry.AppleJuice, Pantry.WholeMilk, Pantry.CoconutMilk), extra = draw.Pick(Pantry.Honey, Pantry.Cream35, Pantry.Yoghurt, Pantry.Raspberry);
        draw.Name("juice", juice.Id);
        draw.Name("extra", extra.Id);
        double baseGrams = draw.Number("base-mass", 1000, 2000, 100, "g"), water = draw.Number("water", draw.Level == 1 ? 10 : 50, draw.Level == 1 ? 40 : 60, 5, "%");
        double extraPercent = draw.Number("extra", 3, 14, 1, "%"), sugar = draw.Number("sugar", 6, 20, 2, "%"), dose = draw.Dose("dose", agent), gone = draw.Level == 1 ? 0 : draw.Number("evaporated", 10, 30, 5, "%");
        Formula formula = Formula.Named("Exercise").Base(b => b.Share(Pantry.Water, water).Share(juice, 100 - water)).Then("season", p => p.Add(extra, Dose.Percent(extraPercent).OfBase).Add(Pantry.Sucrose, Dose.Percent(sugar).OfBase))
            .Then("gel", p => p.Add(agent, Dose.Percent(dose).OfPreceding)).Build();
        Batch batch = formula.ScaleTo(Yield.OfBase(Mass.FromGrams(baseGrams)), new Losses { Evaporation = Loss.Percent(gone) });
        ValueList<DeclaredIngredient> Listed(Batch b) => b.Declare(new LabelPlan { Market = LabelMarket.UnitedStates }).Ingredients;
        ValueList<DeclaredIngredient> right = Listed(batch), asPutIn = gone == 0 ? right : Listed(formula.ScaleTo(Yield.OfBase(Mass.FromGrams(baseGrams)), Losses.None));
        if (right.Count < formula.Lines.Count || right.Zip(right.Skip(1), (a, b) => a.PercentOfFood - b.PercentOfFood).Any(d => d < 0.3))
        {
            return null;
        }

        double food = batch.AssembledMass.Grams - batch.EvaporatedWater.Grams;
        double[] grams = [.. right.Select(e => e.PercentOfFood / 100 * food)];
        SolutionStep[] steps = [.. right.Select((e, i) => (Entry: e, Grams: grams[i], Line: formula.Line(e.Lines[0]))).OrderBy(e => e.Line.Index).Select(e => new SolutionStep(
            e.Line.Ingredient.Category == "water" && gone > 0 ? "Added water counts by what is left of it in the food." : "The mass of a dose is its percentage over 100, times what it is a percentage of.", e.Line.Label,
            e.Line.Ingredient.Category == "water" && gone > 0 ? $"{Numbers.Significant(batch.MassOf(e.Line.Label).Grams, 6)} g - {Numbers.Significant(batch.EvaporatedWater.Grams, 6)} g" : $"{e.Line.Dose}", e.Grams, "g"))];
        return new ExerciseDraft(
            $"The base is {Numbers.Exact(baseGrams)} g: {Numbers.Exact(water)} % water, {Numbers.Exact(100 - water)} % {KitchenMix.InText(juice)}. Added to it: {string.Join("; ", formula.Lines.Where(l => !l.IsBase).Select(l => $"{KitchenMix.InText(l.Ingredient)}, {l.Dose}"))}."
                + (gone > 0 ? $" While it simmers {Numbers.Exact(gone)} % of the whole evaporates." : "") + " In what order do the ingredients stand on the label?",
            AnswerForm.Of(AnswerShape.Order, draw.Shuffled([.. formula.Lines.Select(l => new AnswerOption(l.Label, l.Ingredient.Name))])),
            made => made(OrderOfAdding) && made(WaterAsPutIn) ? null : WorkedSolution.Of(steps).Choosing(
                [.. made(OrderOfAdding) ? formula.Lines.Select(l => l.Label) : (made(WaterAsPutIn) ? asPutIn : right).Select(e => e.Lines[0])]), OrderOfAdding, WaterAsPutIn);
    }
}
