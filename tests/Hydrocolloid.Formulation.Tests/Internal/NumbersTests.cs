using System.Globalization;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Tests.Internal;

public class NumbersTests
{
    [Theory]
    [InlineData(2.675, 2, "2.68")]
    [InlineData(1.005, 2, "1.01")]
    [InlineData(-2.675, 2, "-2.68")]
    [InlineData(0.5, 0, "1")]
    [InlineData(1, 2, "1.00")]
    [InlineData(-0.001, 2, "0.00")]
    [InlineData(-0.0, 0, "0")]
    public void Fixed_rounds_half_away_from_zero_on_the_decimal_reading(double value, int decimals, string text)
        => Numbers.Fixed(value, decimals).Should().Be(text);

    [Theory]
    [InlineData(3.3333, 3, "3.33")]
    [InlineData(1234.5, 3, "1235")]
    [InlineData(0.00012345, 3, "0.000123")]
    [InlineData(9.996, 3, "10")]
    [InlineData(0, 3, "0")]
    [InlineData(-0.0, 3, "0")]
    [InlineData(100, 5, "100")]
    public void Significant_keeps_whole_digits_and_trims_zeros(double value, int digits, string text)
        => Numbers.Significant(value, digits).Should().Be(text);

    [Theory]
    [InlineData(0.1, "0.1")]
    [InlineData(1.0 / 3, "0.3333333333333333")]
    [InlineData(-0.0, "0")]
    public void Exact_is_the_shortest_text_that_reads_back(double value, string text) => Numbers.Exact(value).Should().Be(text);

    [Theory]
    [InlineData("1,000")]
    [InlineData("1 000")]
    [InlineData(" 1")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e400")]
    [InlineData("")]
    public void TryParse_refuses_groups_spaces_and_what_is_not_finite(string text)
        => Numbers.TryParse(text, CultureInfo.InvariantCulture, out _).Should().BeFalse();

    [Fact]
    public void Number_text_is_the_same_under_every_current_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (CultureInfo culture in CultureInfo.GetCultures(CultureTypes.AllCultures))
            {
                CultureInfo.CurrentCulture = culture;
                $"{Numbers.Exact(-1234.5)} {Numbers.Significant(-1234.56, 5)} {Numbers.Fixed(-1234.5, 2)}".Should().Be("-1234.5 -1234.6 -1234.50", culture.Name);
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
