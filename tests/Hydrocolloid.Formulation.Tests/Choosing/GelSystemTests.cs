using Hydrocolloid.Formulation.Choosing;

namespace Hydrocolloid.Formulation.Tests.Choosing;

public class GelSystemTests
{
    [Fact]
    public void The_known_blends_are_those_with_working_doses()
        => GelSystem.KnownBlends.Select(b => b.Id).Should().Equal(
            "agar-and-locust-bean-gum", "carrageenan-kappa-and-locust-bean-gum", "gellan-low-acyl-and-gellan-high-acyl", "xanthan-gum-and-locust-bean-gum");

    [Fact]
    public void A_blend_is_made_at_a_published_ratio()
    {
        foreach (GelSystem blend in GelSystem.KnownBlends)
        {
            blend.Pair!.Doses.Should().NotBeEmpty().And.OnlyContain(d => blend.Pair.FirstPercent!.Value.Contains(d.FirstPercent), blend.Id);
        }
    }

    /// <summary>Handbook of Hydrocolloids, 3rd edition: low-acyl to high-acyl gellan 1:3, 0.3 % in all, to start a dessert jelly with.</summary>
    [Fact]
    public void The_soft_blend_of_gellans_is_the_handbooks()
    {
        BlendDose soft = GelSystem.Find("gellan-low-acyl+gellan-high-acyl").Single().Pair!.DoseFor(Texture.Soft)!;

        soft.FirstPercent.Should().Be(25);
        soft.Percent.Value.Contains(0.3).Should().BeTrue();
    }

    /// <summary>A Japanese study of 1990: kappa-carrageenan to locust bean gum 7:3 to 6:4 is toughest.</summary>
    [Fact]
    public void Kappa_and_locust_bean_gum_are_between_7_to_3_and_6_to_4()
        => GelSystem.Of(Hydrocolloids.LocustBeanGum, Hydrocolloids.CarrageenanKappa).Pair!.Doses.Should().OnlyContain(d => d.FirstPercent >= 60 && d.FirstPercent <= 70);

    [Theory]
    [InlineData("agar-and-locust-bean-gum", "agar-and-locust-bean-gum")]
    [InlineData("agar+locust bean gum", "agar-and-locust-bean-gum")]
    [InlineData("Locust bean gum + Agar", "agar-and-locust-bean-gum")]
    [InlineData("E 406", "agar")]
    [InlineData("Agar-Agar", "agar")]
    [InlineData("gelatin", "gelatin-fish gelatin-type-a gelatin-type-b")]
    [InlineData("carrageenan", "carrageenan-iota carrageenan-kappa")]
    [InlineData("guar gum", "")]
    [InlineData("agar+guar gum", "")]
    [InlineData("pear juice", "")]
    public void A_system_answers_to_the_words_of_the_catalogue(string word, string ids)
        => string.Join(" ", GelSystem.Find(word).Select(s => s.Id)).Should().Be(ids);

    [Fact]
    public void What_does_not_gel_is_no_system()
    {
        FluentActions.Invoking(() => GelSystem.Of(Hydrocolloids.GuarGum)).Should().Throw<ArgumentException>().WithMessage("*'guar-gum' does not gel by itself*");
        FluentActions.Invoking(() => GelSystem.Of(Hydrocolloids.Agar, Hydrocolloids.GuarGum)).Should().Throw<ArgumentException>().WithMessage("*no known blend*agar-and-locust-bean-gum*");
        FluentActions.Invoking(() => GelSystem.Find(" ")).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void An_own_agar_blends_as_agar_does()
        => GelSystem.Of(Hydrocolloids.LocustBeanGum, Hydrocolloids.Agar.As("house-agar", "House agar")).Agents.Select(a => a.Id).Should().Equal("house-agar", "locust-bean-gum");
}
