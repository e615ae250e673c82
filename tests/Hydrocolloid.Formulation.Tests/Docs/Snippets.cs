using System.Text;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Declarations;
using Hydrocolloid.Formulation.Exchange;
using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Teaching;
using Hydrocolloid.Formulation.Text;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Docs;

/// <summary>
/// Every C# block of README and docs, as regions of compiled code. <see cref="DocsTests"/> compares the texts, runs each method, and
/// compares what it writes with the output block beside it.
/// </summary>
internal static class Snippets
{
    public static IReadOnlyDictionary<string, Action> All { get; } = new Dictionary<string, Action>(StringComparer.Ordinal)
    {
        ["first-formula"] = FirstFormula,
        ["percent-of-what"] = PercentOfWhat,
        ["weights-to-percentages"] = WeightsToPercentages,
        ["remedy"] = Remedy,
        ["own-rule"] = OwnRules,
        ["house-salt-rule"] = () => { },
        ["problems"] = Problems,
        ["own-ingredients"] = OwnIngredients,
        ["another-bloom"] = AnotherBloom,
        ["own-trial"] = OwnTrial,
        ["dose-for-texture"] = DoseForATexture,
        ["adjust-grade"] = AnotherGrade,
        ["agent-trial"] = TrialInAFormula,
        ["weeping-risk"] = WeepingRisk,
        ["agents-beside"] = AgentsBeside,
        ["substitution"] = AnotherAgent,
        ["known-blends"] = Blends,
        ["choosing"] = AgentForABrief,
        ["diagnosis"] = WhyItFailed,
        ["moulds"] = MouldsFilled,
        ["weighing-plan"] = PlanOfWeighing,
        ["learned-losses"] = LossesLearned,
        ["cool-formula"] = CoolAFormula,
        ["boiling"] = BoilingHigh,
        ["joining"] = JoiningPieces,
        ["evaporation"] = EvaporationOfAPot,
        ["cooling-layer"] = CoolingLayer,
        ["soaking-slice"] = SoakingSlice,
        ["method-in-part"] = MethodInPart,
        ["method-kitchen"] = MethodKitchen,
        ["cost-sheet"] = CostOfAJelly,
        ["cost-book"] = CostOfABook,
        ["making-plan"] = PlanOfAJelly,
        ["label"] = Label,
        ["batch-csv"] = BatchAsCsv,
        ["costing-lines"] = BatchAsCostingLines,
        ["recipe-json-ld"] = BatchAsRecipe,
        ["weights-csv"] = WeightsFromCsv,
        ["lesson"] = Lesson,
        ["own-exercise-kind"] = OwnExerciseKind,
    };

    private static void CostOfAJelly()
    {
        Batch batch = Formula.Named("Pear jelly")
            .Base(b => b.Share(Pantry.PearJuice, 100))
            .Then("gel", p => p
                .Add(Pantry.Sucrose, Dose.Percent(5).OfBase)
                .Add(Hydrocolloids.Agar, Dose.Percent(0.6).OfPreceding))
            .Build()
            .ScaleTo(Yield.Portions(100, Mass.FromGrams(60)), new Losses { Trimming = Loss.Percent(5) });
        #region cost-sheet
        Money Eur(decimal amount) => new(amount, "EUR");
        var prices = new PriceList(Currency.Of("EUR"),
        [
            Price.PerVolume("pear-juice", Eur(2.10m), Volume.FromLiters(1)),
            Price.PerMass("sucrose", Eur(1.15m), Mass.FromGrams(1000)).FromSupplier("Harbour Dry Goods"),
            Price.PerMass("agar", Eur(9.60m), Mass.FromGrams(250)).AsPack().ValidBetween(new DateTime(2026, 1, 1), new DateTime(2026, 12, 31)),
        ]);
        CostSheet sheet = batch.Cost(prices, on: new DateTime(2026, 3, 1));
        foreach (CostLine line in sheet.Lines)
        {
            Console.WriteLine($"{line.Line}: {line.Cost!.Rounded()}, {line.SharePercent:0.0} %");
        }

        Console.WriteLine($"batch {sheet.Total!.Rounded()}, per kg {sheet.PerKilogram!.Rounded()}, per portion {sheet.PerPortion!.Rounded()}");
        Console.WriteLine($"sold at 25 % food cost and 10 % tax: {SellingPrice.AtFoodCost(sheet.IngredientsPerPortion!, 25, taxPercent: 10)}");
        CostDifference dearer = sheet.ChangeTo(sheet.WithPrices(prices.WithChange("agar", percent: 20)));
        Console.WriteLine($"agar 20 % dearer: {dearer.Total!.Rounded()} a batch, {dearer.Percent:0.0} %");
        #endregion
    }

