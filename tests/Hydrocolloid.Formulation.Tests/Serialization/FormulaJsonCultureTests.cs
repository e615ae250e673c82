using System.Globalization;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Serialization;

public class FormulaJsonCultureTests
{
    [Fact]
    public void Every_culture_writes_the_same_bytes_and_reads_the_same()
    {
        string json = Documents.BlocksOfThePage()[1];
        Formula formula = FormulaJson.Read(json);
        string text = FormulaJson.Write(formula);
        ValueList<FormulaJsonProblem> problems = ProblemsIn();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (CultureInfo culture in CultureInfo.GetCultures(CultureTypes.AllCultures).Concat(new[] { "de-DE", "tr-TR", "fa-IR", "ar-SA", "sv-SE" }.Select(CultureInfo.GetCultureInfo)))
            {
                CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = culture;
                FormulaJson.Write(formula).Should().Be(text, culture.Name);
                FormulaJson.Read(json).Equals(formula).Should().BeTrue(culture.Name);
                (ProblemsIn() == problems).Should().BeTrue(culture.Name);
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }

        ValueList<FormulaJsonProblem> ProblemsIn()
        {
            FormulaJson.TryRead(json.Replace("12.5", "-12.5", StringComparison.Ordinal).Replace("0.5", "-0.5", StringComparison.Ordinal), out _, out ValueList<FormulaJsonProblem> found);
            return found;
        }
    }
}
