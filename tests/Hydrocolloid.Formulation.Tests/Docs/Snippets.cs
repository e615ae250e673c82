using Hydrocolloid.Formulation.Compatibility;
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
        ["moulds"] = MouldsFilled,
        ["cool-formula"] = CoolAFormula,
        ["boiling"] = BoilingHigh,
        ["joining"] = JoiningPieces,
        ["evaporation"] = EvaporationOfAPot,
        ["cooling-layer"] = CoolingLayer,
        ["soaking-slice"] = SoakingSlice,
        ["lesson"] = Lesson,
        ["own-exercise-kind"] = OwnExerciseKind,
    };

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
