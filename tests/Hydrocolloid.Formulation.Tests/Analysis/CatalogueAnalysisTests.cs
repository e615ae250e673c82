using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Analysis;

/// <summary>Every ingredient of the catalogue analysed alone.</summary>
public class CatalogueAnalysisTests
{
    public static TheoryData<string> Ids => [.. Catalogue.BuiltIn.All.Select(i => i.Id)];

    [Theory, MemberData(nameof(Ids))]
    public void Every_value_is_a_number_or_says_what_is_missing(string id)
    {
        MixContents contents = Contents.Of(Catalogue.BuiltIn.Get(id));

        foreach ((string name, Reckoned value) in Contents.All(contents))
        {
            if (double.IsNaN(value.Value))
            {
                (name == "water activity" && contents.Water.Value == 0 && value.By == "no water").Should().BeTrue($"{name} of {id}: {value}");
            }

            double.IsInfinity(value.Value).Should().BeFalse(name);
            value.ToString().Should().Contain(value.Unit);
            value.IsSound.Should().Be(value.Outside is null && value.Without.IsEmpty);
            value.Without.Where(label => label != id).Should().BeEmpty(name);
        }
    }

    [Theory, MemberData(nameof(Ids))]
    public void Temperatures_at_the_ends_of_the_scale_are_answered(string id)
    {
        MixContents contents = Contents.Of(Catalogue.BuiltIn.Get(id));
        foreach (double celsius in new[] { -273.15, -40, 0, 4, 99, 150, 151, 300 })
        {
            Temperature at = Temperature.FromDegreesCelsius(celsius);
            foreach (Reckoned value in new[] { contents.DensityAt(at), contents.SpecificHeatAt(at), contents.ConductivityAt(at) })
            {
                (value.Value is > 0 and < 1e5 || value.Outside is not null).Should().BeTrue($"{id} at {celsius} °C: {value}");
                (celsius is >= 0 and <= 150 || value.Outside is not null).Should().BeTrue($"{id} at {celsius} °C: {value}");
            }
        }

        FluentActions.Invoking(() => contents.SpecificHeatAt(Temperature.FromDegreesCelsius(1001))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => contents.DensityAt(Temperature.FromDegreesCelsius(-300))).Should().Throw<ArgumentOutOfRangeException>();
    }

    /// <summary>Foods close to 100 g within the spread of analyses; a salt's or acid's own substance is none of the parts, and a gum's composition is not stated.</summary>
    [Theory, MemberData(nameof(Ids))]
    public void Parts_of_a_food_add_up(string id)
    {
        Ingredient ingredient = Catalogue.BuiltIn.Get(id);
        double sum = Contents.Parts(Contents.Of(ingredient)).Sum(p => p.Value);

        if (ingredient.Composition is not null && ingredient.Category is not ("salt" or "acid"))
        {
            sum.Should().BeInRange(95, 105);
        }
        else
        {
            sum.Should().BeInRange(0, 102);
        }
    }

    /// <summary>The acid and the ions of a liquid are chosen so that alone it has the pH of its record.</summary>
    [Theory, MemberData(nameof(Ids))]
    public void Liquid_alone_has_its_own_ph(string id)
    {
        Ingredient ingredient = Catalogue.BuiltIn.Get(id);
        MixContents contents = Contents.Of(ingredient);
        if (contents.Ph is { } ph)
        {
            ph.Value.Should().BeApproximately(ingredient.Ph!.Value, 0.001);
            contents.AcidBaseSystem.Should().NotBeNull();
            contents.FreeCalcium!.Value.Should().BeInRange(0, contents.Calcium.MmolPerKg / contents.Water.Value * 100 * 1.001 + 1e-9);
        }
        else
        {
            contents.AcidBaseSystem.Should().BeNull();
            contents.FreeCalcium.Should().BeNull();
        }
    }

    /// <summary>No liquid of a kitchen holds more than 5 mol of ions in a kg of water; more means that an acid was made up to fit a titration.</summary>
    [Theory, MemberData(nameof(Ids))]
    public void Ionic_strength_is_that_of_a_food(string id)
    {
        if (Contents.Of(Catalogue.BuiltIn.Get(id)).AcidBaseSystem is { } system)
        {
            system.Solve().IonicStrengthMolPerKgWater.Should().BeInRange(0, 5);
        }
    }
}
