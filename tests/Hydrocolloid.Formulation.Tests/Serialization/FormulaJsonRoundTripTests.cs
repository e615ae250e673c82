using System.Text;
using CsCheck;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Serialization;

public class FormulaJsonRoundTripTests
{
    [Fact]
    public void Random_formulas_read_back_equal_and_write_the_same_bytes_again()
    {
        int written = 0, refused = 0;
        RandomFormulas.Any.Sample(
            formula =>
            {
                byte[] bytes;
                try
                {
                    bytes = FormulaJson.WriteUtf8(formula);
                }
                catch (FormulaJsonException e) when (e.Problems.All(p => p.Id is "ingredient-repeated"))
                {
                    refused++; // two ingredients of one id, which a formula can hold and a document cannot
                    return true;
                }

                written++;
                Formula read = FormulaJson.Read(bytes);
                return read.Equals(formula) && FormulaJson.WriteUtf8(read).AsSpan().SequenceEqual(bytes)
                    && FormulaJson.Write(read) == Encoding.UTF8.GetString(bytes) && FormulaJson.Read(FormulaJson.Write(formula)).Equals(formula);
            },
            iter: 4000,
            threads: 1);

        written.Should().BeGreaterThan(10 * Math.Max(refused, 1));
    }

    [Fact]
    public void Canonical_text_reads_and_writes_unchanged()
        => FormulaJson.Write(FormulaJson.Read(Documents.Layers)).Should().Be(Documents.Layers.ReplaceLineEndings("\n"));

    [Fact]
    public void Canonical_bytes_have_no_mark_two_spaces_and_line_feeds_only()
    {
        byte[] bytes = FormulaJson.WriteUtf8(FormulaJson.Read(Documents.With()));

        bytes[0].Should().Be((byte)'{');
        bytes.Should().NotContain((byte)'\r');
        Encoding.UTF8.GetString(bytes).Should().StartWith("{\n  \"format\"").And.Contain("consommé");
    }

    [Fact]
    public void Streams_spans_strings_and_writers_give_the_same()
    {
        Formula formula = FormulaJson.Read(Documents.Layers);
        using var stream = new MemoryStream();
        FormulaJson.Write(stream, formula);
        stream.ToArray().Should().Equal(FormulaJson.WriteUtf8(formula));
        stream.Position = 0;
        FormulaJson.Read(stream).Should().Be(formula);
        stream.CanRead.Should().BeTrue();

        using var compact = new MemoryStream();
        using (var writer = new System.Text.Json.Utf8JsonWriter(compact))
        {
            FormulaJson.Write(writer, formula);
        }

        FormulaJson.Read(compact.ToArray()).Should().Be(formula);
    }

    [Fact]
    public void A_mark_is_skipped_in_bytes_and_in_text()
    {
        FormulaJson.Read([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Documents.Layers)]).Name.Should().Be("Cucumber and mint layer");
        FormulaJson.Read('\uFEFF' + Documents.Layers).Name.Should().Be("Cucumber and mint layer");
        FormulaJsonProblem problem = Documents.ProblemsOf('\uFEFF' + "{]").Single();
        (problem.LineNumber, problem.BytePositionInLine, problem.ByteOffset).Should().Be((1, 4, 4));
    }

    [Fact]
    public void An_agar_of_one_lot_keeps_its_profile_and_its_grade()
    {
        Ingredient lot = Hydrocolloids.Agar.WithGrade(new Grade(GradeScale.GelStrength, 900));
        Formula formula = Formula.Named("Smoked-tomato water pearls").Base(b => b.Share(Pantry.TomatoWater, 100))
            .Then("gel", p => p.Add(lot, Dose.Percent(1).OfBase)).Build();

        string json = FormulaJson.Write(formula);

        json.Should().Contain("\"like\": \"agar\"").And.NotContain("compositionPer100g");
        FormulaJson.Read(json).Should().Be(formula);
        FormulaJson.Read(json).Line("agar").Ingredient.Profile.Should().Be(Hydrocolloids.Agar.Profile);
    }

    [Fact]
    public void Other_names_and_a_disputed_enzyme_are_kept()
    {
        Ingredient ginger = Pantry.PearJuice.As("house-ginger", "House ginger").WithSynonyms("Shoga", "Sheng jiang").WithProtease("zingibain", isDisputed: true);
        Ingredient unnamed = Hydrocolloids.Agar.WithSynonyms();
        Formula formula = Formula.Named("Ginger water").Base(b => b.Share(ginger, 100)).Then("gel", p => p.Add(unnamed, Dose.Percent(1).OfBase)).Build();

        string json = FormulaJson.Write(formula);
        Formula read = FormulaJson.Read(json);

        read.Should().Be(formula);
        read.Line("house-ginger").Ingredient.Protease!.Value.IsDisputed.Should().BeTrue();
        read.Line("house-ginger").Ingredient.Synonyms.Should().Equal("Shoga", "Sheng jiang");
        read.Line("agar").Ingredient.Synonyms.Should().BeEmpty("none were stated, which is not the same as those of the catalogue");
        json.Should().Contain("\"disputed\": true").And.Contain("\"synonyms\": []");
        FormulaJson.Write(Formula.Named("X").Base(b => b.Share(ginger.WithProtease("zingibain"), 100)).Build()).Should().NotContain("disputed");
    }

    [Fact]
    public void A_catalogue_decides_what_is_described()
    {
        Ingredient verjus = Ingredient.Own("house-verjus", "House verjus").WithPh(2.9);
        Catalogue house = Catalogue.BuiltIn.With(verjus);
        Formula formula = Formula.Named("Oat-milk set cream").Base(b => b.Share(Pantry.OatDrink, 98).Share(verjus, 2)).Build();

        FormulaJson.Write(formula).Should().Contain("\"ingredients\"");
        string json = FormulaJson.Write(formula, house);
        json.Should().NotContain("\"ingredients\"");
        FormulaJson.Read(json, house).Should().Be(formula);
        FormulaJson.Read(json).Line("house-verjus").Ingredient.IsKnown.Should().BeFalse();
        FormulaJson.Write(FormulaJson.Read(json)).Should().Be(json);
    }
}
