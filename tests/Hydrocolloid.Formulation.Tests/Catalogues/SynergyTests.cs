namespace Hydrocolloid.Formulation.Tests.Catalogues;

public class SynergyTests
{
    [Fact]
    public void Pairs_are_of_entries_of_the_catalogue()
    {
        Synergies.All.Should().HaveCount(43);
        Synergies.All.Select(s => s.Id).Should().OnlyHaveUniqueItems();
        foreach (Synergy pair in Synergies.All)
        {
            pair.First.Should().NotBeEmpty(pair.Id);
            (pair.Second.Count > 0 || pair.Partner is not null).Should().BeTrue(pair.Id);
            pair.First.Concat(pair.Second).Should().OnlyContain(id => Catalogue.BuiltIn.Get(id).IsKnown, pair.Id);
            pair.Effects.Value.Should().NotBeEmpty(pair.Id).And.OnlyHaveUniqueItems(pair.Id);
            (pair.FirstPercent?.Value is not { } share || (share.Min > 0 && share.Max < 100)).Should().BeTrue(pair.Id);
            pair.Percent.All(p => (p.Value.Max ?? p.Value.Min) is > 0 and <= 100).Should().BeTrue(pair.Id);
        }
    }

    [Fact]
    public void Pairs_say_which_record_they_were_made_from()
    {
        Synergies.All.Where(s => s.Provenance is null).Select(s => s.Id).Should().BeEquivalentTo("pectin-low-methoxyl-and-sucrose", "gelatin-and-xanthan-gum");
        Synergies.All.Select(s => s.Provenance).OfType<string>().Should().OnlyHaveUniqueItems();
        Synergies.Between(Hydrocolloids.CarrageenanKappa, Hydrocolloids.LocustBeanGum).Single().Provenance.Should().Be("kappa-carrageenan+locust-bean-gum; synergy record");
    }

    [Fact]
    public void Pair_is_found_in_either_order_and_through_an_own_ingredient()
    {
        // Ichikawa 1995 and the study of eating jellies with 0.25 % KCl: kappa-carrageenan with locust bean gum is firmer and more elastic.
        Ingredient house = Hydrocolloids.CarrageenanKappa.As("house-kappa", "House kappa");

        Synergy pair = Synergies.Between(house, Hydrocolloids.LocustBeanGum).Should().ContainSingle().Which;

        Synergies.Between(Hydrocolloids.LocustBeanGum, Hydrocolloids.CarrageenanKappa).Should().Equal(pair);
        pair.Effects.Value.Should().Contain([SynergyEffect.FirmerGel, SynergyEffect.MoreElastic, SynergyEffect.LessSyneresis]);
        pair.Ratios[0].Value.Should().StartWith("7:3 to 6:4");
    }

    [Fact]
    public void Pair_of_which_nothing_is_known_is_not_found()
        => Synergies.Between(Hydrocolloids.Agar, Pantry.OliveOil).Should().BeEmpty();

    [Fact]
    public void Milk_stands_for_casein()
        => Synergies.Between(Pantry.WholeMilk, Hydrocolloids.CarrageenanKappa).Should().ContainSingle().Which.Partner.Should().Be("milk casein");

    [Fact]
    public void Null_is_refused()
        => FluentActions.Invoking(() => Synergies.Between(null!, Hydrocolloids.Agar)).Should().Throw<ArgumentNullException>();
}
