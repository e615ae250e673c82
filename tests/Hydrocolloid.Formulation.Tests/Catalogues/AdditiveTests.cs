using System.Text.RegularExpressions;

namespace Hydrocolloid.Formulation.Tests.Catalogues;

public partial class AdditiveTests
{
    [Fact]
    public void Additives_are_63_and_their_entries_are_of_the_catalogue()
    {
        Additives.All.Should().HaveCount(63);
        Additives.All.Select(a => a.Id).Should().OnlyHaveUniqueItems();
        Additives.All.SelectMany(a => a.Entries).Should().OnlyContain(id => Catalogue.BuiltIn.Get(id).IsKnown);
        Additives.All.Should().OnlyContain(a => a.FunctionalClasses.Value.Count > 0);
    }

    [Fact]
    public void Every_additive_says_which_record_it_was_made_from()
    {
        Additives.All.Select(a => a.Provenance).Should().OnlyHaveUniqueItems().And.NotContainNulls();
        Additives.Of(Hydrocolloids.LocustBeanGum).Should().ContainSingle().Which.Provenance.Should().Be("lbg; additive record");
    }

    [Fact]
    public void Cas_numbers_have_their_check_digit()
    {
        string[] numbers = [.. Additives.All.SelectMany(a => a.CasNumbers).Select(c => c.Value)];

        numbers.Should().HaveCountGreaterThan(60);
        foreach (string number in numbers)
        {
            Cas().IsMatch(number).Should().BeTrue(number);
            string digits = number.Replace("-", "", StringComparison.Ordinal);
            int sum = digits.Take(digits.Length - 1).Reverse().Select((d, i) => (d - '0') * (i + 1)).Sum();
            (sum % 10).Should().Be(digits[^1] - '0', number);
        }
    }

    [Fact]
    public void Numbers_of_an_entry_are_among_those_of_its_additives()
    {
        foreach (Ingredient entry in Additives.All.SelectMany(a => a.Entries).Distinct().Select(Catalogue.BuiltIn.Get).Where(i => i.Additive is { ENumbers.Count: > 0 }))
        {
            string[] known = [.. Additives.Of(entry).SelectMany(a => a.Numbers.ENumbers).Select(Family)];
            entry.Additive!.ENumbers.Select(Family).Should().BeSubsetOf(known, entry.Id);
        }
    }

    [Fact]
    public void Own_agar_is_agar()
        => Additives.Of(Hydrocolloids.Agar.As("house-agar", "House agar")).Should().ContainSingle().Which.CasNumbers[0].Value.Should().Be("9002-18-0", "21 CFR 184.1115");

    [Fact]
    public void Pear_juice_is_no_additive() => Additives.Of(Pantry.PearJuice).Should().BeEmpty();

    [GeneratedRegex(@"^[1-9]\d{1,6}-\d\d-\d$")]
    private static partial Regex Cas();

    // "E 440(ii)" is of the family "E 440".
    private static string Family(string number) => number.Split('(')[0];
}
