using System.Collections;
using System.Reflection;
using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Declarations;

namespace Hydrocolloid.Formulation.Tests.Catalogues;

public class BuiltInCatalogueTests
{
    private static readonly IReadOnlyList<Ingredient> s_all = Catalogue.BuiltIn.All;

    public static TheoryData<string> Ids => [.. s_all.Select(i => i.Id)];

    [Fact]
    public void Documents_are_the_ingredients_and_are_named_for_their_ids()
    {
        string data = Path.Combine(Repository.Root, "src", "Hydrocolloid.Formulation", "Catalogues", "Data");
        string[] files = [.. Directory.EnumerateFiles(data, "*.json", SearchOption.AllDirectories).Select(f => Path.GetFileNameWithoutExtension(f)!).Where(f => f is not ("sources" or "synergies" or "additives" or "failures" or "techniques" or "labelling"))];

        s_all.Select(i => i.Id).Should().BeEquivalentTo(files).And.OnlyHaveUniqueItems();
    }

    [Theory, MemberData(nameof(Ids))]
    public void Every_document_loads_with_all_its_facts(string id)
    {
        Ingredient ingredient = Catalogue.BuiltIn.Get(id);

        ingredient.IsKnown.Should().BeTrue();
        ingredient.Name.Should().NotBeNullOrWhiteSpace();
        ingredient.Category.Should().NotBeNullOrWhiteSpace();
        ingredient.Provenance.Should().NotBeNullOrWhiteSpace();
        (ingredient.Composition is not null || ingredient.Profile is not null).Should().BeTrue();
    }

    [Fact]
    public void Allergens_are_known_throughout_and_diet_for_all_but_the_acids_and_salts_whose_records_state_none()
    {
        string[] acidsAndSalts =
        [
            "calcium-carbonate", "calcium-chloride", "calcium-chloride-anhydrous", "calcium-gluconate", "calcium-lactate", "calcium-lactate-gluconate",
            "calcium-sulphate", "citric-acid", "sodium-citrate", "sodium-hexametaphosphate", "tetrasodium-pyrophosphate",
        ];

        s_all.Where(i => i.Allergens is null).Should().Equal([Hydrocolloids.StarchPregelatinised], "its plant is not said, and that of wheat holds gluten");
        s_all.Where(i => i.Diet is null).Select(i => i.Id).Should().BeEquivalentTo(acidsAndSalts);
    }

    [Fact]
    public void Tannin_and_milk_protein_are_known_of_the_whole_pantry()
    {
        foreach (Ingredient item in s_all.Where(i => i.Profile is null))
        {
            item.Tannin.Should().NotBeNull(item.Id);
            item.MilkProtein.Should().NotBeNull(item.Id);
        }

        s_all.Where(i => i.MilkProtein?.Value.Casein == true).Select(i => i.Id).Should().BeEquivalentTo("whole-milk", "skimmed-milk", "cream-35", "buttermilk", "yoghurt");
        Pantry.RedWine.Tannin!.Value.Should().Be(TanninLevel.High);
        Pantry.Water.Tannin!.Value.Should().Be(TanninLevel.None);
    }

    [Fact]
    public void Protease_of_raw_fruit_is_active_and_of_canned_fruit_is_not()
    {
        Pantry.PineappleRaw.Protease!.Value.Should().Be(new Protease("bromelain", true));
        Pantry.PineappleCanned.Protease!.Value.Should().Be(new Protease("bromelain", false));
        Pantry.KiwiJuiceRaw.Protease!.Value.Should().Be(new Protease("actinidin", true));
        Pantry.PearJuice.Protease.Should().BeNull();
    }

    [Fact]
    public void Titratable_acidity_says_which_acid_it_is_expressed_as()
    {
        // Lemon juice: Frida 2019 gives 4.8 g citric acid per 100 g.
        Pantry.LemonJuice.TitratableAcidity!.Value.Should().Be(new TitratableAcidity(4.8, "citric"));
        s_all.Select(i => i.TitratableAcidity).OfType<Cited<TitratableAcidity>>().Should().OnlyContain(a => a.Value.Percent > 0 && a.Value.Percent < 10);
    }

    [Fact]
    public void Named_ingredients_are_the_catalogue()
    {
        Ingredient[] hydrocolloids = Named(typeof(Hydrocolloids)), pantry = Named(typeof(Pantry));

        hydrocolloids.Should().OnlyContain(i => i.Profile != null);
        pantry.Should().OnlyContain(i => i.Profile == null);
        hydrocolloids.Concat(pantry).Select(i => i.Id).Should().OnlyHaveUniqueItems().And.BeEquivalentTo(s_all.Select(i => i.Id));
        Catalogue.BuiltIn.Hydrocolloids.Select(i => i.Id).Should().BeEquivalentTo(hydrocolloids.Select(i => i.Id));
    }

