using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Batches;

public sealed class YieldTextTests
{
    [Theory]
    [InlineData("2.4 kg", null, 2400)]
    [InlineData("48 x 35 g", 48, 35)]
    [InlineData("48×35g", 48, 35)]
    [InlineData(" 1 x 0.5 kg ", 1, 500)]
    public void A_yield_is_read_as_a_cook_writes_it(string text, int? count, double grams)
    {
        Yield.TryParse(text, YieldBasis.Finished, out Yield? yield, out string error).Should().BeTrue(error);

        yield!.Count.Should().Be(count);
        yield.Mass.Grams.Should().BeApproximately(grams, 1e-9);
    }

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("48 x 35")]
    [InlineData("48 x 35 x 2 g")]
    [InlineData("0 x 35 g")]
    [InlineData("-1 x 35 g")]
    [InlineData("1.5 x 35 g")]
    [InlineData("x 35 g")]
    [InlineData("0 g")]
    [InlineData("2,4 kg")]
    [InlineData("2.4 L")]
    [InlineData("NaN g")]
    [InlineData("99999999 x 35 g")]
    [InlineData("1000000 x 1000 kg")]
    public void What_is_no_yield_is_refused_with_a_reason(string? text)
    {
        Yield.TryParse(text, YieldBasis.Finished, out Yield? yield, out string error).Should().BeFalse();

        yield.Should().BeNull();
        error.Should().NotBeEmpty();
    }

    [Fact]
    public void The_basis_is_kept()
    {
        Yield.TryParse("1 kg", YieldBasis.Assembled, out Yield? yield, out _).Should().BeTrue();

        yield.Should().Be(Yield.Assembled(Mass.FromKilograms(1)));
    }
}