    private static void CostOfABook()
    {
        var prices = new PriceList(Currency.Of("EUR"), [Price.PerMass("pear-juice", new Money(2, "EUR"), Mass.FromGrams(1000)), Price.PerMass("sucrose", new Money(1.15m, "EUR"), Mass.FromGrams(1000))]);
        Formula Syrup(double percent) => Formula.Named("Syrup").Base(b => b.Share(Pantry.PearJuice, 100 - percent).Share(Pantry.Sucrose, percent)).Build();
        Formula jelly = Formula.Named("Jelly").Base(b => b.Share(Ingredient.Own("pear-syrup", "Pear syrup"), 50).Share(Pantry.PearJuice, 50)).Build();
        Formula ice = Formula.Named("Ice").Base(b => b.Share(Pantry.LemonJuice, 100)).Build();
        var day = new DateTime(2026, 3, 1);
        #region cost-book
        FormulaBook book = FormulaBook.From(
        [
            new BookEntry("pear-syrup", Syrup(40)),
            new BookEntry("pear-jelly", jelly), // half of it is an ingredient with the id pear-syrup
            new BookEntry("lemon-ice", ice),
        ]);
        foreach (BookCost cost in book.Stream(prices, day))
        {
            Console.WriteLine($"{cost.Id}: {(object?)cost.PerKilogram ?? string.Join(" ", cost.Problems)}");
        }

        BookCosts costs = book.Cost(prices, day).With(new BookEntry("pear-syrup", Syrup(60)));
        Console.WriteLine($"{costs.Recosted} worked out again: {costs["pear-jelly"]}");
        #endregion
    }