    [Fact]
    public void Property_names_are_the_ids()
    {
        foreach (PropertyInfo property in typeof(Hydrocolloids).GetProperties().Concat(typeof(Pantry).GetProperties()))
        {
            string id = ((Ingredient)property.GetValue(null)!).Id;
            id.Replace("-", "", StringComparison.Ordinal).Should().BeEquivalentTo(property.Name);
        }
    }

    [Fact]
    public void Every_figure_has_a_citation_and_every_source_is_cited()
    {
        HashSet<string> cited = [.. s_all.SelectMany(CitedSources).Concat(Synergies.All.SelectMany(Walk).Concat(Additives.All.SelectMany(Walk)).Concat(LabellingCitations().SelectMany(Walk)).OfType<Source>()).Select(s => s.Id)];
        // Limits that belong to no ingredient stand in the rules.
        IEnumerable<string> citedByRules = RuleSet.Standard.OfType<IDescribedRule>().SelectMany(r => r.Card.Limits).Select(l => l.Citation.Source.Id);

        cited.Should().BeSubsetOf(Catalogue.BuiltIn.Sources.Select(s => s.Id));
        Catalogue.BuiltIn.Sources.Select(s => s.Id).Should().OnlyHaveUniqueItems();
        Catalogue.BuiltIn.Sources.Select(s => s.Id).Except(cited).Except(citedByRules).Should().BeEmpty();
    }

    private static IEnumerable<Citation> LabellingCitations()
    {
        LabellingFacts facts = BuiltInCatalogue.Labelling;
        return
        [
            facts.Classes.Citation, LabelRounding.EuSource, LabelRounding.UsSource,
            .. facts.Allergens.SelectMany(a => a.Exempt.Append(a.Name).Append(a.Codex).Append(a.Gs1Code).Concat(a.UsName is null ? [] : [a.UsName])).Select(f => f.Citation),
            .. facts.EuEnergy.Values.Concat(facts.UsEnergy.Values).Concat(facts.Polyols.Values).Select(f => f.Citation),
            .. facts.DryAs.Select(d => d.Part.Citation), .. facts.Notes.Values.Select(n => n.Citation),
        ];
    }

    [Fact]
    public void Facts_on_labels_are_of_the_catalogue_and_in_the_order_of_the_allergens()
    {
        LabellingFacts facts = BuiltInCatalogue.Labelling;

        facts.Allergens.Select(a => a.Allergen).Should().Equal(Enum.GetValues<Allergen>());
        facts.Classes.Value.Should().HaveCount(24);
        facts.Polyols.Keys.Concat(facts.DryAs.SelectMany(d => d.Entries)).Should().OnlyContain(id => Catalogue.BuiltIn.Get(id).IsKnown);
        facts.DryAs.Should().ContainSingle(d => d.Entries.IsEmpty);
    }

    [Fact]
    public void Recalled_figures_print_as_recalled_and_others_do_not()
    {
        Citation[] citations = [.. s_all.SelectMany(i => Walk(i)).OfType<Citation>()];

        citations.Should().Contain(c => c.IsRecalled);
        citations.Should().OnlyContain(c => c.ToString().Contains("[recalled, not re-read]", StringComparison.Ordinal) == c.IsRecalled);
    }

    [Fact]
    public void Where_it_comes_from_is_known_of_the_whole_catalogue_but_glycerol()
    {
        s_all.Where(i => i.Origin is null).Should().Equal([Pantry.Glycerol], "it is made of fat or of petroleum");
        Catalogue.BuiltIn.OfOrigin(OriginClass.Animal).Should().Contain([Pantry.Honey, Pantry.WholeMilk, Pantry.FishStock, Hydrocolloids.GelatinTypeA]).And.OnlyContain(i => i.Diet!.Vegan == false);
    }

    [Fact]
    public void Competing_acidities_are_kept()
    {
        Cited<TitratableAcidity> spinach = Catalogue.BuiltIn.Get("spinach-juice").TitratableAcidity!;
        spinach.Alternatives.Single().Value.Should().Be(new TitratableAcidity(0.9, "mixed"));
    }

    [Theory, MemberData(nameof(Ids))]
    public void Known_composition_adds_up_to_100_within_1(string id)
    {
        if (Catalogue.BuiltIn.Get(id).Composition?.Value is { } c
            && c is { WaterPercent: not null, SugarsPercent: not null, OtherCarbohydratePercent: not null, FibrePercent: not null, ProteinPercent: not null, FatPercent: not null, AshPercent: not null })
        {
            c.KnownSumPercent.Should().BeInRange(99, 101);
        }
    }

