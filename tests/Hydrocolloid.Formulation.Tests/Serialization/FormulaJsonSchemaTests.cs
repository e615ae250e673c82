using System.Text.Json;
using CsCheck;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Text;
using Json.Schema;

namespace Hydrocolloid.Formulation.Tests.Serialization;

public class FormulaJsonSchemaTests
{
    private static readonly string s_text = Documents.File("formula.schema.json");
    private static readonly JsonSchema s_schema = JsonSchema.FromText(s_text);

    private static bool IsValid(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return s_schema.Evaluate(document.RootElement).IsValid;
    }

    [Fact]
    public void Every_document_of_the_page_reads_and_fits_the_schema()
    {
        Documents.BlocksOfThePage().Should().HaveCountGreaterThan(1);
        foreach (string json in Documents.BlocksOfThePage().Append(Documents.Layers).Append(Documents.With()))
        {
            Formula formula = FormulaJson.Read(json);
            IsValid(json).Should().BeTrue(json);
            IsValid(FormulaJson.Write(formula)).Should().BeTrue();
            FormulaJson.Read(FormulaJson.Write(formula)).Should().Be(formula);
        }
    }

    [Fact]
    public void What_the_library_writes_fits_the_schema()
        => RandomFormulas.Any.Sample(
            formula =>
            {
                try
                {
                    return IsValid(FormulaJson.Write(formula));
                }
                catch (FormulaJsonException)
                {
                    return true;
                }
            },
            iter: 300,
            threads: 1);

    [Theory]
    [InlineData(",\"note\":1")]
    [InlineData(",\"form\":\"lumps\"")]
    [InlineData(",\"temperature\":{\"value\":4}")]
    [InlineData(",\"temperature\":{\"value\":4,\"unit\":\"g\"}")]
    [InlineData(",\"measured\":{\"ph\":15}")]
    [InlineData(",\"label\":null")]
    public void What_the_reader_refuses_does_not_fit_the_schema(string line)
    {
        IsValid(Documents.With(line: line)).Should().BeFalse();
        FormulaJson.TryRead(Documents.With(line: line), out _, out _).Should().BeFalse();
    }

    [Fact]
    public void The_schema_names_the_units_and_words_of_the_library()
    {
        using JsonDocument document = JsonDocument.Parse(s_text);
        JsonElement defs = document.RootElement.GetProperty("$defs");
        string[] Words(string path)
        {
            JsonElement at = defs;
            foreach (string name in path.Split('/'))
            {
                at = at.GetProperty(name);
            }

            return [.. at.EnumerateArray().Select(e => e.GetString()!)];
        }

        foreach ((string name, QuantityKind kind) in new[]
        {
            ("mass", QuantityKind.Mass), ("volume", QuantityKind.Volume), ("temperature", QuantityKind.Temperature),
            ("duration", QuantityKind.Duration), ("length", QuantityKind.Length), ("density", QuantityKind.Density),
        })
        {
            Words(name + "/properties/unit/enum").Should().Equal(DocumentChecks.Codes(kind));
            DocumentChecks.Codes(kind).First().Should().Be(DocumentChecks.BaseCode(kind));
        }

        string.Join(", ", Words("service/properties/texture/enum")).Should().Be(Formulation.Words.TextureList);
        string.Join(", ", Words("own/properties/allergens/items/enum")).Should().Be(Formulation.Words.AllergenList);
        string.Join(", ", Words("own/properties/grade/properties/scale/enum")).Should().Be(Formulation.Words.ScaleList);
    }

    [Fact]
    public void The_shape_table_the_generated_reader_and_the_schema_name_the_same_members()
    {
        using JsonDocument document = JsonDocument.Parse(s_text);
        Compare(document.RootElement, DocumentShape.Document);
        Generated(FormulaJsonContext.Default.FormulaDto, DocumentShape.Document);

        void Compare(JsonElement schema, DocumentShape shape)
        {
            if (schema.TryGetProperty("$ref", out JsonElement reference))
            {
                schema = document.RootElement.GetProperty("$defs").GetProperty(reference.GetString()!["#/$defs/".Length..]);
            }

            if (shape.Item is not null)
            {
                Compare(schema.GetProperty("items"), shape.Item);
            }

            if (!shape.Members.Any() || !schema.TryGetProperty("properties", out JsonElement properties))
            {
                return;
            }

            properties.EnumerateObject().Select(p => p.Name).Should().Equal(shape.Members.Select(m => m.Name));
            IEnumerable<string> required = schema.TryGetProperty("required", out JsonElement names) ? names.EnumerateArray().Select(n => n.GetString()!) : [];
            required.Should().Equal(shape.Members.Where(m => m.IsRequired).Select(m => m.Name));
            foreach ((string name, DocumentShape member, _) in shape.Members)
            {
                Compare(properties.GetProperty(name), member);
            }
        }

        void Generated(System.Text.Json.Serialization.Metadata.JsonTypeInfo type, DocumentShape shape)
        {
            if (shape.Item is not null)
            {
                if (shape.Item.Members.Any())
                {
                    Generated(type.Options.GetTypeInfo(type.ElementType!), shape.Item);
                }

                return;
            }

            if (type.Kind == System.Text.Json.Serialization.Metadata.JsonTypeInfoKind.None)
            {
                new[] { typeof(FormulaDto.Quantity), typeof(FormulaDto.Part), typeof(FormulaDto.Addition) }.Should().Contain(type.Type); // read by a converter
                return;
            }

            type.Properties.Select(p => p.Name).Should().BeEquivalentTo(shape.Members.Select(m => m.Name));
            foreach ((string name, DocumentShape member, bool isRequired) in shape.Members)
            {
                System.Text.Json.Serialization.Metadata.JsonPropertyInfo property = type.Properties.Single(p => p.Name == name);
                property.IsRequired.Should().Be(isRequired, name);
                if (member.Members.Any() || member.Item is not null)
                {
                    Generated(type.Options.GetTypeInfo(property.PropertyType), member);
                }
            }
        }
    }
}
