using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Serialization;
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
        ["own-rule"] = OwnRule,
        ["problems"] = Problems,
        ["own-ingredients"] = OwnIngredients,
        ["cooling-layer"] = CoolingLayer,
        ["soaking-slice"] = SoakingSlice,
    };

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

    private static void OwnRule()
    {
        Formula salty = Formula.Named("Salty").Base(b => b.Share(Pantry.TomatoWater, 100))
            .Then("season", p => p.Add(Pantry.Salt, Dose.Percent(1.5).OfBase)).Build();
        salty.Review([new HouseSaltRule()]).Should().ContainSingle().Which.Id.Should().Be("house-salt-limit");
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

    #region own-rule
    public sealed class HouseSaltRule : ICompatibilityRule
    {
        public string Id => "house-salt-limit";

        public IEnumerable<Finding> Check(Formula formula)
        {
            foreach (FormulaLine line in formula.Lines.Where(l => l.Ingredient == Pantry.Salt))
            {
                double percent = formula.Proportions.PercentOfTotal(line);
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