    [Fact]
    public void Most_compositions_are_complete_enough_to_be_checked()
        => s_all.Count(i => i.Composition?.Value is { WaterPercent: not null, SugarsPercent: not null, ProteinPercent: not null, FatPercent: not null }).Should().BeGreaterThan(30);

    [Theory, MemberData(nameof(Ids))]
    public void Figures_are_possible(string id)
    {
        Ingredient i = Catalogue.BuiltIn.Get(id);

        (i.Ph?.Value ?? 7).Should().BeInRange(0, 14);
        (i.Brix?.Value ?? 0).Should().BeInRange(0, 100);
        (i.DensityKgPerM3?.Value ?? 1000).Should().BeInRange(500, 3000);
        if (i is { Ph: { } ph, PhRange: { } range })
        {
            range.Value.Contains(ph.Value).Should().BeTrue();
        }
    }

    [Fact]
    public void Dose_windows_are_ordered_and_lie_above_the_least_that_gels()
    {
        foreach (Ingredient agent in Catalogue.BuiltIn.Hydrocolloids)
        {
            HydrocolloidProfile profile = agent.Profile!;
            profile.DoseWindows.Select(w => w.Texture).Should().OnlyHaveUniqueItems(agent.Id);
            profile.DoseWindows.Should().OnlyContain(w => w.Percent.Value.Min > 0 && w.Percent.Value.Max >= w.Percent.Value.Min && w.Percent.Value.Max <= 100, agent.Id);
            DoseWindow[] set = [.. new[] { Texture.Soft, Texture.Firm, Texture.VeryFirm }.Select(profile.WindowFor).OfType<DoseWindow>()];
            set.Select(w => w.Percent.Value.Min).Should().BeInAscendingOrder(agent.Id);
            set.Select(w => w.Percent.Value.Max).Should().BeInAscendingOrder(agent.Id);
            if (profile.Role == HydrocolloidRole.GellingAgent)
            {
                set.Should().NotBeEmpty(agent.Id);
                profile.MinimumGellingPercent.Should().NotBeNull(agent.Id);
                set.Should().OnlyContain(w => w.Percent.Value.Min >= profile.MinimumGellingPercent!.Value.Min, agent.Id);
            }
        }
    }

    [Fact]
    public void Agents_that_set_on_cooling_melt_no_colder_than_they_set()
    {
        foreach (Ingredient agent in Catalogue.BuiltIn.Hydrocolloids)
        {
            if (agent.Profile is { Setting.Window.Value.Celsius.Min: { } sets, Melting.Window.Value.Celsius.Max: { } melts })
            {
                melts.Should().BeGreaterThanOrEqualTo(sets, agent.Id);
            }
        }
    }

    [Fact]
    public void Agar_facts_of_the_kitchen_stand_as_common_practice()
    {
        HydrocolloidProfile agar = Hydrocolloids.Agar.Profile!;

        agar.Dispersal.Medium[0].Value.Should().Contain("cold");
        agar.Dispersal.Medium[0].Citation.Quality.Should().Be(CitationQuality.CommonPractice);
        Practice(agar.Hydration.Hold).Select(d => d.Seconds).Should().Contain(NumberRange.Single(240));
        Practice(agar.Setting.Window!).Should().Contain(t => t.Celsius.Contains(35));
        Practice(agar.Melting.Window!).Should().Contain(t => t.Celsius.Contains(80));
        Practice(agar.WindowFor(Texture.Soft)!.Percent).Should().Contain(NumberRange.Single(0.2));
        Practice(agar.WindowFor(Texture.VeryFirm)!.Percent).Should().Contain(NumberRange.Single(0.5));
    }

    private static IEnumerable<T> Practice<T>(Cited<T> figure)
        where T : notnull
        => new[] { figure }.Concat(figure.Alternatives).Where(f => f.Citation.Quality == CitationQuality.CommonPractice).Select(f => f.Value);

    private static Ingredient[] Named(Type type) => [.. type.GetProperties().Select(p => (Ingredient)p.GetValue(null)!)];

    private static IEnumerable<Source> CitedSources(Ingredient ingredient) => Walk(ingredient).OfType<Source>();

    /// <summary>Everything that an ingredient holds, through the public properties of the library's types.</summary>
    private static IEnumerable<object> Walk(object? value)
    {
        switch (value)
        {
            case null or string:
                yield break;
            case IEnumerable items:
                foreach (object item in items.Cast<object>().SelectMany(Walk))
                {
                    yield return item;
                }

                yield break;
        }

        yield return value;
        if (value.GetType().Assembly != typeof(Ingredient).Assembly)
        {
            yield break;
        }

        foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance)
            .Where(p => p.GetMethod is { IsPrivate: false } && p.GetIndexParameters().Length == 0 && p.Name != "EqualityContract"))
        {
            foreach (object inner in Walk(property.GetValue(value)))
            {
                yield return inner;
            }
        }
    }
}
