namespace Hydrocolloid.Formulation.Tests.Catalogues;

public sealed class BrowsingTests
{
    [Fact]
    public void The_catalogue_is_browsed_by_kind_origin_diet_and_role()
    {
        Catalogue catalogue = Catalogue.BuiltIn;

        catalogue.OfCategory("juice").Should().Contain(Pantry.PearJuice).And.NotContain(Pantry.Pear);
        catalogue.OfOrigin(OriginClass.Seaweed).Should().Contain(Hydrocolloids.Agar).And.NotContain(Hydrocolloids.XanthanGum);
        catalogue.Vegan().Should().Contain(Hydrocolloids.Agar).And.NotContain(Hydrocolloids.GelatinTypeA).And.NotContain(Pantry.WholeMilk);
        catalogue.Vegetarian().Should().Contain(Pantry.WholeMilk).And.NotContain(Hydrocolloids.GelatinTypeA);
        catalogue.OfRole(HydrocolloidRole.Thickener).Should().Contain(Hydrocolloids.LocustBeanGum).And.NotContain(Hydrocolloids.Agar);
    }

    [Fact]
    public void What_is_not_known_of_a_diet_is_in_neither_list()
        => Catalogue.BuiltIn.With(Ingredient.Own("house-verjus", "House verjus")).Vegan().Should().NotContain(i => i.Id == "house-verjus");
}
