using System.Text.Json;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Serialization;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Serialization;

/// <summary>Cases met by those who store and pass on formulas; the trait holds the case's id.</summary>
public class PractitionerJsonCaseTests
{
    [Fact, Trait("Case", "PC-031")]
    public void A_mass_comes_back_as_it_was_and_without_a_unit_it_is_refused_never_nothing()
    {
        Formula formula = FormulaJson.Read(Documents.With()).WithService(new ServicePlan { Portion = Mass.FromGrams(4.5) });
        string json = FormulaJson.Write(formula);

        FormulaJson.Read(json).Service.Portion!.Value.Grams.Should().Be(4.5);
        foreach (string portion in new[] { "{\"value\":4.5}", "4.5", "\"4.5\"", "{\"unit\":\"g\"}", "{\"value\":4.5,\"unit\":\"\"}", "{\"value\":4.5,\"unit\":null}", "{\"Value\":4.5,\"Unit\":\"g\"}" })
        {
            Documents.ProblemsOf(Documents.With(members: ",\"service\":{\"portion\":" + portion + "}"))
                .Should().OnlyContain(p => p.Pointer.StartsWith("/service/portion", StringComparison.Ordinal));
        }
    }

    [Theory, Trait("Case", "PC-032")]
    [InlineData("MassUnit.-1")]
    [InlineData("MassUnit.Gram")]
    [InlineData("Gram")]
    [InlineData("G")]
    [InlineData("g ")]
    [InlineData("mL")]
    public void A_unit_outside_the_closed_list_is_refused(string unit)
    {
        FormulaJsonProblem problem = Documents.ProblemsOf(Documents.With(members: ",\"service\":{\"portion\":{\"value\":4.5,\"unit\":\"" + unit + "\"}}")).Single();

        (problem.Id, problem.Pointer).Should().Be(("unit-unknown", "/service/portion/unit"));
        problem.Message.Should().Contain("g, kg, mg");
    }

    [Theory, Trait("Case", "PC-035")]
    [InlineData("0,9")]
    [InlineData("\"0,9\"")]
    [InlineData("\"0.9\"")]
    public void A_decimal_comma_is_never_nine(string percent)
        => FormulaJson.TryRead(Documents.With(percent: percent), out _, out _).Should().BeFalse();

    [Theory, Trait("Case", "PC-038")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("-Infinity")]
    [InlineData("\"NaN\"")]
    [InlineData("\"Infinity\"")]
    [InlineData("1e400")]
    public void There_is_no_NaN_and_no_infinity(string number)
    {
        FormulaJson.TryRead(Documents.With(percent: number), out _, out _).Should().BeFalse();
        FormulaJson.TryRead(Documents.With(line: ",\"measured\":{\"brix\":" + number + "}"), out _, out _).Should().BeFalse();
    }

    [Fact, Trait("Case", "PC-039")]
    public void A_member_or_a_line_that_stands_twice_is_refused()
    {
        Documents.ProblemsOf(Documents.With(line: ",\"percent\":2")).Should().ContainSingle(p => p.Id == "member-repeated" && p.Pointer == "/phases/0/add/0/percent");
        Documents.ProblemsOf(Documents.With(line: "},{\"ingredient\":\"agar\",\"percent\":1,\"of\":\"base\"")).Should()
            .ContainSingle(p => p.Id == "line-repeated" && p.Pointer == "/phases/0/add/1");
    }

    [Fact, Trait("Case", "PC-040")]
    public void An_ingredient_nobody_knows_is_kept()
    {
        string json = Documents.With(line: "},{\"ingredient\":\"sea-buckthorn-pearls\",\"percent\":2,\"of\":\"base\"");

        Formula formula = FormulaJson.Read(json);
        FormulaLine line = formula.Line("sea-buckthorn-pearls");

        line.Ingredient.IsKnown.Should().BeFalse();
        formula.ScaleTo(Yield.OfBase(Mass.FromGrams(500))).Should().NotBeNull();
        FormulaJson.Read(FormulaJson.Write(formula)).Should().Be(formula);
        FormulaJson.Write(formula).Should().Contain("sea-buckthorn-pearls").And.NotContain("\"ingredients\"");
        Ingredient described = Ingredient.Own("sea-buckthorn-pearls", "Sea buckthorn pearls");
        FormulaJson.Read(FormulaJson.Write(formula), Catalogue.BuiltIn.With(described)).Line("sea-buckthorn-pearls").Ingredient.Should().Be(described);
    }

    [Fact, Trait("Case", "PC-041")]
    public void Sixteen_levels_are_read_and_seventeen_are_not()
    {
        string Extensions(int levels) => Documents.With(members: ",\"extensions\":{\"a\":" + new string('[', levels - 2) + new string(']', levels - 2) + "}");

        FormulaJson.Read(Extensions(16)).Extensions.Should().NotBeNull();
        FormulaJsonProblem problem = Documents.ProblemsOf(Extensions(17)).Single();
        problem.Id.Should().Be("too-deep");
        problem.LineNumber.Should().Be(3);

        string InALine(int levels) => Documents.With(line: ",\"extensions\":{\"a\":" + new string('[', levels - 1) + new string(']', levels - 1) + "}");
        FormulaJson.Read(InALine(11)).Line("agar").Details.Extensions.Should().NotBeNull();
        Documents.ProblemsOf(InALine(12)).Single().Id.Should().Be("too-deep");
    }

    [Fact, Trait("Case", "PC-042")]
    public void No_reflection_stands_behind_the_reader()
    {
        JsonSerializerOptions options = FormulaJsonContext.Default.Options;

        options.TypeInfoResolver.Should().BeSameAs(FormulaJsonContext.Default);
        options.TypeInfoResolver!.GetTypeInfo(typeof(Formula), options).Should().BeNull();
        options.MaxDepth.Should().Be(JsonLimits.MaxDepth);
        options.AllowDuplicateProperties.Should().BeFalse();
    }
}
