using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Tests.Text;

public class KitchenUnitTests
{
    [Theory]
    [MemberData(nameof(PublishedUnits.Factors), MemberType = typeof(PublishedUnits))]
    public void Factor_is_the_published_one(QuantityKind kind, string code, double factor, string source)
    {
        KitchenUnit unit = Find(kind, code);

        unit.Factor.Should().BeApproximately(factor, factor * 1e-15, source);
        unit.Code.Should().Be(code);
    }

    [Fact]
    public void Every_known_unit_has_a_published_check()
    {
        var published = PublishedUnits.Factors.Select(row => ((QuantityKind)row[0], (string)row[1])).ToList();

        KitchenUnit.All.Select(u => (u.Kind, u.Code)).Should().BeEquivalentTo(published);
        published.Should().OnlyHaveUniqueItems();
    }

    [Fact]
    public void Zero_is_32_for_Fahrenheit_readings_273_15_for_kelvin_readings_and_0_elsewhere()
    {
        KitchenUnit.All.Where(u => u.Zero != 0).Select(u => (u.Kind, u.Code, u.Zero)).Should().BeEquivalentTo(
        [
            (QuantityKind.Temperature, "[degF]", 32.0),
            (QuantityKind.Temperature, "K", 273.15),
        ]);
    }

    [Fact]
    public void Each_kind_starts_with_its_base_unit()
    {
        foreach (IGrouping<QuantityKind, KitchenUnit> kind in KitchenUnit.All.GroupBy(u => u.Kind))
        {
            kind.First().Factor.Should().Be(1, kind.Key.ToString());
            kind.First().Zero.Should().Be(0, kind.Key.ToString());
        }

        KitchenUnit.All.Select(u => u.Kind).Distinct().Should().Equal(Enum.GetValues<QuantityKind>());
    }

    [Fact]
    public void No_spelling_means_two_units_of_one_kind()
    {
        foreach (IGrouping<QuantityKind, KitchenUnit> kind in KitchenUnit.All.GroupBy(u => u.Kind))
        {
            kind.SelectMany(u => u.Symbols.Append(u.Code).Distinct()).Should().OnlyHaveUniqueItems(kind.Key.ToString());
        }
    }

    [Fact]
    public void Every_code_and_spelling_finds_its_unit()
    {
        foreach (KitchenUnit unit in KitchenUnit.All)
        {
            foreach (string text in unit.Symbols.Append(unit.Code))
            {
                Find(unit.Kind, text).Should().BeSameAs(unit, text);
            }

            unit.ToString().Should().Be(unit.Code);
            unit.Name.Should().NotBeNullOrWhiteSpace();
            unit.Source.Should().NotBeNullOrWhiteSpace();
        }
    }

    [Fact]
    public void Only_the_two_measures_UCUM_lacks_have_codes_of_our_own()
        => KitchenUnit.All.Where(u => !u.IsUcum).Select(u => u.Code).Should().Equal("tbs-au", "cup-250");

    [Theory]
    [InlineData("\u00B5g")]
    [InlineData("\u03BCg")]
    public void Both_micro_signs_are_read(string text) => Find(QuantityKind.Mass, text).Code.Should().Be("ug");

    [Theory]
    [InlineData("tsp", "US tsp (4.92892 mL), metric tsp (5 mL)")]
    [InlineData("teaspoon", "US tsp (4.92892 mL), metric tsp (5 mL)")]
    [InlineData("t", "US tsp (4.92892 mL), metric tsp (5 mL)")]
    [InlineData("tbsp", "US tbsp (14.7868 mL), metric tbsp (15 mL), Australian tbsp (20 mL)")]
    [InlineData("Tbsp", "US tbsp (14.7868 mL), metric tbsp (15 mL), Australian tbsp (20 mL)")]
    [InlineData("T", "US tbsp (14.7868 mL), metric tbsp (15 mL), Australian tbsp (20 mL)")]
    [InlineData("cup", "US cup (236.588 mL), US label cup (240 mL), metric cup (250 mL)")]
    [InlineData("oz", "US fl oz (29.5735 mL), imperial fl oz (28.4131 mL)")]
    [InlineData("fl oz", "US fl oz (29.5735 mL), imperial fl oz (28.4131 mL)")]
    [InlineData("pt", "US pint (473.176 mL), imperial pint (568.261 mL)")]
    [InlineData("pint", "US pint (473.176 mL), imperial pint (568.261 mL)")]
    [InlineData("qt", "US quart (946.353 mL), imperial quart (1136.52 mL)")]
    [InlineData("gal", "US gallon (3785.41 mL), imperial gallon (4546.09 mL)")]
    [InlineData("gallons", "US gallon (3785.41 mL), imperial gallon (4546.09 mL)")]
    public void Bare_household_measure_is_refused_and_the_standards_are_named(string text, string choices)
    {
        string error = Refused(QuantityKind.Volume, text);

        error.Should().Contain($"\"{text}\"").And.Contain(choices);
    }

    [Theory]
    [InlineData(QuantityKind.Mass, "US tsp", "measures volume, not mass")]
    [InlineData(QuantityKind.Mass, "tsp", "measures volume, not mass")]
    [InlineData(QuantityKind.Mass, "mL", "measures volume, not mass")]
    [InlineData(QuantityKind.Volume, "g", "measures mass, not volume")]
    [InlineData(QuantityKind.Duration, "K", "measures temperature, not duration")]
    [InlineData(QuantityKind.Mass, "T", "the tonne is \"t\"")]
    [InlineData(QuantityKind.Mass, "Mg", "case-sensitive")]
    [InlineData(QuantityKind.Mass, "KG", "this is not kg")]
    [InlineData(QuantityKind.Mass, "MassUnit.-1", "\"MassUnit.-1\" is not known")]
    [InlineData(QuantityKind.Mass, "pinch", "Known units of mass: g, kg, mg, µg, t, oz, lb.")]
    [InlineData(QuantityKind.Mass, "", "The unit is missing")]
    [InlineData(QuantityKind.Mass, null, "The unit is missing")]
    [InlineData(QuantityKind.Temperature, "T", "Known units of temperature: °C, °F, K.")]
    public void Refusal_says_why(QuantityKind kind, string? text, string reason) => Refused(kind, text).Should().Contain(reason);

    [Fact]
    public void Quoted_text_is_cut_and_stripped_of_control_characters()
        => Refused(QuantityKind.Mass, "a\u0007" + new string('x', 100)).Should().StartWith("Unit \"a?" + new string('x', 38) + "…\" is not known");

    [Theory]
    [InlineData((QuantityKind)(-1))]
    [InlineData((QuantityKind)9)]
    public void Undefined_kind_is_refused(QuantityKind kind)
        => FluentActions.Invoking(() => KitchenUnit.TryFind(kind, "g", out _, out _)).Should().Throw<ArgumentOutOfRangeException>();

    private static KitchenUnit Find(QuantityKind kind, string text)
    {
        KitchenUnit.TryFind(kind, text, out KitchenUnit? unit, out string error).Should().BeTrue(error);
        error.Should().BeEmpty();
        return unit!;
    }

    private static string Refused(QuantityKind kind, string? text)
    {
        KitchenUnit.TryFind(kind, text, out KitchenUnit? unit, out string error).Should().BeFalse();
        unit.Should().BeNull();
        return error;
    }
}