    private static void PlanOfAJelly()
    {
        #region making-plan
        Formula syrup = Formula.Named("Pear syrup")
            .Base(b => b.Share(Pantry.PearJuice, 60).Share(Pantry.Sucrose, 40))
            .Process(new ProcessPlan { Losses = new Losses { Evaporation = Loss.Percent(10) } })
            .Build();
        Formula jelly = Formula.Named("Pear jelly")
            .Base(b => b.Share(Pantry.Water, 85).Share(Ingredient.Own("pear-syrup", "Pear syrup"), 15))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding))
            .Build();
        NestedFormulas cafe = NestedFormulas.From([new BookEntry("pear-jelly", jelly), new BookEntry("pear-syrup", syrup)]);

        MakingPlan plan = cafe.Plan("pear-jelly", Yield.Portions(50, Mass.FromGrams(60)));
        Console.WriteLine(plan);
        Console.WriteLine(string.Join(", ", plan.Ingredients));
        Console.WriteLine($"sugars {plan.Batch.Formula.Analyse().Assembled.Sugars.Value:0.00} %");
        Console.WriteLine(plan.Flatten().Declare().IngredientText());
        #endregion
    }

    private static void Label()
    {
        #region label
        Formula pannaCotta = Formula.Named("Cream set with strawberries")
            .Base(b => b.Share(Pantry.Cream35, 60).Share(Pantry.Strawberry, 40))
            .Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(8).OfBase))
            .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeB, Dose.Percent(1).OfTotal))
            .Build();

        Declaration label = pannaCotta.ScaleTo(Yield.Portions(20, Mass.FromGrams(80))).Declare(new LabelPlan
        {
            Lines = ValueList<LineLabel>.From([
                new LineLabel("sucrose") { Name = "sugar" },
                new LineLabel("strawberry") { Name = "strawberries", Quantify = true },
                new LineLabel("gelatin-type-b") { Name = "beef gelatine" },
            ]),
        });
        Console.Write(label.ToString());
        #endregion
    }

    private static Batch SmallBatch() => Formula.Named("Pear sheet")
        .Base(b => b.Share(Pantry.PearJuice, 100))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.45).OfPreceding))
        .Build().ScaleTo(Yield.OfBase(Mass.FromGrams(1000)));

    private static void BatchAsCsv()
    {
        Batch batch = SmallBatch();
        #region batch-csv
        byte[] file = BatchCsv.Write(batch, CsvDialect.Semicolon);
        WeightsReading back = WeightsCsv.Read(file, CsvDialect.Semicolon);
        Console.WriteLine(back.Rows[1]);
        Console.WriteLine(back.ToFormula("Pear sheet").Build().Line("agar").Dose);
        #endregion
    }

    private static void BatchAsCostingLines()
    {
        Batch batch = SmallBatch();
        #region costing-lines
        byte[] lines = CostingLines.Write(batch, new CostingExport("pear-sheet") { FormulaVersion = "3" });
        Console.Write(Encoding.UTF8.GetString(lines).Split('\n')[1] + "\n");
        #endregion
    }

    private static void BatchAsRecipe()
    {
        Batch batch = SmallBatch();
        #region recipe-json-ld
        byte[] recipe = RecipeJsonLd.Write(batch, batch.Formula.PlanMethod(), batch.Declare(), language: "en-GB");
        #endregion
        Console.WriteLine(Encoding.UTF8.GetString(recipe).Split('\n')[3].Trim());
    }

    private static void WeightsFromCsv()
    {
        #region weights-csv
        WeightsReading reading = WeightsCsv.ReadText("name;amount;unit\npear juice;1,5;kg\nagar;6,75;g\nagra;1;g\nsucrose;1.5;g\n", CsvDialect.Semicolon);
        foreach (CsvProblem problem in reading.Problems)
        {
            Console.WriteLine(problem);
        }

        Console.WriteLine(reading.ToFormula("From the old book").Build());
        #endregion
    }

    private static void Lesson()
    {
        #region lesson
        // The class has met "everything so far". One exercise of it is worked on the board ...
        ExerciseKind twoStage = ExerciseKind.Standard.First(k => k.Id == "two-stage");
        Exercise board = twoStage.Generate(seed: 20, level: 1, ExerciseSettings.Default with { WithCalculator = false });
        Console.WriteLine(board.Question);
        Console.Write(board.SolutionText());
        Console.WriteLine();

        // ... the students do another, with hints one at a time ...
        Exercise own = twoStage.Generate(seed: 21, level: 2);
        Console.WriteLine(own.Question);
        Console.WriteLine("Hint: " + own.Hints[^1]);
        Console.WriteLine();

        // ... and hand in answers, written with a decimal comma.
        foreach (string answer in new[] { "18,6 g", "15,4 g", "1,86 g", "about 18 g", "18.6 g" })
        {
            Console.WriteLine($"{answer}: {Marking.Mark(own, answer, new System.Globalization.NumberFormatInfo { NumberDecimalSeparator = "," })}");
        }

        // The test at the end: eight exercises with two agents, for the whole class from one seed.
        ExerciseSet test = ExerciseSet.Generate(seed: 22, count: 8, ExerciseSettings.Default with
        {
            Agents = ValueList<Ingredient>.From([Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA]),
            MaxLevel = 2,
        });
        string sheet = ExerciseSheet.ToHtml(test, "Test");          // to print
        string forTablets = ExerciseJson.WriteForStudents(test);    // has no answers
        string key = ExerciseJson.WriteKey(test);                   // marks without the seed
        #endregion
        _ = (sheet, forTablets, key);
    }

    private static void OwnExerciseKind()
    {
        #region own-exercise-kind
        var lidForgotten = new Misconception("lid-forgotten", "the lid's share forgotten", "A lid keeps most of the steam back: count only what escapes.");
        var boiledOff = new ExerciseKind("boiled-off", "Water that boils off", levels: 1, draw =>
        {
            double minutes = draw.Number("minutes", 10, 40, 5, "min"), rate = draw.Number("rate", 10, 30, 2, "g/min"), kept = draw.Number("kept-by-lid", 50, 80, 10, "%");
            return new ExerciseDraft(
                $"An open pot loses {rate} g of water a minute; a lid keeps {kept} % of it back. How much boils off in {minutes} min with the lid on?",
                AnswerForm.Number(QuantityKind.Mass, "g"),
                made => WorkedSolution.Of(
                    new SolutionStep("Rate times time.", "open", $"{rate} g/min × {minutes} min", rate * minutes, "g"),
                    new SolutionStep("Only what escapes counts.", "with lid", made(lidForgotten) ? "all of it" : $"{rate * minutes} g × (1 - {kept}/100)", made(lidForgotten) ? rate * minutes : rate * minutes * (1 - kept / 100), "g")),
                lidForgotten);
        });

        Exercise exercise = boiledOff.Generate(seed: 1, level: 1);
        Console.WriteLine(exercise.Question);
        Console.WriteLine(Marking.Mark(exercise, $"{exercise.Solution.Steps[0].Value} g"));

        // A mistake that any exercise can meet, without the help of its kind.
        var halved = new Misconception("halved", "the answer halved", "Nothing here is shared by two.", e => e.Solution.Value / 2);
        ExerciseSet set = ExerciseSet.Generate(seed: 1, count: 10, ExerciseSettings.Default with
        {
            Kinds = ValueList<ExerciseKind>.From([.. ExerciseKind.Standard, boiledOff]),
            Misconceptions = ValueList<Misconception>.From([halved]),
        });
        #endregion
        _ = set;
    }

    private static void FirstFormula()
    {
        #region first-formula
        Formula jelly = Formula.Named("Pear and elderflower jelly")
            .Base(b => b
                .Share(Pantry.PearJuice, percent: 85)
                .Share(Pantry.ElderflowerCordial, percent: 15))
            .Then("sweeten", p => p
                .Add(Pantry.Sucrose, Dose.Percent(2).OfBase))
            .Then("gel", p => p
                .Add(Hydrocolloids.Agar, Dose.Percent(0.45).OfPreceding)
                .Add(Hydrocolloids.LocustBeanGum, Dose.Percent(0.1).OfPreceding))
            .Serve(new ServicePlan { Texture = Texture.Firm })
            .Build();

        Batch batch = jelly.ScaleTo(Yield.Portions(60, Mass.FromGrams(40)));
        WeighSheet sheet = batch.WeighOn(Balance.WithDivision(Mass.FromGrams(0.1)));
        foreach (WeighLine line in sheet.Lines)
        {
            Console.WriteLine($"{line}  ({line.Line.Dose})");
        }

        Console.WriteLine();
        Console.Write(batch.Explain("agar").ToText());

        foreach (Finding finding in jelly.Review())
        {
            Console.WriteLine(finding);
        }

        Method method = jelly.PlanMethod();          // steps with figures, reasons and sources; cautions
        string json = FormulaJson.Write(jelly);      // and FormulaJson.Read(json) gives an equal formula
        #endregion
        method.Steps.Should().NotBeEmpty();
        FormulaJson.Read(json).Should().Be(jelly);
    }

    private static void MethodInPart()
    {
        #region method-in-part
        Formula jelly = Formula.Named("Pear in pear jelly")
            .Base(b => b
                .Share(Pantry.Water, percent: 40)
                .Share(Pantry.PearJuice, percent: 40, l => l.At(Temperature.FromDegreesCelsius(8)))
                .Share(Pantry.Pear, percent: 20, l => l.Pieces()))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding))
            .Process(new ProcessPlan { Carriers = ValueList<string>.From(["water"]) })    // the juice stays raw
            .Build();

        Method method = jelly.ScaleTo(Yield.OfBase(Mass.FromKilograms(1))).PlanMethod();
        foreach (MethodStep step in method.Steps)
        {
            Console.WriteLine(step);
            foreach (StepAmount amount in step.Amounts)
            {
                Console.WriteLine($"   {amount}");
            }
        }

        Console.WriteLine(jelly.LargestUnheatedShare());
        #endregion
    }

    private static void MethodKitchen()
    {
        #region method-kitchen
        Formula jelly = Formula.Named("Jelly").Base(b => b.Share(Pantry.Water, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding)).Build();

        var hut = new Kitchen { Altitude = Length.FromMeters(4000), Equipment = Equipment.Pan | Equipment.JugBlender };
        foreach (MethodConflict conflict in jelly.PlanMethod(hut).Conflicts)
        {
            Console.WriteLine(conflict);
        }

        var better = hut with { Equipment = Equipment.PressureCooker | Equipment.HandBlender };
        Console.WriteLine(jelly.PlanMethod(better).Steps.First(s => s.Action == StepAction.Heat).Notes[^1].Value);
        #endregion
    }

    private static void PercentOfWhat()
    {
        #region percent-of-what
        Formula TwoStage(Func<double, Dose> gelDose) => Formula.Named("Two-stage")
            .Base(b => b.Share(Pantry.Water, 100))
            .Then("season", p => p
                .Add(Pantry.Sucrose, Dose.Percent(10).OfBase)
                .Add(Pantry.Salt, Dose.Percent(1).OfBase))
            .Then("gel", p => p
                .Add(Hydrocolloids.Agar, gelDose(0.3))
                .Add(Hydrocolloids.LocustBeanGum, gelDose(0.1)))
            .Build();

        Yield size = Yield.OfBase(Mass.FromGrams(1000));
        Console.WriteLine(TwoStage(p => Dose.Percent(p).OfPreceding).ScaleTo(size).Lines[3]);
        Console.WriteLine(TwoStage(p => Dose.Percent(p).OfBase).ScaleTo(size).Lines[3]);
        Console.WriteLine(TwoStage(p => Dose.Percent(p).OfTotal).ScaleTo(size).Lines[3]);
        #endregion
    }

    private static void WeightsToPercentages()
    {
        #region weights-to-percentages
        Formula notebook = Formula.Named("From the notebook")
            .Base(b => b.Weigh(Pantry.CucumberJuice, Mass.FromGrams(1250)))
            .Then("gel", p => p.Weigh(Hydrocolloids.GellanLowAcyl, Mass.FromGrams(3.5), DoseReference.Base))
            .Build();

        Console.WriteLine(notebook.Line("gellan-low-acyl").Dose);
        Console.WriteLine(notebook.Express("gellan-low-acyl", DoseReference.Total));
        Console.Write(notebook.ExplainDose("gellan-low-acyl", DoseReference.Total).ToText());
        #endregion
    }

    private static void Remedy()
    {
        #region remedy
        Formula sheet = Formula.Named("Pear sheet")
            .Base(b => b.Share(Pantry.PearJuice, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.12).OfPreceding))
            .Build();

        Finding finding = sheet.Review()[0];
        Console.WriteLine(finding.Explanation);
        Console.WriteLine(finding.Remedies[0].Advice);

        Formula better = finding.Remedies[0].Apply(sheet);
        Console.WriteLine(better.Line("agar"));
        #endregion
    }

    private static void OwnRules()
    {
        #region own-rule
        ICompatibilityRule sourJelly = (Condition.Contains("gelatin-type-a") & Condition.PhBelow(3.2))
            .Report("house-sour-jelly", Severity.Caution, "Our guests find such a jelly too sour.");
        RuleSet house = RuleSet.Standard
            .Without("decimal-slip")
            .Regraded("dose-outside-window", Severity.Information)
            .With(sourJelly, new HouseSaltRule());

        Formula salty = Formula.Named("Salty tomato jelly")
            .Base(b => b.Share(Pantry.TomatoWater, 100))
            .Then("season", p => p.Add(Pantry.Salt, Dose.Percent(1.5).OfBase))
            .Build();
        foreach (Finding finding in salty.Review(house))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }

    private static void Problems()
    {
        #region problems
        FormulaBuilder draft = Formula.Named("Draft")
            .Base(b => b.Share(Pantry.PearJuice, 85).Share(Pantry.Water, 10))
            .Then("gel", p => p
                .Add(Hydrocolloids.Agar, Dose.Percent(-0.4).OfPreceding)
                .Add(Pantry.SodiumCitrate, Dose.Percent(30).Of(Hydrocolloids.GellanLowAcyl)));

        if (!draft.TryBuild(out Formula? formula, out ValueList<FormulaProblem> problems))
        {
            foreach (FormulaProblem problem in problems)
            {
                Console.WriteLine($"{problem.Id}: {problem.Message}");
            }
        }
        #endregion
        formula.Should().BeNull();
    }

    private static void OwnIngredients()
    {
        #region own-ingredients
        Ingredient verjus = Ingredient.Own("house-verjus", "House verjus")
            .WithComposition(Composition.Per100Grams(water: 90, sugars: 7, ash: 0.3))
            .WithPh(2.9)
            .WithAllergens();
        Ingredient strongAgar = Hydrocolloids.Agar
            .As("house-agar", "House agar")
            .WithGrade(new Grade(GradeScale.GelStrength, 900));

        Formula sheet = Formula.Named("Verjus sheet")
            .Base(b => b.Share(verjus, 100))
            .Then("gel", p => p.Add(strongAgar, Dose.Percent(0.5).OfPreceding))
            .Build();

        Console.WriteLine(sheet);
        Console.WriteLine(Catalogue.BuiltIn.Find("E 406")[0].Id);
        #endregion
    }

    private static void AnotherBloom()
    {
        #region another-bloom
        var gelatin = StrengthModel.For(Hydrocolloids.GelatinTypeA);
        var bought = new Grade(GradeScale.Bloom, 225);
        var inStock = new Grade(GradeScale.Bloom, 160);

        Console.WriteLine(gelatin.Substitute(Mass.FromGrams(2.6), bought, inStock));

        Console.WriteLine(gelatin.StrengthAt(inStock, 3.08));
        Console.WriteLine(WorkingDose.For(Hydrocolloids.GelatinTypeA.WithGrade(inStock), Texture.VeryFirm));
        Console.WriteLine(StrengthModel.For(Hydrocolloids.CarrageenanKappa).StrengthAt(new Grade(GradeScale.GelStrength, 900), 0.6));
        #endregion
    }

    private static void OwnTrial()
    {
        #region own-trial
        TrialFit trial = TrialFit.PowerLaw(
        [
            new(0.4, 61), new(0.6, 118), new(0.8, 203), new(1.0, 290), new(1.2, 405), // % agar, g/cm²
        ]);

        Console.WriteLine(trial);
        Console.WriteLine(trial.DoseFor(150));
        Console.WriteLine(trial.StrengthAt(0.7));
        Console.WriteLine(trial.StrengthAt(2));
        #endregion
        trial.Issues.Should().BeEmpty();
    }

    private static Formula TableJelly => Formula.Named("Pear and elderflower jelly")
        .Base(b => b.Share(Pantry.PearJuice, 100))
        .Then("gel", p => p
            .Add(Pantry.Sucrose, Dose.Percent(8).OfBase)
            .Add(Hydrocolloids.GelatinTypeA.WithGrade(new Grade(GradeScale.Bloom, 225)), Dose.Percent(1).OfPreceding, l => l.Labelled("gelatin")))
        .Build();

    private static Formula PearLayer => Formula.Named("Pear layer")
        .Base(b => b.Share(Pantry.PearJuice, 100))
        .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.7).OfBase))
        .Build();

    private static void DoseForATexture()
    {
        #region dose-for-texture
        Formula jelly = Formula.Named("Pear and elderflower jelly")
            .Base(b => b.Share(Pantry.PearJuice, 100))
            .Then("gel", p => p
                .Add(Pantry.Sucrose, Dose.Percent(8).OfBase)
                .Add(Hydrocolloids.GelatinTypeA.WithGrade(new Grade(GradeScale.Bloom, 225)), Dose.Percent(1).OfPreceding, l => l.Labelled("gelatin")))
            .Build();

        AgentDosing firm = jelly.DosedFor("gelatin", Texture.Firm);
        Console.WriteLine(firm);
        Console.WriteLine($"{firm.Standing}: {firm.Source}");
        Formula dosed = firm.Formula!; // with the dose, and firm as its texture
        #endregion
        jelly.Should().Be(TableJelly);
        dosed.Service.Texture.Should().Be(Texture.Firm);
    }

    private static void AnotherGrade()
    {
        Formula dosed = TableJelly.DosedFor("gelatin", Texture.Firm).Formula!;
        #region adjust-grade
        GradeAdjustment silver = dosed.AdjustGrade("gelatin", new Grade(GradeScale.Bloom, 160));
        Console.WriteLine(silver);
        Console.Write(silver.Derivation!.ToText());

        SheetAdjustment sheets = dosed.AdjustSheets("gelatin", GelatinPiece.Gold, Mass.FromGrams(1000)); // for 1 kg of base
        Console.WriteLine(sheets);

        Console.WriteLine(silver.Formula!.PredictStrength("gelatin"));
        #endregion
    }

    private static void TrialInAFormula()
    {
        #region agent-trial
        AgentTrial trial = TrialJson.Read("""
            { "format": "hydrocolloid-trial", "version": 1, "agent": "agar", "strengthUnit": "g/cm²",
              "conditions": "pear juice, 20 °C, 24 h, 1 cm² plunger",
              "points": [ { "percent": 0.4, "strength": 61 }, { "percent": 0.6, "strength": 118 }, { "percent": 0.8, "strength": 203 },
                          { "percent": 1.0, "strength": 290 }, { "percent": 1.2, "strength": 405 } ] }
            """);
        Formula layer = Formula.Named("Pear layer")
            .Base(b => b.Share(Pantry.PearJuice, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.7).OfBase))
            .Build();

        Console.WriteLine(layer.PredictStrength("agar"));
        Console.WriteLine(layer.PredictStrength("agar", trial));
        Console.WriteLine(layer.DosedForStrength("agar", trial, strength: 150));
        #endregion
        layer.Should().Be(PearLayer);
    }

    private static void WeepingRisk()
    {
        Formula layer = PearLayer;
        #region weeping-risk
        Formula stored = layer.WithService(layer.Service with { StoredFor = Duration.FromHours(24), Shape = PortionShape.Slice });

        SyneresisRisk risk = stored.SyneresisRisks()[0];
        Console.WriteLine($"{risk.Class}: {risk.Reasons[0].Value}");
        Formula helped = risk.Remedies[0].Apply(stored);
        Console.WriteLine(helped.SyneresisRisks()[0].Class);
        #endregion
    }

    private static void AgentsBeside()
    {
        #region agents-beside
        AgentComparison beside = AgentComparison.Of(Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA);

        Console.Write(beside.Only(AgentProperty.Diets, AgentProperty.LowestDose, AgentProperty.Melting, AgentProperty.Hysteresis, AgentProperty.Enzymes).ToMarkdown());
        #endregion
    }

    private static void WhyItFailed()
    {
        #region diagnosis
        Formula sheet = Formula.Named("Beetroot sheet")
            .Base(b => b.Share(Pantry.BeetrootJuice, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding))
            .Build();
        ProcessRecord friday = ProcessRecordJson.Read("""
            { "format": "hydrocolloid-record", "version": 1,
              "weighed": [ { "line": "beetroot-juice", "value": 1, "unit": "kg" }, { "line": "agar", "value": 5, "unit": "g" } ],
              "hydratedAt": { "value": 86, "unit": "Cel" } }
            """);

        Diagnosis diagnosis = sheet.Diagnose(Symptom.TooSoft, friday);
        Console.WriteLine(diagnosis.Causes[0]);
        Console.WriteLine(diagnosis.Causes[0].Evidence[0]);
        Console.WriteLine(diagnosis.Rescue[0].Value);
        Console.WriteLine(sheet.Diagnose(Symptom.TooSoft).AskFirst[0]);
        #endregion
    }

    private static void PlanOfWeighing()
    {
        #region weighing-plan
        Formula sheets = Formula.Named("Smoked-tomato water sheets")
            .Base(b => b.Share(Pantry.TomatoWater, 70).Share(Pantry.Water, 30))
            .Then("season", p => p.Add(Pantry.Sucrose, Dose.Percent(3).OfBase).Add(Pantry.CitricAcid, Dose.Percent(0.1).OfBase))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.8).OfPreceding).Add(Hydrocolloids.XanthanGum, Dose.Percent(0.05).OfPreceding))
            .Build();
        Balance kitchen = Balance.OfClass(BalanceClass.Medium, Mass.FromGrams(1), capacity: Mass.FromGrams(6000));
        Balance pocket = Balance.WithDivision(Mass.FromGrams(0.1)) with { Capacity = Mass.FromGrams(500) };

        WeighingPlan plan = sheets.ScaleTo(Yield.Assembled(Mass.FromGrams(1200))).PlanWeighing(new WeighingSetup(kitchen, pocket) { Batches = 6 });
        Console.WriteLine(plan);
        Console.WriteLine();
        Console.Write(plan.Explain("citric-acid").ToText());
        Console.WriteLine();
        foreach (Cited<string> advice in plan.Line("xanthan-gum").Preparation!.Advice)
        {
            Console.WriteLine($"- {advice.Value} ({advice.Citation})");
        }
        #endregion
    }

    private static void LossesLearned()
    {
        #region learned-losses
        LearnedLosses learned = LearnedLosses.From(
        [
            new StepWeighing(LossStep.Evaporation, before: Mass.FromGrams(2000), after: Mass.FromGrams(1920)),
            new StepWeighing(LossStep.Transfer, before: Mass.FromGrams(1920), after: Mass.FromGrams(1814.4)),
            new StepWeighing(LossStep.Transfer, before: Mass.FromGrams(800), after: Mass.FromGrams(764)),
        ]);
        Formula cream = Formula.Named("Oat-milk set cream")
            .Base(b => b.Share(Pantry.OatDrink, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.3).OfTotal))
            .Build();

        Console.WriteLine(learned);
        Batch batch = cream.ScaleTo(Yield.Portions(100, Mass.FromGrams(100)), learned.ToLosses(toppedUp: true));
        Console.Write(batch.ExplainFinished().ToText());
        #endregion
    }

    private static void MouldsFilled()
    {
        #region moulds
        var domes = new MouldPlan("silicone sheet")
        {
            Shape = MouldShape.Hemisphere(Length.FromMillimeters(60)),
            Headspace = Length.FromMillimeters(2),
            Cavities = 6,
        };
        Formula jelly = Formula.Named("Cucumber domes")
            .Base(b => b.Share(Pantry.CucumberJuice, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.5).OfPreceding))
            .Process(new ProcessPlan { CastAt = Temperature.FromDegreesCelsius(60), Losses = new Losses { Transfer = Loss.Percent(3) } })
            .Build();

        Batch batch = jelly.ScaleTo(Yield.Moulds(24, domes));
        Console.WriteLine(batch.Explain("agar").ToText());
        Console.WriteLine(batch.Fill(domes));
        Console.WriteLine(batch.Fill(Gastronorm.Pan("1/4", 65).ToMould()));
        #endregion
    }

    private static void CoolAFormula()
    {
        #region cool-formula
        Formula terrine = Formula.Named("Beetroot terrine")
            .Base(b => b.Share(Pantry.BeetrootJuice, 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(0.55).OfPreceding))
            .Process(new ProcessPlan
            {
                CastAt = Temperature.FromDegreesCelsius(60),
                Mould = new MouldPlan("tray") { Shape = MouldShape.Block(Length.FromMillimeters(325), Length.FromMillimeters(265), Length.FromMillimeters(20)) },
                Cooling = ValueList<CoolingStage>.From(
                [
                    new CoolingStage("bench", Temperature.FromDegreesCelsius(20), Duration.FromMinutes(20)),
                    new CoolingStage("blast chiller", Temperature.FromDegreesCelsius(-2)) { Medium = CoolingMedium.BlastChiller },
                ]),
            })
            .Build();

        if (terrine.TryCool(out CoolingOutlook? outlook, out ValueList<string> missing))
        {
            Console.WriteLine($"set through after {outlook.SetThrough}, at the latest {outlook.SetThroughAtLatest}");
            Console.Write(outlook.Check(CoolingRules.UsFoodCode));
        }
        else
        {
            Console.WriteLine($"State {missing}.");
        }
        #endregion
    }

    private static void BoilingHigh()
    {
        #region boiling
        var kitchen = PotPressure.AtAltitude(Length.FromMeters(2240));
        var syrup = new LiquidShares(waterPercent: 80, sucrosePercent: 20);

        Console.WriteLine(Boiling.PointOf(syrup, kitchen));
        Console.WriteLine(Boiling.Reaches(new TemperatureRange(Temperature.FromDegreesCelsius(95), null), syrup, kitchen));
        #endregion
    }

    private static void JoiningPieces()
    {
        #region joining
        var sol = JoiningBody.Food(Mass.FromGrams(500), Temperature.FromDegreesCelsius(75), new FoodShares(88, carbohydratePercent: 12));
        var pieces = JoiningBody.Food(Mass.FromGrams(500), Temperature.FromDegreesCelsius(5), new FoodShares(85, carbohydratePercent: 13.5, fibrePercent: 1.5));
        var bowl = JoiningBody.OfSpecificHeat(Mass.FromGrams(600), Temperature.FromDegreesCelsius(20), VesselMaterials.StainlessSteel.Value);
        var stirring = HeatLoss.AtRate(1.5, Temperature.FromDegreesCelsius(20), Duration.FromMinutes(2));
        var target = Temperature.FromDegreesCelsius(45);

        JoinedMix mix = Joining.Of([sol, pieces, bowl], stirring);
        Console.WriteLine(mix.Against(Temperature.FromDegreesCelsius(40), TemperatureDelta.FromKelvins(5)));
        Console.WriteLine(Joining.TemperatureNeeded(pieces, [sol, bowl], target, stirring));
        Console.WriteLine(Joining.TemperatureNeeded(sol, [pieces, bowl], target, stirring));
        Console.WriteLine(Joining.LargestColdShare(
            sol.At(Temperature.FromDegreesCelsius(90)), sol.At(Temperature.FromDegreesCelsius(5)).OfMass(Mass.Zero), [pieces.At(Temperature.FromDegreesCelsius(38)), bowl], target, stirring));
        #endregion
    }

    private static void EvaporationOfAPot()
    {
        #region evaporation
        var boil = EvaporationRate.ByHeater(Power.FromWatts(1500), losses: Power.FromWatts(500), Temperature.FromDegreesCelsius(100));
        Console.WriteLine(boil);
        Console.WriteLine($"{boil.LostIn(Duration.FromMinutes(10), Mass.FromKilograms(2)).Grams:0} g to top up after 10 min");

        // A pan of 30 cm kept at 80 °C.
        Console.WriteLine(EvaporationRate.FromSurface(
            Area.FromSquareCentimeters(707), Length.FromCentimeters(94), Temperature.FromDegreesCelsius(80), Temperature.FromDegreesCelsius(22), humidityPercent: 50));
        #endregion
    }

    private static void CoolingLayer()
    {
        #region cooling-layer
        ThermalProperties gel = new(Density.FromKilogramsPerCubicMeter(1040), SpecificEntropy.FromKilojoulesPerKilogramKelvin(4), ThermalConductivity.FromWattsPerMeterKelvin(0.57));
        GelBody layer = GelBody.Slab(Length.FromMillimeters(25), ExposedFaces.One);
        Temperature poured = Temperature.FromDegreesCelsius(60);

        CoolingCourse refrigerator = new(layer, gel, poured, CoolingStep.In(CoolingMedium.StillAir, Temperature.FromDegreesCelsius(4)));
        Console.WriteLine(refrigerator.TimeUntilBelow(Temperature.FromDegreesCelsius(20)));

        CoolingCourse benchThenChiller = new(layer, gel, poured,
            CoolingStep.In(CoolingMedium.StillAir, Temperature.FromDegreesCelsius(22), Duration.FromMinutes(30)),
            CoolingStep.In(CoolingMedium.BlastChiller, Temperature.FromDegreesCelsius(-2)));
        Console.WriteLine(benchThenChiller.At(Duration.FromMinutes(60)));
        Console.Write(CoolingRules.UsFoodCode.Check(benchThenChiller));
        #endregion
    }

    private static void SoakingSlice()
    {
        #region soaking-slice
        double diffusivity = Diffusivities.Sucrose.InWater(Temperature.FromDegreesCelsius(25)).Value * Diffusivities.RatioInThinPolysaccharideGel.Value;
        Soaking slice = new(GelBody.Slab(Length.FromMillimeters(10), ExposedFaces.Both), diffusivity, bathPerGel: 3);

        Console.WriteLine($"after 4 h: {slice.UptakePercent(Duration.FromHours(4)):F1} % of the uptake, {slice.GelPercent(0, 40, Duration.FromHours(4)):F1} % sucrose");
        Console.WriteLine($"in the end: {slice.FinalPercent(0, 40):F1} % sucrose; 90 % of the way in {slice.TimeUntil(90).Hours:F1} h");
        #endregion
    }

    private static void AnotherAgent()
    {
        #region substitution
        Formula jelly = Formula.Named("Pear and elderflower jelly")
            .Base(b => b.Share(Pantry.PearJuice, 85).Share(Pantry.ElderflowerCordial, 15))
            .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA, Dose.Percent(1.8).OfPreceding))
            .Build();

        Substitution agar = jelly.Substitute("gelatin", "agar");
        Console.WriteLine($"{agar}; sound: {agar.IsSound}");
        foreach (SubstitutionStep step in agar.Steps)
        {
            Console.WriteLine($"{step.Kind}: {step.Text}");
        }

        Console.WriteLine();
        Console.Write(agar.Differences!.Only(AgentProperty.Texture, AgentProperty.Melting).ToText());

        Console.WriteLine();
        Substitution gellan = agar.Formula!.SubstituteAll("gellan-low-acyl");
        Console.WriteLine(gellan);
        Console.WriteLine(gellan.Findings[0]);
        Console.WriteLine(jelly.Substitute("gelatin", "sodium-alginate"));
        #endregion
    }

    private static void Blends()
    {
        #region known-blends
        foreach (GelSystem blend in GelSystem.KnownBlends)
        {
            Console.WriteLine(blend.Name);
            foreach (BlendDose dose in blend.Pair!.Doses)
            {
                Console.WriteLine($"    {dose.Texture}: {dose.Percent.Value} % in all, {dose.FirstPercent} % of it {blend.Agents[0].Name}");
            }
        }
        #endregion
    }

    private static void AgentForABrief()
    {
        #region choosing
        var brief = new Brief(Pantry.PearJuice, new ServicePlan
        {
            Texture = Texture.Firm,
            ServedAt = Temperature.FromDegreesCelsius(8),
            Clear = true,
            Diets = ValueList<Diet>.From([Diet.Vegan]),
        })
        {
            StoreRoom = ValueList<Ingredient>.From(
                [Hydrocolloids.GelatinTypeA, Hydrocolloids.Agar, Hydrocolloids.LocustBeanGum, Hydrocolloids.GellanLowAcyl, Hydrocolloids.Methylcellulose]),
        };

        Choice choice = brief.Choose();
        Console.WriteLine(choice);

        Console.WriteLine();
        foreach (CriterionScore score in choice.Proposals[0].Criteria)
        {
            Console.WriteLine(score);
        }

        Console.WriteLine();
        foreach (Exclusion exclusion in choice.Exclusions.Where(e => e.Reasons[0].Id != "not-at-hand"))
        {
            Console.WriteLine($"{exclusion}\n  {string.Join("; ", exclusion.Reasons.SelectMany(r => r.Citations))}");
        }

        Formula formula = choice.Proposals[0].Formula; // ready to scale, to plan, to cost

        Console.WriteLine();
        Choice dull = (brief with { Weights = CriterionWeights.Default.With(Criterion.Clarity, 0).With(Criterion.FewCautions, 5) }).Choose();
        Console.WriteLine(dull.Proposals[0]);
        #endregion
    }

    #region house-salt-rule
    public sealed class HouseSaltRule : ICompatibilityRule
    {
        public string Id => "house-salt-limit";

        public IEnumerable<Finding> Check(ReviewContext context)
        {
            foreach (FormulaLine line in context.Formula.Lines.Where(l => l.Ingredient == Pantry.Salt))
            {
                double percent = context.Formula.Proportions.PercentOfTotal(line);
                if (percent > 1.2)
                {
                    yield return new Finding(Id, Severity.Caution, "More salt than this house serves.",
                        ValueList<string>.From([line.Label]),
                        ValueList<Evidence>.From([new Evidence("salt", percent, "% of the total", new NumberRange(null, 1.2))]));
                }
            }
        }
    }
    #endregion

    /// <summary>Stands where the console stands in a reader's program, and keeps what is written.</summary>
    internal static class Console
    {
        [ThreadStatic]
        private static StringWriter? s_written;

        public static string Capture(Action action)
        {
            s_written = new StringWriter(System.Globalization.CultureInfo.InvariantCulture) { NewLine = "\n" };
            action();
            return s_written.ToString();
        }

        public static void WriteLine(object? value = null) => s_written!.WriteLine(value);

        public static void Write(object? value) => s_written!.Write(value);
    }
}
