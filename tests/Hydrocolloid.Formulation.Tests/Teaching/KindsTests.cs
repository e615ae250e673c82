using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Teaching;

namespace Hydrocolloid.Formulation.Tests.Teaching;

/// <summary>What the kinds answer, reckoned again by hand or from the numbers that they give.</summary>
public class KindsTests
{
    /// <summary>Pear juice, 10 % sugar and 0.5 % agar, each of the base.</summary>
    private static readonly Formula s_jelly = Formula.Named("Pear jelly").Base(b => b.Share(Pantry.PearJuice, 100)).Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(10).OfBase))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfBase)).Build();

    [Fact]
    public void A_percentage_of_the_water_counts_the_water_of_the_juice()
    {
        // Pear juice of the catalogue has 86.646 % water, sugar 0.02 %: 5 g of 866.46 g + 0.02 g is 0.577 %; of the base 0.5 %, of everything so far 5/1100 = 0.455 %.
        Exercise exercise = OfJelly("of-water", 3, ("base-mass", 1000));

        exercise.AnswerText.Should().Be("0.577 %");
        Marking.Mark(exercise, "0.500 %").Misconceptions.Should().Equal(Misconception.PercentOfBase);
        Marking.Mark(exercise, "0.455 %").Misconceptions.Should().Contain(Misconception.PercentOfPreceding);
    }

    [Fact]
    public void A_portion_costs_what_its_ingredients_cost()
    {
        // 1000 g at 2.00, 100 g at 1.00 and 5 g at 40.00 a kg: 2.00 + 0.10 + 0.20 = 2.30 EUR for ten.
        Exercise exercise = OfJelly("cost", 1, ("base-mass", 1000), ("portions", 10), ("pear-juice-price", 2), ("sucrose-price", 1), ("agar-price", 40));

        exercise.AnswerText.Should().Be("0.23 EUR");
        Marking.Mark(exercise, "0.23").Outcome.Should().Be(MarkOutcome.Right);
        Marking.Mark(exercise, "2.30 EUR").Misconceptions.Should().Equal(Misconception.WholeBatch);
        Marking.Mark(exercise, "about 0.23 EUR").Outcome.Should().Be(MarkOutcome.AskedAgain);
        Marking.Mark(exercise, "0.23 USD").Outcome.Should().Be(MarkOutcome.AskedAgain);
    }

    [Fact]
    public void What_is_lost_in_preparing_is_divided_out_of_the_cost()
    {
        // Of the juice 80 % goes into the pot: 2.00 / 0.8 = 2.50; 2.80 EUR for ten. Multiplied: 1.60 + 0.30 = 1.90.
        Exercise exercise = OfJelly("cost", 2, ("base-mass", 1000), ("portions", 10), ("yield", 80), ("pear-juice-price", 2), ("sucrose-price", 1), ("agar-price", 40));

        exercise.AnswerText.Should().Be("0.28 EUR");
        Marking.Mark(exercise, "0.23 EUR").Misconceptions.Should().Equal(Misconception.YieldForgotten);
        Marking.Mark(exercise, "0.19 EUR").Misconceptions.Should().Equal(Misconception.YieldMultiplied);
        Marking.Mark(exercise, "1.90 EUR").Misconceptions.Should().BeEquivalentTo([Misconception.YieldMultiplied, Misconception.WholeBatch]);
    }

    [Fact]
    public void A_price_is_the_cost_over_its_target_share()
    {
        // 0.23 EUR is 25 % of 0.92 EUR; a mark-up of 75 % would give 0.4025, multiplying 0.0575.
        Exercise exercise = OfJelly("cost", 3, ("base-mass", 1000), ("portions", 10), ("food-cost", 25), ("pear-juice-price", 2), ("sucrose-price", 1), ("agar-price", 40));

        exercise.AnswerText.Should().Be("0.92 EUR");
        Marking.Mark(exercise, "0.40 EUR").Misconceptions.Should().Equal(Misconception.MarkUpForMargin);
        Marking.Mark(exercise, "0.06 EUR").Misconceptions.Should().Equal(Misconception.TargetMultiplied);
    }

    [Fact]
    public void Agar_of_another_grade_goes_by_a_power()
    {
        // 10 g × (600/900)^(1/1.7) = 7.878 g; the straight ratio gives 6.667 g, the ratio upside down 12.69 g. The exponent is the one that the question states.
        Exercise exercise = Seeds("bloom", 3, 1, ("grade-from", 600), ("grade-to", 900), ("mass", 10))[0];

        exercise.AnswerText.Should().Be("7.88 g");
        Marking.Mark(exercise, "6.67 g").Misconceptions.Should().Equal(Misconception.StraightRatio);
        Marking.Mark(exercise, "12.7 g").Misconceptions.Should().Equal(Misconception.RatioUpsideDown);
    }

    [Fact]
    public void A_tray_of_cylinders_holds_what_geometry_says()
    {
        // π · 3² · 4 cm = 113.097 mL each, 1357.17 mL for twelve; with the diameter as radius four times that.
        Exercise exercise = Seeds("moulds", 2, ("cavities", 12), ("diameter", 60), ("depth", 40)).First(e => e.Things[0].Id == "cylinder");

        exercise.Solution.Value.Should().BeApproximately(12 * Math.PI * 36, 1e-6);
        Marking.Mark(exercise, "5430 mL").Misconceptions.Should().Equal(Misconception.DiameterForRadius);
    }

    [Fact]
    public void A_stock_delivers_what_was_wanted()
    {
        foreach (Exercise exercise in Seeds("stock", 1))
        {
            double division = Given(exercise, "division"), wanted = Given(exercise, "dose") / 100 * Given(exercise, "base-mass"), substance = Given(exercise, "stock-substance");

            exercise.Solution.Value.Should().BeApproximately(wanted / substance * (substance + Given(exercise, "stock-water")), division / 2 + 1e-9, exercise.Question);
        }
    }

    [Fact]
    public void The_water_of_a_stock_is_weighed_once()
    {
        foreach (Exercise exercise in Seeds("stock", 2))
        {
            double substance = Given(exercise, "stock-substance"), carrier = Given(exercise, "stock-water"), water = Given(exercise, "water") / 100 * Given(exercise, "base-mass");

            exercise.Solution.Value.Should().BeApproximately(water - Given(exercise, "stock-mass") * carrier / (substance + carrier), Given(exercise, "division") / 2 + 1e-9, exercise.Question);
        }
    }

    [Fact]
    public void The_steps_of_a_method_keep_every_dependency()
    {
        string[] chain = ["soak", "disperse", "heat", "hold", "add", "cast", "set", "unmould", "slice"];
        foreach (Exercise exercise in Seeds("method-order", 1).Concat(Seeds("method-order", 2)))
        {
            int[] places = [.. exercise.Solution.Keys.Select(k => Array.IndexOf(chain, k))];

            places.Should().BeInAscendingOrder(exercise.Question).And.OnlyContain(p => p >= 0).And.OnlyHaveUniqueItems();
            places.Length.Should().BeGreaterThanOrEqualTo(4);
        }

        Seeds("method-order", 2).Should().OnlyContain(e => e.Solution.Keys.Contains("add"));
    }

    [Fact]
    public void A_wrong_order_of_steps_is_recognised()
    {
        Exercise exercise = Seeds("method-order", 2).First(e => e.Solution.Keys.Contains("disperse") && e.Solution.Keys.Contains("heat"));
        ExpectedSlip hot = exercise.Slips.First(s => s.Misconceptions.Contains(Misconception.IntoHotLiquid));

        Marking.Mark(exercise, string.Join(" ", hot.Keys)).Misconceptions.Should().Equal(Misconception.IntoHotLiquid);
        Marking.Mark(exercise, string.Join(" ", hot.Keys)).PartsAt!.Quantity.Should().Be("step 1");
    }

    [Fact]
    public void A_teachers_own_formula_is_put_in_order_by_the_planner()
    {
        Formula own = FormulaJson.Read(Repository.Read("examples/data/cucumber-mint-layer.json"));
        string[] planned = [.. own.PlanMethod().Steps.Select(s => s.Instruction)];

        Exercise exercise = Kind("method-order").Generate(1, 1, ExerciseSettings.Default with { Formulas = ValueList<Formula>.From([own]) });

        exercise.Solution.Keys.Select(k => Array.IndexOf(planned, exercise.Form.Options.First(o => o.Key == k).Text)).Should().BeInAscendingOrder().And.OnlyContain(i => i >= 0);
    }

    // Against the catalogue, value by value, without the diagnosis.
    [Fact]
    public void The_cause_is_the_one_value_of_the_record_outside_its_limit()
    {
        foreach (Exercise exercise in Seeds("find-cause", 1).Concat(Seeds("find-cause", 2)))
        {
            HydrocolloidProfile profile = Catalogue.BuiltIn.Get(Named(exercise, "agent")).Profile!;
            var outside = new List<string>();
            void Check(string key, bool isOutside)
            {
                if (isOutside)
                {
                    outside.Add(key);
                }
            }

            Check("hydrated", Given(exercise, "hydrated-at") < profile.Hydration.Window.Value.Celsius.Min);
            Check("held", Given(exercise, "held-for") > 120);
            Check("weighed", Given(exercise, "weighed-agent") / Given(exercise, "weighed-base") < 0.8 * Given(exercise, "dose") / 100);
            Check("waited", Given(exercise, "left-to-set") * 3600 < profile.Setting.TimeToStable!.Value.Seconds.Min);
            Check("cast", Given(exercise, "cast-at") < profile.Setting.Window!.Value.Celsius.Max);
            Check("soaked", exercise.Givens.Any(g => g.Key == "soaked-at" && g.Value > 25));

            outside.Should().Equal(exercise.Solution.Keys, exercise.Question);
        }
    }

    [Fact]
    public void Allergens_to_declare_are_those_of_the_ingredients()
    {
        foreach (Exercise exercise in Seeds("allergens", 1).Concat(Seeds("allergens", 3)))
        {
            Ingredient[] ingredients = [.. new[] { "base", "first", "second", "agent" }.Select(k => Catalogue.BuiltIn.Get(Named(exercise, k)))];
            IEnumerable<Allergen> held = ingredients.SelectMany(i => i.Allergens!.Value).Distinct().Where(a => a != Allergen.Sulphites);
            if (exercise.Level == 3)
            {
                // Sulphites above 10 mg/kg of the food: Regulation (EU) No 1169/2011, Annex II. The gelling agent is a percentage of everything so far.
                double so = 100 + Given(exercise, "first") + Given(exercise, "second"), food = so * (1 + Given(exercise, "dose") / 100);
                held = Given(exercise, "sulphur-dioxide") * Given(exercise, "second") / food > 10 ? held.Append(Allergen.Sulphites) : held;
            }

            exercise.Solution.Keys.Should().BeEquivalentTo(held.Select(KeyOf), exercise.Question);
        }
    }

    // The nine major allergens of the United States (Federal Food, Drug, and Cosmetic Act, section 201(qq), with sesame by the FASTER Act of 2021; recalled).
    [Fact]
    public void The_United_States_know_nine_allergens()
        => Seeds("allergens", 2).Where(e => Named(e, "market") == "united-states").SelectMany(e => e.Solution.Keys).Distinct()
            .Should().NotBeEmpty().And.BeSubsetOf(["gluten", "crustaceans", "eggs", "fish", "peanuts", "soybeans", "milk", "tree-nuts", "sesame"]);

    [Fact]
    public void A_list_of_ingredients_goes_by_weight()
    {
        foreach (Exercise exercise in Seeds("ingredient-list", 1).Concat(Seeds("ingredient-list", 2)))
        {
            double water = Given(exercise, "water"), extra = Given(exercise, "extra"), sugar = Given(exercise, "sugar"), so = 100 + extra + sugar, agent = Given(exercise, "dose") / 100 * so;
            double gone = exercise.Level == 1 ? 0 : Given(exercise, "evaporated") / 100 * (so + agent);
            var parts = new Dictionary<string, double>(StringComparer.Ordinal)
            {
                ["water"] = water - gone,
                [Named(exercise, "juice")] = 100 - water,
                [Named(exercise, "extra")] = extra,
                ["sucrose"] = sugar,
                [Named(exercise, "agent")] = agent,
            };

            exercise.Solution.Keys.Should().Equal(parts.OrderByDescending(p => p.Value).Select(p => p.Key), exercise.Question);
        }
    }

    [Fact]
    public void What_stands_against_a_gel_is_in_its_liquid()
    {
        foreach (Exercise exercise in Seeds("incompatibility", 1).Concat(Seeds("incompatibility", 2)))
        {
            Ingredient liquid = Catalogue.BuiltIn.Get(Named(exercise, "liquid"));
            foreach (string trouble in exercise.Solution.Keys)
            {
                bool isThere = trouble switch
                {
                    "enzyme" => liquid.Protease?.Value.IsActive == true && Named(exercise, "agent") == Hydrocolloids.GelatinTypeA.Id,
                    "tannin" => liquid.Tannin!.Value > TanninLevel.Low,
                    "alcohol" => liquid.Composition!.Value.EthanolPercent > 0,
                    "casein" => liquid.MilkProtein!.Value.Casein,
                    "acid" => liquid.Ph!.Value < 5,
                    _ => true,
                };
                isThere.Should().BeTrue(exercise.Question + " " + trouble);
            }
        }
    }

    // Raw pineapple in gelatin: its protease keeps it from setting, and does nothing to agar (PC-002 of practice, where someone feared it).
    [Fact]
    public void Raw_fruit_stands_against_gelatin_only()
    {
        Exercise[] raw = [.. Seeds("incompatibility", 1, 400).Concat(Seeds("incompatibility", 2, 400)).Where(e => Named(e, "liquid") is "pineapple-juice-raw" or "kiwi-juice-raw")];

        raw.Where(e => Named(e, "agent") == Hydrocolloids.GelatinTypeA.Id).Should().NotBeEmpty().And.OnlyContain(e => e.Solution.Keys.Contains("enzyme"));
        Exercise[] others = [.. raw.Where(e => Named(e, "agent") != Hydrocolloids.GelatinTypeA.Id)];
        others.Should().NotBeEmpty().And.OnlyContain(e => !e.Solution.Keys.Contains("enzyme"));
        others.SelectMany(e => e.Slips).SelectMany(s => s.Misconceptions).Should().Contain(Misconception.LikeGelatin);
    }

    private static string KeyOf(Allergen allergen) => allergen == Allergen.TreeNuts ? "tree-nuts" : allergen.ToString().ToLowerInvariant();

    private static ExerciseKind Kind(string id) => ExerciseKind.Standard.First(k => k.Id == id);

    private static double Given(Exercise exercise, string key) => exercise.Givens.First(g => g.Key == key).Value;

    private static string Named(Exercise exercise, string key) => exercise.Things.First(t => t.Key == key).Id;

    private static Exercise[] Seeds(string kind, int level, params (string Key, double Value)[] values) => Seeds(kind, level, 100, values);

    private static Exercise[] Seeds(string kind, int level, int count, params (string Key, double Value)[] values)
        => [.. Enumerable.Range(0, count).Select(i => Kind(kind).Generate((ulong)i, level, ExerciseSettings.Default with { Fixed = ValueList<Given>.From(values.Select(v => new Given(v.Key, v.Value, ""))) }))];

    private static Exercise OfJelly(string kind, int level, params (string Key, double Value)[] values) => Kind(kind).Generate(1, level, ExerciseSettings.Default with
    {
        Formulas = ValueList<Formula>.From([s_jelly]),
        Agents = ValueList<Ingredient>.From([Hydrocolloids.Agar]),
        Fixed = ValueList<Given>.From(values.Select(v => new Given(v.Key, v.Value, ""))),
    });
}
