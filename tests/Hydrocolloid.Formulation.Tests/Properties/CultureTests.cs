using System.Globalization;
using System.Text;
using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Properties;

public class CultureTests
{
    [Fact]
    public void Every_culture_of_the_runtime_writes_the_same_text()
    {
        string expected = In(CultureInfo.InvariantCulture);

        expected.Should().Contain("3.33 g");
        CultureInfo.GetCultures(CultureTypes.AllCultures).Where(c => In(c) != expected).Select(c => c.Name).Should().BeEmpty();
    }

    [Fact]
    public void Every_culture_finds_the_same_ingredients()
    {
        foreach (string name in new[] { "tr-TR", "az-Latn-AZ", "lt-LT", "th-TH" })
        {
            Under(CultureInfo.GetCultureInfo(name), () =>
            {
                Catalogue.BuiltIn.Find("INS 406").Select(i => i.Id).Should().Equal("agar");
                Catalogue.BuiltIn.Find("ıota").Should().BeEmpty();
                return "";
            });
        }
    }

    private static string In(CultureInfo culture) => Under(culture, () =>
    {
        var losses = new Losses { Evaporation = Loss.Percent(2.5), Straining = Loss.Of(Mass.FromGrams(1234.5)), Trimming = Loss.Percent(1) };
        Formula formula = Mixes.TwoStage(p => p.OfTotal).WithProcess(new ProcessPlan
        {
            Losses = losses,
            Altitude = Length.FromMeters(1234.5),
            Mould = new MouldPlan("mould", Volume.FromMilliliters(1234.5)),
            Cooling = ValueList<CoolingStage>.From([new CoolingStage("bench", Temperature.FromDegreesCelsius(-2.5), Duration.FromMinutes(7.5))]),
        });
        Batch batch = formula.ScaleTo(Yield.Portions(12345, Mass.FromGrams(80.5)));
        var text = new StringBuilder();
        text.AppendLine(formula.ToString()).AppendLine(batch.ToString()).AppendLine(batch.ExplainFinished().ToText()).AppendLine(batch.Explain("agar").ToText())
            .AppendLine(Mixes.TwoStage().OfBase(1000).Explain("agar").ToText())
            .AppendLine(batch.WeighOn(Balance.WithDivision(Mass.FromGrams(0.1))).ToString())
            .AppendLine(formula.Process.ToString()).AppendLine(formula.Process.Mould!.ToString()).AppendLine(formula.Process.Cooling.ToString())
            .AppendLine(new Measurements { Ph = 3.25, Brix = 12.5, Density = Density.FromKilogramsPerCubicMeter(1052.5) }.ToString())
            .AppendLine(Hydrocolloids.Agar.Profile!.WindowFor(Texture.Firm)!.Percent.ToString())
            .AppendLine(Composition.Per100Grams(water: 86.5).ToString());
        Formula.Named("f").Base(b => b.Share(Pantry.Water, 1234.5)).TryBuild(out _, out ValueList<FormulaProblem> problems);
        return text.AppendLine(problems.ToString()).ToString();
    });

    private static string Under(CultureInfo culture, Func<string> write)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = culture;
            return write();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
