using System.Text.Json;
using Hydrocolloid.Formulation.Declarations;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Serialization;
using UnitsNet;

namespace Hydrocolloid.Formulation.Exchange;

/// <summary>
/// A batch as a Recipe of schema.org (release 30.0) in JSON-LD (docs/exchange.md): UTF-8 without a mark, signs that could end a script
/// element escaped. For people: amounts have six significant digits. The same bytes on every machine.
/// </summary>
public static class RecipeJsonLd
{
    private const int Digits = 6;

    /// <summary>Writes a batch.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="method">The steps; null to leave them out.</param>
    /// <param name="declaration">The declaration of the batch, for its nutrition; rows of which a line is missing are left out. Null to leave all out.</param>
    /// <param name="language">The language of the names, as a BCP 47 tag.</param>
    /// <returns>The bytes.</returns>
    /// <exception cref="ArgumentException">The language is blank.</exception>
    public static byte[] Write(Batch batch, Method? method = null, Declaration? declaration = null, string language = "en")
    {
        Guard.NotNull(batch);
        Guard.NotBlank(language);
        using var bytes = new ByteBuffer(4096);
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("@context", "https://schema.org");
            json.WriteString("@type", "Recipe");
            json.WriteString("name", batch.Formula.Name);
            json.WriteString("inLanguage", language);
            Yield(json, batch);
            Ingredients(json, batch);
            if (method is not null)
            {
                Steps(json, method);
            }

            if (declaration is not null)
            {
                Nutrition(json, declaration);
            }

            if (DietOf(batch) is { } diet)
            {
                json.WriteString("suitableForDiet", "https://schema.org/" + diet);
            }

            json.WriteEndObject();
        }

        bytes.GetSpan(1)[0] = (byte)'\n';
        bytes.Advance(1);
        return bytes.ToArray();
    }

    private static void Yield(Utf8JsonWriter json, Batch batch)
    {
        json.WriteStartArray("recipeYield");
        if (batch.Yield is { Count: { } count, Mould: null })
        {
            Quantity(json, null, Numbers.Exact(count), "PTN");
        }

        Quantity(json, null, Plain(batch.FinishedMass.Grams), "GRM");
        json.WriteEndArray();
    }

    private static void Ingredients(Utf8JsonWriter json, Batch batch)
    {
        json.WriteStartArray("recipeIngredient");
        foreach (BatchLine line in batch.Lines)
        {
            json.WriteStringValue($"{Plain(line.Grams)} g {line.Line.Ingredient.Name}");
        }

        json.WriteEndArray();
        json.WriteStartArray("supply");
        foreach (BatchLine line in batch.Lines)
        {
            json.WriteStartObject();
            json.WriteString("@type", "HowToSupply");
            json.WriteString("name", line.Line.Ingredient.Name);
            json.WriteString("identifier", line.Line.Ingredient.Id);
            Quantity(json, "requiredQuantity", Plain(line.Grams), "GRM");
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Steps(Utf8JsonWriter json, Method method)
    {
        json.WriteStartArray("recipeInstructions");
        for (int i = 0; i < method.Steps.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("@type", "HowToStep");
            json.WriteNumber("position", i + 1);
            json.WriteString("text", method.Steps[i].Instruction);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Nutrition(Utf8JsonWriter json, Declaration declaration)
    {
        json.WriteStartObject("nutrition");
        json.WriteString("@type", "NutritionInformation");
        json.WriteString("servingSize", declaration.Portion is { } portion ? Plain(portion.Grams) + " g" : "100 g");
        foreach (DeclaredNutrient row in declaration.Nutrition.Where(n => n.IsComplete))
        {
            if (PropertyOf(row.Kind) is { } property)
            {
                json.WriteString(property, $"{PlainDecimal.Expand(Numbers.Significant(row.PerPortion ?? row.Per100Grams, 3))} {row.Unit}");
            }
        }

        json.WriteEndObject();
    }

    private static string? PropertyOf(Nutrient nutrient) => nutrient switch
    {
        Nutrient.Kilocalories => "calories",
        Nutrient.Fat => "fatContent",
        Nutrient.Saturates => "saturatedFatContent",
        Nutrient.Carbohydrate => "carbohydrateContent",
        Nutrient.Sugars => "sugarContent",
        Nutrient.Fibre => "fiberContent",
        Nutrient.Protein => "proteinContent",
        Nutrient.Sodium => "sodiumContent",
        _ => null,
    };

    /// <summary>The facts of the ingredients; what is not known of one of them is said of none. Certification is for the certifier.</summary>
    private static string? DietOf(Batch batch)
    {
        BatchLine[] lines = [.. batch.Lines.Where(l => l.Grams > 0)];
        return lines.All(l => l.Line.Ingredient.Diet?.Vegan == true) ? "VeganDiet" : lines.All(l => l.Line.Ingredient.Diet?.Vegetarian == true) ? "VegetarianDiet" : null;
    }

    private static void Quantity(Utf8JsonWriter json, string? name, string value, string unitCode)
    {
        if (name is null)
        {
            json.WriteStartObject();
        }
        else
        {
            json.WriteStartObject(name);
        }

        json.WriteString("@type", "QuantitativeValue");
        json.WritePropertyName("value");
        json.WriteRawValue(value);
        json.WriteString("unitCode", unitCode);
        json.WriteEndObject();
    }

    private static string Plain(double value) => PlainDecimal.Expand(Numbers.Significant(value, Digits));
}
