using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Figures;

public class FigureTests
{
    private static readonly Source s_paper = new("kato-1960", "Agar jellies", SourceKind.Paper, "Kato", "1960");

    [Theory]
    [InlineData(2.0, 5.0, "2–5")]
    [InlineData(80.0, null, "80 or more")]
    [InlineData(null, 35.0, "35 or less")]
    [InlineData(35.0, 35.0, "35")]
    [InlineData(null, null, "any")]
    public void Range_is_written_by_its_ends(double? min, double? max, string text)
        => new NumberRange(min, max).ToString().Should().Be(text);

    [Fact]
    public void Range_holds_its_ends_and_never_holds_NaN()
    {
        var range = new NumberRange(2, 5);

        new[] { 2, 3.5, 5 }.Should().OnlyContain(v => range.Contains(v));
        new[] { 1.999, 5.001, double.NaN, double.PositiveInfinity }.Should().NotContain(v => range.Contains(v));
        default(NumberRange).Contains(double.NaN).Should().BeFalse();
        default(NumberRange).Contains(1e300).Should().BeTrue();
        NumberRange.Single(4).IsSingle.Should().BeTrue();
        default(NumberRange).IsSingle.Should().BeFalse();
    }

    [Theory]
    [InlineData(5.0, 2.0)]
    [InlineData(double.NaN, 2.0)]
    [InlineData(1.0, double.NaN)]
    [InlineData(null, double.PositiveInfinity)]
    public void Range_that_cannot_be_is_refused(double? min, double? max)
        => FluentActions.Invoking(() => new NumberRange(min, max)).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void Refused_range_names_both_ends_without_stray_blanks()
        => FluentActions.Invoking(() => new NumberRange(5, 2)).Should().Throw<ArgumentOutOfRangeException>()
            .WithMessage("Must be between 5 and 1.7976931348623157E+308 inclusive, but is 2.*");

    [Fact]
    public void Temperature_range_reads_any_unit_and_writes_Celsius()
    {
        var range = new TemperatureRange(Temperature.FromDegreesFahrenheit(176), Temperature.FromKelvins(368.15));

        range.ToString().Should().Be("80–95 °C");
        range.Contains(Temperature.FromDegreesCelsius(90)).Should().BeTrue();
        FluentActions.Invoking(() => new TemperatureRange(Temperature.FromKelvins(-1), null)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Theory]
    [InlineData(30, 45, "30–45 s")]
    [InlineData(120, 300, "2–5 min")]
    [InlineData(7200, 14400, "2–4 h")]
    public void Duration_range_is_written_in_the_unit_of_its_size(double min, double max, string text)
        => new DurationRange(Duration.FromSeconds(min), Duration.FromSeconds(max)).ToString().Should().Be(text);

    [Fact]
    public void Recalled_figure_prints_as_recalled()
    {
        var citation = new Citation(s_paper, "table 2", CitationBasis.Recalled);

        (citation.IsRecalled, citation.Quality).Should().Be((true, CitationQuality.Recalled));
        citation.ToString().Should().Be("Kato: Agar jellies (1960), table 2 [recalled, not re-read]");
    }

    [Fact]
    public void Estimated_measured_and_practised_figures_say_so()
    {
        new Citation(s_paper, null, CitationBasis.Estimated).ToString().Should().Be("Kato: Agar jellies (1960) [estimate]");
        new Citation(new Source("j", "Judgement", SourceKind.Judgement)).ToString().Should().Be("Judgement [estimate]");
        Citation.CommonPractice.ToString().Should().Be("common practice, no source");
        Citation.Measured.ToString().Should().Be("measured");
        new Cited<NumberRange>(new NumberRange(0.4, 0.7), new Citation(s_paper)).ToString().Should().Be("0.4–0.7 (Kato: Agar jellies (1960))");
    }

    [Fact]
    public void Kind_of_source_decides_the_quality_of_what_was_read()
    {
        foreach (SourceKind kind in Enum.GetValues<SourceKind>().Where(k => k < SourceKind.Judgement))
        {
            new Citation(new Source("s", "t", kind)).Quality.ToString().Should().Be(kind.ToString());
        }
    }

    [Fact]
    public void Source_needs_an_id_and_a_title()
    {
        FluentActions.Invoking(() => new Source(" ", "t", SourceKind.Paper)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new Source("s", "", SourceKind.Paper)).Should().Throw<ArgumentException>();
    }
}
